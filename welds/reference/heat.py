"""Records of the tables that carry the heat picture."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis


@dataclass(frozen=True, slots=True)
class EfficiencyRow:
    """Share of the arc's power that reaches the work, as one document gives it."""

    TABLE: ClassVar[str] = "thermal_efficiencies"

    row_id: str
    process: str
    family: str
    polarity: str
    gas: str
    efficiency_min: float
    efficiency_max: float
    use: str
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class HotMetalRow:
    """What changes between room temperature and melting, and the liquid's skin and density."""

    TABLE: ClassVar[str] = "hot_metals"

    row_id: str
    family: str
    group: str
    conductivity_ratio: float | None
    specific_heat_ratio: float | None
    surface_tension_n_m: float
    liquid_density_kg_m3: float
    emissivity: float
    source_id: str
    basis: Basis
