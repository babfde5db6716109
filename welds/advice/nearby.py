"""The lesser figures of schedule rows (rod, flow, travel) read off the rows nearest in thickness."""

from collections import defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from math import exp, log, sqrt
from typing import TypeVar

from welds.advice.pooling import BANDWIDTH, GRADE_WEIGHT
from welds.reference.basis import Basis
from welds.reference.schedules import MigSchedule, TigSchedule

R = TypeVar("R", TigSchedule, MigSchedule)

FARTHEST = 2.5
"""Rows for sheet more than this many times thicker or thinner say nothing about a figure."""


@dataclass(frozen=True, slots=True)
class Nearby:
    """A weighted mean of what the rows print, and the rows."""

    low: float
    start: float
    high: float
    basis: Basis
    rows: tuple[str, ...]
    sources: tuple[str, ...]


def read_nearby(
    rows: Iterable[R], thickness_mm: float, figure: Callable[[R], tuple[float, float] | None]
) -> Nearby | None:
    """Return the figure at a thickness, or None where no near row prints it.

    Weights fall with distance in thickness and with grade. Low and high are the mean ends of the rows,
    farther apart by as much as the rows differ, never beyond what a row prints; the grade is the one that
    carries most.
    """
    weighed: list[tuple[float, R, float, float]] = []
    for row in rows:
        pair = figure(row)
        distance = abs(log(row.thickness_mm / thickness_mm))
        if pair is None or distance > log(FARTHEST):
            continue
        weight = GRADE_WEIGHT[row.basis] * exp(-0.5 * (distance / BANDWIDTH) ** 2)
        low, high = pair
        weighed.append((weight, row, low, high))
    if not weighed:
        return None
    heaviest = max(weight for weight, *_ in weighed)
    weighed = [each for each in weighed if each[0] >= 0.1 * heaviest]
    total = sum(weight for weight, *_ in weighed)
    grades: dict[Basis, float] = defaultdict(float)
    for weight, row, _, _ in weighed:
        grades[row.basis] += weight
    by_weight = sorted(weighed, key=lambda each: -each[0])
    start = sum(weight * (low + high) / 2 for weight, _, low, high in weighed) / total
    apart = sqrt(sum(weight * ((low + high) / 2 - start) ** 2 for weight, _, low, high in weighed) / total)
    mean_low = sum(weight * low for weight, _, low, _ in weighed) / total
    mean_high = sum(weight * high for weight, _, _, high in weighed) / total
    return Nearby(
        max(mean_low - apart, min(low for _, _, low, _ in weighed)),
        start,
        min(mean_high + apart, max(high for _, _, _, high in weighed)),
        max(grades, key=lambda grade: grades[grade]),
        tuple(row.row_id for _, row, _, _ in by_weight)[:8],
        tuple(dict.fromkeys(row.source_id for _, row, _, _ in by_weight)),
    )


def pair_of(low: float | None, high: float | None) -> tuple[float, float] | None:
    """Return both bounds, or None where the row prints none."""
    return None if low is None or high is None else (low, high)
