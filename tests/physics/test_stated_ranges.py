"""Each formula answers up to the ends of the range it states and refuses what lies beyond.

The ends are those of the standards and definitions named in the docstrings; figures at the ends are by hand.
"""

from math import inf, nan

import pytest

from welds.errors import OutsideValidityError
from welds.physics.arc import heat_input
from welds.physics.bending import (
    airframe_allowance,
    bend_allowance,
    compensation_din_6935,
    neutral_line_din_6935,
    setback,
)
from welds.physics.conduction import power_to_melt_thin_plate
from welds.physics.cooling_time import (
    cooling_time,
    cooling_time_three_dimensional,
    cooling_time_two_dimensional,
    transition_thickness,
)
from welds.physics.deposition import deposited_area, deposition_rate, dilution
from welds.physics.melting import fused_area
from welds.physics.moving_source import MovingSource
from welds.physics.peak_temperature import distance_of_peak_thin, peak_temperature_thin
from welds.physics.pool_support import arc_force, pool_sag
from welds.physics.preheat import preheat_cet
from welds.physics.shrinkage import (
    edge_rise_fillets,
    longitudinal_shrinkage,
    transverse_shrinkage_butt,
    transverse_shrinkage_fillets,
    transverse_shrinkage_gap,
)
from welds.physics.supply import (
    apparent_power,
    cord_voltage_drop,
    effective_supply_current,
    feeder_current,
    gas_left,
    supply_current,
)
from welds.physics.wire import current_for_wire_feed, wire_feed

AT_THE_END = [
    (heat_input, (20.0, 100.0, 0.5, 1.0), 4.0),
    (apparent_power, (20.0, 100.0, 1.0, 1.0), 2.0),
    (apparent_power, (20.0, 100.0, 0.5, 1.0), 4.0),
    (apparent_power, (20.0, 100.0, 1.0, 0.5), 4.0),
    (supply_current, (1.15, 0.5, 1), 2300.0),
    (effective_supply_current, (30.0, 2.0, 0.0), 2.0),
    (effective_supply_current, (30.0, 2.0, 1.0), 30.0),
    (feeder_current, ([0.0, 10.0],), 10.0),
    (feeder_current, ([],), 0.0),
    (feeder_current, ([10.0] * 6,), 47.5),  # 10 + 10 + 8.5 + 7 + 6 + 6
    (cord_voltage_drop, (10.0, 10.0, 0.5, 1), 7.0),
    (gas_left, (10.0, 0.0), 0.0),
    (gas_left, (10.0, 300.0), 3000.0),
    (deposition_rate, (1000.0 / 3600.0, 2.0, 1e9 / 3.141592653589793, 1.0), 1000.0),
    (dilution, (0.0, 0.0), 0.0),
    (dilution, (0.3, 0.3), 0.5),
    (fused_area, (100.0, 0.5, 0.5, 10.0), 10.0),
    (deposited_area, (0.25, 2.0, 0.5), 3.141592653589793 / 2.0),
    (distance_of_peak_thin, (720.0, 0.0044, 5.0, 1510.0, 25.0, 1510.0), 0.0),
    (peak_temperature_thin, (0.5, 0.0044, 5.0, 1510.0, 25.0, 0.0), 1510.0),
    (arc_force, (1e3, 1.0), 0.05),  # mu0 / (8 pi) is 5e-8
    (pool_sag, (0.0, 10.0, 4.5), 0.0),
    (pool_sag, (10.0, 0.0, 4.5), 0.0),
    (pool_sag, (2.0, 2.0, 0.5), 0.5),
    (power_to_melt_thin_plate, (50.0, 5e6, 1000.0, 1.0, 5.0, 0.0), 80.0),  # 8 x 50 x 1000 x 0.001 / 5
    (power_to_melt_thin_plate, (0.5, 5e6, 1000.0, 1.0, 5.0, 0.0), 0.8),
    (power_to_melt_thin_plate, (50.0, 5e6, 0.5, 1.0, 5.0, 0.0), 0.04),
    (power_to_melt_thin_plate, (50.0, 5e6, 1000.0, 0.5, 0.5, 0.0), 40.0),
    (power_to_melt_thin_plate, (1.0, 0.5, 1000.0, 1.0, 5.0, 0.5), 1.6000025),
    (transverse_shrinkage_butt, (5.0, 0.5), 1.0),
    (wire_feed, (0.5, 2.0, 0.0, 3.141592653589793, 1.0), 0.5),
    (wire_feed, (3.141592653589793, 0.5, 0.0, 1.0, 1.0), 16.0),
    (wire_feed, (3.141592653589793, 2.0, 3.0, 1.0, 2.0), 7.0),  # one of the arc, 2 x 3 of the wire
    (current_for_wire_feed, (0.5, 2.0, 15.0, 3.141592653589793, 0.0), 0.5),
    (current_for_wire_feed, (7.0, 2.0, 3.0, 1.0, 2.0), 3.141592653589793),
    (bend_allowance, (180.0, 1.0, 2.0, 0.5), 2.0 * 3.141592653589793),
    (bend_allowance, (0.5, 0.0, 2.0, 0.5), 0.5 * 3.141592653589793 / 180.0),
    (setback, (170.0, 1.0), 11.430052),
    (setback, (0.5, 1.0), 0.0043633509),
    (neutral_line_din_6935, (0.1, 1.0), 0.075),  # the logarithm of a tenth is -1
    (airframe_allowance, (1.0, 1.0, 1.0), 0.02523),
    (airframe_allowance, (180.0, 1.0, 1.0), 4.5414),
    (compensation_din_6935, (180.0, 1.0, 1.0), 0.0),
    (compensation_din_6935, (165.0, 10.0, 1.0), 15.0 * 3.141592653589793 / 180.0 * 10.5 - 22.0 * 0.13165250),
    (compensation_din_6935, (0.0, 10.0, 1.0), 3.141592653589793 * 10.5 - 22.0),
    (cooling_time_two_dimensional, (0.5, 0.5, 0.0, 1.0), 430e6 * (1 / 500**2 - 1 / 800**2)),
    (cooling_time_three_dimensional, (1.0, 0.0, 1.0), 6700.0 * (1 / 500 - 1 / 800)),
    (cooling_time, (0.5, 100.0, 0.0, 1.0, 1.0), 3350.0 * (1 / 500 - 1 / 800)),
    (cooling_time, (0.5, 0.5, 0.0, 1.0, 1.0), 430e6 * (1 / 500**2 - 1 / 800**2)),
]


@pytest.mark.parametrize(("formula", "arguments", "by_hand"), AT_THE_END)
def test_answers_at_the_end_of_its_range(formula, arguments, by_hand):
    assert formula(*arguments) == pytest.approx(by_hand, rel=1e-6)


@pytest.mark.parametrize(
    ("cet", "thickness", "hydrogen", "heat", "by_hand"),
    [
        (0.2, 30.0, 5.0, 1.5, 139.4 + 111.165 + 108.901 - 32.1 - 328.0),
        (0.5, 30.0, 5.0, 1.5, 348.5 + 111.165 + 108.901 - 8.25 - 328.0),
        (0.4, 10.0, 5.0, 1.5, 278.8 + 44.510 + 108.901 - 16.2 - 328.0),
        (0.4, 90.0, 5.0, 1.5, 278.8 + 158.142 + 108.901 - 16.2 - 328.0),
        (0.4, 30.0, 1.0, 1.5, 278.8 + 111.165 + 62.0 - 16.2 - 328.0),
        (0.4, 30.0, 20.0, 1.5, 278.8 + 111.165 + 176.910 - 16.2 - 328.0),
        (0.4, 30.0, 5.0, 0.5, 278.8 + 111.165 + 108.901 - 5.4 - 328.0),
        (0.4, 30.0, 5.0, 4.0, 278.8 + 111.165 + 108.901 - 43.2 - 328.0),
    ],
)
def test_preheat_at_the_ends_of_the_standard(cet, thickness, hydrogen, heat, by_hand):
    """EN 1011-2, method B, term by term: composition, section, hydrogen, heat (a pocket calculator)."""
    assert preheat_cet(cet, thickness, hydrogen, heat) == pytest.approx(by_hand, abs=0.01)


@pytest.mark.parametrize("place", range(4))
@pytest.mark.parametrize("way", ["below", "above"])
def test_preheat_just_outside_the_standard(place, way):
    ends = ((0.2, 0.5), (10.0, 90.0), (1.0, 20.0), (0.5, 4.0))
    arguments = [0.4, 30.0, 5.0, 1.5]
    arguments[place] = ends[place][0] * 0.999 if way == "below" else ends[place][1] * 1.001
    with pytest.raises(OutsideValidityError) as refusal:
        preheat_cet(*arguments)
    assert f"{ends[place][0]:g} to {ends[place][1]:g}" in str(refusal.value)


BEYOND = [
    (heat_input, (20.0, 100.0, 0.0, 0.6)),
    (heat_input, (20.0, 100.0, 5.0, 0.0)),
    (heat_input, (20.0, 100.0, 5.0, 1.001)),
    (apparent_power, (20.0, 100.0, 0.0, 0.7)),
    (apparent_power, (20.0, 100.0, 0.7, 0.0)),
    (apparent_power, (20.0, 100.0, 1.001, 0.7)),
    (apparent_power, (20.0, 100.0, 0.7, 1.001)),
    (supply_current, (5.0, 0.0, 1)),
    (supply_current, (5.0, -230.0, 1)),
    (effective_supply_current, (25.0, 1.0, -0.001)),
    (effective_supply_current, (25.0, 1.0, 1.001)),
    (feeder_current, ([5.0, -0.5],)),
    (cord_voltage_drop, (16.0, 20.0, 0.0, 1)),
    (cord_voltage_drop, (16.0, 20.0, -2.5, 3)),
    (gas_left, (20.0, -0.5)),
    (gas_left, (20.0, 300.5)),
    (deposition_rate, (100.0, 1.2, 7850.0, 0.0)),
    (deposition_rate, (100.0, 1.2, 7850.0, 1.001)),
    (deposited_area, (100.0, 1.2, 0.0)),
    (deposited_area, (100.0, 1.2, -6.0)),
    (fused_area, (3600.0, 0.0, 0.3, 10.0)),
    (fused_area, (3600.0, -5.0, 0.3, 10.0)),
    (peak_temperature_thin, (0.0, 0.0044, 5.0, 1510.0, 25.0, 1.5)),
    (peak_temperature_thin, (-720.0, 0.0044, 5.0, 1510.0, 25.0, 1.5)),
    (distance_of_peak_thin, (720.0, 0.0044, 5.0, 1510.0, 25.0, 25.0)),
    (distance_of_peak_thin, (720.0, 0.0044, 5.0, 1510.0, 25.0, 1510.5)),
    (arc_force, (200.0, 0.999)),
    (power_to_melt_thin_plate, (50.0, 5e6, 1000.0, 1.0, 5.0, -0.5)),
    (power_to_melt_thin_plate, (0.0, 5e6, 1000.0, 1.0, 5.0, 5.0)),
    (power_to_melt_thin_plate, (50.0, 0.0, 1000.0, 1.0, 5.0, 5.0)),
    (power_to_melt_thin_plate, (50.0, 5e6, 0.0, 1.0, 5.0, 5.0)),
    (power_to_melt_thin_plate, (50.0, 5e6, 1000.0, 0.0, 5.0, 5.0)),
    (power_to_melt_thin_plate, (50.0, 5e6, 1000.0, 1.0, 0.0, 5.0)),
    (power_to_melt_thin_plate, (50.0, 5e6, 1000.0, 1.0, nan, 5.0)),
    (transverse_shrinkage_butt, (60.0, 0.0)),
    (transverse_shrinkage_gap, (60.0, -10.0, 2.0)),
    (transverse_shrinkage_fillets, (6.0, 0.0, 1.02)),
    (longitudinal_shrinkage, (200.0, 1000.0, 0.0)),
    (edge_rise_fillets, (254.0, 6.35, 0.0)),
    (wire_feed, (0.0, 1.2, 15.0, 0.339, 6.4e-5)),
    (wire_feed, (200.0, 0.0, 15.0, 0.339, 6.4e-5)),
    (current_for_wire_feed, (0.0, 1.2, 15.0, 0.339, 6.4e-5)),
    (bend_allowance, (0.0, 3.0, 2.0, 0.42)),
    (bend_allowance, (180.5, 3.0, 2.0, 0.42)),
    (setback, (0.0, 3.0)),
    (setback, (170.5, 3.0)),
    (neutral_line_din_6935, (0.099, 1.0)),
    (neutral_line_din_6935, (nan, 1.0)),
    (airframe_allowance, (0.99, 3.0, 2.0)),
    (airframe_allowance, (180.5, 3.0, 2.0)),
    (compensation_din_6935, (-0.5, 3.0, 2.0)),
    (compensation_din_6935, (180.5, 3.0, 2.0)),
    (cooling_time_two_dimensional, (1.0, 6.0, 450.0, 1.0)),
    (cooling_time_three_dimensional, (1.0, 450.0, 1.0)),
    (transition_thickness, (1.0, inf, 1.0, 1.0)),
    (cooling_time, (0.0, 6.0, 20.0, 1.0, 1.0)),
    (cooling_time, (1.0, 0.0, 20.0, 1.0, 1.0)),
]


@pytest.mark.parametrize(("formula", "arguments"), BEYOND)
def test_refuses_just_beyond_its_range(formula, arguments):
    with pytest.raises(OutsideValidityError):
        formula(*arguments)


SOURCE = {
    "power_w": 1000.0, "speed_mm_s": 5.0, "conductivity_w_mk": 34.0,
    "volumetric_heat_j_m3k": 6.7e6, "thickness_mm": 2.0, "radius_mm": 1.1,
}  # fmt: skip


@pytest.mark.parametrize("name", SOURCE)
@pytest.mark.parametrize("value", [0.0, -0.5, nan])
def test_a_moving_source_needs_all_of_its_figures_above_zero(name, value):
    with pytest.raises(OutsideValidityError, match=name):
        MovingSource(**SOURCE | {name: value})
