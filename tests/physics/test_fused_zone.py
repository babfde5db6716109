"""The fused zone against the closed forms it must agree with at its limits."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.physics.conduction import power_to_melt_thin_plate
from welds.physics.fused_zone import fused_depth, fused_width, pool_length
from welds.physics.moving_source import MovingSource
from welds.physics.rosenthal import thin_plate_rise

SHEET = MovingSource(1500.0, 5.0, 34.0, 6.7e6, 2.0, 1.1)
RISE = 1480.0


@pytest.mark.parametrize("power", [1000.0, 1500.0, 3000.0])
def test_a_line_of_heat_melts_the_width_of_the_thin_plate_field(power):
    """The isotherm's widest place in the field of Bessel functions, by a close search."""
    aside, ahead = np.linspace(0.5, 15.0, 581), -np.geomspace(0.05, 60.0, 120)
    peaks = thin_plate_rise(power, 5.0, 34.0, 1e6 * 34.0 / 6.7e6, 2.0, ahead[:, None], aside).max(axis=0)
    width = 2.0 * aside[peaks >= RISE].max()
    line = replace(SHEET, power_w=power, radius_mm=0.05, depth_mm=4.0)
    assert fused_width(line, RISE, 2.0) == pytest.approx(width, abs=0.06)


def test_a_wide_pool_is_that_of_the_textbook_balance():
    """Wells' formula (power_to_melt_thin_plate) nears the field as v w / (4 alpha) grows."""
    for width, within in ((8.0, 0.04), (16.0, 0.02)):
        power = power_to_melt_thin_plate(34.0, 6.7e6, RISE, 2.0, width, 5.0)
        line = replace(SHEET, power_w=power, radius_mm=0.05)
        assert fused_width(line, RISE, 2.0) == pytest.approx(width, rel=within)


def test_a_quick_point_on_thick_plate_melts_a_half_circle():
    """High-speed limit of the point source: w^2 = 8 q / (pi e rho c v rise), depth half the width (Adams)."""
    quick = MovingSource(6000.0, 40.0, 34.0, 6.7e6, 40.0, 0.05)
    width = 1e3 * np.sqrt(8.0 * 6000.0 / (np.pi * np.e * 6.7e6 * 0.040 * RISE))
    assert fused_width(quick, RISE, 0.0) == pytest.approx(width, rel=0.05)
    assert fused_depth(quick, RISE) == pytest.approx(width / 2.0, rel=0.05)


def test_a_pool_on_thick_plate_is_as_long_as_the_textbook_says():
    """Point source, weld line: the tail lies at q / (2 pi k rise), whatever the speed (Rosenthal)."""
    thick = MovingSource(3000.0, 4.0, 34.0, 6.7e6, 60.0, 0.05)
    tail = 1e3 * 3000.0 / (2.0 * np.pi * 34.0 * RISE)
    assert pool_length(thick, RISE, 0.0) == pytest.approx(tail, rel=0.1)


def test_nothing_melts_under_a_weak_arc():
    weak = replace(SHEET, power_w=50.0)
    assert fused_width(weak, RISE, 0.0) == fused_depth(weak, RISE) == pool_length(weak, RISE, 0.0) == 0.0


def test_through_means_the_root_has_a_width():
    hot = replace(SHEET, power_w=2500.0)
    assert fused_depth(hot, RISE) == hot.thickness_mm
    assert 0.0 < fused_width(hot, RISE, 2.0) <= fused_width(hot, RISE, 0.0) + 1e-6


@given(power=st.floats(300.0, 6000.0), speed=st.floats(1.0, 20.0), more=st.floats(1.1, 2.0))
def test_more_power_and_less_speed_melt_more(power, speed, more):
    source = MovingSource(power, speed, 34.0, 6.7e6, 3.0, 1.1)
    for other in (replace(source, power_w=power * more), replace(source, speed_mm_s=speed / more)):
        assert fused_width(other, RISE, 0.0) >= fused_width(source, RISE, 0.0) - 1e-3
        assert fused_depth(other, RISE) >= fused_depth(source, RISE) - 1e-3
