"""For how long, and on what: duty cycle, torch, open circuit."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.equipment import Machine
from welds.advice.request import Place, Process
from welds.advice.setting import Check, Setting
from welds.advice.words import grade_words
from welds.errors import OutsideValidityError
from welds.language import mark, tr
from welds.physics.power_source import duty_cycle_at
from welds.reference.shielding import shielding_rules
from welds.reference.supply import supply_row

FULL_DUTY_PERCENT = 100.0
CYCLE_MIN = 10.0


def power_checks(case: Case, settings: Mapping[str, Setting]) -> list[Check]:
    """Return the checks that the person's entries allow; nothing is said about what was not entered."""
    found = [duty_check(case, settings), *_torch(case, settings), _open_circuit(case, settings)]
    return [each for each in found if each is not None]


def duty_check(case: Case, settings: Mapping[str, Setting]) -> Check | None:
    """Return minutes of arc in ten, and whether this weld fits in them."""
    machine = case.equipment.machine
    if not machine.duty_cycle:
        return None
    amps = settings["current"].figure.start
    duty = duty_of(machine, amps)
    if duty is None:
        top = max(rated for rated, _ in machine.duty_cycle)
        return Check(
            mark("duty cycle"),
            False,
            tr("the plate of {name} says nothing above {top:g} A", name=machine.name, top=top),
        )
    minutes = duty / CYCLE_MIN
    text = tr("{minutes:.1f} minutes of arc in ten at {amps:.0f} A", minutes=minutes, amps=amps)
    if duty >= FULL_DUTY_PERCENT:
        return Check(mark("duty cycle"), True, text)
    needed = arc_minutes(case, settings)
    if needed is None:
        return Check(
            mark("duty cycle"),
            False,
            tr(
                "{text}: pause {pause:.1f} minutes before it trips",
                text=text,
                pause=CYCLE_MIN - minutes,
            ),
        )
    if needed <= minutes:
        return Check(
            mark("duty cycle"), True, tr("{text}; this weld takes {needed:.1f}", text=text, needed=needed)
        )
    return Check(
        mark("duty cycle"),
        False,
        tr(
            "{text}, this weld takes {needed:.1f}: it trips after {minutes:.1f}; stop before"
            " that and let it cool {pause:.1f} minutes",
            text=text,
            needed=needed,
            minutes=minutes,
            pause=CYCLE_MIN - minutes,
        ),
    )


def duty_of(machine: Machine, amps: float) -> float | None:
    """Return percent duty cycle by the square law from the plate's rows at or above this current."""
    rows = [(rated, percent) for rated, percent in machine.duty_cycle if rated >= amps]
    return max((duty_cycle_at(amps, rated, percent) for rated, percent in rows), default=None)


def arc_minutes(case: Case, settings: Mapping[str, Setting]) -> float | None:
    """Return the arc time of the whole weld, or None where its length or travel is not known."""
    speed, passes = settings.get("travel_speed"), settings.get("passes")
    if case.request.length_mm is None or speed is None or passes is None:
        return None
    return case.request.length_mm * float(passes.start) / speed.figure.start / 60.0


def _torch(case: Case, settings: Mapping[str, Setting]) -> list[Check]:
    torch, current = case.equipment.machine.torch, settings["current"].figure
    is_tig = case.request.process is Process.TIG
    rule = shielding_rules(case.tables, "torch-cooling", process="tig", family=case.family)[0]
    assert rule.value_min is not None
    found = []
    if is_tig and current.start > rule.value_min and (torch is None or torch.cooling == "air"):
        has = tr("the torch is air-cooled") if torch else tr("no torch stated")
        found.append(
            Check(
                mark("torch cooling"),
                torch is None,
                tr(
                    "above {limit:g} A a water-cooled torch [{source}]; {torch}",
                    limit=rule.value_min,
                    source=rule.source_id,
                    torch=has,
                ),
            )
        )
    if torch is None:
        return found
    alternating = settings["polarity"].value == "AC"
    rated = torch.rated_ac_a if alternating and torch.rated_ac_a is not None else torch.rated_a
    if rated is None:
        return found
    what = tr("torch") if is_tig else tr("gun")
    try:
        duty = duty_cycle_at(current.start, rated, torch.duty_percent)
    except OutsideValidityError:
        text = tr(
            "{what} is rated {rated:g} A, {start:.0f} A wanted: it overheats",
            what=what,
            rated=rated,
            start=current.start,
        )
        return [*found, Check(mark("torch"), False, text)]
    text = tr(
        "{what} rated {rated:g} A at {duty_percent:g} %: {duty:.1f} minutes in ten here",
        what=what,
        rated=rated,
        duty_percent=torch.duty_percent,
        duty=duty / CYCLE_MIN,
    )
    return [*found, Check(mark("torch"), True, text)]


def _open_circuit(case: Case, settings: Mapping[str, Setting]) -> Check | None:
    machine = case.equipment.machine
    output = "AC" if settings["polarity"].value == "AC" else "DC"
    volts = machine.open_circuit_ac_v if output == "AC" else machine.open_circuit_dc_v
    if volts is None or case.request.place is not Place.ENCLOSED:
        return None
    row = supply_row(case.tables, "open-circuit-limit", "any", 1, output)
    assert row is not None
    ok = volts <= row.high
    text = tr(
        "open circuit {volts:g} V {output}; where shock is likelier than usual {high:g} V at most",
        volts=volts,
        output=output,
        high=row.high,
    )
    return Check(
        mark("open circuit"),
        ok,
        tr(
            "{text} ({grade} of the standard; {kind})",
            text=text,
            grade=grade_words(row.basis),
            kind=tr("rms") if output == "AC" else tr("peak"),
        )
        + ("" if ok else tr(": not this machine in here")),
    )
