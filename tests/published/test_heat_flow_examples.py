"""Heat flow: the worked examples of textbooks and slides, and our own checks, by their number.

Documents: [AWS-WHB1] Welding Handbook volume 1 (examples from memory, recomputed), [HEATFLOW-SLIDES] (plotted
cases seen), [GHOSH] (from memory), [ARC-ENERGY-Q] (printed value seen), [GROOVER-Q] (inputs seen), standards
EN 1011-2 and IIW. "text": the figure stands in a text; "own": worked out apart from the program, no text.
"""

import numpy as np
import pytest

from welds.errors import OutsideValidityError
from welds.physics.arc import heat_input
from welds.physics.conduction import power_to_melt_thin_plate
from welds.physics.cooling_time import (
    cooling_time,
    cooling_time_three_dimensional,
    cooling_time_two_dimensional,
    transition_thickness,
)
from welds.physics.melting import fused_area, heat_to_melt_by_temperature
from welds.physics.peak_temperature import (
    distance_of_peak_thin,
    peak_temperature_thin,
    relative_thickness,
    solidification_time,
)
from welds.physics.preheat import carbon_equivalent_cet, carbon_equivalent_iiw, preheat_cet
from welds.physics.rosenthal import (
    cooling_rate_thick,
    cooling_rate_thin,
    thick_plate_rise,
    thin_plate_rise,
)

STEEL = 0.0044
"""Volumetric heat of the handbook's examples, J/(mm3 K)."""


def net_heat(volts, amps, speed, efficiency):
    """Net heat per length in J/mm; the program's heat input is in kJ/mm."""
    return 1e3 * heat_input(volts, amps, speed, efficiency)


class TestWeldingHandbook:
    """[AWS-WHB1], chapter on heat flow; text, from memory; X2 to X7 rounded as printed."""

    def test_x1_net_heat(self):
        assert net_heat(20.0, 200.0, 5.0, 0.9) == pytest.approx(720.0)

    @pytest.mark.parametrize(("beside", "printed"), [(1.5, 1184.0), (3.0, 976.0)], ids=["x2", "x3"])
    def test_peak_temperature(self, beside, printed):
        """The text has 4.13 for the root of 2 pi e: 0.2 degC at 3 mm, and whole degrees."""
        assert peak_temperature_thin(720.0, STEEL, 5.0, 1510.0, 25.0, beside) == pytest.approx(
            printed, abs=0.7
        )

    @pytest.mark.parametrize(
        ("peak", "start", "printed"),
        [(730.0, 25.0, 5.9), (430.0, 25.0, 14.2), (430.0, 200.0, 28.4)],
        ids=["x4", "x5", "x6"],
    )
    def test_width_of_the_heat_affected_zone(self, peak, start, printed):
        assert distance_of_peak_thin(720.0, STEEL, 5.0, 1510.0, start, peak) == pytest.approx(
            printed, abs=0.05
        )

    def test_the_two_forms_undo_each_other(self):
        beside = distance_of_peak_thin(720.0, STEEL, 5.0, 1510.0, 25.0, 600.0)
        assert peak_temperature_thin(720.0, STEEL, 5.0, 1510.0, 25.0, beside) == pytest.approx(600.0)

    @pytest.mark.parametrize(
        ("speed", "thickness", "rate"), [(8.0, 0.314, 5.66), (9.0, 0.333, 7.17)], ids=["x7-text", "x8-own"]
    )
    def test_relative_thickness_and_cooling_rate(self, speed, thickness, rate):
        heat = net_heat(25.0, 300.0, speed, 0.9)
        assert relative_thickness(6.0, STEEL, heat, 550.0, 25.0) == pytest.approx(thickness, abs=5e-4)
        power = heat * speed
        found = cooling_rate_thin(power, speed, 28.0, STEEL * 1e9, 6.0, 525.0)
        assert found == pytest.approx(rate, abs=5e-3)

    def test_x9_solidification_time(self):
        assert solidification_time(2.0, 800.0, 28.0, STEEL, 1485.0) == pytest.approx(0.94, abs=5e-3)

    def test_x10_fused_section(self):
        assert fused_area(0.9 * 20.0 * 200.0, 5.0, 0.3, 10.0) == pytest.approx(21.6)

    def test_x11_heat_to_melt(self):
        assert heat_to_melt_by_temperature(1510.0) == pytest.approx(10.6, abs=0.05)


def test_x12_speed_for_a_width():
    """[GHOSH]: 2.5 kW at 0.85 on 3 mm steel travels 0.0166 m/s; text, from memory."""
    power = power_to_melt_thin_plate(43.6, 43.6 / 1.2e-5, 1450.0, 3.0, 3.464, 16.64)
    assert power == pytest.approx(2125.0, rel=1e-3)


class TestCoolingTime:
    """EN 1011-2 formulas as quoted in [EN1011-2-T85-Q]; results own."""

    def test_x13_three_dimensional(self):
        assert cooling_time_three_dimensional(1.0, 20.0, 1.0) == pytest.approx(5.288, abs=1e-3)

    def test_x14_two_dimensional(self):
        assert cooling_time_two_dimensional(1.0, 6.0, 20.0, 1.0) == pytest.approx(31.57, abs=5e-3)

    def test_x15_transition_where_both_are_equal(self):
        thickness = transition_thickness(1.0, 20.0, 1.0, 1.0)
        assert thickness == pytest.approx(14.66, abs=5e-3)
        flat = cooling_time_two_dimensional(1.0, thickness, 20.0, 1.0)
        assert flat == pytest.approx(cooling_time_three_dimensional(1.0, 20.0, 1.0), rel=1e-9)

    @pytest.mark.parametrize(
        ("heat", "thickness", "preheat", "f2", "f3", "seconds", "transition"),
        [
            (1.5, 12.0, 100.0, 0.9, 0.9, 22.91, 19.18),
            (2.0, 30.0, 150.0, 1.0, 1.0, 15.69, 23.24),
            (0.8, 20.0, 20.0, 0.45, 0.67, 2.835, 10.75),
        ],
        ids=["x16", "x17", "x18"],
    )
    def test_choice(self, heat, thickness, preheat, f2, f3, seconds, transition):
        assert cooling_time(heat, thickness, preheat, f2, f3) == pytest.approx(seconds, rel=5e-4)
        assert transition_thickness(heat, preheat, f2, f3) == pytest.approx(transition, abs=5e-3)

    def test_refuses_what_cannot_be(self):
        for arguments in ((0.0, 6.0, 20.0, 1.0, 1.0), (1.0, 6.0, 500.0, 1.0, 1.0)):
            with pytest.raises(OutsideValidityError):
                cooling_time(*arguments)


class TestPreheat:
    """[CE-FORM-Q], [EN1011-2-Q]; results own."""

    def test_x19_structural_steel(self):
        assert carbon_equivalent_iiw(0.18, 1.4) == pytest.approx(0.413, abs=5e-4)
        assert carbon_equivalent_cet(0.18, 1.4) == pytest.approx(0.320, abs=5e-4)
        assert preheat_cet(0.32, 30.0, 5.0, 1.5) == pytest.approx(92.5, abs=0.05)

    @pytest.mark.parametrize(
        ("iiw", "cet", "ce_expected", "cet_expected"),
        [
            ((0.30, 0.50, 0.95, 0.20), (0.30, 0.50, 0.20, 0.95), 0.613, 0.4175),
            ((0.20, 0.90), (0.20, 0.90), 0.350, 0.290),
            ((0.10, 0.45), (0.10, 0.45), 0.175, 0.145),
        ],
        ids=["x20-4130", "x21-a36", "x22-1010"],
    )
    def test_equivalents(self, iiw, cet, ce_expected, cet_expected):
        assert carbon_equivalent_iiw(*iiw) == pytest.approx(ce_expected, abs=5e-4)
        assert carbon_equivalent_cet(*cet) == pytest.approx(cet_expected, abs=5e-5)

    @pytest.mark.parametrize(
        "outside",
        [(0.15, 30.0, 5.0, 1.5), (0.3, 6.0, 5.0, 1.5), (0.3, 30.0, 30.0, 1.5), (0.3, 30.0, 5.0, 0.2)],
    )
    def test_is_not_used_beyond_its_range(self, outside):
        with pytest.raises(OutsideValidityError):
            preheat_cet(*outside)


class TestRosenthal:
    """[ROSENTHAL]; own, with K0(1) = 0.4210244382 from tables."""

    ALPHA = 25.0 / 4.71e6 * 1e6

    @pytest.mark.parametrize(
        ("place", "expected"), [((0.0, 4.0, 0.0), 730.15), ((-10.0, 0.0, 0.0), 1298.24)], ids=["x23", "x24"]
    )
    def test_thick(self, place, expected):
        rise = thick_plate_rise(2000.0, 4.0, 25.0, self.ALPHA, *place)
        assert float(rise) + 25.0 == pytest.approx(expected, abs=0.01)

    def test_x24_does_not_ask_for_the_speed(self):
        rises = [
            float(thick_plate_rise(2000.0, v, 25.0, self.ALPHA, -10.0, 0.0, 0.0)) for v in (1.0, 4.0, 9.0)
        ]
        np.testing.assert_allclose(rises, rises[0])

    def test_x25_thin(self):
        rise = thin_plate_rise(960.0, 3.0, 25.0, self.ALPHA, 2.0, 0.0, 6.0)
        assert float(rise) + 25.0 == pytest.approx(533.54, abs=0.02)

    def test_x26_x27_cooling_rates(self):
        assert cooling_rate_thick(2000.0, 4.0, 25.0, 525.0) == pytest.approx(86.59, abs=5e-3)
        assert cooling_rate_thin(960.0, 3.0, 25.0, 4.71e6, 2.0, 525.0) == pytest.approx(4.18, abs=5e-3)


def test_x28_arc_energy():
    """[ARC-ENERGY-Q]: 20 V, 300 A, 2.5 mm/s is 2400 J/mm; printed value seen."""
    assert net_heat(20.0, 300.0, 2.5, 1.0) == pytest.approx(2400.0)


def test_x29_power_for_a_fillet():
    """[GROOVER-Q]: leg 4.5 mm at 6 mm/s, 0.80 and 0.58, 1760 K: 1350 W in round figures; inputs seen."""
    melt = heat_to_melt_by_temperature(1760.0 - 273.0)
    per_watt = fused_area(0.80, 6.0, 0.58, melt)
    assert 4.5**2 / 2.0 / per_watt == pytest.approx(1352.0, abs=1.0)


@pytest.mark.parametrize(("power", "speed", "printed"), [(3823.0, 10.0, 383.0), (10170.0, 26.0, 391.0)])
def test_x30_heat_per_length(power, speed, printed):
    """[HEATFLOW-SLIDES]; printed values seen; the first is rounded up in print (382.3)."""
    assert net_heat(power, 1.0, speed, 1.0) == pytest.approx(printed, abs=1.0)
