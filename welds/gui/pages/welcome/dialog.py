"""The first start: language, units, machines, and whether to look at a whole job first; all changes later."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLocale, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from welds import language
from welds.advice.card import NOTICE
from welds.gui.translation import said_later
from welds.gui.widgets.choices import CheckChips, ChoiceRow
from welds.gui.widgets.texts import label, set_text
from welds.language import tr
from welds.quantities.units import Units

SIZE_PX = (740, 560)
LANGUAGE = "Language, Sprache, idioma"
"""In all of them: whoever has to change it may not read the one in use."""


@dataclass(frozen=True, slots=True)
class Start:
    """What was chosen: language, units, machines by their names, and whether the demo job comes first."""

    language: str
    units: Units
    machines: tuple[str, ...]
    wants_demo: bool


class WelcomeDialog(QDialog):
    """Four questions with the usual answers given; Enter begins with them."""

    begun = Signal(object)

    def __init__(self, machines: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Before the first weld"))
        self.resize(*SIZE_PX)
        self.language = ChoiceRow(LANGUAGE, tuple(language.NAMES.items()), self)
        self.language.set_value(language.code())
        self._next_start = label(role="small", parent=self)
        self._next_start.hide()
        self.language.chosen.connect(lambda code: set_text(self._next_start, said_later(code)))
        units = ((Units.METRIC.value, self.tr("mm, L/min")), (Units.INCH.value, self.tr("inch, cfh")))
        self.units = ChoiceRow(self.tr("Units"), units, self)
        is_metric = QLocale.system().measurementSystem() is QLocale.MeasurementSystem.MetricSystem
        self.units.set_value((Units.METRIC if is_metric else Units.INCH).value)
        self.machines = CheckChips(self.tr("Machines"), [(name, tr(name)) for name in machines], 330, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(16, 14, 16, 14)
        layout.setSpacing(8)
        layout.addWidget(label(tr(NOTICE), wrap=True, parent=self))
        self._ask(layout, LANGUAGE, self.language)
        layout.addWidget(self._next_start)
        self._ask(layout, self.tr("Which units do you &read?"), self.units)
        self._ask(
            layout, self.tr("Which machines stand at your &bench? (none: no card is limited)"), self.machines
        )
        later = self.tr(
            "The page Bench has all of it, and your shelf; the page Job has the demo job, invented."
        )
        layout.addWidget(label(later, "soft", wrap=True, parent=self))
        layout.addStretch(1)
        layout.addLayout(self._foot())

    def _ask(self, layout: QVBoxLayout, words: str, answer: QWidget) -> None:
        heading = label(words, "heading", parent=self)
        heading.setBuddy(answer.focusProxy() or answer)
        layout.addWidget(heading)
        layout.addWidget(answer)

    def _foot(self) -> QHBoxLayout:
        self.begin = QPushButton(self.tr("Be&gin"), self)
        self.begin.setProperty("kind", "main")
        self.begin.setDefault(True)
        self.begin.clicked.connect(lambda: self._done(wants_demo=False))
        self.demo = QPushButton(self.tr("Begin with the &demo job"), self)
        self.demo.setAutoDefault(False)
        self.demo.clicked.connect(lambda: self._done(wants_demo=True))
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(self.demo)
        row.addWidget(self.begin)
        self.begin.setFocus()
        return row

    def _done(self, *, wants_demo: bool) -> None:
        self.begun.emit(
            Start(self.language.value(), Units(self.units.value()), self.machines.values(), wants_demo)
        )
        self.accept()
