"""What the log added, in the card's JSON: only where welds spoke, and within the schema."""

import json
from dataclasses import replace

import jsonschema

from welds.advice.learned import Learned
from welds.quantities.band import Band
from welds.reference.paths import data_root
from welds.report.json_card import SCHEMA_FILE, card_json

LEARNED = Learned(
    "current",
    Band(72, 85, 99, "A"),
    Band(84.0, 91.0, 98.5, "A"),
    1.07,
    0.988,
    1.159,
    9,
    6,
    7,
    1,
    1,
    0.11,
    0.93,
    ("entry-1",),
    burnt_at_a=120.0,
)


def test_a_card_without_learning_has_no_such_key(tig_card):
    assert "learned" not in card_json(tig_card)


def test_both_bands_stand_side_by_side_and_fit_the_schema(tig_card):
    card = json.loads(json.dumps(card_json(replace(tig_card, learned=LEARNED))))
    schema = json.loads((data_root() / SCHEMA_FILE).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator(schema).validate(card)
    assert card["learned"]["table"] == {"low": 72.0, "start": 85.0, "high": 99.0, "unit": "A"}
    assert card["learned"]["learned"]["start"] == 91.0
    assert (card["learned"]["welds"], card["learned"]["sureness_words"]) == (9, "fairly sure")
    assert (card["learned"]["burnt_at_a"], card["learned"]["cold_at_a"]) == (120.0, None)
