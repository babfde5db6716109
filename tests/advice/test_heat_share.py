"""Unequal pieces: the ways heat leaves by, as EN 1011-2 counts them for combined thickness (from memory).

Two ways at a butt or a corner, three at a T, whose plate runs on to both sides of the web. Worked by hand.
"""

import pytest

from welds.advice.heat_share import effective_thickness_mm
from welds.advice.request import Joint

RUNS_ON = (Joint.TEE, Joint.LAP, Joint.PLUG)


@pytest.mark.parametrize("joint", Joint)
def test_equal_pieces_are_their_own_thickness(joint):
    assert effective_thickness_mm(joint, 2.0, 2.0) == 2.0


@pytest.mark.parametrize("joint", Joint)
def test_the_mean_over_the_ways(joint):
    expected = (2.0 + 3.0 + 3.0) / 3 if joint in RUNS_ON else (2.0 + 3.0) / 2
    assert effective_thickness_mm(joint, 2.0, 3.0) == pytest.approx(expected)
    other_way = (3.0 + 2.0 + 2.0) / 3 if joint in RUNS_ON else (3.0 + 2.0) / 2
    assert effective_thickness_mm(joint, 3.0, 2.0) == pytest.approx(other_way)


@pytest.mark.parametrize(("first_mm", "other_mm"), [(1.0, 6.0), (6.0, 1.0)])
def test_the_thin_edge_sets_the_limit(first_mm, other_mm):
    assert effective_thickness_mm(Joint.BUTT, first_mm, other_mm) == pytest.approx(1.6)
