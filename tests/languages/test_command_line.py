"""The command line in the made-up language: it says nothing in English; what programs read stays as it is."""

import re
from html import unescape

import pytest

from tests.cli.conftest import lent, welds  # noqa: F401  # fixtures
from tests.languages.pseudo import Pseudo, left_over
from welds import language
from welds.reference.load import load_tables

CARD = ("--process", "tig", "--metal", "5052", "--thickness", "2mm", "--joint", "butt")
MIG = (
    *("--process", "mig", "--metal", "5052", "--thickness", "3 mm", "--joint", "lap", "--gap", "0.5 mm"),
    *("--coating", "old-paint", "--part", "bracket", "--place", "enclosed", "--hand", "brisk"),
)
BEAD = ("--current", "110", "--travel", "4 mm/s")
BLANK = ("blank", "--metal", "5052-H32", "--thickness", "2 mm", "--radius", "3 mm", "--legs", "30,300,30")
REPAIR = ("repair", "--metal", "5052", "--thickness", "1.2 mm", "--region", "200x150")
ANSWERS = {
    "card": ("card", *CARD),
    "card with reasons": ("card", *MIG, "--why"),
    "card as HTML": ("card", *CARD, "--html"),
    "card as Markdown": ("card", *MIG, "--markdown"),
    "compare": ("compare", *CARD, "--joint", "tee"),
    "compare as HTML": ("compare", *MIG, "--joint", "tee", "--html"),
    "compare as Markdown": ("compare", *CARD, "--thickness", "3 mm", "--markdown"),
    "chart": ("chart", "--process", "tig", "--metal", "5052", "--thickness", "2 mm", "--joint", "tee"),
    "chart as HTML": ("chart", "--process", "mig", "--metal", "5052", "--thickness", "3 mm", "--html"),
    "chart as Markdown": ("chart", "--process", "tig", "--metal", "5052", "--joint", "tee", "--markdown"),
    "bead": ("bead", *CARD, *BEAD),
    "faults": ("faults", "lack-of-fusion", *CARD),
    "blank": (*BLANK, "--angles", "90,90"),
    "blank as HTML": (*BLANK, "--angles", "90,90", "--html"),
    "plugs": (*REPAIR, "--holes", "3 mm x 4"),
    "patch as HTML": (*REPAIR, "--holes", "9 mm x 60", "--html"),
    "bench": ("bench", "show"),
    "tables": ("tables", "list"),
    "log": ("log", "check"),
    "version": ("--version",),
    "help": ("--help",),
}
JSON = [("card", *MIG), (*BLANK, "--angles", "90,90"), (*REPAIR, "--holes", "3 mm x 4")]
HELPS = [
    *([name, "--help"] for name in ("card", "compare", "chart", "bead", "faults", "blank", "repair", "job")),
    *([name, "--help"] for name in ("bench", "log", "tables")),
    *(["log", name, "--help"] for name in ("add", "list", "show", "edit", "similar", "sheet", "import")),
    *(["job", name, "--help"] for name in ("check", "plan", "materials")),
]
SLIPS = [
    ["card"],
    ["card", "--process"],
    ["card", "--proces", "tig"],
    ["card", "x"],
    ["card", *CARD, "--html", "--json"],
    ["card", *CARD, "--json=1"],
    ["card", *CARD, "--process", "mig"],
    ["card", *CARD, "--batch"],
    ["bead", *CARD],
    ["bead", *CARD, "--current", "x"],
    ["blank"],
    ["repair"],
    ["job"],
    ["job", "plan"],
    ["bench", "show", "--template", "x"],
    ["compare", *CARD],
    ["log", "show"],
    ["log", "list", "--limit", "x"],
    ["tables", "list", "x"],
]
_NAMES = re.compile(
    r"/\S+|-?-[a-z][\w-]*"
    r"|\b[A-Z][A-Z_|.-]+\b|\[[A-Z][\w .;:,-]*\]|\b(?:L/)?min\b|\bcfh\b|`?welds(?: [a-z]+)*`?"
)
"""Options, metavars, ids of sources, units, commands: the same in every language."""
_KNOWN = "AlMg WLa EWLa WCe EWCe metric inch action name init show check plan materials demo list sources"


@pytest.fixture(scope="module")
def said_tables():
    """The tables as they are read in the made-up language."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(language, "_words", Pseudo())
        patch.setattr(language, "_code", "xx")
        return load_tables()


@pytest.fixture
def say(welds, said_tables, pseudo_language, monkeypatch):  # noqa: F811
    """Run a command in the made-up language and return its words without what is no language's."""
    tables = said_tables
    monkeypatch.setattr(language, "use", lambda _: None)
    monkeypatch.setattr("welds.reference.load.load_tables", lambda folder=None: tables)
    cited = sorted({source.citation for source in tables.sources.values()}, key=len, reverse=True)

    def words(*asked: str) -> list[str]:
        result = welds(*asked)
        text = re.sub(r"<style>.*?</style>|<[^>]+>", " ", result.out + result.err, flags=re.DOTALL)
        text = _unbroken(unescape(text).replace("\\", ""))
        for citation in cited:
            text = text.replace(_unbroken(citation), " ")
        for source in sorted(tables.sources, key=len, reverse=True):
            text = text.replace(source, " ")
        return left_over(_NAMES.sub(" ", text), _allowed(tables))

    return words


def _unbroken(text: str) -> str:
    """Return the text on one line, words that were parted behind a hyphen whole again."""
    return re.sub(r"(?<=\w)-\s+", "-", " ".join(text.split()))


def _allowed(tables) -> set[str]:
    ids = [*tables.names, *(row["id"] for row in tables.table("metals").rows), *_KNOWN.split()]
    ids += [row["fault"] for row in tables.table("faults").rows]
    return {part for name in ids for part in re.findall(r"[A-Za-z]+", name)}


@pytest.mark.parametrize("asked", ANSWERS.values(), ids=ANSWERS)
def test_answers_leave_no_word_in_english(say, own_folders, asked):
    assert say(*asked) == []


def test_helps_leave_no_word_in_english(say):
    assert {" ".join(asked): left for asked in HELPS if (left := say(*asked))} == {}


def test_complaints_leave_no_word_in_english(say, own_folders):
    assert {" ".join(asked): left for asked in SLIPS if (left := say(*asked))} == {}


@pytest.mark.parametrize("asked", JSON)
def test_json_differs_in_texts_alone(welds, monkeypatch, asked):  # noqa: F811
    english = welds(*asked, "--json").json
    monkeypatch.setattr(language, "use", lambda _: None)
    monkeypatch.setattr(language, "_words", Pseudo())
    monkeypatch.setattr(language, "_code", "xx")
    other = welds(*asked, "--json").json
    assert other != english
    assert _bones(other) == _bones(english)


def _bones(value: object) -> object:
    """Return keys, numbers and truths; a text only as such."""
    if isinstance(value, dict):
        return {name: _bones(each) for name, each in value.items()}
    if isinstance(value, list):
        return [_bones(each) for each in value]
    return str if isinstance(value, str) else value
