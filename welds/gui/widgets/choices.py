"""Inputs that take one or several of a closed set."""

from collections.abc import Iterable, Mapping, Sequence

from PySide6.QtCore import QPointF, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen, QWheelEvent
from PySide6.QtWidgets import QButtonGroup, QComboBox, QHBoxLayout, QPushButton, QSizePolicy, QWidget

from welds.gui.widgets.chip import Chip
from welds.gui.widgets.even_grid import EvenGrid

Option = tuple[str, str]
"""(value, words)"""


class ChoiceRow(QWidget):
    """A few exclusive choices as buttons side by side; arrow keys move between them."""

    chosen = Signal(str)

    def __init__(self, name: str, options: Sequence[Option], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._group = QButtonGroup(self)
        self._buttons: dict[str, QPushButton] = {}
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        for value, words in options:
            button = QPushButton(words, self)
            button.setCheckable(True)
            button.setAccessibleName(f"{name}: {words}")
            button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            button.toggled.connect(lambda on, picked=value: self._on_toggled(picked, on))
            self._group.addButton(button)
            self._buttons[value] = button
            layout.addWidget(button)
        self.set_value(options[0][0])

    def value(self) -> str:
        """Return the chosen value."""
        return next(value for value, button in self._buttons.items() if button.isChecked())

    def set_value(self, value: str) -> None:
        """Show a choice without reporting it; an unknown value changes nothing."""
        button = self._buttons.get(value)
        if button is None or button.isChecked():
            return
        with QSignalBlocker(button):
            button.setChecked(True)
        self.setFocusProxy(button)

    def _on_toggled(self, value: str, on: bool) -> None:
        if on:
            self.setFocusProxy(self._buttons[value])
            self.chosen.emit(value)


class ChoiceBox(QComboBox):
    """One of a longer list of words; the wheel scrolls the page, never the choice."""

    chosen = Signal(str)

    def __init__(self, name: str, options: Sequence[Option], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(10)
        self.set_options(options)
        self.activated.connect(lambda _index: self.chosen.emit(self.value()))
        self.activated.connect(lambda _index: self.setToolTip(self.currentText()))

    def set_options(self, options: Sequence[Option]) -> None:
        """Replace the list, keeping the choice where it still exists."""
        kept = self.value()
        with QSignalBlocker(self):
            self.clear()
            for value, words in options:
                self.addItem(words, value)
        self.set_value(kept)

    def value(self) -> str:
        """Return the chosen value, "" when there is none."""
        return str(self.currentData() or "")

    def set_value(self, value: str) -> None:
        """Show a choice without reporting it; an unknown value shows the first."""
        with QSignalBlocker(self):
            self.setCurrentIndex(max(0, self.findData(value)))
        self.setToolTip(self.currentText())  # for words that the box has no room for

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(self.palette().buttonText().color(), 1.8))
            middle = QPointF(self.width() - 17.0, self.height() / 2)
            painter.drawPolyline(
                [middle + QPointF(-5, -2.5), middle + QPointF(0, 2.5), middle + QPointF(5, -2.5)]
            )
        finally:
            painter.end()

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.showPopup()
            return
        super().keyPressEvent(event)


class CheckChips(QWidget):
    """Several of a closed set, each a box to tick."""

    changed = Signal(object)

    def __init__(
        self, name: str, options: Sequence[Option], min_column: int = 100, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._name = name
        self._boxes: dict[str, Chip] = {}
        layout = EvenGrid(min_column, spacing=4, parent=self)
        for value, words in options:
            box = Chip(words, self)
            box.toggled.connect(lambda _on: self.changed.emit(self.values()))
            self._boxes[value] = box
            layout.addWidget(box)
        self.set_words(dict(options))
        self.setFocusProxy(next(iter(self._boxes.values())))

    def set_words(self, words: Mapping[str, str]) -> None:
        """Call the values by other words."""
        for value, box in self._boxes.items():
            box.setText(words[value])
            box.setAccessibleName(f"{self._name}: {words[value]}")

    def values(self) -> tuple[str, ...]:
        """Return what is ticked, in list order."""
        return tuple(value for value, box in self._boxes.items() if box.isChecked())

    def set_values(self, values: Iterable[str]) -> None:
        """Show ticks without reporting them."""
        wanted = set(values)
        for value, box in self._boxes.items():
            with QSignalBlocker(box):
                box.setChecked(value in wanted)
