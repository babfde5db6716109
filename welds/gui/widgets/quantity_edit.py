"""A field for a length as people type it, with what was understood written below."""

from collections.abc import Iterable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from welds.gui.widgets.texts import clear_layout, label, set_property


class QuantityEdit(QWidget):
    """Takes the text, shows its reading, the trouble, or readings to choose from; understands nothing."""

    text_edited = Signal(str)
    reading_chosen = Signal(str)

    def __init__(self, name: str, hint: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self.line = QLineEdit(self)
        self.line.setAccessibleName(name)
        self.line.setPlaceholderText(hint)
        self.line.textEdited.connect(self.text_edited)
        self.setFocusProxy(self.line)
        self._note = label(role="small", wrap=True, parent=self)
        self._readings = QHBoxLayout()
        self._readings.setSpacing(6)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.line, 1)
        row.addLayout(self._readings)
        layout.addLayout(row)
        layout.addWidget(self._note)
        self._note.hide()

    def text(self) -> str:
        """Return what stands in the field."""
        return self.line.text()

    def set_text(self, text: str) -> None:
        """Put a text in the field without reporting an edit."""
        if self.line.text() != text:
            self.line.setText(text)

    def show_understood(self, text: str) -> None:
        """Say how the text was read."""
        self._show(text, tone="", invalid=False)

    def show_trouble(self, text: str) -> None:
        """Say beside the field why its text cannot be used."""
        self._show(text, tone="stop", invalid=True)

    def offer_readings(self, question: str, readings: Iterable[str]) -> None:
        """Ask which reading was meant; each is a button."""
        self._show(question, tone="warn", invalid=False)
        for reading in readings:
            button = QPushButton(reading, self)
            button.setAccessibleName(self.tr("{name}: {reading}").format(name=self._name, reading=reading))
            button.clicked.connect(lambda _checked=False, chosen=reading: self.reading_chosen.emit(chosen))
            self._readings.addWidget(button)
        previous: QWidget = self.line
        for button in self.reading_buttons():
            QWidget.setTabOrder(previous, button)
            previous = button

    def reading_buttons(self) -> list[QPushButton]:
        """Return the readings on offer, in order."""
        items = [self._readings.itemAt(index) for index in range(self._readings.count())]
        widgets = [item.widget() for item in items if item is not None]
        return [widget for widget in widgets if isinstance(widget, QPushButton)]

    def note(self) -> str:
        """Return the line below the field."""
        return self._note.text()

    def _show(self, text: str, *, tone: str, invalid: bool) -> None:
        clear_layout(self._readings)
        set_property(self._note, "tone", tone)
        set_property(self.line, "invalid", invalid)
        self._note.setText(text)
        self._note.setVisible(bool(text))
        self.line.setAccessibleDescription(text)
