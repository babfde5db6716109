"""Can the machine do it: process, current, AC, and the settings that have their own limits."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.reach import instead, offers_text
from welds.advice.request import Process
from welds.advice.setting import Check, Setting
from welds.advice.sizes import holds
from welds.language import figure, mark, tr
from welds.reference.names import all_of

LESSER = {
    "wire_feed": (
        mark("wire feed"),
        "m/min",
        mark("the arc will not burn as the card says: change wire diameter or current"),
    ),
    "voltage": (
        mark("voltage"),
        "V",
        mark("expect a bead that lies wrong: choose current and wire to suit the nearest tap"),
    ),
    "electrode_negative": (
        mark("electrode negative"),
        "%",
        mark("watch the oxide and the tip of the tungsten"),
    ),
    "ac_frequency": (
        mark("ac frequency"),
        "Hz",
        mark("only the width of the arc changes: hold it shorter or move a little slower"),
    ),
}
HARMLESS = frozenset({"ac_frequency"})
"""Settings whose limit costs comfort, not the weld."""


def reach_checks(case: Case, settings: Mapping[str, Setting]) -> list[Check]:
    """Return what can be said about the machine, passed or not."""
    machine = case.equipment.machine
    found = []
    if case.request.process not in machine.processes:
        found.append(
            Check(
                mark("process"),
                False,
                tr("{name} does not do {process}", name=machine.name, process=case.request.process.value),
            )
        )
    found.append(_current(case, settings))
    if case.request.process is Process.TIG:
        found += [_current_type(case, settings), *_handling(case)]
    elif machine.wire_diameters_mm:
        found.append(_rolls(case, settings))
    for name in LESSER:
        found += _lesser(case, settings, name)
    return found


def _current(case: Case, settings: Mapping[str, Setting]) -> Check:
    machine, setting = case.equipment.machine, settings["current"]
    wanted = setting.wanted or setting.figure
    lowest, highest = machine.reach("current")
    clipped = next((reason.text for reason in setting.reasons if reason.is_clip), None)
    if highest is None and lowest is None:
        return Check(mark("reach"), True, tr("no machine stated: nothing was clipped to its limits"))
    if highest is not None and wanted.start > highest:
        offers = offers_text(instead(case, wanted))
        text = tr(
            "the joint asks for {start:.0f} A, {name} gives {highest:g} A: {offers}",
            start=wanted.start,
            name=machine.name,
            highest=highest,
            offers=offers,
        )
        return Check(mark("reach"), False, text)
    if lowest is not None and wanted.start < lowest:
        text = tr(
            "the joint asks for {start:.0f} A, below the {lowest:g} A that {name} holds",
            start=wanted.start,
            lowest=lowest,
            name=machine.name,
        )
        return Check(
            mark("reach"),
            False,
            tr("{text}: back it with copper and travel faster, or use thicker sheet", text=text),
        )
    return Check(
        mark("reach"), True, tr("{name} reaches it", name=machine.name) + (f"; {clipped}" if clipped else "")
    )


def _current_type(case: Case, settings: Mapping[str, Setting]) -> Check:
    machine = case.equipment.machine
    if settings["polarity"].value == "AC" and not machine.has_ac:
        others = [each.name for each in case.equipment.others if each.has_ac and "tig" in each.processes]
        text = tr("{name} has no AC; this metal needs it under argon", name=machine.name)
        other = (
            tr("use {name}", name=others[0])
            if others
            else tr("helium on electrode negative is the other way")
        )
        return Check(mark("current type"), False, f"{text} ({other})")
    return Check(mark("current type"), True, tr("{current} is there", current=settings["polarity"].value))


def _rolls(case: Case, settings: Mapping[str, Setting]) -> Check:
    machine, wire = case.equipment.machine, float(settings["wire_diameter"].start)
    if holds(machine.wire_diameters_mm, wire):
        return Check(mark("rolls"), True, tr("rolls and gun take {wire:g} mm wire", wire=wire))
    takes = all_of([figure(f"{each:g}") for each in sorted(machine.wire_diameters_mm)])
    return Check(
        mark("rolls"),
        False,
        tr(
            "rolls and gun of {name} take {takes} mm, not {wire:g} mm",
            name=machine.name,
            takes=takes,
            wire=wire,
        ),
    )


def _handling(case: Case) -> list[Check]:
    machine = case.equipment.machine
    found = []
    if not machine.has_pedal:
        text = tr(
            "no pedal: the arc has the set current from the first moment; start at the low end, break off to"
            " let the pool freeze, and fill the crater by hand"
        )
        found.append(Check(mark("pedal"), True, text))
    if machine.has_hot_start is False and case.thick_mm > 4.0:
        found.append(
            Check(mark("start"), True, tr("no hot start: begin on a run-on tab or wait for the pool to form"))
        )
    return found


def _lesser(case: Case, settings: Mapping[str, Setting], name: str) -> list[Check]:
    setting = settings.get(name)
    if setting is None or setting.wanted is None or setting.figure.start in setting.wanted:
        return []
    wanted, got = setting.wanted, setting.figure.start
    words, unit, cost = LESSER[name]
    text = tr(
        "{setting}: {low:g} to {high:g} {unit} suits the joint, {name} gives {got:g} {unit}: {cost}",
        setting=tr(words),
        low=wanted.low,
        high=wanted.high,
        unit=unit,
        name=case.equipment.machine.name,
        got=got,
        cost=tr(cost),
    )
    return [Check(words, name in HARMLESS, text)]
