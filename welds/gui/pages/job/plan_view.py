"""A drawing of a plan on the screen: ink on paper, as it will be printed."""

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from welds.gui.plan_painter import paint_plan
from welds.job.plan_drawing import PlanDrawing

_MARGIN = 12.0


class PlanView(QWidget):
    """Shows one drawing as large as there is room."""

    def __init__(self, drawing: PlanDrawing, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._drawing = drawing
        self.setAccessibleName(drawing.title)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:
        return QSize(640, 360)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.fillRect(self.rect(), "white")
            area = QRectF(self.rect()).adjusted(_MARGIN, _MARGIN, -_MARGIN, -_MARGIN)
            paint_plan(painter, area, self._drawing)
        finally:
            painter.end()
