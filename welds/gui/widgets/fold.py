"""A heading that folds what is under it away."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QToolButton, QVBoxLayout, QWidget

CLOSED, OPEN = "\u25b8", "\u25be"


class FoldButton(QToolButton):
    """A toggle with an arrow: points down when its content shows."""

    def __init__(self, text: str, name: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = text
        self.setAccessibleName(name or text)
        self.setProperty("kind", "fold")
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.toggled.connect(self._point)
        self._point(on=False)

    def _point(self, on: bool) -> None:
        self.setText(f"{OPEN if on else CLOSED} {self._words}")


class Fold(QWidget):
    """A fold button with the content below it, hidden at first."""

    opened = Signal(bool)

    def __init__(self, title: str, content: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.button = FoldButton(title, parent=self)
        self._content = content
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(content)
        content.hide()
        self.button.toggled.connect(content.setVisible)
        self.button.toggled.connect(self.opened)

    def open(self) -> None:
        """Show the content."""
        self.button.setChecked(True)
