"""`welds log` as a person or a program calls it."""

import csv
import io
import json
import subprocess
import sys

import pytest

from tests.cli.conftest import Result
from welds.cli.main import main

CORNER = (
    *("--process", "tig", "--metal", "5052-H32", "--thickness", "0.080 in", "--joint", "outside-corner"),
    *("--current", "112 A", "--set", "polarity=ac", "--set", "cup=7", "--outcome", "worked-well"),
)
MUDGUARD = {
    "process": "mig",
    "metal": "galvanised",
    "thickness_mm": 1.5,
    "joint": "lap",
    "settings": {"current": 95, "wire_feed": 5.1},
    "outcome": "failed",
    "faults": ["burned through"],
}


@pytest.fixture
def run(capsys, monkeypatch, own_folders):
    """Return a caller of the command line; `given` goes to standard input."""

    def call(*argv: str, given: object = None, write_pdf=None) -> Result:
        text = given if isinstance(given, str) else json.dumps(given) if given is not None else ""
        monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(text.encode())))
        code = main(["log", *argv], open_window=lambda *_: 0, write_pdf=write_pdf or (lambda *_: None))
        said = capsys.readouterr()
        return Result(code, said.out, said.err)

    return call


def test_a_weld_is_logged_listed_and_shown(run):
    answer = run("add", *CORNER, "--notes", "bait tank (invented)")
    assert answer.code == 0
    assert answer.out.startswith("logged: 1  ")
    (entry,) = run("list", "--json").json
    assert entry["settings"] == {"current": 112, "polarity": "AC", "cup": 7}
    assert (entry["metal"], entry["outcome"], entry["number"]) == ("5052-H32", "worked-well", 1)
    assert entry["thickness_mm"] == pytest.approx(2.032)
    shown = run("show", "1", "--units", "inch").out
    assert "0.08" in shown
    assert "Polarity: AC" in shown
    assert run("show", entry["uid"][:8], "--json").json == entry


def test_json_on_standard_input_is_logged(run):
    answer = run("add", "--json", given=MUDGUARD)
    assert answer.code == 0
    assert answer.json["faults"] == ["burn-through"]
    assert answer.json["position"] == "PA"


def test_what_is_listed_is_what_add_takes(run, tmp_path):
    run("add", given=MUDGUARD)
    (entry,) = run("list", "--json").json
    other = str(tmp_path / "other.db")
    assert run("add", "--log", other, given=entry).code == 0
    (copy,) = run("list", "--json", "--log", other).json
    assert copy == entry
    again = run("add", given=entry)
    assert (again.code, again.out) == (0, "already in the log as number 1\n")


def test_a_list_on_standard_input_is_all_or_nothing(run):
    bad = {**MUDGUARD, "metal": "unobtainium"}
    assert run("add", given=[MUDGUARD, bad]).code == 2
    assert run("list", "--json").json == []
    answer = run("add", "--json", given=[MUDGUARD, {**MUDGUARD, "notes": "second"}])
    assert len(answer.json["added"]) == 2
    assert run("undo", answer.json["undo"]).code == 0
    assert run("list", "--json").json == []


def test_change_remove_and_undo(run):
    run("add", *CORNER)
    changed = run("edit", "1", "--set", "current=118", "--fault", "porous", "--json").json
    assert changed["settings"]["current"] == 118
    assert changed["settings"]["cup"] == 7
    assert changed["faults"] == ["porosity"]
    edited = run("edit", "1", "--json", given={"notes": "from standard input"}).json
    assert edited["notes"] == "from standard input"
    removed = run("remove", "1", "--json").json
    assert removed["removed"]["number"] == 1
    assert run("show", "1").code == 2
    assert run("undo", removed["undo"]).code == 0
    assert run("show", "1", "--json").json["notes"] == "from standard input"


def test_the_list_is_filtered_and_paged(run):
    run("add", *CORNER)
    run("add", given=MUDGUARD)
    assert [each["number"] for each in run("list", "--json").json] in ([2, 1], [1, 2])
    assert [each["number"] for each in run("list", "--json", "--outcome", "failed").json] == [2]
    assert [each["number"] for each in run("list", "--json", "--fault", "burned through").json] == [2]
    assert [each["number"] for each in run("list", "--json", "--text", "5052 corner").json] == [1]
    assert [each["number"] for each in run("list", "--json", "--sort", "current_a").json] == [1, 2]
    assert [each["number"] for each in run("list", "--json", "--thickness-min", "2 mm").json] == [1]
    assert [each["number"] for each in run("list", "--json", "--current-max", "95 A").json] == [2]
    assert [each["number"] for each in run("list", "--json", "--photos", "yes").json] == []
    assert len(run("list", "--json", "--limit", "1", "--offset", "1").json) == 1
    assert run("list", "--process", "mig").out.splitlines()[-1] == "1 to 1 of 1"


def test_similar_says_its_distance(run):
    run("add", *CORNER)
    ask = ("similar", "--process", "tig", "--metal", "5052", "--thickness", "2.54 mm", "--joint")
    (found,) = run(*ask, "outside-corner", "--json").json
    assert found["distance"] == pytest.approx(1.0, abs=0.001)  # 2.54 is 1.25 times 2.032
    (found,) = run(*ask, "butt", "--json").json
    assert found["distance"] == pytest.approx(2.0, abs=0.001)
    assert "distance: 1 for every quarter" in run(*ask, "butt").out


def test_out_and_in_again(run, tmp_path):
    run("add", *CORNER, "--notes", "=HYPERLINK(1)")
    run("add", given=MUDGUARD)
    for form in ("csv", "json"):
        file, other = str(tmp_path / f"a.{form}"), str(tmp_path / f"{form}.db")
        assert run("export", file).code == 0
        looked = run("import", file, "--log", other, "--json").json
        assert looked["counts"] == {"new": 2}
        assert not looked["written"]
        assert run("list", "--json", "--log", other).json == []
        assert run("import", file, "--log", other, "--accept").code == 0
        mine, theirs = run("list", "--json").json, run("list", "--json", "--log", other).json
        assert mine == theirs
    text = (tmp_path / "a.csv").read_text(encoding="utf-8-sig")
    cells = [cell for line in csv.reader(io.StringIO(text, newline="")) for cell in line]
    assert not [cell for cell in cells if cell.startswith("=")]


def test_an_import_with_a_bad_row_writes_nothing(run, tmp_path):
    file = tmp_path / "in.json"
    file.write_text(json.dumps([MUDGUARD, {**MUDGUARD, "joint": "dovetail"}]))
    answer = run("import", str(file), "--accept")
    assert answer.code == 2
    assert "row 2: bad: joint" in answer.out
    assert "nothing written" in answer.out
    assert run("list", "--json").json == []


def test_the_whole_log_in_one_file_and_back(run, tmp_path):
    run("add", *CORNER)
    file = str(tmp_path / "all.zip")
    assert run("backup", file, "--json").json["entries"] == 1
    run("remove", "1")
    answer = run("restore", file, "--json").json
    assert answer["entries"] == 1
    assert answer["old_log"]
    assert run("show", "1").code == 0


def test_check(run):
    run("add", *CORNER)
    found = run("check", "--json").json
    assert (found["is_whole"], found["entries"], found["waiting"]) == (True, 1, 0)


def test_a_sheet_in_text_page_and_pdf(run, tmp_path):
    run("add", *CORNER)
    assert "Welding process (ISO 4063): 141" in run("sheet", "1").out
    file = tmp_path / "sheet.html"
    assert run("sheet", "1", "--html", str(file)).code == 0
    assert "Preliminary" in file.read_text()
    made = []
    pdf = str(tmp_path / "sheet.pdf")
    run("sheet", "1", "--pdf", pdf, write_pdf=lambda path, report, *_: made.append((path, report.title)))
    assert made[0][0] == pdf
    assert "log entry 1" in made[0][1]


@pytest.mark.parametrize(
    ("argv", "code", "word"),
    [
        (("shw",), 2, "nearest: show"),
        (("add", "--process", "tig"), 2, "nothing"),
        (("add", *CORNER, "--set", "curent=1"), 2, "nearest: current"),
        (("add", *CORNER, "--set", "current"), 2, "NAME=VALUE"),
        (("add", *CORNER, "--outcom", "x"), 2, "nearest: --outcome"),
        (("add",), 2, "line"),
        (("show", "12"), 2, "entry"),
        (("list", "--outcome", "great"), 2, "worked-well"),
        (("list", "--family", "aluminum"), 2, "nearest: aluminium"),
        (("list", "--limit", "many"), 2, "whole number"),
        (("list", "--units", "yards"), 2, "--units"),
        (("undo", "abc"), 2, "token"),
        (("list", "--log", "nowhere.db"), 4, "no log here"),
        (("list", "--log", "mysql://a/b"), 2, "postgresql"),
        (("add", *CORNER, "--photo", "nowhere.jpg"), 4, "nowhere.jpg"),
        (("import", "nowhere.csv"), 4, "nowhere.csv"),
        (("restore", "nowhere.zip"), 4, "nowhere.zip"),
    ],
)
def test_a_slip_is_one_line_and_the_right_code(run, monkeypatch, tmp_path, argv, code, word):
    monkeypatch.chdir(tmp_path)
    answer = run(*argv)
    assert (answer.code, answer.out) == (code, "")
    assert word in answer.err
    assert answer.err.count("\n") == 1


def test_a_log_that_cannot_be_opened_keeps_the_entry(run, tmp_path):
    broken = tmp_path / "broken.db"
    broken.write_text("not a log at all")
    answer = run("add", *CORNER, "--log", str(broken))
    assert answer.code == 4
    assert "the entry is kept in" in answer.err
    broken.unlink()
    run("add", "--log", str(broken), given=MUDGUARD)
    assert len(run("list", "--json", "--log", str(broken)).json) == 2


def test_help_names_every_action(run):
    for argv in ((), ("--help",)):
        assert "similar" in run(*argv).out
    assert "--photo" in run("add", "--help").out


def test_the_store_is_not_imported_before_it_is_needed():
    code = (
        "import sys, welds.cli.log, welds.logbook.places\n"
        "print(*{name.partition('.')[0] for name in sys.modules})"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert not {"sqlalchemy", "alembic", "PIL", "psycopg", "numpy"} & set(done.stdout.split())
