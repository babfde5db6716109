"""A small data folder, invented, sound until a test breaks it."""

from pathlib import Path

import pytest

SOURCES = """\
BOOK:
  citation: "A book made up for the test"
  status: textbook
  how_read: read in the document itself
"""
SHEET = """\
title: Plates
about: one plate of the yard, invented
key: [plate, side]
columns:
  plate: {type: text, meaning: name}
  side: {type: choice, choices: [port, starboard], meaning: side of the boat}
  thickness_mm: {type: number, unit: mm, min: 0.2, max: 80, meaning: thickness}
  low_a: {type: number, unit: A, min: 1, max: 500, optional: true, meaning: lowest current}
  high_a: {type: number, unit: A, min: 1, max: 500, optional: true, meaning: highest current}
  passes: {type: integer, min: 1, max: 40, optional: true, meaning: runs}
  tempers: {type: list, optional: true, meaning: tempers}
  is_patched: {type: flag, meaning: whether patched}
  cell_bases: {type: grades, optional: true, meaning: grades of cells}
order: [[low_a, high_a]]
"""
HEADER = (
    "plate,side,thickness_mm,low_a,high_a,passes,tempers,is_patched,cell_bases,source_id,place,basis,note\n"
)
BOX = 'box,port,2.5,60,80,1,H32; H34,yes,low_a=recalled,BOOK,p. 1,printed,"thin, bent"\n'
TANK = "tank,starboard,3.2,,,,,no,,BOOK,p. 2,quoted,\n"


class DataFolder:
    """A data folder on disk with one table, and a user's folder beside it."""

    def __init__(self, folder: Path) -> None:
        self.root = folder / "data"
        self.user = folder / "mine"
        (self.root / "tables").mkdir(parents=True)
        self.user.mkdir()
        self.write("sources.yaml", SOURCES)
        self.write("tables/plates.yaml", SHEET)
        self.write("tables/plates.csv", HEADER + BOX + TANK)

    def write(self, name: str, text: str | bytes) -> None:
        raw = text if isinstance(text, bytes) else text.encode()
        (self.root / name).write_bytes(raw)

    def table(self, text: str | bytes) -> None:
        self.write("tables/plates.csv", text)

    def own(self, text: str | bytes, name: str = "plates.csv") -> None:
        (self.user / name).write_bytes(text if isinstance(text, bytes) else text.encode())


@pytest.fixture
def folder(tmp_path: Path) -> DataFolder:
    return DataFolder(tmp_path)
