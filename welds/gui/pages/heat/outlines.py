"""Isotherms of a field as lines and as closed rings."""

from itertools import pairwise
from typing import cast

import numpy as np
from contourpy import FillType, LineType, contour_generator
from numpy.typing import NDArray

Floats = NDArray[np.float64]

HOTTER_THAN_ANY = 1e12
STRAIGHT_MM2 = 1e-9


class Contours:
    """Looks for the places in a grid where the field has a value: rows are `down`, columns `across`."""

    def __init__(self, across_mm: Floats, down_mm: Floats, field: Floats) -> None:
        self._highest = float(field.max())
        self._generator = contour_generator(
            across_mm,
            down_mm,
            np.minimum(field, 1e6),
            line_type=LineType.Separate,
            fill_type=FillType.OuterOffset,
        )

    def lines(self, level: float) -> tuple[Floats, ...]:
        """Return the lines of one value."""
        if not level < self._highest:
            return ()
        return tuple(np.asarray(line) for line in self._generator.lines(level))

    def rings(self, level: float) -> tuple[Floats, ...]:
        """Return the edges of what is above a value, closed along the edge of the grid."""
        if not level < self._highest:
            return ()
        filled = self._generator.filled(level, HOTTER_THAN_ANY)
        points, offsets = cast("tuple[list[Floats], list[NDArray[np.int64]]]", filled)
        return tuple(
            without_straights(np.asarray(each[start:end]))
            for each, starts in zip(points, offsets, strict=True)
            for start, end in pairwise(starts)
        )


def without_straights(ring: Floats) -> Floats:
    """Return a closed ring without the points that lie on a straight line between their neighbours.

    Along the edge of the grid a ring has a point for every cell, and each costs time to paint.
    """
    if len(ring) < 4:
        return ring
    open_ring = ring[:-1] if np.array_equal(ring[0], ring[-1]) else ring
    before, after = open_ring - np.roll(open_ring, 1, axis=0), np.roll(open_ring, -1, axis=0) - open_ring
    bends = np.abs(before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]) > STRAIGHT_MM2
    return open_ring[bends]
