"""Rosenthal's fields against each other's limits and against numbers from elsewhere."""

import numpy as np
import pytest
from scipy.special import k0

from welds.errors import OutsideValidityError
from welds.physics.rosenthal import (
    bessel_k0,
    cooling_rate_thick,
    cooling_rate_thin,
    finite_plate_rise,
    rosenthal_number,
    rykalin_number,
    thick_plate_rise,
    thin_plate_rise,
)

STEEL = (1500.0, 4.0, 34.0, 5.0)
"""Power, speed, conductivity, diffusivity."""


def test_bessel_k0_is_that_of_scipy():
    """scipy.special.k0, another implementation."""
    argument = np.geomspace(0.01, 60.0, 200)
    np.testing.assert_allclose(bessel_k0(argument), k0(argument), rtol=1e-8)


@pytest.mark.parametrize("ahead", [-15.0, -4.0, 0.0, 3.0])
@pytest.mark.parametrize("aside", [2.0, 6.0])
def test_thick_plate_has_one_source_and_its_mirrors_no_more(ahead, aside):
    """Far from the back face the images add nothing."""
    alone = float(thick_plate_rise(*STEEL, ahead, aside, 1.0))
    assert finite_plate_rise(*STEEL, 200.0, ahead, aside, 1.0) == pytest.approx(alone, rel=1e-3)


@pytest.mark.parametrize("ahead", [-15.0, -4.0, 0.0, 3.0])
@pytest.mark.parametrize("below", [0.0, 0.7, 1.5])
def test_thin_plate_is_a_line_source_at_every_depth(ahead, below):
    """A few thicknesses away the sum of images is the line source, whatever the depth."""
    line = float(thin_plate_rise(*STEEL, 1.5, ahead, 6.0))
    assert finite_plate_rise(*STEEL, 1.5, ahead, 6.0, below) == pytest.approx(line, rel=1e-3)


def test_too_thin_for_the_images_is_refused():
    with pytest.raises(OutsideValidityError):
        finite_plate_rise(*STEEL, 0.1, 0.0, 5.0, 0.0)


def test_cooling_rates_are_the_slope_of_the_fields():
    """On the weld line far behind: dT/dt = -v dT/dx, taken from the fields by differences."""
    power, speed, conductivity, diffusivity = 2000.0, 30.0, 34.0, 5.0
    behind, step = -400.0, 0.5
    for field, rate in (
        (
            lambda x: thick_plate_rise(power, speed, conductivity, diffusivity, x, 0.0, 0.0),
            lambda rise: cooling_rate_thick(power, speed, conductivity, rise),
        ),
        (
            lambda x: thin_plate_rise(power, speed, conductivity, diffusivity, 2.0, x, 0.0),
            lambda rise: cooling_rate_thin(
                power, speed, conductivity, 1e6 * conductivity / diffusivity, 2.0, rise
            ),
        ),
    ):
        slope = speed * (field(behind + step) - field(behind - step)) / (2.0 * step)
        assert float(slope) == pytest.approx(rate(float(field(behind))), rel=1e-3)


def test_equal_rykalin_numbers_have_similar_isotherms():
    """Twice the speed, half the length: a dimensionless group must leave the shape alone."""
    power, speed, conductivity, diffusivity, rise = 1500.0, 4.0, 34.0, 5.0, 1000.0
    heat = 1e6 * conductivity / diffusivity
    one = rykalin_number(power, speed, diffusivity, heat, rise)
    other = rykalin_number(power / 2.0, 2.0 * speed, diffusivity, heat, rise)
    assert one == pytest.approx(other)
    near = thick_plate_rise(power, speed, conductivity, diffusivity, -3.0, 2.0, 1.0)
    nearer = thick_plate_rise(power / 2.0, 2.0 * speed, conductivity, diffusivity, -1.5, 1.0, 0.5)
    assert float(near) == pytest.approx(float(nearer))


def test_equal_rosenthal_numbers_have_similar_isotherms():
    power, speed, conductivity, diffusivity, thickness = 900.0, 4.0, 34.0, 5.0, 2.0
    assert rosenthal_number(power, conductivity, thickness, 1000.0) == pytest.approx(
        rosenthal_number(3.0 * power, conductivity, 3.0 * thickness, 1000.0)
    )
    one = thin_plate_rise(power, speed, conductivity, diffusivity, thickness, -3.0, 2.0)
    other = thin_plate_rise(3.0 * power, 2.0 * speed, conductivity, diffusivity, 3.0 * thickness, -1.5, 1.0)
    assert float(one) == pytest.approx(float(other))
