"""What the heat pictures share: lines of many points as Qt draws them, and a bar of a round length."""

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPolygonF

from welds.gui.drawing.ink import Ink
from welds.gui.drawing.strokes import View, line, pen
from welds.quantities.units import Units

Line = NDArray[np.float64]
"""Rows of two coordinates in mm."""


def on_painter(points: Line, view: View) -> QPolygonF:
    """Return a line of many points as Qt draws it."""
    pixels = points * (view.scale, -view.scale) + (view.left, view.base)
    return QPolygonF(list(map(QPointF, *pixels.T.tolist())))


def paint_scale_bar(painter: QPainter, corner: QPointF, scale: float, units: Units, ink: Ink) -> None:
    """Draw a bar of a round length that ends, with its words, at the corner."""
    bars = (
        ((0.5, "0.5 mm"), (1.0, "1 mm"), (2.0, "2 mm"), (5.0, "5 mm"), (10.0, "10 mm"), (20.0, "20 mm"))
        if units is Units.METRIC
        else ((25.4 / 32, "1/32 in"), (25.4 / 16, "1/16 in"), (25.4 / 8, "1/8 in"), (25.4 / 4, "1/4 in"),
              (25.4 / 2, "1/2 in"), (25.4, "1 in"))
    )  # fmt: skip
    mm, text = max((bar for bar in bars if bar[0] * scale <= 90.0), default=bars[0])
    metrics = QFontMetricsF(painter.font())
    width = metrics.horizontalAdvance(text) + 2.0
    level = corner.y() - metrics.height() / 2.0
    end = QPointF(corner.x() - width - 5.0, level)
    start = QPointF(end.x() - mm * scale, level)
    for a, b in (
        (start, end),
        (start - QPointF(0.0, 3.0), start + QPointF(0.0, 3.0)),
        (end - QPointF(0.0, 3.0), end + QPointF(0.0, 3.0)),
    ):
        line(painter, a, b, pen(ink.quiet, 1.6))
    painter.setPen(QColor(ink.quiet))
    box = QRectF(end.x() + 5.0, corner.y() - metrics.height(), width, metrics.height())
    painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text)
