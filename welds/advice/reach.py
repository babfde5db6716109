"""Where the joint asks for more, or less, than the machine gives: what can be done instead, or a refusal."""

from collections.abc import Iterator

from welds.advice.case import Case
from welds.advice.gas_choice import suitable_gases
from welds.advice.heat_limits import limits_for
from welds.advice.request import Joint, Process, Transfer
from welds.advice.words import joined
from welds.errors import NotCoveredError
from welds.quantities.band import Band

HOPELESS = 0.6
"""Shop judgement: with less than this share of the lowest useful current no preheat or gas makes it up."""

ELSEWHERE = "thinner sheet, or another machine"
BEVEL_FROM_MM = 4.0
SMALLER = {
    Joint.TEE: "a smaller fillet from both sides",
    Joint.LAP: "a smaller fillet from both sides",
    Joint.INSIDE_CORNER: "a smaller fillet",
}


def refuse_hopeless(case: Case, wanted: Band) -> None:
    """Raise NotCoveredError where the machine is so far off that no card could be welded to."""
    machine = case.equipment.machine
    lowest, highest = machine.current_min_a, machine.current_max_a
    asked = f"{case.request.process} on {case.first.name} with {machine.name}"
    if highest is not None and highest < HOPELESS * wanted.low:
        raise NotCoveredError(
            asked,
            f"the joint wants at least {wanted.low:.0f} A, the machine ends at {highest:g} A:"
            " it would lie cold on the surface",
            next(_other_machines(case, wanted), ELSEWHERE),
        )
    if lowest is not None and wanted.high < HOPELESS * lowest:
        raise NotCoveredError(
            asked,
            f"the joint stands at most {wanted.high:.0f} A, the machine starts at {lowest:g} A: it would burn"
            " through",
            "thicker sheet, or a machine that goes lower",
        )


def instead(case: Case, wanted: Band, transfer: Transfer | None = None) -> tuple[str, ...]:
    """Return what can be done where the current is out of reach upward, the surest first."""
    offers = list(_other_machines(case, wanted))
    ceilings = [each.preheat_max_c for each in limits_for(case) if each.preheat_max_c is not None]
    if ceilings and min(ceilings) > 0:
        offers.append(f"warm the parts, {min(ceilings):g} degC at most")
    elif not case.families & {"aluminium", "magnesium", "titanium"}:
        offers.append("preheat within what the metal and its code allow")
    if case.request.process is Process.TIG:
        hotter = [gas.name for gas in suitable_gases(case, transfer) if gas.helium_percent > 0.0]
        offers += [f"a gas with helium ({hotter[0]}) makes the arc hotter"] if hotter else []
    if case.thick_mm > BEVEL_FROM_MM:
        offers.append("bevel and take more, smaller runs")
    smaller = SMALLER.get(case.request.joint)
    offers += [smaller] if smaller else []
    return (*offers, ELSEWHERE)


def offers_text(offers: tuple[str, ...]) -> str:
    """Return the offers as the end of a sentence."""
    return joined(offers, "or")


def _other_machines(case: Case, wanted: Band) -> Iterator[str]:
    """Yield those on the bench that reach it; another process wants its own current, so its own card."""
    for machine in case.equipment.others:
        if case.request.process not in machine.processes:
            yield f"ask for a card by {joined(sorted(machine.processes))}: {machine.name} is there"
        elif machine.current_max_a is None or machine.current_max_a >= wanted.start:
            yield f"use {machine.name}"
