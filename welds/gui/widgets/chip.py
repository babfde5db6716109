"""A box to tick that is all face: made for gloves."""

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QCheckBox, QSizePolicy, QWidget

from welds.gui.colours import Colours
from welds.gui.stylesheet import INPUT_HEIGHT_PX

CORNER_PX = 17


class Chip(QCheckBox):
    """Shows its words in a frame; ticked, it is filled and has a tick in a folded corner."""

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(words, parent)
        self.setProperty("kind", "chip")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setToolTip(words)

    def hitButton(self, position: QPoint) -> bool:
        return self.rect().contains(position)

    def sizeHint(self) -> QSize:
        return QSize(self.fontMetrics().horizontalAdvance(self.text()) + 16, INPUT_HEIGHT_PX)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours = Colours.of(self.palette())
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            frame = QRectF(self.rect()).adjusted(1, 1, -1, -1)
            is_on = self.isChecked()
            paper = colours.accent_paper if is_on or self.underMouse() else colours.sheet
            painter.setBrush(QColor(paper))
            painter.setPen(QPen(QColor(colours.accent if is_on else colours.edge), 2 if is_on else 1))
            painter.drawRoundedRect(frame, 4, 4)
            if is_on:
                self._paint_corner(painter, frame, colours)
            if self.hasFocus():
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(colours.ink), 1.5, Qt.PenStyle.DashLine))
                painter.drawRoundedRect(frame.adjusted(3, 3, -3, -3), 2, 2)
            painter.setPen(QColor(colours.ink if self.isEnabled() else colours.faded_ink))
            painter.drawText(frame, Qt.AlignmentFlag.AlignCenter, self.text())
        finally:
            painter.end()

    def _paint_corner(self, painter: QPainter, frame: QRectF, colours: Colours) -> None:
        corner = frame.topLeft()
        triangle = QPolygonF([corner, corner + QPointF(CORNER_PX, 0), corner + QPointF(0, CORNER_PX)])
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.accent))
        painter.drawPolygon(triangle)
        painter.setPen(QPen(QColor(colours.on_accent), 1.6))
        painter.drawPolyline([corner + QPointF(2.5, 5.5), corner + QPointF(4.5, 8), corner + QPointF(9, 2.5)])
