"""How far the tungsten stands out of the cup."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.basis import weakest
from welds.reference.shielding import ShieldingRule

INTO_THE_ROOT = frozenset({Joint.TEE, Joint.INSIDE_CORNER, Joint.LAP})
PLAIN, LENS = "plain collet body", "gas lens"


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return short for open joints, longer to reach a root, never beyond the printed maximum."""
    reaches = case.request.joint in INTO_THE_ROOT
    has_lens = bool(so_far["gas_lens"].value)
    rules = [row for row in case.tables.records(ShieldingRule) if row.topic == "stick-out"]
    usual = next(row for row in rules if row.joint == (Joint.TEE if reaches else Joint.BUTT))
    limit = next(
        row for row in rules if row.family == "aluminium" and row.case == (LENS if has_lens else PLAIN)
    )
    assert usual.value_min is not None
    assert usual.value_max is not None
    assert limit.value_max is not None
    reasons = (
        Reason(
            tr("long enough to see and reach the root") if reaches else tr("short: best cover"),
            source=usual.source_id,
        ),
        Reason(
            tr("at most {most:g} mm with a gas lens", most=limit.value_max)
            if has_lens
            else tr("at most {most:g} mm without a gas lens", most=limit.value_max),
            source=limit.source_id,
        ),
    )
    middle = (usual.value_min + usual.value_max) / 2
    band = Band(usual.value_min, round(middle, 1), usual.value_max, "mm").clipped(highest=limit.value_max)
    return Setting(
        "stick_out",
        weakest((usual.basis, limit.basis)),
        reasons,
        (usual.source_id, limit.source_id),
        (usual.row_id, limit.row_id),
        band=band,
    )
