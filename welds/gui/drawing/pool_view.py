"""The pool from above while the arc stands at a place: it trails behind, wider than the arc."""

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPainterPath

from welds.gui.drawing.heat_ink import HeatInk
from welds.gui.drawing.heat_marks import Line, on_painter, paint_scale_bar
from welds.gui.drawing.ink import Ink
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
)
from welds.quantities.units import Units

LEAST_PX = 80.0
SCALE_ROOM_PX = 150.0
RIPPLE = 0.22
"""Distance between the ripples drawn on the bead, as a share of its width."""


@dataclass(frozen=True)
class PoolScene:
    """Rings and lines of (along the travel, aside), in mm, the arc at (0, 0) travelling to the right.

    `ends_mm` are tail and nose of the pool on the weld line, `track_mm` the width it leaves behind.
    """

    fused: tuple[Line, ...]
    affected: tuple[Line, ...]
    outline: tuple[Line, ...]
    ends_mm: tuple[float, float] | None
    track_mm: float
    spot_mm: float
    box_mm: tuple[float, float, float]
    """Behind, ahead, to each side."""
    units: Units = Units.METRIC
    kept: tuple[Line, ...] = ()


@dataclass(frozen=True, slots=True)
class PoolWords:
    """What is written in the picture."""

    travel: str
    arc: str
    length: str
    nothing: str


def paint_pool(
    painter: QPainter, area: QRectF, scene: PoolScene, ink: Ink, heat: HeatInk, words: PoolWords
) -> None:
    """Draw the pool into the rectangle, nothing outside it."""
    if area.width() < LEAST_PX or area.height() < LEAST_PX:
        return
    with fresh_paper(painter, area, ink, ink.text_px * 0.9) as metrics:
        row = metrics.height()
        inner = area.adjusted(8.0, 8.0, -8.0, -6.0)
        plate = inner.adjusted(0.0, 0.0, 0.0, -row - 6.0)
        behind, ahead, side = scene.box_mm
        view = View.fitting((-behind, -side, ahead, side), plate)
        plate = QRectF(view.at((-behind, side)), view.at((ahead, -side)))
        painter.fillRect(plate, QColor(ink.first))
        painter.setClipRect(plate)
        _fill(painter, scene.affected, view, heat.affected)
        _paint_track(painter, scene, view, plate, ink, heat)
        _fill(painter, scene.fused, view, heat.fused)
        painter.setBrush(NO_BRUSH)
        for lines, with_pen in (
            (scene.outline, pen(heat.edge, 2.0)),
            (scene.kept, dashes(heat.kept, 2.2, 5.0, 2.0, 1.0, 2.0)),
        ):
            painter.setPen(with_pen)
            for each in lines:
                painter.drawPolyline(on_painter(each, view))
        painter.setClipping(False)
        _paint_arc(painter, scene, view, ink)
        _paint_words(painter, scene, view, plate, inner, ink, words)


def _paint_track(
    painter: QPainter, scene: PoolScene, view: View, plate: QRectF, ink: Ink, heat: HeatInk
) -> None:
    """Draw the bead left behind and the seam ahead."""
    centre = view.at((0.0, 0.0))
    half = scene.track_mm / 2.0 * view.scale
    if half:
        left = QRectF(plate.left(), centre.y() - half, max(0.0, centre.x() - plate.left()), 2.0 * half)
        bead = QPainterPath()
        bead.addRoundedRect(left.adjusted(-2.0 * half, 0.0, 0.35 * half, 0.0), half, half)
        painter.fillPath(bead, QColor(heat.added))
        straight_to = max(left.left(), left.right() - 0.65 * half)
        for level in (left.top(), left.bottom()):
            line(painter, QPointF(left.left(), level), QPointF(straight_to, level), pen(ink.quiet, 0.8))
        painter.setPen(pen(ink.quiet, 0.7))
        painter.setBrush(NO_BRUSH)
        step, reach = RIPPLE * 2.0 * half, 0.7 * half
        place = left.right() - 0.5 * step
        while step > 1.0 and place > left.left():
            box = QRectF(place - 2.0 * reach, centre.y() - half, 2.0 * reach, 2.0 * half)
            painter.drawArc(box, -90 * 16, 180 * 16)
            place -= step
    seam = QPointF(plate.right(), centre.y())
    line(painter, centre, seam, pen(ink.line, 1.2))


def _fill(painter: QPainter, rings: tuple[Line, ...], view: View, colour: str) -> None:
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.OddEvenFill)
    for ring in rings:
        path.addPolygon(on_painter(ring, view))
        path.closeSubpath()
    painter.setPen(NO_PEN)
    painter.setBrush(QBrush(QColor(colour)))
    painter.drawPath(path)


def _paint_arc(painter: QPainter, scene: PoolScene, view: View, ink: Ink) -> None:
    centre, radius = view.at((0.0, 0.0)), scene.spot_mm * view.scale
    painter.setBrush(NO_BRUSH)
    painter.setPen(dashes(ink.line, 1.2, 2.0, 2.0))
    painter.drawEllipse(centre, radius, radius)
    painter.setPen(pen(ink.line, 1.6))
    painter.drawLine(centre - QPointF(4.0, 0.0), centre + QPointF(4.0, 0.0))
    painter.drawLine(centre - QPointF(0.0, 4.0), centre + QPointF(0.0, 4.0))


def _paint_words(
    painter: QPainter, scene: PoolScene, view: View, plate: QRectF, inner: QRectF, ink: Ink, words: PoolWords
) -> None:
    metrics = QFontMetricsF(painter.font())
    centre = view.at((0.0, 0.0))
    start = QPointF(plate.right() - 64.0, plate.top() + metrics.height() + 8.0)
    tip = start + QPointF(52.0, 0.0)
    line(painter, start, tip, pen(ink.text, 1.6))
    arrow_head(painter, tip, QPointF(1.0, 0.0), 9.0, ink.text)
    painter.setPen(QColor(ink.text))
    painter.drawText(
        QRectF(plate.right() - 124.0, plate.top() + 3.0, 118.0, metrics.height()),
        Qt.AlignmentFlag.AlignRight, words.travel,
    )  # fmt: skip
    if scene.ends_mm is None:
        painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, words.nothing)
    else:
        tail, nose = (view.at((mm, 0.0)) for mm in scene.ends_mm)
        level = min(plate.bottom() - 10.0, centre.y() + (scene.track_mm / 2.0 * view.scale) + 22.0)
        dimension(painter, QPointF(tail.x(), level), QPointF(nose.x(), level), ink)
        width = metrics.horizontalAdvance(words.length) + 8.0
        left = min(max((tail.x() + nose.x() - width) / 2.0, plate.left()), plate.right() - width)
        top = (
            level + 5.0 if level + 5.0 + metrics.height() < plate.bottom() else level - metrics.height() - 5.0
        )
        painter.setPen(QColor(ink.text))
        painter.drawText(
            QRectF(left, top, width, metrics.height()), Qt.AlignmentFlag.AlignHCenter, words.length
        )
    painter.setPen(QColor(ink.quiet))
    foot = QRectF(inner.left(), inner.bottom() - metrics.height(), inner.width(), metrics.height())
    room = foot.width() - SCALE_ROOM_PX
    painter.drawText(
        foot, Qt.AlignmentFlag.AlignLeft, metrics.elidedText(words.arc, Qt.TextElideMode.ElideRight, room)
    )
    paint_scale_bar(painter, inner.bottomRight(), view.scale, scene.units, ink)
