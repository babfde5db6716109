"""What the picture of current over thickness says in words about a place in it."""

from math import isnan

import numpy as np

from welds.advice.evidence import Outcome
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.report.current_curve import CurrentCurve, SchedulePoint
from welds.report.own_welds import OwnWeld

OUTCOMES = {
    Outcome.WORKED_WELL: "worked well",
    Outcome.WORKED: "worked",
    Outcome.FAILED: "failed",
}


def value_text(curve: CurrentCurve, thickness_mm: float) -> str:
    """Return title, start and range at a thickness, or nothing where the curve has none."""
    start, low, high = (
        float(np.interp(thickness_mm, curve.thicknesses_mm, figures, left=np.nan, right=np.nan))
        for figures in (curve.start_a, curve.low_a, curve.high_a)
    )
    return "" if isnan(start) else f"{curve.title} {start:.0f} A ({low:.0f} to {high:.0f})"


def row_text(title: str, point: SchedulePoint, units: Units) -> str:
    """Return a schedule row: whose, how thick, which currents, how good, from where."""
    thickness = show(point.thickness_mm, "mm", "thickness", units)
    return (
        f"{title}, {thickness}: {point.low_a:.0f} to {point.high_a:.0f} A, {point.basis.value},"
        f" {point.source_id}"
    )


def weld_text(weld: OwnWeld, units: Units) -> str:
    """Return one of the person's own welds: what, which current, how it came out, when."""
    request = weld.request
    thickness = show(weld.thickness_mm, "mm", "thickness", units)
    current = f"{weld.current_a:.0f} A" + (" by its wire feed" if weld.is_from_feed else "")
    faults = f" ({', '.join(weld.faults)})" if weld.faults else ""
    words = (
        f"your weld of {weld.made_on}" if weld.made_on else "your weld",
        f"{request.metal} {thickness}, position {request.position}",
        f"{current}, {OUTCOMES[weld.outcome]}{faults}",
    )
    return ": ".join((words[0], ", ".join(words[1:])))
