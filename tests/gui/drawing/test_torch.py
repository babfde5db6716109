"""Torch and gun in their own frame: distances along the axis as a welder measures them."""

from math import radians, tan

import pytest

from welds.gui.drawing.placing import bounds
from welds.gui.drawing.torch import CUP_WALL_MM, mig_gun, tig_torch


def torch(**changes):
    given = {
        "tungsten_mm": 2.4, "tip_angle_deg": 60.0, "tip_flat_mm": 0.4, "bore_mm": 12.7, "stick_out_mm": 6.0,
        "arc_mm": 2.0, "arc_spread_deg": 90.0, "has_gas_lens": False,
    }  # fmt: skip
    return tig_torch(**(given | changes))


def test_stick_out_is_measured_from_the_cup_to_the_point():
    made = torch()
    assert (made.end_mm, made.mouth_mm) == (2.0, 8.0)
    assert min(y for _, y in made.parts["tungsten"][0]) == 2.0
    assert bounds(made.parts["cup"])[1] == 8.0


def test_the_point_is_ground_to_its_included_angle():
    outline = torch().parts["tungsten"][0]
    # From a flat of 0.4 to 2.4 mm at 60 degrees included: 1.0 / tan 30 = 1.732 mm long.
    assert outline[2] == pytest.approx((1.2, 2.0 + 1.732), abs=1e-3)


def test_the_cup_has_its_bore_and_the_arc_its_cone():
    made = torch()
    left, right = made.parts["cup"]
    assert max(x for x, _ in left) == -6.35
    assert min(x for x, _ in right) == 6.35
    assert made.outer_radius_mm == pytest.approx(6.35 + CUP_WALL_MM)
    near_left, near_right, far_right, far_left = made.parts["arc"][0]
    # 90 degrees included over 2 mm: two millimetres wider to each side.
    assert far_right == pytest.approx((0.2 + 2.0 * tan(radians(45.0)), 0.0))
    assert far_left == pytest.approx((-2.2, 0.0))
    assert (near_left, near_right) == ((-0.2, 2.0), (0.2, 2.0))


def test_a_lens_fills_the_bore_and_only_a_lens_does():
    assert "lens" not in torch().parts
    left, bottom, right, _ = bounds(torch(has_gas_lens=True).parts["lens"])
    assert (left, right) == (-6.35, 6.35)
    assert bottom > 8.0  # inside the cup


def test_a_cup_that_would_touch_is_moved_back_and_says_so():
    assert not torch(least_mouth_mm=7.9).is_moved_back
    moved = torch(least_mouth_mm=9.5)
    assert moved.is_moved_back
    assert (moved.end_mm, moved.mouth_mm) == (2.0, 9.5)


def test_gun_holds_its_contact_tip_at_the_distance_given():
    gun = mig_gun(0.8, 13.0, 10.0, 2.0, 60.0, 3.0)
    assert bounds(gun.parts["contact"])[1] == 10.0
    assert bounds(gun.parts["wire"])[1] == 2.0
    assert gun.mouth_mm == 7.0  # a tip three millimetres inside
    moved = mig_gun(0.8, 13.0, 10.0, 2.0, 60.0, 3.0, least_mouth_mm=11.0)
    assert moved.is_moved_back
    assert bounds(moved.parts["contact"])[1] == 10.0
