"""Schedules that disagree, made into one curve with an honest band.

Rows of one process family, brought to a butt joint in flat, are points of current over thickness. The curve
is a weighted local line in logarithms of both: near rows count more than far ones, better grades more than
worse ones, each document has one vote at one thickness, and a row that stands far from all others loses its
weight (Cauchy weights, as in robust regression). The curve never falls with thickness. The band is the width
the documents print for themselves together with the distance between documents.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from welds.reference.basis import Basis

Floats = NDArray[np.float64]

GRADE_WEIGHT = {
    Basis.PRINTED: 1.0,
    Basis.QUOTED: 0.7,
    Basis.DERIVED: 0.6,
    Basis.PRACTICE: 0.25,
    Basis.RECALLED: 0.35,
}
BANDWIDTH = 0.28
"""Reach of a row along the thickness axis: a sheet 1.3 times as thick counts about two thirds."""

USUAL_SLOPE = 0.85
"""Current grows a little slower than thickness; used only where too few rows fix a slope."""

SCATTER = 0.10
"""Relative distance at which a row has lost half its weight."""

OUTRANK = 3.0
"""How strongly published rows nearby push unpublished ones back."""

PUBLISHED_LIMIT, UNPUBLISHED_LIMIT = 0.19, 0.28
PUBLISHED_FLOOR, UNPUBLISHED_FLOOR = 0.10, 0.15
"""Narrowest and widest half band, as a share of the start."""

REACH = 1.18
"""How far beyond the thinnest and thickest row the curve is used, as a ratio."""

GRID_STEP = 0.01


@dataclass(frozen=True, slots=True)
class Point:
    """One schedule row brought to the curve's own case."""

    row_id: str
    document: str
    basis: Basis
    thickness_mm: float
    low: float
    high: float

    @property
    def middle(self) -> float:
        """The row's middle."""
        return (self.low + self.high) / 2.0


@dataclass(frozen=True, slots=True)
class Reading:
    """The curve at one thickness."""

    low: float
    middle: float
    high: float
    basis: Basis
    points: tuple[Point, ...]
    by_document: Mapping[str, float]
    """What each speaking document says by itself, most weight first."""

    @property
    def documents(self) -> tuple[str, ...]:
        """The documents that speak, most weight first."""
        return tuple(self.by_document)

    def scaled(self, factor: float) -> "Reading":
        """Return the reading with every current multiplied."""
        alone = {document: value * factor for document, value in self.by_document.items()}
        return replace(
            self,
            low=self.low * factor,
            middle=self.middle * factor,
            high=self.high * factor,
            by_document=alone,
        )


class Curve:
    """Pooled current over thickness; read it with `at`."""

    def __init__(self, points: Iterable[Point]) -> None:
        self._points = tuple(points)
        self._voices: dict[int, tuple[Basis, tuple[Point, ...], dict[str, float]]] = {}
        if not self._points:
            raise ValueError("a curve needs at least one point")
        thickness = np.log([point.thickness_mm for point in self._points])
        level = np.log([point.middle for point in self._points])
        votes = Counter((point.document, point.thickness_mm) for point in self._points)
        weight = np.array(
            [GRADE_WEIGHT[each.basis] / votes[each.document, each.thickness_mm] for each in self._points]
        )
        reach = np.log(REACH)
        self.thinnest_mm = float(np.exp(thickness.min()))
        self.thickest_mm = float(np.exp(thickness.max()))
        steps = int(np.ceil((np.ptp(thickness) + 2 * reach) / GRID_STEP)) + 1
        self._grid = np.linspace(thickness.min() - reach, thickness.max() + reach, steps)
        kernel = np.exp(-0.5 * ((thickness - self._grid[:, None]) / BANDWIDTH) ** 2)
        kernel += 1e-4 * np.exp(-0.5 * (thickness - self._grid[:, None]) ** 2)
        published = np.array([point.basis.is_published for point in self._points])
        support = (kernel * published * weight).sum(axis=1)
        self._said = said = kernel * weight
        shares = said.copy()
        shares[:, ~published] /= 1.0 + OUTRANK * support[:, None]
        self._level, robust = self._fit(thickness, level, shares)
        self._shares = shares * robust
        width, self._is_published = self._widths(thickness, level, published, said)
        # Narrowed where needed so that low and high never fall with thickness either.
        self._low = np.maximum.accumulate(self._level + np.log1p(-width))
        self._high = np.minimum.accumulate((self._level + np.log1p(width))[::-1])[::-1]

    def _fit(self, thickness: Floats, level: Floats, shares: Floats) -> tuple[Floats, Floats]:
        robust = np.ones_like(level)
        curve = np.zeros_like(self._grid)
        offset = thickness - self._grid[:, None]
        for _ in range(4):
            weights = shares * robust
            total = weights.sum(axis=1)
            pull = 0.02 * total
            first = (weights * offset).sum(axis=1)
            second = (weights * offset**2).sum(axis=1) + pull
            level_sum = (weights * level).sum(axis=1)
            slope_sum = (weights * offset * level).sum(axis=1) + pull * USUAL_SLOPE
            curve = (second * level_sum - first * slope_sum) / (total * second - first**2)
            distance = level - np.interp(thickness, self._grid, curve)
            robust = 1.0 / (1.0 + (distance / SCATTER) ** 2)
        return np.maximum.accumulate(curve), robust

    def _widths(
        self, thickness: Floats, level: Floats, published: NDArray[np.bool_], said: Floats
    ) -> tuple[Floats, NDArray[np.bool_]]:
        own = np.array([(each.high - each.low) / (each.high + each.low) for each in self._points])
        self._distance = distance = level - np.interp(thickness, self._grid, self._level)
        total, all_said = self._shares.sum(axis=1), said.sum(axis=1)
        # Disagreement counts every row by its grade, also those the level was not drawn towards.
        width = np.sqrt(
            (self._shares * own).sum(axis=1) ** 2 / total**2 + (said * distance**2).sum(axis=1) / all_said
        )
        is_published = (self._shares * published).sum(axis=1) >= 0.35 * total
        low = np.where(is_published, PUBLISHED_FLOOR, UNPUBLISHED_FLOOR)
        high = np.where(is_published, PUBLISHED_LIMIT, UNPUBLISHED_LIMIT)
        return np.clip(width, low, high), is_published

    def covers(self, thickness_mm: float) -> bool:
        """Say whether the thickness lies within the rows' reach."""
        return self.thinnest_mm / REACH <= thickness_mm <= self.thickest_mm * REACH

    def middle(self, thickness_mm: float) -> float:
        """Return the curve's level alone; beyond its reach the end value."""
        return self._value(thickness_mm, self._level)

    def _value(self, thickness_mm: float, curve: Floats) -> float:
        return float(np.exp(np.interp(np.log(thickness_mm), self._grid, curve)))

    def at(self, thickness_mm: float) -> Reading:
        """Return level, band, grade and the rows that carry them."""
        place = min(int(np.searchsorted(self._grid, np.log(thickness_mm))), len(self._grid) - 1)
        if place not in self._voices:
            self._voices[place] = self._voices_at(place)
        basis, speaking, ratios = self._voices[place]
        low, middle, high = (self._value(thickness_mm, each) for each in (self._low, self._level, self._high))
        alone = {document: middle * ratio for document, ratio in ratios.items()}
        return Reading(low, middle, high, basis, speaking, alone)

    def _voices_at(self, place: int) -> tuple[Basis, tuple[Point, ...], dict[str, float]]:
        """Return grade, rows by weight, and each document's own level over the pooled one."""
        shares, said = self._shares[place], self._said[place]
        order = np.argsort(-shares)
        enough = 0.04 * shares.sum()
        speaking = tuple(self._points[index] for index in order if shares[index] >= enough)[:8]
        grades: dict[Basis, float] = defaultdict(float)
        for index in order:
            grades[self._points[index].basis] += float(shares[index])
        published = bool(self._is_published[place])
        candidates = [grade for grade in grades if grade.is_published == published] or list(grades)
        ratios = {}
        for document in dict.fromkeys(point.document for point in speaking):
            own = np.array([point.document == document for point in self._points]) * said
            ratios[document] = float(np.exp((own * self._distance).sum() / own.sum()))
        return max(candidates, key=lambda grade: grades[grade]), speaking, ratios
