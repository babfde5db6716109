"""The demo job that ships with the program; invented, and says so."""

from pathlib import Path

from welds.reference.paths import data_root


def demo_file() -> Path:
    """Return the demo's file."""
    return data_root() / "demo" / "boat-and-trailer.yaml"
