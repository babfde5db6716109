"""Gas after the arc."""

from welds.advice.case import Case, SoFar
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.shielding import ShieldingRule

TITANIUM_LEAST_S = 20.0
LONGER = 1.5


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the time that keeps pool and tungsten under gas until they have cooled."""
    current = so_far["current"].figure
    rules = [row for row in case.tables.records(ShieldingRule) if row.topic == "post-flow"]
    per_ampere = next(row for row in rules if row.unit == "s/A")
    floor = next(row for row in rules if row.case == "floor")
    assert per_ampere.value_min is not None
    assert floor.value_min is not None
    least = floor.value_min
    reasons = [
        Reason(
            tr("a second for every ten amperes, never under {least:g} s; hold the torch still", least=least),
            source=per_ampere.source_id,
        )
    ]
    rows = [per_ampere.row_id, floor.row_id]
    if "titanium" in case.families:
        until = next(row for row in case.tables.records(ShieldingRule) if row.topic == "shield-until")
        least = TITANIUM_LEAST_S
        rows.append(until.row_id)
        reasons.append(
            Reason(
                tr(
                    "titanium: until it is below {safe:g} degC, with a trailing shield",
                    safe=until.value_max,
                ),
                source=until.source_id,
            )
        )
    start = max(least, round(current.start * per_ampere.value_min))
    band = Band(max(least, round(current.low * per_ampere.value_min)), start, round(start * LONGER), "s")
    return Setting(
        "post_flow", per_ampere.basis, tuple(reasons), (per_ampere.source_id,), tuple(rows), band=band
    )
