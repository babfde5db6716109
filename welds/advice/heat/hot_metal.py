"""An alloy's properties as the pool sees them: means up to melting, heat of fusion counted."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from welds.physics.hot_properties import (
    aluminium_conductivity,
    aluminium_specific_heat,
    carbon_steel_conductivity,
    carbon_steel_specific_heat,
    stainless_conductivity,
    stainless_specific_heat,
)
from welds.physics.pool_support import capillary_length
from welds.reference.heat import HotMetalRow
from welds.reference.metals import Metal
from welds.reference.tables import Tables

Floats = NDArray[np.float64]
Curve = Callable[[Floats], Floats]

ROOM_C = 20.0
ALUMINIUM_LINES = {True: (140.0, 0.10), False: (190.0, 0.07)}
"""Conductivity at 0 degC and per degree: for 5xxx and 7xxx, for the rest."""

MAGNESIUM_RICH = frozenset({"5xxx", "7xxx"})


@dataclass(frozen=True, slots=True)
class HotMetal:
    """Means from room temperature to melting.

    The fusion line is drawn at the solidus: from there on the metal is mushy and carries nothing.
    """

    conductivity_w_mk: float
    specific_heat_j_kgk: float
    density_kg_m3: float
    latent_heat_j_kg: float
    melting_c: float
    surface_tension_n_m: float
    capillary_length_mm: float
    emissivity: float

    def volumetric_heat(self, start_c: float) -> float:
        """Return heat per volume and kelvin with the heat of fusion spread over the rise to melting."""
        spread = self.latent_heat_j_kg / (self.melting_c - start_c)
        return self.density_kg_m3 * (self.specific_heat_j_kgk + spread)


def hot_metal(tables: Tables, metal: Metal) -> HotMetal:
    """Return the hot properties of one metal of the catalogue, whatever its temper."""
    return tables.derived(build_hot_metals)[metal.id]


def build_hot_metals(tables: Tables) -> Mapping[str, HotMetal]:
    """Return the hot properties of every metal, by id."""
    rows = {(row.family, row.group): row for row in tables.records(HotMetalRow)}
    return {
        metal.id: _make(metal, rows.get((metal.family, metal.group)) or rows[metal.family, ""])
        for metal in tables.records(Metal)
    }


def _make(metal: Metal, row: HotMetalRow) -> HotMetal:
    curves = _curves(metal)
    conductivity = row.conductivity_ratio or _mean_ratio(curves[0], metal.solidus_c)
    specific_heat = row.specific_heat_ratio or _mean_ratio(curves[1], metal.solidus_c)
    return HotMetal(
        metal.conductivity_w_mk * conductivity,
        metal.specific_heat_j_kgk * specific_heat,
        metal.density_kg_m3,
        metal.latent_heat_j_kg,
        metal.solidus_c,
        row.surface_tension_n_m,
        capillary_length(row.surface_tension_n_m, row.liquid_density_kg_m3),
        row.emissivity,
    )


def _curves(metal: Metal) -> tuple[Curve, Curve]:
    if metal.family == "stainless":
        return stainless_conductivity, stainless_specific_heat
    if metal.family == "aluminium":
        line = ALUMINIUM_LINES[metal.group in MAGNESIUM_RICH]
        return lambda t: aluminium_conductivity(t, *line), aluminium_specific_heat
    return carbon_steel_conductivity, carbon_steel_specific_heat


def _mean_ratio(curve: Curve, melting_c: float) -> float:
    """Return the mean from room temperature to melting over the value at room temperature.

    The standards' formulas end short of melting; the mean leans on them a little beyond their range.
    """
    temperatures = np.linspace(ROOM_C, melting_c, 2001)
    return float(curve(temperatures).mean() / curve(np.array([ROOM_C]))[0])
