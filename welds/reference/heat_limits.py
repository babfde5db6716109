"""Preheat, interpass and tack rows as records."""

from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis


@dataclass(frozen=True, slots=True)
class HeatLimit:
    """What to warm a metal to before the first run, and what it may not exceed between runs."""

    TABLE: ClassVar[str] = "preheat"

    row_id: str
    family: str
    group: str
    thickness_min_mm: float
    thickness_max_mm: float
    preheat_min_c: float | None
    preheat_max_c: float | None
    interpass_max_c: float | None
    need: str
    why: str
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class Tack:
    """How far apart and how long tacks are on one sheet."""

    TABLE: ClassVar[str] = "tacks"

    row_id: str
    family: str
    thickness_min_mm: float
    thickness_max_mm: float
    spacing_min_mm: float
    spacing_max_mm: float
    length_min_mm: float
    length_max_mm: float
    source_id: str
    basis: Basis
    note: str
