"""Gas before the arc."""

from welds.advice.case import Case, SoFar
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.shielding import ShieldingRule


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the short purge that clears the hose end."""
    rule = next(row for row in case.tables.records(ShieldingRule) if row.topic == "pre-flow")
    assert rule.value_min is not None
    assert rule.value_max is not None
    middle = round((rule.value_min + rule.value_max) / 2, 1)
    return Setting(
        "pre_flow",
        rule.basis,
        (Reason(tr("clears air from the torch before the arc"), source=rule.source_id),),
        (rule.source_id,),
        (rule.row_id,),
        band=Band(rule.value_min, middle, rule.value_max, "s"),
    )
