"""A layout of equal columns: as many as fit the width, filled in reading order."""

from PySide6.QtCore import QPoint, QRect, QSize
from PySide6.QtWidgets import QWidget

from welds.gui.widgets.column_layout import ColumnLayout, height_in


class EvenGrid(ColumnLayout):
    """Lays items in rows of equally wide columns; each row is as tall as its tallest item."""

    def __init__(
        self, min_column: int, spacing: int = 8, max_columns: int = 12, parent: QWidget | None = None
    ) -> None:
        super().__init__(min_column, spacing, max_columns, parent)

    def columns_in(self, width: int) -> int:
        """Return how many columns stand side by side in this width; rows are filled evenly."""
        count = max(1, len(self._shown()))
        rows = -(-count // self._most_columns(width))
        return -(-count // rows)

    def _arrange(self, area: QRect, *, apply: bool) -> int:
        items, gap = self._shown(), self.spacing()
        columns = self.columns_in(area.width())
        width = (area.width() - gap * (columns - 1)) // columns
        top = area.top()
        for start in range(0, len(items), columns):
            row = items[start : start + columns]
            height = max(height_in(item, width) for item in row)
            if apply:
                for column, item in enumerate(row):
                    item.setGeometry(
                        QRect(QPoint(area.left() + column * (width + gap), top), QSize(width, height))
                    )
            top += height + gap
        return max(0, top - gap - area.top())
