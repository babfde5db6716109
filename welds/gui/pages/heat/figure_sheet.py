"""The figures under the picture: name, figure, error, and the kept setting's figure where there is one."""

from collections.abc import Sequence

from PySide6.QtCore import QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QSizePolicy, QVBoxLayout, QWidget

from welds.gui.pages.heat.figures import FigureLine
from welds.gui.widgets.even_grid import EvenGrid
from welds.gui.widgets.texts import label, set_text

COLUMN_PX = 215
MARGIN_PX = 4


class _Tile(QWidget):
    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._name = label(role="heading", parent=self)
        self._value = label(role="value", wrap=True, parent=self)
        self._error = label(role="small", wrap=True, parent=self)
        self._kept = label(role="small", wrap=True, parent=self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 3, 8, 3)
        layout.setSpacing(0)
        for each in (self._name, self._value, self._error, self._kept):
            layout.addWidget(each)
        layout.addStretch(1)

    def show_line(self, line: FigureLine, kept: str) -> None:
        self._name.setText(line.name)
        self._value.setText(line.value)
        set_text(self._error, line.error)
        set_text(self._kept, kept)


class FigureSheet(QFrame):
    """As many columns as there is room for."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self.setAccessibleName(self.tr("Figures"))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        self._grid = EvenGrid(COLUMN_PX, spacing=2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(4, MARGIN_PX, 4, MARGIN_PX)
        layout.addLayout(self._grid)
        self._tiles: list[_Tile] = []

    def minimumSizeHint(self) -> QSize:
        """Return what the figures need in the width there is: a frame would ask for one column's height."""
        return QSize(COLUMN_PX, self._grid.heightForWidth(max(self.width(), COLUMN_PX)) + 2 * MARGIN_PX)

    def sizeHint(self) -> QSize:
        return self.minimumSizeHint()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()

    def show_lines(self, lines: Sequence[FigureLine], kept: Sequence[FigureLine]) -> None:
        """Show these figures; `kept` by the same names."""
        while len(self._tiles) < len(lines):
            tile = _Tile(self)
            self._tiles.append(tile)
            self._grid.addWidget(tile)
            tile.show()
        values = {each.name: each.value for each in kept}
        words = self.tr("kept: {value}")
        for number, tile in enumerate(self._tiles):
            tile.setVisible(number < len(lines))
            if number < len(lines):
                line = lines[number]
                value = values.get(line.name, "")
                tile.show_line(line, words.format(value=value) if value else "")
        self.setAccessibleDescription("; ".join(f"{line.name}: {line.value}, {line.error}" for line in lines))
