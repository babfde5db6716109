"""Export, import, backup: what goes out comes back, and nothing runs on the way."""

import csv
import io
import json
import zipfile
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.logbook.conftest import BAIT_TANK, MUDGUARD
from welds.errors import FileUnavailableError, InputError
from welds.logbook.archive import back_up
from welds.logbook.browse import page, save_filter, saved
from welds.logbook.csv_file import csv_lines, read_csv
from welds.logbook.exporting import export_file
from welds.logbook.fields import entry_json, read_entry
from welds.logbook.filters import Filter
from welds.logbook.importing import Standing, accept, preview, preview_file
from welds.logbook.json_file import json_lines, read_json
from welds.logbook.opening import open_logbook
from welds.logbook.places import place_of
from welds.logbook.restoring import restore
from welds.quantities.spreadsheet import guarded, unguarded

FORMULAS = (
    "=1+1",
    "+1",
    "-1",
    "@SUM(A1)",
    "=cmd|' /C calc'!A0",
    "\t=1",
    "'=1",
    "''",
    "fine; =1+1",
    "fine;=1+1",
    "a,=b",
    "line\n=2",
    "line\n-2",
    "\uff1d1",
    "- a list\n- of things",
    "|=1",
)
SPREADSHEET_SEPARATORS = ",;\t|"


@pytest.fixture
def filled(log, reading):
    """Return a log with awkward entries."""
    new = []
    for number, text in enumerate((*FORMULAS, "plain", '"quoted", or so', "ünïcode 焊接 \U0001f525")):
        one_line = " ".join(text.split()) or "-"
        new.append(reading(notes=text, welder=one_line, machine=f"{number}").entry)
    words = {"current": 95.5, "tungsten_type": "2", "tip": "true", "gas_lens": True, "backing": "null"}
    new.append(reading(MUDGUARD, settings=words).entry)
    odd = {"settings": {"current": 0.1 + 0.2}, "gap_mm": 0, "hand": "brisk", "faults": ["510", "crack"]}
    new.append(reading(material_lot="=lot", **odd).entry)
    log.add_all(new)
    return log


def everything(log) -> list[dict]:
    return [entry_json(entry) for entry in page(log, sort="number", is_descending=False, limit=1000).entries]


# ------------------------------------------------------------------------------------------ round trips


@pytest.mark.parametrize("form", ["csv", "json"])
def test_what_is_exported_comes_back(filled, tmp_path, tables, form):
    file = tmp_path / f"out.{form}"
    count = export_file(filled, file, tables)
    assert count == filled.count()
    with open_logbook(str(tmp_path / "second.db")) as second:
        found = preview_file(second, file, tables)
        assert found.count(Standing.NEW) == count
        assert second.count() == 0
        accept(second, found)
        assert everything(second) == everything(filled)
        again = tmp_path / f"again.{form}"
        export_file(second, again, tables)
        assert again.read_bytes() == file.read_bytes()


TEXTS = st.text(st.characters(exclude_categories=["Cs", "Cc"]), max_size=40).map(str.strip)
RISKY = st.text(st.sampled_from("=+-@'\";,|ab \n"), max_size=20).map(str.strip)
VALUES = st.one_of(
    st.floats(0, 1e5, allow_nan=False).map(lambda n: int(n) if n.is_integer() else n),
    st.booleans(),
    RISKY,
    TEXTS,
)


@settings(max_examples=60)
@given(
    notes=st.one_of(TEXTS, RISKY),
    machine=RISKY,
    tip=VALUES,
    backing=VALUES,
    current=st.floats(0, 2000, allow_nan=False),
)
def test_any_entry_survives_both_forms(tables, notes, machine, tip, backing, current):
    chosen = {"current": current, "tip": tip, "backing": backing}
    entry = read_entry({**BAIT_TANK, "notes": notes, "machine": machine, "settings": chosen}, tables).entry
    text = "".join(csv_lines([entry], tables))
    ((_, fields),) = read_csv(text)
    assert entry_json(read_entry(fields, tables).entry) == entry_json(entry)
    ((_, fields),) = read_json("".join(json_lines([entry])))
    assert entry_json(read_entry(fields, tables).entry) == entry_json(entry)


# ------------------------------------------------------------------------------------ no formula runs


def begins_a_formula(cell: str) -> bool:
    return cell.lstrip(" ")[:1] in ("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20")


@pytest.mark.parametrize("separator", SPREADSHEET_SEPARATORS)
def test_no_cell_begins_a_formula_whatever_splits_the_lines(filled, tmp_path, tables, separator):
    file = tmp_path / "out.csv"
    export_file(filled, file, tables)
    text = file.read_text(encoding="utf-8-sig")
    for line in csv.reader(io.StringIO(text, newline=""), delimiter=separator):
        for cell in line:
            for part in (cell, *cell.split("\n")):
                assert not begins_a_formula(part.lstrip('"')), (separator, cell)
    for line in text.splitlines():  # and read by a program that knows nothing of quotes
        for cell in line.split(separator):
            assert not begins_a_formula(cell.strip('"')), (separator, cell)


@given(st.text(st.sampled_from("=+-@'\";,|a \n\t"), max_size=30))
def test_the_guard_comes_off_exactly(text):
    assert unguarded(guarded(text)) == text


@pytest.mark.parametrize("text", ["plain", "it's", "5052-H32", "2026-03-03T14:05:00+01:00", "a = b"])
def test_ordinary_text_is_left_as_it_is(text):
    assert guarded(text) == text


# ---------------------------------------------------------------------------------------------- import


def test_each_row_is_judged_and_nothing_is_written_before(log, reading, tables):
    held = log.add(reading()).entry
    stranger = read_entry(MUDGUARD, tables).entry
    rows = [
        entry_json(held),
        entry_json(stranger),
        entry_json(stranger),
        {**entry_json(held), "notes": "changed elsewhere"},
        {**MUDGUARD, "metal": "unobtainium"},
        {name: value for name, value in BAIT_TANK.items() if name != "outcome"},
        BAIT_TANK,
        {**BAIT_TANK, "photos": ["somewhere.jpg"]},
        {**BAIT_TANK, "settings": {"curent": 1}},
    ]
    found = preview(log, enumerate(rows, 1), tables)
    assert [row.standing.value for row in found.rows] == [
        *("duplicate", "new", "bad", "bad", "bad", "bad", "duplicate", "bad", "bad")
    ]
    reasons = [row.reason for row in found.rows]
    assert "number 1" in reasons[0]
    assert "same uid as row 2" in reasons[2]
    assert "another content" in reasons[3]
    assert "metal" in reasons[4]
    assert "outcome" in reasons[5]
    assert "nearest: current" in reasons[8]
    with pytest.raises(InputError, match="row 3"):
        accept(log, found)
    assert log.count() == 1


def test_an_accepted_import_can_be_taken_back(log, tables):
    rows = [{**BAIT_TANK, "notes": f"bead {n}"} for n in range(3)]
    token = accept(log, preview(log, enumerate(rows, 1), tables))
    assert log.count() == 3
    log.undo(token)
    assert log.count() == 0


def test_the_same_file_twice_adds_nothing(log, tables):
    rows = list(enumerate([BAIT_TANK, BAIT_TANK, MUDGUARD], 1))
    accept(log, preview(log, rows, tables))
    again = preview(log, rows, tables)
    assert again.count(Standing.DUPLICATE) == 3
    assert accept(log, again) is None
    assert log.count() == 2


@pytest.mark.parametrize(
    ("name", "content", "word"),
    [
        ("a.csv", b"wood,screws\n1,2\n", "columns"),
        ("a.csv", b"", "columns"),
        ("a.csv", b"\xff\xfe\x00", "UTF-8"),
        ("a.json", b"{", "not JSON"),
        ("a.json", b'{"schema": "other"}', "welds.log/1"),
        ("a.json", b"[" * 100_000, "not JSON"),
    ],
)
def test_a_file_of_something_else_is_refused(log, tables, tmp_path, name, content, word):
    file = tmp_path / name
    file.write_bytes(content)
    with pytest.raises(InputError, match=word):
        preview_file(log, file, tables)


def test_rows_of_a_bad_csv_are_named_by_line(log, tables, tmp_path):
    head = "process,metal,thickness_mm,joint,outcome,settings.current\n"
    (tmp_path / "a.csv").write_text(
        head + "tig,5052,2,butt,worked,80\ntig,5052,x,butt,worked,80\ntig,5052,2,butt,worked,80,9\n"
    )
    found = preview_file(log, tmp_path / "a.csv", tables)
    assert [(row.place, row.standing.value) for row in found.rows] == [(2, "new"), (3, "bad"), (4, "bad")]


def test_an_export_that_cannot_be_written_leaves_the_old_file(filled, tmp_path, tables):
    with pytest.raises(FileUnavailableError):
        export_file(filled, tmp_path / "no" / "out.csv", tables)
    with pytest.raises(InputError, match=r"\.csv or \.json"):
        export_file(filled, tmp_path / "out.xls", tables)
    full = Path("/dev/full")
    if full.exists():
        link = tmp_path / "full.json"
        link.symlink_to(full)
        with pytest.raises(FileUnavailableError, match="No space"):
            export_file(filled, link, tables)


# ---------------------------------------------------------------------------------------------- backup


def test_the_whole_log_goes_into_one_file_and_back(filled, reading, tmp_path, picture):
    filled.add(reading(photos=[str(picture)]))
    save_filter(filled, "cold ones", Filter(fault="lack-of-fusion"))
    before, file = everything(filled), tmp_path / "all.zip"
    numbers = [entry.number for entry in page(filled, limit=1000).entries]
    assert back_up(filled, file) == len(before)
    filled.remove(1)
    filled.add(reading(notes="after the backup"))
    place = filled.place
    filled.close()
    count, aside = restore(place, file)
    assert count == len(before)
    assert (aside is not None) == (place.path is not None)
    with open_logbook(place) as log:
        assert everything(log) == before
        assert [entry.number for entry in page(log, limit=1000).entries] == numbers
        assert saved(log) == {"cold ones": Filter(fault="lack-of-fusion")}
        assert log.add(reading(notes="one more")).entry.number > max(numbers)


def test_a_backup_goes_to_another_kind_of_log_with_its_pictures(filled, reading, tmp_path, picture, server):
    photo = filled.add(reading(photos=[str(picture)])).entry.photos[0]
    before, file = everything(filled), tmp_path / "all.zip"
    back_up(filled, file)
    other = place_of(server.new_log() if filled.place.path else str(tmp_path / "other.db"))
    restore(other, file)
    with open_logbook(other) as log:
        assert everything(log) == before
        assert log.photos.content(photo.sha256) == picture.read_bytes()


@pytest.mark.parametrize("harm", ["cut", "count", "picture", "text"])
def test_a_backup_that_is_not_whole_changes_nothing(filled, reading, tmp_path, picture, harm):
    filled.add(reading(photos=[str(picture)]))
    before, file, bad = everything(filled), tmp_path / "all.zip", tmp_path / "bad.zip"
    back_up(filled, file)
    if harm == "cut":
        bad.write_bytes(file.read_bytes()[:-200])
    elif harm == "text":
        bad.write_text("not a backup")
    else:
        with zipfile.ZipFile(file) as good, zipfile.ZipFile(bad, "w") as out:
            for name in good.namelist():
                content = good.read(name)
                if harm == "count" and name == "manifest.json":
                    manifest = json.loads(content)
                    content = json.dumps({**manifest, "entries": manifest["entries"] + 1}).encode()
                if harm == "picture" and name.startswith("photos/"):
                    name = "photos/" + "0" * 64
                out.writestr(name, content)
    with pytest.raises(InputError, match="whole"):
        restore(filled.place, bad)
    assert everything(filled) == before


def test_a_backup_that_cannot_be_written_says_so(filled, tmp_path):
    with pytest.raises(FileUnavailableError):
        back_up(filled, tmp_path / "no" / "all.zip")
    with pytest.raises(FileUnavailableError):
        restore(filled.place, tmp_path / "none.zip")
