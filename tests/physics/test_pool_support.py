"""Sag, dent and radiation against hand calculations."""

import pytest
from scipy.integrate import quad

from welds.errors import OutsideValidityError
from welds.physics.pool_support import arc_dent, arc_force, capillary_length, pool_sag
from welds.physics.surface_loss import radiation_coefficient


def test_a_round_pool_sags_as_a_round_membrane():
    """Circular membrane under pressure p: p R^2 / (4 T); p = rho g d, T = 2 gamma, d = 2 mm, R = 5 mm."""
    gamma, density, gravity = 1.4, 7030.0, 9.80665
    by_hand = density * gravity * 2e-3 * 5e-3**2 / (4.0 * 2.0 * gamma) / 2e-3
    assert pool_sag(10.0, 10.0, capillary_length(gamma, density)) == pytest.approx(by_hand)


def test_a_long_pool_sags_as_a_strip():
    """Strip of width w: p (w/2)^2 / (2 T), twice what a circle of that width does."""
    assert pool_sag(10.0, 1e5, 4.5) == pytest.approx(2.0 * pool_sag(10.0, 10.0, 4.5), rel=1e-3)


def test_a_closed_root_does_not_sag():
    assert pool_sag(0.0, 0.0, 4.5) == 0.0


def test_arc_force_grows_as_the_square_of_the_current():
    assert arc_force(200.0, 2.0) == pytest.approx(4.0 * arc_force(100.0, 2.0))
    assert arc_dent(2.0, 1.0) == pytest.approx(2.0 * arc_dent(1.0, 1.0))
    with pytest.raises(OutsideValidityError):
        arc_force(100.0, 0.5)


def test_radiation_is_the_mean_of_the_fourth_power_law():
    """The two integrals by scipy's quadrature."""
    cold, hot, sigma = 293.15, 1773.15, 5.670374e-8
    radiated, _ = quad(lambda t: sigma * (t**4 - cold**4), cold, hot)
    rise, _ = quad(lambda t: t - cold, cold, hot)
    assert radiation_coefficient(0.4, 1500.0, 20.0) == pytest.approx(0.4 * radiated / rise, rel=1e-6)
