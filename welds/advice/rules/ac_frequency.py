"""AC frequency: how narrow the arc is."""

from welds.advice.case import Case, SoFar
from welds.advice.limits import fit
from welds.advice.setting import Reason, Setting
from welds.language import mark, tr
from welds.quantities.band import Band
from welds.reference.names import id_or_name
from welds.reference.settings import WaveRow

TREND = mark(
    "lower frequency widens the arc, higher narrows it (a trend: no published figure ties width to hertz)"
)


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return the joint's usual frequency, moved down on thick plate and clipped to the machine."""
    if so_far["polarity"].value != "AC":
        return None
    rows = {row.case: row for row in case.tables.records(WaveRow) if row.topic == "frequency"}
    row = rows[case.request.joint]
    reasons = [
        Reason(f"{id_or_name(case.request.joint)}: {row.note}", source=row.source_id),
        Reason(tr(TREND), source="COMMON_PRACTICE"),
    ]
    band = Band(row.low, row.start, row.high, "Hz")
    thick = rows["thick"]
    if thick.thickness_min_mm is not None and case.effective_mm >= thick.thickness_min_mm:
        share = min(1.0, thick.start / band.start)
        band = Band(thick.low, round(band.start * share / 5) * 5, max(thick.high, band.start * share), "Hz")
        reasons.append(Reason(tr("thick plate: {note}", note=thick.note), share, thick.source_id))
    fitted, limits = fit(band, case.equipment.machine, "ac_frequency", "Hz")
    return Setting(
        "ac_frequency",
        row.basis,
        (*reasons, *limits),
        (row.source_id,),
        (row.row_id,),
        band=fitted,
        wanted=band,
    )
