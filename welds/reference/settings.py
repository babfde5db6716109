"""Records of the small tables that single settings are read from."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class WaveRow:
    """Where to start with AC frequency or balance for one case."""

    TABLE: ClassVar[str] = "waveform"

    row_id: str
    topic: str
    case: str
    thickness_min_mm: float | None
    thickness_max_mm: float | None
    low: float
    start: float
    high: float
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class WireRange:
    """The currents one wire is used at."""

    TABLE: ClassVar[str] = "wires"

    row_id: str
    family: str
    transfer: str
    wire_mm: float
    current_min_a: float
    current_max_a: float | None
    voltage_min_v: float | None
    voltage_max_v: float | None
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class PlugHole:
    """The hole to drill for a plug weld in one sheet."""

    TABLE: ClassVar[str] = "plug_holes"

    row_id: str
    family: str
    purpose: str
    thickness_min_mm: float
    thickness_max_mm: float
    hole_min_mm: float | None
    hole_max_mm: float | None
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class PlugRule:
    """One figure that plug welds are laid out by."""

    TABLE: ClassVar[str] = "plug_rules"

    row_id: str
    topic: str
    family: str
    value: float
    unit: str
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class SettingNote:
    """What a setting does, and what too little and too much of it look like."""

    TABLE: ClassVar[str] = "setting_notes"

    row_id: str
    setting: str
    process: str
    does: str
    too_little: str
    too_much: str
    source_id: str
    basis: Basis


def setting_notes(tables: Tables, process: str) -> dict[str, SettingNote]:
    """Return the note of each setting of a process."""
    return {row.setting: row for row in tables.records(SettingNote) if row.process in (process, "both")}
