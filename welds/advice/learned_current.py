"""The step between the tables' current and the settings that follow from it: what past welds add."""

from collections.abc import Callable
from dataclasses import replace
from math import ceil, floor

from welds.advice.case import Case, SoFar
from welds.advice.equipment import GENERIC_MACHINE, Equipment
from welds.advice.evidence import Evidence
from welds.advice.learned import Learned
from welds.advice.learning import Context, learn
from welds.advice.limits import clip, fit
from welds.advice.request import Process
from welds.advice.rules.mig_current import within_wire
from welds.advice.rules.tungsten_diameter import build_ratings
from welds.advice.setting import Reason, Setting
from welds.advice.table_current import build_table_currents
from welds.language import tr
from welds.quantities.band import Band


def learned_current(
    case: Case,
    so_far: SoFar,
    table: Setting,
    rule: Callable[[Case, SoFar], Setting | None],
    evidence: Evidence,
) -> tuple[Setting, Learned | None]:
    """Return the current after learning, or the tables' own where no past weld speaks.

    `table` is what `rule` advised. Wire, tungsten and machine limit the learned figure as they limit the
    tables'.
    """
    unlimited = _unlimited(case, so_far, table, rule)
    cell = (case.request.process.value, case.family, case.request.joint.value)
    context = Context(cell, unlimited.figure, case.tables.derived(build_table_currents))
    learned = learn(evidence, context)
    if learned is None:
        return table, None
    band, reasons = _between(unlimited.figure.scaled(learned.factor), learned)
    reasons.insert(0, Reason(_words(learned), learned.factor))
    band, limits = _within(case, so_far, unlimited.figure, band)
    wanted = _whole(band)
    fitted, clipped = fit(wanted, case.equipment.machine, "current", "A")
    kept = tuple(reason for reason in table.reasons if reason in unlimited.reasons)
    reasons = [*kept, *reasons, *limits, *clipped]
    return replace(table, band=fitted, wanted=wanted, reasons=tuple(reasons)), learned


def _unlimited(
    case: Case, so_far: SoFar, table: Setting, rule: Callable[[Case, SoFar], Setting | None]
) -> Setting:
    """Return what the tables want of a machine without limits; the rule is asked again only where one bit."""
    if table.band == table.wanted:
        return table
    unlimited = rule(replace(case, equipment=Equipment(GENERIC_MACHINE, case.equipment.shelf)), so_far)
    assert unlimited is not None
    return unlimited


def _words(learned: Learned) -> str:
    welds = tr("1 past weld") if learned.welds == 1 else tr("{welds} past welds", welds=learned.welds)
    return tr(
        "your log: {welds}, {alike} on this kind of joint ({sureness}; nine in ten"
        " that it lies between {low:.2f} and {high:.2f} times the tables)",
        welds=welds,
        alike=learned.alike,
        sureness=learned.sureness_words,
        low=learned.factor_low,
        high=learned.factor_high,
    )


def _between(band: Band, learned: Learned) -> tuple[Band, list[Reason]]:
    """Draw the ends in to where like welds burned through or stayed cold, where the start lies between."""
    reasons = []
    burnt, cold = learned.burnt_at_a, learned.cold_at_a
    if burnt is not None and band.start < burnt < band.high:
        band = band.clipped(highest=burnt)
        reasons.append(
            Reason(
                tr("a like weld burned through at what would be {burnt:.0f} A here: stay below", burnt=burnt)
            )
        )
    if cold is not None and band.low < cold < band.start:
        band = band.clipped(lowest=cold)
        reasons.append(
            Reason(tr("a like weld stayed cold at what would be {cold:.0f} A here: stay above", cold=cold))
        )
    return band, reasons


def _within(case: Case, so_far: SoFar, table: Band, band: Band) -> tuple[Band, list[Reason]]:
    """Keep to what the wire carries or the tungsten stands."""
    if case.request.process is Process.MIG:
        wire = float(so_far["wire_diameter"].start)
        return within_wire(case, str(so_far["transfer"].value), wire, band)
    return _within_tungsten(case, str(so_far["polarity"].value), table, band)


def _within_tungsten(case: Case, polarity: str, table: Band, band: Band) -> tuple[Band, list[Reason]]:
    """Never learn past what the thickest tungsten on hand stands, nor above the tables where they do."""
    stock = case.equipment.shelf
    shelf = stock.tungsten_diameters_mm | {mm for _, mm in stock.tungstens}
    rated = [
        each.high_a
        for each in case.tables.derived(build_ratings)[polarity]
        if not shelf or any(abs(each.diameter_mm - mm) < 0.05 for mm in shelf)
    ]
    limit = max(max(rated, default=0.0), table.start)
    return clip(band, tr("the thickest tungsten on hand"), None, limit, "A")


def _whole(band: Band) -> Band:
    low, high = sorted((ceil(band.low), floor(band.high)))
    return Band(low, min(max(round(band.start), low), high), high, band.unit)
