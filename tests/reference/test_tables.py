"""Tables in memory and the records made from them."""

from dataclasses import dataclass
from typing import ClassVar

import pytest

from welds.errors import InputError
from welds.reference.load import load_tables


@dataclass(frozen=True, slots=True)
class Plate:
    TABLE: ClassVar[str] = "plates"

    plate: str
    thickness_mm: float
    passes: int | None


def test_records_carry_the_asked_columns_and_are_made_once(folder):
    tables = load_tables(root=folder.root)
    records = tables.records(Plate)
    assert records == (Plate("box", 2.5, 1), Plate("tank", 3.2, None))
    assert tables.records(Plate) is records


def test_an_unknown_table_names_the_nearest(folder):
    with pytest.raises(InputError, match="nearest: plates"):
        load_tables(root=folder.root).table("plate")


def test_a_frame_has_the_sheets_columns(folder):
    table = load_tables(root=folder.root).table("plates")
    frame = table.frame()
    assert list(frame.columns) == list(table.sheet.columns)
    assert frame["thickness_mm"].tolist() == [2.5, 3.2]


def test_derived_values_are_worked_out_once(folder):
    calls = []

    def count(tables):
        calls.append(tables)
        return len(tables.names)

    tables = load_tables(root=folder.root)
    assert (tables.derived(count), tables.derived(count)) == (1, 1)
    assert len(calls) == 1
