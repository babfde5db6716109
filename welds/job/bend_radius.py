"""How tight a sheet may be bent, by every document that says so."""

from dataclasses import dataclass
from enum import StrEnum

from welds.job.bend_records import Anneal, BendRadius, BendRelief
from welds.reference.basis import Basis
from welds.reference.metals import Metal
from welds.reference.tables import Tables

MM_PER_INCH = 25.4
NEAR = 1.02
"""A sheet up to this much thicker than a row still belongs to it: 0.063 in against 1/16."""
ALONG_GRAIN = 1.5
"""A bend line along the rolling direction wants this much more radius; from memory, for 6061-T6."""


class Grain(StrEnum):
    """How the bend line lies to the rolling direction."""

    ACROSS = "across"
    ALONG = "along"


_DOCUMENTS = ("standard", "inch-table", "shop")


@dataclass(frozen=True, slots=True)
class RadiusReading:
    """What one document asks for this sheet; no radius where it advises against the bend."""

    document: str
    radius_mm: float | None
    row: str
    source: str
    basis: Basis
    note: str


def radius_readings(
    tables: Tables, metal: Metal, thickness_mm: float, *, is_along_grain: bool = False
) -> tuple[RadiusReading, ...]:
    """Return one reading a document, the one that decides first; none where no table has this metal."""
    grain = ALONG_GRAIN if is_along_grain else 1.0
    readings = []
    for document in _DOCUMENTS:
        rows = [row for row in tables.records(BendRadius) if _is_for(row, document, metal)]
        row = min(
            (row for row in rows if row.thickness_mm * NEAR >= thickness_mm),
            key=lambda row: row.thickness_mm,
            default=None,
        )
        if row is not None:
            radius = _radius(row, thickness_mm) if row.is_advised else None
            scaled = None if radius is None else radius * grain
            readings.append(RadiusReading(document, scaled, row.row_id, row.source_id, row.basis, row.note))
    return tuple(readings)


def anneal_for(tables: Tables, metal: Metal) -> Anneal | None:
    """Return how the metal is softened, or None where it is soft already or no row has it."""
    if metal.temper == "O":
        return None
    return next((row for row in tables.records(Anneal) if row.metal == metal.id), None)


def relief_hole(
    tables: Tables, metal: Metal, thickness_mm: float, radius_mm: float
) -> tuple[float, BendRelief] | None:
    """Return the hole where bend lines cross and its row, or None where no row has the metal."""
    for row in tables.records(BendRelief):
        if row.family == metal.family and row.thickness_min_mm < thickness_mm <= row.thickness_max_mm:
            return max(row.hole_min_mm, row.radii * radius_mm), row
    return None


def _is_for(row: BendRadius, document: str, metal: Metal) -> bool:
    has_temper = not row.tempers or metal.temper in row.tempers
    return row.document == document and metal.id in row.metals and has_temper


def _radius(row: BendRadius, thickness_mm: float) -> float:
    if row.radius_over_thickness is not None:
        return row.radius_over_thickness * thickness_mm
    assert row.radius_in is not None
    return row.radius_in * MM_PER_INCH
