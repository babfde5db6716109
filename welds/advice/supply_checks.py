"""What the circuit has to give at this output: supply current, breaker, cord, generator."""

from collections.abc import Mapping
from dataclasses import dataclass

from welds.advice.case import Case
from welds.advice.equipment import Machine, Supply
from welds.advice.power_checks import FULL_DUTY_PERCENT, duty_of
from welds.advice.request import Process
from welds.advice.setting import Check, Setting
from welds.advice.words import grade_words
from welds.language import figure, mark, tr
from welds.physics.arc import conventional_load_voltage_mig, conventional_load_voltage_tig
from welds.physics.supply import apparent_power, cord_voltage_drop, effective_supply_current, supply_current
from welds.reference.names import name_of
from welds.reference.supply import SupplyRow, conductor_factor, supply_row
from welds.reference.tables import Tables

LOAD_LINE_END_A = 600.0
MOST_DROP_PERCENT = 5.0
"""Shop practice: with more than this lost in the cord the machine starves."""

DEFER = mark("who wires it goes by the local electrical code and the machine's own plate")


@dataclass(frozen=True, slots=True)
class Draw:
    """What the supply gives at one output: least and most, with the words for how well that is known."""

    low_a: float
    high_a: float
    kva: float
    known: str


def draw_at(
    tables: Tables, process: str, amps: float, output: str, machine: Machine, supply: Supply
) -> Draw | None:
    """Return the supply current at one output, or None where the tables do not know the kind of source."""
    volts = (
        conventional_load_voltage_tig(amps) if process == Process.TIG else conventional_load_voltage_mig(amps)
    )
    named = (("efficiency", machine.efficiency), ("power-factor", machine.power_factor))
    rows = {name: supply_row(tables, name, machine.kind, supply.phases, output) for name, _ in named}
    shares = []
    for name, plate in named:
        row = rows[name]
        if plate is None and row is None:
            return None
        shares.append((plate, plate) if plate is not None else (_of(row).low, _of(row).high))
    (least_eta, most_eta), (least_pf, most_pf) = shares
    kva = apparent_power(volts, amps, least_eta, least_pf)
    known = ", ".join(
        tr("{share} {plate:g} as entered", share=name_of(name), plate=plate)
        if plate is not None
        else _known(name, _of(rows[name]))
        for name, plate in named
    )
    low = supply_current(apparent_power(volts, amps, most_eta, most_pf), supply.volts, supply.phases)
    return Draw(low, supply_current(kva, supply.volts, supply.phases), kva, known)


def _of(row: SupplyRow | None) -> SupplyRow:
    assert row is not None
    return row


def _known(name: str, row: SupplyRow) -> str:
    low, high = grade_words(row.basis_of("low")), grade_words(row.basis_of("high"))
    if low == high:
        return tr(
            "{share} {low:g} to {high:g} ({grade})",
            share=name_of(name),
            low=row.low,
            high=row.high,
            grade=high,
        )
    return tr(
        "{share} {low:g} ({low_grade}) to {high:g} ({high_grade})",
        share=name_of(name),
        low=row.low,
        low_grade=low,
        high=row.high,
        high_grade=high,
    )


def supply_checks(case: Case, settings: Mapping[str, Setting]) -> list[Check]:
    """Return what the circuit has to give, for the figures that the person entered."""
    machine, current = case.equipment.machine, settings["current"].figure
    supply = machine.supply
    if supply is None:
        return []
    output = "AC" if settings["polarity"].value == "AC" else "DC"
    top = settings["machine_maximum"].figure.start if "machine_maximum" in settings else current.start
    amps, top = min(current.start, LOAD_LINE_END_A), min(top, LOAD_LINE_END_A)
    now = draw_at(case.tables, case.request.process, amps, output, machine, supply)
    peak = draw_at(case.tables, case.request.process, top, output, machine, supply)
    if now is None or peak is None:
        return []
    share = min((duty_of(machine, amps) or FULL_DUTY_PERCENT) / FULL_DUTY_PERCENT, 1.0)
    steady = effective_supply_current(now.high_a, _idle_a(case, supply), share)
    return [
        _taken(machine, supply, now, amps),
        *_breaker(supply, peak, steady, top),
        *_cord(case, supply, now, share),
        *_generator(supply, peak, top),
    ]


def _taken(machine: Machine, supply: Supply, now: Draw, amps: float) -> Check:
    low, high = f"{now.low_a:.0f}", f"{now.high_a:.0f}"
    taken = high if low == high else tr("{low} to {high}", low=low, high=high)
    phases = tr(" in each phase") if supply.phases == 3 else ""
    text = tr(
        "about {taken} A{phases} from {volts:g} V at {amps:.0f} A ({known})",
        taken=taken,
        phases=phases,
        volts=supply.volts,
        amps=amps,
        known=now.known,
    )
    fits = not machine.supply_volts or supply.volts in machine.supply_volts
    if not fits:
        made_for = ", ".join(figure(f"{each:g}") for each in machine.supply_volts)
        text += tr("; {name} is made for {made_for} V", name=machine.name, made_for=made_for)
    return Check(mark("supply"), fits, text)


def _idle_a(case: Case, supply: Supply) -> float:
    row = next(each for each in case.tables.records(SupplyRow) if each.topic == "idle")
    return supply_current(row.high / 1e3, supply.volts, supply.phases)


def _breaker(supply: Supply, peak: Draw, steady: float, top: float) -> list[Check]:
    if supply.breaker_a is None:
        return []
    rated = supply.breaker_a
    if peak.high_a <= rated:
        text = tr(
            "{rated:g} A breaker carries up to {taken:.0f} A at {top:.0f} A of arc",
            rated=rated,
            taken=peak.high_a,
            top=top,
        )
    elif steady <= rated:
        text = tr(
            "{rated:g} A breaker: up to {taken:.0f} A at {top:.0f} A of arc is more,"
            " {steady:.0f} A over a cycle of ten minutes is not: short beads run, a long one trips it",
            rated=rated,
            taken=peak.high_a,
            top=top,
            steady=steady,
        )
    else:
        text = tr(
            "{rated:g} A breaker trips: {steady:.0f} A over a cycle of ten minutes; less"
            " current, or a larger circuit",
            rated=rated,
            steady=steady,
        )
    return [Check(mark("breaker"), peak.high_a <= rated, f"{text}; {tr(DEFER)}")]


def _cord(case: Case, supply: Supply, now: Draw, share: float) -> list[Check]:
    found = []
    if supply.cord_rated_a is not None:
        row = conductor_factor(case.tables, share * 100.0)
        needed = now.high_a * row.low
        ok = needed <= supply.cord_rated_a
        found.append(
            Check(
                mark("cord"),
                ok,
                tr(
                    "cord rated {rated:g} A; {taken:.0f} A x {factor:g} for this duty cycle ="
                    " {needed:.0f} A [{source}]",
                    rated=supply.cord_rated_a,
                    taken=now.high_a,
                    factor=row.low,
                    needed=needed,
                    source=row.source_id,
                )
                + ("" if ok else tr(": take a thicker one, fully unrolled"))
                + f"; {tr(DEFER)}",
            )
        )
    if supply.cord_mm2 is not None and supply.cord_length_m is not None:
        lost = cord_voltage_drop(now.high_a, supply.cord_length_m, supply.cord_mm2, supply.phases)
        percent = 100.0 * lost / supply.volts
        found.append(
            Check(
                mark("cord drop"),
                percent <= MOST_DROP_PERCENT,
                tr(
                    "{length:g} m of {area:g} mm2 takes {lost:.1f} V, {percent:.1f} %",
                    length=supply.cord_length_m,
                    area=supply.cord_mm2,
                    lost=lost,
                    percent=percent,
                )
                + ("" if percent <= MOST_DROP_PERCENT else tr(": the machine starves; shorter or thicker")),
            )
        )
    return found


def _generator(supply: Supply, peak: Draw, top: float) -> list[Check]:
    if supply.generator_kva is None:
        return []
    text = tr(
        "generator: {kva:.1f} kVA at {top:.0f} A, it gives {given:g} kVA; some sets"
        " do not stand a generator at all: see the machine's manual, and run nothing else on it",
        kva=peak.kva,
        top=top,
        given=supply.generator_kva,
    )
    return [Check(mark("generator"), peak.kva <= supply.generator_kva, text)]
