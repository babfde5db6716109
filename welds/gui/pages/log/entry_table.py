"""The table of logged welds: sorted by its headings, coloured by how they came out."""

from PySide6.QtCore import QEvent, QItemSelectionModel, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from welds.advice.evidence import Outcome
from welds.gui.colours import Colours
from welds.gui.models.entry_model import ENTRY, EntryModel, Index, Listing
from welds.gui.widgets.table_head import HEAD_STYLE
from welds.logbook.entry import Entry

ROW_PX = 34
OUTCOME = 7
WIDTHS_PX = (100, 60, 104, 84, 80, 44, 64, 80, 80, 210, 120, 140)
"""What each column has at least; a longer head or a longer word of a fixed choice makes it wider."""

CELL_PX = 24
"""What stands to the left and right of a word in its cell."""

ROOMY_PX = 1200
ONLY_WITH_ROOM = (9, 10, 11)
"""Machine, person and notes: left out where the table is narrow; the detail has them."""


class _OutcomePaint(QStyledItemDelegate):
    """Sets the words of the outcome in its colour; the words alone say it too."""

    def initStyleOption(self, option: QStyleOptionViewItem, index: Index) -> None:
        super().initStyleOption(option, index)
        entry = index.data(ENTRY)
        if isinstance(entry, Entry) and entry.outcome is not Outcome.WORKED:
            colours = Colours.of(option.palette)
            ink = colours.good if entry.outcome is Outcome.WORKED_WELL else colours.stop
            option.palette.setColor(QPalette.ColorRole.Text, QColor(ink))
            option.font.setBold(True)


class EntryTable(QTableView):
    """Shows a listing; reports the weld in hand, the wish for another order, and Delete."""

    chosen = Signal(object)
    sort_wanted = Signal(str, bool)
    remove_wanted = Signal()
    change_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Logged welds"))
        self.entries = EntryModel(self)
        self.setModel(self.entries)
        self.setItemDelegateForColumn(OUTCOME, _OutcomePaint(self))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setShowGrid(False)
        self.setAlternatingRowColors(True)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        rows = self.verticalHeader()
        rows.hide()
        rows.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        rows.setDefaultSectionSize(ROW_PX)
        heads = self.horizontalHeader()
        heads.setStyleSheet(HEAD_STYLE)
        heads.setHighlightSections(False)
        heads.setStretchLastSection(True)
        heads.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        heads.setSortIndicator(0, Qt.SortOrder.DescendingOrder)
        heads.setSortIndicatorShown(True)
        heads.setSectionsClickable(True)
        heads.sortIndicatorChanged.connect(self._on_sort_changed)
        self._sorted = (0, Qt.SortOrder.DescendingOrder)
        self._fit_columns()
        self.selectionModel().currentRowChanged.connect(self._on_current_changed)
        self.doubleClicked.connect(lambda _index: self.change_wanted.emit())

    def show_listing(self, listing: Listing) -> None:
        """Show a listing with its first weld in hand; the same question anew keeps row and place."""
        row, scrolled = max(0, self.currentIndex().row()), self.verticalScrollBar().value()
        self.entries.show_listing(listing)
        self.horizontalHeader().setSortIndicatorShown(not listing.is_whole)
        if not listing.count:
            return
        if listing.is_same_question:
            self.choose(min(row, listing.count - 1))
            self.verticalScrollBar().setValue(scrolled)
        else:
            self.choose(0)

    def choose(self, row: int) -> None:
        """Take a row in hand."""
        self.selectionModel().setCurrentIndex(
            self.entries.index(row, 0),
            QItemSelectionModel.SelectionFlag.ClearAndSelect | QItemSelectionModel.SelectionFlag.Rows,
        )

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key == Qt.Key.Key_Delete:
            self.remove_wanted.emit()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.change_wanted.emit()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        for column in ONLY_WITH_ROOM:
            self.setColumnHidden(column, self.width() < ROOMY_PX)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit_columns()

    def _fit_columns(self) -> None:
        """Give every column the room of its head and of the words that can stand in it."""
        bold = QFont(self.font())
        bold.setBold(True)
        wide = QFontMetrics(bold).horizontalAdvance
        for column, least in enumerate(WIDTHS_PX):
            words = max(map(wide, self.entries.fixed_words(column)), default=0) + CELL_PX
            self.setColumnWidth(column, max(least, words, self.horizontalHeader().sectionSizeHint(column)))

    def _on_sort_changed(self, column: int, order: Qt.SortOrder) -> None:
        sort = self.entries.columns[column].sort
        if not sort:  # put the mark back where it was
            self.horizontalHeader().setSortIndicator(*self._sorted)
        elif (column, order) != self._sorted:
            self._sorted = (column, order)
            self.sort_wanted.emit(sort, order is Qt.SortOrder.DescendingOrder)

    def _on_current_changed(self, current: Index, _before: Index) -> None:
        if current.isValid():
            self.chosen.emit(self.entries.entry(current.row()))
