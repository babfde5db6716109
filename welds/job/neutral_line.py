"""Which K a bend is laid out with, and what the other methods would say."""

from dataclasses import dataclass

from welds.errors import OutsideValidityError
from welds.job.bend_records import NeutralLine
from welds.language import mark, tr
from welds.physics.bending import neutral_line_din_6935
from welds.reference.basis import Basis
from welds.reference.metals import Metal
from welds.reference.tables import Tables

DIN = "DIN 6935"
MIDDLE = "middle-line"
_STEEL = ("carbon-steel", "stainless")
_NAMES = {
    "rule": mark("shop rule by radius"),
    "airframe-handbook": mark("airframe handbook"),
    MIDDLE: mark("middle of the sheet"),
}


@dataclass(frozen=True, slots=True)
class KReading:
    """What one method says; `id` tells methods apart in any language."""

    id: str
    method: str
    k: float
    low: float
    high: float
    basis: Basis
    source: str


def k_readings(tables: Tables, metal: Metal, radius_mm: float, thickness_mm: float) -> tuple[KReading, ...]:
    """Return every method's K, the one to lay out with first: DIN for steel, else the best graded."""
    ratio = radius_mm / thickness_mm
    found = [
        KReading(
            row.method, tr(_NAMES[row.method]), row.k_start, row.k_low, row.k_high, row.basis, row.source_id
        )
        for row in tables.records(NeutralLine)
        if row.family in (metal.family, "any") and row.ratio_min <= ratio < row.ratio_max
    ]
    found.sort(key=lambda reading: reading.basis.rank)
    if metal.family in _STEEL:
        try:
            k = neutral_line_din_6935(radius_mm, thickness_mm)
        except OutsideValidityError:  # a sharp bend: the standard's logarithm ends before it
            return tuple(found)
        found.insert(0, KReading(DIN, DIN, k, k, k, Basis.QUOTED, "DIN6935-Q"))
    return tuple(found)


def k_given(k: float, method: str) -> KReading:
    """Return a K that the person knows, `method` in words where it is more than given."""
    return KReading("given", method or tr("given"), k, k, k, Basis.PRACTICE, "COMMON_PRACTICE")
