"""Pictures of a weld in a row, each small and upright."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QIcon, QImageReader, QPixmap
from PySide6.QtWidgets import QToolButton, QVBoxLayout, QWidget

from welds.gui.widgets.even_grid import EvenGrid
from welds.gui.widgets.texts import clear_layout

LARGEST_PX = QSize(150, 112)


class PictureRow(QWidget):
    """Buttons with a picture on each; what a click means is the owner's business."""

    clicked = Signal(int)

    def __init__(self, what_click_does: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._what_click_does = what_click_does
        self._grid = EvenGrid(LARGEST_PX.width() + 14, spacing=6)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self._grid)
        self.buttons: list[QToolButton] = []
        self.hide()

    def show_names(self, names: Sequence[str]) -> None:
        """Show a button for each picture, blank until the picture is there."""
        clear_layout(self._grid)
        self.buttons = []
        for place, name in enumerate(names):
            button = QToolButton(self)
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextUnderIcon)
            button.setIconSize(LARGEST_PX)
            button.setText(name if len(name) < 20 else f"{name[:12]}…{name[-6:]}")
            button.setToolTip(f"{name}: {self._what_click_does}")
            button.setAccessibleName(self.tr("Picture {name}").format(name=name))
            button.setAccessibleDescription(self._what_click_does)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            button.setFixedHeight(LARGEST_PX.height() + 44)
            button.clicked.connect(lambda _checked=False, number=place: self.clicked.emit(number))
            self._grid.addWidget(button)
            self.buttons.append(button)
        self.setVisible(bool(names))

    def show_pictures(self, pictures: Sequence[bytes | None]) -> None:
        """Put the pictures on their buttons; one that is gone says so."""
        for place, content in enumerate(pictures[: len(self.buttons)]):
            self.show_picture(place, content)

    def show_picture(self, place: int, content: bytes | None) -> None:
        """Put a picture on its button; one that is gone says so."""
        pixmap = QPixmap()
        if content is not None and pixmap.loadFromData(content):
            self.buttons[place].setIcon(_fitted(pixmap))
        else:
            gone = self.tr(
                "This picture cannot be shown: its file is gone, or of a kind that cannot be drawn."
            )
            self.buttons[place].setToolTip(gone)

    def show_file(self, place: int, file: Path) -> None:
        """Put a picture file on its button, turned as the camera noted."""
        reader = QImageReader(str(file))
        reader.setAutoTransform(True)
        size = reader.size()
        if size.isValid():
            reader.setScaledSize(size.scaled(QSize(320, 320), Qt.AspectRatioMode.KeepAspectRatio))
        image = reader.read()
        if not image.isNull():
            self.buttons[place].setIcon(_fitted(QPixmap.fromImage(image)))


def _fitted(pixmap: QPixmap) -> QIcon:
    return QIcon(
        pixmap.scaled(
            LARGEST_PX, Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
        )
    )
