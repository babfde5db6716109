"""The chain of reasons under a figure, and what the setting does."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout, QWidget

from welds.gui.card_face import Figure, ReasonLine
from welds.gui.widgets.texts import clear_layout, label

_TOP = Qt.AlignmentFlag.AlignTop
_TOP_RIGHT = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignRight


class ReasonList(QFrame):
    """Each reason on a row: step number, sentence, the factor it applied, the source below it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "raised")
        self._shown: Figure | None = None
        self._layout = QGridLayout(self)
        self._layout.setContentsMargins(12, 8, 12, 10)
        self._layout.setHorizontalSpacing(10)
        self._layout.setVerticalSpacing(3)
        self._layout.setColumnStretch(1, 1)

    def show_figure(self, figure: Figure) -> None:
        """Show the reasons of this figure."""
        if figure == self._shown:
            return
        self._shown = figure
        clear_layout(self._layout)
        self.setAccessibleName(self.tr("Reasons for {label}").format(label=figure.label))
        self._add_reasons(figure.reasons)
        lines = self._what_it_does(figure)
        lines += [
            self.tr("Grade: {grade}, {meaning}.").format(grade=figure.grade, meaning=figure.grade_meaning)
        ]
        if figure.more_sources:
            lines.append(self.tr("Also from:") + " " + "; ".join(figure.more_sources))
        if figure.alternatives:
            lines.append(self.tr("Instead:") + " " + "; ".join(figure.alternatives))
        for row, line in enumerate(lines, start=2 * len(figure.reasons) + 2):
            self._add_line(row, line)

    def _what_it_does(self, figure: Figure) -> list[str]:
        if not figure.does:
            return []
        little = self.tr("Too little, or wrong: {looks}").format(looks=figure.too_little)
        much = self.tr("Too much: {looks}").format(looks=figure.too_much)
        return [self.tr("What it does (shop practice): {words}").format(words=figure.does), little, much]

    def _add_reasons(self, reasons: Sequence[ReasonLine]) -> None:
        for number, reason in enumerate(reasons, start=1):
            row = 2 * number
            self._layout.addWidget(label(f"{number}.", "soft", parent=self), row, 0, _TOP_RIGHT)
            self._layout.addWidget(label(reason.text, wrap=True, parent=self), row, 1, _TOP)
            if reason.factor:
                self._layout.addWidget(label(reason.factor, "value", parent=self), row, 2, _TOP_RIGHT)
            if reason.source:
                self._add_line(row + 1, reason.source)

    def _add_line(self, row: int, text: str) -> None:
        self._layout.addWidget(label(text, "small", wrap=True, parent=self), row, 1, 1, 2)
