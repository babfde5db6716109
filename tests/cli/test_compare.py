"""`welds compare` as it is called."""

import csv
import io
import json

import pytest
from jsonschema import Draft202012Validator

from welds.cli.main import main
from welds.reference.paths import data_root
from welds.report.json_card import SCHEMA_FILE

SHEET = ("--process", "tig", "--metal", "5052", "--thickness", "0.080 in")
TOO_THICK = ("--process", "tig", "--metal", "5052", "--thickness", "60 mm")
TEN_THICKNESSES = (
    *("--process", "tig", "--metal", "5052"),
    *(part for mm in range(1, 11) for part in ("--thickness", f"{mm} mm")),
)
BENCH = """machine:
  name: {name}
  processes: [tig]
  ac_frequency_min_hz: 50
  ac_frequency_max_hz: {highest}
"""


@pytest.fixture
def welds(capsys):
    def run(*argv):
        written = []
        code = main(
            ["compare", *argv],
            open_window=lambda *_: 1,
            write_pdf=lambda *arguments: written.append(arguments),
        )
        out, err = capsys.readouterr()
        return code, out, err, written

    return run


def test_json_is_columns_of_cards_and_the_differences(welds):
    code, out, err, _ = welds(*SHEET, "--joint", "outside-corner", "--joint", "tee", "--json")
    answer = json.loads(out)
    assert (code, err) == (0, "")
    assert set(answer) == {"columns", "differences"}
    schema = json.loads((data_root() / SCHEMA_FILE).read_text(encoding="utf-8"))
    for card in answer["columns"]:
        Draft202012Validator(schema).validate(card)
    assert [card["request"]["joint"] for card in answer["columns"]] == ["outside-corner", "tee"]
    assert {"current", "ac_frequency", "gas_lens", "cup"} <= set(answer["differences"])
    for name in answer["columns"][0]["settings"]:
        figures = [
            {key: card["settings"][name].get(key) for key in ("low", "start", "high", "value")}
            for card in answer["columns"]
        ]
        assert (figures[0] != figures[1]) == (name in answer["differences"]), name


def test_every_option_given_twice_makes_columns(welds):
    _, out, _, _ = welds(
        *("--process", "tig", "--process", "mig", "--metal", "5052", "--metal", "6061"),
        *("--thickness", "2 mm", "--joint", "tee", "--json"),
    )
    asked = [card["request"] for card in json.loads(out)["columns"]]
    assert [(each["process"], each["metal"]) for each in asked] == [
        ("tig", "5052"), ("tig", "6061"), ("mig", "5052"), ("mig", "6061"),
    ]  # fmt: skip


def test_coatings_given_twice_make_columns_and_commas_keep_them_together(welds):
    _, out, _, _ = welds(*SHEET, "--joint", "lap", "--coating", "none", "--coating", "oil,anodised", "--json")
    assert [card["request"]["coating"] for card in json.loads(out)["columns"]] == [[], ["oil", "anodised"]]


def test_a_refusal_is_a_column(welds):
    code, out, _, _ = welds(*SHEET, "--joint", "tee", "--joint", "plug", "--json")
    refused = json.loads(out)["columns"][1]
    assert code == 0
    assert refused["error"]["field"] == "joint"
    assert refused["exit"] == 2
    assert refused["request"]["joint"] == "plug"


def test_two_machines(welds, tmp_path):
    files = []
    for name, highest in (("modern set", 150), ("mains set", 50)):
        files.append(tmp_path / f"{highest}.yaml")
        files[-1].write_text(BENCH.format(name=name, highest=highest), encoding="utf-8")
    benches = [part for file in files for part in ("--bench", str(file))]
    code, out, _, _ = welds(*SHEET, "--joint", "tee", *benches, "--json")
    answer = json.loads(out)
    assert code == 0
    assert [card["settings"]["ac_frequency"]["start"] for card in answer["columns"]] == [125, 50]
    assert "ac_frequency" in answer["differences"]


def test_text_marks_what_differs_and_gives_the_reason(welds):
    code, out, _, _ = welds(
        *SHEET, "--joint", "outside-corner", "--joint", "tee", "--units", "inch", "--only-differences"
    )
    assert code == 0
    assert "one more plate takes the heat" in out
    assert "narrower arc reaches the root" in out
    assert "Polarity" not in out


def test_files(welds, tmp_path):
    files = {form: tmp_path / f"out.{form}" for form in ("html", "markdown", "csv")}
    options = [part for form, file in files.items() for part in (f"--{form}", str(file))]
    code, out, _, written = welds(
        *SHEET, "--joint", "tee", "--joint", "lap", *options, "--pdf", str(tmp_path / "out.pdf")
    )
    assert code == 0
    assert out.count("written:") == 4
    assert len(written) == 1
    assert "<html" in files["html"].read_text(encoding="utf-8")
    assert "| Setting | Tee (base) | Lap |" in files["markdown"].read_text(encoding="utf-8")
    lines = list(csv.DictReader(io.StringIO(files["csv"].read_text(encoding="utf-8"))))
    assert {line["title"] for line in lines} == {"Tee", "Lap"}


@pytest.mark.parametrize(
    ("options", "code", "words"),
    [
        ((*SHEET, "--joint", "tee"), 2, "2 or more"),
        ((*SHEET, "--joint", "tee", "--joint", "tee"), 2, "2 or more"),
        ((*SHEET, "--joint", "tee", "--joint", "tea"), 2, "nearest: tee"),
        ((*TOO_THICK, "--joint", "tee", "--joint", "lap"), 3, "cover"),
        ((*TEN_THICKNESSES, "--joint", "tee"), 2, "at most 8"),
        ((*SHEET, "--joint", "tee", "--joint", "lap", "--bench", "nowhere.yaml"), 4, "nowhere.yaml"),
    ],
)  # fmt: skip
def test_a_slip_is_one_clear_line(welds, options, code, words):
    got, out, err, _ = welds(*options)
    assert (got, out) == (code, "")
    assert words in err
    assert err.count("\n") == 1


def test_a_program_may_ask_for_more_columns_than_fit_side_by_side(welds):
    code, out, _, _ = welds(*TEN_THICKNESSES, "--joint", "tee", "--json")
    assert code == 0
    assert len(json.loads(out)["columns"]) == 10
