"""A layout of equal columns: as many as fit the width, filled in reading order."""

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class EvenGrid(QLayout):
    """Lays items in rows of equally wide columns; each row is as tall as its tallest item."""

    def __init__(
        self, min_column: int, spacing: int = 8, max_columns: int = 12, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._min_column = min_column
        self._max_columns = max_columns
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(spacing)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation.Horizontal

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self._arrange(QRect(0, 0, width, 0), apply=False)

    def setGeometry(self, rectangle: QRect) -> None:
        super().setGeometry(rectangle)
        self._arrange(rectangle, apply=True)

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        shown = self._shown()
        height = max((item.minimumSize().height() for item in shown), default=0)
        return QSize(self._widest(), height)

    def columns_in(self, width: int) -> int:
        """Return how many columns stand side by side in this width; rows are filled evenly."""
        count = max(1, len(self._shown()))
        narrowest = max(self._min_column, self._widest())
        fitting = (width + self.spacing()) // (narrowest + self.spacing())
        most = max(1, min(fitting, self._max_columns, count))
        rows = -(-count // most)
        return -(-count // rows)

    def _widest(self) -> int:
        """Return the width that the widest item cannot do without."""
        return max((item.minimumSize().width() for item in self._shown()), default=0)

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _arrange(self, area: QRect, *, apply: bool) -> int:
        items, gap = self._shown(), self.spacing()
        columns = self.columns_in(area.width())
        width = (area.width() - gap * (columns - 1)) // columns
        top = area.top()
        for start in range(0, len(items), columns):
            row = items[start : start + columns]
            height = max(_height(item, width) for item in row)
            if apply:
                for column, item in enumerate(row):
                    item.setGeometry(
                        QRect(QPoint(area.left() + column * (width + gap), top), QSize(width, height))
                    )
            top += height + gap
        return max(0, top - gap - area.top())


def _height(item: QLayoutItem, width: int) -> int:
    return item.heightForWidth(width) if item.hasHeightForWidth() else item.sizeHint().height()
