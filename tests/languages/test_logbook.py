"""The log in the made-up language: what it tells is said through `tr`, what it keeps stays as it was."""

import sqlite3
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.languages.pseudo import left_over
from tests.logbook.conftest import BAIT_TANK, MUDGUARD
from welds import language
from welds.errors import LogbookUnavailableError, WeldsError
from welds.logbook import offers, store
from welds.logbook.alike import STATED
from welds.logbook.archive import back_up
from welds.logbook.browse import save_filter, saved
from welds.logbook.checking import check_log
from welds.logbook.csv_file import PLAIN
from welds.logbook.exporting import export_file
from welds.logbook.fields import FIELDS, read_entry
from welds.logbook.filter_fields import fields_of, filter_of
from welds.logbook.importing import Standing, preview_file
from welds.logbook.logbook import Logbook
from welds.logbook.opening import open_logbook
from welds.logbook.outbox import Outbox
from welds.logbook.places import place_of
from welds.logbook.restoring import restore
from welds.quantities.units import Units

DENTED = {**BAIT_TANK, "thickness_mm": 1.25, "gap_mm": 0.5, "settings": {"current": 87.5, "gas_flow": 8.5}}
KEYS = """field settings outcome worked well failed current polarity nothing start photos sort filter name uid
UUID entry log undo CSV JSON SHA ISO mm min max made day time faults fault metal tig mig process
thickness joint the"""
CSV_OF_OTHERS = "process,metal,wood\r\ntig,5052,1\r\n"


def wrong(error: WeldsError, *given: str) -> list[str]:
    """Return the words of an error that are neither keys, paths nor what was given."""
    said = str(error)
    for text in given:
        said = said.replace(text, "")
    return left_over(said, KEYS.split())


@pytest.mark.parametrize(
    ("fields", "given"),
    [
        ({"settings": None}, ()),
        ({"settings": 3}, ()),
        ({"settings": {"current": 1e9}}, ()),
        ({"settings": {"current": "lots"}}, ("lots",)),
        ({"outcome": ""}, ()),
        ({"uid": "x"}, ()),
        ({"made_at": "some day"}, ("some day",)),
        ({"made_at": 3}, ()),
        ({"notes": 3}, ("notes",)),
        ({"notes": "x" * 20_001}, ("notes",)),
        ({"notes": "a\x07"}, ("notes",)),
        ({"photos": [3]}, ("sha256",)),
        ({"photos": [{"sha256": "abc"}]}, ("abc",)),
        ({"faults": [True]}, ("burn-through", "True")),
    ],
)
def test_what_cannot_be_logged_is_said_in_the_language(pseudo_language, tables, fields, given):
    with pytest.raises(WeldsError) as error:
        read_entry({**BAIT_TANK, **fields}, tables)
    assert wrong(error.value, *given) == []


@pytest.mark.parametrize(
    "act",
    [
        lambda log, folder: log.get("x"),
        lambda log, folder: log.undo("x"),
        lambda log, folder: log.remove(99),
        lambda log, folder: save_filter(log, "", filter_of({}, None, Units.METRIC)),
        lambda log, folder: export_file(log, folder / "a.txt", None),
        lambda log, folder: preview_file(log, _written(folder / "a.csv", CSV_OF_OTHERS), None, None),
        lambda log, folder: preview_file(log, _written(folder / "a.csv", '"a'), None, None),
        lambda log, folder: preview_file(log, _written(folder / "a.json", "{"), None, None),
        lambda log, folder: preview_file(log, _written(folder / "a.json", "{}"), None, None),
        lambda log, folder: restore(place_of(str(folder / "a.db")), _written(folder / "a.zip", "a")),
        lambda log, folder: place_of("mysql://a"),
        lambda log, folder: open_logbook(str(folder)),
        lambda log, folder: open_logbook(str(_written(folder / "b.db", "no log"))),
        lambda log, folder: open_logbook(str(folder / "c.db"), read_only=True),
        lambda log, folder: open_logbook(str(_database(folder / "d.db"))),
    ],
)
def test_what_cannot_be_done_is_said_in_the_language(pseudo_language, tmp_path: Path, act: Callable):
    with open_logbook(str(tmp_path / "yard.db")) as log, pytest.raises(WeldsError) as error:
        act(log, tmp_path)
    said = [*getattr(error.value, "offers", ()), str(tmp_path), "postgresql+psycopg://USER@HOST/DATABASE"]
    keys = ("mysql", "export", "import", "restore", "csv", "json", "txt", "zip", "wood", "welds.log/1")
    of_libraries = (
        "unexpected end of data",
        "Expecting property name enclosed in double quotes: line 1 column 2",
    )
    assert wrong(error.value, *said, ", ".join(PLAIN), *of_libraries, *keys) == []


def test_every_trouble_of_a_file_and_every_way_out_can_be_said(pseudo_language):
    troubles = [problem for _, problem, _ in store._SQLITE]
    ways = [getattr(offers, name) for name in dir(offers) if name.isupper()]
    assert [text for text in (*troubles, *ways, STATED) if left_over(language.tr(text))] == []


def test_the_state_of_a_log_and_what_waits_are_said_in_the_language(pseudo_language, tables, tmp_path: Path):
    path = tmp_path / "yard.db"
    reading = read_entry(BAIT_TANK, tables)
    waiting = place_of(str(path)).waiting
    kept = Outbox(waiting).keep(reading, LogbookUnavailableError("yard.db", "x"))
    assert wrong(kept, str(waiting), "yard.db") == []
    with open_logbook(str(path)) as log:
        said = [*log.notices, *check_log(log).lines()]
        assert log.count() == 1
    assert len(said) >= 4
    assert {text: left for text in said if (left := left_over(text.replace(str(path), "")))} == {}


def test_why_a_row_is_not_imported_is_said_in_the_language(pseudo_language, tables, tmp_path: Path):
    exported = tmp_path / "a.json"
    with open_logbook(str(tmp_path / "yard.db")) as log:
        entry = log.add(read_entry(BAIT_TANK, tables)).entry
        export_file(log, exported, tables)
        text = exported.read_text(encoding="utf-8")
        again = text.replace("112", "113")
        rows = [*preview_file(log, exported, tables, None).rows]
        rows += preview_file(log, _written(tmp_path / "b.json", again), tables, None).rows
        rows += preview_file(log, _written(tmp_path / "c.json", '[{"process": "mig"}, 3]'), tables, None).rows
    assert {row.standing for row in rows} == {Standing.DUPLICATE, Standing.BAD}
    reasons = [row.reason.replace(entry.uid, "").replace(", ".join(FIELDS), "") for row in rows]
    assert {why: left for why in reasons if (left := left_over(why, KEYS.split()))} == {}


def test_log_export_import_backup_and_filter_are_the_same_in_every_language(
    tables, tmp_path: Path, request: pytest.FixtureRequest
):
    given = [
        {**each, "uid": f"00000000-0000-4000-8000-00000000000{number}"}
        for number, each in enumerate((BAIT_TANK, MUDGUARD, DENTED))
    ]

    def written(name: str) -> tuple[object, ...]:
        folder = tmp_path / name
        folder.mkdir()
        with open_logbook(str(folder / "yard.db")) as log:
            entries = [log.add(read_entry(each, tables)).entry for each in given]
            texts = [_exported(log, folder / f"a.{form}", tables) for form in ("csv", "json")]
            save_filter(log, "thin", filter_of({"thickness_max": "1.5 mm"}, tables, Units.METRIC))
            kept = fields_of(saved(log)["thin"])
            assert back_up(log, folder / "a.zip") == 3
        with open_logbook(str(folder / "b.db")) as other:
            new = preview_file(other, folder / "a.csv", tables, None).new
        place = place_of(str(folder / "c.db"))
        assert restore(place, folder / "a.zip")[0] == 3
        return (*entries, *texts, kept, *new, _rows(folder / "yard.db"), _rows(folder / "c.db"))

    english = written("english")
    request.getfixturevalue("pseudo_language")
    assert written("other") == english
    assert '"87.5"' in str(english[3])


def _exported(log: Logbook, file: Path, tables) -> str:
    export_file(log, file, tables)
    return file.read_text(encoding="utf-8")


def _rows(file: Path) -> list[tuple[object, ...]]:
    with sqlite3.connect(file) as database:
        rows = database.execute("SELECT * FROM entries ORDER BY number").fetchall()
        database_id = database.execute("PRAGMA application_id").fetchone()
    database.close()
    return [database_id, *rows]


def _written(path: Path, text: str) -> Path:
    path.write_text(text, encoding="utf-8")
    return path


def _database(path: Path) -> Path:
    with sqlite3.connect(path) as database:
        database.execute("CREATE TABLE other (id INTEGER)")
    database.close()
    return path
