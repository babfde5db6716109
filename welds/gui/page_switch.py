"""The pages of the window behind a row of buttons; each page is made when it is first shown."""

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QMainWindow, QPushButton, QStackedWidget, QWidget


class PageSwitch(QObject):
    """Ctrl with a page's number shows it; `turned` says which page is in front now."""

    turned = Signal(int)

    def __init__(self, window: QMainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.stack = QStackedWidget(window)
        self.row = QWidget(window)
        self.row.setAccessibleName(self.tr("Pages"))
        self._layout = QHBoxLayout(self.row)
        self._layout.setContentsMargins(4, 0, 4, 0)
        self._layout.setSpacing(2)
        self._layout.addStretch(1)
        self._group = QButtonGroup(self)
        self._make: list[Callable[[], QWidget]] = []
        self._pages: dict[int, QWidget] = {}
        self.buttons: list[QPushButton] = []

    @property
    def front(self) -> int:
        """Which page is shown, from 0."""
        return self._group.checkedId()

    def add(self, words: str, make: Callable[[], QWidget]) -> int:
        """Add a page at the end and return its place; `make` is called when it is first shown."""
        place = len(self._make)
        keys = QKeySequence(f"Ctrl+{place + 1}")
        button = QPushButton(words, self.row)
        button.setCheckable(True)
        button.setToolTip(f"{words} ({keys.toString(QKeySequence.SequenceFormat.NativeText)})")
        button.clicked.connect(lambda: self.show(place))
        shortcut = QShortcut(keys, self._window)
        shortcut.activated.connect(lambda: self.show(place))
        self._make.append(make)
        self.buttons.append(button)
        self._group.addButton(button, place)
        self._layout.insertWidget(place, button)
        return place

    def show(self, place: int) -> None:
        """Bring a page to the front."""
        if place not in self._pages:
            self._pages[place] = self._make[place]()
            self.stack.addWidget(self._pages[place])
        self.buttons[place].setChecked(True)
        self.stack.setCurrentWidget(self._pages[place])
        self.turned.emit(place)
