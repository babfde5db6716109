"""Warnings or notes that fold: one short line each, or in full with their sources."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from welds.gui.card_face import CautionLine
from welds.gui.widgets.even_grid import EvenGrid
from welds.gui.widgets.fold import FoldButton
from welds.gui.widgets.texts import label

_TOP_LEFT = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft


class CautionFold(QFrame):
    """Cautions in even columns; the short form shows the first sentence of each."""

    def __init__(self, panel: str, mark: str, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", panel)
        self.setAccessibleName(name)
        self._mark, self._name = mark, name
        self._shown: tuple[CautionLine, ...] = ()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(14, 8, 6, 4)
        self._grid = EvenGrid(390, spacing=4)
        layout.addLayout(self._grid)
        self._lines: list[QWidget] = []
        self.button = FoldButton(self.tr("In full"), self.tr("{name} in full").format(name=name), self)
        self.button.toggled.connect(lambda _on: self._fill())
        self.hide()

    def show_cautions(self, cautions: Sequence[CautionLine]) -> None:
        """Show these; the fold stays as the person left it."""
        if tuple(cautions) != self._shown:
            self._shown = tuple(cautions)
            self._fill()
        self.setVisible(bool(cautions))

    def _fill(self) -> None:
        self._clear()
        for caution in self._shown:
            line = QWidget(self)
            row = QHBoxLayout(line)
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(8)
            row.addWidget(label(self._mark, parent=line), 0, _TOP_LEFT)
            row.addLayout(self._words(caution, line), 1)
            line.setToolTip(caution.text)
            self._grid.addWidget(line)
            self._lines.append(line)
            line.show()
        self._grid.addWidget(self.button)
        self._grid.setAlignment(self.button, _TOP_LEFT)

    def _clear(self) -> None:
        while self._grid.takeAt(0) is not None:
            pass
        for line in self._lines:
            line.hide()
            line.deleteLater()
        self._lines.clear()

    def _words(self, caution: CautionLine, parent: QWidget) -> QVBoxLayout:
        words = QVBoxLayout()
        words.setSpacing(0)
        is_open = self.button.isChecked()
        words.addWidget(label(caution.text if is_open else caution.first_words, wrap=True, parent=parent))
        if is_open and caution.source:
            words.addWidget(label(caution.source, "small", wrap=True, parent=parent))
        words.addStretch(1)
        return words
