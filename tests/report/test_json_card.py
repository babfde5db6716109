"""The JSON card against its schema and the contract."""

import copy
import json

import jsonschema
import pytest

from welds.reference.paths import data_root
from welds.report.json_card import SCHEMA_FILE, card_json


@pytest.fixture(scope="module")
def validator():
    schema = json.loads((data_root() / SCHEMA_FILE).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    return jsonschema.Draft202012Validator(schema)


def test_card_fits_the_schema_and_survives_json(tig_card, validator) -> None:
    card = card_json(tig_card)
    validator.validate(json.loads(json.dumps(card, allow_nan=False)))
    assert json.loads(json.dumps(card)) == card


def test_contract_shape(tig_card) -> None:
    card = card_json(tig_card)
    assert card["schema"] == "welds.card/1"
    current = card["settings"]["current"]
    assert (current["low"], current["start"], current["high"], current["unit"]) == (72.4, 85.2, 98.7, "A")
    assert current["basis"] == "printed"
    assert current["sources"] == ["DOC-1", "DOC-2"]
    assert current["reasons"][1] == {
        "text": "an outside corner melts more easily",
        "factor": 0.93,
        "source": "DOC-2",
    }
    filler = card["settings"]["filler_metal"]
    assert (filler["value"], filler["alternatives"]) == ("ER5356", ["ER4043"])
    assert card["settings"]["gas_lens"]["value"] is True
    assert card["settings"]["cup"]["value"] == 7
    assert card["settings"]["shielding_gas"]["text"] == "argon"
    assert card["cautions"][0]["severity"] == "stop"
    assert card["request"] == {
        "process": "tig",
        "metal": "5052-H32",
        "thickness_mm": 2.032,
        "joint": "outside-corner",
        "position": "PA",
        "gap_mm": 0.0,
        "coating": ["oil"],
        "place": "indoors",
        "hand": "unhurried",
    }


def test_settings_keep_their_order(tig_card) -> None:
    assert list(card_json(tig_card)["settings"]) == list(tig_card.settings)


@pytest.mark.parametrize(
    ("path", "value"),
    [
        (("schema",), "welds.card/2"),
        (("extra",), 1),
        (("settings", "current", "unit"), "mA"),
        (("settings", "current", "value"), 85),
        (("settings", "current", "start"), "85"),
        (("settings", "polarity", "value"), "AC/DC"),
        (("settings", "gas_lens", "value"), "yes"),
        (("settings", "volts"), {"value": 1}),
        (("settings", "current", "reasons"), []),
        (("settings", "current", "basis"), "sure"),
        (("cautions", 0, "severity"), "danger"),
        (("request", "joint"), "corner"),
        (("request", "thickness_mm"), 0),
        (("request", "colour"), "red"),
        (("notice",), ""),
    ],
)
def test_schema_refuses_what_the_contract_does_not_say(tig_card, validator, path, value) -> None:
    card = copy.deepcopy(card_json(tig_card))
    place = card
    for step in path[:-1]:
        place = place[step]
    place[path[-1]] = value
    with pytest.raises(jsonschema.ValidationError):
        validator.validate(card)


def test_schema_refuses_a_missing_part(tig_card, validator) -> None:
    card = card_json(tig_card)
    for name in card:
        with pytest.raises(jsonschema.ValidationError):
            validator.validate({key: value for key, value in card.items() if key != name})


def test_a_setting_that_the_contract_does_not_name_is_refused(mig_card, validator) -> None:
    card = card_json(mig_card)
    with pytest.raises(jsonschema.ValidationError, match="a_setting_of_next_year"):
        validator.validate(card)
    del card["settings"]["a_setting_of_next_year"]
    validator.validate(card)
