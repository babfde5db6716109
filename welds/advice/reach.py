"""Where the joint asks for more, or less, than the machine gives: what can be done instead, or a refusal."""

from collections.abc import Iterator

from welds.advice.case import Case
from welds.advice.gas_choice import suitable_gases
from welds.advice.heat_limits import limits_for
from welds.advice.request import Joint, Process, Transfer
from welds.errors import NotCoveredError
from welds.language import mark, tr
from welds.quantities.band import Band
from welds.reference.names import all_of, any_of

HOPELESS = 0.6
"""Shop judgement: with less than this share of the lowest useful current no preheat or gas makes it up."""

ELSEWHERE = mark("thinner sheet, or another machine")
BEVEL_FROM_MM = 4.0
SMALLER = {
    Joint.TEE: mark("a smaller fillet from both sides"),
    Joint.LAP: mark("a smaller fillet from both sides"),
    Joint.INSIDE_CORNER: mark("a smaller fillet"),
}


def refuse_hopeless(case: Case, wanted: Band) -> None:
    """Raise NotCoveredError where the machine is so far off that no card could be welded to."""
    machine = case.equipment.machine
    lowest, highest = machine.current_min_a, machine.current_max_a
    asked = tr(
        "{process} on {metal} with {machine}",
        process=case.request.process.value,
        metal=case.first.name,
        machine=machine.name,
    )
    if highest is not None and highest < HOPELESS * wanted.low:
        raise NotCoveredError(
            asked,
            tr(
                "the joint wants at least {low:.0f} A, the machine ends at {highest:g} A: it would"
                " lie cold on the surface",
                low=wanted.low,
                highest=highest,
            ),
            next(_other_machines(case, wanted), tr(ELSEWHERE)),
        )
    if lowest is not None and wanted.high < HOPELESS * lowest:
        raise NotCoveredError(
            asked,
            tr(
                "the joint stands at most {high:.0f} A, the machine starts at {lowest:g} A: it would"
                " burn through",
                high=wanted.high,
                lowest=lowest,
            ),
            tr("thicker sheet, or a machine that goes lower"),
        )


def instead(case: Case, wanted: Band, transfer: Transfer | None = None) -> tuple[str, ...]:
    """Return what can be done where the current is out of reach upward, the surest first."""
    offers = list(_other_machines(case, wanted))
    ceilings = [each.preheat_max_c for each in limits_for(case) if each.preheat_max_c is not None]
    if ceilings and min(ceilings) > 0:
        offers.append(tr("warm the parts, {most:g} degC at most", most=min(ceilings)))
    elif not case.families & {"aluminium", "magnesium", "titanium"}:
        offers.append(tr("preheat within what the metal and its code allow"))
    if case.request.process is Process.TIG:
        hotter = [gas.name for gas in suitable_gases(case, transfer) if gas.helium_percent > 0.0]
        offers += [tr("a gas with helium ({gas}) makes the arc hotter", gas=hotter[0])] if hotter else []
    if case.thick_mm > BEVEL_FROM_MM:
        offers.append(tr("bevel and take more, smaller runs"))
    smaller = SMALLER.get(case.request.joint)
    offers += [tr(smaller)] if smaller else []
    return (*offers, tr(ELSEWHERE))


def offers_text(offers: tuple[str, ...]) -> str:
    """Return the offers as the end of a sentence."""
    return any_of(offers)


def _other_machines(case: Case, wanted: Band) -> Iterator[str]:
    """Yield those on the bench that reach it; another process wants its own current, so its own card."""
    for machine in case.equipment.others:
        if case.request.process not in machine.processes:
            yield tr(
                "ask for a card by {processes}: {name} is there",
                processes=all_of(sorted(machine.processes)),
                name=machine.name,
            )
        elif machine.current_max_a is None or machine.current_max_a >= wanted.start:
            yield tr("use {name}", name=machine.name)
