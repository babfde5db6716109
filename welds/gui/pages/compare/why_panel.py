"""Below the table: why the setting in hand differs, column by column, and what can be done with a column."""

from html import escape

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from welds.gui.pages.compare.presenter import Shown
from welds.gui.widgets.texts import label
from welds.report.comparison_rows import Row

HEIGHT_PX = 122


class WhyPanel(QFrame):
    """Reasons of one row on the left, actions on the column in hand on the right."""

    pinned = Signal()
    moved = Signal(int)
    removed = Signal()
    opened = Signal()
    log_wanted = Signal()
    printed = Signal()
    saved = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self.setFixedHeight(HEIGHT_PX)
        self._title = label(role="heading", parent=self)
        self.reasons = QLabel(self)
        self.reasons.setTextFormat(Qt.TextFormat.RichText)
        self.reasons.setWordWrap(True)
        self.reasons.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self.reasons.setProperty("scrolled", "true")
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        area.setWidget(self.reasons)
        area.setAccessibleName(self.tr("Why the settings differ"))
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(self._title)
        words.addWidget(area, 1)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(12, 6, 8, 6)
        layout.setSpacing(14)
        layout.addLayout(words, 1)
        layout.addLayout(self._make_actions())

    def show_row(self, shown: Shown, row: Row, column: int) -> None:
        """Tell the reasons of a row; the column in hand comes first."""
        self._title.setText(self.tr("Why: {label}").format(label=row.label))
        self.reasons.setText(_reasons_html(shown, row, column, self.tr("The same in all columns.")))
        self._column.setText(shown.titles[column])
        self._column.setToolTip(shown.titles[column])
        request = shown.comparison.columns[column]
        for button in (self.log_button, self.print_button, self.pdf_button):
            button.setEnabled(request.card is not None)
        self.pin_button.setEnabled(column != shown.pinned and request.card is not None)
        self.left_button.setEnabled(column > 0)
        self.right_button.setEnabled(column < len(shown.titles) - 1)
        self.remove_button.setEnabled(len(shown.titles) > 1)

    def clear(self) -> None:
        """Say nothing, while there is nothing to say anything about."""
        self._title.setText("")
        self.reasons.setText("")

    def _make_actions(self) -> QVBoxLayout:
        self._column = label(role="heading", parent=self)
        self._column.setMaximumWidth(430)
        self.pin_button = self._button(self.tr("&Hold others against it"))
        self.left_button = self._button("\N{BLACK LEFT-POINTING POINTER}", self.tr("Move the column left"))
        self.right_button = self._button("\N{BLACK RIGHT-POINTING POINTER}", self.tr("Move the column right"))
        self.remove_button = self._button(self.tr("&Remove"))
        self.open_button = self._button(self.tr("&Open on the set-up page"))
        self.log_button = self._button(self.tr("Lo&g it…"))
        self.print_button = self._button(self.tr("Pr&int its card…"))
        self.pdf_button = self._button(self.tr("Its card as PD&F…"))
        self.pin_button.clicked.connect(self.pinned)
        self.left_button.clicked.connect(lambda: self.moved.emit(-1))
        self.right_button.clicked.connect(lambda: self.moved.emit(1))
        self.remove_button.clicked.connect(self.removed)
        self.open_button.clicked.connect(self.opened)
        self.log_button.clicked.connect(self.log_wanted)
        self.print_button.clicked.connect(self.printed)
        self.pdf_button.clicked.connect(self.saved)
        layout = QVBoxLayout()
        layout.setSpacing(4)
        layout.addWidget(self._column)
        for row in (
            (self.pin_button, self.left_button, self.right_button, self.remove_button),
            (self.open_button, self.log_button, self.print_button, self.pdf_button),
        ):
            line = QHBoxLayout()
            line.setSpacing(4)
            for button in row:
                line.addWidget(button)
            layout.addLayout(line)
        layout.addStretch(1)
        return layout

    def _button(self, words: str, name: str = "") -> QPushButton:
        button = QPushButton(words, self)
        button.setAccessibleName(name or words.replace("&", "").rstrip("…"))
        if name:
            button.setToolTip(name)
            button.setMaximumWidth(52)
        return button


def _reasons_html(shown: Shown, row: Row, column: int, same: str) -> str:
    """Return the reasons as paragraphs; columns with the same reasons stand together."""
    found: dict[tuple[str, ...], list[int]] = {}
    order = [column, *(place for place in range(len(row.cells)) if place != column)]
    for place in order:
        cell = row.cells[place]
        if cell is not None and cell.is_different:
            found.setdefault(cell.why, []).append(place)
    lines = [
        f"<b>{escape('; '.join(shown.titles[place] for place in places))}</b>: {escape('; '.join(why))}"
        for why, places in found.items()
    ]
    refused = [
        f"<b>{escape(title)}</b>: {escape(each.problem)}"
        for title, each in zip(shown.titles, shown.comparison.columns, strict=True)
        if each.problem
    ]
    return "<br>".join([*(lines or [escape(same)]), *refused])
