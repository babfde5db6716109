"""Hole to drill for a plug weld, and how far apart."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint
from welds.advice.setting import Reason, Setting
from welds.advice.words import both
from welds.errors import NotCoveredError
from welds.language import mark, tr
from welds.quantities.band import Band
from welds.reference.names import id_or_name
from welds.reference.settings import PlugHole, PlugRule

PLUGS = {"sheet": mark("sheet plug"), "structural": mark("structural plug")}


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return the hole for the top sheet; structural plugs by the structural rule."""
    if case.request.joint is not Joint.PLUG:
        return None
    top = case.first_mm
    rules = {row.topic: row for row in case.tables.records(PlugRule) if row.family in (case.family, "any")}
    rows = [row for row in case.tables.records(PlugHole) if row.family == case.family]
    row = next((each for each in rows if each.thickness_min_mm <= top <= each.thickness_max_mm), None)
    if row is None:
        if not rows:
            raise NotCoveredError(
                tr("plug in {metal}", metal=id_or_name(case.family)), tr("no row gives a hole")
            )
        thinnest, thickest = min(r.thickness_min_mm for r in rows), max(r.thickness_max_mm for r in rows)
        raise NotCoveredError(
            tr("plug in {metal}, top sheet {top}", metal=id_or_name(case.family), top=both(top)),
            tr("hole rows cover {thinnest} to {thickest}", thinnest=both(thinnest), thickest=both(thickest)),
            both(thinnest if top < thinnest else thickest),
        )
    if row.hole_min_mm is not None and row.hole_max_mm is not None:
        low, high = row.hole_min_mm, row.hole_max_mm
    else:
        low = top + rules["hole-over-thickness"].value
        high = max(low + 3.0, rules["largest-hole"].value * top)
    spacing = rules["spacing"]
    reasons = (
        Reason(f"{row.note}: {tr(PLUGS[row.purpose])}", source=row.source_id),
        Reason(
            tr(
                "centres at least {distance} apart: {times:g} {unit}",
                distance=both(spacing.value * low),
                times=spacing.value,
                unit=spacing.unit,
            ),
            source=spacing.source_id,
        ),
        Reason(
            tr(
                "bright metal, drill to round, take the burr off behind, copper behind, weld from the front;"
                " only where the sheet behind is sound"
            ),
            source="COMMON_PRACTICE",
        ),
    )
    return Setting(
        "plug_hole",
        row.basis,
        reasons,
        tuple(dict.fromkeys((row.source_id, spacing.source_id))),
        (row.row_id, spacing.row_id),
        band=Band(round(low, 1), round((low + high) / 2, 1), round(high, 1), "mm"),
    )
