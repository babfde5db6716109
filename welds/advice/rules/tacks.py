"""Tack spacing and length."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint
from welds.advice.setting import Reason, Setting
from welds.advice.words import apart
from welds.reference.basis import Basis
from welds.reference.heat_limits import Tack

ORDER = "ends first, then the middle, then halve each gap"
UNTABLED = "20 to 30 sheet thicknesses apart"


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
    order = Reason(ORDER, source="COMMON_PRACTICE")
    if row is None:
        return Setting("tacks", Basis.PRACTICE, (order,), ("COMMON_PRACTICE",), value=UNTABLED)
    text = f"every {apart(row.spacing_min_mm, row.spacing_max_mm)}"
    text += f", {row.length_min_mm:.0f} to {row.length_max_mm:.0f} mm long"
    return Setting(
        "tacks",
        row.basis,
        (Reason("spacing for this sheet; closer where the joint pulls open", source=row.source_id), order),
        (row.source_id, "COMMON_PRACTICE"),
        (row.row_id,),
        value=text,
    )
