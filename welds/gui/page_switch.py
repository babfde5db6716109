"""The pages of the window behind a row of buttons; each page is made when it is first shown.

Where large text or a long language asks for more room than there is, the page scrolls, so that no window is
larger than its screen.
"""

from collections.abc import Callable

from PySide6.QtCore import QObject, QSize, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QMainWindow,
    QPushButton,
    QScrollArea,
    QStackedWidget,
    QWidget,
)

SMALL_LAPTOP = QSize(1366, 640)
"""Room for a page on the smallest screen that is planned for, below the bar."""


class _Stack(QStackedWidget):
    """Needs the room of the page in front, whatever the pages behind it would need."""

    def minimumSizeHint(self) -> QSize:
        front = self.currentWidget()
        return front.minimumSizeHint().expandedTo(front.minimumSize()) if front is not None else QSize()


class _Area(QScrollArea):
    """Asks for the room its page needs, up to what a small laptop has."""

    def __init__(self, stack: _Stack, window: QMainWindow) -> None:
        super().__init__(window)
        self._stack = stack
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidgetResizable(True)
        self.setWidget(stack)

    def minimumSizeHint(self) -> QSize:
        return self._stack.minimumSizeHint().boundedTo(SMALL_LAPTOP)


class PageSwitch(QObject):
    """Ctrl with a page's number shows it; `turned` says which page is in front now."""

    turned = Signal(int)

    def __init__(self, window: QMainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.stack = _Stack(window)
        self.area = _Area(self.stack, window)
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
        self.stack.updateGeometry()
        self.area.updateGeometry()
        self.turned.emit(place)
