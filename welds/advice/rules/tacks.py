"""Tack spacing and length."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint
from welds.advice.setting import Reason, Setting
from welds.advice.words import Phrase
from welds.language import mark, tr
from welds.quantities.registry import convert
from welds.reference.basis import Basis
from welds.reference.heat_limits import Tack

ORDER = mark("ends first, then the middle, then halve each gap")
UNTABLED = mark("20 to 30 sheet thicknesses apart")
SPACING = mark(
    "every {low:.0f} to {high:.0f} mm ({low_in:g} to {high_in:g} in), {shortest:.0f} to {longest:.0f} mm long"
)


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return spacing and length for the thinner sheet, in words since both are set by eye."""
    if case.request.joint is Joint.PLUG:
        return None
    row = next(
        (
            each
            for each in case.tables.records(Tack)
            if each.family == case.family and each.thickness_min_mm <= case.thin_mm <= each.thickness_max_mm
        ),
        None,
    )
    order = Reason(tr(ORDER), source="COMMON_PRACTICE")
    if row is None:
        return Setting("tacks", Basis.PRACTICE, (order,), ("COMMON_PRACTICE",), value=UNTABLED)
    low_in, high_in = (
        round(convert(each, "mm", "inch") * 4) / 4 for each in (row.spacing_min_mm, row.spacing_max_mm)
    )
    value = Phrase(
        SPACING,
        low=row.spacing_min_mm,
        high=row.spacing_max_mm,
        low_in=low_in,
        high_in=high_in,
        shortest=row.length_min_mm,
        longest=row.length_max_mm,
    )
    return Setting(
        "tacks",
        row.basis,
        (
            Reason(tr("spacing for this sheet; closer where the joint pulls open"), source=row.source_id),
            order,
        ),
        (row.source_id, "COMMON_PRACTICE"),
        (row.row_id,),
        value=value,
    )
