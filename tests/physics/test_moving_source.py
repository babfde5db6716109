"""The distributed source against quadrature from elsewhere, its limits and its balance."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from welds.errors import OutsideValidityError
from welds.physics.moving_source import MovingSource
from welds.physics.rosenthal import finite_plate_rise, thick_plate_rise, thin_plate_rise

ALUMINIUM = MovingSource(1160.0, 5.0, 186.0, 4.4e6, 3.2, 1.1)
STEEL = MovingSource(1933.0, 5.9, 34.0, 6.7e6, 2.4, 1.1)
QUICK = MovingSource(1756.0, 15.0, 34.0, 6.7e6, 3.2, 0.7, 1.4)
THICK = MovingSource(4000.0, 4.0, 34.0, 6.7e6, 20.0, 1.1, 0.4)
BACKED = replace(ALUMINIUM, loss_w_m2k=2000.0)
CASES = (ALUMINIUM, STEEL, QUICK, THICK, BACKED)
every_case = pytest.mark.parametrize("source", CASES, ids=("aluminium", "steel", "quick", "thick", "backed"))


def by_quad(source: MovingSource, ahead: float, aside: float, below: float) -> float:
    """Return the rise by scipy's adaptive quadrature over the age of the heat, images summed to the end."""
    alpha, rho_c = source.diffusivity_mm2_s, source.volumetric_heat_j_m3k * 1e-9
    images = np.arange(-60, 61)

    def integrand(root: float) -> float:
        age = root * root
        flat = source.radius_mm**2 + 2.0 * alpha * age
        deep = 4.0 * alpha * age + 2.0 * source.depth_mm**2
        plane = np.exp(-((ahead + source.speed_mm_s * age) ** 2 + aside**2) / (2.0 * flat)) / (
            2.0 * np.pi * flat
        )
        through = (
            2.0
            / np.sqrt(np.pi * deep)
            * np.exp(-((below - 2.0 * images * source.thickness_mm) ** 2) / deep).sum()
        )
        fade = np.exp(-1e3 * source.loss_w_m2k * age / (source.volumetric_heat_j_m3k * source.thickness_mm))
        return 2.0 * root * plane * through * fade

    oldest = 40.0 * (4.0 * alpha / source.speed_mm_s**2 + (abs(ahead) + source.radius_mm) / source.speed_mm_s)
    near = np.sqrt(max(-ahead, 0.1) / source.speed_mm_s)
    value, _error = quad(
        integrand, 1e-9, np.sqrt(oldest), points=[near / 2, near, 2 * near], limit=400, epsrel=1e-7
    )
    return source.power_w / rho_c * value


@every_case
@pytest.mark.parametrize(
    ("ahead", "aside", "share"),
    [
        (0.0, 0.0, 0.0),
        (-2.0, 0.0, 0.0),
        (-2.0, 1.5, 1.0),
        (0.5, 1.0, 0.4),
        (-12.0, 3.0, 0.5),
        (-25.0, 9.0, 1.0),
    ],
)
def test_is_what_adaptive_quadrature_says(source, ahead, aside, share):
    """Within 0.1 % of scipy.integrate.quad."""
    below = share * source.thickness_mm
    found = float(source.at(ahead, aside, below))
    assert found == pytest.approx(by_quad(source, ahead, aside, below), rel=1e-3)


@every_case
def test_sections_and_plans_are_its_points(source):
    across, down = np.linspace(-6.0, 6.0, 7), np.linspace(0.0, source.thickness_mm, 5)
    section = source.section(-3.0, across, down)
    plan = source.plan(np.linspace(-9.0, 3.0, 4), across, 0.0)
    assert section[3, 1] == pytest.approx(float(source.at(-3.0, across[1], down[3])), rel=1e-9)
    assert plan[2, 1] == pytest.approx(float(source.at(-5.0, across[2], 0.0)), rel=1e-9)


@every_case
def test_peaks_are_the_highest_of_a_close_search(source):
    across, down = np.linspace(0.0, 12.0, 100), np.linspace(0.0, source.thickness_mm, 200)
    peaks = source.peak_section(across, down)
    places = 2.0 - np.geomspace(0.01, 400.0, 5000)
    for row, column in ((0, 0), (0, 30), (199, 0), (120, 60), (199, 99)):
        searched = source.at(places, across[column], down[row]).max()
        assert peaks[row, column] == pytest.approx(searched, rel=2e-3)


def test_a_small_spot_is_a_point_source():
    point = replace(THICK, radius_mm=0.02, depth_mm=0.0, thickness_mm=80.0)
    values = (point.power_w, point.speed_mm_s, point.conductivity_w_mk, point.diffusivity_mm2_s)
    for place in ((-5.0, 2.0, 1.0), (0.0, 3.0, 0.0), (2.0, 1.0, 2.0)):
        assert float(point.at(*place)) == pytest.approx(float(thick_plate_rise(*values, *place)), rel=2e-3)


def test_in_a_thin_sheet_it_is_a_line_source_and_between_the_two_the_images():
    thin = replace(STEEL, radius_mm=0.05, thickness_mm=1.0)
    values = (thin.power_w, thin.speed_mm_s, thin.conductivity_w_mk, thin.diffusivity_mm2_s)
    for ahead, aside in ((-5.0, 5.0), (0.0, 6.0), (-20.0, 3.0)):
        line = float(thin_plate_rise(*values, 1.0, ahead, aside))
        assert float(thin.at(ahead, aside, 0.5)) == pytest.approx(line, rel=2e-3)
    medium = replace(thin, thickness_mm=5.0)
    images = finite_plate_rise(*values, 5.0, -4.0, 3.0, 2.0)
    assert float(medium.at(-4.0, 3.0, 2.0)) == pytest.approx(images, rel=2e-3)


@every_case
def test_all_the_heat_passes_through_a_plane_behind(source):
    """What is carried through a far plane by the moving metal, and conducted, is the power put in."""
    if source.loss_w_m2k:
        pytest.skip("a backed sheet loses heat on the way")
    far = replace(source, reach_mm=120.0)
    across, down = np.linspace(-220.0, 220.0, 1501), np.linspace(0.0, far.thickness_mm, 41)
    behind, step = -60.0, 0.25
    rise = far.section(behind, across, down)
    slope = (far.section(behind + step, across, down) - far.section(behind - step, across, down)) / (
        2.0 * step
    )
    flow = far.volumetric_heat_j_m3k * 1e-9 * far.speed_mm_s * rise + far.conductivity_w_mk * 1e-3 * slope
    through = np.trapezoid(np.trapezoid(flow, across, axis=1), down)
    assert through == pytest.approx(far.power_w, rel=5e-3)


@given(
    power=st.floats(100.0, 8000.0),
    speed=st.floats(0.5, 25.0),
    thickness=st.floats(0.5, 25.0),
    factor=st.floats(1.05, 3.0),
)
def test_more_power_heats_in_proportion_and_more_speed_heats_less(power, speed, thickness, factor):
    source = MovingSource(power, speed, 34.0, 6.7e6, thickness, 1.1)
    across, down = np.array([0.0, 2.0]), np.array([0.0, thickness])
    peaks = source.peak_section(across, down)
    np.testing.assert_allclose(
        replace(source, power_w=factor * power).peak_section(across, down), factor * peaks, rtol=1e-4
    )
    assert (replace(source, speed_mm_s=factor * speed).peak_section(across, down) < peaks).all()
    assert (peaks[0] >= 0.998 * peaks[1]).all()


def test_what_cannot_be_is_refused():
    with pytest.raises(OutsideValidityError):
        replace(STEEL, power_w=0.0)
    with pytest.raises(OutsideValidityError):
        replace(STEEL, radius_mm=-1.0)
