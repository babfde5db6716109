"""Words at the left, buttons at the right; where these would squeeze the words they get their own line."""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QSizePolicy, QWidget

MOST = 0.66
"""The share of the width beyond which the buttons leave the words too little."""


class HeadBar(QWidget):
    """Long languages and large letters need the second line."""

    def __init__(
        self, words: QWidget, buttons: Sequence[QWidget], spacing_px: int = 8, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self._words = words
        self._side = QWidget(self)
        line = QHBoxLayout(self._side)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(spacing_px)
        for button in buttons:
            line.addWidget(button)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(spacing_px)
        self._grid.setColumnStretch(0, 1)
        self._is_split: bool | None = None
        self._arrange()

    def minimumSizeHint(self) -> QSize:
        """Return what the buttons need: they can have a line of their own."""
        return QSize(self._side.minimumSizeHint().width(), self._grid.minimumSize().height())

    def event(self, event: QEvent) -> bool:
        is_done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self._arrange()
        return is_done

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        is_split = self._side.sizeHint().width() > MOST * self.width()
        if is_split == self._is_split:
            return
        self._is_split = is_split
        for part in (self._words, self._side):
            self._grid.removeWidget(part)
        if is_split:
            self._grid.addWidget(self._side, 0, 0, 1, 2, Qt.AlignmentFlag.AlignRight)
            self._grid.addWidget(self._words, 1, 0, 1, 2)
        else:
            self._grid.addWidget(self._words, 0, 0)
            self._grid.addWidget(self._side, 0, 1, Qt.AlignmentFlag.AlignTop)
        self.updateGeometry()
