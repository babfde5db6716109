"""No exported cell begins a formula, whatever a bench, a job or a table of one's own is called."""

import csv
import io
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.hostile.cases import cases
from welds.quantities.spreadsheet import csv_text, unguarded

EVIL = "=cmd|' /C calc'!A0"
OPENS = ("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20")
NUMBER = re.compile(r'[+-][0-9.]+(e[+-]?[0-9]+)?([,;|\t"]|$)')
"""A negative number; with the wrong separator the columns behind it are in its cell."""
ROOT = Path(__file__).parents[2]


def is_number(cell: str) -> bool:
    try:
        float(cell)
    except ValueError:
        return False
    return True


def assert_harmless(text: str) -> None:
    """Read it with every separator a spreadsheet may choose, a bare number being no formula."""
    for separator in ",;\t|":
        for cells in csv.reader(io.StringIO(text, newline=""), delimiter=separator):
            for cell in cells:
                bare = cell.lstrip(" ").lstrip('"')
                assert NUMBER.match(bare) or not bare.startswith(OPENS), (separator, cell)


@cases(100, 0.05)
@given(
    st.lists(st.lists(st.text(st.sampled_from("=+-@'\";,|a1. \n\t"), max_size=12), max_size=4), max_size=4)
)
def test_any_words(rows):
    text = csv_text(rows)
    assert_harmless(text)
    read = list(csv.reader(io.StringIO(text, newline="")))
    assert [[unguarded(cell) for cell in row] for row in read] == [
        [cell if not is_number(cell) else unguarded(cell) for cell in row] for row in rows
    ]


def test_numbers_stay_numbers():
    assert csv_text([[-1.5, "+3", "1e-05", None, "plain"]]) == "-1.5,+3,1e-05,,plain\n"


@pytest.mark.parametrize(
    "words",
    [
        "compare --process tig --metal 304 --thickness 2mm --joint lap --joint tee --csv F --bench evil.yaml",
        "chart --process tig --metal 5052 --thickness 2mm --joint butt --bench evil.yaml --csv F",
        "job materials evil.job --csv F",
        "log export F.csv --log yard.db",
    ],
)
def test_what_the_commands_export(box, words):
    machine = f'{{name: "{EVIL}", processes: [tig], current_min_a: 5, current_max_a: 200}}'
    (box.work / "evil.yaml").write_text(f"machines: [{machine}]\n", encoding="utf-8")
    job = (box.work / "job.yaml").read_text(encoding="utf-8").replace("currency: EUR", f'currency: "{EVIL}"')
    (box.work / "evil.job").write_text(job, encoding="utf-8")
    add = "log add --process tig --metal 304 --thickness 2mm --joint lap --current 80 --outcome failed"
    assert box.run([*add.split(), "--log", "yard.db", "--notes", EVIL, "--machine", EVIL]).code == 0
    answer = box.run(words.split())
    assert answer.code == 0, answer.err
    text = (box.work / ("F.csv" if words.startswith("log") else "F")).read_text(encoding="utf-8-sig")
    assert_harmless(text)
    assert not words.startswith(("compare", "log")) or f"'{EVIL[:4]}" in text


def test_csv_is_written_in_two_places_only():
    found = [
        file for file in (ROOT / "welds").rglob("*.py") if "csv.writer" in file.read_text(encoding="utf-8")
    ]
    assert sorted(file.name for file in found) == ["csv_file.py", "spreadsheet.py"]
