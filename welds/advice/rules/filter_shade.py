"""Filter shade for the eyes: the regulation's floor, the comfort table's start."""

from welds.advice.case import Case, SoFar
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.filter_shades import shade_floor_and_start

DARKEST = 14
TABLE_END_A = 500.0
"""Where the regulation's bands end; its topmost band is kept beyond."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return floor and start at the top of the current band, where the arc is brightest."""
    current = so_far["current"].figure
    shades = shade_floor_and_start(
        case.tables, case.request.process, min(current.high, TABLE_END_A), case.family
    )
    floor, start, rows = shades
    reasons = (
        Reason(
            tr("never lighter than {floor}: the regulation's minimum", floor=floor), source=rows[0].source_id
        ),
        Reason(
            tr(
                "start at {start}; begin too dark, go lighter until the pool is clear, not below {floor}",
                start=start,
                floor=floor,
            ),
            source=rows[min(1, len(rows) - 1)].source_id,
        ),
    )
    return Setting(
        "filter_shade",
        shades.basis,
        reasons,
        tuple(dict.fromkeys(row.source_id for row in rows)),
        tuple(row.row_id for row in rows),
        band=Band(floor, start, max(start, min(start + 1, DARKEST)), "1"),
    )
