"""Machines of common kinds to start from."""

from collections.abc import Sequence
from pathlib import Path

from welds.bench.write import bench_yaml
from welds.errors import InputError, nearest
from welds.reference.paths import data_root
from welds.reference.strict_yaml import YamlMap, read_yaml

TEMPLATE_FILE = "bench_templates.yaml"
USUAL = ("200 A AC/DC TIG, 230 V", "180 A MIG, 230 V")


def template_path() -> Path:
    """Return the file that the templates are in; it is a bench file itself."""
    return data_root() / TEMPLATE_FILE


def templates() -> dict[str, YamlMap]:
    """Return each template by its name, as texts."""
    machines = read_yaml(template_path(), f"data/{TEMPLATE_FILE}")["machines"]
    assert isinstance(machines, list)
    return {str(machine["name"]): machine for machine in machines}


def starting_bench(names: Sequence[str] = USUAL) -> str:
    """Return a bench file with these machines, the first in use, and the shelf as examples only."""
    known = templates()
    by_lower = {name.lower(): name for name in known}
    chosen = []
    for name in names:
        if name.lower() not in by_lower:
            raise InputError("template", name, "; ".join(known), nearest(name, known))
        chosen.append(known[by_lower[name.lower()]])
    return bench_yaml({"in_use": chosen[0]["name"], "machines": chosen})
