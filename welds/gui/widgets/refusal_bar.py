"""The reason in words when there is no card for what is asked, and the way to the nearest one."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from welds.gui.widgets.texts import label, set_text


class RefusalBar(QFrame):
    """A sentence, what is still on screen, and a button where there is somewhere to go."""

    asked_for_nearest = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "refusal")
        self._reason = label(wrap=True, parent=self)
        self._below = label(role="small", wrap=True, parent=self)
        self.button = QPushButton(self)
        self.button.setProperty("kind", "main")
        self.button.clicked.connect(self.asked_for_nearest)
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(self._reason)
        words.addWidget(self._below)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 8, 12, 8)
        layout.setSpacing(12)
        layout.addLayout(words, 1)
        layout.addWidget(self.button)
        self.hide()

    def show_reason(self, reason: str, below: str, button: str) -> None:
        """Show why; an empty button text means there is nowhere near to go."""
        set_text(self._reason, reason)
        set_text(self._below, below)
        self.setAccessibleName(reason)
        self.button.setText(button)
        self.button.setAccessibleName(button)
        self.button.setVisible(bool(button))
        self.show()

    def reason(self) -> str:
        """Return the sentence on show."""
        return self._reason.text()
