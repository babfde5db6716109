"""Column sheets are checked themselves."""

import pytest

from welds.reference.check import check_folder
from welds.reference.load import load_tables

from .conftest import SHEET


def test_the_sheet_is_readable_from_the_table(folder):
    sheet = load_tables(root=folder.root).table("plates").sheet
    assert (sheet.title, sheet.key, sheet.order) == ("Plates", ("plate", "side"), (("low_a", "high_a"),))
    thickness = sheet.columns["thickness_mm"]
    assert (thickness.unit, thickness.lowest, thickness.highest) == ("mm", 0.2, 80.0)
    assert list(sheet.columns)[-4:] == ["source_id", "place", "basis", "note"]


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        (
            "title: Plates",
            "titel: Plates",
            "row 1: unknown entry 'titel'; allowed: title, about, key, columns, order",
        ),
        ("title: Plates", "title: ''", "row 1: 'title' is missing or empty"),
        ("about: one plate of the yard, invented\n", "", "'about' is missing or empty"),
        ("key: [plate, side]", "key: plate", "row 3: 'key' is missing; it lists column names"),
        (
            "key: [plate, side]",
            "key: [plate, sied]",
            "row 3, column sied: 'key' names no column of this sheet",
        ),
        ("key: [plate, side]", "key: [passes]", "row 3, column passes: a key column cannot be optional"),
        (
            "plate: {type: text, meaning: name}",
            "plate: text",
            "row 5, column plate: expected {type: ..., meaning: ...}",
        ),
        (
            "plate: {type: text,",
            "plate: {type: txt,",
            "row 5, column plate: 'txt' is not one of text, number,",
        ),
        ("plate: {type: text,", "plate: {", "row 5, column plate: '' is not one of text"),
        (
            "plate: {type: text, meaning: name}",
            "plate: {type: text}",
            "row 5, column plate: 'meaning' is missing",
        ),
        ("unit: mm, min", "units: mm, min", "row 7, column thickness_mm: unknown entry 'units'"),
        ("unit: mm, ", "", "row 7, column thickness_mm: a number needs its 'unit' (1 for a plain ratio)"),
        ("min: 0.2, ", "", "row 7, column thickness_mm: optional, min or max: '' is not a number"),
        ("min: 0.2", "min: thin", "row 7, column thickness_mm: optional, min or max: 'thin' is not a number"),
        ("min: 0.2", "min: 90", "row 7, column thickness_mm: 'min' must be below 'max'"),
        (
            "optional: true, meaning: runs",
            "optional: maybe, meaning: runs",
            "row 10, column passes: optional, min or max: 'maybe'",
        ),
        (
            "choices: [port, starboard]",
            "choices: port",
            "row 6, column side: 'choices' must be a list of words",
        ),
        (", choices: [port, starboard]", "", "row 6, column side: 'choices' must be a list of words"),
        (
            "type: text, meaning",
            "type: text, choices: [a], meaning",
            "'choices' belongs to a choice or a list",
        ),
        (
            "type: text, meaning",
            "type: text, max: 3, meaning",
            "'min' and 'max' belong to a number or an integer",
        ),
        (
            "order: [[low_a, high_a]]",
            "order: [low_a, high_a]",
            "row 14: 'order' is a list of pairs of columns",
        ),
        (
            "order: [[low_a, high_a]]",
            "order: [[low_a, side]]",
            "row 14, column side: 'order' names no number column",
        ),
        (
            "order:",
            "  note: {type: flag, meaning: x}\norder:",
            "column note: this closing column is always of type text",
        ),
        ("columns:", "columns: 3\nrest:", "unknown entry 'rest'"),
    ],
)
def test_a_broken_sheet_is_refused(folder, old, new, expected):
    assert old in SHEET
    folder.write("tables/plates.yaml", SHEET.replace(old, new, 1))
    (fault,) = check_folder(folder.root)
    assert fault.startswith("data/tables/plates.yaml")
    assert expected in fault
