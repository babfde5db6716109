"""The order of work with a box to tick for what is done."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QTableWidget, QTableWidgetItem, QVBoxLayout, QWidget

from welds.gui.pages.job.tab_pages import table_page
from welds.job.job import JointWork, Piece, RepairWork, Step
from welds.job.plan import JobPlan
from welds.language import mark
from welds.report.job_texts import ORDER_HEAD
from welds.report.job_words import order_rows

_SECTIONS: dict[type, str] = {Piece: "pieces", JointWork: "joints", RepairWork: "repairs", Step: "steps"}


class OrderTab(QWidget):
    """Tells by `ticked` which task was ticked: section, id, done or not."""

    ticked = Signal(str, str, bool)

    def __init__(self, plan: JobPlan, *, can_tick: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tasks = [turn.task for turn in plan.turns]
        head = (mark("Done") if can_tick else "", *ORDER_HEAD[1:])
        self.table: QTableWidget = table_page(head, order_rows(plan), self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.table)
        for row, turn in enumerate(plan.turns):
            item = self.table.item(row, 0)
            if can_tick and turn.task is not None and item is not None:
                item.setTextAlignment(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)
                item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
                item.setCheckState(Qt.CheckState.Checked if turn.is_done else Qt.CheckState.Unchecked)
        self.table.resizeColumnToContents(0)
        self.table.itemChanged.connect(self._on_changed)

    def _on_changed(self, item: QTableWidgetItem) -> None:
        task = self._tasks[item.row()]
        if item.column() == 0 and task is not None:
            is_done = item.checkState() is Qt.CheckState.Checked
            self.ticked.emit(_SECTIONS[type(task)], task.id, is_done)
