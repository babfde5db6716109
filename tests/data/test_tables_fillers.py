"""Fillers and filler choices against the rules that textbooks print."""

from itertools import combinations_with_replacement

import pytest

from welds.advice.request import Goal
from welds.errors import NotCoveredError
from welds.reference.fillers import Filler, FillerPair, filler_choice
from welds.reference.load import load_tables
from welds.reference.metals import Metal

TABLES = load_tables()
FILLERS = {filler.id: filler for filler in TABLES.records(Filler)}
PAIRS = TABLES.records(FillerPair)
ALUMINIUM = [metal for metal in TABLES.records(Metal) if metal.family == "aluminium" and metal.is_weldable]
GOALS = (None, *Goal)

# Where casting and marine plate or 5xxx sheet meet, two printed rules contradict each other; the rows say so.
TORN = {("356", other) for other in ("5052", "5083", "5086", "5454")}


def answers():
    for one, other in combinations_with_replacement(ALUMINIUM, 2):
        for goal in GOALS:
            try:
                yield one, other, goal, filler_choice(TABLES, one, other, goal)
            except NotCoveredError:
                continue


ANSWERS = list(answers())


def test_aluminium_pairs_are_all_answered():
    assert {(one.id, other.id) for one, other, goal, _ in ANSWERS if goal is None} == {
        (one.id, other.id) for one, other in combinations_with_replacement(ALUMINIUM, 2)
    }


def test_rows_name_their_sides_and_goal():
    for pair in PAIRS:
        assert pair.row_id == f"{pair.base_a}+{pair.base_b}+{pair.goal}"


def test_sides_are_names_of_the_catalogue():
    known = {name for metal in TABLES.records(Metal) for name in (metal.id, metal.group, metal.family)}
    for pair in PAIRS:
        assert {pair.base_a, pair.base_b} <= known, pair.row_id


def test_fillers_named_in_rows_exist_and_refusals_name_none():
    for pair in PAIRS:
        named = {pair.first, *pair.second, *pair.avoid} - {""}
        assert named <= set(FILLERS), pair.row_id
        assert pair.first or not named, pair.row_id


def test_no_two_rows_answer_the_same_question():
    questions = [(pair.goal, *sorted((pair.base_a, pair.base_b))) for pair in PAIRS]
    assert len(set(questions)) == len(questions)


def test_warm_service_never_gets_a_filler_rich_in_magnesium():
    """Mathers 2002 p. 49: not above 65 degC for weld metal rich in magnesium; 3 % is the common line."""
    for one, other, goal, choice in ANSWERS:
        if goal is Goal.WARM_SERVICE:
            for filler in (choice.first, *choice.seconds):
                assert (FILLERS[filler].magnesium_percent or 0.0) <= 3.0, (one.id, other.id)


def test_no_silicon_filler_comes_first_on_magnesium_alloys():
    """Mathers 2002 p. 49: no 4043, 4047 or 4643 on a base metal with more than 2 % magnesium."""
    for one, other, goal, choice in ANSWERS:
        if max(one.magnesium_percent or 0.0, other.magnesium_percent or 0.0) > 2.0:
            is_torn = tuple(sorted((one.id, other.id))) in TORN
            assert is_torn or not choice.first.startswith("ER4"), (one.id, other.id, goal)


def test_no_magnesium_filler_comes_first_on_silicon_castings():
    """Mathers 2002 p. 49: no 5xxx filler on a base metal with more than 2 % silicon."""
    for one, other, goal, choice in ANSWERS:
        if max(one.silicon_percent or 0.0, other.silicon_percent or 0.0) > 2.0:
            is_torn = tuple(sorted((one.id, other.id))) in TORN
            assert is_torn or not choice.first.startswith("ER5"), (one.id, other.id, goal)


def test_colour_after_anodising_is_asked_of_light_fillers():
    for one, other, goal, choice in ANSWERS:
        if goal is Goal.ANODISED_COLOUR and "356" not in (one.id, other.id):
            assert FILLERS[choice.first].anodised_colour in ("white", "light golden"), (one.id, other.id)


@pytest.mark.parametrize("filler", FILLERS.values(), ids=FILLERS)
def test_numbers_are_the_bare_class(filler):
    assert filler.id in (f"ER{filler.number}", filler.number)


@pytest.mark.parametrize("filler", FILLERS.values(), ids=FILLERS)
def test_the_warmth_limit_follows_the_magnesium(filler):
    is_rich = filler.family == "aluminium" and (filler.magnesium_percent or 0.0) > 3.0
    assert filler.max_service_c == (65.0 if is_rich else None)
