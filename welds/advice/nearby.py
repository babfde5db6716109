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

LIGHTEST = 0.1
"""Rows with less than this share of the heaviest row's weight are left out."""


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
    thinnest, thickest = thickness_mm / FARTHEST, thickness_mm * FARTHEST
    for row in rows:
        if not thinnest <= row.thickness_mm <= thickest:
            continue
        pair = figure(row)
        if pair is not None:
            distance = log(row.thickness_mm / thickness_mm) / BANDWIDTH
            weighed.append((GRADE_WEIGHT[row.basis] * exp(-0.5 * distance * distance), row, pair[0], pair[1]))
    if not weighed:
        return None
    weighed.sort(key=lambda each: -each[0])
    heaviest = weighed[0][0]
    weighed = [each for each in weighed if each[0] >= LIGHTEST * heaviest]
    total = sum_low = sum_high = sum_squares = 0.0
    grades: dict[Basis, float] = defaultdict(float)
    for weight, row, low, high in weighed:
        middle = (low + high) / 2
        total += weight
        sum_low += weight * low
        sum_high += weight * high
        sum_squares += weight * middle * middle
        grades[row.basis] += weight
    mean_low, mean_high = sum_low / total, sum_high / total
    start = (mean_low + mean_high) / 2
    apart = sqrt(max(0.0, sum_squares / total - start * start))
    lowest = max(mean_low - apart, min(low for _, _, low, _ in weighed))
    highest = min(mean_high + apart, max(high for _, _, _, high in weighed))
    return Nearby(
        lowest,
        # A mean of equal figures may miss them by the dust of binary arithmetic.
        min(max(start, lowest), highest),
        highest,
        max(grades, key=lambda grade: grades[grade]),
        tuple(row.row_id for _, row, _, _ in weighed[:8]),
        tuple(dict.fromkeys(row.source_id for _, row, _, _ in weighed)),
    )


def pair_of(low: float | None, high: float | None) -> tuple[float, float] | None:
    """Return both bounds, or None where the row prints none."""
    return None if low is None or high is None else (low, high)
