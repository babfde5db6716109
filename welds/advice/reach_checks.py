"""Can the machine do it: process, current, AC, and the settings that have their own limits."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.reach import instead, offers_text
from welds.advice.request import Process
from welds.advice.setting import Check, Setting
from welds.advice.sizes import holds
from welds.advice.words import joined

LESSER = {
    "wire_feed": ("m/min", "the arc will not burn as the card says: change wire diameter or current"),
    "voltage": ("V", "expect a bead that lies wrong: choose current and wire to suit the nearest tap"),
    "electrode_negative": ("%", "watch the oxide and the tip of the tungsten"),
    "ac_frequency": ("Hz", "only the width of the arc changes: hold it shorter or move a little slower"),
}
HARMLESS = frozenset({"ac_frequency"})
"""Settings whose limit costs comfort, not the weld."""


def reach_checks(case: Case, settings: Mapping[str, Setting]) -> list[Check]:
    """Return what can be said about the machine, passed or not."""
    machine = case.equipment.machine
    found = []
    if case.request.process not in machine.processes:
        found.append(Check("process", False, f"{machine.name} does not do {case.request.process}"))
    found.append(_current(case, settings))
    if case.request.process is Process.TIG:
        found += [_current_type(case, settings), *_handling(case)]
    elif machine.wire_diameters_mm:
        found.append(_rolls(case, settings))
    for name, (unit, cost) in LESSER.items():
        found += _lesser(case, settings, name, unit, cost)
    return found


def _current(case: Case, settings: Mapping[str, Setting]) -> Check:
    machine, setting = case.equipment.machine, settings["current"]
    wanted = setting.wanted or setting.figure
    lowest, highest = machine.reach("current")
    clipped = next((reason.text for reason in setting.reasons if "clipped: " in reason.text), None)
    if highest is None and lowest is None:
        return Check("reach", True, "no machine stated: nothing was clipped to its limits")
    if highest is not None and wanted.start > highest:
        offers = offers_text(instead(case, wanted))
        text = f"the joint asks for {wanted.start:.0f} A, {machine.name} gives {highest:g} A: {offers}"
        return Check("reach", False, text)
    if lowest is not None and wanted.start < lowest:
        text = f"the joint asks for {wanted.start:.0f} A, below the {lowest:g} A that {machine.name} holds"
        return Check("reach", False, f"{text}: back it with copper and travel faster, or use thicker sheet")
    return Check("reach", True, f"{machine.name} reaches it" + (f"; {clipped}" if clipped else ""))


def _current_type(case: Case, settings: Mapping[str, Setting]) -> Check:
    machine = case.equipment.machine
    if settings["polarity"].value == "AC" and not machine.has_ac:
        others = [each.name for each in case.equipment.others if each.has_ac and "tig" in each.processes]
        text = f"{machine.name} has no AC; this metal needs it under argon"
        other = f"use {others[0]}" if others else "helium on electrode negative is the other way"
        return Check("current type", False, f"{text} ({other})")
    return Check("current type", True, f"{settings['polarity'].value} is there")


def _rolls(case: Case, settings: Mapping[str, Setting]) -> Check:
    machine, wire = case.equipment.machine, float(settings["wire_diameter"].start)
    if holds(machine.wire_diameters_mm, wire):
        return Check("rolls", True, f"rolls and gun take {wire:g} mm wire")
    takes = joined([f"{each:g}" for each in sorted(machine.wire_diameters_mm)])
    return Check("rolls", False, f"rolls and gun of {machine.name} take {takes} mm, not {wire:g} mm")


def _handling(case: Case) -> list[Check]:
    machine = case.equipment.machine
    found = []
    if not machine.has_pedal:
        text = (
            "no pedal: the arc has the set current from the first moment; start at the low end, break off to"
            " let the pool freeze, and fill the crater by hand"
        )
        found.append(Check("pedal", True, text))
    if machine.has_hot_start is False and case.thick_mm > 4.0:
        found.append(Check("start", True, "no hot start: begin on a run-on tab or wait for the pool to form"))
    return found


def _lesser(case: Case, settings: Mapping[str, Setting], name: str, unit: str, cost: str) -> list[Check]:
    setting = settings.get(name)
    if setting is None or setting.wanted is None or setting.figure.start in setting.wanted:
        return []
    wanted, got = setting.wanted, setting.figure.start
    text = (
        f"{name.replace('_', ' ')}: {wanted.low:g} to {wanted.high:g} {unit} suits the joint,"
        f" {case.equipment.machine.name} gives {got:g} {unit}: {cost}"
    )
    return [Check(name.replace("_", " "), name in HARMLESS, text)]
