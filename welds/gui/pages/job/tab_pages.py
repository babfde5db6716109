"""Pages for the tabs of the job: text, a table, drawings below each other."""

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QPlainTextEdit,
    QScrollArea,
    QSplitter,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from welds.gui.pages.job.plan_view import PlanView
from welds.job.plan_drawing import PlanDrawing
from welds.language import tr

_PICTURE_PX = 420
_WIDEST_PX = 420


def text_page(lines: Iterable[str], parent: QWidget) -> QPlainTextEdit:
    """Return lines to read and to copy."""
    text = QPlainTextEdit("\n".join(lines), parent)
    text.setReadOnly(True)
    text.setTabChangesFocus(True)
    text.setAccessibleName(tr("Text"))
    return text


def table_page(head: Sequence[str], rows: Iterable[Sequence[str]], parent: QWidget) -> QTableWidget:
    """Return a table of words, no column wider than is read with ease."""
    listed = list(rows)
    table = QTableWidget(len(listed), len(head), parent)
    table.setHorizontalHeaderLabels([_heading(title) for title in head])
    table.verticalHeader().hide()
    table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    table.setTabKeyNavigation(False)
    table.setWordWrap(True)
    table.setAccessibleName(tr("List"))
    for row, cells in enumerate(listed):
        for column, cell in enumerate(cells):
            item = QTableWidgetItem(cell)
            item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsUserCheckable)
            item.setTextAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
            table.setItem(row, column, item)
    table.resizeColumnsToContents()
    for column in range(len(head)):
        table.setColumnWidth(column, min(table.columnWidth(column), _WIDEST_PX))
    table.horizontalHeader().setStretchLastSection(True)
    table.resizeRowsToContents()
    return table


def stacked(upper: QWidget, lower: QWidget, parent: QWidget) -> QWidget:
    """Return two pages one above the other, the upper one with most of the room."""
    split = QSplitter(Qt.Orientation.Vertical, parent)
    for page in (upper, lower):
        split.addWidget(page)
    split.setChildrenCollapsible(False)
    split.setStretchFactor(0, 3)
    split.setStretchFactor(1, 1)
    return split


def pictures_page(drawings: Sequence[PlanDrawing], parent: QWidget) -> QScrollArea | None:
    """Return the drawings below each other, or None where there are none."""
    if not drawings:
        return None
    inside = QWidget(parent)
    layout = QVBoxLayout(inside)
    for drawing in drawings:
        picture = PlanView(drawing, inside)
        picture.setMinimumHeight(_PICTURE_PX)
        layout.addWidget(picture)
    area = QScrollArea(parent)
    area.setWidgetResizable(True)
    area.setWidget(inside)
    area.setAccessibleName(tr("Drawings"))
    return area


def _heading(title: str) -> str:
    words = tr(title)
    return words[:1].upper() + words[1:]
