"""What an import would do, row by row; nothing is written before it is accepted."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QHeaderView,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from welds.gui.models.import_model import ImportModel
from welds.gui.widgets.table_head import HEAD_STYLE
from welds.gui.widgets.texts import label
from welds.logbook.importing import Preview, Standing
from welds.quantities.units import Units

ROW_PX = 32
WHY = 3
"""The column of reasons; the whole reason of the row in hand stands below the table."""


class ImportView(QFrame):
    """Shows a preview; reports whether it is accepted."""

    accepted = Signal()
    dropped = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self._words = label(role="value", wrap=True, parent=self)
        self.rows = ImportModel(self)
        self.table = QTableView(self)
        self.table.setAccessibleName(self.tr("Rows of the file"))
        self.table.setModel(self.rows)
        self.table.setShowGrid(False)
        self.table.setAlternatingRowColors(True)
        self.table.setTabKeyNavigation(False)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.table.verticalHeader().setDefaultSectionSize(ROW_PX)
        self.table.horizontalHeader().setStretchLastSection(True)
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.table.horizontalHeader().setHighlightSections(False)
        self.table.horizontalHeader().setStyleSheet(HEAD_STYLE)
        for column, width in enumerate((64, 84, 500)):
            self.table.setColumnWidth(column, width)
        self._why = label(role="soft", tone="stop", wrap=True, parent=self)
        self.table.selectionModel().currentRowChanged.connect(
            lambda index, _before: self._why.setText(str(index.siblingAtColumn(WHY).data() or ""))
        )
        self.accept = QPushButton(self)
        self.accept.setProperty("kind", "main")
        self.accept.clicked.connect(self.accepted)
        self.drop = QPushButton(self.tr("Leave it, write nothing"), self)
        self.drop.clicked.connect(self.dropped)
        foot = QHBoxLayout()
        foot.setSpacing(8)
        foot.addWidget(label(self.tr("Nothing has been written yet."), "soft", parent=self), 1)
        foot.addWidget(self.drop)
        foot.addWidget(self.accept)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 10, 12, 10)
        layout.setSpacing(8)
        layout.addWidget(self._words)
        layout.addWidget(self.table, 1)
        layout.addWidget(self._why)
        layout.addLayout(foot)

    def show_preview(self, name: str, preview: Preview, units: Units) -> None:
        """Show what would become of each row of the file of this name."""
        self.rows.show_preview(preview, units)
        new, known, bad = (preview.count(each) for each in (Standing.NEW, Standing.DUPLICATE, Standing.BAD))
        self._words.setText(
            self.tr("{name}: {new} new, {known} known already, {bad} bad.").format(
                name=name, new=new, known=known, bad=bad
            )
            + (
                " " + self.tr("Put the bad rows right in the file first: it is all or nothing.")
                if bad
                else ""
            )
        )
        self.accept.setText(self.tr("Write {count} new welds").format(count=new))
        self.accept.setVisible(new > 0 and not bad)
        self._why.setText("")
        self.table.selectRow(0)
        (self.drop if bad or not new else self.accept).setFocus()

    def words(self) -> str:
        """Return the sentence above the rows."""
        return self._words.text()
