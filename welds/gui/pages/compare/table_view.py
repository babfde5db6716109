"""The table of columns: keys move between cells, Ctrl+Shift with an arrow moves a column."""

from PySide6.QtCore import QItemSelectionModel, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QTableView, QWidget

from welds.advice.request import Request
from welds.gui.pages.compare.cell_paint import CellPaint
from welds.gui.pages.compare.column_header import ColumnHeader, Head, RowHeader
from welds.gui.pages.compare.presenter import Shown
from welds.gui.pages.compare.table_model import ComparisonModel

LABEL_PX, LABEL_PAD_PX = 162, 16
LEAST_ROW_PX = 28


class ComparisonTable(QTableView):
    """Shows a comparison; reports the cell in hand and columns that were moved."""

    cell_chosen = Signal(int, int)
    column_moved = Signal(int, int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Settings side by side"))
        self.comparison = ComparisonModel(self)
        self.setModel(self.comparison)
        self._paint = CellPaint(self)
        self.setItemDelegate(self._paint)
        self.heads = ColumnHeader(self)
        self.setHorizontalHeader(self.heads)
        self.heads.dragged.connect(self.column_moved)
        labels = RowHeader(LABEL_PX, lambda: self.current_cell()[0], self)
        labels.setMinimumSectionSize(LEAST_ROW_PX)
        labels.sectionClicked.connect(lambda row: self.choose(row, max(0, self.current_cell()[1])))
        self.setVerticalHeader(labels)
        self.setCornerButtonEnabled(False)
        corner = self.findChild(QAbstractButton)
        if corner is not None:
            corner.setStyleSheet("QTableCornerButton::section { background: transparent; border: none; }")
        self.setShowGrid(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setTabKeyNavigation(False)
        self.selectionModel().currentChanged.connect(self._on_current_changed)
        self.heads.sectionClicked.connect(self.choose_column)

    def show_comparison(self, shown: Shown) -> None:
        """Show the columns; the cell in hand stays where it can."""
        row, column = self.current_cell()
        name = self.comparison.rows[row].name if 0 <= row < len(self.comparison.rows) else ""
        self.comparison.show(shown)
        self._settle(name, column)

    def fold(self, is_folded: bool) -> None:
        """Fold away the rows that are the same, or show them."""
        row, column = self.current_cell()
        name = self.comparison.rows[row].name if 0 <= row < len(self.comparison.rows) else ""
        self.comparison.fold(is_folded)
        self._settle(name, column)

    def current_cell(self) -> tuple[int, int]:
        """Return row and column in hand, -1 where there is none."""
        index = self.currentIndex()
        return index.row(), index.column()

    def choose_column(self, column: int) -> None:
        """Take a column in hand, in the present row."""
        row = max(0, self.current_cell()[0])
        self.choose(row, column)

    def choose(self, row: int, column: int) -> None:
        """Take a cell in hand."""
        self.selectionModel().setCurrentIndex(
            self.comparison.index(row, column), QItemSelectionModel.SelectionFlag.ClearAndSelect
        )

    def keyPressEvent(self, event: QKeyEvent) -> None:
        both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()))
        column = self.current_cell()[1]
        if step is not None and event.modifiers() & both == both and column >= 0:
            self.column_moved.emit(column, column + step)
            self.choose_column(min(max(column + step, 0), self.comparison.columnCount() - 1))
            return
        super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._set_heights()

    def _settle(self, name: str, column: int) -> None:
        shown = self.comparison.shown
        if shown is None:
            return
        self._paint.base_column = shown.pinned
        heads = [
            Head(title, each.request.joint, _ratio(each.request), each.card is not None)
            for title, each in zip(shown.titles, shown.comparison.columns, strict=True)
        ]
        self.heads.show_heads(heads, shown.pinned, lambda: self.current_cell()[1])
        self._set_heights()
        self._span_refusals(shown)
        names = [row.name for row in self.comparison.rows]
        if names:
            row = names.index(name) if name in names else names.index("current") if "current" in names else 0
            first = 1 if shown.pinned == 0 else 0
            column = min(column if column >= 0 else first, len(heads) - 1)
            if (row, column) != self.current_cell():
                self.choose(row, column)
        self.cell_chosen.emit(*self.current_cell())

    def _set_heights(self) -> None:
        count = self.comparison.columnCount()
        if not count or self.verticalHeader().count() != len(self.comparison.rows):
            return  # resized in the middle of a reset: the header does not know its rows yet
        width = self.viewport().width() // count
        for place, row in enumerate(self.comparison.rows):
            height = max(
                LEAST_ROW_PX,
                self._paint.row_height(row.cells, width, self.font()),
                self._paint.label_height(row.label, LABEL_PX - LABEL_PAD_PX, self.font()),
            )
            if self.rowHeight(place) != height:
                self.setRowHeight(place, height)

    def _span_refusals(self, shown: Shown) -> None:
        self.clearSpans()
        rows = len(self.comparison.rows)
        for column, each in enumerate(shown.comparison.columns):
            if each.card is None and rows > 1:
                self.setSpan(0, column, rows, 1)

    def _on_current_changed(self) -> None:
        row, column = self.current_cell()
        self.heads.viewport().update()
        self.verticalHeader().viewport().update()
        self.cell_chosen.emit(row, column)


def _ratio(request: Request) -> float:
    return round((request.other_thickness_mm or request.thickness_mm) / request.thickness_mm, 2)
