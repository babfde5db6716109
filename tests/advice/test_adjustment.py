"""Faults of the last bead move a setting within its band, and what follows from it moves too."""

from dataclasses import replace

import pytest

from welds.advice.adjustment import MOVABLE, Adjustment, adjustment_of
from welds.advice.advise import advise
from welds.advice.equipment import GENERIC, Control
from welds.advice.request import Joint, Process, Request
from welds.reference.faults import Fault, remedies

CORNER = Request(Process.TIG, "5052", 2.03, Joint.OUTSIDE_CORNER)
TEE = Request(Process.MIG, "low-carbon", 2.0, Joint.TEE)


def step(setting: str, direction: str) -> Adjustment:
    return Adjustment(setting, direction, "undercut", "Change it.", "COMMON_PRACTICE")


@pytest.mark.parametrize("request_", [CORNER, TEE], ids=["tig", "mig"])
@pytest.mark.parametrize("direction", ["up", "down"])
def test_every_movable_band_moves_the_right_way_and_never_out_of_itself(tables, request_, direction):
    before = advise(request_, tables)
    for name in MOVABLE & before.settings.keys():
        old = before.settings[name]
        if old.band is None:
            continue
        card = advise(request_, tables, adjustments=[step(name, direction)] * 9)
        new = card.settings[name].figure
        assert (new.low, new.high) == (old.band.low, old.band.high), name
        assert new.start > old.band.start if direction == "up" else new.start < old.band.start, name
        assert new.start in old.band, name


def test_one_step_goes_half_way_and_says_why(tables):
    old = advise(CORNER, tables).settings["current"].figure
    setting = advise(CORNER, tables, adjustments=[step("current", "down")]).settings["current"]
    assert setting.figure.start == round((old.start + old.low) / 2)
    assert setting.reasons[-1].text == "undercut seen: change it"
    assert setting.reasons[-1].factor == pytest.approx(setting.figure.start / old.start)


def test_what_follows_from_the_current_follows(tables):
    before = advise(TEE, tables).settings
    after = advise(TEE, tables, adjustments=[step("current", "up")]).settings
    assert after["wire_feed"].figure.start > before["wire_feed"].figure.start
    assert after["voltage"].figure.start > before["voltage"].figure.start


def test_a_machine_with_taps_stays_on_its_taps(tables):
    taps = Control("current", None, (73.0, 87.0, 102.0))
    machine = replace(GENERIC.machine, controls=(taps,))
    equipment = replace(GENERIC, machine=machine)
    for times in range(4):
        card = advise(CORNER, tables, equipment, adjustments=[step("current", "down")] * times)
        assert card.settings["current"].figure.start in taps.positions


def test_a_choice_goes_to_its_neighbour(tables):
    before = advise(CORNER, tables).settings
    after = advise(CORNER, tables, adjustments=[step("cup", "up"), step("backing", "up")]).settings
    assert after["cup"].start > before["cup"].start
    assert after["cup"].start in [each.value for each in before["cup"].alternatives]
    assert (before["backing"].start, after["backing"].start) == ("none", "copper bar")


def test_burning_through_never_asks_for_more_heat(tables):
    """Handbook sense, also in the table's sources: a hole calls for less current, more speed, or backing."""
    for process in ("tig", "mig"):
        steps = [adjustment_of(row) for row in remedies(tables, "burn-through", process, "aluminium")]
        found = {(each.setting, each.direction) for each in steps if each is not None}
        assert ("current", "down") in found
        assert not {("current", "up"), ("travel_speed", "down"), ("voltage", "up")} & found


def test_wire_feed_is_the_current(tables):
    row = next(row for row in tables.records(Fault) if row.setting == "wire_feed" and row.direction == "up")
    assert adjustment_of(row).setting == "current"


def test_what_a_person_must_change_is_no_step(tables):
    rows = [
        row for row in tables.records(Fault) if row.setting in ("filler_metal", "tungsten_diameter", "tip")
    ]
    assert rows
    assert [adjustment_of(row) for row in rows] == [None] * len(rows)
