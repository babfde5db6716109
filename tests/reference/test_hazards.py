"""Which cautions come up for which request, and that nobody is drowned in them."""

import re
from collections.abc import Mapping
from pathlib import Path

import pytest

from welds.advice.request import Coating, Joint, Part, Place, Process, Solvent
from welds.reference.basis import Basis
from welds.reference.hazards import ATTRIBUTES, Hazard, load_hazards, matching, read_hazards
from welds.reference.metals import Metal
from welds.reference.shielding import Gas
from welds.reference.tables import Tables

PLAIN: Mapping[str, set[str]] = {
    "process": {"tig"},
    "joint": {"butt"},
    "place": {"outdoors"},
    "family": {"carbon-steel"},
    "group": {"low-carbon"},
    "gas": {"argon"},
}
"""A request without any special danger: TIG on clean low-carbon steel in the open."""


@pytest.fixture(scope="module")
def hazards(tables: Tables) -> tuple[Hazard, ...]:
    return tables.derived(load_hazards)


def fired(hazards: tuple[Hazard, ...], **facts: str) -> dict[str, str]:
    asked = PLAIN | {attribute: {value} for attribute, value in facts.items()}
    return {hazard.id: hazard.severity for hazard in matching(hazards, asked)}


MUST_FIRE = [
    ({"coatings": "galvanised"}, {"zinc": "warn"}),
    ({"coatings": "zinc-plated"}, {"zinc": "warn"}),
    ({"coatings": "zinc-primer"}, {"zinc": "warn"}),
    ({"group": "galvanised"}, {"zinc": "warn"}),
    ({"coatings": "galvanised", "place": "indoors"}, {"zinc-in-a-room": "warn"}),
    ({"group": "galvanised", "place": "enclosed"}, {"zinc-in-a-room": "warn"}),
    ({"coatings": "cadmium"}, {"cadmium": "stop"}),
    ({"coatings": "old-paint"}, {"old-paint": "stop"}),
    ({"coatings": "paint"}, {"paint": "warn"}),
    ({"coatings": "powder-coat"}, {"paint": "warn"}),
    ({"coatings": "unknown"}, {"unknown-coating": "warn"}),
    ({"coatings": "oil"}, {"oil": "warn"}),
    ({"coatings": "sealer"}, {"sealer": "warn"}),
    ({"coatings": "chrome"}, {"chrome": "warn"}),
    ({"solvent": "chlorinated"}, {"chlorinated-solvent": "stop", "phosgene-breathed": "warn"}),
    ({"solvent": "unknown-spray"}, {"unknown-solvent": "stop", "phosgene-breathed": "warn"}),
    ({"solvent": "acetone"}, {"flammable-solvent": "warn"}),
    ({"solvent": "alcohol"}, {"flammable-solvent": "warn"}),
    ({"solvent": "acetone", "joint": "lap"}, {"trapped-solvent": "warn"}),
    ({"family": "stainless"}, {"stainless-fume": "warn", "shared-tools": "warn", "back-purge": "warn"}),
    ({"process": "mig"}, {"manganese-fume": "warn"}),
    ({"family": "aluminium"}, {"ozone": "warn", "hot-looks-cold": "note", "shared-tools": "warn"}),
    ({"family": "magnesium"}, {"magnesium-fire": "stop"}),
    ({"family": "titanium"}, {"titanium-dust": "warn"}),
    ({"family": "copper"}, {"beryllium": "warn", "copper-fume": "note"}),
    ({"tungsten": "radioactive"}, {"thoriated-tungsten": "warn"}),
    ({"gas": "ar-18co2"}, {"active-gas-on-tungsten": "warn"}),
    ({"place": "indoors"}, {"fume-indoors": "warn"}),
    ({"place": "enclosed"}, {"argon-pools": "stop", "confined-space": "stop", "fume-indoors": "warn"}),
    ({"place": "outdoors"}, {"wind": "note"}),
    ({"part": "tank"}, {"tank": "stop"}),
    ({"part": "pressure"}, {"pressure-item": "stop", "qualified-welder": "stop"}),
    ({"part": "sealed-item"}, {"pressure-item": "stop"}),
    ({"part": "closed-section"}, {"closed-section": "stop"}),
    ({"part": "vehicle"}, {"vehicle-battery": "stop", "vehicle-near-the-heat": "stop"}),
    ({"part": "steering-suspension"}, {"qualified-welder": "stop"}),
    ({"part": "towing"}, {"qualified-welder": "stop"}),
    ({"part": "lifting"}, {"qualified-welder": "stop", "lifting-gear": "stop"}),
    ({"part": "rollover"}, {"qualified-welder": "stop", "rollover": "stop"}),
]


@pytest.mark.parametrize(("facts", "expected"), MUST_FIRE, ids=lambda value: "+".join(value.values()))
def test_the_caution_comes_up_when_asked_and_not_otherwise(hazards, facts, expected):
    found = fired(hazards, **facts)
    assert {name: found.get(name) for name in expected} == expected
    if facts != {"place": "outdoors"}:
        assert not set(expected) & set(fired(hazards))


def test_what_stands_on_every_request_is_short(hazards):
    standing = {hazard.id: hazard.severity for hazard in hazards if hazard.is_standing}
    assert standing == {
        "arc-light": "warn",
        "fire-watch": "warn",
        "shock": "warn",
        "cylinder-secured": "warn",
        "pacemaker": "note",
    }
    assert set(standing) <= set(fired(hazards))
    assert {hazard.id for hazard in matching(hazards, {})} == set(standing)


def test_a_plain_request_is_not_drowned(hazards):
    assert len(fired(hazards)) <= 6
    assert "stop" not in fired(hazards).values()
    for metal in ("aluminium", "stainless", "carbon-steel"):
        for process in ("tig", "mig"):
            at_the_bench = fired(hazards, family=metal, process=process, place="indoors")
            assert "stop" not in at_the_bench.values()
            assert list(at_the_bench.values()).count("warn") <= 8


def test_a_coated_metal_fires_each_caution_once(hazards):
    facts = {
        **PLAIN,
        "coatings": {"galvanised", "zinc-primer"},
        "group": {"galvanised"},
        "place": {"indoors"},
    }
    ids = [hazard.id for hazard in matching(hazards, facts)]
    assert len(ids) == len(set(ids))
    assert ids.count("zinc") == 1


def test_order_is_stop_warn_note_and_the_particular_before_the_standing(hazards):
    facts = {**PLAIN, "family": {"aluminium"}, "place": {"enclosed"}, "part": {"tank"}, "coatings": {"oil"}}
    found = matching(hazards, facts)
    severities = [hazard.severity for hazard in found]
    assert severities == sorted(severities, key=["stop", "warn", "note"].index)
    assert set(severities) == {"stop", "warn", "note"}
    warns = [hazard for hazard in found if hazard.severity == "warn"]
    standing = [hazard.is_standing for hazard in warns]
    assert standing == sorted(standing)
    assert found == matching(hazards, facts)
    in_file = [hazard for hazard in hazards if hazard in warns]
    assert warns == in_file


def test_every_case_can_come_up(hazards, tables):
    enums = {
        "process": Process,
        "joint": Joint,
        "coatings": Coating,
        "solvent": Solvent,
        "part": Part,
        "place": Place,
    }
    known = {attribute: set(values) for attribute, values in enums.items()}
    known["family"] = {metal.family for metal in tables.records(Metal)}
    known["group"] = {metal.group for metal in tables.records(Metal)}
    known["gas"] = {gas.id for gas in tables.records(Gas)}
    known["tungsten"] = {"radioactive"}
    assert set(known) == set(ATTRIBUTES)
    for hazard in hazards:
        for case in hazard.cases:
            for attribute, values in case.items():
                assert values <= known[attribute], f"{hazard.id}: {attribute}"


def test_every_coating_that_gives_off_something_and_every_solvent_and_part_has_a_caution(hazards):
    harmless = {Coating.ANODISED, Coating.MILL_SCALE, Coating.RUST, Part.BRACKET}
    for attribute, enum in (("coatings", Coating), ("solvent", Solvent), ("part", Part), ("place", Place)):
        for value in enum:
            asked = any(value in case.get(attribute, ()) for hazard in hazards for case in hazard.cases)
            assert asked is (value not in harmless), value


def test_active_gases_are_those_the_gas_table_calls_active(hazards, tables):
    rule = next(hazard for hazard in hazards if hazard.id == "active-gas-on-tungsten")
    active = {gas.id for gas in tables.records(Gas) if not gas.is_inert}
    assert rule.cases[0]["gas"] == active


def test_texts_are_at_most_two_short_sentences(hazards):
    for hazard in hazards:
        assert hazard.text.endswith("."), hazard.id
        assert len(re.findall(r"[.!?](?: |$)", hazard.text)) <= 2, hazard.id
        assert len(hazard.text) <= 240, hazard.id
        assert hazard.text.split() == hazard.text.split(" "), hazard.id


def test_sources_and_grades_are_known(hazards, tables):
    for hazard in hazards:
        assert hazard.source in tables.sources, hazard.id
        assert isinstance(hazard.basis, Basis)
        assert hazard.place
    assert len({hazard.id for hazard in hazards}) == len(hazards)
    assert len({hazard.text for hazard in hazards}) == len(hazards)


SOUND = """\
wet-rope:
  severity: warn
  when: [{part: [lifting], place: [outdoors]}, {family: [copper]}]
  text: Invented for the test.
  source: BOOK
  place: p. 1
  basis: printed
"""


def read(tmp_path: Path, text: str) -> tuple[tuple[Hazard, ...], list[str]]:
    path = tmp_path / "hazards.yaml"
    path.write_text(text, encoding="utf-8")
    faults = []
    found = read_hazards(path, "hazards.yaml", {"BOOK"}, faults)
    return found, [str(fault) for fault in faults]


def test_a_case_needs_all_its_attributes_and_one_case_is_enough(tmp_path):
    (rule,), faults = read(tmp_path, SOUND)
    assert not faults
    assert rule.applies({"part": {"lifting"}, "place": {"outdoors"}})
    assert rule.applies({"family": {"copper", "steel"}})
    assert not rule.applies({"part": {"lifting"}, "place": {"indoors"}})
    assert not rule.applies({"part": {"lifting"}})
    assert not rule.applies({})


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("severity: warn", "severity: warm", "nearest: warn"),
        ("severity: warn", "severty: warn", "unknown entry 'severty'"),
        ("source: BOOK", "source: BOOKS", "not in sources.yaml"),
        ("basis: printed", "basis: print", "nearest: printed"),
        ("place: p. 1", "place:", "'place' is missing"),
        ("text: Invented for the test.", "text: [a, b]", "'text' must be one text"),
        ("part: [lifting]", "parts: [lifting]", "nearest: part"),
        ("part: [lifting]", "part: lifting", "needs a list of words"),
        ("part: [lifting]", "part: []", "needs a list of words"),
        ("[{part: [lifting], place: [outdoors]}, {family: [copper]}]", "sometimes", "'when' is 'always'"),
        ("[{part: [lifting], place: [outdoors]}, {family: [copper]}]", "[]", "'when' is 'always'"),
        ("[{part: [lifting], place: [outdoors]}, {family: [copper]}]", "[{}]", "a case is"),
    ],
)
def test_a_fault_is_named_with_file_row_and_caution(tmp_path, old, new, said):
    found, faults = read(tmp_path, SOUND.replace(old, new))
    assert found == ()
    assert len(faults) == 1
    assert faults[0].startswith("hazards.yaml, row 1: wet-rope: ")
    assert said in faults[0]


def test_sound_cautions_survive_a_faulty_one(tmp_path):
    found, faults = read(tmp_path, SOUND + SOUND.replace("wet-rope", "dry-rope").replace("warn", "loud"))
    assert [hazard.id for hazard in found] == ["wet-rope"]
    assert len(faults) == 1


def test_an_unreadable_file_is_one_fault(tmp_path):
    found, faults = read(tmp_path, "just words")
    assert found == ()
    assert len(faults) == 1
