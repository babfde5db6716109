"""A titled sheet of plain lines: preparation steps, checks."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout, QWidget

from welds.gui.widgets.texts import clear_layout, label

Line = tuple[str, str, str, str]
"""(mark, text, small text below, tone)"""


class LineSheet(QFrame):
    """Lines under a title, each with a mark in front; hidden while there are none."""

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self._title = title
        self._shown: tuple[Line, ...] = ()
        self._layout = QGridLayout(self)
        self._layout.setContentsMargins(14, 10, 12, 12)
        self._layout.setHorizontalSpacing(10)
        self._layout.setVerticalSpacing(3)
        self._layout.setColumnStretch(1, 1)
        self.hide()

    def show_lines(self, lines: Sequence[Line]) -> None:
        """Show these lines."""
        if tuple(lines) != self._shown:
            self._shown = tuple(lines)
            self._fill()
        self.setVisible(bool(lines))

    def _fill(self) -> None:
        clear_layout(self._layout)
        self._layout.addWidget(label(self._title, "heading", parent=self), 0, 0, 1, 2)
        top = Qt.AlignmentFlag.AlignTop
        for number, (mark, text, below, tone) in enumerate(self._shown):
            row = 2 * number + 1
            self._layout.addWidget(
                label(mark, "soft", tone=tone, parent=self), row, 0, top | Qt.AlignmentFlag.AlignRight
            )
            self._layout.addWidget(label(text, tone=tone, wrap=True, parent=self), row, 1, top)
            if below:
                self._layout.addWidget(label(below, "small", wrap=True, parent=self), row + 1, 1, top)
        self._layout.setRowStretch(2 * len(self._shown) + 2, 1)
