"""The current over time: one or two cycles of AC to a real time axis, or the flat line of DC."""

from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPolygonF

from welds.gui.drawing.geometry import Outline
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.labels import Lettering, write
from welds.gui.drawing.strokes import NO_BRUSH, dimension, dots, fill, hatch, line, pen, polygon, text_font
from welds.gui.drawing.words import word
from welds.language import figure
from welds.quantities.display import show
from welds.quantities.units import Units

LEAST_PX = 24.0
WORDS_FROM = (230.0, 165.0)
TWO_CYCLES_FROM_PX = 300.0
EDGE_SHARE = 0.035
DC_WINDOW_MS = 20.0
_STEPS_MS = (0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0)
_LEFT, _CENTRE, _RIGHT = (
    Qt.AlignmentFlag.AlignLeft,
    Qt.AlignmentFlag.AlignHCenter,
    Qt.AlignmentFlag.AlignRight,
)


@dataclass(frozen=True, slots=True)
class Wave:
    """One AC setting, or DC where the frequency is 0; `negative_share` is the share of time at EN."""

    frequency_hz: float
    negative_share: float
    cycles: int

    @property
    def is_dc(self) -> bool:
        """True where the current never changes sides."""
        return self.frequency_hz <= 0.0 or not 0.0 < self.negative_share < 1.0

    @property
    def period_ms(self) -> float:
        """Length of one cycle."""
        return 1000.0 / self.frequency_hz if self.frequency_hz > 0.0 else DC_WINDOW_MS

    @property
    def window_ms(self) -> float:
        """Length of the whole time axis."""
        return DC_WINDOW_MS if self.is_dc else self.cycles * self.period_ms

    def halves(self) -> Iterator[tuple[float, float, bool]]:
        """Yield (start ms, end ms, is electrode negative) from left to right."""
        if self.is_dc:
            yield 0.0, DC_WINDOW_MS, self.negative_share >= 0.5
            return
        for cycle in range(self.cycles):
            start = cycle * self.period_ms
            change = start + self.negative_share * self.period_ms
            yield start, change, True
            yield change, start + self.period_ms, False


@dataclass(frozen=True, slots=True)
class _Plot:
    box: QRectF
    wave: Wave

    def x(self, ms: float) -> float:
        return self.box.left() + self.box.width() * ms / self.wave.window_ms

    @property
    def zero(self) -> float:
        return self.box.center().y()

    @property
    def swing(self) -> float:
        return self.box.height() * 0.42

    def level(self, is_negative: bool) -> float:
        """Electrode positive is drawn above the zero line."""
        return self.zero + self.swing if is_negative else self.zero - self.swing

    def half(self, start: float, end: float, is_negative: bool) -> Outline:
        """The area between the zero line and one half of the wave, its edges a little slanted."""
        edge = 0.0 if self.wave.is_dc else min(EDGE_SHARE * self.wave.period_ms, 0.4 * (end - start)) / 2.0
        level = self.level(is_negative)
        return (
            (self.x(start), self.zero),
            (self.x(start + edge), level),
            (self.x(end - edge), level),
            (self.x(end), self.zero),
        )


def paint_wave(
    painter: QPainter,
    rect: QRectF,
    frequency_hz: float,
    electrode_negative_percent: float,
    current_a: float,
    ink: Ink,
) -> None:
    """Draw the wave into the rectangle; 0 Hz is DC, electrode negative from 50 percent up."""
    if rect.width() < LEAST_PX or rect.height() < LEAST_PX:
        return
    cycles = 2 if rect.width() >= TWO_CYCLES_FROM_PX else 1
    wave = Wave(max(0.0, frequency_hz), min(100.0, max(0.0, electrode_negative_percent)) / 100.0, cycles)
    painter.save()
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(rect, QColor(ink.ground))
        if rect.width() < WORDS_FROM[0] or rect.height() < WORDS_FROM[1]:
            _paint_curve(painter, _Plot(rect.adjusted(6.0, 4.0, -6.0, -4.0), wave), ink)
        else:
            _paint_whole(Lettering(painter, ink), rect.adjusted(10.0, 8.0, -10.0, -8.0), wave, current_a)
    finally:
        painter.restore()


def _paint_whole(lettering: Lettering, inner: QRectF, wave: Wave, current_a: float) -> None:
    painter, ink = lettering.painter, lettering.ink
    row = lettering.line_px
    key = _key_rows(lettering, wave, inner.width())
    levels = _level_texts(current_a)
    metrics = QFontMetricsF(text_font(painter, lettering.small_px))
    left = max(metrics.horizontalAdvance(text) for text in levels) + 8.0
    end_text = metrics.horizontalAdvance(f"{wave.window_ms:.0f} {word('milliseconds')}") / 2.0
    head = len(key) * (row + 3.0) + (0.0 if wave.is_dc else row + 8.0)
    foot = row + 10.0 + (0.0 if wave.is_dc else row + 10.0)
    plot = _Plot(inner.adjusted(left, head, -end_text - 2.0, -foot), wave)
    for number, entries in enumerate(key):
        _paint_key(
            lettering, QRectF(inner.left(), inner.top() + number * (row + 3.0), inner.width(), row), entries
        )
    _paint_curve(painter, plot, ink)
    font = text_font(painter, lettering.small_px)
    for text, level in zip(levels, (plot.level(False), plot.zero, plot.level(True)), strict=True):
        write(
            painter, QRectF(inner.left(), level - row / 2.0, left - 8.0, row), text, font, ink.quiet, _RIGHT
        )
        line(
            painter,
            QPointF(plot.box.left() - 4.0, level),
            QPointF(plot.box.left(), level),
            pen(ink.quiet, ink.thin_px),
        )
    _paint_time(lettering, plot, inner.bottom() - row)
    if not wave.is_dc:
        _paint_dimensions(lettering, plot)


def _paint_curve(painter: QPainter, plot: _Plot, ink: Ink) -> None:
    thin = pen(ink.quiet, ink.thin_px)
    curve: list[QPointF] = []
    for start, end, is_negative in plot.wave.halves():
        outline = plot.half(start, end, is_negative)
        _paint_side(painter, outline, is_negative, ink)
        curve += [QPointF(x, y) for x, y in outline]
    line(painter, QPointF(plot.box.left(), plot.zero), QPointF(plot.box.right(), plot.zero), thin)
    line(painter, plot.box.topLeft(), plot.box.bottomLeft(), thin)
    painter.setBrush(NO_BRUSH)
    painter.setPen(pen(ink.line, ink.outline_px * 1.3))
    painter.drawPolyline(QPolygonF(curve[1:-1] if plot.wave.is_dc else curve))


def _paint_side(painter: QPainter, outline: Outline, is_negative: bool, ink: Ink) -> None:
    """Fill one half: slanted lines for electrode negative, dots for electrode positive."""
    if is_negative:
        fill(painter, outline, ink.ground if ink.is_print else ink.first)
        hatch(painter, outline, 45.0, 7.0, pen(ink.line if ink.is_print else ink.weld, 0.9))
    else:
        fill(painter, outline, ink.ground if ink.is_print else ink.behind)
        dots(painter, outline, 6.0, ink.gas)


def _paint_dimensions(lettering: Lettering, plot: _Plot) -> None:
    """Dimension the cycle above the wave and its two halves below."""
    painter, ink, wave = lettering.painter, lettering.ink, plot.wave
    above, below = plot.box.top() - 4.0, plot.box.bottom() + 5.0
    thin = pen(ink.quiet, ink.thin_px * 0.8)
    change = wave.negative_share * wave.period_ms
    for ms in (0.0, wave.period_ms):
        line(painter, QPointF(plot.x(ms), above - 4.0), QPointF(plot.x(ms), below + 4.0), thin)
    line(painter, QPointF(plot.x(change), plot.zero), QPointF(plot.x(change), below + 4.0), thin)
    dimension(painter, QPointF(plot.x(0.0), above), QPointF(plot.x(wave.period_ms), above), ink)
    dimension(painter, QPointF(plot.x(0.0), below), QPointF(plot.x(change), below), ink)
    dimension(painter, QPointF(plot.x(change), below), QPointF(plot.x(wave.period_ms), below), ink)
    bold = text_font(painter, lettering.small_px, bold=True)
    text = word("period", time=wave.period_ms, frequency=wave.frequency_hz)
    row = lettering.line_px
    over = QRectF(plot.box.left(), above - row - 4.0, 2.0 * plot.box.width(), row)
    write(painter, over, text, bold, ink.text, _LEFT)
    percent = round(100.0 * wave.negative_share)
    under = QRectF(plot.box.left(), below + 4.0, plot.box.width(), row)
    shares = f"{word('share_en', percent=percent)}, {word('share_ep', percent=100 - percent)}"
    write(painter, under, shares, bold, ink.text, _LEFT)


def _paint_time(lettering: Lettering, plot: _Plot, top: float) -> None:
    painter, ink = lettering.painter, lettering.ink
    font = text_font(painter, lettering.small_px)
    window = plot.wave.window_ms
    step = next((step for step in _STEPS_MS if window / step <= plot.box.width() / 46.0), _STEPS_MS[-1])
    level = top - 3.0
    line(
        painter,
        QPointF(plot.box.left(), level),
        QPointF(plot.box.right(), level),
        pen(ink.quiet, ink.thin_px),
    )
    count = int(window / step + 1e-9)
    for number in range(count + 1):
        x = plot.x(number * step)
        line(painter, QPointF(x, level - 4.0), QPointF(x, level), pen(ink.quiet, ink.thin_px))
        text = figure(f"{number * step:g}") + (f" {word('milliseconds')}" if number == count else "")
        write(painter, QRectF(x - 30.0, top, 60.0, lettering.line_px), text, font, ink.quiet, _CENTRE)


def _level_texts(current_a: float) -> tuple[str, str, str]:
    amps = str(show(current_a, "A", "current", Units.METRIC))
    return f"+{amps}", "0", f"\N{MINUS SIGN}{amps}"


def _key_rows(lettering: Lettering, wave: Wave, width: float) -> list[list[tuple[bool, str]]]:
    """Which side does what, in one row where both fit."""
    if wave.is_dc:
        is_negative = wave.negative_share >= 0.5
        return [[(is_negative, word("dc_en" if is_negative else "dc_ep"))]]
    entries = [(True, word("en_does")), (False, word("ep_does"))]
    metrics = QFontMetricsF(text_font(lettering.painter, lettering.small_px))
    needed = sum(metrics.horizontalAdvance(text) + lettering.line_px * 1.6 + 22.0 for _, text in entries)
    return [entries] if needed <= width else [[entry] for entry in entries]


def _paint_key(lettering: Lettering, box: QRectF, entries: list[tuple[bool, str]]) -> None:
    painter, ink = lettering.painter, lettering.ink
    font = text_font(painter, lettering.small_px)
    left = box.left()
    for is_negative, text in entries:
        right = left + box.height() * 1.6
        swatch: Outline = ((left, box.top() + 1.0), (right, box.top() + 1.0), (right, box.bottom() - 1.0),
                           (left, box.bottom() - 1.0))  # fmt: skip
        _paint_side(painter, swatch, is_negative, ink)
        painter.setBrush(NO_BRUSH)
        painter.setPen(pen(ink.line, ink.thin_px))
        painter.drawPolygon(polygon(swatch))
        width = QFontMetricsF(font).horizontalAdvance(text) + 2.0
        write(painter, QRectF(right + 6.0, box.top(), width, box.height()), text, font, ink.text, _LEFT)
        left = right + 6.0 + width + 14.0
