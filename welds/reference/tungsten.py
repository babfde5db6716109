"""Tungsten electrodes: types, the current each size carries, and ground tips."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis, GradedCells
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class TungstenType(GradedCells):
    """One electrode type by its ISO 6848 code; `standing` is our order of preference, 1 first."""

    TABLE: ClassVar[str] = "tungstens"

    iso_code: str
    aws_code: str
    colour: str
    oxide: str
    oxide_min_percent: float | None
    oxide_max_percent: float | None
    suits: tuple[str, ...]
    is_radioactive: bool
    standing: int
    source_id: str
    basis: Basis
    cell_bases: tuple[tuple[str, Basis], ...]


@dataclass(frozen=True, slots=True)
class TungstenCurrent:
    """The current one electrode diameter carries in one document; some give only the upper limit."""

    TABLE: ClassVar[str] = "tungsten_currents"

    row_id: str
    diameter_mm: float
    diameter_inch_name: str
    polarity: str
    wave: str
    wave_shape: str
    electrode_class: str
    current_min_a: float | None
    current_max_a: float
    source_id: str
    place: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class TungstenTip:
    """One ground tip on direct current: flat, full angle, and the current it holds its shape at."""

    TABLE: ClassVar[str] = "tungsten_tips"

    row_id: str
    diameter_mm: float
    tip_diameter_mm: float
    tip_angle_deg: float
    current_min_a: float
    current_max_a: float
    source_id: str
    place: str
    basis: Basis
    note: str


def tungstens_for(tables: Tables, polarity: str) -> tuple[TungstenType, ...]:
    """Return the types chosen for a polarity (AC or DCEN), the preferred one first."""
    suited = (each for each in tables.records(TungstenType) if polarity in each.suits)
    return tuple(sorted(suited, key=lambda each: each.standing))


def electrode_class(tungsten: TungstenType) -> tuple[str, ...]:
    """Return the classes of the current table that speak of this type, the closest first."""
    if tungsten.oxide == "none":
        return ("pure",)
    return ("zirconiated", "oxide") if tungsten.oxide == "zirconia" else ("oxide",)
