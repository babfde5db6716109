"""A gauge over current: from metal that stays cold to metal that falls out, with the card's band on it."""

from dataclasses import dataclass
from math import log

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QLinearGradient, QPainter, QPolygonF

from welds.gui.drawing.heat_ink import HeatInk
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.strokes import NO_PEN, dashes, fresh_paper, line, pen, text_font

LEAST_PX = 60.0
BAR_PX = 30.0


@dataclass(frozen=True, slots=True)
class GaugeScene:
    """Currents in amperes: where the zones meet, what is set, the card's band, and the ends of the gauge.

    `error` is the share by which the model may be off; each border is smeared by it.
    """

    melts_a: float
    through_a: float
    falls_a: float
    current_a: float
    band_a: tuple[float, float] | None
    ends_a: tuple[float, float]
    error: float
    kept_a: float | None = None


@dataclass(frozen=True, slots=True)
class GaugeWords:
    """The names of the four zones and of the band."""

    cold: str
    face: str
    through: str
    out: str
    band: str


def gauge_x(scene: GaugeScene, bar: QRectF, current_a: float) -> float:
    """Return where a current stands on the bar: the scale is logarithmic, so that double is a fixed step."""
    low, high = (log(end) for end in scene.ends_a)
    share = (log(max(current_a, 1e-3)) - low) / (high - low)
    return bar.left() + min(max(share, 0.0), 1.0) * bar.width()


def paint_gauge(
    painter: QPainter, area: QRectF, scene: GaugeScene, ink: Ink, heat: HeatInk, words: GaugeWords
) -> None:
    """Draw the gauge into the rectangle, nothing outside it."""
    if area.width() < LEAST_PX or area.height() < LEAST_PX:
        return
    with fresh_paper(painter, area, ink, ink.text_px) as metrics:
        row = metrics.height()
        top = area.top() + row + 8.0
        bar = QRectF(area.left() + 14.0, top, area.width() - 28.0, BAR_PX)
        _paint_zones(painter, bar, scene, ink, heat)
        _paint_names(painter, bar, scene, ink, words)
        _paint_ticks(painter, bar, scene, ink)
        _paint_band(painter, bar, scene, ink, words, row)
        if scene.kept_a is not None:
            x = gauge_x(scene, bar, scene.kept_a)
            hand = dashes(heat.kept, 2.4, 3.0, 2.0)
            line(painter, QPointF(x, bar.top() - 4.0), QPointF(x, bar.bottom() + 4.0), hand)
        _paint_hand(painter, bar, scene, ink)


def _paint_zones(painter: QPainter, bar: QRectF, scene: GaugeScene, ink: Ink, heat: HeatInk) -> None:
    colours = (heat.cold, heat.face, heat.through, heat.out)
    edges = (scene.melts_a, max(scene.through_a, scene.melts_a), max(scene.falls_a, scene.through_a))
    gradient = QLinearGradient(bar.topLeft(), bar.topRight())
    last = 0.0
    gradient.setColorAt(0.0, QColor(colours[0]))
    for number, edge in enumerate(edges):
        for factor, colour in (
            (1.0 - scene.error, colours[number]),
            (1.0 + scene.error, colours[number + 1]),
        ):
            share = (gauge_x(scene, bar, edge * factor) - bar.left()) / bar.width()
            last = min(max(last, share), 1.0)
            gradient.setColorAt(last, QColor(colour))
    painter.setPen(pen(ink.line, 1.2))
    painter.setBrush(gradient)
    painter.drawRect(bar)


def _paint_names(painter: QPainter, bar: QRectF, scene: GaugeScene, ink: Ink, words: GaugeWords) -> None:
    edges = [scene.ends_a[0], scene.melts_a, scene.through_a, scene.falls_a, scene.ends_a[1]]
    metrics = QFontMetricsF(painter.font())
    names = (words.cold, words.face, words.through, words.out)
    for name, low, high in zip(names, edges, edges[1:], strict=False):
        left, right = gauge_x(scene, bar, low), gauge_x(scene, bar, high)
        if right - left >= metrics.horizontalAdvance(name) + 6.0:
            painter.setPen(QColor(ink.text))
            painter.drawText(
                QRectF(left, bar.top(), right - left, bar.height()), Qt.AlignmentFlag.AlignCenter, name
            )


def _paint_ticks(painter: QPainter, bar: QRectF, scene: GaugeScene, ink: Ink) -> None:
    metrics = QFontMetricsF(painter.font())
    free_from = bar.left() - 14.0
    for current in (scene.melts_a, scene.through_a, scene.falls_a):
        if not scene.ends_a[0] < current < scene.ends_a[1]:
            continue
        x = gauge_x(scene, bar, current)
        line(painter, QPointF(x, bar.top()), QPointF(x, bar.bottom() + 4.0), pen(ink.line, 1.2))
        text = f"{current:.0f} A"
        width = metrics.horizontalAdvance(text)
        left = min(max(x - width / 2.0, free_from), bar.right() + 14.0 - width)
        if left < free_from - 0.5:
            continue
        painter.setPen(QColor(ink.text))
        painter.drawText(QPointF(left, bar.bottom() + metrics.ascent() + 4.0), text)
        free_from = left + width + 8.0


def _paint_band(
    painter: QPainter, bar: QRectF, scene: GaugeScene, ink: Ink, words: GaugeWords, row: float
) -> None:
    if scene.band_a is None:
        return
    left, right = (gauge_x(scene, bar, each) for each in scene.band_a)
    level = bar.bottom() + 1.5 * row + 8.0
    solid = pen(ink.text, 2.0)
    line(painter, QPointF(left, level), QPointF(right, level), solid)
    for x in (left, right):
        line(painter, QPointF(x, level - 6.0), QPointF(x, level), solid)
    metrics = QFontMetricsF(painter.font())
    width = metrics.horizontalAdvance(words.band) + 4.0
    at = right + 8.0 if right + 8.0 + width <= bar.right() + 14.0 else left - 8.0 - width
    painter.setPen(QColor(ink.text))
    painter.drawText(
        QRectF(at, level - row / 2.0 - 2.0, width, row), Qt.AlignmentFlag.AlignVCenter, words.band
    )


def _paint_hand(painter: QPainter, bar: QRectF, scene: GaugeScene, ink: Ink) -> None:
    x = gauge_x(scene, bar, scene.current_a)
    line(painter, QPointF(x, bar.top() - 2.0), QPointF(x, bar.bottom() + 2.0), pen(ink.text, 3.0))
    painter.setPen(NO_PEN)
    painter.setBrush(QColor(ink.text))
    painter.drawPolygon(
        QPolygonF(
            [QPointF(x - 7.0, bar.top() - 9.0), QPointF(x + 7.0, bar.top() - 9.0), QPointF(x, bar.top())]
        )
    )
    bold = text_font(painter, ink.text_px, bold=True)
    painter.save()
    painter.setFont(bold)
    metrics = QFontMetricsF(bold)
    text = f"{scene.current_a:.0f} A"
    width = metrics.horizontalAdvance(text)
    left = min(max(x + 11.0, bar.left()), bar.right() + 14.0 - width)
    painter.setPen(QColor(ink.text))
    painter.drawText(QPointF(left, bar.top() - 5.0), text)
    painter.restore()
