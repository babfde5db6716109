"""Cross-sections against coordinates worked by hand; the trade's own angles for each joint."""

from math import dist, sqrt

import pytest

from welds.advice.request import Joint
from welds.gui.drawing.geometry import box, bulge, joint_shape, lean_deg
from welds.gui.drawing.placing import bounds, is_inside


def piece(shape, is_first):
    return next(piece for piece in shape.pieces if piece.is_first is is_first)


def test_butt_meets_at_zero_and_the_torch_stands_square_on_the_face():
    shape = joint_shape(Joint.BUTT, 3.0, 3.0, arm_mm=20.0)
    assert bounds([piece(shape, True).outline]) == (-20.0, 0.0, 0.0, 3.0)
    assert bounds([piece(shape, False).outline]) == (0.0, 0.0, 20.0, 3.0)
    assert shape.root == (0.0, 3.0)
    assert (shape.axis_deg, shape.work_angle_deg) == (90.0, 90.0)


def test_butt_gap_is_shared_by_both_sides():
    shape = joint_shape(Joint.BUTT, 3.0, 3.0, gap_mm=2.0)
    assert shape.gap == ((-1.0, 0.0), (1.0, 0.0))
    assert bounds([piece(shape, True).outline])[2] == -1.0
    assert bounds([piece(shape, False).outline])[0] == 1.0


def test_bevelled_butt_opens_to_sixty_degrees_over_a_root_face():
    shape = joint_shape(Joint.BUTT, 10.0, 10.0, is_bevelled=True)
    # Half the V: (10 - 1.5) mm high at 30 degrees, so 8.5 / sqrt(3) = 4.907 mm wide at the face.
    assert (8.5 / sqrt(3.0), 10.0) in [pytest.approx(corner) for corner in piece(shape, False).outline]
    assert shape.root == (0.0, 1.5)


def test_tee_stands_on_its_base_and_the_torch_comes_in_at_half_a_right_angle():
    shape = joint_shape(Joint.TEE, 2.0, 4.0, arm_mm=20.0)
    assert bounds([piece(shape, True).outline]) == (-2.0, 0.0, 0.0, 20.0)
    assert bounds([piece(shape, False).outline])[1::2] == (-4.0, 0.0)
    assert shape.root == (0.0, 0.0)
    assert joint_shape(Joint.TEE, 3.0, 3.0).work_angle_deg == 45.0


def test_inside_corner_is_a_tee_whose_base_ends_under_the_upright():
    base = piece(joint_shape(Joint.INSIDE_CORNER, 2.0, 3.0, arm_mm=20.0), False)
    assert bounds([base.outline]) == (-2.0, -3.0, 20.0, 0.0)


def test_lap_shows_the_step_and_the_torch_lies_back_from_it():
    shape = joint_shape(Joint.LAP, 2.0, 2.0, gap_mm=0.5, arm_mm=20.0)
    assert bounds([piece(shape, True).outline]) == (-20.0, 0.5, 0.0, 2.5)
    assert bounds([piece(shape, False).outline]) == (-12.0, -2.0, 20.0, 0.0)
    assert 45.0 <= shape.work_angle_deg <= 60.0


def test_outside_corner_touches_with_its_inner_edges_and_the_torch_halves_the_notch():
    shape = joint_shape(Joint.OUTSIDE_CORNER, 2.0, 3.0, arm_mm=20.0)
    assert bounds([piece(shape, True).outline]) == (-20.0, 0.0, 0.0, 2.0)
    assert bounds([piece(shape, False).outline]) == (0.0, -20.0, 3.0, 0.0)
    equal = joint_shape(Joint.OUTSIDE_CORNER, 2.0, 2.0)
    # The notch lies between the end face of one sheet (straight up) and of the other (level).
    assert equal.axis_deg == (90.0 + 0.0) / 2.0


def test_outside_corner_gap_is_the_way_between_the_inner_edges():
    shape = joint_shape(Joint.OUTSIDE_CORNER, 2.0, 2.0, gap_mm=1.0)
    assert shape.gap is not None
    assert dist(*shape.gap) == pytest.approx(1.0)
    # Half a millimetre along each diagonal: 0.5 / sqrt(2) = 0.354 across and up.
    assert shape.gap[0] == pytest.approx((-0.3536, 0.3536), abs=1e-4)


def test_edge_joint_lies_face_to_face_with_level_edges():
    shape = joint_shape(Joint.EDGE, 1.0, 2.0, arm_mm=20.0)
    assert bounds([piece(shape, True).outline]) == (-1.0, -20.0, 0.0, 0.0)
    assert bounds([piece(shape, False).outline]) == (0.0, -20.0, 2.0, 0.0)


def test_plug_leaves_the_hole_open_and_aims_at_the_lower_sheet():
    shape = joint_shape(Joint.PLUG, 1.2, 2.0, hole_mm=8.0, arm_mm=20.0)
    inner = sorted(x for piece in shape.pieces if piece.is_first for x, _ in piece.outline)
    assert inner[2:6] == [-4.0, -4.0, 4.0, 4.0]
    assert shape.hole == ((-4.0, 1.2), (4.0, 1.2))
    assert (shape.root, shape.axis_deg) == ((0.0, 0.0), 90.0)


def test_bracket_on_a_thicker_rail_leans_the_torch_so_that_the_rail_gets_the_heat():
    # 2 mm on 5 mm: 20 degrees x (5 - 2) / (5 + 2) = 8.57 degrees.
    assert lean_deg(2.0, 5.0) == pytest.approx(8.571, abs=1e-3)
    assert lean_deg(5.0, 2.0) == -lean_deg(2.0, 5.0)
    assert lean_deg(3.0, 3.0) == 0.0
    assert lean_deg(0.5, 12.0) == 10.0
    # Steeper onto the base of a tee, steeper onto the lower sheet of a lap; over the thin side of a butt.
    assert joint_shape(Joint.TEE, 2.0, 5.0).axis_deg == pytest.approx(53.571, abs=1e-3)
    assert joint_shape(Joint.LAP, 2.0, 5.0).axis_deg > joint_shape(Joint.LAP, 2.0, 2.0).axis_deg
    assert joint_shape(Joint.BUTT, 2.0, 5.0).axis_deg > 90.0  # leans left, over the thin first piece


@pytest.mark.parametrize("joint", Joint)
@pytest.mark.parametrize(("first", "other"), [(0.5, 0.5), (2.0, 5.0), (5.0, 2.0), (12.0, 12.0)])
def test_every_joint_keeps_its_thicknesses_and_lets_no_sheets_overlap(joint, first, other):
    shape = joint_shape(joint, first, other)
    for part in shape.pieces:
        assert dist(*part.thickness) == pytest.approx(first if part.is_first else other)
        for corner in part.thickness:
            near = [
                tuple(0.999 * a + 0.001 * b for a, b in zip(corner, end, strict=True))
                for end in part.thickness
            ]
            assert any(is_inside(point, part.outline) for point in near)
    for one in shape.pieces:
        for two in shape.pieces:
            if one is not two:
                middle = tuple(sum(axis) / len(one.outline) for axis in zip(*one.outline, strict=True))
                assert not is_inside(middle, two.outline)


@pytest.mark.parametrize("joint", Joint)
def test_the_bead_joins_the_pieces(joint):
    shape = joint_shape(joint, 3.0, 3.0)
    left, bottom, right, top = bounds([shape.bead])
    grid = [
        (left + (right - left) * x / 40.0, bottom + (top - bottom) * y / 40.0)
        for x in range(41)
        for y in range(41)
    ]
    melted = [point for point in grid if is_inside(point, shape.bead)]
    for is_first in (True, False):
        outlines = [part.outline for part in shape.pieces if part.is_first is is_first]
        assert any(is_inside(point, outline) for point in melted for outline in outlines)


@pytest.mark.parametrize("joint", Joint)
def test_backing_lies_outside_the_metal(joint):
    shape = joint_shape(joint, 2.0, 3.0)
    for bar in shape.backing:
        left, bottom, right, top = bounds([bar])
        for share in (0.1, 0.5, 0.9):
            for height in (0.1, 0.5, 0.9):
                point = (left + share * (right - left), bottom + height * (top - bottom))
                if is_inside(point, bar):
                    assert not any(is_inside(point, part.outline) for part in shape.pieces)


def test_box_and_bulge_by_hand():
    assert box(0.0, 1.0, 2.0, 3.0) == ((0.0, 1.0), (2.0, 1.0), (2.0, 3.0), (0.0, 3.0))
    curve = bulge((0.0, 0.0), (10.0, 0.0), 2.0, steps=2)
    assert curve == ((0.0, 0.0), (5.0, 2.0), (10.0, 0.0))
