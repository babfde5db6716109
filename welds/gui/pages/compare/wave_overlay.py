"""The AC waves of all columns over one time axis, and where their frequencies lie between wide and narrow."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from welds.advice.card import Card
from welds.gui.colours import Colours
from welds.gui.drawing.wave import Wave
from welds.gui.pages.compare.line_styles import style_of
from welds.language import tr
from welds.quantities.display import show
from welds.quantities.units import Units

MARGIN, LEGEND_LINE, STRIP_PX = 16.0, 24.0, 96.0
AXIS_PX = 46.0
_STEPS_MS = (1.0, 2.0, 5.0, 10.0, 20.0)
_CENTRE = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True, slots=True)
class WaveLine:
    """One wave and the columns that share it; `place` is the style of the first of them."""

    title: str
    place: int
    frequency_hz: float
    negative_percent: float
    current_a: float


@dataclass(frozen=True, slots=True)
class WaveWords:
    """Every word in the picture, ready in the person's language."""

    none: str
    time: str
    wide: str
    narrow: str
    trend: str


def wave_lines(titles: Sequence[str], cards: Sequence[Card | None]) -> tuple[WaveLine, ...]:
    """Return the waves of the columns with AC; equal ones once, under all their names."""
    found: dict[tuple[float, float, float], tuple[int, list[str]]] = {}
    for place, (title, card) in enumerate(zip(titles, cards, strict=True)):
        if card is None or "ac_frequency" not in card.settings or "electrode_negative" not in card.settings:
            continue
        figures = tuple(
            card.settings[name].figure.start for name in ("ac_frequency", "electrode_negative", "current")
        )
        found.setdefault((figures[0], figures[1], figures[2]), (place, []))[1].append(title)
    return tuple(WaveLine("; ".join(named), place, *figures) for figures, (place, named) in found.items())


def paint_waves(
    painter: QPainter,
    area: QRectF,
    lines: Sequence[WaveLine],
    colours: Colours,
    font: QFont,
    words: WaveWords,
) -> None:
    """Draw the legend, the waves and the strip from a wide to a narrow arc."""
    painter.save()
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(area, QColor(colours.sheet))
        painter.setFont(font)
        inner = area.adjusted(MARGIN, MARGIN / 2, -MARGIN, -MARGIN / 2)
        if not lines:
            painter.setPen(QColor(colours.soft_ink))
            painter.drawText(inner, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, words.none)
            return
        taken = _paint_legend(painter, inner, lines, colours)
        strip = QRectF(inner.left(), inner.bottom() - STRIP_PX, inner.width(), STRIP_PX)
        plot = QRectF(
            inner.left() + 56.0, inner.top() + taken + 8.0, inner.width() - 64.0,
            strip.top() - inner.top() - taken - AXIS_PX - 8.0,
        )  # fmt: skip
        _paint_plot(painter, plot, lines, colours, words)
        _paint_strip(painter, strip, lines, colours, words)
    finally:
        painter.restore()


def _paint_legend(painter: QPainter, inner: QRectF, lines: Sequence[WaveLine], colours: Colours) -> float:
    """Write one line for each wave, two abreast where they fit; return the height."""
    metrics = QFontMetricsF(painter.font())
    texts = [
        tr(
            "{title}: {frequency}, {percent:.0f} % EN, {current}",
            title=line.title,
            frequency=show(line.frequency_hz, "Hz", "ac_frequency", Units.METRIC),
            percent=line.negative_percent,
            current=show(line.current_a, "A", "current", Units.METRIC),
        )
        for line in lines
    ]
    widest = max(metrics.horizontalAdvance(text) for text in texts) + 60.0
    across = max(1, int(inner.width() // widest))
    for number, (line, text) in enumerate(zip(lines, texts, strict=True)):
        left = inner.left() + (number % across) * inner.width() / across
        top = inner.top() + number // across * LEGEND_LINE
        painter.setPen(style_of(line.place).pen(colours, 2.6))
        painter.drawLine(QPointF(left, top + LEGEND_LINE / 2), QPointF(left + 44.0, top + LEGEND_LINE / 2))
        painter.setPen(QColor(colours.ink))
        room = QRectF(left + 52.0, top, inner.width() / across - 56.0, LEGEND_LINE)
        painter.drawText(room, _LEFT, metrics.elidedText(text, Qt.TextElideMode.ElideMiddle, room.width()))
    return -(-len(lines) // across) * LEGEND_LINE


def _paint_plot(
    painter: QPainter, plot: QRectF, lines: Sequence[WaveLine], colours: Colours, words: WaveWords
) -> None:
    window_ms = 2000.0 / min(line.frequency_hz for line in lines)
    top_a = max(line.current_a for line in lines) * 1.12
    half = plot.height() / 2.0
    middle = plot.center().y()
    thin = QPen(QColor(colours.line), 1)
    painter.setPen(QPen(QColor(colours.edge), 1))
    painter.drawLine(QPointF(plot.left(), middle), QPointF(plot.right(), middle))
    painter.drawLine(plot.topLeft(), plot.bottomLeft())
    painter.setPen(QColor(colours.soft_ink))
    highest = max(line.current_a for line in lines)
    for share, text in ((1.0, f"+{highest:.0f} A"), (0.0, "0"), (-1.0, f"\N{MINUS SIGN}{highest:.0f} A")):
        level = middle - share * half * highest / top_a
        painter.drawText(QRectF(plot.left() - 60.0, level - 10.0, 54.0, 20.0), _RIGHT, text)
    _paint_time(painter, plot, window_ms, thin, colours, words)
    for line in lines:
        cycles = int(window_ms * line.frequency_hz / 1000.0) + 1
        wave = Wave(line.frequency_hz, line.negative_percent / 100.0, cycles)
        curve = QPolygonF()
        for start, end, is_negative in wave.halves():
            if start >= window_ms:
                break
            level = middle + (1.0 if is_negative else -1.0) * half * line.current_a / top_a
            for ms in (start, min(end, window_ms)):
                curve.append(QPointF(plot.left() + plot.width() * ms / window_ms, level))
        painter.setPen(style_of(line.place).pen(colours, 2.4))
        painter.drawPolyline(curve)


def _paint_time(
    painter: QPainter, plot: QRectF, window_ms: float, thin: QPen, colours: Colours, words: WaveWords
) -> None:
    step = next((step for step in _STEPS_MS if window_ms / step <= plot.width() / 60.0), _STEPS_MS[-1])
    for number in range(int(window_ms / step + 1e-9) + 1):
        x = plot.left() + plot.width() * number * step / window_ms
        painter.setPen(thin)
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom() + 4.0))
        painter.setPen(QColor(colours.soft_ink))
        painter.drawText(QRectF(x - 30.0, plot.bottom() + 5.0, 60.0, 18.0), _CENTRE, f"{number * step:g}")
    painter.drawText(QRectF(plot.left(), plot.bottom() + 20.0, plot.width(), 18.0), _CENTRE, words.time)


def _paint_strip(
    painter: QPainter, strip: QRectF, lines: Sequence[WaveLine], colours: Colours, words: WaveWords
) -> None:
    """Draw a scale of hertz that narrows from left to right, with each wave's mark on it."""
    low = min(line.frequency_hz for line in lines) - 15.0
    high = max(line.frequency_hz for line in lines) + 15.0
    level = strip.top() + 42.0
    left, right = strip.left() + 120.0, strip.right() - 120.0
    wedge = QPolygonF(
        [QPointF(left, level - 13.0), QPointF(right, level - 3.0), QPointF(right, level + 3.0),
         QPointF(left, level + 13.0)]
    )  # fmt: skip
    painter.setPen(QPen(QColor(colours.edge), 1))
    painter.setBrush(QColor(colours.raised))
    painter.drawPolygon(wedge)
    painter.setPen(QColor(colours.ink))
    painter.drawText(QRectF(strip.left(), level - 12.0, 114.0, 24.0), _RIGHT, words.wide)
    painter.drawText(QRectF(right + 6.0, level - 12.0, 114.0, 24.0), _LEFT, words.narrow)
    taken: dict[float, int] = {}
    for line in lines:
        x = left + (right - left) * (line.frequency_hz - low) / (high - low)
        painter.setPen(style_of(line.place).pen(colours, 4.0))
        painter.drawLine(QPointF(x, level - 16.0), QPointF(x, level + 16.0))
        if line.frequency_hz not in taken:
            taken[line.frequency_hz] = 1
            painter.setPen(QColor(colours.ink))
            painter.drawText(
                QRectF(x - 40.0, level - 38.0, 80.0, 20.0), _CENTRE, f"{line.frequency_hz:.0f} Hz"
            )
    painter.setPen(QColor(colours.soft_ink))
    painter.drawText(QRectF(strip.left(), level + 22.0, strip.width(), 22.0), _CENTRE, words.trend)
