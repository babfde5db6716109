r"""Temperature under a distributed source that moves steadily over a plate of finite thickness.

Heat laid down a time `t` ago has spread by conduction into a Gaussian cloud, wider by :math:`2 \alpha t` in
variance and mirrored in both faces. The field is the sum over all such ages, and each term is a product of
one function of x, one of y and one of z; so a whole picture is a matrix product, not an integral for each
point.
"""

from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from welds.errors import OutsideValidityError
from welds.language import tr

Floats = NDArray[np.float64]

YOUNGEST = 1e-3
"""Youngest age counted, as a share of the time heat takes across the spot; what is younger is closed form."""

OLDEST = 18.0
"""Oldest age counted, in units of the time after which a cloud has fallen far behind the source."""

STEP, STEP_IN_CLOUDS = 0.16, 0.65
"""Longest step between ages on a logarithmic scale, also as a share of the time a cloud takes to pass."""

PASSAGE, PASSAGE_START = 44, 0.25
"""Places at which a passing source is looked at, and the first step between them in spot radii."""

DEPTHS = 28
SLICE = 2**18
"""Multiplications up to which a matrix product stays on one thread."""

REFLECTIONS = 2
SWITCH = 0.3
"""Fourier number from which the cosine series across the plate is shorter than the sum of reflections;
on either side of it two terms leave out less than a millionth."""


@dataclass(frozen=True)
class MovingSource:
    """Power, speed, plate and spot, in mm, s and W.

    `radius_mm` is the standard deviation of the spot on the surface, `depth_mm` that of the heat placed below
    it (0 for an arc that only touches), `loss_w_m2k` what both faces together lose per area, `reach_mm` how
    far from the weld line the field is wanted.
    Source: [EAGAR-TSAI], with reflections as in [GRONG] and depth as in [GOLDAK].
    """

    power_w: float
    speed_mm_s: float
    conductivity_w_mk: float
    volumetric_heat_j_m3k: float
    thickness_mm: float
    radius_mm: float
    depth_mm: float = 0.0
    loss_w_m2k: float = 0.0
    reach_mm: float = 20.0

    def __post_init__(self) -> None:
        for name in (
            *("power_w", "speed_mm_s", "conductivity_w_mk", "volumetric_heat_j_m3k"),
            *("thickness_mm", "radius_mm"),
        ):
            if not getattr(self, name) > 0.0:
                raise OutsideValidityError(name, getattr(self, name), tr("above zero"))

    @property
    def diffusivity_mm2_s(self) -> float:
        """Conductivity over volumetric heat."""
        return 1e6 * self.conductivity_w_mk / self.volumetric_heat_j_m3k

    @cached_property
    def _grid(self) -> tuple[Floats, Floats]:
        """Ages and the seconds each stands for."""
        alpha, is_flat = self.diffusivity_mm2_s, self.depth_mm == 0.0
        return _age_grid(
            alpha, self.speed_mm_s, self.radius_mm, self.thickness_mm, self.reach_mm, is_flat=is_flat
        )

    @property
    def _ages(self) -> Floats:
        return self._grid[0]

    @cached_property
    def _spread(self) -> Floats:
        """Variance of each cloud in the plane of the plate."""
        return self.radius_mm**2 + 2.0 * self.diffusivity_mm2_s * self._ages

    @cached_property
    def _strength(self) -> Floats:
        ages, seconds = self._grid
        heat = self.power_w / (self.volumetric_heat_j_m3k * 1e-9)
        fade = self.loss_w_m2k * 1e3 / (self.volumetric_heat_j_m3k * self.thickness_mm)
        return heat * seconds / (2.0 * np.pi * self._spread) * np.exp(-fade * ages)

    def _along(self, ahead_mm: ArrayLike) -> Floats:
        shift = np.asarray(ahead_mm, dtype=np.float64)[..., None] + self.speed_mm_s * self._ages
        return self._strength * np.exp(-(shift**2) / (2.0 * self._spread))

    def _aside(self, aside_mm: ArrayLike) -> Floats:
        return np.exp(-(np.asarray(aside_mm, dtype=np.float64)[..., None] ** 2) / (2.0 * self._spread))

    def _below(self, below_mm: ArrayLike) -> Floats:
        depth = np.asarray(below_mm, dtype=np.float64)[..., None]
        thickness = self.thickness_mm
        spread = 4.0 * self.diffusivity_mm2_s * self._ages + 2.0 * self.depth_mm**2
        young = spread < 4.0 * SWITCH * thickness**2
        found = np.empty(np.broadcast_shapes(depth.shape, spread.shape))
        narrow, wide = spread[young], spread[~young]
        reflections = range(-REFLECTIONS, REFLECTIONS + 1)
        clouds = sum(np.exp(-((depth - 2.0 * n * thickness) ** 2) / narrow) for n in reflections)
        found[..., young] = 2.0 / np.sqrt(np.pi * narrow) * clouds
        waves = [n * np.pi / thickness for n in range(1, REFLECTIONS + 1)]
        ripple = sum(np.cos(wave * depth) * np.exp(-(wave**2) * wide / 4.0) for wave in waves)
        found[..., ~young] = (1.0 + 2.0 * ripple) / thickness
        return found

    def at(self, ahead_mm: ArrayLike, aside_mm: ArrayLike, below_mm: ArrayLike) -> Floats:
        """Return the rise at points given by three arrays of one shape. [K]."""
        terms = self._along(ahead_mm) * self._aside(aside_mm) * self._below(below_mm)
        return terms.sum(axis=-1)

    def section(self, ahead_mm: float, aside_mm: Floats, below_mm: Floats) -> Floats:
        """Return the rise in a plane across the weld: rows are depths, columns distances aside. [K]."""
        return _product(self._below(below_mm), (self._along(ahead_mm) * self._aside(aside_mm)).T)

    def plan(self, ahead_mm: Floats, aside_mm: Floats, below_mm: float) -> Floats:
        """Return the rise in a plane along the plate: rows are distances aside, columns ahead. [K]."""
        return _product(self._aside(aside_mm), (self._along(ahead_mm) * self._below(below_mm)).T)

    def peak_section(self, aside_mm: Floats, below_mm: Floats) -> Floats:
        """Return the highest rise each point of a section ever sees while the source passes. [K].

        The passage is searched at places spaced ever wider behind the source, the top between them being that
        of a Gaussian; through the plate the tops are found at Chebyshev depths and joined by a polynomial.
        """
        is_few = len(below_mm) <= DEPTHS
        depths = below_mm if is_few else _chebyshev_depths(float(below_mm.min()), float(below_mm.max()))
        passage = self._passage(float(np.abs(aside_mm).max()))
        along, aside = (each.astype(np.float32) for each in (self._along(passage), self._aside(aside_mm)))
        rows = (along[:, None, :] * aside).reshape(-1, along.shape[1])
        field = _product(rows, self._below(depths).T.astype(np.float32)).reshape(len(along), len(aside), -1)
        top = _top(field).T.astype(np.float64)
        return top if is_few else _through(depths, below_mm) @ top

    def peak_rise(self, below_mm: float) -> float:
        """Return the highest rise a point straight under the weld line ever sees. [K]."""
        return float(self.peak_section(np.zeros(1), np.array([below_mm]))[0, 0])

    def _passage(self, widest_mm: float) -> Floats:
        """Places from just ahead of the source to where a point this far aside has seen its highest."""
        spread = widest_mm**2 + self.radius_mm**2 + self.thickness_mm**2
        longest = 4.0 * self.radius_mm + self.speed_mm_s * spread / self.diffusivity_mm2_s
        nearest = PASSAGE_START * self.radius_mm
        return self.radius_mm + nearest - np.exp(np.linspace(np.log(nearest), np.log(longest), PASSAGE))


@lru_cache(maxsize=64)
def _age_grid(
    alpha: float, speed: float, radius: float, thickness: float, reach: float, *, is_flat: bool
) -> tuple[Floats, Floats]:
    """Return ages and the seconds each stands for: a trapezoidal rule, evenly spaced in a smooth variable.

    Kept, because neither power nor depth of the heat changes it: a search for a current asks for one many
    times.
    """
    youngest = YOUNGEST * min(radius, thickness) ** 2 / alpha
    oldest = OLDEST * (4.0 * alpha / speed**2 + radius / speed)
    oldest += reach**2 / alpha + 2.0 * reach / speed
    logs = np.linspace(np.log(youngest), np.log(oldest), 400)
    fine = np.exp(logs)
    passing = np.sqrt(radius**2 + 2.0 * alpha * fine) / speed
    steps_each = np.hypot(1.0 / STEP, fine / (STEP_IN_CLOUDS * passing))
    steps = (steps_each[1:] + steps_each[:-1]) / 2.0 * (logs[1] - logs[0])
    counted = np.concatenate([[0.0], np.cumsum(steps)])
    count = int(counted[-1]) + 2
    log_ages = np.interp(np.linspace(0.0, counted[-1], count), counted, logs)
    ages = np.exp(log_ages)
    seconds = ages / np.interp(log_ages, logs, steps_each) * counted[-1] / (count - 1)
    seconds[[0, -1]] /= 2.0
    seconds[0] += (2.0 if is_flat else 1.0) * ages[0]
    ages.flags.writeable = seconds.flags.writeable = False
    return ages, seconds


def _product(left: NDArray[Any], right: NDArray[Any]) -> NDArray[Any]:
    """Return the matrix product in slices too small for the library to share out among threads.

    Where other work keeps the cores busy, waiting for those threads takes many times the product itself.
    """
    rows = max(1, SLICE // right.size)
    found = np.empty((left.shape[0], right.shape[1]), left.dtype)
    for start in range(0, left.shape[0], rows):
        np.matmul(left[start : start + rows], right, out=found[start : start + rows])
    return found


def _chebyshev_depths(top_mm: float, bottom_mm: float) -> Floats:
    turn = np.pi * np.arange(DEPTHS) / (DEPTHS - 1)
    return top_mm + (bottom_mm - top_mm) * (1.0 - np.cos(turn)) / 2.0


def _through(nodes: Floats, wanted: Floats) -> Floats:
    """Return the matrix that carries values at Chebyshev nodes to other depths (barycentric formula)."""
    sign = np.where(np.arange(len(nodes)) % 2 == 0, 1.0, -1.0)
    sign[[0, -1]] /= 2.0
    distance = wanted[:, None] - nodes
    hits = np.abs(distance) < 1e-12 * (nodes[-1] - nodes[0])
    ratio = sign / np.where(hits, 1.0, distance)
    matrix = ratio / ratio.sum(axis=1, keepdims=True)
    return np.where(hits.any(axis=1, keepdims=True), hits, matrix)


def _top(field: NDArray[np.float32]) -> NDArray[np.float32]:
    """Return the maximum over the first axis, refined by a Gaussian through its neighbours."""
    best = np.clip(field.argmax(axis=0), 1, field.shape[0] - 2)[None]
    before, middle, after = (np.take_along_axis(field, best + step, axis=0)[0] for step in (-1, 0, 1))
    tiny = np.float32(1e-30)
    rise, fall = np.log((middle + tiny) / (before + tiny)), np.log((middle + tiny) / (after + tiny))
    bend = np.maximum(rise + fall, tiny)
    lift = np.where((rise > 0.0) & (fall > 0.0), (rise - fall) ** 2 / (8.0 * bend), 0.0)
    return np.maximum(middle, np.maximum(before, after)) * np.exp(lift)
