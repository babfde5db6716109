"""[FAA-8083-31] Aviation maintenance technician handbook - airframe, chapter 4: a channel, step by step.

0.040 in sheet, inside radius 0.16 in (chart column 0.156), outside dimensions 1.00, 2.00 and 1.00 in, two
bends of 90 degrees. Lengths in inches; every expected figure is the handbook's, to the digits it prints.
"""

import pytest

from welds.physics.bending import airframe_allowance, bend_allowance, setback

THICKNESS, RADIUS, CHART_RADIUS = 0.040, 0.16, 0.156


def test_setback():
    assert setback(90.0, RADIUS + THICKNESS) == pytest.approx(0.2, abs=5e-5)


def test_flats():
    back = setback(90.0, RADIUS + THICKNESS)
    assert [round(each, 3) for each in (1.00 - back, 2.00 - 2 * back, 1.00 - back)] == [0.8, 1.6, 0.8]


def test_allowance_of_one_right_angle():
    """The handbook reads 0.27 from its chart."""
    assert round(airframe_allowance(90.0, CHART_RADIUS, THICKNESS), 2) == 0.27


def test_total_developed_width():
    """3.74: the handbook adds the allowance rounded to 0.27."""
    assert round(0.8 + 1.6 + 0.8 + 2 * round(airframe_allowance(90.0, CHART_RADIUS, THICKNESS), 2), 2) == 3.74


def test_allowance_of_one_degree_in_the_chart():
    """0.003034; the fitted formula stays within 0.1 % of the chart's figure."""
    assert airframe_allowance(1.0, CHART_RADIUS, THICKNESS) == pytest.approx(0.003034, rel=1.1e-3)


def test_allowance_of_sixty_degrees():
    """0.18204 by the chart; to the three digits that the sheet can be cut to."""
    assert round(airframe_allowance(60.0, CHART_RADIUS, THICKNESS), 3) == round(0.18204, 3)


def test_neutral_line_behind_the_chart():
    """0.4469, read out of 0.0078 T for each degree, gives the same allowance."""
    assert bend_allowance(1.0, CHART_RADIUS, THICKNESS, 0.4469) == pytest.approx(0.003034, rel=1e-3)
