"""Fifty-odd requests that have hurt people: each is stopped, warned about or refused before any figure.

What has to come up follows the documents that data/hazards.yaml cites beside each caution, among them the
regulations on welding in confined spaces, on containers and on coated metal; the requests are our own.
"""

import pytest

from tests.advice.cautions import said_first
from welds.advice.advise import advise
from welds.advice.validate import request_from_fields
from welds.errors import NotCoveredError

SHEET = {"process": "mig", "metal": "low-carbon", "thickness": "1.5 mm", "joint": "lap"}
TUBE = {"process": "tig", "metal": "4130", "thickness": "2 mm", "joint": "tee"}
BOX = {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "outside-corner"}
RAIL = {"process": "tig", "metal": "304", "thickness": "1.5 mm", "joint": "tee"}

STOPPED = [
    ("cadmium bolt head", {**SHEET, "coating": ["cadmium"]}, "cadmium"),
    ("cadmium on stainless, outdoors", {**RAIL, "coating": ["cadmium"], "place": "outdoors"}, "cadmium"),
    ("cadmium under paint", {**SHEET, "coating": ["paint", "cadmium"]}, "cadmium"),
    ("old paint on a trailer", {**SHEET, "coating": ["old-paint"]}, "old-paint"),
    ("old paint in a hull", {**BOX, "coating": ["old-paint"], "place": "enclosed"}, "old-paint"),
    ("brake cleaner before TIG", {**RAIL, "solvent": "chlorinated"}, "chlorinated-solvent"),
    ("brake cleaner before MIG", {**SHEET, "solvent": "chlorinated"}, "chlorinated-solvent"),
    ("a can without a label", {**BOX, "solvent": "unknown-spray"}, "unknown-solvent"),
    ("magnesium sheet", {**BOX, "metal": "magnesium-az31"}, "magnesium-fire"),
    ("magnesium in a cabin", {**BOX, "metal": "magnesium-az31", "place": "enclosed"}, "magnesium-fire"),
    ("argon in a bilge", {**BOX, "place": "enclosed"}, "argon-pools"),
    ("MIG in a bilge", {**SHEET, "place": "enclosed"}, "argon-pools"),
    ("inside a tank room", {**RAIL, "place": "enclosed"}, "confined-space"),
    ("zinc inside", {**SHEET, "metal": "galvanised", "place": "enclosed"}, "confined-space"),
    ("fuel tank, steel", {**SHEET, "part": "tank"}, "tank"),
    ("fuel tank, aluminium", {**BOX, "part": "tank"}, "tank"),
    ("drum, outdoors", {**SHEET, "part": "tank", "place": "outdoors"}, "tank"),
    ("air receiver", {**SHEET, "part": "pressure"}, "pressure-item"),
    ("air receiver needs someone qualified", {**SHEET, "part": "pressure"}, "qualified-welder"),
    ("gas strut", {**SHEET, "part": "sealed-item"}, "pressure-item"),
    ("wheel with its tyre", {**BOX, "part": "sealed-item"}, "pressure-item"),
    ("rail tube with no vent", {**RAIL, "part": "closed-section"}, "closed-section"),
    ("pontoon", {**BOX, "part": "closed-section"}, "closed-section"),
    ("sill of a car", {**SHEET, "part": "vehicle"}, "vehicle-battery"),
    ("near airbag and fuel line", {**SHEET, "part": "vehicle"}, "vehicle-near-the-heat"),
    ("tow hitch", {**SHEET, "thickness": "6 mm", "joint": "tee", "part": "towing"}, "qualified-welder"),
    ("steering arm", {**TUBE, "part": "steering-suspension"}, "qualified-welder"),
    ("suspension mount", {**SHEET, "part": "steering-suspension"}, "qualified-welder"),
    ("lifting eye", {**TUBE, "part": "lifting"}, "lifting-gear"),
    ("shackle", {**SHEET, "thickness": "8 mm", "joint": "butt", "part": "lifting"}, "qualified-welder"),
    ("roll cage", {**TUBE, "part": "rollover"}, "rollover"),
    ("roll cage, by whom", {**TUBE, "part": "rollover"}, "qualified-welder"),
]
WARNED = [
    ("galvanised mudguard indoors", {**SHEET, "metal": "galvanised"}, "zinc-in-a-room"),
    ("galvanised mudguard outdoors", {**SHEET, "metal": "galvanised", "place": "outdoors"}, "zinc"),
    ("zinc primer", {**SHEET, "coating": ["zinc-primer"]}, "zinc"),
    ("zinc-plated bracket", {**SHEET, "coating": ["zinc-plated"]}, "zinc"),
    ("fresh paint", {**SHEET, "coating": ["paint"]}, "paint"),
    ("powder coat", {**BOX, "coating": ["powder-coat"]}, "paint"),
    ("something unknown", {**SHEET, "coating": ["unknown"]}, "unknown-coating"),
    ("oily sump plate", {**BOX, "coating": ["oil"]}, "oil"),
    ("seam sealer", {**SHEET, "coating": ["sealer"]}, "sealer"),
    ("chromed rail", {**RAIL, "coating": ["chrome"]}, "chrome"),
    ("acetone just wiped", {**RAIL, "solvent": "acetone"}, "flammable-solvent"),
    ("alcohol in a lap", {**SHEET, "solvent": "alcohol"}, "trapped-solvent"),
    ("cleaner in a box section", {**RAIL, "solvent": "acetone", "part": "closed-section"}, "trapped-solvent"),
    ("choking smell", {**RAIL, "solvent": "chlorinated"}, "phosgene-breathed"),
    ("stainless fume", RAIL, "stainless-fume"),
    ("steel fume", SHEET, "manganese-fume"),
    ("aluminium ozone", BOX, "ozone"),
    ("titanium dust", {**RAIL, "metal": "titanium-2"}, "titanium-dust"),
    ("purging stainless", RAIL, "back-purge"),
    ("copper alloy of unknown make", {**BOX, "metal": "copper", "joint": "butt"}, "beryllium"),
    ("floor pan over trim", {**SHEET, "part": "vehicle"}, "vehicle-trim"),
    ("sparks behind the panel", SHEET, "fire-watch"),
    ("wet yard", {**BOX, "place": "outdoors"}, "shock"),
]
REFUSED = [
    ("2024 from an airframe", {**BOX, "metal": "2024"}),
    ("7075 lever", {**BOX, "metal": "7075", "joint": "butt"}),
    ("2024 to 5052", {**BOX, "other_metal": "2024"}),
]


def card_of(tables, fields):
    return advise(request_from_fields(fields, tables), tables)


def test_there_are_fifty_of_them():
    assert len(STOPPED) + len(WARNED) + len(REFUSED) >= 50
    assert len({name for name, *_rest in (*STOPPED, *WARNED, *REFUSED)}) == len(STOPPED) + len(WARNED) + 3


@pytest.mark.parametrize(
    ("fields", "rule"), [case[1:] for case in STOPPED], ids=[case[0] for case in STOPPED]
)
def test_stopped_before_any_figure(tables, fields, rule):
    card = card_of(tables, fields)
    assert rule in {caution.rule for caution in card.stops}
    said_first(tables, card, rule)


@pytest.mark.parametrize(("fields", "rule"), [case[1:] for case in WARNED], ids=[case[0] for case in WARNED])
def test_warned_before_any_figure(tables, fields, rule):
    card = card_of(tables, fields)
    assert rule in {caution.rule for caution in card.cautions if caution.severity in ("stop", "warn")}
    said_first(tables, card, rule)


@pytest.mark.parametrize("fields", [case[1] for case in REFUSED], ids=[case[0] for case in REFUSED])
def test_refused_with_a_reason(tables, fields):
    with pytest.raises(NotCoveredError) as refused:
        card_of(tables, fields)
    assert len(str(refused.value)) > 40


@pytest.mark.parametrize(
    ("fields", "rule"),
    [
        ({**SHEET, "place": "outdoors"}, "confined-space"),
        ({**SHEET, "coating": ["paint"]}, "cadmium"),
        ({**BOX, "solvent": "acetone"}, "chlorinated-solvent"),
        ({**BOX, "part": "bracket"}, "tank"),
        ({**SHEET, "part": "towing"}, "lifting-gear"),
        (TUBE, "zinc"),
        (BOX, "manganese-fume"),
        (SHEET, "ozone"),
    ],
)
def test_a_request_without_the_danger_is_left_in_peace(tables, fields, rule):
    assert rule not in {caution.rule for caution in card_of(tables, fields).cautions}


def test_no_danger_is_lost_when_they_come_together(tables):
    fields = {**SHEET, "metal": "galvanised", "coating": ["cadmium", "old-paint", "oil"], "place": "enclosed"}
    fields |= {"solvent": "chlorinated", "part": "tank"}
    found = {caution.rule for caution in card_of(tables, fields).stops}
    assert {"cadmium", "old-paint", "confined-space", "argon-pools", "chlorinated-solvent", "tank"} <= found
