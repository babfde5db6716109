"""Travel speed that goes with the current."""

from dataclasses import replace

from welds.advice.case import Case, SoFar
from welds.advice.mig_rows import rows_of_transfer
from welds.advice.nearby import Nearby, pair_of, read_nearby
from welds.advice.request import Hand, Joint, Process
from welds.advice.setting import Reason, Setting
from welds.advice.tig_rows import rows_of_family, rows_of_hand
from welds.advice.tig_seams import build_tig_seams
from welds.language import tr
from welds.physics.conduction import speed_for_power_share
from welds.quantities.band import Band
from welds.reference.basis import Basis

UNPRINTED_MM_S = {Process.TIG: (1.5, 2.5, 4.0), Process.MIG: (5.0, 7.5, 11.0)}
SLOWEST_MM_S = 0.8
LEAST_WIDTH_MM, WIDTH_OF_THICKNESS = 2.0, 1.5
"""Fused width assumed for the balance: this much and a multiple of the sheet."""


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return printed travel, or for an unhurried hand the travel that the lower current leaves."""
    if case.request.joint is Joint.PLUG:
        return None
    if case.request.process is Process.MIG:
        return _printed(_mig(case, so_far), Process.MIG)
    hand = case.request.hand.value
    found = read_nearby(
        rows_of_hand(case, so_far, hand),
        case.effective_mm,
        lambda r: pair_of(r.travel_min_mm_s, r.travel_max_mm_s),
    )
    if found is None and case.request.hand is Hand.UNHURRIED:
        slower = _from_brisk(case, so_far)
        if slower is not None:
            return slower
    return _printed(found, Process.TIG)


def _mig(case: Case, so_far: SoFar) -> Nearby | None:
    return read_nearby(
        rows_of_transfer(case, str(so_far["transfer"].value)),
        case.effective_mm,
        lambda row: pair_of(row.travel_min_mm_s, row.travel_max_mm_s),
    )


def _printed(found: Nearby | None, process: Process) -> Setting:
    if found is None:
        reason = Reason(tr("no row prints a travel here: a hand's usual pace"), source="COMMON_PRACTICE")
        return Setting(
            "travel_speed",
            Basis.PRACTICE,
            (reason,),
            ("COMMON_PRACTICE",),
            band=Band(*UNPRINTED_MM_S[process], "mm/s"),
        )
    reason = Reason(tr("{rows} rows of about this thickness", rows=len(found.rows)), source=found.sources[0])
    band = Band(round(found.low, 2), round(found.start, 2), round(found.high, 2), "mm/s")
    return Setting("travel_speed", found.basis, (reason,), found.sources, found.rows, band=band)


def _from_brisk(case: Case, so_far: SoFar) -> Setting | None:
    """Return the speed at which the unhurried hand's current melts what the brisk one's melts."""
    brisk = read_nearby(
        rows_of_family(case, so_far),
        case.effective_mm,
        lambda r: pair_of(r.travel_min_mm_s, r.travel_max_mm_s),
    )
    seams = case.tables.derived(build_tig_seams)
    metal = case.metals[0]
    polarity = str(so_far["polarity"].value)
    own = seams.series(metal, polarity, "argon", Hand.UNHURRIED)
    twin = replace(own, hand=Hand.BRISK.value)
    if brisk is None or own not in seams.curves or twin not in seams.curves:
        return None
    share = 1.0 / seams.hand_ratio(twin, own, case.effective_mm)

    def slowed(speed: float) -> float:
        return max(
            SLOWEST_MM_S,
            speed_for_power_share(
                metal.conductivity_w_mk,
                metal.density_kg_m3 * metal.specific_heat_j_kgk,
                LEAST_WIDTH_MM + WIDTH_OF_THICKNESS * case.effective_mm,
                speed,
                share,
            ),
        )

    reasons = (
        Reason(
            tr(
                "{rows} rows print {speed:.1f} mm/s for a brisk hand",
                rows=len(brisk.rows),
                speed=brisk.start,
            ),
            source=brisk.sources[0],
        ),
        Reason(
            tr(
                "an unhurried hand has this share of their current, so by the thin-plate heat balance it"
                " travels slower over the same melted width"
            ),
            share,
            "WELLS-1952",
        ),
    )
    band = Band(
        round(slowed(brisk.low) * 0.85, 2),
        round(slowed(brisk.start), 2),
        round(slowed(brisk.high), 2),
        "mm/s",
    )
    return Setting(
        "travel_speed", brisk.basis, reasons, (*brisk.sources, "WELLS-1952"), brisk.rows, band=band
    )
