"""Logs to test with: files in a folder of the test's own, and schemas of a private PostgreSQL server."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from welds.logbook.fields import Reading, read_entry
from welds.logbook.logbook import Logbook
from welds.logbook.opening import open_logbook

BAIT_TANK = {
    "process": "tig",
    "metal": "5052-H32",
    "thickness_mm": 2.03,
    "joint": "outside-corner",
    "settings": {"current": 112, "polarity": "AC", "ac_frequency": 120, "cup": 7},
    "outcome": "worked-well",
    "notes": "bait tank, long corner (invented)",
    "made_at": "2026-03-03T14:05:00+01:00",
    "machine": "200 A AC/DC TIG, 230 V",
    "welder": "first bench",
}
MUDGUARD = {
    "process": "mig",
    "metal": "galvanised",
    "thickness_mm": 1.5,
    "joint": "lap",
    "position": "PB",
    "other_metal": "low-carbon",
    "other_thickness_mm": 3,
    "settings": {"current": 95, "wire_feed": 5.1, "voltage": 17.5, "transfer": "short-circuit"},
    "outcome": "failed",
    "faults": ["burned through", "porous"],
    "notes": "trailer mudguard (invented)",
    "made_at": "2026-04-01",
}


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Return where a log may be made."""
    return tmp_path / "yard.db"


@pytest.fixture(params=["file", "server"])
def address(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """Return the address of an empty log, once in a file, once on the server."""
    if request.param == "file":
        return str(tmp_path / "yard.db")
    return request.getfixturevalue("server").new_log()


@pytest.fixture
def log(address: str) -> Iterator[Logbook]:
    """Return an empty open log, once in a file, once on the server."""
    with open_logbook(address) as opened:
        yield opened


@pytest.fixture
def reading(tables) -> Callable[..., Reading]:
    """Return a maker of readings: the bait tank, with some fields changed."""

    def make(given: dict | None = None, **changes: object) -> Reading:
        return read_entry({**(given or BAIT_TANK), **changes}, tables)

    return make


@pytest.fixture
def picture(tmp_path: Path) -> Path:
    """Return a small picture as a phone makes it: lying on its side, with a note of that."""
    from PIL import Image

    image = Image.new("RGB", (60, 30), "white")
    image.paste((200, 0, 0), (0, 0, 30, 30))
    turned = Image.Exif()
    turned[0x0112] = 6  # to be turned right by a quarter
    file = tmp_path / "bead.jpg"
    image.save(file, quality=95, exif=turned)
    return file
