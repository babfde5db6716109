"""Cup numbers: the number counts sixteenths of an inch.

Common practice, no published source [COMMON_PRACTICE]. An independent copy of the bores, in mm, from a
Chinese welding handbook ([CN_WELDING_HB_V1_E2] pp. 142 and 149, quoted): 6.4, 8, 9.5, 11.1 and 12.7 to 13
for the numbers 4, 5, 6, 7 and 8.
"""

import pytest

from welds.reference.shielding import Cup

INCH_MM = 25.4


def test_the_number_is_sixteenths_of_an_inch(tables):
    cups = tables.records(Cup)
    assert [cup.number for cup in cups] == list(range(3, 17))
    for cup in cups:
        assert cup.bore_in * 16 == cup.number
        assert cup.bore_mm == pytest.approx(cup.number / 16 * INCH_MM, abs=0.0051)  # kept to 0.01 mm


@pytest.mark.parametrize(("number", "bore_mm"), [(4, 6.4), (5, 8), (6, 9.5), (7, 11.1), (8, 12.7)])
def test_bores_in_another_handbook(tables, number, bore_mm):
    cup = next(cup for cup in tables.records(Cup) if cup.number == number)
    assert cup.bore_mm == pytest.approx(bore_mm, abs=0.1)
