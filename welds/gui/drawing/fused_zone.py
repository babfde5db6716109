"""The joint cut across to scale, with what melts, what is changed by the heat, and lines of one temperature.

Each piece brings its zones as rings and lines of (across from the weld line, down from the face that the arc
meets), in mm; where that face lies in the joint is decided here.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, radians, sin

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPainterPath, QPen

from welds.advice.request import Joint
from welds.gui.drawing.geometry import JointShape, Point, joint_shape
from welds.gui.drawing.heat_ink import HeatInk
from welds.gui.drawing.heat_marks import Line, on_painter, paint_scale_bar
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.placing import bounds
from welds.gui.drawing.strokes import (
    NO_BRUSH,
    NO_PEN,
    View,
    arrow_head,
    dashes,
    dimension,
    fresh_paper,
    line,
    pen,
    polygon,
    sheet,
)
from welds.gui.drawing.zone_key import ZoneWords, paint_key
from welds.gui.drawing.zone_scene import PieceZones, ZoneScene, added_metal
from welds.quantities.display import show

ARROW_MM = 0.22
LEAST_PX = 80.0


@dataclass(frozen=True, slots=True)
class _Face:
    """Where (0, 0) of a piece lies, which way is across, which way is down, and how far it goes across."""

    origin: Point
    across: Point
    down: Point
    reach_mm: float

    def at(self, points: Line) -> Line:
        across = np.minimum(points[:, 0], self.reach_mm)[:, None]
        return np.array(self.origin) + across * np.array(self.across) + points[:, 1:] * np.array(self.down)

    def within(self, lines: Iterable[Line]) -> list[Line]:
        """Return the part of open lines that lies on the piece."""
        kept = (each[each[:, 0] <= self.reach_mm + 1e-9] for each in lines)
        return [self.at(each) for each in kept if len(each) > 1]


def paint_fused_zone(
    painter: QPainter, area: QRectF, scene: ZoneScene, ink: Ink, heat: HeatInk, words: ZoneWords
) -> None:
    """Draw the section into the rectangle, nothing outside it."""
    if area.width() < LEAST_PX or area.height() < LEAST_PX:
        return
    with fresh_paper(painter, area, ink, ink.text_px * 0.9) as metrics:
        inner = area.adjusted(10.0, 8.0, -10.0, -6.0)
        has_kept, knows_added = scene.kept is not None, scene.knows_added
        foot = paint_key(painter, inner, ink, heat, words, has_kept=has_kept, knows_added=knows_added)
        shape = _shape(scene)
        room = inner.adjusted(0.0, 0.0, 0.0, -foot - metrics.height() - 10.0)
        view = View.fitting(bounds([*(piece.outline for piece in shape.pieces), _arrow(shape, scene)]), room)
        _paint_metal(painter, scene, shape, view, ink, heat)
        _paint_lines(painter, scene, view, heat)
        if scene.kept is not None:
            _paint_kept(painter, scene.kept, shape, view, heat)
        _paint_arc_arrow(painter, shape, scene, view, ink)
        for piece in shape.pieces:
            start, end = (view.at(point) for point in piece.thickness)
            dimension(painter, start, end, ink)
        _paint_temperatures(painter, scene, view, ink, inner)
        corner = QPointF(inner.right(), inner.bottom() - foot - 4.0)
        paint_scale_bar(painter, corner, view.scale, scene.units, ink)


def _shape(scene: ZoneScene) -> JointShape:
    return joint_shape(scene.joint, scene.first_mm, scene.other_mm, scene.gap_mm, arm_mm=scene.arm_mm)


def _faces(scene: ZoneScene, *, is_first: bool) -> tuple[_Face, ...]:
    first, other, gap, arm = scene.first_mm, scene.other_mm, scene.gap_mm, scene.arm_mm
    up, down, left, right = (0.0, 1.0), (0.0, -1.0), (-1.0, 0.0), (1.0, 0.0)
    joint = scene.joint
    if joint is Joint.BUTT:
        thickness, way = (first, left) if is_first else (other, right)
        return (_Face((way[0] * gap / 2.0, thickness), way, down, arm - gap / 2.0),)
    if joint is Joint.EDGE:
        way = left if is_first else right
        return (_Face((way[0] * gap / 2.0, 0.0), down, way, arm),)
    if joint is Joint.OUTSIDE_CORNER:
        apart = gap / 2.0 / 2.0**0.5
        if is_first:
            return (_Face((-apart, first + apart), left, down, arm),)
        return (_Face((other + apart, -apart), down, left, arm),)
    if is_first:
        if joint is Joint.LAP:
            return (_Face((0.0, gap + first), left, down, arm),)
        return (_Face((0.0, gap), up, left, arm),)
    behind = {Joint.LAP: 0.6 * arm, Joint.TEE: first + 0.62 * arm}.get(joint, first)
    return (_Face((0.0, 0.0), right, down, arm), _Face((0.0, 0.0), left, down, behind))


def _pieces(scene: ZoneScene) -> list[tuple[PieceZones, tuple[_Face, ...]]]:
    return [
        (scene.first, _faces(scene, is_first=True)),
        (scene.other, _faces(scene, is_first=False)),
    ]


def _paint_metal(
    painter: QPainter, scene: ZoneScene, shape: JointShape, view: View, ink: Ink, heat: HeatInk
) -> None:
    painter.setPen(pen(heat.edge, 1.4) if scene.knows_added else dashes(ink.quiet, 1.0, 4.0, 3.0))
    painter.setBrush(QColor(heat.added))
    for outline in added_metal(scene, shape):
        painter.drawPolygon(polygon(view.outline(outline)))
    edge = pen(ink.line, ink.outline_px)
    for piece in shape.pieces:
        colour = ink.first if piece.is_first else ink.other
        sheet(painter, view.outline(piece.outline), piece.breaks, colour, edge, pen(ink.line, ink.thin_px))
    for zones, faces in _pieces(scene):
        for face in faces:
            _fill(painter, face, zones.affected, view, heat.affected)
    painter.setPen(edge)
    for piece in shape.pieces:
        corners = [view.at(point) for point in piece.outline]
        for number, start in enumerate(corners):
            if number not in piece.breaks:
                painter.drawLine(start, corners[(number + 1) % len(corners)])
    for zones, faces in _pieces(scene):  # over the edges: where both pieces melt, the joint is gone
        for face in faces:
            _fill(painter, face, zones.fused, view, heat.fused, pen(heat.fused, 0.8))


def _paint_lines(painter: QPainter, scene: ZoneScene, view: View, heat: HeatInk) -> None:
    for zones, faces in _pieces(scene):
        for face in faces:
            for _temperature, lines in zones.isotherms:
                _strokes(painter, face.within(lines), view, pen(heat.isotherm, 0.9))
            _strokes(painter, face.within(zones.error_lines), view, dashes(heat.edge, 1.2, 2.0, 2.5))
            _strokes(painter, face.within(zones.fusion_line), view, pen(heat.edge, 2.0))


def _paint_kept(painter: QPainter, kept: ZoneScene, shape: JointShape, view: View, heat: HeatInk) -> None:
    own = dashes(heat.kept, 2.2, 5.0, 2.0, 1.0, 2.0)
    other = _shape(kept)
    if [piece.outline for piece in other.pieces] != [piece.outline for piece in shape.pieces]:
        painter.setBrush(NO_BRUSH)
        painter.setPen(dashes(heat.kept, 1.0, 3.0, 3.0))
        for piece in other.pieces:
            painter.drawPolygon(polygon(view.outline(piece.outline)))
    for zones, faces in _pieces(kept):
        for face in faces:
            _strokes(painter, face.within(zones.fusion_line), view, own)


def _fill(
    painter: QPainter, face: _Face, rings: Sequence[Line], view: View, colour: str, edge: QPen | None = None
) -> None:
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.OddEvenFill)
    for ring in rings:
        path.addPolygon(on_painter(face.at(ring), view))
        path.closeSubpath()
    painter.setPen(edge or NO_PEN)
    painter.setBrush(QBrush(QColor(colour)))
    painter.drawPath(path)


def _strokes(painter: QPainter, lines: Iterable[Line], view: View, with_pen: QPen) -> None:
    painter.setPen(with_pen)
    painter.setBrush(NO_BRUSH)
    for each in lines:
        painter.drawPolyline(on_painter(each, view))


def _arrow(shape: JointShape, scene: ZoneScene) -> tuple[Point, Point]:
    """Return start and tip of the arrow that shows where the arc comes from."""
    length = ARROW_MM * scene.arm_mm
    away = (cos(radians(shape.axis_deg)), sin(radians(shape.axis_deg)))
    clear = {Joint.OUTSIDE_CORNER: 1.0, Joint.EDGE: 0.25, Joint.BUTT: 0.25}.get(scene.joint, 0.9)
    near = clear * max(scene.first_mm, scene.other_mm) + 0.25 * length
    tip = (shape.root[0] + away[0] * near, shape.root[1] + away[1] * near)
    return ((tip[0] + away[0] * length, tip[1] + away[1] * length), tip)


def _paint_arc_arrow(painter: QPainter, shape: JointShape, scene: ZoneScene, view: View, ink: Ink) -> None:
    start, tip = (view.at(point) for point in _arrow(shape, scene))
    line(painter, start, tip, pen(ink.weld, 3.0))
    arrow_head(painter, tip, tip - start, 11.0, ink.weld)


def _paint_temperatures(painter: QPainter, scene: ZoneScene, view: View, ink: Ink, inner: QRectF) -> None:
    """Write each temperature where its line is farthest from the weld, on the other piece only."""
    metrics = QFontMetricsF(painter.font())
    face = _faces(scene, is_first=False)[0]
    taken: list[QRectF] = []
    for temperature, lines in scene.other.isotherms:
        shown = face.within(lines)
        if not shown:
            continue
        points = np.concatenate(shown)
        away, deep = points @ np.array(face.across), points @ np.array(face.down)
        far = np.flatnonzero(away >= away.max() - 0.02 * scene.arm_mm)
        middle = np.array(face.origin) @ np.array(face.down) + scene.other_mm / 2.0
        best = far[np.abs(deep[far] - middle).argmin()]
        at = view.at((float(points[best, 0]), float(points[best, 1])))
        text = str(show(temperature, "degC", "preheat", scene.units))
        width = metrics.horizontalAdvance(text) + 6.0
        box = QRectF(at.x() - width / 2.0, at.y() - metrics.height() / 2.0, width, metrics.height())
        if any(box.intersects(other) for other in taken) or not inner.contains(box):
            continue
        taken.append(box)
        ground = QColor(ink.ground)
        ground.setAlpha(215)
        painter.setPen(NO_PEN)
        painter.setBrush(ground)
        painter.drawRoundedRect(box, 3.0, 3.0)
        painter.setPen(QColor(ink.text))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
