"""What a painter needs: temperatures over the section and over the face, and their isotherms as lines."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from welds.advice.heat.bead import Bead

Floats = NDArray[np.float64]
Line = Floats
"""One isotherm, or a piece of one: rows of two coordinates in mm."""

CELLS = 200
MARGIN = 1.6
"""Half width shown, as a multiple of the widest half zone."""

LEAST_HALF_MM, LARGEST_HALF_MM = 4.0, 40.0
POOL_AHEAD = 0.6


@dataclass(frozen=True, slots=True)
class Field:
    """Temperatures on a grid: one row for each `down_mm`, one column for each `across_mm`."""

    across_mm: Floats
    down_mm: Floats
    temperature_c: Floats

    def isotherm(self, temperature_c: float) -> list[Line]:
        """Return the lines of one temperature."""
        from contourpy import contour_generator

        lines = contour_generator(self.across_mm, self.down_mm, self.temperature_c).lines(temperature_c)
        return [np.asarray(line) for line in lines]


def section(bead: Bead, cells: int = CELLS) -> Field:
    """Return the peak temperature over the section: across from the weld line, down from the face.

    The isotherm of the melting temperature is the fused zone, that of `bead.affected_c` the heat-affected
    one.
    """
    half = _half_width_mm(bead)
    down = np.linspace(0.0, bead.model.thickness_mm, cells)
    across = np.linspace(-half, half, cells)
    beside_gap = _beside_gap(bead, across)
    source = bead.source
    if source is None:
        return Field(beside_gap, down, np.full((cells, cells), bead.model.start_c))
    right = source.peak_section(across[cells // 2 :], down)
    rises = np.concatenate([right[:, cells % 2 :][:, ::-1], right], axis=1)
    return Field(beside_gap, down, bead.model.start_c + rises)


def plan(bead: Bead, below_mm: float = 0.0, cells: int = CELLS) -> Field:
    """Return the temperature over the face while the arc stands at 0: across along the travel, down aside."""
    half = _half_width_mm(bead)
    length = max(2.0 * half, 1.3 * bead.pool_length_mm)
    along = np.linspace(-length, POOL_AHEAD * half, cells)
    aside = np.linspace(-half, half, cells)
    beside_gap = _beside_gap(bead, aside)
    source = bead.source
    if source is None:
        return Field(along, beside_gap, np.full((cells, cells), bead.model.start_c))
    right = source.plan(along, aside[cells // 2 :], below_mm)
    rises = np.concatenate([right[cells % 2 :][::-1], right])
    return Field(along, beside_gap, bead.model.start_c + rises)


def picture_json(bead: Bead, points: int = 60) -> dict[str, object]:
    """Return the isotherms of both pictures as lists of points, thinned to about `points` each."""
    levels = {"melting": bead.model.metal.melting_c}
    if bead.affected_c is not None:
        levels["affected"] = bead.affected_c
    views = {"section": section(bead), "pool": plan(bead)}
    return {
        "thickness_mm": bead.model.thickness_mm,
        **{
            name: [
                {"role": role, "temperature_c": level, "points_mm": _thinned(line, points)}
                for role, level in levels.items()
                for line in field.isotherm(level)
            ]
            for name, field in views.items()
        },
    }


def _beside_gap(bead: Bead, places: Floats) -> Floats:
    """Return places counted from the weld line where those given are counted from the edge of a gap."""
    return places + np.sign(places) * bead.model.gap_mm / 2.0


def _half_width_mm(bead: Bead) -> float:
    zone = bead.fused_width_mm / 2.0 + (bead.heat_affected_width_mm or 0.0)
    return min(max(MARGIN * zone, 1.5 * bead.model.thickness_mm, LEAST_HALF_MM), LARGEST_HALF_MM)


def _thinned(line: Line, points: int) -> list[list[float]]:
    step = max(1, len(line) // points)
    kept = [*range(0, len(line) - 1, step), len(line) - 1]
    return [[round(float(x), 3), round(float(y), 3)] for x, y in line[kept]]
