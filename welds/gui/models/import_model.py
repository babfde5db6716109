"""The rows of a file that may be imported: what would become of each, and why."""

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from welds.gui.pages.log import words
from welds.logbook.importing import Preview, Row, Standing
from welds.quantities.units import Units
from welds.report.wording import outcome_words

STANDING = Qt.ItemDataRole.UserRole
Index = QModelIndex | QPersistentModelIndex
_NOWHERE = QModelIndex()


class ImportModel(QAbstractTableModel):
    """Bad rows first, for they are what has to be looked at; then the new ones, then those that are known."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Row, ...] = ()
        self._units = Units.METRIC
        self._titles = (self.tr("Row"), self.tr("Stands"), self.tr("Weld"), self.tr("Why"))
        self._standing = {
            Standing.NEW: self.tr("new"),
            Standing.DUPLICATE: self.tr("known"),
            Standing.BAD: self.tr("bad"),
        }

    def show_preview(self, preview: Preview | None, units: Units) -> None:
        """Show another preview, or none."""
        order = (Standing.BAD, Standing.NEW, Standing.DUPLICATE)
        self.beginResetModel()
        self._units = units
        rows = preview.rows if preview else ()
        self._rows = tuple(sorted(rows, key=lambda row: order.index(row.standing)))
        self.endResetModel()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self._titles)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        if orientation is not Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return self._titles[section] if 0 <= section < len(self._titles) else None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not index.isValid() or not self.checkIndex(index):
            return None
        row = self._rows[index.row()]
        if role == STANDING:
            return row.standing.value
        if role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return None
        match index.column():
            case 0:
                return str(row.place)
            case 1:
                return self._standing[row.standing]
            case 2:
                return "" if row.entry is None else self._weld(row)
            case _:
                return row.reason

    def _weld(self, row: Row) -> str:
        assert row.entry is not None
        parts = (
            row.entry.made_at[:10],
            words.what_words(row.entry, self._units),
            words.current_words(row.entry),
            outcome_words(row.entry.outcome),
        )
        return "  ·  ".join(part for part in parts if part)
