"""What the picture of current over thickness says in words about a place in it."""

from math import isnan

import numpy as np

from welds.language import tr
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.reference.names import id_or_name
from welds.report.current_curve import CurrentCurve, SchedulePoint
from welds.report.own_welds import OwnWeld
from welds.report.wording import outcome_words


def value_text(curve: CurrentCurve, thickness_mm: float) -> str:
    """Return title, start and range at a thickness, or nothing where the curve has none."""
    start, low, high = (
        float(np.interp(thickness_mm, curve.thicknesses_mm, figures, left=np.nan, right=np.nan))
        for figures in (curve.start_a, curve.low_a, curve.high_a)
    )
    if isnan(start):
        return ""
    return tr(
        "{title} {start:.0f} A ({low:.0f} to {high:.0f})", title=curve.title, start=start, low=low, high=high
    )


def row_text(title: str, point: SchedulePoint, units: Units) -> str:
    """Return a schedule row: whose, how thick, which currents, how good, from where."""
    thickness = show(point.thickness_mm, "mm", "thickness", units)
    return tr(
        "{title}, {thickness}: {low:.0f} to {high:.0f} A, {grade}, {source}",
        title=title,
        thickness=thickness,
        low=point.low_a,
        high=point.high_a,
        grade=point.basis.word,
        source=point.source_id,
    )


def weld_text(weld: OwnWeld, units: Units) -> str:
    """Return one of the person's own welds: what, which current, how it came out, when."""
    request = weld.request
    thickness = show(weld.thickness_mm, "mm", "thickness", units)
    current = (
        tr("{current:.0f} A by its wire feed", current=weld.current_a)
        if weld.is_from_feed
        else f"{weld.current_a:.0f} A"
    )
    faults = f" ({', '.join(map(id_or_name, weld.faults))})" if weld.faults else ""
    words = (
        tr("your weld of {made_on}", made_on=weld.made_on) if weld.made_on else tr("your weld"),
        tr(
            "{metal} {thickness}, position {position}",
            metal=request.metal,
            thickness=thickness,
            position=request.position,
        ),
        f"{current}, {outcome_words(weld.outcome)}{faults}",
    )
    return ": ".join((words[0], ", ".join(words[1:])))
