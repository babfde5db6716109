"""MIG schedule rows as curves of current over thickness, and the laws of voltage and wire feed."""

from collections import defaultdict
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import log, sqrt

import numpy as np

from welds.advice.factors import joint_factor
from welds.advice.pooling import GRADE_WEIGHT, Curve, Point
from welds.advice.request import Joint, Process, Transfer
from welds.physics.wire import wire_area
from welds.reference.schedules import MigSchedule
from welds.reference.tables import Tables

REFERENCE_WIRE_MM = 0.9
"""Curves are kept for this wire; others are reached by the wire exponent."""

USUAL_WIRE_EXPONENT = 0.4
USUAL_EXPONENT_WEIGHT = 2.0
"""How current grows with wire at one thickness, and how many pairs of rows that belief is worth."""

EXTENSION_MM = {
    Transfer.SHORT_CIRCUIT: 10.0,
    Transfer.GLOBULAR: 16.0,
    Transfer.SPRAY: 18.0,
    Transfer.PULSED: 18.0,
}
"""Wire beyond the tip that the melting law is fitted and used with (AWS handbook range, middle)."""

USUAL_VOLT_SLOPE = 0.04


@dataclass(frozen=True, slots=True)
class Bench:
    """What the rows of one curve have in common."""

    family: str
    transfer: str


@dataclass(frozen=True, slots=True)
class VoltLine:
    """Arc voltage over current for one gas: volts at zero, volts per ampere, typical distance of rows."""

    at_zero_v: float
    slope_v_a: float
    scatter_v: float
    rows: tuple[MigSchedule, ...]


@dataclass(frozen=True, slots=True)
class MeltLaw:
    """The two constants of the melting law and the typical relative distance of rows from it."""

    arc_mm3_as: float
    resistance_mm4_a2s: float
    scatter: float
    rows: tuple[MigSchedule, ...]


@dataclass(frozen=True, slots=True)
class MigSeams:
    """Everything fitted to the seam rows of the MIG table."""

    rows: Mapping[Bench, tuple[MigSchedule, ...]]
    curves: Mapping[Bench, Curve]
    wire_exponent: Mapping[Bench, float]
    volt_lines: Mapping[tuple[Bench, str], VoltLine]
    melt_laws: Mapping[Bench, MeltLaw]


def middle(low: float | None, high: float | None) -> float | None:
    """Return the middle of a printed range, or None where none is printed."""
    return None if low is None or high is None else (low + high) / 2.0


def thickness_of(row: MigSchedule) -> float:
    """Return the row's thickness; the geometric middle where it prints a range."""
    return row.thickness_mm if row.thickness_max_mm is None else sqrt(row.thickness_mm * row.thickness_max_mm)


def wire_of(row: MigSchedule) -> float | None:
    """Return the row's wire; the geometric middle where it prints two."""
    if row.wire_mm is None or row.wire_max_mm is None:
        return row.wire_mm
    return sqrt(row.wire_mm * row.wire_max_mm)


def build_mig_seams(tables: Tables) -> MigSeams:
    """Fit curves, voltage lines and melting laws from the pooled seam rows."""
    return fit_mig_seams(tables, lambda row: True)


def fit_mig_seams(
    tables: Tables, keep: Callable[[MigSchedule], bool], without: str | None = None
) -> MigSeams:
    """Fit from some of the rows; `without` also leaves a document's joint factors out."""
    rows: dict[Bench, list[MigSchedule]] = defaultdict(list)
    for row in tables.records(MigSchedule):
        if row.use == "pooled" and row.kind == "seam" and keep(row):
            rows[Bench(row.family, row.transfer)].append(row)
    exponents = {bench: _wire_exponent(each) for bench, each in rows.items()}
    curves, lines, laws = {}, {}, {}
    for bench, each in rows.items():
        curves[bench] = Curve(_point(tables, row, exponents[bench], without) for row in each)
        for gas in {row.gas for row in each}:
            line = _volt_line([row for row in each if row.gas == gas])
            if line is not None:
                lines[bench, gas] = line
        law = _melt_law(each, EXTENSION_MM[Transfer(bench.transfer)])
        if law is not None:
            laws[bench] = law
    return MigSeams({bench: tuple(each) for bench, each in rows.items()}, curves, exponents, lines, laws)


def _point(tables: Tables, row: MigSchedule, exponent: float, without: str | None) -> Point:
    factor = joint_factor(tables, Process.MIG, row.family, "any", Joint(row.joint), without=without).value
    wire = wire_of(row)
    if wire is not None:
        factor *= (wire / REFERENCE_WIRE_MM) ** exponent
    return Point(
        row.row_id,
        row.source_id,
        row.basis,
        thickness_of(row),
        row.current_min_a / factor,
        row.current_max_a / factor,
    )


def _wire_exponent(rows: list[MigSchedule]) -> float:
    """Return how current grows with wire, from pairs of rows alike but for the wire."""
    slopes = []
    for one in rows:
        for other in rows:
            thin, thick = wire_of(one), wire_of(other)
            alike = (one.source_id, one.joint, one.thickness_mm, one.gas) == (
                other.source_id,
                other.joint,
                other.thickness_mm,
                other.gas,
            )
            if alike and thin is not None and thick is not None and thick > thin * 1.05:
                ratio = (other.current_min_a + other.current_max_a) / (one.current_min_a + one.current_max_a)
                slopes.append(log(ratio) / log(thick / thin))
    mean = (sum(slopes) + USUAL_EXPONENT_WEIGHT * USUAL_WIRE_EXPONENT) / (len(slopes) + USUAL_EXPONENT_WEIGHT)
    return min(1.0, max(0.0, mean))


def _volt_line(rows: list[MigSchedule]) -> VoltLine | None:
    """Return a line through the rows' middles, its slope held near the usual one where rows are few."""
    found = [
        (mean, (row.current_min_a + row.current_max_a) / 2.0, GRADE_WEIGHT[row.basis], row)
        for row in rows
        if (mean := middle(row.voltage_min_v, row.voltage_max_v)) is not None
    ]
    if not found:
        return None
    volts, amps, weights = np.array([each[:3] for each in found]).T
    mean_volts, mean_amps = np.average(volts, weights=weights), np.average(amps, weights=weights)
    steadiness = 2.0 * 40.0**2 * weights.mean()
    slope = ((weights * (amps - mean_amps) * (volts - mean_volts)).sum() + steadiness * USUAL_VOLT_SLOPE) / (
        (weights * (amps - mean_amps) ** 2).sum() + steadiness
    )
    at_zero = mean_volts - slope * mean_amps
    scatter = sqrt(float(np.average((volts - at_zero - slope * amps) ** 2, weights=weights)))
    return VoltLine(float(at_zero), float(slope), scatter, tuple(each[3] for each in found))


def _melt_law(rows: list[MigSchedule], extension_mm: float) -> MeltLaw | None:
    """Return the non-negative constants that fit wire feed over current best in relative terms."""
    found = [
        (feed * 1000.0 / 60.0, (row.current_min_a + row.current_max_a) / 2.0, wire_area(wire), row)
        for row in rows
        if (feed := middle(row.feed_min_m_min, row.feed_max_m_min)) is not None
        and (wire := wire_of(row)) is not None
    ]
    if len(found) < 3:
        return None
    feeds, amps, area = np.array([each[:3] for each in found]).T
    terms = np.column_stack([amps / area, extension_mm * (amps / area) ** 2]) / feeds[:, None]
    both, *_ = np.linalg.lstsq(terms, np.ones(len(found)), rcond=None)
    if both[0] <= 0.0 or both[1] < 0.0:
        both = np.array([terms[:, 0].sum() / (terms[:, 0] ** 2).sum(), 0.0])
    scatter = float(np.sqrt(np.mean((terms @ both - 1.0) ** 2)))
    return MeltLaw(float(both[0]), float(both[1]), scatter, tuple(each[3] for each in found))
