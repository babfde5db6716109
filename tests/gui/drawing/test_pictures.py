"""Pictures painted for real: nothing outside the rectangle, the right thing in the right place."""

from dataclasses import replace
from itertools import pairwise, product

import numpy as np
import pytest
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from welds.advice.request import Joint, Process
from welds.gui.drawing import joint as joint_module
from welds.gui.drawing.callouts import Picture, callouts
from welds.gui.drawing.ink import DARK, LIGHT, PRINT
from welds.gui.drawing.joint import paint_joint, paint_joint_tile
from welds.gui.drawing.labels import Label, Lettering, stacked
from welds.gui.drawing.placing import bounds
from welds.gui.drawing.scene import JointScene, shape_of, torch_of
from welds.gui.drawing.strokes import View, hatch_lines
from welds.gui.drawing.wave import paint_wave
from welds.quantities.units import Units

MARGIN = 40
MARK = QColor("#ff00ff")
MARK_PIXEL = 0xFF00FF
BASE = JointScene(
    filler_mm=2.4, tungsten_mm=2.4, arc_mm=2.4, cup_number=8.0, stick_out_mm=8.0, has_gas_lens=True
)
SIZES = [(760, 380), (330, 700), (340, 250), (280, 220), (120, 90), (1000, 240)]

pytestmark = pytest.mark.usefixtures("qapp")


def painted(width, height, paint, scale=1.0):
    """Paint into the middle of a larger picture of one colour."""
    image = QImage(
        round(scale * (width + 2 * MARGIN)), round(scale * (height + 2 * MARGIN)), QImage.Format.Format_RGB32
    )
    image.fill(MARK)
    painter = QPainter(image)
    try:
        painter.scale(scale, scale)
        paint(painter, QRectF(MARGIN, MARGIN, width, height))
    finally:
        painter.end()
    return image


def pixels(image):
    """The picture as rows of 0xrrggbb numbers."""
    return (
        np.frombuffer(image.constBits(), np.uint32).reshape(image.height(), -1)[:, : image.width()] & 0xFFFFFF
    )


def margin_is_clean(image):
    outside = pixels(image).copy()
    outside[MARGIN:-MARGIN, MARGIN:-MARGIN] = MARK_PIXEL
    return bool((outside == MARK_PIXEL).all())


def colours(image):
    return {f"#{pixel:06x}" for pixel in np.unique(pixels(image))}


@pytest.mark.parametrize("joint", Joint)
@pytest.mark.parametrize("size", SIZES, ids=str)
def test_no_line_or_word_leaves_the_rectangle(joint, size):
    scenes = [
        replace(BASE, joint=joint, units=Units.INCH, thickness_mm=2.03, other_thickness_mm=5.0, has_bar=True),
        replace(BASE, joint=joint, process=Process.MIG, position="PF", thickness_mm=0.5, gap_mm=1.0),
    ]
    for scene, ink in zip(scenes, (LIGHT, PRINT), strict=True):
        image = painted(
            *size, lambda painter, rect, scene=scene, ink=ink: paint_joint(painter, rect, scene, ink)
        )
        assert margin_is_clean(image)


@pytest.mark.parametrize("position", ["PA", "PB", "PC", "PD", "PE", "PF", "PG", "unknown"])
def test_every_position_stays_inside(position):
    for joint in (Joint.TEE, Joint.OUTSIDE_CORNER, Joint.LAP):
        scene = replace(BASE, joint=joint, position=position, thickness_mm=12.0, other_thickness_mm=12.0)
        assert margin_is_clean(painted(640, 300, lambda p, rect, s=scene: paint_joint(p, rect, s, DARK)))


@pytest.mark.parametrize("joint", Joint)
def test_tiles_show_two_sheets_and_a_weld_and_stay_inside(joint):
    for first, other in ((2.0, 2.0), (0.5, 0.5), (1.0, 12.0), (5.0, 2.0)):
        image = painted(
            72, 56, lambda p, rect, a=first, b=other: paint_joint_tile(p, rect, joint, a, b, LIGHT)
        )
        assert margin_is_clean(image)
        if (first, other) != (1.0, 12.0):  # two pixels of sheet are all outline
            assert {LIGHT.first, LIGHT.other, LIGHT.weld} <= colours(image)


def test_tiles_of_different_joints_differ():
    tiles = {}
    for joint in Joint:
        image = painted(72, 56, lambda p, rect, j=joint: paint_joint_tile(p, rect, j, 2.0, 2.0, LIGHT))
        tiles[joint] = bytes(image.constBits())
    assert len(set(tiles.values())) == len(Joint)


@pytest.mark.parametrize(
    ("frequency", "percent"),
    [(120.0, 70.0), (20.0, 50.0), (250.0, 99.0), (0.0, 100.0), (0.0, 0.0), (60.0, 100.0)],
)
@pytest.mark.parametrize("size", [(460, 220), (300, 170), (231, 166), (180, 80), (1000, 150)], ids=str)
def test_waves_stay_inside(frequency, percent, size):
    for ink in (LIGHT, PRINT):
        image = painted(*size, lambda p, rect, i=ink: paint_wave(p, rect, frequency, percent, 125.0, i))
        assert margin_is_clean(image)


def test_print_uses_no_colour():
    for paint in (
        lambda p, rect: paint_joint(p, rect, replace(BASE, joint=Joint.BUTT, has_bar=True), PRINT),
        lambda p, rect: paint_joint(p, rect, replace(BASE, process=Process.MIG, has_purge=True), PRINT),
        lambda p, rect: paint_joint_tile(p, rect, Joint.TEE, 2.0, 5.0, PRINT),
        lambda p, rect: paint_wave(p, rect, 120.0, 70.0, 125.0, PRINT),
    ):
        shades = colours(painted(500, 300, paint)) - {MARK.name()}
        assert all(shade[1:3] == shade[3:5] == shade[5:7] for shade in shades)


@pytest.mark.parametrize("rect", [QRectF(), QRectF(0, 0, 3, 200), QRectF(0, 0, 200, 3), QRectF(0, 0, -5, -5)])
def test_no_room_means_no_picture(rect):
    image = QImage(210, 210, QImage.Format.Format_RGB32)
    image.fill(MARK)
    painter = QPainter(image)
    try:
        paint_joint(painter, rect, BASE, LIGHT)
        paint_joint_tile(painter, rect, Joint.TEE, 2.0, 2.0, LIGHT)
        paint_wave(painter, rect, 120.0, 70.0, 125.0, LIGHT)
    finally:
        painter.end()
    assert colours(image) == {MARK.name()}


def test_the_painter_is_given_back_as_it_came_even_after_a_failure(monkeypatch):
    def fail(*_):
        raise RuntimeError("on purpose")

    monkeypatch.setattr(joint_module, "paint_section", fail)
    image = QImage(400, 300, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    try:
        painter.setPen(MARK)
        with pytest.raises(RuntimeError, match="on purpose"):
            paint_joint(painter, QRectF(0, 0, 400, 300), BASE, LIGHT)
        assert painter.pen().color() == MARK
        assert not painter.testRenderHint(QPainter.RenderHint.Antialiasing)
    finally:
        painter.end()


def small_picture(scene, width, height):
    """What a small section without words shows, and the view it is drawn in."""
    shape = shape_of(scene)
    torch = torch_of(scene, shape)
    image = painted(width, height, lambda p, rect: paint_joint(p, rect, scene, LIGHT))
    inner = QRectF(MARGIN, MARGIN, width, height).adjusted(10, 10, -10, -10)
    everything = [part.outline for part in shape.pieces]
    probe = Picture(scene, shape, torch, View(1.0, 0.0, 0.0))
    everything += [probe.pose.carried(part) for parts in torch.parts.values() for part in parts]
    everything.append((probe.pose.along(torch.top_mm + 2.0),))
    return image, Picture(scene, shape, torch, View.fitting(bounds(everything), inner))


def colour_at(image, picture, point):
    place = picture.view.at(point)
    return image.pixelColor(round(place.x() - 0.5), round(place.y() - 0.5)).name()


def test_tungsten_cup_arc_and_gap_between_are_where_they_belong():
    scene = replace(BASE, joint=Joint.BUTT, thickness_mm=4.0, other_thickness_mm=4.0)
    image, picture = small_picture(scene, 270, 215)
    pose, torch = picture.pose, picture.torch
    assert (
        colour_at(image, picture, pose.along(torch.end_mm + 0.7 * scene.stick_out_mm, 0.4)) == LIGHT.tungsten
    )
    assert (
        colour_at(image, picture, pose.along(torch.mouth_mm + 5.0, scene.cup_bore_mm / 2 + 0.8))
        == LIGHT.ceramic
    )
    assert (
        colour_at(image, picture, pose.along(torch.mouth_mm + 1.0, scene.cup_bore_mm / 2 - 1.0))
        == LIGHT.ground
    )
    warm = QColor(colour_at(image, picture, pose.along(0.5, 0.75)))
    assert warm.red() > warm.blue() + 40
    assert colour_at(image, picture, (0.0, 0.5)) != LIGHT.ground  # metal under the arc


def test_electrode_negative_lies_below_the_line_for_its_share_of_the_cycle():
    image = painted(180, 100, lambda p, rect: paint_wave(p, rect, 100.0, 75.0, 100.0, LIGHT))
    inner_left, inner_width = MARGIN + 6.0, 180.0 - 12.0
    level = {}
    for share in (0.3, 0.6, 0.9):
        x = round(inner_left + share * inner_width)
        column = [image.pixelColor(x, y).name() for y in range(MARGIN + 12, MARGIN + 88)]
        middle = len(column) // 2
        level[share] = "below" if LIGHT.first in column[middle:] else "above"
        if level[share] == "above":
            assert LIGHT.behind in column[:middle]
    # 75 % of the cycle at electrode negative, drawn below the line; the last quarter above it.
    assert level == {0.3: "below", 0.6: "below", 0.9: "above"}


def test_stacked_labels_never_touch_and_the_weightiest_stay():
    image = QImage(300, 300, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    try:
        lettering = Lettering(painter, LIGHT)
        scene = replace(BASE, joint=Joint.TEE, other_thickness_mm=5.0, has_bar=True, gap_mm=1.0)
        shape = shape_of(scene)
        labels = callouts(Picture(scene, shape, torch_of(scene, shape), View(6.0, 150.0, 200.0)))
        for bottom in (300.0, 120.0, 60.0):
            placed = stacked(lettering, labels, 0.0, bottom)
            ends = [(top, top + lettering.size(label)[1]) for label, top in placed]
            assert all(start >= 0.0 and end <= bottom for start, end in ends)
            assert all(one[1] < two[0] for one, two in pairwise(ends))
        kept = {label.weight for label, _ in stacked(lettering, labels, 0.0, 60.0)}
        assert max(label.weight for label in labels) in kept
    finally:
        painter.end()


def test_a_key_takes_one_column_where_two_would_not_fit():
    image = QImage(10, 10, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    try:
        lettering = Lettering(painter, LIGHT)
        labels = [Label("2.4 mm", "tungsten", QPointF(0, n), is_left=True) for n in range(5)]
        assert [lettering.key_columns(labels, width) for width in (90.0, 400.0)] == [1, 2]
        assert lettering.key_height(labels, 90.0) == 5 * lettering.key_row_px
        assert lettering.key_height(labels, 400.0) == 3 * lettering.key_row_px
    finally:
        painter.end()


def test_labels_speak_the_units_asked_for():
    for units, expected in ((Units.METRIC, "2.4 mm"), (Units.INCH, "3/32 in")):
        scene = replace(BASE, units=units)
        shape = shape_of(scene)
        labels = callouts(Picture(scene, shape, torch_of(scene, shape), View(6.0, 0.0, 0.0)))
        assert expected in {label.value for label in labels if label.name.startswith("tungsten")}


def test_equal_sheets_are_measured_once_and_unequal_ones_twice():
    for other, count in ((2.0, 1), (5.0, 2)):
        scene = replace(BASE, joint=Joint.TEE, other_thickness_mm=other)
        shape = shape_of(scene)
        labels = callouts(Picture(scene, shape, torch_of(scene, shape), View(6.0, 0.0, 0.0)))
        assert sum(label.name == "thickness" for label in labels) == count


def test_hatching_is_cut_at_the_outline():
    square = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    lines = hatch_lines(square, 0.0, 4.0)
    assert [(round(start[0]), round(end[0]), round(start[1])) for start, end in lines] == [
        (0, 10, 4),
        (0, 10, 8),
    ]


def test_all_inks_paint_every_joint_at_once():
    for joint, ink in product(Joint, (LIGHT, DARK, PRINT)):
        image = painted(
            700, 340, lambda p, rect, j=joint, i=ink: paint_joint(p, rect, replace(BASE, joint=j), i)
        )
        assert image.pixelColor(MARGIN + 3, MARGIN + 3).name() == ink.ground


def test_a_label_without_a_name_has_one_line():
    image = QImage(10, 10, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    try:
        lettering = Lettering(painter, LIGHT)
        one, two = (Label("8 mm", name, QPointF(), is_left=True) for name in ("", "stick-out"))
        assert lettering.size(one)[1] < lettering.size(two)[1]
    finally:
        painter.end()
