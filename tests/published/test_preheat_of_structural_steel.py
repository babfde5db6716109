"""The preheat that cards state for steel beside method B of EN 1011-2 [EN1011-2-Q], where both speak.

The schedules for steel end at 10 mm and method B begins there, so that one thickness is all they share: the
reason why the formula is no rule of its own. Compositions: C 0.20 Mn 0.90 for A36, C 0.18 Mn 1.4 for S355,
C 0.30 Mn 0.50 Cr 0.95 Mo 0.20 for 4130. Hydrogen: 3 ml/100 g for solid wire under gas (from memory: below
5).
"""

import pytest

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.physics.preheat import carbon_equivalent_cet, preheat_cet

THICKEST_MM = 10.0
SOLID_WIRE_ML = 3.0
WARM_TO_THE_HAND_C = 25.0
EQUIVALENTS = {
    "A36": carbon_equivalent_cet(0.20, 0.90),
    "S355": carbon_equivalent_cet(0.18, 1.4),
    "4130": carbon_equivalent_cet(0.30, 0.50, 0.20, 0.95),
}


def card_of(metal, tables):
    return advise(Request(Process.MIG, metal, THICKEST_MM, Joint.TEE), tables).settings


def by_method_b(metal, settings):
    heat = settings["heat_input"].band.start
    return preheat_cet(EQUIVALENTS[metal], THICKEST_MM, SOLID_WIRE_ML, heat)


@pytest.mark.parametrize("metal", ["A36", "S355"])
def test_structural_steel_needs_none_beyond_drying(metal, tables):
    settings = card_of(metal, tables)
    assert by_method_b(metal, settings) <= WARM_TO_THE_HAND_C
    assert settings["preheat"].value == "none"


def test_chromium_molybdenum_steel_is_warmed_more_than_method_b_asks(tables):
    settings = card_of("4130", tables)
    assert WARM_TO_THE_HAND_C < by_method_b("4130", settings) <= settings["preheat"].band.low
