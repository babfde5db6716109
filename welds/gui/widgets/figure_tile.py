"""One big figure, readable at arm's length."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from welds.gui.card_face import Figure
from welds.gui.widgets.fold import FoldButton
from welds.gui.widgets.texts import label, set_property, set_text, show_grade

LONGEST_FIGURE = 9
"""Longer starts are words and are set smaller, on several lines if need be."""


class FigureTile(QFrame):
    """Label, start figure with its unit, range, grade in words, and a "why" button."""

    why_toggled = Signal(bool)

    def __init__(self, *, is_main: bool = False, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.figure: Figure | None = None
        self.setProperty("panel", "sheet")
        self._name = label(role="heading" if is_main else "soft", wrap=True, parent=self)
        self._is_main = is_main
        self.start = label(role="hero" if is_main else "figure", parent=self)
        self._unit = label(role="hero-unit" if is_main else "soft", parent=self)
        self._range = label(role="value" if is_main else "soft", wrap=True, parent=self)
        self._second = label(role="soft", wrap=True, parent=self)
        self._grade = label(role="chip", parent=self)
        self.why = FoldButton(self.tr("Why"), parent=self)
        self.why.toggled.connect(self.why_toggled)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(14, 10, 8, 6)
        layout.setSpacing(1)
        layout.addWidget(self._name)
        layout.addLayout(self._value_row())
        for part in (self._range, self._second):
            layout.addWidget(part)
        layout.addStretch(1)
        layout.addLayout(self._foot())

    def show_figure(self, figure: Figure) -> None:
        """Show this setting."""
        self.figure = figure
        self.setAccessibleName(f"{figure.label}: {figure.start} {figure.unit}".strip())
        self.why.setAccessibleName(self.tr("Why {label}").format(label=figure.label))
        set_text(self._name, figure.label)
        is_sentence = len(figure.start) > LONGEST_FIGURE
        self.start.setWordWrap(is_sentence)
        if not self._is_main:
            set_property(self.start, "role", "words" if is_sentence else "figure")
        set_text(self.start, figure.start)
        set_text(self._unit, figure.unit)
        set_text(self._range, figure.range)
        set_text(self._second, figure.second)
        show_grade(self._grade, figure)

    def _value_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.start, 0, Qt.AlignmentFlag.AlignBaseline)
        row.addWidget(self._unit, 1, Qt.AlignmentFlag.AlignBaseline)
        return row

    def _foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addWidget(self._grade, 0, Qt.AlignmentFlag.AlignVCenter)
        row.addStretch(1)
        row.addWidget(self.why)
        return row
