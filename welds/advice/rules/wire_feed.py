"""Wire feed: tied to the current by the melting law."""

from welds.advice.case import Case, SoFar
from welds.advice.limits import fit
from welds.advice.mig_seams import EXTENSION_MM, Bench, build_mig_seams
from welds.advice.request import Transfer
from welds.advice.setting import Reason, Setting
from welds.errors import NotCoveredError
from welds.physics.wire import wire_feed
from welds.quantities.band import Band
from welds.reference.basis import Basis

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
        raise NotCoveredError(f"{transfer} on {case.family}", "too few rows print a wire feed")
    law = laws[Bench(case.family, kin[0])]
    extension = EXTENSION_MM[transfer]
    start = wire_feed(current.start, wire, extension, law.arc_mm3_as, law.resistance_mm4_a2s) * 60 / 1000
    spread = max(LEAST_SPREAD, law.scatter)
    if kin[0] is not transfer:
        spread += BORROWED_SPREAD
    sources = tuple(dict.fromkeys(row.source_id for row in law.rows))
    reasons = (
        Reason(
            f"melting law fitted to {len(law.rows)} {kin[0]} rows: {law.arc_mm3_as:.2f} mm3 per ampere second"
            f" and {law.resistance_mm4_a2s:.1e} mm4 per A2 s over {extension:g} mm of wire",
            source="QUINTINO_ALLUM_MEM",
        ),
        Reason(f"at the start current; give or take {spread:.0%}, more with a longer stick-out"),
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
