"""Tacks: ends, middle, halves; runs from the middle outwards, each welded back towards it."""

from itertools import pairwise
from time import perf_counter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.advice.request import Joint
from welds.job.tack_plan import _farthest_first, plan_tacks
from welds.reference.heat_limits import Tack


def test_ends_then_middle_then_halves(tables):
    """Aluminium of 2 mm: at most 100 mm apart, so five tacks on 400 mm."""
    plan = plan_tacks(tables, "aluminium", 2.0, Joint.BUTT, 400.0)
    assert plan.tacks_mm == (0.0, 400.0, 200.0, 100.0, 300.0)


def test_a_closed_seam_is_tacked_across(tables):
    plan = plan_tacks(tables, "aluminium", 2.0, Joint.BUTT, 400.0, is_closed=True)
    assert plan.tacks_mm == (0.0, 200.0, 100.0, 300.0)


def test_runs_go_outwards_and_are_welded_back(tables):
    plan = plan_tacks(tables, "carbon-steel", 1.0, Joint.BUTT, 300.0)
    assert [(run.start_mm, run.end_mm) for run in plan.runs] == [(75, 150), (225, 150), (0, 75), (300, 225)]


def test_shrinkage_of_three_metres(tables):
    """The welding institute's figures: 3 mm along a butt of 3 m, 0.8 mm along a fillet."""
    assert plan_tacks(tables, "carbon-steel", 5.0, Joint.BUTT, 3000.0).along_mm == (3.0, 3.0)
    assert plan_tacks(tables, "carbon-steel", 5.0, Joint.TEE, 3000.0).along_mm == (0.8, 0.8)


@given(
    st.sampled_from(["aluminium", "carbon-steel", "stainless"]),
    st.floats(0.5, 12.0),
    st.floats(20.0, 4000.0),
    st.booleans(),
)
def test_no_gap_is_wider_than_the_table_says_and_every_stretch_is_welded_once(
    tables, family: str, thickness: float, length: float, is_closed: bool
):
    plan = plan_tacks(tables, family, thickness, Joint.TEE, length, is_closed=is_closed)
    widest = next(
        row.spacing_max_mm
        for row in tables.records(Tack)
        if row.family == family and row.thickness_min_mm < thickness <= row.thickness_max_mm
    )
    places = sorted(plan.tacks_mm) + ([length] if is_closed else [])
    assert max(b - a for a, b in pairwise(places)) <= widest + 1e-6
    covered = sorted((min(run.start_mm, run.end_mm), max(run.start_mm, run.end_mm)) for run in plan.runs)
    assert covered[0][0] == 0.0
    assert covered[-1][1] == pytest.approx(length)
    assert all(a[1] == b[0] for a, b in pairwise(covered))


@given(st.integers(1, 60), st.booleans())
def test_every_next_tack_is_as_far_as_can_be_from_all_before(count: int, is_closed: bool):
    """The rule written out: of all places left, one whose nearest neighbour is farthest away."""
    order = _farthest_first(count + 1, is_closed=is_closed)
    assert sorted(order) == list(range(count + 1))
    around = count + 1 if is_closed else None
    for number in range(2, len(order)):
        done = order[:number]
        reach = [min(apart(place, other, around) for other in done) for place in order[number:]]
        assert reach[0] == max(reach)


def apart(a: int, b: int, around: int | None) -> int:
    return abs(a - b) if around is None else min(abs(a - b), around - abs(a - b))


def test_a_seam_of_a_hundred_metres_is_planned_at_once(tables):
    start = perf_counter()
    plan = plan_tacks(tables, "carbon-steel", 1.0, Joint.BUTT, 100_000.0)
    assert len(plan.tacks_mm) == 2633  # 100 m at 38 mm at most
    assert perf_counter() - start < 1.0


def test_thick_plate_has_runs_too(tables):
    assert len(plan_tacks(tables, "carbon-steel", 200.0, Joint.BUTT, 1000.0).runs) == 5
