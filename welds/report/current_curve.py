"""Current over thickness for one request: the advised band as a curve, and the schedule rows behind it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import isnan, nan

from welds.advice.advise import MIG, TIG
from welds.advice.case import make_case
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.evidence import Evidence
from welds.advice.learned_current import learned_current
from welds.advice.request import Process, Request
from welds.advice.setting import Setting
from welds.errors import WeldsError
from welds.quantities.spreadsheet import csv_text
from welds.reference.basis import Basis
from welds.reference.schedules import MigSchedule, TigSchedule
from welds.reference.tables import Tables
from welds.report.own_welds import OwnWeld

THINNEST_MM, THICKEST_MM = 0.5, 13.0
_CSV_COLUMNS = (
    "kind", "title", "thickness_mm", "low_a", "start_a", "high_a", "basis", "source", "row", "outcome"
)  # fmt: skip
STEPS = 64
"""Enough for a smooth line on a screen: each step is 5 % in thickness."""


@dataclass(frozen=True, slots=True)
class SchedulePoint:
    """One row of a schedule for the curve's own joint."""

    thickness_mm: float
    low_a: float
    high_a: float
    basis: Basis
    source_id: str
    row_id: str

    @property
    def middle_a(self) -> float:
        """The row's middle."""
        return (self.low_a + self.high_a) / 2.0


@dataclass(frozen=True, slots=True)
class CurrentCurve:
    """The advised band over thickness; not a number where the tables have no answer."""

    title: str
    request: Request
    thicknesses_mm: tuple[float, ...]
    low_a: tuple[float, ...]
    start_a: tuple[float, ...]
    high_a: tuple[float, ...]
    points: tuple[SchedulePoint, ...]
    own: tuple[OwnWeld, ...] = ()

    @property
    def is_empty(self) -> bool:
        """True where no thickness at all has an answer."""
        return all(isnan(start) for start in self.start_a)


def grid_mm(steps: int = STEPS) -> tuple[float, ...]:
    """Return thicknesses that lie evenly on a logarithmic scale."""
    ratio = (THICKEST_MM / THINNEST_MM) ** (1.0 / (steps - 1))
    return tuple(THINNEST_MM * ratio**step for step in range(steps))


def current_curve(
    title: str,
    request: Request,
    tables: Tables,
    equipment: Equipment = GENERIC,
    thicknesses_mm: Sequence[float] | None = None,
    evidence: Evidence | None = None,
) -> CurrentCurve:
    """Return the curve for a request whose thickness is replaced step by step; with evidence, as learned."""
    asked = tuple(thicknesses_mm or grid_mm())
    bands: list[tuple[float, float, float]] = []
    rows: dict[str, None] = {}
    for thickness_mm in asked:
        try:
            setting = current_alone(replace(request, thickness_mm=thickness_mm), tables, equipment, evidence)
        except WeldsError:
            bands.append((nan, nan, nan))
        else:
            band = setting.figure
            bands.append((band.low, band.start, band.high))
            rows.update(dict.fromkeys(setting.rows))
    low, start, high = zip(*bands, strict=True)
    return CurrentCurve(title, request, asked, low, start, high, _points(request, tables, rows))


def current_alone(
    request: Request, tables: Tables, equipment: Equipment = GENERIC, evidence: Evidence | None = None
) -> Setting:
    """Return the current of the card without the settings that come after it."""
    case = make_case(request, tables, equipment)
    settings: dict[str, Setting] = {}
    for rule in TIG if request.process is Process.TIG else MIG:
        setting = rule(case, settings)
        if setting is not None:
            if setting.name == "current" and evidence is not None:
                setting, _ = learned_current(case, settings, setting, rule, evidence)
            settings[setting.name] = setting
        if "current" in settings:
            break
    return settings["current"]


def _points(request: Request, tables: Tables, speaking: dict[str, None]) -> tuple[SchedulePoint, ...]:
    """Return the rows that speak for the curve and were written for its own joint, by thickness."""
    rows: Sequence[TigSchedule | MigSchedule]
    rows = tables.records(TigSchedule if request.process is Process.TIG else MigSchedule)
    found = [
        SchedulePoint(
            row.thickness_mm, row.current_min_a, row.current_max_a, row.basis, row.source_id, row.row_id
        )
        for row in rows
        if row.row_id in speaking
        and row.joint == request.joint
        and row.current_min_a is not None
        and row.current_max_a is not None
    ]
    return tuple(sorted(found, key=lambda point: point.thickness_mm))


def curves_csv(curves: Sequence[CurrentCurve]) -> str:
    """Return every step of each curve, its schedule rows and the person's own welds, always metric."""
    rows: list[Sequence[object]] = [_CSV_COLUMNS]
    for curve in curves:
        steps = zip(curve.thicknesses_mm, curve.low_a, curve.start_a, curve.high_a, strict=True)
        for thickness_mm, low, start, high in steps:
            if not isnan(start):
                figures = (f"{each:.6g}" for each in (thickness_mm, low, start, high))
                rows.append(("advised", curve.title, *figures, "", "", "", ""))
        for point in curve.points:
            figures = (
                f"{each:.6g}" for each in (point.thickness_mm, point.low_a, point.middle_a, point.high_a)
            )
            rows.append(
                ("schedule", curve.title, *figures, point.basis.value, point.source_id, point.row_id, "")
            )
        for weld in curve.own:
            place = (f"{weld.thickness_mm:.6g}", "", f"{weld.current_a:.6g}", "")
            rows.append(("own weld", curve.title, *place, "", "", weld.id, weld.outcome.value))
    return csv_text(rows)
