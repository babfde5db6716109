"""Choosing a joint from drawn cross-sections."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QSizePolicy, QWidget

from welds.gui.colours import Colours
from welds.gui.widgets.even_grid import EvenGrid

PaintTile = Callable[[QPainter, QRectF, str, str], None]
"""Draws the joint of that name into a rectangle, at the thicknesses in hand, on paper of a colour."""

TILE_HEIGHT_PX = 80


class JointTile(QAbstractButton):
    """One joint: its section drawn above its name; the chosen one has a thick edge and a filled corner."""

    def __init__(self, joint: str, words: str, paint: PaintTile, parent: QWidget) -> None:
        super().__init__(parent)
        self.joint = joint
        self._paint = paint
        self.setText(words)
        self.setToolTip(words)
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        words = QFontMetrics(self._small_font()).horizontalAdvance(self.text()) + 12
        return QSize(max(96, words), TILE_HEIGHT_PX - 18 + self.fontMetrics().height())

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours = Colours.of(self.palette())
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            paper = self._paint_frame(painter, colours)
            painter.setFont(self._small_font())
            words = painter.fontMetrics().height() + 4
            section = QRectF(self.rect()).adjusted(6, 6, -6, -words - 2)
            painter.save()
            painter.setClipRect(section)
            self._paint(painter, section, self.joint, paper)
            painter.restore()
            painter.setPen(QColor(colours.ink if self.isEnabled() else colours.faded_ink))
            foot = QRectF(4, self.height() - words - 2, self.width() - 8, words)
            short = painter.fontMetrics().elidedText(
                self.text(), Qt.TextElideMode.ElideRight, round(foot.width())
            )
            painter.drawText(foot, Qt.AlignmentFlag.AlignCenter, short)
        finally:
            painter.end()

    def _small_font(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(max(11, round(font.pixelSize() * 0.88)))
        return font

    def _paint_frame(self, painter: QPainter, colours: Colours) -> str:
        frame = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
        paper = colours.accent_paper if self.isChecked() or self.underMouse() else colours.sheet
        painter.setBrush(QColor(paper))
        painter.setPen(
            QPen(QColor(colours.accent if self.isChecked() else colours.edge), 3 if self.isChecked() else 1)
        )
        painter.drawRoundedRect(frame, 5, 5)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(colours.ink), 1.5, Qt.PenStyle.DashLine))
            painter.drawRoundedRect(frame.adjusted(3, 3, -3, -3), 3, 3)
        return paper


class JointPicker(QWidget):
    """The joints as tiles; one Tab stop, arrow keys move the choice."""

    chosen = Signal(str)

    def __init__(
        self, name: str, options: Sequence[tuple[str, str]], paint: PaintTile, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._paint = paint
        self._group = QButtonGroup(self)
        self.tiles: dict[str, JointTile] = {}
        layout = EvenGrid(96, spacing=5, max_columns=4, parent=self)
        for joint, words in options:
            tile = JointTile(joint, words, self._paint_section, self)
            tile.setAccessibleName(f"{name}: {words}")
            tile.toggled.connect(lambda on, picked=joint: self._on_toggled(picked, on))
            self._group.addButton(tile)
            self.tiles[joint] = tile
            layout.addWidget(tile)
        first = next(iter(self.tiles.values()))
        first.setChecked(True)
        self.setFocusProxy(first)

    def value(self) -> str:
        """Return the chosen joint."""
        return next(joint for joint, tile in self.tiles.items() if tile.isChecked())

    def set_value(self, joint: str) -> None:
        """Show a choice without reporting it; an unknown joint changes nothing."""
        tile = self.tiles.get(joint)
        if tile is None or tile.isChecked():
            return
        with QSignalBlocker(tile):
            tile.setChecked(True)
        self.setFocusProxy(tile)
        self.redraw()

    def redraw(self) -> None:
        """Draw every section again."""
        for tile in self.tiles.values():
            tile.update()

    def _paint_section(self, painter: QPainter, area: QRectF, joint: str, paper: str) -> None:
        self._paint(painter, area, joint, paper)

    def _on_toggled(self, joint: str, on: bool) -> None:
        if on:
            self.setFocusProxy(self.tiles[joint])
            self.chosen.emit(joint)
