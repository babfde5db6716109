"""The filler for a pair of metals and a goal."""

from contextlib import suppress
from itertools import combinations_with_replacement, product

import pytest

from welds.advice.request import Goal
from welds.errors import InputError, NotCoveredError
from welds.reference.basis import Basis
from welds.reference.fillers import Filler, filler_choice, find_filler
from welds.reference.load import load_tables
from welds.reference.metals import Metal, find_metal

FUSED_TOGETHER = ({"aluminium"}, {"carbon-steel", "stainless"}, {"copper"}, {"titanium"}, {"magnesium"})


def choice(tables, one, other, goal=None):
    return filler_choice(tables, find_metal(tables, one), find_metal(tables, other), goal)


def choice_or_none(tables, one, other, goal):
    with suppress(NotCoveredError):
        return filler_choice(tables, one, other, goal)
    return None


def may_be_fused(one, other, goal):
    if not (one.is_weldable and other.is_weldable):
        return False
    if goal is Goal.WARM_SERVICE and {"5083", "5086"} & {one.id, other.id}:
        return False
    return any({one.family, other.family} <= group for group in FUSED_TOGETHER)


@pytest.mark.parametrize("goal", [None, *Goal])
def test_every_pair_is_answered_or_refused_and_the_sides_may_be_swapped(tables, goal):
    fillers = {filler.id for filler in tables.records(Filler)}
    for one, other in combinations_with_replacement(tables.records(Metal), 2):
        answer = choice_or_none(tables, one, other, goal)
        assert answer == choice_or_none(tables, other, one, goal)
        assert (answer is not None) == may_be_fused(one, other, goal), (one.id, other.id)
        if answer is not None:
            assert {answer.first, *answer.seconds, *answer.avoid} <= fillers
            assert len({answer.first, *answer.seconds, *answer.avoid}) == 1 + len(
                answer.seconds + answer.avoid
            )
            assert answer.why
            assert answer.rows
            assert answer.sources


def test_the_most_specific_row_decides(tables):
    assert choice(tables, "5083", "5083").rows == ("5083+5083+general",)
    assert choice(tables, "5083", "5086").rows == ("5xxx+5xxx+general",)
    assert choice(tables, "316", "304").rows == ("316+austenitic+general",)
    assert choice(tables, "4130", "low-carbon").rows == ("low-alloy+carbon-steel+general",)


@pytest.mark.parametrize(
    ("one", "other", "goal", "first"),
    # what filler charts of the trade agree on
    [
        ("5052", "5052", None, "ER5356"),
        ("5052", "6061", None, "ER5356"),
        ("6061", "6061", Goal.LEAST_CRACKING, "ER4043"),
        ("6061", "356", None, "ER4043"),
        ("5052", "5052", Goal.WARM_SERVICE, "ER5554"),
        ("6061", "6061", Goal.WARM_SERVICE, "ER4043"),
        ("5052", "6061", Goal.ANODISED_COLOUR, "ER5356"),
        ("low-carbon", "low-carbon", None, "ER70S-6"),
        ("304", "304", None, "ER308L"),
        ("304", "low-carbon", None, "ER309L"),
        ("316L", "316L", None, "ER316L"),
    ],
)
def test_everyday_pairs(tables, one, other, goal, first):
    assert choice(tables, one, other, goal).first == first


def test_a_goal_without_a_row_falls_back_and_says_so(tables):
    answer = choice(tables, "304", "304", Goal.STRENGTH)
    assert answer.first == "ER308L"
    assert answer.note == "no row answers strength for this pair; this is the general choice"


@pytest.mark.parametrize(
    ("one", "other", "word"),
    [
        ("5052", "low-carbon", "aluminium and steel"),
        ("304", "6061", "aluminium and stainless steel"),
        ("copper", "1100", "aluminium and copper"),
        ("titanium-2", "304", "titanium and stainless steel"),
        ("magnesium-az31", "5052", "aluminium and magnesium"),
        ("copper", "low-carbon", "brazing"),
    ],
)
def test_pairs_that_do_not_fuse_are_refused_with_the_reason(tables, one, other, word):
    with pytest.raises(NotCoveredError, match=word):
        choice(tables, one, other)


@pytest.mark.parametrize("alloy", ["2024", "7075"])
def test_alloys_that_crack_are_refused_with_what_to_do_instead(tables, alloy):
    for other in (alloy, "6061"):
        with pytest.raises(NotCoveredError, match="rivet or bolt"):
            choice(tables, alloy, other)


def test_marine_plate_is_not_for_warm_service(tables):
    for alloy, other in product(("5083", "5086"), ("5052", "5454", "6061", "356")):
        with pytest.raises(NotCoveredError, match=r"65 degC.*5454"):
            choice(tables, alloy, other, Goal.WARM_SERVICE)


def test_an_own_row_for_the_same_pair_replaces_the_shipped_one(tmp_path):
    (tmp_path / "filler_pairs.csv").write_text(
        "row_id,base_a,base_b,goal,first,second,avoid,why,source_id,place,basis,note\n"
        "mine,6xxx,5052,general,ER4043,,,it is what the yard has,OWN,own notes,practice,\n"
    )
    answer = choice(load_tables(tmp_path), "5052", "6061")
    assert (answer.first, answer.rows, answer.basis) == ("ER4043", ("mine",), Basis.PRACTICE)


@pytest.mark.parametrize("text", ["ER5356", "er5356", "5356", "R5356", " 5356 "])
def test_a_filler_by_class_or_number(tables, text):
    assert find_filler(tables, text).id == "ER5356"


def test_an_unknown_filler_names_the_nearest(tables):
    with pytest.raises(InputError) as caught:
        find_filler(tables, "ER535")
    assert caught.value.nearest == "ER5356"
