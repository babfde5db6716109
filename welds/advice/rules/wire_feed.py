"""Wire feed: tied to the current by the melting law."""

from welds.advice.case import Case, SoFar
from welds.advice.limits import fit
from welds.advice.mig_seams import EXTENSION_MM, Bench, build_mig_seams
from welds.advice.request import Transfer
from welds.advice.setting import Reason, Setting
from welds.errors import NotCoveredError
from welds.language import tr
from welds.physics.wire import wire_feed
from welds.quantities.band import Band
from welds.reference.basis import Basis
from welds.reference.names import id_or_name

LEAST_SPREAD = 0.20
"""The resistance term is poorly known: never claim the feed closer than this."""

BORROWED_SPREAD = 0.10
"""More where the law was fitted to another transfer."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the feed that melts at the start current; at least 20 % either way."""
    transfer = Transfer(str(so_far["transfer"].value))
    wire = float(so_far["wire_diameter"].start)
    current = so_far["current"].figure
    laws = case.tables.derived(build_mig_seams).melt_laws
    kin = [
        each
        for each in (transfer, Transfer.SPRAY, Transfer.SHORT_CIRCUIT)
        if Bench(case.family, each) in laws
    ]
    if not kin:
        raise NotCoveredError(
            tr("{process} on {metal}", process=id_or_name(transfer), metal=id_or_name(case.family)),
            tr("too few rows print a wire feed"),
        )
    law = laws[Bench(case.family, kin[0])]
    extension = EXTENSION_MM[transfer]
    start = wire_feed(current.start, wire, extension, law.arc_mm3_as, law.resistance_mm4_a2s) * 60 / 1000
    spread = max(LEAST_SPREAD, law.scatter)
    if kin[0] is not transfer:
        spread += BORROWED_SPREAD
    sources = tuple(dict.fromkeys(row.source_id for row in law.rows))
    reasons = (
        Reason(
            tr(
                "melting law fitted to {rows} {transfer} rows: {arc:.2f} mm3 per ampere second"
                " and {resistance:.1e} mm4 per A2 s over {extension:g} mm of wire",
                rows=len(law.rows),
                transfer=id_or_name(kin[0]),
                arc=law.arc_mm3_as,
                resistance=law.resistance_mm4_a2s,
                extension=extension,
            ),
            source="QUINTINO_ALLUM_MEM",
        ),
        Reason(
            tr("at the start current; give or take {spread:.0%}, more with a longer stick-out", spread=spread)
        ),
    )
    band = Band(round(start * (1 - spread), 1), round(start, 1), round(start * (1 + spread), 1), "m/min")
    fitted, limits = fit(band, case.equipment.machine, "wire_feed", "m/min")
    return Setting(
        "wire_feed",
        Basis.RECALLED,
        (*reasons, *limits),
        ("QUINTINO_ALLUM_MEM", *sources),
        tuple(row.row_id for row in law.rows)[:8],
        band=fitted,
        wanted=band,
    )
