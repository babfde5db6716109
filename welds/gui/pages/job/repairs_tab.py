"""The repairs of a job, one at a time: what to do, why, the holes and the cut."""

from PySide6.QtCore import Signal
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
from welds.gui.widgets.texts import clear_layout, label
from welds.job.plan import JobPlan
from welds.quantities.units import Units
from welds.report.repair_texts import CHOICES, repair_drawing, repair_lines, repair_title

_LIST_PX = 260


class RepairsTab(QWidget):
    """Shows the chosen repair; `draw` and `change` ask for its holes or its values, by id."""

    draw = Signal(str)
    change = Signal(str)

    def __init__(self, plan: JobPlan, units: Units, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plan, self._units = plan, units
        self._keys = [work.id for work in plan.job.repairs]
        self.list = QListWidget(self)
        self.list.setAccessibleName(self.tr("Repairs"))
        for key in self._keys:
            answer = plan.repairs.get(key)
            words = CHOICES[answer.choice] if answer else self.tr("Not answered")
            self.list.addItem(f"{key}\n{words}")
        self.title = label(role="value", wrap=True, parent=self)
        self.text = QPlainTextEdit(self)
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(self.tr("What to do and why"))
        self.draw_button = QPushButton(self.tr("&Holes on a photo\N{HORIZONTAL ELLIPSIS}"), self)
        self.change_button = QPushButton(self.tr("&Change its values"), self)
        self._picture = QVBoxLayout()
        self._lay_out()
        self.list.currentRowChanged.connect(self._show)
        self.draw_button.clicked.connect(lambda: self.draw.emit(self.key))
        self.change_button.clicked.connect(lambda: self.change.emit(self.key))
        self.list.setCurrentRow(0)

    @property
    def key(self) -> str:
        """The chosen repair's id."""
        return self._keys[max(0, self.list.currentRow())]

    def show_repair(self, key: str) -> None:
        """Choose a repair where it is still there."""
        if key in self._keys:
            self.list.setCurrentRow(self._keys.index(key))

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.addWidget(self.draw_button)
        buttons.addWidget(self.change_button)
        buttons.addStretch(1)
        words = QWidget(self)
        column = QVBoxLayout(words)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.title)
        column.addWidget(self.text, 1)
        column.addLayout(buttons)
        picture = QWidget(self)
        picture.setLayout(self._picture)
        self._picture.setContentsMargins(0, 0, 0, 0)
        self.list.setFixedWidth(_LIST_PX)
        split = QSplitter(self)
        split.addWidget(words)
        split.addWidget(picture)
        split.setChildrenCollapsible(False)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 0)
        layout.addWidget(self.list)
        layout.addWidget(split, 1)

    def _show(self, row: int) -> None:
        key = self._keys[max(0, row)]
        answer = self._plan.repairs.get(key)
        clear_layout(self._picture)
        if answer is None:
            self.title.setText(self.tr("{key}: not answered").format(key=key))
            self.text.setPlainText(self._plan.refused.get(key, ""))
            return
        self.title.setText(repair_title(answer, self._units))
        parts = ("\n".join([head, *(f"\u2022 {line}" for line in lines)]) for head, lines in self._lines(key))
        self.text.setPlainText("\n\n".join(parts))
        folder = self._plan.job.file.parent
        drawing = repair_drawing(key, answer, self._plan.drawings.get(key), folder, self._units)
        self._picture.addWidget(PlanView(drawing, self))

    def _lines(self, key: str) -> list[tuple[str, list[str]]]:
        return [(head, lines) for head, lines in repair_lines(self._plan.repairs[key], self._units) if lines]
