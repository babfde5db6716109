"""The strict loader: what it takes, and every way it says no."""

import pytest

from welds.errors import ReferenceDataError
from welds.reference.basis import Basis
from welds.reference.check import check_folder
from welds.reference.load import load_tables

from .conftest import BOX, HEADER, SHEET, TANK


def test_cells_arrive_typed(folder):
    row, bare = load_tables(root=folder.root).table("plates").rows
    assert row == {
        "plate": "box",
        "side": "port",
        "thickness_mm": 2.5,
        "low_a": 60.0,
        "high_a": 80.0,
        "passes": 1,
        "tempers": ("H32", "H34"),
        "is_patched": True,
        "cell_bases": (("low_a", Basis.RECALLED),),
        "source_id": "BOOK",
        "place": "p. 1",
        "basis": Basis.PRINTED,
        "note": "thin, bent",
    }
    assert (bare["low_a"], bare["passes"], bare["tempers"], bare["note"]) == (None, None, (), "")
    assert bare["is_patched"] is False


@pytest.mark.parametrize(
    "text",
    [
        pytest.param(b"\xef\xbb\xbf" + (HEADER + BOX + TANK).encode(), id="byte-order mark"),
        pytest.param((HEADER + BOX + TANK).replace("\n", "\r\n"), id="Windows line ends"),
        pytest.param((HEADER + BOX + TANK).replace("\n", "\r"), id="old line ends"),
        pytest.param((HEADER + BOX + "\n" + TANK + ",,,,,,,,,,,,\n\n"), id="blank lines"),
        pytest.param((HEADER + BOX + TANK).replace(",2.5,", ", 2.5 ,"), id="blanks round a cell"),
        pytest.param((HEADER + BOX + TANK).removesuffix("\n"), id="no end of line at the end"),
    ],
)
def test_what_spreadsheets_write_reads_the_same(folder, text):
    plain = load_tables(root=folder.root).table("plates").rows
    folder.table(text)
    assert load_tables(root=folder.root).table("plates").rows == plain


FAULTS = {
    "empty file": ("", "the file is empty"),
    "blanks only": (" \n\n", "the file is empty"),
    "binary": (b"\x89PNG\r\n\x1a\n\xff\xfe", "not a UTF-8 text file (byte 1)"),
    "zero bytes": (b"p\0l\0a\0t\0e\0", "not a text file: it holds zero bytes"),
    "two-byte text": ("plate,side".encode("utf-16"), "not a UTF-8 text file (byte 1)"),
    "header only": (HEADER, "row 1: only a header, no rows"),
    "header twice": (
        HEADER.replace("low_a", "passes") + BOX,
        "row 1, column passes: the column comes 2 times",
    ),
    "unknown column": (
        HEADER.replace("thickness_mm", "thicknes_mm") + BOX,
        "row 1, column thicknes_mm: unknown column; nearest: thickness_mm",
    ),
    "nameless column": (HEADER.replace(",note", ",") + BOX, "row 1: unknown column"),
    "missing column": (
        HEADER.replace(",is_patched", "") + BOX.replace(",yes", ""),
        "row 1, column is_patched: the column is missing",
    ),
    "another table": (
        "id,thickness_mm\nbox,2.5\n",
        "row 1, column id: unknown column",
    ),
    "missing columns": (
        "plate,thickness_mm,low_a,high_a,passes,tempers,cell_bases,place,basis\nbox,2.5,,,,,,p. 1,printed\n",
        "row 1: columns are missing: side, is_patched, source_id",
    ),
    "missing closing column": (
        HEADER.replace(",basis", "") + BOX.replace(",printed", ""),
        "row 1, column basis: the column is missing",
    ),
    "semicolons": (
        (HEADER + BOX).replace(",", ";"),
        "row 1: cells are separated by semicolons here; use commas",
    ),
    "too few cells": (HEADER + "box,port,2.5\n", "row 2: 3 cells, but the header has 13"),
    "too many cells": (HEADER + BOX.strip() + ",\n", "row 2: 14 cells, but the header has 13"),
    "open quote": (
        HEADER + BOX + 'tank,"starboard,3.2\n',
        "row 3: not readable as CSV: unexpected end of data",
    ),
    "key twice": (
        HEADER + BOX + TANK + BOX,
        "row 4, column plate: plate box, side port comes twice (first in row 2)",
    ),
    "empty cell": (HEADER + BOX.replace("2.5", ""), "row 2, column thickness_mm: the cell is empty"),
    "text for a number": (
        HEADER + BOX.replace("2.5", "thin"),
        "row 2, column thickness_mm: 'thin' is not a number (digits and a decimal point, no unit)",
    ),
    "unit in a cell": (HEADER + BOX.replace("2.5", "2.5 mm"), "'2.5 mm' is not a number"),
    "not a number": (HEADER + BOX.replace("2.5", "nan"), "'nan' is not a number"),
    "infinity": (HEADER + BOX.replace("2.5", "inf"), "'inf' is not a number"),
    "endless": (HEADER + BOX.replace("2.5", "1e999"), "'1e999' is too large"),
    "decimal comma": (HEADER + BOX.replace("2.5", '"2,5"'), "'2,5' is not a number"),
    "underscore": (HEADER + BOX.replace("2.5", "2_5"), "'2_5' is not a number"),
    "other digits": (HEADER + BOX.replace("2.5", "٢"), "is not a number"),
    "below what is believable": (
        HEADER + BOX.replace("2.5", "0.01"),
        "row 2, column thickness_mm: 0.01 is not believable; allowed: 0.2 to 80 mm",
    ),
    "above what is believable": (
        HEADER + BOX.replace("2.5", "1e9"),
        "1e9 is not believable; allowed: 0.2 to 80 mm",
    ),
    "negative": (HEADER + BOX.replace("2.5", "-2"), "-2 is not believable"),
    "half a run": (HEADER + BOX.replace(",1,", ",1.5,"), "row 2, column passes: '1.5' is not a whole number"),
    "word outside the list": (
        HEADER + BOX.replace("port", "prot"),
        "row 2, column side: 'prot' is not one of port, starboard; nearest: port",
    ),
    "flag": (HEADER + BOX.replace("yes", "true"), "row 2, column is_patched: 'true' is neither yes nor no"),
    "hole in a list": (
        HEADER + BOX.replace("H32; H34", "H32;;H34"),
        "row 2, column tempers: 'H32;;H34' has an empty",
    ),
    "list with a repeat": (
        HEADER + BOX.replace("H34", "H32"),
        "row 2, column tempers: 'H32; H32' names an entry twice",
    ),
    "grade": (
        HEADER + BOX.replace("printed", "print"),
        "column basis: 'print' is not one of printed, quoted, derived, practice, recalled; nearest: printed",
    ),
    "grade of a cell": (
        HEADER + BOX.replace("low_a=recalled", "low_a=guess"),
        "row 2, column cell_bases: 'guess' is not",
    ),
    "grade of no cell": (
        HEADER + BOX.replace("low_a=recalled", "low_b=recalled"),
        "row 2, column cell_bases: 'low_b' is not a column of this table",
    ),
    "unknown source": (
        HEADER + BOX.replace("BOOK", "LORE"),
        "row 2, column source_id: source 'LORE' is not in sources.yaml",
    ),
    "out of order": (
        HEADER + BOX.replace(",60,80,", ",90,80,"),
        "row 2, column low_a: low_a 90 is above high_a 80",
    ),
}


@pytest.mark.parametrize(("text", "expected"), FAULTS.values(), ids=FAULTS)
def test_a_broken_table_is_refused_with_its_place(folder, text, expected):
    folder.table(text)
    with pytest.raises(ReferenceDataError) as caught:
        load_tables(root=folder.root)
    message = str(caught.value)
    assert message.startswith("data/tables/plates.csv")
    assert expected in message
    assert "\n" not in message
    assert caught.value.exit_code == 2


def test_row_numbers_count_lines_of_the_file(folder):
    folder.table(HEADER + BOX.replace("thin, bent", "thin,\nbent") + "\n" + TANK.replace("3.2", "x"))
    with pytest.raises(ReferenceDataError) as caught:
        load_tables(root=folder.root)
    assert (caught.value.row, caught.value.column) == (5, "thickness_mm")


def test_missing_and_stray_files(folder):
    (folder.root / "tables/plates.yaml").rename(folder.root / "tables/hulls.yaml")
    assert check_folder(folder.root) == [
        "data/tables/hulls.csv: cannot be read: No such file or directory",
        "data/tables/plates.csv: its column sheet plates.yaml is missing",
    ]


def test_a_folder_in_place_of_a_table(folder):
    (folder.root / "tables/plates.csv").unlink()
    (folder.root / "tables/plates.csv").mkdir()
    assert check_folder(folder.root) == ["data/tables/plates.csv: cannot be read: Is a directory"]


def test_a_file_too_large_to_be_a_table(folder):
    folder.table("x" * 6_000_000)
    assert check_folder(folder.root) == ["data/tables/plates.csv: larger than 5 MB; no table is"]


def test_all_faults_are_collected_and_the_first_is_raised(folder):
    folder.table(HEADER + BOX.replace("2.5", "thin").replace("port", "prot") + TANK.replace("3.2", "900"))
    folder.write("tables/hulls.csv", "a,b\n")
    faults = check_folder(folder.root)
    assert len(faults) == 4
    with pytest.raises(ReferenceDataError, match=r"\(and 3 more; `welds tables check` lists all\)") as caught:
        load_tables(root=folder.root)
    assert str(caught.value).startswith(faults[0])


def test_broken_cautions_are_listed_too(folder):
    folder.write("hazards.yaml", "zinc: {severity: loud}\n")
    (fault,) = check_folder(folder.root)
    assert fault.startswith("data/hazards.yaml, row 1: zinc: ")


def test_sheets_may_name_the_closing_columns_themselves(folder):
    folder.write(
        "tables/plates.yaml", SHEET.replace("order:", "  note: {type: text, meaning: remark}\norder:")
    )
    assert check_folder(folder.root) == []


def test_the_shipped_data_loads(tables):
    assert {"metals", "gauges", "filler_pairs", "fillers", "preheat", "tacks"} <= set(tables.names)
