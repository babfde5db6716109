"""How hot the joint may be when the next run starts."""

from welds.advice.case import Case, SoFar
from welds.advice.heat_limits import limits_for
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.reference.basis import Basis

HAND_WARM_C = 150.0


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the lowest limit of the metals in the joint."""
    limited = [(each.interpass_max_c, each) for each in limits_for(case) if each.interpass_max_c is not None]
    if not limited:
        reason = Reason(
            tr("no limit stated for this metal; sheet keeps its shape better below this"),
            source="COMMON_PRACTICE",
        )
        return Setting(
            "interpass", Basis.PRACTICE, (reason,), ("COMMON_PRACTICE",), value=HAND_WARM_C, unit="degC"
        )
    limit, row = min(limited, key=lambda each: each[0])
    return Setting(
        "interpass",
        row.basis,
        (Reason(tr("at most, measured beside the bead before the next run"), source=row.source_id),),
        (row.source_id,),
        (row.row_id,),
        value=limit,
        unit="degC",
    )
