"""A place on the page for one drawing."""

from collections.abc import Callable

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QSizePolicy, QWidget

Draw = Callable[[QPainter, QRectF], None]


class DrawingView(QFrame):
    """Paints whatever function it was last given; says in words what the drawing shows."""

    def __init__(self, name: str, smallest: QSize, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self.setAccessibleName(name)
        self._smallest = smallest
        self._draw: Draw | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)

    def show_drawing(self, draw: Draw | None, words: str) -> None:
        """Draw with this function from now on; None leaves the place empty."""
        self._draw = draw
        self.setAccessibleDescription(words)
        self.update()

    def sizeHint(self) -> QSize:
        return self._smallest

    def minimumSizeHint(self) -> QSize:
        return self._smallest

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self._draw is None:
            return
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            if not self.isEnabled():
                painter.setOpacity(0.35)
            self._draw(painter, QRectF(self.rect()).adjusted(4, 4, -4, -4))
        finally:
            painter.end()
