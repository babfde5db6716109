"""What layouts of equally wide columns share: keeping their items and asking for height by width."""

from abc import abstractmethod

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class ColumnLayout(QLayout):
    """Holds items and the narrowest column; where each item goes is the subclass's one decision."""

    def __init__(
        self, min_column: int, spacing: int, max_columns: int, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._min_column, self._max_columns = min_column, max_columns
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
        sizes = [item.minimumSize() for item in self._shown()]
        return QSize(
            max((size.width() for size in sizes), default=0),
            max((size.height() for size in sizes), default=0),
        )

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _most_columns(self, width: int) -> int:
        """Return how many columns fit, none of them empty and none narrower than its widest item."""
        narrowest = max(self._min_column, self.minimumSize().width())
        fitting = (width + self.spacing()) // (narrowest + self.spacing())
        return max(1, min(fitting, self._max_columns, len(self._shown())))

    @abstractmethod
    def _arrange(self, area: QRect, *, apply: bool) -> int:
        """Return the height that is needed in the area's width; with `apply`, put every item in its place."""


def height_in(item: QLayoutItem, width: int) -> int:
    """Return the height an item asks for in a width."""
    return item.heightForWidth(width) if item.hasHeightForWidth() else item.sizeHint().height()
