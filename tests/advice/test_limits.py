"""Fitting a band to limits and steps; every expected figure is worked by hand beside it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.advice.equipment import Control, Machine
from welds.advice.limits import fit
from welds.quantities.band import Band


def machine(**more) -> Machine:
    return Machine("a set", frozenset({"tig"}), **more)


def test_without_limits_nothing_changes() -> None:
    band = Band(90, 120, 140, "Hz")
    assert fit(band, machine(), "ac_frequency", "Hz") == (band, [])


def test_steps_of_twenty_from_forty() -> None:
    """Steps at 40, 60, ... 120, 140: 118 goes to 120, 90 moves in to 100, 140 stays."""
    stepped = machine(
        ac_frequency_min_hz=40, ac_frequency_max_hz=150, controls=(Control("ac_frequency", step=20),)
    )
    band, reasons = fit(Band(90, 118, 140, "Hz"), stepped, "ac_frequency", "Hz")
    assert (band.low, band.start, band.high) == (100, 120, 140)
    assert [reason.text for reason in reasons] == ["snapped to 120 Hz: a set goes in steps of 20 Hz"]


def test_only_these_positions() -> None:
    switch = machine(controls=(Control("electrode_negative", positions=(50.0, 60.0, 70.0, 80.0)),))
    band, reasons = fit(Band(65, 72, 75, "percent"), switch, "electrode_negative", "%")
    assert (band.low, band.start, band.high) == (70, 70, 70)
    assert "50, 60, 70, 80 % only" in reasons[-1].text


def test_beyond_the_positions_is_clipped_and_says_so() -> None:
    switch = machine(controls=(Control("current", positions=(40.0, 80.0, 120.0)),))
    band, reasons = fit(Band(130, 150, 170, "A"), switch, "current", "A")
    assert (band.low, band.start, band.high) == (120, 120, 120)
    assert reasons[0].text == "clipped: a set stops at 120 A"


def test_fixed_frequency() -> None:
    fixed = machine(controls=(Control("ac_frequency", positions=(60.0,)),))
    band, reasons = fit(Band(90, 120, 140, "Hz"), fixed, "ac_frequency", "Hz")
    assert (band.low, band.start, band.high) == (60, 60, 60)
    assert reasons[0].text == "clipped: a set has 60 Hz and no other"


def test_a_long_list_is_told_by_its_ends() -> None:
    many = machine(controls=(Control("current", positions=tuple(range(10, 130, 10))),))
    reasons = fit(Band(41, 44, 52, "A"), many, "current", "A")[1]
    assert "12 positions from 10 to 120 A" in reasons[-1].text


@given(
    low=st.floats(1, 300),
    up=st.floats(0, 100),
    more=st.floats(0, 100),
    lowest=st.floats(1, 100),
    room=st.floats(0, 300),
    step=st.sampled_from([None, 0.5, 1.0, 7.0, 50.0]),
    positions=st.lists(st.floats(5, 400), max_size=5),
)
def test_whatever_comes_out_can_be_set(low, up, more, lowest, room, step, positions) -> None:
    highest = lowest + room
    inside = tuple(sorted({each for each in positions if lowest <= each <= highest}))
    set_ = machine(current_min_a=lowest, current_max_a=highest, controls=(Control("current", step, inside),))
    band, _ = fit(Band(low, low + up, low + up + more, "A"), set_, "current", "A")
    for figure in (band.low, band.start, band.high):
        assert lowest - 1e-6 <= figure <= highest + 1e-6
        if inside:
            assert figure in inside
        elif step:
            steps = (figure - lowest) / step
            assert steps == pytest.approx(round(steps), abs=1e-4)
