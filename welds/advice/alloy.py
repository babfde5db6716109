"""How an alloy differs from the metal its family's schedules were printed for."""

from collections import defaultdict
from collections.abc import Mapping
from math import exp, log

from welds.advice.tig_seams import material_of
from welds.physics.conduction import power_to_melt_thin_plate
from welds.reference.metals import Metal
from welds.reference.tables import Tables

SHEET_MM, FUSED_WIDTH_MM, SPEED_MM_S = 2.0, 5.0, 3.0
"""The bench weld that alloys are compared on."""

ROOM_C = 20.0

APPLIED_SHARE = 1.0 / 3.0
"""Power (in the sense of an exponent) of the computed ratio that is applied.

Handbooks print one line for all alloys of a family and hands make up the rest, so the full difference would
overstate it; properties at room temperature also differ more than those of hot metal do.
"""

SCHEDULE_GROUPS = {"stainless": "austenitic", "carbon-steel": "low-carbon"}
"""The group the family's schedules were printed for; other families' schedules name none."""


def build_alloy_factors(tables: Tables) -> Mapping[str, float]:
    """Return by metal id the current it wants over the current its family's schedules print."""
    powers = {metal.id: _melting_power(metal) for metal in tables.records(Metal) if metal.is_weldable}
    kin: dict[str, list[float]] = defaultdict(list)
    for metal in tables.records(Metal):
        wanted = SCHEDULE_GROUPS.get(metal.family)
        if metal.id in powers and wanted in (None, metal.group):
            kin[material_of(metal.family, metal.group)].append(log(powers[metal.id]))
    return {
        metal.id: (powers[metal.id] / _typical(kin[material_of(metal.family, metal.group)])) ** APPLIED_SHARE
        for metal in tables.records(Metal)
        if metal.id in powers
    }


def _typical(logs: list[float]) -> float:
    return exp(sum(logs) / len(logs))


def _melting_power(metal: Metal) -> float:
    return power_to_melt_thin_plate(
        metal.conductivity_w_mk,
        metal.density_kg_m3 * metal.specific_heat_j_kgk,
        metal.liquidus_c - ROOM_C,
        SHEET_MM,
        FUSED_WIDTH_MM,
        SPEED_MM_S,
    )
