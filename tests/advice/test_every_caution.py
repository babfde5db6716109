"""Every rule of data/hazards.yaml through whole requests: each case and value fires it, a near miss does not.

The rules come from the file, so a new one is tested as soon as it is written. A near miss is the same request
with one answer taken back. What a rule must say, and for which requests, stands in test_hazards.py and
test_dangerous_requests.py; here nothing is expected beyond what the file promises, of cards instead of facts.
"""

from collections.abc import Iterator
from dataclasses import replace
from itertools import product

import pytest

from tests.advice.cautions import said_first
from welds.advice.advise import advise
from welds.advice.equipment import GENERIC, Shelf
from welds.advice.request import Coating, Joint, Part, Place, Process, Request, Solvent
from welds.errors import InputError, WeldsError
from welds.reference.hazards import Hazard, load_hazards
from welds.reference.load import load_tables
from welds.reference.metals import Metal

TABLES = load_tables()
HAZARDS = TABLES.derived(load_hazards)
PARTICULAR = [hazard for hazard in HAZARDS if not hazard.is_standing]
EVERY_PARTICULAR = pytest.mark.parametrize("hazard", PARTICULAR, ids=[hazard.id for hazard in PARTICULAR])

HARMLESS = {
    "process": ("tig", "mig"),
    "joint": ("butt",),
    "coatings": ("",),
    "solvent": ("",),
    "part": ("",),
    "place": ("outdoors", "indoors"),
    "family": ("carbon-steel", "aluminium"),
    "group": ("low-carbon",),
    "gas": ("ar-18co2", "argon"),
    "tungsten": ("",),
}
"""Answers to go back to, the first that the case does not ask for."""

REFUSED = {"active-gas-on-tungsten"}
"""Rules whose requests get no card at all; the rule waits behind the refusal."""

Facts = dict[str, str]


def card_of(facts: Facts):
    """Return the card of the plainest request that has these facts."""
    metal = next(
        each
        for each in TABLES.records(Metal)
        if each.is_weldable
        and each.family == facts.get("family", each.family)
        and each.group == facts.get("group", each.group if "family" in facts else "low-carbon")
    )
    request = Request(
        Process(facts.get("process", "tig")),
        metal.id,
        2.0,
        Joint(facts.get("joint", "butt")),
        coatings=(Coating(facts["coatings"]),) if facts.get("coatings") else (),
        solvent=Solvent(facts["solvent"]) if facts.get("solvent") else None,
        part=Part(facts["part"]) if facts.get("part") else None,
        place=Place(facts.get("place", "outdoors")),
        gas=facts.get("gas"),
    )
    shelf = Shelf(tungsten_types=frozenset({"WTh20"})) if facts.get("tungsten") else Shelf()
    return advise(request, TABLES, replace(GENERIC, shelf=shelf))


def asked_for(hazard: Hazard) -> Iterator[Facts]:
    """Yield each case with each of its values."""
    for case in hazard.cases:
        for values in product(*(sorted(wanted) for wanted in case.values())):
            facts = dict(zip(case, values, strict=True))
            if facts.get("joint") == "plug" or facts.get("gas") in ("co2", "ar-25co2"):
                facts.setdefault("process", "mig")
            yield facts


def near_misses(hazard: Hazard) -> Iterator[tuple[str, Facts]]:
    """Yield each case with one of its answers taken back, and which, where no other case holds then."""
    for case, facts in ((case, facts) for case in hazard.cases for facts in asked_for(hazard)):
        for attribute in case.keys() & facts.keys():
            wanted = case[attribute]
            back = next((each for each in HARMLESS[attribute] if each not in wanted), None)
            missed = {**facts, attribute: back}
            if back is not None and not hazard.applies({key: {value} for key, value in missed.items()}):
                yield attribute, missed


@EVERY_PARTICULAR
def test_each_case_and_value_brings_it_onto_the_card(hazard):
    for facts in asked_for(hazard):
        if hazard.id in REFUSED:
            with pytest.raises(InputError, match="nearest: argon"):
                card_of(facts)
            continue
        card = card_of(facts)
        found = [caution for caution in card.cautions if caution.rule == hazard.id]
        assert [caution.severity for caution in found] == [hazard.severity], facts
        said_first(TABLES, card, hazard.id)


@EVERY_PARTICULAR
def test_a_near_miss_does_not(hazard):
    taken_back = set()
    for attribute, facts in near_misses(hazard):
        try:
            card = card_of(facts)
        except WeldsError:
            continue
        taken_back.add(attribute)
        assert hazard.id not in {caution.rule for caution in card.cautions}, facts
    assert taken_back == {attribute for case in hazard.cases for attribute in case}


def test_standing_rules_are_on_every_card():
    standing = {hazard.id for hazard in HAZARDS if hazard.is_standing}
    assert len(standing) == len(HAZARDS) - len(PARTICULAR) > 3
    for hazard in PARTICULAR:
        if hazard.id not in REFUSED:
            assert standing <= {caution.rule for caution in card_of(next(asked_for(hazard))).cautions}
