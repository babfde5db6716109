"""A line of widgets that gives its first one a line of its own where all of them do not fit."""

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget


class WrapBar(QFrame):
    """Nothing on it is squeezed below its own words, at any size of text."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._first: QWidget | None = None
        self._lines = QVBoxLayout(self)
        self._lines.setContentsMargins(4, 3, 8, 3)
        self._lines.setSpacing(3)
        self.line = QHBoxLayout()
        self.line.setSpacing(6)
        self._lines.addLayout(self.line)

    @property
    def is_wrapped(self) -> bool:
        """True where the first widget stands on a line of its own."""
        return self._first is not None and self.line.indexOf(self._first) < 0

    def show_first(self, widget: QWidget) -> None:
        """Put the widget at the left of the line, or below it."""
        self._first = widget
        self.line.insertWidget(0, widget)
        self._arrange()

    def minimumSizeHint(self) -> QSize:
        """Return what the wider of both lines needs, whether they are two now or one."""
        first = self._first.sizeHint().width() if self._first is not None else 0
        return QSize(max(first, self._rest_px()) + self._margins_px(), self._lines.minimumSize().height())

    def event(self, event: QEvent) -> bool:
        is_done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self._arrange()
        return is_done

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        if self._first is None:
            return
        needed = self._first.sizeHint().width() + self.line.spacing() + self._rest_px() + self._margins_px()
        is_too_long = needed > self.width()
        if is_too_long == self.is_wrapped:
            return
        if is_too_long:
            self.line.removeWidget(self._first)
            self._lines.addWidget(self._first)
        else:
            self._lines.removeWidget(self._first)
            self.line.insertWidget(0, self._first)
        self.updateGeometry()

    def _rest_px(self) -> int:
        """Return the width of the line without the first widget."""
        items = (self.line.itemAt(place) for place in range(self.line.count()))
        widths = [item.sizeHint().width() for item in items if item and item.widget() is not self._first]
        return sum(widths) + self.line.spacing() * max(len(widths) - 1, 0)

    def _margins_px(self) -> int:
        margins = self._lines.contentsMargins()
        return margins.left() + margins.right()
