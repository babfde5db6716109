"""The repairs of a job, one at a time: what to do, why, the holes and the cut."""

from collections.abc import Iterator
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QWidget

from welds.gui.pages.job.list_tab import ListTab, Shown
from welds.job.plan import JobPlan
from welds.job.repair import RepairAnswer
from welds.language import tr
from welds.quantities.units import Units
from welds.report.repair_texts import CHOICES, repair_drawing, repair_lines, repair_title


class RepairsTab(ListTab):
    """`draw` and `change` ask for the chosen repair's holes or its values, by id."""

    draw = Signal(str)
    change = Signal(str)

    def __init__(self, plan: JobPlan, units: Units, *, is_own: bool, parent: QWidget | None = None) -> None:
        super().__init__("", [*_repairs(plan, units)], parent)
        self.list.setAccessibleName(self.tr("Repairs"))
        self.draw_button = QPushButton(self.tr("&Holes on a photo…"), self)
        self.change_button = QPushButton(self.tr("&Change its values"), self)
        for place, button in enumerate((self.draw_button, self.change_button)):
            button.setEnabled(is_own)
            self.buttons.insertWidget(place, button)
        self.draw_button.clicked.connect(lambda: self.draw.emit(self.key))
        self.change_button.clicked.connect(lambda: self.change.emit(self.key))


def _repairs(plan: JobPlan, units: Units) -> Iterator[Shown]:
    for work in plan.job.repairs:
        answer = plan.repairs.get(work.id)
        if answer is None:
            yield Shown(work.id, tr("not answered"), work.name, partial(str, plan.refused.get(work.id, "")))
            continue
        drawing, folder = plan.drawings.get(work.id), plan.job.file.parent
        yield Shown(
            work.id,
            tr(CHOICES[answer.choice]),
            repair_title(answer, units),
            partial(_words, answer, units),
            partial(repair_drawing, work.id, answer, drawing, folder, units),
        )


def _words(answer: RepairAnswer, units: Units) -> str:
    parts = (
        "\n".join([head, *(f"\N{BULLET} {line}" for line in lines)])
        for head, lines in repair_lines(answer, units)
        if lines
    )
    return "\n\n".join(parts)
