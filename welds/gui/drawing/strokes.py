"""Lines, fills and hatching on a painter; everything is cut to shape by arithmetic, never by a clip."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from math import atan2, cos, hypot, pi, sin

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from welds.gui.drawing.geometry import Outline, Point
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.placing import turn

NO_BRUSH = Qt.BrushStyle.NoBrush
NO_PEN = Qt.PenStyle.NoPen


@dataclass(frozen=True, slots=True)
class View:
    """Where a millimetre lies on the painter: `scale` pixels each, y turned downwards."""

    scale: float
    left: float
    base: float

    @staticmethod
    def fitting(box: tuple[float, float, float, float], area: QRectF, most: float = float("inf")) -> "View":
        """Return the view that shows a box (left, bottom, right, top in mm) as large as may be."""
        left, bottom, right, top = box
        scale = min(area.width() / (right - left), area.height() / (top - bottom), most)
        return View(
            scale,
            area.center().x() - scale * (left + right) / 2.0,
            area.center().y() + scale * (bottom + top) / 2.0,
        )

    def at(self, point: Point) -> QPointF:
        """Return where the point lies on the painter."""
        return QPointF(self.left + self.scale * point[0], self.base - self.scale * point[1])

    def outline(self, points: Outline) -> Outline:
        """Return the outline in painter pixels."""
        return tuple((self.left + self.scale * x, self.base - self.scale * y) for x, y in points)


def pen(colour: str, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
    """Return a pen with round joins."""
    made = QPen(QColor(colour), width, style)
    made.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    made.setCapStyle(
        Qt.PenCapStyle.FlatCap if style is not Qt.PenStyle.SolidLine else Qt.PenCapStyle.RoundCap
    )
    return made


def dashes(colour: str, width: float, *lengths: float) -> QPen:
    """Return a dashed pen; lengths in multiples of the width."""
    made = pen(colour, width, Qt.PenStyle.CustomDashLine)
    made.setDashPattern(list(lengths))
    return made


def polygon(points: Outline) -> QPolygonF:
    """Return Qt's polygon of points in pixels."""
    return QPolygonF([QPointF(x, y) for x, y in points])


def fill(painter: QPainter, points: Outline, colour: str, edge: QPen | None = None) -> None:
    """Fill an outline, drawing its edge where a pen is given."""
    painter.setPen(edge or NO_PEN)
    painter.setBrush(QBrush(QColor(colour)))
    painter.drawPolygon(polygon(points))


def line(painter: QPainter, start: QPointF, end: QPointF, with_pen: QPen) -> None:
    """Draw one straight line."""
    painter.setPen(with_pen)
    painter.drawLine(start, end)


def hatch_lines(points: Outline, angle_deg: float, spacing: float) -> list[tuple[Point, Point]]:
    """Return parallel lines inside a closed outline, at an angle and a distance from each other."""
    level = [turn(point, -angle_deg) for point in points]
    low, high = min(y for _, y in level), max(y for _, y in level)
    lines = []
    row = (low // spacing + 1) * spacing
    while row < high:
        crossings = []
        for (x1, y1), (x2, y2) in zip(level, level[1:] + level[:1], strict=True):
            if (y1 > row) != (y2 > row):
                crossings.append(x1 + (row - y1) * (x2 - x1) / (y2 - y1))
        crossings.sort()
        for start, end in zip(crossings[::2], crossings[1::2], strict=False):
            lines.append((turn((start, row), angle_deg), turn((end, row), angle_deg)))
        row += spacing
    return lines


def hatch(painter: QPainter, points: Outline, angle_deg: float, spacing: float, with_pen: QPen) -> None:
    """Hatch an outline given in pixels."""
    painter.setPen(with_pen)
    for (x1, y1), (x2, y2) in hatch_lines(points, angle_deg, spacing):
        painter.drawLine(QPointF(x1, y1), QPointF(x2, y2))


def dots(painter: QPainter, points: Outline, spacing: float, colour: str) -> None:
    """Fill an outline given in pixels with a staggered grid of dots (gas)."""
    painter.setPen(NO_PEN)
    painter.setBrush(QBrush(QColor(colour)))
    size = max(0.9, spacing * 0.13)
    for number, (start, end) in enumerate(hatch_lines(points, 0.0, spacing)):
        across = start[0] + spacing * (0.5 if number % 2 else 1.0)
        while across < end[0] - size:
            painter.drawEllipse(QPointF(across, start[1]), size, size)
            across += spacing


def sheet(
    painter: QPainter, points: Outline, breaks: Sequence[int], colour: str, edge: QPen, cut: QPen
) -> None:
    """Fill a cut sheet: firm edges all round, a thin wavy line where it is broken off."""
    corners = [QPointF(x, y) for x, y in points]
    body = QPainterPath(corners[0])
    waves = []
    for number, start in enumerate(corners):
        end = corners[(number + 1) % len(corners)]
        if number in breaks:
            wave = _wave(start, end)
            body.connectPath(wave)
            waves.append(wave)
        else:
            body.lineTo(end)
    painter.setPen(NO_PEN)
    painter.setBrush(QBrush(QColor(colour)))
    painter.drawPath(body)
    painter.setBrush(NO_BRUSH)
    painter.setPen(edge)
    for number, start in enumerate(corners):
        if number not in breaks:
            painter.drawLine(start, corners[(number + 1) % len(corners)])
    painter.setPen(cut)
    for wave in waves:
        painter.drawPath(wave)


def _wave(start: QPointF, end: QPointF) -> QPainterPath:
    across, down = end.x() - start.x(), end.y() - start.y()
    reach = min(0.18 * hypot(across, down), 5.0)
    length = hypot(across, down) or 1.0
    out = QPointF(-down / length * reach, across / length * reach)
    path = QPainterPath(start)
    path.cubicTo(
        QPointF(start.x() + across / 3 + out.x() * 2, start.y() + down / 3 + out.y() * 2),
        QPointF(start.x() + across * 2 / 3 - out.x() * 2, start.y() + down * 2 / 3 - out.y() * 2),
        end,
    )
    return path


def dimension(painter: QPainter, start: QPointF, end: QPointF, ink: Ink) -> None:
    """Draw a dimension line with arrow heads; a short one gets its arrows from outside."""
    length = hypot(end.x() - start.x(), end.y() - start.y())
    if length < 0.5:
        return
    along = QPointF((end.x() - start.x()) / length, (end.y() - start.y()) / length)
    head = 3.2 * ink.thin_px + 3.0
    outside = length < 3.0 * head
    tail = along * (head + 7.0) if outside else QPointF(0.0, 0.0)
    halo = pen(ink.ground, ink.thin_px + 3.0)
    solid = pen(ink.text, ink.thin_px)
    for with_pen in (halo, solid):
        if outside:
            line(painter, start - tail, start, with_pen)
            line(painter, end, end + tail, with_pen)
            line(painter, start, end, with_pen)
        else:
            line(painter, start, end, with_pen)
    inward = along if outside else along * -1.0
    arrow_head(painter, start, inward, head, ink.text)
    arrow_head(painter, end, inward * -1.0, head, ink.text)


def arrow_head(painter: QPainter, tip: QPointF, direction: QPointF, size: float, colour: str) -> None:
    """Draw a filled arrow head that points along the direction and ends at the tip."""
    angle = atan2(direction.y(), direction.x())
    wings = [
        QPointF(tip.x() + size * cos(angle + pi + turn_by), tip.y() + size * sin(angle + pi + turn_by))
        for turn_by in (-0.33, 0.33)
    ]
    painter.setPen(NO_PEN)
    painter.setBrush(QBrush(QColor(colour)))
    painter.drawPolygon(QPolygonF([tip, *wings]))


@contextmanager
def fresh_paper(painter: QPainter, area: QRectF, ink: Ink, text_px: float) -> Iterator[QFontMetricsF]:
    """Fill the rectangle with the ground and set the letters; the painter is as it was afterwards."""
    painter.save()
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(area, QColor(ink.ground))
        font = text_font(painter, text_px)
        painter.setFont(font)
        yield QFontMetricsF(font)
    finally:
        painter.restore()


def text_font(painter: QPainter, px: float, bold: bool = False) -> QFont:
    """Return the painter's own face at a height in pixels."""
    font = QFont(painter.font())
    font.setPixelSize(max(1, round(px)))
    font.setBold(bold)
    return font
