"""Preheat: whether, and how far at most."""

from welds.advice.case import Case, SoFar
from welds.advice.heat_limits import limits_for
from welds.advice.setting import Reason, Setting
from welds.language import mark, tr
from welds.quantities.band import Band
from welds.reference.basis import Basis, weakest

ROOM_ABOVE_LEAST_C = 50.0
"""Where no upper limit is stated."""

NONE, SEE_CODE = mark("none"), mark("by the code that governs the job")


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the preheat of the more demanding metal, under the ceiling of the less tolerant one."""
    limits = limits_for(case)
    if not limits:
        reason = Reason(tr("no row for this metal at this thickness: dry the joint and warm it to the hand"))
        return Setting("preheat", Basis.PRACTICE, (reason,), ("COMMON_PRACTICE",), value=NONE)
    needed = max((each.preheat_min_c or 0.0 for each in limits), default=0.0)
    ceiling = min((each.preheat_max_c for each in limits if each.preheat_max_c is not None), default=None)
    basis = weakest(each.basis for each in limits)
    sources = tuple(dict.fromkeys(each.source_id for each in limits))
    rows = tuple(each.row_id for each in limits)
    reasons = [Reason(each.why, source=each.source_id) for each in limits]
    if not needed:
        if ceiling is not None:
            reasons.append(
                Reason(tr("none needed; if you warm it, not above {ceiling:g} degC", ceiling=ceiling))
            )
        value = SEE_CODE if any(each.need == "see-code" for each in limits) else NONE
        return Setting("preheat", basis, tuple(reasons), sources, rows, value=value)
    highest = max(needed, ceiling if ceiling is not None else needed + ROOM_ABOVE_LEAST_C)
    if ceiling is not None and ceiling < needed:
        reasons.append(
            Reason(
                tr("the other metal stands {ceiling:g} degC at most: warm this side only", ceiling=ceiling)
            )
        )
    band = Band(needed, round((needed + highest) / 2), highest, "degC")
    return Setting("preheat", basis, tuple(reasons), sources, rows, band=band)
