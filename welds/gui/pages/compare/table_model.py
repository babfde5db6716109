"""The comparison as a table model: settings down, columns across."""

from collections.abc import Sequence

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from welds.gui.pages.compare.presenter import Shown
from welds.report.comparison_rows import Cell, Mark, Row

CELL = Qt.ItemDataRole.UserRole
Index = QModelIndex | QPersistentModelIndex
_NOWHERE = QModelIndex()


class ComparisonModel(QAbstractTableModel):
    """Rows that differ, or all of them; replaced as a whole, in place where the shape stays."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._shown: Shown | None = None
        self._rows: tuple[Row, ...] = ()
        self._is_folded = True

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows on show."""
        return self._rows

    @property
    def equal_rows(self) -> tuple[Row, ...]:
        """The rows in which all columns agree."""
        return tuple(row for row in self._all() if not row.is_different)

    @property
    def shown(self) -> Shown | None:
        """What the table was last given."""
        return self._shown

    def show(self, shown: Shown) -> None:
        """Take a comparison."""
        self._replace(shown, self._is_folded)

    def fold(self, is_folded: bool) -> None:
        """Show only rows that differ, or all."""
        self._replace(self._shown, is_folded)

    def cell(self, index: Index) -> Cell | None:
        """Return the cell at an index; None in a column without a card."""
        return self._rows[index.row()].cells[index.column()]

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() or self._shown is None else len(self._shown.titles)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        if role != Qt.ItemDataRole.DisplayRole or self._shown is None:
            return None
        is_across = orientation is Qt.Orientation.Horizontal
        words = self._shown.titles if is_across else [row.label for row in self._rows]
        # In the middle of a reset a header still asks for sections that are gone.
        return words[section] if section < len(words) else None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not self.checkIndex(index) or not index.isValid() or self._shown is None:
            return None
        cell = self.cell(index)
        if role == CELL:
            return cell
        if role == Qt.ItemDataRole.DisplayRole:
            return self._problem(index.column()) if cell is None else cell.text
        if role == Qt.ItemDataRole.ToolTipRole:
            return "\n".join(self._lines(index, cell))
        if role == Qt.ItemDataRole.AccessibleTextRole:
            label = f"{self._rows[index.row()].label}, {self._shown.titles[index.column()]}"
            return f"{label}: {'. '.join(self._lines(index, cell))}"
        return None

    def _problem(self, column: int) -> str:
        return self._shown.comparison.columns[column].problem if self._shown else ""

    def _lines(self, index: Index, cell: Cell | None) -> Sequence[str]:
        """Return the cell in sentences: figure, range, how it stands to the base, why."""
        if cell is None:
            return (self._problem(index.column()),)
        words = {
            Mark.BASE: self.tr("the base"),
            Mark.SAME: self.tr("the same as the base"),
            Mark.MORE: self.tr("more than the base: {change}"),
            Mark.LESS: self.tr("less than the base: {change}"),
            Mark.OTHER: self.tr("other than the base: {change}"),
            Mark.ABSENT: self.tr("not used here, {change}"),
        }[cell.mark].format(change=cell.change)
        line = cell.line
        figures = [cell.text, *([line.range_text, line.second, line.basis.word] if line else [])]
        return [", ".join(text for text in figures if text), words.rstrip(": ,"), *cell.why]

    def _all(self) -> tuple[Row, ...]:
        return tuple(row for group in self._shown.groups for row in group.rows) if self._shown else ()

    def _replace(self, shown: Shown | None, is_folded: bool) -> None:
        before, columns = [row.name for row in self._rows], self.columnCount()
        titles = self._shown.titles if self._shown else ()
        self._is_folded = is_folded
        everything = tuple(row for group in shown.groups for row in group.rows) if shown else ()
        rows = tuple(row for row in everything if row.is_different or not is_folded) or everything
        is_same_shape = before == [row.name for row in rows] and shown and columns == len(shown.titles)
        if not is_same_shape:
            self.beginResetModel()
        self._shown, self._rows = shown, rows
        if not is_same_shape:
            self.endResetModel()
            return
        assert self._shown is not None
        if rows:
            self.dataChanged.emit(self.index(0, 0), self.index(len(rows) - 1, columns - 1))
        if titles != self._shown.titles:
            self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, columns - 1)
