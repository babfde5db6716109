"""Schedule rows and the factors between joints and positions, as records."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis


@dataclass(frozen=True, slots=True)
class TigSchedule:
    """One line of a TIG schedule."""

    TABLE: ClassVar[str] = "tig_schedules"

    row_id: str
    family: str
    group: str
    polarity: str
    gas: str
    hand: str
    thickness_mm: float
    joint: str
    preparation: str
    position: str
    current_min_a: float
    current_max_a: float
    electrode_min_mm: float | None
    electrode_max_mm: float | None
    filler_min_mm: float | None
    filler_max_mm: float | None
    flow_min_l_min: float | None
    flow_max_l_min: float | None
    travel_min_mm_s: float | None
    travel_max_mm_s: float | None
    passes_min: int | None
    passes_max: int | None
    use: str
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class MigSchedule:
    """One line of a MIG schedule: a seam, a plug through a hole, or an arc spot."""

    TABLE: ClassVar[str] = "mig_schedules"

    row_id: str
    family: str
    kind: str
    thickness_mm: float
    thickness_max_mm: float | None
    bottom_mm: float | None
    joint: str
    preparation: str
    positions: tuple[str, ...]
    transfer: str
    wire_mm: float | None
    wire_max_mm: float | None
    current_min_a: float
    current_max_a: float
    voltage_min_v: float | None
    voltage_max_v: float | None
    feed_min_m_min: float | None
    feed_max_m_min: float | None
    travel_min_mm_s: float | None
    travel_max_mm_s: float | None
    gas: str
    flow_min_l_min: float | None
    flow_max_l_min: float | None
    hole_mm: float | None
    weld_time_s: float | None
    use: str
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class JointFactor:
    """Current of one joint over the current of a butt in the same sheet."""

    TABLE: ClassVar[str] = "joint_factors"

    row_id: str
    process: str
    family: str
    hand: str
    gas: str
    joint: str
    factor: float
    from_rows: tuple[str, ...]
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class PositionFactor:
    """Current of one position against flat: a factor, or a difference in amperes."""

    TABLE: ClassVar[str] = "position_factors"

    row_id: str
    process: str
    position: str
    fillet: str
    factor: float | None
    difference_min_a: float | None
    difference_max_a: float | None
    source_id: str
    basis: Basis
    note: str
