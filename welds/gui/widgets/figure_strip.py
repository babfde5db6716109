"""Big figures side by side with one place below for the reasons of one of them."""

from collections.abc import Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from welds.gui.card_face import Figure
from welds.gui.widgets.even_grid import EvenGrid
from welds.gui.widgets.figure_tile import FigureTile
from welds.gui.widgets.reason_list import ReasonList
from welds.gui.widgets.texts import clear_layout


class FigureStrip(QWidget):
    """Tiles in even columns; opening one tile's "why" closes the others'."""

    def __init__(self, min_column: int = 196, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        self._grid = EvenGrid(min_column, spacing=8)
        layout.addLayout(self._grid)
        self.reasons = ReasonList(self)
        self.reasons.hide()
        layout.addWidget(self.reasons)
        self.tiles: list[FigureTile] = []

    def show_figures(self, figures: Sequence[Figure]) -> None:
        """Show these figures, keeping an open "why" open where its figure is still there."""
        asked = next((tile.figure.name for tile in self.tiles if tile.figure and tile.why.isChecked()), "")
        if len(figures) != len(self.tiles):
            self._rebuild(len(figures))
        for tile, figure in zip(self.tiles, figures, strict=True):
            tile.show_figure(figure)
            tile.why.setChecked(figure.name == asked)
        self._show_reasons()

    def _rebuild(self, count: int) -> None:
        clear_layout(self._grid)
        self.tiles = [FigureTile(parent=self) for _ in range(count)]
        for tile in self.tiles:
            self._grid.addWidget(tile)
            tile.why_toggled.connect(lambda on, asked=tile: self._on_why_toggled(asked, on))
        previous = None
        for tile in self.tiles:
            if previous is not None:
                QWidget.setTabOrder(previous, tile.why)
            previous = tile.why

    def _on_why_toggled(self, asked: FigureTile, on: bool) -> None:
        if on:
            for tile in self.tiles:
                if tile is not asked:
                    tile.why.setChecked(False)
        self._show_reasons()

    def _show_reasons(self) -> None:
        figure = next((tile.figure for tile in self.tiles if tile.why.isChecked()), None)
        if figure is not None:
            self.reasons.show_figure(figure)
        self.reasons.setVisible(figure is not None)
