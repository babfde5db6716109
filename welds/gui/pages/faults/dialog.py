"""Pick what the bead looks like, read where it comes from, and let the card take the change."""

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from welds.gui.card_words import GRADE_WORDS
from welds.gui.pages.faults.finder import FaultFinder
from welds.gui.stylesheet import INPUT_HEIGHT_PX
from welds.gui.widgets.side_area import SideArea
from welds.gui.widgets.texts import clear_layout, label
from welds.language import tr
from welds.report.fault_lines import RemedyLine

SIZE_PX = (1000, 640)
LIST_PX, SIDES_PX = 352, 60
"""Width of the list, and what scroll bar, padding and spacing take of it."""


class FaultDialog(QDialog):
    """Faults on the left, causes and remedies of the chosen one on the right."""

    chosen = Signal(object)

    def __init__(self, finder: FaultFinder, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._finder = finder
        self.setWindowTitle(self.tr("What went wrong"))
        self.resize(*SIZE_PX)
        self.faults = QListWidget(self)
        self.faults.setAccessibleName(self.tr("What the bead looks like"))
        self.faults.setWordWrap(True)
        self.faults.setMinimumWidth(LIST_PX)
        self.faults.setSpacing(2)
        self.faults.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        heading = label(self.tr("What does the bead &look like?"), "heading", parent=self)
        heading.setBuddy(self.faults)
        left = QVBoxLayout()
        left.addWidget(heading)
        left.addWidget(self.faults, 1)
        self._title = label(role="title", wrap=True, parent=self)
        self._standard = label(role="soft", wrap=True, parent=self)
        body = QWidget(self)
        self._lines = QVBoxLayout(body)
        self._lines.setContentsMargins(0, 0, 8, 0)
        self._lines.setSpacing(8)
        self.applies: list[QPushButton] = []
        right = QVBoxLayout()
        right.setSpacing(2)
        right.addWidget(self._title)
        right.addWidget(self._standard)
        right.addWidget(SideArea(body, self), 1)
        columns = QHBoxLayout()
        columns.setSpacing(14)
        columns.addLayout(left, 0)
        columns.addLayout(right, 1)
        close = QPushButton(self.tr("&Close"), self)
        close.clicked.connect(self.reject)
        foot = QHBoxLayout()
        words = self.tr(
            "For {title}. Change one thing at a time, on scrap."
            " A crack in anything that carries load is a qualified welder's."
        )
        foot.addWidget(label(words.format(title=title), "soft", wrap=True, parent=self), 1)
        foot.addWidget(close)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 10, 12, 10)
        layout.addLayout(columns, 1)
        layout.addLayout(foot)
        for look in finder.faults():
            item = QListWidgetItem(f"{look.words}: {look.seen_as}")
            item.setData(Qt.ItemDataRole.UserRole, look)
            item.setSizeHint(self._room_of(item.text()))
            self.faults.addItem(item)
        self.faults.currentItemChanged.connect(lambda item, _before: self._show(item))
        self.faults.setCurrentRow(0)

    def show_fault(self, name: str) -> None:
        """Choose a fault by its plain name; one that is not in the list changes nothing."""
        for row, look in enumerate(self._finder.faults()):
            if look.name == name:
                self.faults.setCurrentRow(row)

    def _room_of(self, text: str) -> QSize:
        """Return the room of a wrapped entry; the list's own reckoning forgets the style sheet's padding."""
        width = LIST_PX - SIDES_PX
        wrapped = self.fontMetrics().boundingRect(0, 0, width, 0, int(Qt.TextFlag.TextWordWrap), text)
        return QSize(width, max(wrapped.height() + 12, INPUT_HEIGHT_PX))

    def _show(self, item: QListWidgetItem | None) -> None:
        if item is None:
            return
        look = item.data(Qt.ItemDataRole.UserRole)
        self._title.setText(f"{look.words}: {look.seen_as}")
        self._standard.setText(
            look.standard or self.tr("No imperfection of the standard: a trouble at the bench.")
        )
        clear_layout(self._lines)
        self.applies = []
        for line in self._finder.remedies(look.name):
            self._lines.addWidget(self._sheet(line))
        self._lines.addStretch(1)

    def _sheet(self, line: RemedyLine) -> QFrame:
        sheet = QFrame(self)
        sheet.setProperty("panel", "sheet")
        layout = QVBoxLayout(sheet)
        layout.setContentsMargins(12, 8, 12, 8)
        layout.setSpacing(3)
        layout.addWidget(label(line.cause, "soft", wrap=True, parent=sheet))
        row = QHBoxLayout()
        row.addWidget(label(line.remedy, "value", wrap=True, parent=sheet), 1)
        if line.adjustment is not None:
            row.addWidget(self._button(line, sheet))
        layout.addLayout(row)
        grade = QHBoxLayout()
        grade.addWidget(self._chip(line, sheet))
        grade.addWidget(label(line.source, "small", wrap=True, parent=sheet), 1)
        layout.addLayout(grade)
        return sheet

    def _button(self, line: RemedyLine, sheet: QWidget) -> QPushButton:
        button = QPushButton(line.change, sheet)
        button.setProperty("kind", "" if self.applies else "main")
        button.setToolTip(self.tr("Let the card take this change"))
        button.setAccessibleName(
            self.tr("Let the card take this change: {change}").format(change=line.change)
        )
        button.clicked.connect(lambda: self._choose(line))
        self.applies.append(button)
        return button

    def _chip(self, line: RemedyLine, sheet: QWidget) -> QLabel:
        tone = "" if line.basis.is_published else "warn"
        return label(tr(GRADE_WORDS[line.basis]), "chip", tone=tone, parent=sheet)

    def _choose(self, line: RemedyLine) -> None:
        self.chosen.emit(line.adjustment)
        self.accept()
