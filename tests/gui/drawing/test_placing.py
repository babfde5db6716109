"""Joints in their welding positions, and the torch kept out of the metal."""

from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.advice.request import Joint, Process
from welds.gui.drawing.geometry import box, joint_shape
from welds.gui.drawing.placing import bounds, is_inside, least_distance, placed, turn, turned, upside_down
from welds.gui.drawing.scene import JointScene, shape_of, torch_of
from welds.gui.drawing.side_shape import side_shape
from welds.gui.drawing.torch import Pose

POSITIONS = ("PA", "PB", "PC", "PD", "PE", "PF", "PG")


def test_turn_a_quarter():
    assert turn((1.0, 0.0), 90.0) == pytest.approx((0.0, 1.0))
    assert turn((1.0, 0.0), -45.0) == pytest.approx((1 / sqrt(2.0), -1 / sqrt(2.0)))


def axis(joint, position):
    return placed(joint_shape(joint, 3.0, 3.0), position).axis_deg % 360.0


def test_flat_means_a_torch_that_points_straight_down():
    for joint in (Joint.BUTT, Joint.TEE, Joint.OUTSIDE_CORNER, Joint.INSIDE_CORNER, Joint.EDGE, Joint.PLUG):
        assert axis(joint, "PA") == 90.0
    assert axis(Joint.LAP, "PA") == 55.0  # sheets flat on the bench


def test_a_flat_tee_is_a_trough_and_a_flat_outside_corner_a_roof():
    trough = placed(joint_shape(Joint.TEE, 3.0, 3.0), "PA")
    assert all(max(y for _, y in part.outline) > 5.0 for part in trough.pieces)
    roof = placed(joint_shape(Joint.OUTSIDE_CORNER, 3.0, 3.0), "PA")
    assert all(sum(y for _, y in part.outline) / 4.0 < 0.0 for part in roof.pieces)


def test_the_other_positions():
    assert axis(Joint.TEE, "PB") == 45.0  # base level on the bench
    assert axis(Joint.BUTT, "PC") == 0.0  # sheets on the wall, torch level
    assert axis(Joint.BUTT, "PE") == 270.0  # from beneath
    assert axis(Joint.TEE, "PD") == 315.0  # into the corner under a ceiling
    assert axis(Joint.TEE, "PF") == axis(Joint.TEE, "PG") == 45.0  # seen from above
    assert axis(Joint.BUTT, "somewhere") == 90.0


def test_turning_and_hanging_keep_the_angle_to_the_face():
    for joint in Joint:
        shape = joint_shape(joint, 2.0, 4.0)
        assert turned(shape, 33.0).work_angle_deg == pytest.approx(shape.work_angle_deg)
        assert upside_down(shape).work_angle_deg == pytest.approx(shape.work_angle_deg)


def test_a_cup_touches_both_walls_of_a_right_angle_one_radius_from_the_root():
    shape = joint_shape(Joint.TEE, 3.0, 3.0, arm_mm=30.0)
    outlines = [part.outline for part in shape.pieces]
    assert least_distance(outlines, shape.root, 45.0, 8.0) == pytest.approx(8.0)
    # At 60 degrees from the base the upright is 30 degrees away: 8 / tan 30 = 13.86 mm.
    assert least_distance(outlines, shape.root, 60.0, 8.0) == pytest.approx(13.856, abs=1e-3)


def test_a_cup_stands_on_a_flat_face_and_on_the_higher_sheet_of_a_step():
    flat = [box(-20.0, -2.0, 20.0, 0.0)]
    assert least_distance(flat, (0.0, 0.0), 90.0, 8.0) == pytest.approx(0.0)
    step = joint_shape(Joint.BUTT, 1.0, 12.0)
    assert least_distance([part.outline for part in step.pieces], step.root, 90.0, 8.0) == pytest.approx(11.0)


def test_a_wide_cup_stays_above_a_bevel_that_a_narrow_one_enters():
    shape = joint_shape(Joint.BUTT, 10.0, 10.0, is_bevelled=True)
    outlines = [part.outline for part in shape.pieces]
    # The V is 2 x 4.907 mm wide at the face, which lies 8.5 mm above the root face.
    assert least_distance(outlines, shape.root, 90.0, 8.0) == pytest.approx(8.5)
    # A radius of 3 mm meets the slope at 3 x sqrt(3) = 5.196 mm.
    assert least_distance(outlines, shape.root, 90.0, 3.0) == pytest.approx(5.196, abs=1e-3)


def test_is_inside():
    square = box(0.0, 0.0, 2.0, 2.0)
    assert is_inside((1.0, 1.0), square)
    assert not is_inside((3.0, 1.0), square)
    assert not is_inside((1.0, -0.1), square)


scenes = st.builds(
    JointScene,
    process=st.sampled_from(Process),
    joint=st.sampled_from(Joint),
    position=st.sampled_from(POSITIONS),
    thickness_mm=st.floats(0.5, 12.7),
    other_thickness_mm=st.floats(0.5, 12.7),
    gap_mm=st.floats(0.0, 2.0),
    is_bevelled=st.booleans(),
    cup_number=st.sampled_from([4.0, 6.0, 8.0, 12.0, 16.0]),
    stick_out_mm=st.floats(3.0, 12.0),
    tip_to_work_mm=st.floats(8.0, 22.0),
    has_gas_lens=st.booleans(),
)


@given(scenes)
def test_cup_and_nozzle_never_cross_the_metal(scene):
    shape = shape_of(scene)
    torch = torch_of(scene, shape)
    pose = Pose(shape.root, shape.axis_deg)
    walls = [*torch.parts.get("cup", ()), *torch.parts.get("nozzle", ())]
    for wall in walls:
        for start, end in zip(wall, wall[1:] + wall[:1], strict=True):
            for share in (0.0, 0.25, 0.5, 0.75):
                along = (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))
                (point,) = pose.carried((along,))
                assert not any(is_inside(point, part.outline) for part in shape.pieces)


@given(scenes)
def test_the_torch_stays_at_the_stick_out_given_wherever_it_can(scene):
    torch = torch_of(scene, shape_of(scene))
    if scene.process is Process.TIG and not torch.is_moved_back:
        assert torch.mouth_mm - torch.end_mm == pytest.approx(scene.stick_out_mm)
    if scene.process is Process.MIG:
        assert torch.tube_end_mm == scene.tip_to_work_mm


def test_a_torch_part_is_carried_to_the_root_and_along_the_axis():
    assert Pose((1.0, 2.0), 90.0).along(5.0) == pytest.approx((1.0, 7.0))
    assert Pose((0.0, 0.0), 0.0).along(5.0, 1.0) == pytest.approx((5.0, -1.0))
    assert bounds([Pose((0.0, 0.0), 180.0).carried(box(-1.0, 0.0, 1.0, 4.0))]) == pytest.approx(
        (-4.0, -1.0, 0.0, 1.0)
    )


@pytest.mark.parametrize(
    ("position", "way", "torch_side"),
    [
        ("PA", (1, 0), (0, 1)),  # to the right, torch above
        ("PF", (0, 1), (1, 0)),  # upwards, torch at the right of the standing plate
        ("PG", (0, -1), (1, 0)),
        ("PE", (1, 0), (0, -1)),  # torch beneath
    ],
)
def test_the_side_view_shows_which_way_to_travel(position, way, torch_side):
    side = side_shape(JointScene(position=position, filler_mm=1.6))
    start, end = side.travel
    assert [sign(b - a) for a, b in zip(start, end, strict=True)] == list(way)
    square = turn((1.0, 0.0), side.square_deg)
    assert [round(part) for part in square] == list(torch_side)
    assert side.rod is not None
    reach = [b - a for a, b in zip(side.rod[0], side.rod[1], strict=True)]
    ahead = sum(a * b for a, b in zip(reach, way, strict=True))
    above = sum(a * b for a, b in zip(reach, torch_side, strict=True))
    # The rod comes from ahead, 20 degrees off the work: tan 20 = 0.364.
    assert ahead > 0
    assert above / ahead == pytest.approx(0.364, abs=1e-3)
    lean = (side.pose.axis_deg - side.square_deg + 180.0) % 360.0 - 180.0
    assert abs(lean) == 15.0
    tilt = turn((1.0, 0.0), side.pose.axis_deg)
    assert sum(a * b for a, b in zip(tilt, way, strict=True)) < 0  # leans back: the arc points ahead


def sign(value):
    return (value > 1e-9) - (value < -1e-9)


def test_mig_takes_no_rod():
    assert side_shape(JointScene(process=Process.MIG, filler_mm=1.6)).rod is None
