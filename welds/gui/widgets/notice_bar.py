"""A sentence with buttons for what can be done about it."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QWidget

from welds.gui.widgets.texts import label, set_property

Offer = tuple[str, str]
"""(name, words on the button)"""


class NoticeBar(QFrame):
    """Shows a sentence on a panel of the style sheet; reports the name of the button that was pressed."""

    chosen = Signal(str)

    def __init__(self, panel: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", panel)
        self._words: QLabel = label(wrap=True, parent=self)
        self.buttons: dict[str, QPushButton] = {}
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(14, 5, 8, 5)
        self._row.setSpacing(8)
        self._row.addWidget(self._words, 1, Qt.AlignmentFlag.AlignVCenter)
        self.hide()

    def words(self) -> str:
        """Return the sentence on show."""
        return "" if self.isHidden() else self._words.text()

    def say(self, words: str) -> None:
        """Change the sentence and leave the buttons as they are, with the keyboard where it stands."""
        self._words.setText(words)
        self.setAccessibleName(words)

    def show_notice(self, words: str, offers: Sequence[Offer] = (), panel: str = "") -> None:
        """Show a sentence and its buttons, the first as the usual one; nothing for an empty sentence."""
        if panel:
            set_property(self, "panel", panel)
        for button in self.buttons.values():
            button.hide()
            button.deleteLater()
        self.buttons = {}
        self.say(words)
        for place, (name, said) in enumerate(offers):
            button = QPushButton(said, self)
            button.setProperty("kind", "" if place else "main")
            button.clicked.connect(lambda _checked=False, pressed=name: self.chosen.emit(pressed))
            self._row.addWidget(button)
            self.buttons[name] = button
        self.setVisible(bool(words))
