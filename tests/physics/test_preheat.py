"""Carbon equivalents element by element, as the formulas are printed: one percent of each, by hand."""

import pytest

from welds.physics.preheat import carbon_equivalent_cet, carbon_equivalent_iiw, preheat_cet


@pytest.mark.parametrize(
    ("element", "iiw", "cet"),
    [
        ("carbon", 1.0, 1.0),
        ("manganese", 1 / 6, 1 / 10),
        ("chromium", 1 / 5, 1 / 20),
        ("molybdenum", 1 / 5, 1 / 10),
        ("nickel", 1 / 15, 1 / 40),
        ("copper", 1 / 15, 1 / 20),
    ],
)
def test_what_one_percent_counts(element, iiw, cet):
    """[CE-FORM-Q] C + Mn/6 + (Cr+Mo+V)/5 + (Ni+Cu)/15; [EN1011-2] C + (Mn+Mo)/10 + (Cr+Cu)/20 + Ni/40."""
    one = {"carbon_percent": 0.0} | {f"{element}_percent": 1.0}
    assert carbon_equivalent_iiw(**one) == pytest.approx(iiw, rel=1e-12)
    assert carbon_equivalent_cet(**one) == pytest.approx(cet, rel=1e-12)
    assert carbon_equivalent_iiw(0.0, vanadium_percent=1.0) == pytest.approx(1 / 5)


def test_an_alloyed_steel_by_hand():
    """0.15 C, 0.9 Mn, 1.2 Cr, 0.5 Mo, 0.1 V, 0.6 Ni, 0.3 Cu: 0.15 + 0.15 + 0.36 + 0.06 and 0.38."""
    assert carbon_equivalent_iiw(0.15, 0.9, 1.2, 0.5, 0.1, 0.6, 0.3) == pytest.approx(0.72)
    assert carbon_equivalent_cet(0.15, 0.9, 0.5, 1.2, 0.3, 0.6) == pytest.approx(0.15 + 0.14 + 0.075 + 0.015)


def test_more_of_anything_but_heat_asks_for_more_preheat():
    usual = preheat_cet(0.35, 30.0, 5.0, 1.5)
    for more in ((0.36, 30.0, 5.0, 1.5), (0.35, 31.0, 5.0, 1.5), (0.35, 30.0, 5.5, 1.5)):
        assert preheat_cet(*more) > usual
    assert preheat_cet(0.35, 30.0, 5.0, 1.6) < usual
