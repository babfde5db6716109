"""How many runs."""

from math import ceil

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint, Process
from welds.advice.setting import Choice, Reason, Setting
from welds.language import tr
from welds.reference.basis import Basis

ONE_RUN_MM = {Process.TIG: 4.0, Process.MIG: 5.0}
EACH_FURTHER_MM = {Process.TIG: 3.0, Process.MIG: 4.0}
FILLET_ONE_RUN_MM = 6.5
FILLETS = frozenset({Joint.TEE, Joint.LAP, Joint.INSIDE_CORNER})


def advise(case: Case, so_far: SoFar) -> Setting:
    """One run on sheet; more by shop rule, a fillet needing fewer than a groove."""
    if case.request.joint is Joint.PLUG:
        reason = Reason(tr("filled in one go, from the middle outward"), source="COMMON_PRACTICE")
        return Setting("passes", Basis.PRACTICE, (reason,), ("COMMON_PRACTICE",), value=1)
    process = case.request.process
    one_run = FILLET_ONE_RUN_MM if case.request.joint in FILLETS else ONE_RUN_MM[process]
    thickness = case.thin_mm
    count = 1 if thickness <= one_run else 1 + ceil((thickness - one_run) / EACH_FURTHER_MM[process])
    reasons = [
        Reason(
            tr("one run up to this sheet") if count == 1 else tr("one run more for every few millimetres"),
            source="COMMON_PRACTICE",
        )
    ]
    if count > 1 and case.request.joint is Joint.BUTT:
        reasons.append(Reason(tr("bevel to a V of about 60 degrees, or weld from both sides")))
    return Setting(
        "passes",
        Basis.PRACTICE,
        tuple(reasons),
        ("COMMON_PRACTICE",),
        value=count,
        alternatives=(Choice(count + 1, tr("smaller runs, less heat each")),) if count > 1 else (),
    )
