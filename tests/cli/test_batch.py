"""`welds card --batch`: order, and every kind of bad line."""

import json

import jsonschema
import pytest

from welds.reference.load import load_tables
from welds.reference.paths import data_root
from welds.report.json_card import SCHEMA_FILE

GOOD = {"process": "tig", "metal": "5052", "thickness_mm": 2, "joint": "butt"}


def lines_of(result) -> list[dict]:
    assert (result.code, result.err) == (0, "")
    return [json.loads(line) for line in result.out.splitlines()]


def batch(welds, *requests, options=()) -> list[dict]:
    raw = b"\n".join(each if isinstance(each, bytes) else json.dumps(each).encode() for each in requests)
    return lines_of(welds("card", "--batch", *options, stdin=raw))


def test_answers_keep_the_order_of_the_requests(welds) -> None:
    answers = batch(
        welds,
        GOOD | {"joint": "tee"},
        GOOD | {"metal": "5025"},
        GOOD | {"metal": "2024"},
        GOOD | {"joint": "lap", "thickness_mm": 3},
    )
    assert [answer.get("exit") for answer in answers] == [None, 2, 3, None]
    assert [answers[index]["request"]["joint"] for index in (0, 3)] == ["tee", "lap"]
    assert answers[1]["error"]["nearest"] == "5052"
    assert answers[1]["error"]["field"] == "metal"
    assert answers[2]["error"]["kind"] == "not-covered"


def test_keys_are_the_options(welds) -> None:
    request = {
        **{"process": "mig", "metal": "low-carbon", "thickness": "14 ga", "joint": "lap", "position": "2F"},
        **{"other_metal": "galvanised", "other_thickness": "1/8 in", "gap": "0.5 mm", "coating": ["oil"]},
        **{"place": "outdoors", "length": "300 mm", "hand": "brisk", "wire": "0.030 in", "gas": "ar-25co2"},
    }
    (card,) = batch(welds, request)
    assert card["request"]["other_thickness_mm"] == pytest.approx(3.175)
    assert card["request"]["wire_mm"] == 0.8


def test_a_cards_own_request_can_be_asked_again(welds) -> None:
    (first,) = batch(welds, GOOD | {"other_thickness_mm": 5, "coating": "oil"})
    (second,) = batch(welds, first["request"])
    assert second == first


def test_units_say_how_a_bare_number_is_read(welds) -> None:
    request = GOOD | {"thickness": "2"}
    del request["thickness_mm"]
    assert batch(welds, request)[0]["error"]["readings"] == ["2 mm", "2 in"]
    assert batch(welds, request, options=("--units", "metric"))[0]["request"]["thickness_mm"] == 2


@pytest.mark.parametrize(
    ("line", "words"),
    [
        (b"", "nothing"),
        (b"   ", "nothing"),
        (b"not json", "not JSON"),
        (b"{", "not JSON"),
        (b"[]", "one JSON object"),
        (b"3", "one JSON object"),
        (b"null", "one JSON object"),
        (b'"text"', "one JSON object"),
        (b"{}", "process"),
        (b"\xff\xfe", "UTF-8"),
        (b'{"process": "tig", "process": "mig"}', "twice"),
        (b'{"thickness_mm": NaN}', "NaN"),
        (b'{"thickness_mm": Infinity}', "Infinity"),
        (b'{"thicknes_mm": 2}', "nearest: thickness_mm"),
        (b'{"\\ud800": 2}', "allowed"),
        (b"[" * 100_000, "nested too deeply"),
        (b'{"thickness_mm": ' + b"9" * 5000 + b"}", "not JSON"),
        (b'{"process": "tig", "metal": "5052", "joint": "butt", "thickness_mm": 1e400}', "thickness_mm"),
        (b'{"process": {"a": 1}}', "process"),
    ],
)
def test_a_bad_line_gets_its_error_and_the_next_is_answered(welds, line, words) -> None:
    before, error, after = batch(welds, GOOD, line, GOOD)
    assert error["exit"] == 2
    assert words in error["error"]["message"]
    assert before == after
    assert before["schema"] == "welds.card/1"


def test_windows_line_ends_and_no_input(welds) -> None:
    answers = lines_of(welds("card", "--batch", stdin=json.dumps(GOOD).encode() + b"\r\n"))
    assert answers[0]["schema"] == "welds.card/1"
    assert lines_of(welds("card", "--batch")) == []


@pytest.mark.parametrize("option", [("--metal", "5052"), ("--html", "x.html"), ("--text",)])
def test_batch_takes_no_request_options(welds, option) -> None:
    result = welds("card", "--batch", *option)
    assert result.code == 2
    assert option[0] in result.complaint


def test_a_spread_of_requests_fits_the_schema(welds) -> None:
    schema = json.loads((data_root() / SCHEMA_FILE).read_text(encoding="utf-8"))
    validator = jsonschema.Draft202012Validator(schema)
    metals = [str(row["id"]) for row in load_tables().table("metals").rows]
    joints = ("butt", "tee", "lap", "outside-corner", "inside-corner", "edge", "plug")
    requests = [
        {"process": process, "metal": metal, "thickness_mm": thickness, "joint": joints[index % len(joints)]}
        for index, (metal, process, thickness) in enumerate(
            (metal, process, thickness)
            for metal in metals
            for process in ("tig", "mig")
            for thickness in (1, 3, 8)
        )
    ]
    answers = batch(welds, *requests)
    assert len(answers) == len(requests)
    cards = [answer for answer in answers if "error" not in answer]
    assert len(cards) > len(requests) / 3
    for card in cards:
        validator.validate(card)
    assert {answer["exit"] for answer in answers if "error" in answer} <= {2, 3}
