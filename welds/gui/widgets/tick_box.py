"""A box to tick, large enough for gloves and drawn the same in light and dark."""

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QCheckBox, QWidget

from welds.gui.colours import Colours
from welds.gui.stylesheet import INPUT_HEIGHT_PX

BOX_PX = 22
GAP_PX = 8
MARGIN_PX = 6


class TickBox(QCheckBox):
    """A framed box with a tick, its words beside it; the whole face takes the click."""

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(words, parent)
        self.setAccessibleName(words)

    def hitButton(self, position: QPoint) -> bool:
        return self.rect().contains(position)

    def sizeHint(self) -> QSize:
        words = self.fontMetrics().horizontalAdvance(self.text())
        return QSize(2 * MARGIN_PX + BOX_PX + GAP_PX + words + 2, INPUT_HEIGHT_PX)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours = Colours.of(self.palette())
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            box = QRectF(MARGIN_PX, (self.height() - BOX_PX) / 2, BOX_PX, BOX_PX).adjusted(1, 1, -1, -1)
            self._paint_box(painter, box, colours)
            if self.hasFocus():
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(colours.accent), 2))
                painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
            painter.setPen(QColor(colours.ink if self.isEnabled() else colours.faded_ink))
            words = QRectF(self.rect()).adjusted(MARGIN_PX + BOX_PX + GAP_PX, 0, 0, 0)
            painter.drawText(words, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, self.text())
        finally:
            painter.end()

    def _paint_box(self, painter: QPainter, box: QRectF, colours: Colours) -> None:
        edge = colours.ink if self.isEnabled() else colours.faded_ink
        painter.setPen(QPen(QColor(edge), 2))
        painter.setBrush(QColor(colours.sheet))
        painter.drawRoundedRect(box, 3, 3)
        if self.isChecked():
            pen = QPen(QColor(edge), 3)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            painter.setPen(pen)
            corner = box.topLeft()
            painter.drawPolyline(
                [corner + QPointF(4.5, 10), corner + QPointF(8.5, 14.5), corner + QPointF(15.5, 5)]
            )
