"""What went wrong with a weld: the usual faults to tick, any other by its name or number in ISO 6520-1."""

from collections.abc import Collection

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from welds.gui.pages.log.words import fault_words
from welds.gui.widgets.chip import Chip
from welds.gui.widgets.choices import ChoiceBox
from welds.gui.widgets.even_grid import EvenGrid
from welds.language import tr
from welds.reference.faults import Fault, Imperfection
from welds.reference.tables import Tables

NARROWEST_PX = 118
USUAL = (
    *("porosity", "burn-through", "lack-of-fusion", "undercut", "crack", "distortion", "spatter"),
    *("incomplete-penetration", "excess-penetration", "crater-crack", "tungsten-inclusion", "underfill"),
)
"""What gets a chip; the list has everything else."""


class FaultPicker(QWidget):
    """Chips of the usual faults; one that was picked from the list becomes a chip too."""

    ticked = Signal(str, bool)

    def __init__(self, tables: Tables, process: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Faults"))
        self._names = {each.number: each.name for each in tables.records(Imperfection)}
        self.chips: dict[str, Chip] = {}
        self._grid = EvenGrid(NARROWEST_PX, spacing=4)
        for fault, numbers in usual_faults(tables, process).items():
            self._add(fault, numbers)
        others = tuple((number, f"{number}  {name}") for number, name in self._names.items())
        self.others = ChoiceBox(
            self.tr("Another fault by ISO 6520-1"), (("", self.tr("Another, by ISO 6520-1…")), *others), self
        )
        self.others.chosen.connect(self._on_other_chosen)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addLayout(self._grid)
        layout.addWidget(self.others)

    def show_faults(self, faults: Collection[str]) -> None:
        """Tick these, without reporting it."""
        for fault in faults:
            if fault not in self.chips:
                self._add(fault, ())
        for fault, chip in self.chips.items():
            with QSignalBlocker(chip):
                chip.setChecked(fault in faults)

    def _add(self, fault: str, numbers: tuple[str, ...]) -> None:
        is_number = fault in self._names
        words = f"{fault} {self._names[fault]}" if is_number else fault_words(fault)
        chip = Chip(words if len(words) < 22 else words[:20] + "…", self)
        chip.setAccessibleName(words)
        meant = ", ".join(f"{number} {self._names[number]}" for number in numbers if number in self._names)
        chip.setToolTip(tr("ISO 6520-1: {meant}", meant=meant) if meant else words)
        chip.toggled.connect(lambda on: self.ticked.emit(fault, on))
        self.chips[fault] = chip
        self._grid.addWidget(chip)

    def _on_other_chosen(self, number: str) -> None:
        self.others.set_value("")
        if not number:
            return
        if number not in self.chips:
            self._add(number, ())
        self.chips[number].setChecked(True)


def usual_faults(tables: Tables, process: str) -> dict[str, tuple[str, ...]]:
    """Return the usual imperfections by plain name, with their ISO 6520-1 numbers, for a process."""
    numbers: dict[str, tuple[str, ...]] = {}
    for row in tables.records(Fault):
        if row.process in (process, "both"):
            numbers.setdefault(row.fault, row.iso_6520)
    return {fault: numbers[fault] for fault in USUAL if fault in numbers}
