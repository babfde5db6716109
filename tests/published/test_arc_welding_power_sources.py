"""IEC 60974-1, Arc welding equipment, part 1: welding power sources.

Clause 11.2, conventional load voltage (from memory, high confidence: the clause text was not at hand), and
the ten-minute duty cycle, with the square law as taught beside it. Glossary entry on duty cycle as read in
[AWS_GLOSSARY_DUTY]: 300 A at 60 % is six minutes in ten.
"""

import pytest

from welds.errors import OutsideValidityError
from welds.physics.arc import conventional_load_voltage_mig, conventional_load_voltage_tig
from welds.physics.power_source import duty_cycle_at


@pytest.mark.parametrize(
    ("amps", "volts"), [(0, 10.0), (100, 14.0), (150, 16.0), (200, 18.0), (250, 20.0), (600, 34.0)]
)
def test_tig_line(amps, volts):
    assert conventional_load_voltage_tig(amps) == pytest.approx(volts)


@pytest.mark.parametrize(
    ("amps", "volts"), [(0, 14.0), (100, 19.0), (150, 21.5), (200, 24.0), (300, 29.0), (600, 44.0)]
)
def test_mig_line(amps, volts):
    assert conventional_load_voltage_mig(amps) == pytest.approx(volts)


@pytest.mark.parametrize("line", [conventional_load_voltage_tig, conventional_load_voltage_mig])
@pytest.mark.parametrize("amps", [-1.0, 600.1, float("nan")])
def test_lines_end_at_600_amperes(line, amps):
    with pytest.raises(OutsideValidityError):
        line(amps)


def test_six_minutes_in_ten():
    assert duty_cycle_at(300, 300, 60) == 60


@pytest.mark.parametrize(
    ("amps", "rated", "percent", "expected"),
    [(232, 300, 60, 100), (153, 200, 35, 60), (118, 200, 35, 100), (150, 200, 35, 62)],
)
def test_square_law(amps, rated, percent, expected):
    assert duty_cycle_at(amps, rated, percent) == pytest.approx(expected, abs=1.0)


def test_all_ten_minutes_are_the_most():
    assert duty_cycle_at(0.5, 200, 35) == 100


@pytest.mark.parametrize("amps", [220, 200.1, 0, -0.5, float("nan")])
def test_neither_upward_past_the_plate_nor_without_a_current(amps):
    with pytest.raises(OutsideValidityError):
        duty_cycle_at(amps, 200, 35)
