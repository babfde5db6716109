"""Heat input: EN 1011-1 factors and the forms quoted for EN 1011-2 [EN1011-2-Q], [TWI_FAQ_HI].

Q = k U I / v; k is 0.6 for TIG (141) and 0.8 for MIG and MAG (131, 135). The printed arc energy is 20 V,
300 A, 2.5 mm/s: 2400 J/mm [ARC-ENERGY-Q].
"""

import pytest

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.advice.rules.heat_input import PROCESS_FACTOR
from welds.errors import OutsideValidityError
from welds.physics.arc import heat_input


def test_process_factors():
    assert PROCESS_FACTOR == {Process.TIG: 0.6, Process.MIG: 0.8}


def test_printed_arc_energy():
    assert heat_input(20, 300, 2.5, 1.0) == pytest.approx(2.400)


def test_mig_at_300_mm_per_minute():
    """21.5 V, 150 A, 300 mm/min: arc energy 0.645 kJ/mm, heat input 0.516 kJ/mm (worked by hand)."""
    assert heat_input(21.5, 150, 300 / 60, 1.0) == pytest.approx(0.645)
    assert heat_input(21.5, 150, 300 / 60, 0.8) == pytest.approx(0.516)


@pytest.mark.parametrize(("speed", "factor"), [(0.0, 0.6), (-1.0, 0.6), (5.0, 0.0), (5.0, 1.1)])
def test_outside_the_definition(speed, factor):
    with pytest.raises(OutsideValidityError):
        heat_input(20, 100, speed, factor)


@pytest.mark.parametrize("process", list(Process))
def test_the_card_says_what_the_formula_says(tables, process):
    settings = advise(Request(process, "low-carbon", 2.0, Joint.BUTT), tables).settings
    volts, amps, travel = (settings[name].band.start for name in ("arc_voltage", "current", "travel_speed"))
    by_hand = PROCESS_FACTOR[process] * volts * amps / travel / 1000
    assert settings["heat_input"].band.start == pytest.approx(by_hand, abs=1e-4)
