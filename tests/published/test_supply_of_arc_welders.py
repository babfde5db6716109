"""What arc welders take from the mains.

National Electrical Code 2008, Article 630, Table 630.11(A) and 630.11(B) [NEC_630_2008]: read in a web copy.
Worked examples: a trade journal's code column 45 [ECM_QA_45] and code quiz 61 [ECM_QUIZ_61], both read.
IEC 60974-1, effective supply current [IEC_60974_1_MEM]: the formula is from memory. The supply currents below
are hand calculations from definitions with the efficiency limit of [EU_2019_1784] (quoted) and power factors
from memory [MEM_GMAW]: they check the arithmetic, not the power factor of any machine.
"""

from math import sqrt

import pytest

from welds.errors import OutsideValidityError
from welds.physics.arc import conventional_load_voltage_mig
from welds.physics.supply import (
    apparent_power,
    cord_voltage_drop,
    effective_supply_current,
    feeder_current,
    gas_left,
    supply_current,
)
from welds.reference.supply import SupplyRow, conductor_factor, supply_row


def test_conductor_for_one_welder(tables):
    """Column 45: 40 A primary at 50 % duty, 40 x 0.71 = 28.40 A."""
    assert 40 * conductor_factor(tables, 50).low == pytest.approx(28.40, abs=0.005)


def test_feeder_for_a_group(tables):
    """Quiz 61, as printed: 80x1.00, 70x0.96, 60x0.84, 50x0.89, 4x40x0.81, 4x25x0.63; 336.75, taken as 337 A.

    Its factors come from both columns of the table, so the products are taken as printed.
    """
    products = [80 * 1.00, 70 * 0.96, 60 * 0.84, 50 * 0.89, *[40 * 0.81] * 4, *[25 * 0.63] * 4]
    assert sum(products[4:]) == pytest.approx(192.6)
    printed = 80 + 67.2 + 42.84 + 31.15 + 0.60 * 192.6
    assert printed == pytest.approx(336.75)
    assert feeder_current(products) == pytest.approx(printed, abs=0.01)
    assert feeder_current(list(reversed(products))) == pytest.approx(printed, abs=0.01)


@pytest.mark.parametrize(
    ("kind", "percent", "printed"),
    [
        ("any", 100, 1.00),
        ("any", 60, 0.78),
        ("any", 20, 0.45),
        ("any", 5, 0.45),
        ("any", 45, 0.71),
        ("motor-generator", 60, 0.81),
        ("motor-generator", 20, 0.55),
    ],
)
def test_factors_as_printed(tables, kind, percent, printed):
    """Between two rows the higher duty cycle counts: the code prints no rule for between."""
    assert conductor_factor(tables, percent, kind).low == printed


def test_first_column_is_the_square_root_of_the_duty_cycle(tables):
    rows = [row for row in tables.records(SupplyRow) if row.topic == "conductor-factor" and row.kind == "any"]
    assert len(rows) == 9
    for row in rows:
        assert row.low == pytest.approx(sqrt(row.duty_percent / 100), abs=0.006)


def test_effective_current():
    assert effective_supply_current(25.0, 1.0, 0.35) == pytest.approx(14.8, abs=0.05)
    assert effective_supply_current(25.0, 1.0, 1.0) == 25.0
    assert effective_supply_current(25.0, 1.0, 0.0) == 1.0


@pytest.mark.parametrize(
    ("amps", "volts", "phases", "efficiency", "factor", "expected_a"),
    [(150, 230, 1, 0.80, 0.70, 25.0), (90, 120, 1, 0.80, 0.70, 24.8), (250, 400, 3, 0.85, 0.90, 12.5)],
)
def test_supply_current(amps, volts, phases, efficiency, factor, expected_a):
    """By hand: 150 A at 21.5 V is 3225 W, over 0.80 and 0.70 is 5759 VA, over 230 V is 25.0 A; and so on."""
    power = apparent_power(conventional_load_voltage_mig(amps), amps, efficiency, factor)
    assert supply_current(power, volts, phases) == pytest.approx(expected_a, abs=0.05)


def test_voltage_drop_by_hand():
    """2 x 20 m of 2.5 mm2 copper: 2 x 20 x 0.0175 / 2.5 = 0.28 ohm; 16 A take 4.48 V."""
    assert cord_voltage_drop(16.0, 20.0, 2.5, 1) == pytest.approx(4.48)
    assert cord_voltage_drop(16.0, 20.0, 2.5, 3) == pytest.approx(4.48 * sqrt(3) / 2)


def test_bottle_by_hand():
    """20 L at 150 bar is 3 cubic metres at 1 bar."""
    assert gas_left(20.0, 150.0) == 3000.0


@pytest.mark.parametrize(
    ("function", "arguments"),
    [
        (apparent_power, (20.0, 100.0, 0.0, 0.7)),
        (apparent_power, (20.0, 100.0, 0.8, 1.1)),
        (supply_current, (5.0, 0.0, 1)),
        (supply_current, (5.0, 230.0, 2)),
        (effective_supply_current, (25.0, 1.0, 1.2)),
        (feeder_current, ([10.0, -1.0],)),
        (cord_voltage_drop, (16.0, 20.0, 0.0, 1)),
        (cord_voltage_drop, (16.0, 20.0, 2.5, 2)),
        (gas_left, (20.0, 400.0)),
    ],
)
def test_outside_the_range_is_refused(function, arguments):
    with pytest.raises(OutsideValidityError):
        function(*arguments)


@pytest.mark.parametrize(
    ("topic", "kind", "phases", "output", "low"),
    [
        ("efficiency", "inverter", 1, "DC", 0.80),
        ("efficiency", "inverter", 3, "DC", 0.85),
        ("efficiency", "inverter", 3, "AC", 0.80),
        ("power-factor", "inverter", 1, "AC", 0.65),
        ("power-factor", "corrected-inverter", 1, "AC", 0.98),
        ("efficiency", "transformer", 1, "AC", 0.60),
    ],
)
def test_what_a_kind_of_source_takes(tables, topic, kind, phases, output, low):
    assert supply_row(tables, topic, kind, phases, output).low == low
