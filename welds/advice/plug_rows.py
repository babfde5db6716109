"""Plug rows of the MIG table, read between their thicknesses; only aluminium has them."""

from collections.abc import Callable

from welds.advice.words import both
from welds.errors import NotCoveredError
from welds.language import tr
from welds.reference.names import id_or_name
from welds.reference.schedules import MigSchedule
from welds.reference.tables import Tables

REACH = 1.2
"""How far beyond the thinnest and thickest top sheet the rows are used."""


def has_plug_rows(tables: Tables, family: str) -> bool:
    """Say whether the family's plugs are printed, rather than reasoned from seams."""
    return bool(_rows(tables, family))


def between_plug_rows(
    tables: Tables, family: str, top_mm: float, figure: Callable[[MigSchedule], float]
) -> tuple[float, tuple[MigSchedule, ...]]:
    """Return a figure on straight lines between the rows, ends held, and the rows used."""
    rows = _rows(tables, family)
    thinnest, thickest = rows[0].thickness_mm, rows[-1].thickness_mm
    if not thinnest / REACH <= top_mm <= thickest * REACH:
        raise NotCoveredError(
            tr("plug in {metal}, top sheet {top}", metal=id_or_name(family), top=both(top_mm)),
            tr("the rows cover {thinnest} to {thickest}", thinnest=both(thinnest), thickest=both(thickest)),
            both(thinnest if top_mm < thinnest else thickest),
        )
    below = max((row.thickness_mm for row in rows if row.thickness_mm <= top_mm), default=thinnest)
    above = min((row.thickness_mm for row in rows if row.thickness_mm >= top_mm), default=thickest)
    lower = [row for row in rows if row.thickness_mm == below]
    upper = [row for row in rows if row.thickness_mm == above]
    share = 0.0 if above == below else (top_mm - below) / (above - below)
    low, high = (sum(map(figure, each)) / len(each) for each in (lower, upper))
    return low + share * (high - low), tuple(dict.fromkeys((*lower, *upper)))


def _rows(tables: Tables, family: str) -> list[MigSchedule]:
    return sorted(
        (
            row
            for row in tables.records(MigSchedule)
            if row.use == "pooled" and row.kind == "plug" and row.family == family
        ),
        key=lambda row: row.thickness_mm,
    )
