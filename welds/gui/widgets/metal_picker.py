"""Choosing a metal: type any part of its number or name, or open the list by family."""

from collections.abc import Sequence

from PySide6.QtCore import (
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSortFilterProxyModel,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QFocusEvent, QFont, QKeyEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QCompleter, QHBoxLayout, QLineEdit, QListView, QToolButton, QWidget

from welds.gui.metal_option import MetalOption

LIST_WIDTH_PX = 420
_ID = Qt.ItemDataRole.UserRole
_WORDS = Qt.ItemDataRole.UserRole + 1


class _FamilyFilter(QSortFilterProxyModel):
    """Keeps the metals that hold every typed word, and the headings that still have a metal."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._typed: tuple[str, ...] = ()

    def set_typed(self, text: str) -> None:
        self._typed = tuple(text.lower().split())
        self.invalidate()

    def filterAcceptsRow(self, row: int, _parent: QModelIndex | QPersistentModelIndex) -> bool:
        model = self.sourceModel()
        if self._holds(model.index(row, 0)):
            return True
        if model.index(row, 0).data(_ID):
            return False
        below = range(row + 1, model.rowCount())
        for index in (model.index(number, 0) for number in below):
            if not index.data(_ID):
                return False
            if self._holds(index):
                return True
        return False

    def _holds(self, index: QModelIndex) -> bool:
        words = str(index.data(_WORDS) or "")
        return bool(words) and all(part in words for part in self._typed)


class MetalPicker(QWidget):
    """A search field over a list grouped by family.

    Reports an id, a full name it knows ("5052-H32"), or through `typed` a text that is in no list.
    """

    chosen = Signal(str)
    typed = Signal(str)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._by_id: dict[str, MetalOption] = {}
        self._value = ""
        self._model = QStandardItemModel(self)
        self._filter = _FamilyFilter(self)
        self._filter.setSourceModel(self._model)
        self.line = QLineEdit(self)
        self.line.setAccessibleName(name)
        self.line.setPlaceholderText(self.tr("type a number or a name: 5052, 304, galvanised"))
        self.line.textEdited.connect(self._on_text_edited)
        self.line.editingFinished.connect(self._on_editing_finished)
        self.line.installEventFilter(self)
        self._list = QListView()
        self._list.setMinimumWidth(LIST_WIDTH_PX)
        self._completer = QCompleter(self._filter, self)
        self._completer.setPopup(self._list)
        self._completer.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        self._completer.setMaxVisibleItems(14)
        self._completer.activated[QModelIndex].connect(self._on_activated)  # type: ignore[index]
        self.line.setCompleter(self._completer)
        self.button = QToolButton(self)
        self.button.setArrowType(Qt.ArrowType.DownArrow)
        self.button.setAccessibleName(self.tr("{name}: show the list").format(name=name))
        self.button.clicked.connect(self.show_list)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self.line, 1)
        layout.addWidget(self.button)
        self.setFocusProxy(self.line)

    def set_options(self, options: Sequence[MetalOption]) -> None:
        """Fill the list; options of one family must stand together."""
        self._by_id = {option.id: option for option in options}
        self._model.clear()
        family = ""
        bold = QFont(self.font())
        bold.setBold(True)
        for option in options:
            if option.family != family:
                family = option.family
                heading = QStandardItem(family)
                heading.setFlags(Qt.ItemFlag.NoItemFlags)
                heading.setFont(bold)
                self._model.appendRow(heading)
            item = QStandardItem(option.text)
            item.setData(option.id, _ID)
            item.setData(option.searched, _WORDS)
            self._model.appendRow(item)
        self.set_value(self._value)

    def value(self) -> str:
        """Return the id of the metal."""
        return self._value

    def set_value(self, metal: str) -> None:
        """Show a metal without reporting it; an id that is not in the list shows as it is."""
        self._value = metal
        self.line.setText(self._by_id[metal].text if metal in self._by_id else metal)
        self.line.setCursorPosition(0)
        self.line.setToolTip(self.line.text())

    def found(self) -> list[str]:
        """Return the ids the list shows for what is typed."""
        rows = (self._filter.index(row, 0) for row in range(self._filter.rowCount()))
        return [str(index.data(_ID)) for index in rows if index.data(_ID)]

    def show_list(self) -> None:
        """Open the whole list."""
        self.line.setFocus(Qt.FocusReason.OtherFocusReason)
        self._filter.set_typed("")
        self._completer.complete()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is not self.line:
            return super().eventFilter(watched, event)
        if isinstance(event, QFocusEvent) and event.gotFocus():
            QTimer.singleShot(0, self.line, self._select_all)
        elif isinstance(event, QKeyEvent) and self._opens_list(event):
            self.show_list()
            return True
        return super().eventFilter(watched, event)

    def _opens_list(self, event: QKeyEvent) -> bool:
        is_down = event.type() is QEvent.Type.KeyPress and event.key() == Qt.Key.Key_Down
        return is_down and not self._list.isVisible()

    def _select_all(self) -> None:
        """Select with the cursor in front, so that the start of a long name is what shows."""
        if self.line.hasFocus():
            self.line.setSelection(len(self.line.text()), -len(self.line.text()))

    def _on_text_edited(self, text: str) -> None:
        self._filter.set_typed(text)
        self._completer.complete()
        found, asked = self.found(), text.strip()
        named = {name.lower(): option.id for option in self._by_id.values() for name in option.names}
        if asked.lower() in named:
            metal = named[asked.lower()]
            self._report(metal if asked.lower() == metal.lower() else asked)
        elif len(found) == 1:
            self._report(found[0])
        elif asked and not found:
            self._value = asked
            self.typed.emit(asked)

    def _on_activated(self, index: QModelIndex) -> None:
        metal = str(index.data(_ID) or "")
        if metal:
            self._report(metal)
            self.set_value(metal)

    def _on_editing_finished(self) -> None:
        text, found = self.line.text().strip(), self.found()
        shown = self._by_id[self._value].text if self._value in self._by_id else self._value
        if self._list.isVisible() or text in (shown, self._value):
            return
        if text and found and self._value not in found:
            self._report(found[0])
        if found:
            self.set_value(self._value)

    def _report(self, metal: str) -> None:
        if metal != self._value:
            self._value = metal
            self.chosen.emit(metal)
