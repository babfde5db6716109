"""How far a bench runs from the tables: a hierarchical normal with censored welds, on a small grid.

Every weld i has a current that would have suited it, at a log ratio to the tables' start for its own joint of
``theta[cell] + error``, error normal with scatter sigma. A weld that worked shows that current, a burnt one
bounds it from above, a cold one from below (Gelman et al., Bayesian Data Analysis, 3rd ed., sections 5.4 and
8.7). Cells share what they have in common: theta is normal around zero (the tables) with standard deviation
tau and a correlation that grows from the bench over process and family to the joint. Sigma and tau are summed
over on a grid (a pair with a hopelessly wide sigma stands for a log that is noise); for each pair the
censored welds enter by expectation propagation (the same book, section 13.8), which is exact where there are
none.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import erf, log, sqrt

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Cell = tuple[str, str, str]
"""Process, metal family, joint."""

SHARES = (0.15, 0.25, 0.30, 0.30)
"""Parts of tau squared: bench as a whole, process, family, joint. A judgement, not a measurement."""

TAUS = np.array([0.02, 0.04, 0.07, 0.10, 0.14, 0.20, 0.28, 0.40])
TAU_SCALE = 0.10
"""Half-normal: benches and tables differ by about a tenth; tables among themselves by 10 to 25 %."""

SIGMAS = np.array([0.08, 0.11, 0.15, 0.20, 0.26, 0.34, 0.45, 0.60])
SIGMA_MIDDLE, SIGMA_SPREAD = 0.15, 0.6
"""Log-normal. The least sigma is a floor: a weld that worked lay somewhere in a workable range that is about
15 % to either side, so that even welds all at one current cannot mark its centre closer than 0.15/sqrt(3)."""

NOISE = 0.3
"""No joint works over so wide a range: from this scatter on the currents in the log have a centre of their
own that says nothing about the bench, and theta keeps its prior."""

SLIP = 0.02
"""Share of bounds that are wrong: a fault that had another cause, or a wrong click."""

SWEEPS, DAMPING = 12, 0.7


@dataclass(frozen=True, slots=True)
class Marks:
    """Welds as numbers: cell index, log ratio, and for welds that worked their weight.

    `side` is 0 for a weld that worked, +1 where the suitable current lies below the ratio, -1 above.
    """

    cell: NDArray[np.int64]
    ratio: Floats
    side: NDArray[np.int64]
    weight: Floats


@dataclass(frozen=True, slots=True)
class Posterior:
    """A mixture of normals for one cell's log ratio, and the mean scatter."""

    weights: Floats
    means: Floats
    deviations: Floats
    scatter: float

    @property
    def mean(self) -> float:
        """Posterior mean."""
        return float(self.weights @ self.means)

    def below(self, value: float) -> float:
        """Return the probability that the log ratio lies below a value."""
        scores = (value - self.means) / self.deviations
        return float(self.weights @ [0.5 * (1.0 + erf(score / sqrt(2.0))) for score in scores])

    def quantile(self, share: float) -> float:
        """Return the log ratio that a share of the probability lies below, by bisection."""
        reach = 8.0 * float(self.deviations.max())
        low, high = float(self.means.min()) - reach, float(self.means.max()) + reach
        for _ in range(40):
            middle = (low + high) / 2.0
            low, high = (middle, high) if self.below(middle) < share else (low, middle)
        return (low + high) / 2.0


def posteriors(cells: Sequence[Cell], marks: Marks) -> list[Posterior]:
    """Return what the marks say about each cell: one reckoning serves all."""
    tau, sigma = (each.ravel() for each in np.meshgrid(TAUS, SIGMAS, indexing="ij"))
    prior = _correlation(cells)
    precision = np.linalg.inv(prior)[None] / tau[:, None, None] ** 2
    log_prior_det = len(cells) * 2.0 * np.log(tau) + np.linalg.slogdet(prior)[1]
    worked = marks.side == 0
    count = np.bincount(marks.cell[worked], marks.weight[worked], len(cells))
    total = np.bincount(marks.cell[worked], marks.weight[worked] * marks.ratio[worked], len(cells))
    square = float(marks.weight[worked] @ marks.ratio[worked] ** 2)
    score = -0.5 * square / sigma**2 - worked.sum() * np.log(sigma)
    mean, spread, site_score = _propagate(
        precision + _diagonal(count / sigma[:, None] ** 2),
        total / sigma[:, None] ** 2,
        sigma,
        (marks.cell[~worked], marks.ratio[~worked], marks.side[~worked]),
    )
    score += site_score - 0.5 * log_prior_det
    score += -0.5 * (tau / TAU_SCALE) ** 2 + np.log(tau)
    score += -0.5 * ((np.log(sigma) - log(SIGMA_MIDDLE)) / SIGMA_SPREAD) ** 2
    weights = np.exp(score - score.max())
    weights /= weights.sum()
    is_noise = sigma >= NOISE
    scatter = float(weights @ sigma)
    return [
        Posterior(
            weights,
            np.where(is_noise, 0.0, mean[:, cell]),
            np.where(is_noise, tau, np.sqrt(spread[:, cell])),
            scatter,
        )
        for cell in range(len(cells))
    ]


def _correlation(cells: Sequence[Cell]) -> Floats:
    bench, process, family, joint = SHARES
    matrix = np.empty((len(cells), len(cells)))
    for row, one in enumerate(cells):
        for column, other in enumerate(cells):
            same_process = one[0] == other[0]
            same_family = same_process and one[1] == other[1]
            matrix[row, column] = (
                bench + process * same_process + family * same_family + joint * (one == other)
            )
    return matrix


def _diagonal(values: Floats) -> Floats:
    return values[:, :, None] * np.eye(values.shape[1])


def _propagate(
    precision: Floats, shift: Floats, sigma: Floats, bounds: tuple[Floats, ...]
) -> tuple[Floats, Floats, Floats]:
    """Return means, variances and log evidence (but for constants) with the bounds worked in.

    Natural parameters throughout; all grid points and all bounds at once, damped.
    """
    cell, ratio, side = bounds
    site_precision = np.zeros((len(sigma), len(ratio)))
    site_shift = np.zeros_like(site_precision)
    log_sites = np.zeros_like(site_precision)
    for sweep in range(SWEEPS if len(ratio) else 1):
        mean, spread, log_total = _solve(precision, shift, cell, site_precision, site_shift)
        if not len(ratio):
            break
        own_mean, own_spread = mean[:, cell], spread[:, cell]
        cavity_precision = 1.0 / own_spread - site_precision
        cavity_shift = own_mean / own_spread - site_shift
        cavity_mean, cavity_spread = cavity_shift / cavity_precision, 1.0 / cavity_precision
        tilted_mean, tilted_spread, log_mass = _tilt(cavity_mean, cavity_spread, ratio, side, sigma[:, None])
        log_sites = (
            log_mass
            + _log_partition(cavity_precision, cavity_shift)
            - _log_partition(1.0 / own_spread, own_mean / own_spread)
        )
        if sweep == SWEEPS - 1:
            break
        new_precision = np.maximum(1.0 / tilted_spread - cavity_precision, 1e-9)
        new_shift = tilted_mean * (new_precision + cavity_precision) - cavity_shift
        site_precision += DAMPING * (new_precision - site_precision)
        site_shift += DAMPING * (new_shift - site_shift)
    return mean, spread, log_total + log_sites.sum(axis=1)


def _solve(
    precision: Floats, shift: Floats, cell: Floats, site_precision: Floats, site_shift: Floats
) -> tuple[Floats, Floats, Floats]:
    place = np.eye(shift.shape[1])[cell.astype(int)]
    full = precision + _diagonal(site_precision @ place)
    pull = shift + site_shift @ place
    covariance = np.linalg.inv(full)
    mean = np.einsum("gij,gj->gi", covariance, pull)
    log_total = 0.5 * np.einsum("gi,gi->g", mean, pull) - 0.5 * np.linalg.slogdet(full)[1]
    return mean, np.einsum("gii->gi", covariance), log_total


def _tilt(
    mean: Floats, spread: Floats, ratio: Floats, side: Floats, sigma: Floats
) -> tuple[Floats, Floats, Floats]:
    """Return mean, variance and log mass of a normal times the chance of one bound."""
    width = np.sqrt(spread + sigma**2)
    score = side * (ratio - mean) / width
    mass = SLIP + (1.0 - 2.0 * SLIP) * _normal_below(score)
    density = (1.0 - 2.0 * SLIP) * np.exp(-0.5 * score**2) / sqrt(2.0 * np.pi)
    slope = -side * density / (mass * width)
    bend = -density * score / (mass * width**2) - slope**2
    return mean + spread * slope, spread + spread**2 * bend, np.log(mass)


def _log_partition(precision: Floats, shift: Floats) -> Floats:
    return 0.5 * shift**2 / precision - 0.5 * np.log(precision)


def _normal_below(score: Floats) -> Floats:
    """Return the normal distribution function, to 1e-7 (Abramowitz and Stegun 7.1.26)."""
    size = np.abs(score) / sqrt(2.0)
    step = 1.0 / (1.0 + 0.3275911 * size)
    series = step * (
        0.254829592
        + step * (-0.284496736 + step * (1.421413741 + step * (-1.453152027 + step * 1.061405429)))
    )
    upper = 0.5 * series * np.exp(-(size**2))
    return np.where(score > 0.0, 1.0 - upper, upper)
