"""Records of the tables that repairs and tacks are laid out by."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class RepairRule:
    """One figure that a repair is decided or laid out by."""

    TABLE: ClassVar[str] = "repair_rules"

    row_id: str
    topic: str
    value: float
    unit: str
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class RunLength:
    """How long a seam is welded at a time."""

    TABLE: ClassVar[str] = "weld_runs"

    row_id: str
    thickness_min_mm: float
    thickness_max_mm: float
    run_min_mm: float
    run_max_mm: float
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class Shrinkage:
    """What a weld pulls, unrestrained."""

    TABLE: ClassVar[str] = "shrinkages"

    row_id: str
    weld: str
    direction: str
    shrink_min_mm: float
    shrink_max_mm: float
    over_mm: float | None
    source_id: str
    basis: Basis


def rule(tables: Tables, topic: str) -> RepairRule:
    """Return the rule of a topic; the table has one for each."""
    return next(row for row in tables.records(RepairRule) if row.topic == topic)
