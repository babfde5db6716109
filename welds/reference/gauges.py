"""Sheet and tube gauges: one number, several systems."""

from dataclasses import dataclass
from typing import ClassVar

from welds.errors import InputError
from welds.language import mark, tr
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class Gauge:
    """The thickness that one gauge number stands for in one system."""

    TABLE: ClassVar[str] = "gauges"

    system: str
    gauge: int
    thickness_in: float
    thickness_mm: float


def gauges_of(tables: Tables, system: str) -> tuple[Gauge, ...]:
    """Return the system's gauges, thickest first; empty for a system without a table."""
    found = (gauge for gauge in tables.records(Gauge) if gauge.system == system)
    return tuple(sorted(found, key=lambda gauge: gauge.gauge))


def gauge_thickness_mm(tables: Tables, system: str, gauge: int) -> float:
    """Return the thickness of a gauge number, or raise InputError naming the system's range."""
    by_number = {each.gauge: each.thickness_mm for each in gauges_of(tables, system)}
    if gauge not in by_number:
        if not by_number:
            systems = sorted({each.system for each in tables.records(Gauge)})
            raise InputError(mark("gauge system"), system, ", ".join(systems))
        lowest, highest = min(by_number), max(by_number)
        near = min(by_number, key=lambda number: abs(number - gauge))
        allowed = tr("{system} {lowest} to {highest}", system=system, lowest=lowest, highest=highest)
        raise InputError("gauge", gauge, allowed, str(near))
    return by_number[gauge]
