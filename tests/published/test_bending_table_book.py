"""Technical drawing textbook, section 16.8, page 206 [WESTERMANN], and the compensation table of table books.

The first example was read in print. The table's values (one decimal, DIN 6935, opening angle 90 degrees) and
the example of three legs are from memory of table books, as data/sources.yaml says of [DIN6935-Q].
"""

import pytest

from welds.physics.bending import compensation_din_6935, neutral_line_din_6935, shop_deduction


def test_developed_length_by_the_rule_of_thumb():
    """Legs 50, 40 and 30 mm, r 1, t 1, two bends: 116 mm."""
    assert 50 + 40 + 30 - 2 * shop_deduction(1.0, 1.0) == 116.0


@pytest.mark.parametrize(
    ("radius", "thickness", "printed"), [(1.0, 1.0, 1.9), (1.6, 1.0, 2.1), (2.5, 1.0, 2.4), (4.0, 2.0, 4.5)]
)
def test_compensation_table(radius: float, thickness: float, printed: float):
    assert round(-compensation_din_6935(90.0, radius, thickness), 1) == printed


def test_three_legs():
    """Legs 25, 20 and 15 mm, r 4, s 2: 60 - 2 x 4.5 = 51 mm."""
    assert round(60 + 2 * compensation_din_6935(90.0, 4.0, 2.0)) == 51


@pytest.mark.parametrize(
    ("ratio", "k"),
    [(0.65, 0.2782), (0.75, 0.2938), (1, 0.325), (1.5, 0.369), (2, 0.4003), (5, 0.4997), (6, 0.5)],
)
def test_factor_for_steel(ratio: float, k: float):
    assert neutral_line_din_6935(ratio, 1.0) == pytest.approx(k, abs=5.1e-5)


@pytest.mark.parametrize(
    ("opening", "radius", "thickness", "v"),
    [(60.0, 2.0, 2.0, -2.450), (120.0, 2.0, 2.0, -1.844), (135.0, 6.0, 3.0, -1.800), (170.0, 2.0, 2.0, 0.0)],
)
def test_other_angles(opening: float, radius: float, thickness: float, v: float):
    """Worked by hand from the standard's formulas, beyond and below the right angle."""
    assert compensation_din_6935(opening, radius, thickness) == pytest.approx(v, abs=5.1e-4)
