"""One thing of a kind at a time: a list of them, what is to be said of the chosen one, its drawing."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtGui import QFontDatabase
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QPlainTextEdit,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from welds.gui.pages.job.plan_view import PlanView
from welds.gui.widgets.texts import clear_layout, set_text
from welds.gui.widgets.texts import label as make_label
from welds.job.plan_drawing import PlanDrawing

_LIST_PX = 240
_BETWEEN_PX = 3


@dataclass(frozen=True, slots=True)
class Shown:
    """One of the list: its id, a line below it, a heading; text and drawing are made when it is chosen."""

    key: str
    below: str
    title: str
    text: Callable[[], str]
    drawing: Callable[[], PlanDrawing] | None = None


class ListTab(QWidget):
    """Shows the chosen one; `save` asks for its drawing in a file."""

    save = Signal(object)

    def __init__(
        self, name: str, shown: Sequence[Shown], parent: QWidget | None = None, *, is_in_columns: bool = False
    ) -> None:
        super().__init__(parent)
        self._shown = list(shown)
        self.list = QListWidget(self)
        self.list.setAccessibleName(name)
        self.list.setSpacing(_BETWEEN_PX)
        self.list.setFixedWidth(_LIST_PX)
        self.list.setWordWrap(True)
        self.list.addItems([f"{each.key}\n{each.below}" if each.below else each.key for each in shown])
        self.title = make_label(role="value", wrap=True, parent=self)
        self.text = QPlainTextEdit(self)
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(self.tr("What there is to say"))
        if is_in_columns:
            self.text.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        self.save_drawing = QPushButton(self.tr("&Save the drawing…"), self)
        self.buttons = QHBoxLayout()
        self.picture = QWidget(self)
        self._place = QVBoxLayout(self.picture)
        self._lay_out()
        self.list.currentRowChanged.connect(self._show)
        self.save_drawing.clicked.connect(self._on_save_clicked)
        self.list.setCurrentRow(0)

    @property
    def key(self) -> str:
        """The id of the chosen one."""
        return self._shown[max(0, self.list.currentRow())].key

    def choose(self, key: str) -> None:
        """Choose by id where it is still there."""
        for row, each in enumerate(self._shown):
            if each.key == key:
                self.list.setCurrentRow(row)

    def _lay_out(self) -> None:
        self._place.setContentsMargins(0, 0, 0, 0)
        self.buttons.addWidget(self.save_drawing)
        self.buttons.addStretch(1)
        words = QWidget(self)
        column = QVBoxLayout(words)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.title)
        column.addWidget(self.text, 1)
        column.addLayout(self.buttons)
        split = QSplitter(self)
        split.addWidget(words)
        split.addWidget(self.picture)
        split.setChildrenCollapsible(False)
        split.setStretchFactor(0, 2)
        split.setStretchFactor(1, 3)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 0)
        layout.addWidget(self.list)
        layout.addWidget(split, 1)

    def _show(self, row: int) -> None:
        each = self._shown[max(0, row)]
        set_text(self.title, each.title)
        self.text.setPlainText(each.text())
        clear_layout(self._place)
        if each.drawing is not None:
            self._place.addWidget(PlanView(each.drawing(), self))
        self.picture.setVisible(each.drawing is not None)
        self.save_drawing.setVisible(each.drawing is not None)

    def _on_save_clicked(self) -> None:
        drawing = self._shown[max(0, self.list.currentRow())].drawing
        if drawing is not None:
            self.save.emit(drawing())
