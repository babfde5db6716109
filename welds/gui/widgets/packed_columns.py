"""A layout of equal columns that fill from the top without gaps."""

from PySide6.QtCore import QRect
from PySide6.QtWidgets import QLayoutItem, QWidget

from welds.gui.widgets.column_layout import ColumnLayout, height_in


class PackedColumns(ColumnLayout):
    """Each widget goes to the column that holds least so far, by the weight it was added with.

    Weights, not heights, decide: unfolding something moves only what is below it, never to another column.
    """

    def __init__(
        self, min_column: int, spacing: int = 8, max_columns: int = 3, parent: QWidget | None = None
    ) -> None:
        super().__init__(min_column, spacing, max_columns, parent)
        self._weights: dict[QWidget | None, int] = {}

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

    def takeAt(self, index: int) -> QLayoutItem | None:
        item = super().takeAt(index)
        if item is not None:
            self._weights.pop(item.widget(), None)
        return item

    def _arrange(self, area: QRect, *, apply: bool) -> int:
        gap, columns = self.spacing(), self._most_columns(area.width())
        width = (area.width() - gap * (columns - 1)) // columns
        weights, tops = [0] * columns, [0] * columns
        for item in self._shown():
            column = weights.index(min(weights))
            height = height_in(item, width)
            if apply:
                left = area.left() + column * (width + gap)
                item.setGeometry(QRect(left, area.top() + tops[column], width, height))
            weights[column] += self._weights.get(item.widget(), 1)
            tops[column] += height + gap
        return max(0, max(tops) - gap)
