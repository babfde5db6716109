"""What colours and lines of the fused zone mean, written at the foot of its picture."""

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen

from welds.gui.drawing.heat_ink import HeatInk
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.strokes import dashes, line, pen


@dataclass(frozen=True, slots=True)
class ZoneWords:
    """What is written under the picture."""

    melted: str
    affected: str
    error: str
    kept: str
    filler: str


def paint_key(
    painter: QPainter,
    inner: QRectF,
    ink: Ink,
    heat: HeatInk,
    words: ZoneWords,
    *,
    has_kept: bool,
    knows_added: bool,
) -> float:
    """Write what the colours and lines mean at the foot and return the height that takes."""
    metrics = QFontMetricsF(painter.font())
    row = metrics.height() + 3.0
    items: list[tuple[str, str, QPen]] = [
        (words.melted, heat.fused, pen(heat.edge, 2.0)),
        (words.error, "", dashes(heat.edge, 1.2, 2.0, 2.5)),
    ]
    if words.affected:
        items.insert(1, (words.affected, heat.affected, pen(heat.isotherm, 0.9)))
    if words.filler:
        edge_of_filler = pen(heat.edge, 1.4) if knows_added else dashes(ink.quiet, 1.0, 4.0, 3.0)
        items.append((words.filler, heat.added, edge_of_filler))
    if has_kept:
        items.append((words.kept, "", dashes(heat.kept, 2.2, 5.0, 2.0, 1.0, 2.0)))
    placed: list[tuple[float, int]] = []
    across, count = 0.0, 0
    for text, _colour, _pen in items:
        width = 34.0 + metrics.horizontalAdvance(text) + 14.0
        if across and across + width > inner.width():
            across, count = 0.0, count + 1
        placed.append((across, count))
        across += width
    height = (count + 1) * row
    for (text, colour, edge), (left, number) in zip(items, placed, strict=True):
        top = inner.bottom() - height + number * row
        swatch = QRectF(inner.left() + left, top + 3.0, 26.0, row - 7.0)
        if colour:
            painter.setPen(edge)
            painter.setBrush(QColor(colour))
            painter.drawRect(swatch)
        else:
            line(painter, QPointF(swatch.left(), swatch.center().y()),
                 QPointF(swatch.right(), swatch.center().y()), edge)  # fmt: skip
        painter.setPen(QColor(ink.quiet))
        box = QRectF(swatch.right() + 6.0, top, metrics.horizontalAdvance(text) + 2.0, row)
        painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text)
    return height
