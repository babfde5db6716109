"""Rules that every shipped table keeps, row by row."""

import re

import pytest

from welds.quantities.registry import registry
from welds.reference.basis import Basis
from welds.reference.cells import Kind
from welds.reference.load import load_tables

TABLES = load_tables()
SUFFIX_UNITS = {
    "_mm": "mm",
    "_in": "inch",
    "_a": "A",
    "_v": "V",
    "_hz": "Hz",
    "_s": "s",
    "_percent": "percent",
    "_deg": "deg",
    "_c": "degC",
    "_l_min": "l/min",
    "_mm_s": "mm/s",
    "_m_min": "m/min",
    "_kj_mm": "kJ/mm",
    "_kg_m3": "kg/m^3",
    "_w_mk": "W/(m*K)",
    "_j_kgk": "J/(kg*K)",
    "_j_kg": "J/kg",
    "_per_k": "1/K",
}
LONGEST_FIRST = sorted(SUFFIX_UNITS, key=len, reverse=True)
EVERY_TABLE = pytest.mark.parametrize("name", TABLES.names)


ANY = "any"
"""Unit of a column whose rows name their own in a column beside it."""


def unit_column(name: str, column: str) -> bool:
    prefix = "printed_" if column.startswith("printed_") else ""
    return f"{prefix}unit" in TABLES.table(name).sheet.columns


def number_columns(name: str):
    return [column for column in TABLES.table(name).sheet.columns.values() if column.kind is Kind.NUMBER]


@EVERY_TABLE
def test_it_has_rows_and_says_what_a_row_is(name):
    table = TABLES.table(name)
    assert table.rows
    assert len(table.sheet.about) > 20


@EVERY_TABLE
def test_units_are_known(name):
    for column in number_columns(name):
        if column.unit == ANY:
            assert unit_column(name, column.name), f"{column.name}: a row must say its own unit"
        else:
            registry().parse_units(column.unit)


@EVERY_TABLE
def test_a_columns_name_and_its_unit_agree(name):
    for column in number_columns(name):
        suffix = next((suffix for suffix in LONGEST_FIRST if column.name.endswith(suffix)), None)
        if suffix:
            units = registry()
            assert units.parse_units(column.unit) == units.parse_units(SUFFIX_UNITS[suffix]), column.name


@EVERY_TABLE
def test_no_row_claims_more_than_was_read_of_its_source(name):
    for row in TABLES.table(name).rows:
        source = TABLES.sources[row["source_id"]]
        from_memory = re.match(r"from memory|common practice|own definition", source.how_read)
        if from_memory:
            assert row["basis"] not in (Basis.PRINTED, Basis.QUOTED) or "quoted" in source.how_read, row
        if row["basis"] is Basis.PRINTED:
            assert re.search(r"\bread\b", source.how_read), row


@EVERY_TABLE
def test_cells_hold_no_addresses(name):
    for row in TABLES.table(name).rows:
        for cell in row.values():
            assert "://" not in str(cell)


@EVERY_TABLE
def test_bounds_stand_the_right_way_round(name):
    """Every x_min_u with an x_max_u is either kept in order by the sheet or never out of order."""
    table = TABLES.table(name)
    for low in table.sheet.columns:
        high = re.sub(r"_min(?=_|$)", "_max", low)
        if high != low and high in table.sheet.columns:
            for row in table.rows:
                if row[low] is not None and row[high] is not None:
                    assert row[low] <= row[high], row
