"""Contact tip to work distance."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Transfer
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.basis import Basis

SHORT_CIRCUIT_MM, SPRAY_MM, ALUMINIUM_MM = (8.0, 10.0, 13.0), (13.0, 18.0, 22.0), (13.0, 16.0, 19.0)


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return a short distance for short circuit, a longer one for spray."""
    if case.family == "aluminium":
        reason = Reason(tr("nozzle 13 to 16 mm off; the tip a little inside it"), source="TM_9_2350_277_34")
        return Setting(
            "tip_to_work", Basis.PRINTED, (reason,), ("TM_9_2350_277_34",), band=Band(*ALUMINIUM_MM, "mm")
        )
    short = so_far["transfer"].value == Transfer.SHORT_CIRCUIT
    reason = Reason(
        tr("close: the wire heats less before it melts, the current stays up")
        if short
        else tr("farther: the tip must not melt"),
        source="AWS_WHB2_MEM",
    )
    distances = SHORT_CIRCUIT_MM if short else SPRAY_MM
    return Setting("tip_to_work", Basis.RECALLED, (reason,), ("AWS_WHB2_MEM",), band=Band(*distances, "mm"))
