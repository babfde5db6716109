"""Everything a tree of widgets says: what is written on it, and what it tells pointer and screen reader."""

import re
from collections.abc import Iterator

from PySide6.QtCore import QAbstractItemModel, QAbstractListModel, QModelIndex, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QMainWindow,
    QMenu,
    QTabBar,
    QTabWidget,
    QToolBox,
    QWidget,
)

_TAG = re.compile(r"<style.*?</style>|<[^<>]+>", re.DOTALL)
_ENTITY = re.compile(r"&(?:[a-z]+|#\d+);")
_MNEMONIC = re.compile(r"&(?=\w)")
_WRITTEN = (
    "text",
    "title",
    "placeholderText",
    "plainText",
    "prefix",
    "suffix",
    "specialValueText",
    "html",
    "format",
)
_TOLD = ("windowTitle", "toolTip", "statusTip", "whatsThis", "accessibleName", "accessibleDescription")
_ROLES = (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole)
_MOST_ROWS = 200


def said_by(widget: QWidget) -> Iterator[str]:
    """Yield all that a widget and everything in it says, without tags, each text once."""
    seen: set[str] = set()
    for part in (widget, *widget.findChildren(QWidget)):
        for text in _said_by_one(part):
            plain = _plain(text)
            if plain and plain not in seen:
                seen.add(plain)
                yield plain


def _said_by_one(part: QWidget) -> Iterator[str]:
    yield from _properties(part, _TOLD)
    if not isinstance(part, QAbstractSpinBox):
        yield from _properties(part, _WRITTEN)
    for action in part.actions():
        yield from _said_by_action(action)
    if isinstance(part, QMenu):
        yield part.title()
    if isinstance(part, QMainWindow) and part.menuBar():
        for action in part.menuBar().actions():
            yield from _said_by_action(action)
    if isinstance(part, QComboBox):
        yield from _said_by_model(part.model(), QModelIndex())
    if isinstance(part, QAbstractItemView) and part.model():
        yield from _said_by_model(part.model(), QModelIndex())
        yield from _said_by_headers(part.model())
    if isinstance(part, QTabWidget | QTabBar):
        for at in range(part.count()):
            yield from (part.tabText(at), part.tabToolTip(at), part.tabWhatsThis(at))
    if isinstance(part, QToolBox):
        for at in range(part.count()):
            yield from (part.itemText(at), part.itemToolTip(at))


def _properties(part: QWidget, names: tuple[str, ...]) -> Iterator[str]:
    for name in names:
        value = part.property(name)
        if isinstance(value, str):
            yield value


def _said_by_action(action: QAction) -> Iterator[str]:
    yield from (action.text(), action.toolTip(), action.statusTip(), action.whatsThis())
    menu = action.menu()
    if isinstance(menu, QMenu):
        for below in menu.actions():
            yield from _said_by_action(below)


def _said_by_model(model: QAbstractItemModel, above: QModelIndex) -> Iterator[str]:
    for row in range(min(model.rowCount(above), _MOST_ROWS)):
        for column in range(_columns(model, above)):
            cell = model.index(row, column, above)
            yield from _texts(cell.data(role) for role in _ROLES)
            if column == 0 and model.rowCount(cell):
                yield from _said_by_model(model, cell)


def _said_by_headers(model: QAbstractItemModel) -> Iterator[str]:
    for way, count in (
        (Qt.Orientation.Horizontal, _columns(model, QModelIndex())),
        (Qt.Orientation.Vertical, min(model.rowCount(QModelIndex()), _MOST_ROWS)),
    ):
        for section in range(count):
            yield from _texts(model.headerData(section, way, role) for role in _ROLES)


def _columns(model: QAbstractItemModel, above: QModelIndex) -> int:
    return 1 if isinstance(model, QAbstractListModel) else model.columnCount(above)


def _texts(values: Iterator[object]) -> Iterator[str]:
    return (value for value in values if isinstance(value, str))


def _plain(text: str) -> str:
    return _MNEMONIC.sub("", _ENTITY.sub(" ", _TAG.sub(" ", text))).strip()
