"""`welds card`."""

import json
from dataclasses import replace

import jsonschema
import pytest

from welds.advice.advise import advise
from welds.advice.card import Card
from welds.quantities.band import Band
from welds.quantities.units import Units
from welds.reference.paths import data_root
from welds.report.json_card import SCHEMA_FILE

CORNER = (
    "card",
    "--process",
    "tig",
    "--metal",
    "5052",
    "--thickness",
    "0.080 in",
    "--joint",
    "outside-corner",
)


@pytest.fixture(scope="module")
def validator():
    schema = json.loads((data_root() / SCHEMA_FILE).read_text(encoding="utf-8"))
    return jsonschema.Draft202012Validator(schema)


def test_text_comes_by_itself_cautions_first(welds) -> None:
    result = welds(*CORNER)
    assert result.code == 0
    assert result.out.startswith("TIG, outside corner, 5052\n2.03 mm (0.080 in)")
    assert result.out.index("TAKE CARE") < result.out.index("Current")
    assert welds(*CORNER, "--text").out == result.out


def test_why_adds_reasons(welds) -> None:
    assert len(welds(*CORNER, "--why").out.splitlines()) > len(welds(*CORNER).out.splitlines()) + 20


@pytest.mark.parametrize(
    "words",
    [
        CORNER,
        (*CORNER, "--coating", "oil", "--coating", "paint", "--solvent", "acetone", "--part", "tank"),
        ("card", "--process", "mig", "--metal", "low-carbon", "--thickness", "14 ga", "--joint", "tee"),
        ("card", "--process", "mig", "--metal", "galvanised", "--thickness", "1 mm", "--joint", "plug"),
        (
            "card",
            "--process",
            "mig",
            "--metal",
            "304",
            "--thickness",
            "2 mm",
            "--joint",
            "lap",
            "--position",
            "2F",
        ),
        (
            "card",
            "--process",
            "tig",
            "--metal",
            "304",
            "--thickness",
            "1/16",
            "--joint",
            "butt",
            "--hand",
            "brisk",
        ),
        (*CORNER, "--other-metal", "6061-T6", "--other-thickness", "5 mm", "--goal", "salt-water"),
    ],
)
def test_json_fits_the_schema(welds, validator, words) -> None:
    result = welds(*words, "--json")
    assert (result.code, result.err) == (0, "")
    validator.validate(result.json)


def test_json_carries_the_request_as_it_was_understood(welds) -> None:
    request = welds(*CORNER, "--position", "flat", "--coating", "oil", "--json").json["request"]
    assert request["thickness_mm"] == pytest.approx(2.032)
    assert (request["joint"], request["position"], request["coating"]) == ("outside-corner", "PA", ["oil"])


def test_units_change_words_and_never_values(welds) -> None:
    assert welds(*CORNER, "--json", "--units", "inch").out == welds(*CORNER, "--json").out
    metric, inch = welds(*CORNER).out, welds(*CORNER, "--units", "inch").out
    assert "L/min (" in metric
    assert "cfh (" in inch


def test_bare_number_is_asked_back_or_read_in_the_stated_units(welds) -> None:
    words = ("card", "--process", "tig", "--metal", "5052", "--joint", "butt", "--thickness", "2", "--json")
    asked = welds(*words)
    assert asked.code == 2
    assert "2 mm or 2 in" in asked.complaint
    assert welds(*words, "--units", "metric").json["request"]["thickness_mm"] == 2.0


@pytest.mark.parametrize(
    ("words", "code", "hint"),
    [
        (("card",), 2, "process"),
        (("card", "--metl", "5052"), 2, "nearest: --metal"),
        (("card", "--process", "tig", "5052"), 2, "5052"),
        ((*CORNER, "--metal", "304"), 2, "given once"),
        ((*CORNER, "--goal"), 2, "--goal=VALUE"),
        ((*CORNER[:-1], "outside-corners"), 2, "nearest: outside-corner"),
        ((*CORNER, "--units", "inches"), 2, "nearest: inch"),
        ((*CORNER, "--lang", "xx"), 2, "--lang"),
        ((*CORNER, "--json", "--text"), 2, "one of them"),
        ((*CORNER, "--json", "--html"), 2, "one of them"),
        (
            ("card", "--process", "tig", "--metal", "5025", "--thickness", "2 mm", "--joint", "butt"),
            2,
            "nearest",
        ),
        (
            ("card", "--process", "tig", "--metal", "5052", "--thickness", "x", "--joint", "butt"),
            2,
            "thickness",
        ),
        (
            ("card", "--process", "tig", "--metal", "5052", "--thickness", "0", "--joint", "butt"),
            2,
            "thickness",
        ),
        (
            ("card", "--process", "tig", "--metal", "5052", "--thickness", "-1", "--joint", "butt"),
            2,
            "thickness",
        ),
        (
            ("card", "--process", "tig", "--metal", "5052", "--thickness=-1 mm", "--joint", "butt"),
            2,
            "thickness",
        ),
        (
            ("card", "--process", "tig", "--metal", "5052", "--thickness", "1e9", "--joint", "butt"),
            2,
            "thickness",
        ),
        (
            ("card", "--process", "tig", "--metal", "5052", "--thickness", "2 mm", "--joint", "plug"),
            2,
            "plug",
        ),
        (
            ("card", "--process", "tig", "--metal", "2024", "--thickness", "2 mm", "--joint", "butt"),
            3,
            "2024",
        ),
        (
            ("card", "--process", "tig", "--metal", "5052", "--thickness", "60 mm", "--joint", "butt"),
            3,
            "nearest",
        ),
        ((*CORNER, "--bench", "no-such-bench.yaml"), 4, "no-such-bench.yaml"),
        ((*CORNER, "--html", "no-such-folder/card.html"), 4, "no-such-folder/card.html"),
        ((*CORNER, "--pdf", "no-such-folder/card.pdf"), 4, "no-such-folder/card.pdf"),
        ((*CORNER, "--markdown", "."), 4, "."),
        ((*CORNER, "--metal", "\udcff"), 2, "given once"),
        ((*CORNER, "--goal", "\udcff"), 2, "goal"),
    ],
)
def test_one_clear_line_and_the_exit_code(welds, words, code, hint) -> None:
    result = welds(*words)
    assert result.code == code, result
    assert hint in result.complaint
    assert result.out == ""


def test_files_are_written_and_named(welds, lent, tmp_path) -> None:
    html, markdown, pdf = (str(tmp_path / f"card.{ending}") for ending in ("html", "md", "pdf"))
    result = welds(*CORNER, "--html", html, "--markdown", markdown, "--pdf", pdf, "--units", "inch")
    assert result.code == 0
    assert result.out.splitlines() == [f"written: {html}", f"written: {markdown}", f"written: {pdf}"]
    assert "outside corner" in (tmp_path / "card.html").read_text(encoding="utf-8")
    assert "| Current |" in (tmp_path / "card.md").read_text(encoding="utf-8")
    ((path, card, units, sources),) = lent.pdfs
    assert (path, units, isinstance(card, Card)) == (pdf, Units.INCH, True)
    assert sources


def test_stop_cautions_are_seen_even_when_only_files_are_written(welds, tmp_path) -> None:
    result = welds(*CORNER, "--part", "tank", "--html", str(tmp_path / "card.html"))
    assert "[ ] STOP" in result.err
    assert "STOP" in (tmp_path / "card.html").read_text(encoding="utf-8")


def test_one_form_can_go_to_standard_output_beside_files(welds, tmp_path) -> None:
    file = str(tmp_path / "card.html")
    out = welds(*CORNER, "--html", file, "--json").out
    assert json.loads(out.partition("\n")[2])["schema"] == "welds.card/1"
    assert welds(*CORNER, "--html").out.startswith("<!DOCTYPE html>")
    assert welds(*CORNER, "--markdown").out.startswith("# TIG")


def test_bad_input_changes_no_file(welds, tmp_path) -> None:
    file = tmp_path / "card.html"
    file.write_text("as it was", encoding="utf-8")
    assert welds(*CORNER, "--goal", "beauty", "--html", str(file)).code == 2
    assert file.read_text(encoding="utf-8") == "as it was"


def test_bench_keeps_figures_inside_the_machine(welds, tmp_path) -> None:
    bench = tmp_path / "bench.yaml"
    bench.write_text("machine: {name: a small TIG, processes: [tig], current_max_a: 70}\n", encoding="utf-8")
    card = welds(*CORNER, "--bench", str(bench), "--json").json
    assert card["machine"] == "a small TIG"
    assert card["settings"]["current"]["high"] <= 70
    assert not all(check["ok"] for check in card["checks"])
    assert welds(*CORNER, "--json").json["settings"]["current"]["start"] > 70


def test_broken_bench_names_field_and_line(welds, tmp_path) -> None:
    bench = tmp_path / "bench.yaml"
    bench.write_text("machine:\n  name: x\n  proceses: [tig]\n", encoding="utf-8")
    result = welds(*CORNER, "--bench", str(bench))
    assert result.code == 4
    assert "line 3" in result.complaint
    assert result.complaint.endswith("nearest: processes")


def test_where_the_heat_picture_disagrees_every_form_says_so(welds, lent, monkeypatch, tmp_path) -> None:
    assert "heat picture" not in [check["name"] for check in welds(*CORNER, "--json").json["checks"]]

    def hot(*asked) -> Card:
        card = advise(*asked)
        current = replace(card.settings["current"], band=Band(300.0, 320.0, 340.0, "A"))
        return replace(card, settings={**card.settings, "current": current})

    monkeypatch.setattr("welds.advice.advise.advise", hot)
    html, pdf = str(tmp_path / "card.html"), str(tmp_path / "card.pdf")
    result = welds(*CORNER, "--html", html, "--pdf", pdf, "--json")
    check = json.loads(result.out[result.out.index("{") :])["checks"][-1]
    assert (check["name"], check["ok"]) == ("heat picture", False)
    assert "300 to 340 A fall through" in check["text"]
    assert check["text"].replace("'", "&#x27;") in (tmp_path / "card.html").read_text(encoding="utf-8")
    ((_path, card, _units, _sources),) = lent.pdfs
    assert card.checks[-1].text == check["text"]
    assert f"NOT OK: {check['text']}" in " ".join(welds(*CORNER).out.split())
