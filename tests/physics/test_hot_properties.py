"""Properties of hot metal against handbook figures, by hand, and where the pieces of the curves must meet."""

import numpy as np
import pytest

from welds.physics.hot_properties import (
    aluminium_conductivity,
    aluminium_specific_heat,
    carbon_steel_conductivity,
    carbon_steel_specific_heat,
    stainless_conductivity,
    stainless_specific_heat,
)


@pytest.mark.parametrize(
    ("celsius", "conductivity", "heat"),
    [(20, 53.3, 440), (200, 47.3, 530), (400, 40.7, 606), (600, 34.0, 760), (1000, 27.3, 650)],
)
def test_carbon_steel_as_tabulated(celsius, conductivity, heat):
    """The tables that design guides print from the same standard; from memory."""
    assert float(carbon_steel_conductivity(celsius)) == pytest.approx(conductivity, abs=0.06)
    assert float(carbon_steel_specific_heat(celsius)) == pytest.approx(heat, abs=0.6)


def test_specific_heat_rises_to_its_peak_and_falls_again():
    """By hand: 666 + 13002 / 38 = 1008 at 700 degC, 545 + 17820 / 69 = 803 at 800 degC."""
    assert carbon_steel_specific_heat([700.0, 800.0]) == pytest.approx([1008.2, 803.3], abs=0.1)


@pytest.mark.parametrize(("celsius", "heat"), [(600.0, 760.0), (735.0, 5000.0), (900.0, 650.3)])
def test_the_pieces_of_the_steel_curve_meet(celsius, heat):
    """A standard's curve has no steps: both sides of a joint say the same to 0.3 %."""
    below, at, above = carbon_steel_specific_heat([celsius - 1e-6, celsius, celsius + 1e-6])
    assert (below, at, above) == pytest.approx((heat, heat, heat), rel=3e-3)


def test_steel_conducts_no_worse_than_its_last_value():
    assert carbon_steel_conductivity([801.8, 900.0, 1500.0]) == pytest.approx([27.3] * 3, abs=0.01)


@pytest.mark.parametrize(
    ("kelvin", "conductivity", "heat"),
    [
        (300, 14.9, 477),
        (400, 16.6, 515),
        (600, 19.8, 557),
        (800, 22.6, 582),
        (1000, 25.4, 611),
        (1200, 28.0, 640),
    ],
)
def test_stainless_lies_near_the_textbook_of_heat_transfer(kelvin, conductivity, heat):
    """Table of metallic solids, AISI 304, in common textbooks (from memory): 6 and 12 % below at the most."""
    celsius = kelvin - 273.15
    assert float(stainless_conductivity(celsius)) == pytest.approx(conductivity, rel=0.07)
    assert float(stainless_specific_heat(celsius)) == pytest.approx(heat, rel=0.125)


def test_stainless_by_hand():
    """At 1000 degC the powers are noughts: 450 + 280 - 291 + 134 = 573; 14.6 + 12.7 = 27.3."""
    assert float(stainless_specific_heat(1000.0)) == pytest.approx(573.0)
    assert float(stainless_conductivity(1000.0)) == pytest.approx(27.3)
    assert float(stainless_specific_heat(100.0)) == pytest.approx(450.0 + 28.0 - 2.91 + 0.134)


def test_aluminium_by_hand():
    """At 200 degC: 190 + 14 = 204, 140 + 20 = 160, 903 + 82 = 985."""
    assert float(aluminium_conductivity(200.0, 190.0, 0.07)) == pytest.approx(204.0)
    assert float(aluminium_conductivity(200.0, 140.0, 0.10)) == pytest.approx(160.0)
    assert float(aluminium_specific_heat(200.0)) == pytest.approx(985.0)


def test_a_picture_of_temperatures_keeps_its_shape():
    celsius = np.array([[20.0, 650.0], [735.0, 1200.0]])
    found = carbon_steel_specific_heat(celsius)
    assert found.shape == celsius.shape
    assert found[1, 0] == found.max()
