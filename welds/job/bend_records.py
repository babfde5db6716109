"""Records of the tables that bends are laid out by."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis


@dataclass(frozen=True, slots=True)
class BendRadius:
    """How tight one thickness of one metal may be bent."""

    TABLE: ClassVar[str] = "bend_radii"

    row_id: str
    metals: tuple[str, ...]
    tempers: tuple[str, ...]
    thickness_mm: float
    document: str
    radius_over_thickness: float | None
    radius_in: float | None
    is_advised: bool
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class NeutralLine:
    """Where the neutral line lies for a range of radius over thickness."""

    TABLE: ClassVar[str] = "k_factors"

    row_id: str
    family: str
    method: str
    ratio_min: float
    ratio_max: float
    k_low: float
    k_start: float
    k_high: float
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class Anneal:
    """How a sheet is softened, and the yield strength before and after."""

    TABLE: ClassVar[str] = "anneals"

    row_id: str
    metal: str
    temper: str
    temperature_c: float
    hold: str
    cooling: str
    yield_mpa: float
    annealed_yield_mpa: float
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class BendRelief:
    """The hole to drill where two bend lines cross."""

    TABLE: ClassVar[str] = "bend_reliefs"

    row_id: str
    family: str
    thickness_min_mm: float
    thickness_max_mm: float
    radii: float
    hole_min_mm: float
    source_id: str
    basis: Basis
