"""What the program worked out about the set-up as a whole."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.power_checks import power_checks
from welds.advice.reach_checks import reach_checks
from welds.advice.request import Joint, Process
from welds.advice.rules.tungsten_diameter import rating_of
from welds.advice.setting import Check, Purchase, Setting
from welds.advice.shelf_checks import shelf_checks
from welds.advice.supply_checks import supply_checks
from welds.language import mark, tr
from welds.quantities.band import Band

GAP_OF_THICKNESS = {Process.TIG: 0.25, Process.MIG: 0.5}
"""Shop practice: the widest gap a bead bridges without backing, as a share of the thinner sheet."""


def checks_of(
    case: Case, settings: Mapping[str, Setting], shopping: tuple[Purchase, ...] = ()
) -> tuple[Check, ...]:
    """Return all checks that apply, passed ones included: a silent pass looks like no check."""
    found = [Check(mark("bench file"), False, case.equipment.trouble)] if case.equipment.trouble else []
    found += reach_checks(case, settings)
    if case.request.process is Process.TIG:
        found.append(_tungsten(case, settings, settings["current"].figure))
    found += power_checks(case, settings)
    found += supply_checks(case, settings)
    found += shelf_checks(case, settings, shopping)
    gap = _gap(case)
    return (*found, gap) if gap is not None else tuple(found)


def _tungsten(case: Case, settings: Mapping[str, Setting], current: Band) -> Check:
    rating = rating_of(case, settings)
    ok = rating.high_a >= current.start
    return Check(
        mark("tungsten"),
        ok,
        tr(
            "{diameter:g} mm tungsten stands {high:.0f} A",
            diameter=rating.diameter_mm,
            high=rating.high_a,
        )
        + (
            "" if ok else tr(", less than the {wanted:.0f} A wanted: get a thicker one", wanted=current.start)
        ),
    )


def _gap(case: Case) -> Check | None:
    if case.request.gap_mm == 0.0 or case.request.joint is Joint.PLUG:
        return None
    widest = GAP_OF_THICKNESS[case.request.process] * case.thin_mm
    ok = case.request.gap_mm <= widest
    return Check(
        mark("gap"),
        ok,
        tr(
            "gap {gap:.1f} mm; up to {widest:.1f} mm bridges without help",
            gap=case.request.gap_mm,
            widest=widest,
        )
        + ("" if ok else tr(": close it, or back it with copper and start at the low end")),
    )
