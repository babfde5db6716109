"""Above the columns: what varies from one to the next, and the thickness they share."""

from collections.abc import Collection, Sequence

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QWidget,
)

from welds.gui.engine import HIGH_MM, LOW_MM
from welds.gui.metal_option import MetalOption
from welds.gui.widgets.chip import Chip
from welds.gui.widgets.choices import ChoiceBox, Option
from welds.gui.widgets.gauge_slider import GaugeSlider
from welds.gui.widgets.metal_picker import MetalPicker
from welds.gui.widgets.texts import clear_layout, label
from welds.gui.widgets.tick_box import TickBox


class VaryBar(QFrame):
    """A choice of what varies, its values to tick or to add, and the base thickness; knows no welding."""

    kind_chosen = Signal(str)
    values_ticked = Signal(object)
    value_added = Signal(str)
    machine_wanted = Signal()
    keep_toggled = Signal(bool)
    thickness_dragged = Signal(float)
    thickness_typed = Signal(str)

    def __init__(
        self, kinds: Sequence[Option], metals: Sequence[MetalOption], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self.kind = ChoiceBox(self.tr("What varies"), kinds, self)
        self.kind.chosen.connect(self.kind_chosen)
        self.kind.setMinimumWidth(150)
        self.chips: dict[str, Chip] = {}
        self._chip_row = QHBoxLayout()
        self._chip_row.setSpacing(4)
        self.keep = TickBox(self.tr("Keep columns"), self)
        self.keep.toggled.connect(self.keep_toggled)
        self.slider = GaugeSlider(self.tr("Thickness of the base"), LOW_MM, HIGH_MM, self)
        self.slider.dragged.connect(self.thickness_dragged)
        self.slider.mark_chosen.connect(self.thickness_typed)
        self._thickness = label(role="value", parent=self)
        self._thickness.setMinimumWidth(
            self._thickness.fontMetrics().horizontalAdvance("0.080 in = 12.03 mm") * 5 // 4
        )
        self._adders = self._make_adders(metals)
        layout = QGridLayout(self)
        layout.setContentsMargins(12, 6, 12, 4)
        layout.setHorizontalSpacing(10)
        layout.setVerticalSpacing(4)
        varies = label(self.tr("What &varies"), "heading", parent=self)
        varies.setBuddy(self.kind)
        thick = label(self.tr("&Base thickness"), "heading", parent=self)
        thick.setBuddy(self.slider)
        layout.addWidget(varies, 0, 0)
        layout.addWidget(self.kind, 0, 1)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addLayout(self._chip_row)
        for adder in self._adders.values():
            adder.hide()  # all of them at once would widen the window before one kind is offered
            row.addWidget(adder)
        row.addStretch(1)
        layout.addLayout(row, 0, 2)
        layout.addWidget(self.keep, 0, 3)
        layout.addWidget(thick, 1, 0)
        layout.addWidget(self._thickness, 1, 1)
        layout.addWidget(self.slider, 1, 2, 1, 2)
        layout.setColumnStretch(2, 1)

    def offer(self, kind: str, values: Sequence[Option]) -> None:
        """Offer these values of a kind, and the way to add others where there is one."""
        self.kind.set_value(kind)
        if [(value, chip.text()) for value, chip in self.chips.items()] != list(values):
            self._rebuild(values)
        for name, adder in self._adders.items():
            adder.setVisible(name == kind)

    def tick(self, values: Collection[str], *, is_full: bool) -> None:
        """Tick the values that have a column; where the page is full no other can be ticked."""
        for value, chip in self.chips.items():
            with QSignalBlocker(chip):
                chip.setChecked(value in values)
            chip.setEnabled(chip.isChecked() or not is_full)
        for adder in self._adders.values():
            adder.setEnabled(not is_full)

    def show_thickness(self, thickness_mm: float, words: str) -> None:
        """Show the base thickness."""
        self.slider.show_mm(thickness_mm)
        self._thickness.setText(words)

    def _rebuild(self, values: Sequence[Option]) -> None:
        clear_layout(self._chip_row)
        self.chips = {}
        for value, words in values:
            chip = Chip(words, self)
            chip.setAccessibleName(self.tr("Column for {words}").format(words=words))
            chip.toggled.connect(lambda _on: self.values_ticked.emit(self._ticked()))
            self.chips[value] = chip
            self._chip_row.addWidget(chip)
            chip.show()

    def _ticked(self) -> tuple[str, ...]:
        return tuple(value for value, chip in self.chips.items() if chip.isChecked())

    def _make_adders(self, metals: Sequence[MetalOption]) -> dict[str, QWidget]:
        """Return what adds a column by name: a typed thickness, a metal, a machine from its file."""
        self.thickness_line = QLineEdit(self)
        self.thickness_line.setPlaceholderText(self.tr("another: 2.5 mm, 1/8"))
        self.thickness_line.setAccessibleName(self.tr("Add a thickness"))
        self.thickness_line.returnPressed.connect(self._on_thickness_entered)
        self.metal = MetalPicker(self.tr("Add a metal"), self)
        self.metal.set_options(metals)
        self.metal.setMinimumWidth(330)
        self.machine_button = QPushButton(self.tr("Add a &machine from its file…"), self)
        self.machine_button.clicked.connect(self.machine_wanted)
        return {
            "thickness": self._with_button(self.thickness_line, self._on_thickness_entered),
            "metal": self._with_button(self.metal, self._on_metal_entered),
            "machine": self.machine_button,
        }

    def _with_button(self, entry: QWidget, act: object) -> QWidget:
        held = QWidget(self)
        button = QPushButton(self.tr("&Add"), held)
        button.setAccessibleName(self.tr("Add this column"))
        button.clicked.connect(act)
        row = QHBoxLayout(held)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(entry, 1, Qt.AlignmentFlag.AlignVCenter)
        row.addWidget(button)
        return held

    def _on_thickness_entered(self) -> None:
        text = self.thickness_line.text().strip()
        if text:
            self.value_added.emit(text)

    def _on_metal_entered(self) -> None:
        if self.metal.value():
            self.value_added.emit(self.metal.value())
