"""A layout of equal columns that fill from the top without gaps."""

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class PackedColumns(QLayout):
    """Each widget goes to the column that holds least so far, by the weight it was added with.

    Weights, not heights, decide: unfolding something moves only what is below it, never to another column.
    """

    def __init__(
        self, min_column: int, spacing: int = 8, max_columns: int = 3, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._weights: dict[QWidget | None, int] = {}
        self._min_column, self._max_columns = min_column, max_columns
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(spacing)

    def add(self, widget: QWidget, weight: int) -> None:
        """Add a widget that is about this many lines high."""
        self._weights[widget] = weight
        self.addWidget(widget)

    def release(self) -> None:
        """Let go of every widget; each stays alive and where it was.

        Qt's own removeWidget frees an item of a layout written in Python twice.
        """
        self._items.clear()
        self._weights.clear()
        self.invalidate()

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        if not 0 <= index < len(self._items):
            return None
        item = self._items.pop(index)
        self._weights.pop(item.widget(), None)
        return item

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
        sizes = [item.minimumSize() for item in self._shown()]
        return QSize(
            max((size.width() for size in sizes), default=0),
            max((size.height() for size in sizes), default=0),
        )

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _arrange(self, area: QRect, *, apply: bool) -> int:
        shown, gap = self._shown(), self.spacing()
        narrowest = max(self._min_column, self.minimumSize().width())
        columns = max(1, min((area.width() + gap) // (narrowest + gap), self._max_columns, len(shown)))
        width = (area.width() - gap * (columns - 1)) // columns
        weights, tops = [0] * columns, [0] * columns
        for item in shown:
            column = weights.index(min(weights))
            height = item.heightForWidth(width) if item.hasHeightForWidth() else item.sizeHint().height()
            if apply:
                left = area.left() + column * (width + gap)
                item.setGeometry(QRect(left, area.top() + tops[column], width, height))
            weights[column] += self._weights.get(item.widget(), 1)
            tops[column] += height + gap
        return max(0, max(tops) - gap)
