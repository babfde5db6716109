"""The parts of the posterior, each against an integral or a table from elsewhere."""

from math import erf, exp, log, pi, sqrt

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.stats import norm

from welds.advice.bench_posterior import (
    SIGMAS,
    SLIP,
    TAUS,
    Marks,
    Posterior,
    _correlation,
    _normal_below,
    _tilt,
    posteriors,
)

CELL = ("tig", "aluminium", "butt")
NOTHING = Marks(np.array([], dtype=int), np.array([]), np.array([], dtype=int), np.array([]))


def of(ratios, sides=None, weights=None):
    count = len(ratios)
    return Marks(
        np.zeros(count, dtype=int),
        np.array(ratios, dtype=float),
        np.array(sides or [0] * count),
        np.array(weights or [1.0] * count),
    )


def test_the_normal_distribution_to_seven_digits():
    """math.erf, another implementation."""
    score = np.linspace(-7.0, 7.0, 561)
    exact = [0.5 * (1.0 + erf(each / sqrt(2.0))) for each in score]
    np.testing.assert_allclose(_normal_below(score), exact, atol=1e-7)


@pytest.mark.parametrize("side", [1, -1])
@pytest.mark.parametrize("ratio", [-0.3, 0.0, 0.25])
def test_one_bound_as_by_quadrature(side, ratio):
    """Mass, mean and variance of a normal times SLIP + (1 - 2 SLIP) Phi(side (ratio - theta) / sigma)."""
    mean, spread, sigma = 0.05, 0.02, 0.15

    def moment(power):
        def integrand(theta):
            normal = exp(-((theta - mean) ** 2) / (2.0 * spread)) / sqrt(2.0 * pi * spread)
            chance = SLIP + (1.0 - 2.0 * SLIP) * norm.cdf(side * (ratio - theta) / sigma)
            return theta**power * normal * chance

        return quad(integrand, -2.0, 2.0, points=[mean, ratio], epsabs=1e-12)[0]

    mass, first, second = (moment(power) for power in (0, 1, 2))
    found = _tilt(
        np.array([mean]), np.array([spread]), np.array([ratio]), np.array([side]), np.array([sigma])
    )
    by_hand = (first / mass, second / mass - (first / mass) ** 2, log(mass))
    assert [float(each[0]) for each in found] == pytest.approx(by_hand, abs=2e-6)


def test_cells_share_what_they_have_in_common():
    """The bench 0.15, process 0.25, family 0.30, joint 0.30 of the variance."""
    cells = [CELL, ("tig", "aluminium", "tee"), ("tig", "stainless", "butt"), ("mig", "aluminium", "butt")]
    np.testing.assert_allclose(
        _correlation(cells),
        [[1.0, 0.7, 0.4, 0.15], [0.7, 1.0, 0.4, 0.15], [0.4, 0.4, 1.0, 0.15], [0.15, 0.15, 0.15, 1.0]],
    )


def test_quantiles_of_one_normal_and_of_two():
    """Tables: 1.95996 deviations hold 95 %; of two alike to either side of zero, half lies below it."""
    one = Posterior(np.array([1.0]), np.array([0.3]), np.array([0.1]), 0.2)
    assert one.mean == pytest.approx(0.3)
    assert one.quantile(0.975) == pytest.approx(0.3 + 0.195996, abs=1e-6)
    assert one.quantile(0.025) == pytest.approx(0.3 - 0.195996, abs=1e-6)
    assert one.below(0.4) == pytest.approx(0.841345, abs=1e-6)
    two = Posterior(np.array([0.5, 0.5]), np.array([-0.4, 0.4]), np.array([0.05, 0.05]), 0.2)
    assert two.below(0.0) == pytest.approx(0.5)
    assert two.quantile(0.25) == pytest.approx(-0.4, abs=1e-6)
    uneven = Posterior(np.array([0.2, 0.8]), np.array([-0.4, 0.4]), np.array([0.01, 0.3]), 0.2)
    assert uneven.mean == pytest.approx(0.24)
    assert uneven.below(uneven.quantile(0.9)) == pytest.approx(0.9, abs=1e-6)


def prior(grid, of_one):
    weights = np.array([of_one(each) for each in grid])
    return weights / weights.sum()


def test_without_welds_the_prior_stands():
    """Half-normal tau of 0.10 and log-normal sigma about 0.15, each on its own grid of ratios."""
    found = posteriors([CELL], NOTHING)[0]
    taus = prior(TAUS, lambda tau: exp(-0.5 * (tau / 0.10) ** 2) * tau)
    sigmas = prior(SIGMAS, lambda sigma: exp(-0.5 * (log(sigma / 0.15) / 0.6) ** 2))
    np.testing.assert_allclose(found.weights, np.outer(taus, sigmas).ravel(), rtol=1e-9)
    np.testing.assert_allclose(found.means, 0.0, atol=1e-12)
    np.testing.assert_allclose(found.deviations, np.repeat(TAUS, len(SIGMAS)), rtol=1e-9)
    assert found.scatter == pytest.approx(float(sigmas @ SIGMAS))


def test_welds_that_agree_are_a_steady_hand_and_welds_that_differ_are_not():
    found = [posteriors([CELL], of(ratios))[0].scatter for ratios in ([0.1] * 12, [-0.4, 0.5, 0.1, -0.2] * 3)]
    assert found[0] < 0.12
    assert 0.25 < found[1] < 0.45


def test_scatter_of_good_welds_as_by_the_textbook_s_sum():
    """One cell, all good: sum tau and sigma over their grids with theta integrated out by hand."""
    ratios = np.array([0.02, 0.18, 0.07, 0.11])
    found = posteriors([CELL], of(ratios))[0]
    total = scatter = mean = 0.0
    for tau in TAUS:
        for sigma in SIGMAS:
            covariance = sigma**2 * np.eye(4) + tau**2
            evidence = exp(-0.5 * ratios @ np.linalg.inv(covariance) @ ratios) / sqrt(
                np.linalg.det(covariance)
            )
            weight = (
                evidence * exp(-0.5 * (tau / 0.10) ** 2) * tau * exp(-0.5 * (log(sigma / 0.15) / 0.6) ** 2)
            )
            total += weight
            scatter += weight * sigma
            centre = ratios.sum() / sigma**2 / (4 / sigma**2 + 1 / tau**2)
            mean += weight * (centre if sigma < 0.3 else 0.0)
    assert found.scatter == pytest.approx(scatter / total, rel=1e-6)
    assert found.mean == pytest.approx(mean / total, rel=1e-6)


@pytest.mark.parametrize(("weight", "mean"), [(0.25, 0.011765), (0.5, 0.022222), (1.0, 0.04)])
def test_a_weld_of_half_the_weight_counts_half(monkeypatch, weight, mean):
    """tau 0.1, sigma 0.2: 0.2 x (25 w) / (25 w + 100)."""
    monkeypatch.setattr("welds.advice.bench_posterior.TAUS", np.array([0.1]))
    monkeypatch.setattr("welds.advice.bench_posterior.SIGMAS", np.array([0.2]))
    assert posteriors([CELL], of([0.2], weights=[weight]))[0].mean == pytest.approx(mean, rel=1e-4)
