"""What a power source takes from the mains, as documents and practice give it."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis, GradedCells
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class SupplyRow(GradedCells):
    """One figure with its spread; phases and duty cycle are None where the row does not depend on them."""

    TABLE: ClassVar[str] = "supply"

    row_id: str
    topic: str
    kind: str
    phases: int | None
    output: str
    duty_percent: float | None
    low: float
    high: float
    unit: str
    cell_bases: tuple[tuple[str, Basis], ...]
    source_id: str
    basis: Basis
    note: str


def supply_row(tables: Tables, topic: str, kind: str, phases: int, output: str) -> SupplyRow | None:
    """Return the row for a kind of power source, or None where the table is silent."""
    return next(
        (
            row
            for row in tables.records(SupplyRow)
            if row.topic == topic
            and row.kind in (kind, "any")
            and row.phases in (None, phases)
            and row.output in (output, "any")
        ),
        None,
    )


def conductor_factor(tables: Tables, duty_percent: float, kind: str = "any") -> SupplyRow:
    """Return the share of the supply current that conductors are sized for: the next duty cycle up."""
    wanted = kind if kind == "motor-generator" else "any"
    rows = sorted(
        (row for row in tables.records(SupplyRow) if row.topic == "conductor-factor" and row.kind == wanted),
        key=lambda row: row.duty_percent or 0.0,
    )
    return next((row for row in rows if (row.duty_percent or 0.0) >= duty_percent), rows[-1])
