"""What the program worked out about the set-up as a whole."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.request import Joint, Process
from welds.advice.rules.tig_current import demand
from welds.advice.rules.tungsten_diameter import ratings
from welds.advice.setting import Check, Setting
from welds.physics.power_source import duty_cycle_at
from welds.quantities.band import Band

FULL_DUTY_PERCENT = 100.0
GAP_OF_THICKNESS = {Process.TIG: 0.25, Process.MIG: 0.5}
"""Shop practice: the widest gap a bead bridges without backing, as a share of the thinner sheet."""


def checks_of(case: Case, settings: Mapping[str, Setting]) -> tuple[Check, ...]:
    """Return all checks that apply, passed ones included: a silent pass looks like no check."""
    found = [_process(case)]
    current = settings["current"].figure
    found.append(_reach(case, settings, current))
    if case.request.process is Process.TIG:
        found += [_current_type(case, settings), _tungsten(case, settings, current)]
    found += [each for each in (_duty(case, current), _gap(case)) if each is not None]
    return tuple(each for each in found if each is not None)


def _process(case: Case) -> Check | None:
    machine = case.equipment.machine
    if case.request.process in machine.processes:
        return None
    return Check("process", False, f"{machine.name} does not do {case.request.process}")


def _reach(case: Case, settings: Mapping[str, Setting], current: Band) -> Check:
    machine = case.equipment.machine
    clipped = next(
        (reason.text for reason in settings["current"].reasons if "clipped: " in reason.text), None
    )
    if machine.current_max_a is None:
        return Check("reach", True, "no machine stated: nothing was clipped to its limits")
    wanted = current.start
    if case.request.process is Process.TIG:
        wanted = demand(case, str(settings["polarity"].value), case.effective_mm)[0].start
    if wanted > machine.current_max_a:
        return Check(
            "reach",
            False,
            f"the joint asks for {wanted:.0f} A, {machine.name} gives {machine.current_max_a:g} A:"
            " preheat within limits, bevel and take more runs, add helium, or use another machine",
        )
    if machine.current_min_a is not None and wanted < machine.current_min_a:
        return Check("reach", False, f"the joint asks for {wanted:.0f} A, below what {machine.name} holds")
    return Check("reach", True, f"{machine.name} reaches it" + (f"; {clipped}" if clipped else ""))


def _current_type(case: Case, settings: Mapping[str, Setting]) -> Check:
    if settings["polarity"].value == "AC" and not case.equipment.machine.has_ac:
        return Check(
            "current type",
            False,
            f"{case.equipment.machine.name} has no AC; this metal needs it under argon"
            " (helium on electrode negative is the other way)",
        )
    return Check("current type", True, f"{settings['polarity'].value} is there")


def _tungsten(case: Case, settings: Mapping[str, Setting], current: Band) -> Check:
    diameter = settings["tungsten_diameter"].value
    rating = next(
        each for each in ratings(case, str(settings["polarity"].value)) if each.diameter_mm == diameter
    )
    ok = rating.high_a >= current.start
    return Check(
        "tungsten",
        ok,
        f"{diameter:g} mm stands {rating.high_a:.0f} A"
        + ("" if ok else f", less than the {current.start:.0f} A wanted: get a thicker one"),
    )


def _duty(case: Case, current: Band) -> Check | None:
    able = [(rated, duty) for rated, duty in case.equipment.machine.duty_cycle if rated >= current.start]
    if not able:
        return None
    duty = max(duty_cycle_at(current.start, rated, percent) for rated, percent in able)
    minutes = duty / 10.0
    return Check(
        "duty cycle",
        duty >= FULL_DUTY_PERCENT,
        f"{minutes:.1f} minutes of arc in ten at {current.start:.0f} A",
    )


def _gap(case: Case) -> Check | None:
    if case.request.gap_mm == 0.0 or case.request.joint is Joint.PLUG:
        return None
    widest = GAP_OF_THICKNESS[case.request.process] * case.thin_mm
    ok = case.request.gap_mm <= widest
    return Check(
        "gap",
        ok,
        f"gap {case.request.gap_mm:.1f} mm; up to {widest:.1f} mm bridges without help"
        + ("" if ok else ": close it, or back it with copper and start at the low end"),
    )
