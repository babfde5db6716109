"""Paints the view along the weld: how torch and rod lie in the direction of travel."""

from math import cos, hypot, radians, sin

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from welds.advice.request import Process
from welds.gui.drawing.callouts import length_text
from welds.gui.drawing.geometry import Outline
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.labels import Label, Lettering, paint_labels, write
from welds.gui.drawing.placing import bounds
from welds.gui.drawing.scene import ROD_ANGLE_DEG, JointScene, shape_of, torch_of
from welds.gui.drawing.section import MARGIN_PX, paint_arc, paint_torch
from welds.gui.drawing.side_shape import SideShape, side_shape
from welds.gui.drawing.strokes import (
    NO_BRUSH,
    View,
    arrow_head,
    dashes,
    fill,
    hatch,
    line,
    pen,
    sheet,
    text_font,
)
from welds.gui.drawing.torch import Torch
from welds.gui.drawing.words import word

BEYOND_MM = 2.0


def paint_side(painter: QPainter, area: QRectF, scene: JointScene, most: float, ink: Ink) -> None:
    """Draw the view along the weld into the area, at no larger scale than the cut's."""
    torch = torch_of(scene, shape_of(scene))
    side = side_shape(scene)
    lettering = Lettering(painter, ink)
    inner = area.adjusted(MARGIN_PX, MARGIN_PX, -MARGIN_PX, -MARGIN_PX)
    rough = _labels(scene, side, torch, View(1.0, 0.0, 0.0))
    heights = {
        is_top: _band(lettering, [label for label, at_top in rough if at_top is is_top])
        for is_top in (True, False)
    }
    foot = lettering.line_px + 4.0
    beside = _travel_room(lettering, side)
    room = inner.adjusted(beside[0], heights[True] + beside[1], 0.0, -foot - heights[False] - beside[2])
    view = View.fitting(bounds(_everything(side, torch)), room, most)
    _paint_metal(painter, side, torch, view, scene, ink)
    _paint_travel(lettering, side, view)
    _paint_lean(painter, side, torch, view, ink)
    top = QRectF(inner.left(), inner.top(), inner.width(), heights[True])
    bottom = QRectF(inner.left(), inner.bottom() - foot - heights[False], inner.width(), heights[False])
    for label, at_top in _labels(scene, side, torch, view):
        paint_labels(lettering, [label], top if at_top else bottom, label.is_left)
    foot_box = QRectF(inner.left(), inner.bottom() - lettering.line_px, inner.width(), lettering.line_px)
    font = text_font(painter, lettering.small_px)
    write(painter, foot_box, word("side"), font, ink.quiet, Qt.AlignmentFlag.AlignLeft)


def _band(lettering: Lettering, labels: list[Label]) -> float:
    return max((lettering.size(label)[1] + 8.0 for label in labels), default=0.0)


def _travel_room(lettering: Lettering, side: SideShape) -> tuple[float, float, float]:
    """Pixels the word beside the travel arrow needs at the left, above and below."""
    if side.is_level:
        return (0.0, 0.0, lettering.line_px) if side.is_upright else (0.0, lettering.line_px, 0.0)
    font = text_font(lettering.painter, lettering.small_px)
    return QFontMetricsF(font).horizontalAdvance(word("travel")) + 8.0, 0.0, 0.0


def _labels(scene: JointScene, side: SideShape, torch: Torch, view: View) -> list[tuple[Label, bool]]:
    """Return each label and whether it stands above the drawing, where its leader has the shortest way."""
    lean = round(abs(scene.travel_lean_deg))
    is_ahead = scene.travel_lean_deg < 0
    tool = word("gun" if scene.process is Process.MIG else "torch")
    torch_on_top = side.is_upright if side.is_level else side.travel[0][1] > side.travel[1][1]
    value = word("drag" if is_ahead else "push", angle=lean) if lean else word("upright")
    name = word("leans_ahead" if is_ahead else "leans_back", tool=tool) if lean else tool
    tip = view.at(side.pose.along(torch.top_mm + 0.6 * BEYOND_MM))
    labels = [(Label(value, name, tip, is_left=side.is_level), torch_on_top)]
    if side.rod:
        start, end = side.rod
        at = view.at((start[0] + 0.7 * (end[0] - start[0]), start[1] + 0.7 * (end[1] - start[1])))
        size = length_text(scene.filler_mm, "filler_diameter", scene.units)
        name = word("filler", angle=round(ROD_ANGLE_DEG))
        on_top = torch_on_top if side.is_level else not torch_on_top
        labels.append((Label(size, name, at, is_left=False), on_top))
    return labels


def _paint_metal(
    painter: QPainter, side: SideShape, torch: Torch, view: View, scene: JointScene, ink: Ink
) -> None:
    thin = pen(ink.line, ink.thin_px)
    if side.behind:
        fill(painter, view.outline(side.behind), ink.behind, pen(ink.hatch, ink.thin_px))
    paint_arc(painter, torch, side.pose, view, ink)
    plate = view.outline(side.plate)
    sheet(painter, plate, (1, 3), ink.other, pen(ink.line, ink.outline_px), thin)
    hatch(painter, plate, -45.0, 8.0, pen(ink.hatch, 0.8))
    for ripple in side.bead:
        fill(painter, view.outline(ripple), ink.ground if ink.is_print else ink.first, thin)
    if side.rod:
        start, end = side.rod
        width = max(2.0, scene.filler_mm * view.scale)
        for colour, size in ((ink.line, width), (ink.ground if ink.is_print else ink.rod, width - 1.6)):
            made = pen(colour, max(size, 0.6))
            made.setCapStyle(Qt.PenCapStyle.FlatCap)
            line(painter, view.at(start), view.at(end), made)
    paint_torch(painter, torch, side.pose, view, ink)


def _paint_travel(lettering: Lettering, side: SideShape, view: View) -> None:
    painter, ink = lettering.painter, lettering.ink
    start, end = view.at(side.travel[0]), view.at(side.travel[1])
    way = end - start
    length = hypot(way.x(), way.y()) or 1.0
    line(painter, start, end - way * (8.0 / length), pen(ink.text, ink.outline_px * 1.2))
    arrow_head(painter, end, way * (1.0 / length), 10.0, ink.text)
    font = text_font(painter, lettering.small_px)
    middle = (start + end) * 0.5
    width = QFontMetricsF(font).horizontalAdvance(word("travel")) + 2.0
    if side.is_level:
        down = 4.0 if side.is_upright else -4.0 - lettering.line_px
        box = QRectF(middle.x() - width / 2.0, middle.y() + down, width, lettering.line_px)
    else:
        box = QRectF(middle.x() - width - 6.0, middle.y() - lettering.line_px / 2.0, width, lettering.line_px)
    write(painter, box, word("travel"), font, ink.text, Qt.AlignmentFlag.AlignHCenter)


def _paint_lean(painter: QPainter, side: SideShape, torch: Torch, view: View, ink: Ink) -> None:
    """Draw the square to the weld beside the torch's own axis: the lean is what lies between."""
    reach = torch.top_mm + BEYOND_MM
    root = view.at(side.pose.root)
    angle = radians(side.square_deg)
    tip = (side.pose.root[0] + reach * cos(angle), side.pose.root[1] + reach * sin(angle))
    line(painter, root, view.at(tip), pen(ink.quiet, ink.thin_px * 0.8, Qt.PenStyle.DotLine))
    line(
        painter,
        root,
        view.at(side.pose.along(reach)),
        dashes(ink.quiet, ink.thin_px * 0.8, 9.0, 3.0, 2.0, 3.0),
    )
    radius = view.scale * (torch.top_mm + 0.6 * BEYOND_MM)
    painter.setBrush(NO_BRUSH)
    painter.setPen(pen(ink.quiet, ink.thin_px))
    box = QRectF(root.x() - radius, root.y() - radius, 2 * radius, 2 * radius)
    sweep = side.pose.axis_deg - side.square_deg
    painter.drawArc(box, round(side.square_deg * 16), round(sweep * 16))


def _everything(side: SideShape, torch: Torch) -> list[Outline]:
    outlines = [side.plate, side.travel, *side.bead]
    outlines += [side.pose.carried(part) for parts in torch.parts.values() for part in parts]
    angle, reach = radians(side.square_deg), torch.top_mm + BEYOND_MM
    outlines.append((side.pose.along(reach), (reach * cos(angle), reach * sin(angle))))
    if side.rod:
        outlines.append(side.rod)
    return outlines
