"""The line that leads anywhere: type, choose with the arrows, Enter goes there."""

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QLineEdit, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from welds.gui.pages.find.finder import Finder, Hit
from welds.gui.widgets.texts import label

SIZE_PX = (620, 470)
_TO_LIST = (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown)


class FindDialog(QDialog):
    """Shows what answers the line; going there is the hit's own affair."""

    def __init__(self, finder: Finder, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._finder = finder
        self.setWindowTitle(self.tr("Go to"))
        self.resize(*SIZE_PX)
        words = label(self.tr("A joint, a page, a command or a fault"), "heading", parent=self)
        self.line = QLineEdit(self)
        self.line.setAccessibleName(words.text())
        self.line.setPlaceholderText(self.tr("5052 corner 0.080, bench, undercut"))
        self.line.textChanged.connect(self._show)
        self.line.returnPressed.connect(self._go)
        self.line.installEventFilter(self)
        words.setBuddy(self.line)
        self.list = QListWidget(self)
        self.list.setAccessibleName(self.tr("What answers it"))
        self.list.itemActivated.connect(lambda _item: self._go())
        self.list.itemClicked.connect(lambda _item: self._go())
        self.nothing = label(self.tr("Nothing goes by that name."), "soft", parent=self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 10, 12, 12)
        layout.addWidget(words)
        layout.addWidget(self.line)
        layout.addWidget(self.nothing)
        layout.addWidget(self.list, 1)
        self._show("")
        self.line.setFocus()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            watched is self.line
            and event.type() == QEvent.Type.KeyPress
            and isinstance(event, QKeyEvent)
            and event.key() in _TO_LIST
        ):
            self.list.event(event)
            return True
        return super().eventFilter(watched, event)

    def _show(self, line: str) -> None:
        self.list.clear()
        for hit in self._finder.hits(line):
            item = QListWidgetItem(f"{hit.kind}:  {hit.words}")
            item.setData(Qt.ItemDataRole.UserRole, hit)
            self.list.addItem(item)
        self.list.setCurrentRow(0)
        self.nothing.setVisible(self.list.count() == 0)

    def _go(self) -> None:
        item = self.list.currentItem()
        if item is None:
            return
        hit: Hit = item.data(Qt.ItemDataRole.UserRole)
        self.accept()
        hit.go()
