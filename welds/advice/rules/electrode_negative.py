"""AC balance: how much of the time melts, how much lifts oxide."""

from welds.advice.case import Case, SoFar
from welds.advice.limits import fit
from welds.advice.request import Coating
from welds.advice.setting import Reason, Setting
from welds.language import mark, tr
from welds.quantities.band import Band
from welds.reference.settings import WaveRow

OXIDISED = frozenset({Coating.ANODISED, Coating.UNKNOWN})
TREND = mark(
    "more electrode negative melts deeper and spares the tungsten; more electrode positive lifts more oxide"
    " and rounds the tip (a trend; papers disagree on how much)"
)


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return the share of electrode-negative time for the state of the surface."""
    if so_far["polarity"].value != "AC":
        return None
    rows = {row.case: row for row in case.tables.records(WaveRow) if row.topic == "balance"}
    needs_cleaning = any(metal.group == "cast" for metal in case.metals) or OXIDISED & set(
        case.request.coatings
    )
    row = rows["dirty" if needs_cleaning else "general"]
    limit = next(each for each in case.tables.records(WaveRow) if each.case == "most-negative")
    reasons = [
        Reason(row.note, source=row.source_id),
        Reason(tr(TREND), source=row.source_id),
        Reason(
            tr("cleaning fades above about {high:g} % electrode negative", high=limit.high),
            source=limit.source_id,
        ),
    ]
    band = Band(row.low, row.start, row.high, "percent")
    if not needs_cleaning:
        band = Band(row.low, row.start, rows["clean"].high, "percent")
        reasons.append(
            Reason(
                tr("up to {high:g} %: {note}", high=rows["clean"].high, note=rows["clean"].note),
                source=row.source_id,
            )
        )
    fitted, limits = fit(band, case.equipment.machine, "electrode_negative", "%")
    return Setting(
        "electrode_negative",
        row.basis,
        (*reasons, *limits),
        tuple(dict.fromkeys((row.source_id, limit.source_id))),
        (row.row_id, limit.row_id),
        band=fitted,
        wanted=band,
    )
