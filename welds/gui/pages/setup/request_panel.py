"""The request side of the page: every input, in the order it is thought of at the bench."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFormLayout, QFrame, QGridLayout, QLabel, QWidget

from welds.gui.engine import Fields
from welds.gui.metal_option import MetalOption
from welds.gui.pages.setup.options import Options, OptionWords
from welds.gui.pages.setup.presenter import Understood
from welds.gui.widgets.choices import CheckChips, ChoiceBox, ChoiceRow
from welds.gui.widgets.fold import Fold
from welds.gui.widgets.gauge_slider import GaugeSlider
from welds.gui.widgets.joint_picker import JointPicker, PaintTile
from welds.gui.widgets.metal_picker import MetalPicker
from welds.gui.widgets.quantity_edit import QuantityEdit
from welds.gui.widgets.texts import label
from welds.gui.widgets.tick_box import TickBox

LABEL_COLUMN_PX = 84
RARE_FIELDS = ("goal", "gap", "length", "gas", "wire", "transfer")
SLIDER_MM = (0.5, 13.0)


class RequestPanel(QWidget):
    """All inputs of a request; reports each change by its field name and decides nothing."""

    changed = Signal(str, object)
    dragged = Signal(float)
    reading_chosen = Signal(str, str)

    def __init__(self, paint_tile: PaintTile, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = OptionWords(self)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(12, 8, 6, 8)
        self._grid.setHorizontalSpacing(8)
        self._grid.setVerticalSpacing(6)
        self._grid.setColumnMinimumWidth(0, LABEL_COLUMN_PX)
        self._grid.setColumnStretch(1, 1)
        self._add_piece()
        self._add_joint(paint_tile)
        self._add_dangers()
        self._add_manner()
        self._add_rare()
        self._grid.setRowStretch(self._grid.rowCount(), 1)

    def set_metals(self, options: Sequence[MetalOption]) -> None:
        """Fill both lists of metals."""
        self.metal.set_options(options)
        self.other_metal.set_options(options)

    def set_gases(self, options: Options) -> None:
        """Fill the list of gases that may be on the machine."""
        self.gas.set_options((("", self.tr("Let the card choose")), *options))

    def show_fields(self, fields: Fields) -> None:
        """Show a request without reporting it."""

        def text(name: str) -> str:
            value = fields.get(name, "")
            return value if isinstance(value, str) else ""

        for name in (*self._choices, *self._lengths, *self._metals, "coating"):
            self.show_field(name, fields.get(name, ""))
        self.is_different.setChecked(bool(text("other_metal") or text("other_thickness")))
        if any(text(name) for name in RARE_FIELDS):
            self.rare.open()

    def show_field(self, name: str, value: str | tuple[str, ...]) -> None:
        """Show one input's value without reporting it."""
        if isinstance(value, tuple):
            self.coating.set_values(value)
        elif name in self._choices:
            self._choices[name].set_value(value)
        elif name in self._lengths:
            self._lengths[name].set_text(value)
        elif name in self._metals:
            self._metals[name].set_value(value)
        elif name == "coating":
            self.coating.set_values((value,))
        if name == "process":
            self._show_process(str(value))

    def show_understood(self, understood: Understood) -> None:
        """Say how the lengths were read and take every complaint away."""
        for edit in self._lengths.values():
            edit.show_understood("")
        self.thickness.show_understood(understood.thickness)
        self.other_thickness.show_understood(understood.other_thickness)
        self.slider.show_mm(understood.thickness_mm)
        self.joint.redraw()

    def show_trouble(self, field: str, message: str) -> None:
        """Write a complaint beside its field where that is a length; the rest stands over the card."""
        if field in self._lengths:
            self._lengths[field].show_trouble(message)
            self.slider.show_mm(None)

    def offer_readings(self, field: str, readings: Sequence[str]) -> None:
        """Ask beside the field which reading was meant."""
        if field in self._lengths:
            self._lengths[field].offer_readings(self.tr("Which one is meant?"), readings)
            self.slider.show_mm(None)

    def focus_metal(self) -> None:
        """Put the keyboard on the metal."""
        self.metal.line.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def focus_thickness(self) -> None:
        """Put the keyboard on the thickness, ready to be typed over."""
        self.thickness.line.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.thickness.line.selectAll()

    def _add_piece(self) -> None:
        self.process = ChoiceRow(self.tr("Process"), self._words.processes(), self)
        self.metal = MetalPicker(self.tr("Metal"), self)
        self.thickness = QuantityEdit(self.tr("Thickness"), self.tr("0.080 in, 14 ga, 2 mm"), self)
        self.slider = GaugeSlider(self.tr("Thickness slider"), *SLIDER_MM, parent=self)
        self.is_different = TickBox(self.tr("The other piece is different"), self)
        self._add_row(self.tr("&Process"), self.process)
        self._add_row(self.tr("&Metal"), self.metal)
        self._add_row(self.tr("&Thickness"), self.thickness)
        self._add_row("", self.slider)
        self._add_row("", self.is_different)
        self._add_row("", self._other_piece())
        self.process.chosen.connect(self._on_process_chosen)
        self.metal.chosen.connect(lambda metal: self.changed.emit("metal", metal))
        self.metal.typed.connect(lambda text: self.changed.emit("metal", text))
        self.slider.dragged.connect(self.dragged)
        self.slider.mark_chosen.connect(lambda mark: self.reading_chosen.emit("thickness", mark))
        self.is_different.toggled.connect(self._on_is_different_toggled)

    def _other_piece(self) -> QWidget:
        self._other = QFrame(self)
        self._other.setProperty("panel", "raised")
        self.other_metal = MetalPicker(self.tr("Other metal"), self._other)
        self.other_metal.line.setPlaceholderText(self.tr("same metal"))
        self.other_thickness = QuantityEdit(
            self.tr("Other thickness"), self.tr("same thickness"), self._other
        )
        form = QFormLayout(self._other)
        form.setContentsMargins(10, 8, 8, 8)
        form.addRow(label(self.tr("Metal"), "soft"), self.other_metal)
        form.addRow(label(self.tr("Thickness"), "soft"), self.other_thickness)
        self._other.hide()
        self.other_metal.chosen.connect(lambda metal: self.changed.emit("other_metal", metal))
        self.other_metal.typed.connect(lambda text: self.changed.emit("other_metal", text))
        return self._other

    def _add_joint(self, paint_tile: PaintTile) -> None:
        self.joint = JointPicker(self.tr("Joint"), self._words.joints(), paint_tile, self)
        self.joint.chosen.connect(lambda joint: self.changed.emit("joint", joint))
        self._add_wide(self.tr("&Joint, cut across"), self.joint)

    def _add_dangers(self) -> None:
        self.coating = CheckChips(self.tr("On the metal"), self._words.coatings(), parent=self)
        self.coating.changed.connect(lambda values: self.changed.emit("coating", values))
        self._add_wide(self.tr("&On the metal (tick all that may be there, inside too)"), self.coating)
        self.part = ChoiceBox(self.tr("Part"), self._words.parts(), self)
        self.place = ChoiceRow(self.tr("Place"), self._words.places(), self)
        self.solvent = ChoiceBox(self.tr("Wiped with"), self._words.solvents(), self)
        self._add_row(self.tr("P&art"), self.part)
        self._add_row(self.tr("P&lace"), self.place)
        self._add_row(self.tr("&Wiped with"), self.solvent)

    def _add_manner(self) -> None:
        self.position = ChoiceBox(self.tr("Position"), self._words.positions(), self)
        self.hand = ChoiceRow(self.tr("Your hand"), self._words.hands(), self)
        self._add_row(self.tr("Po&sition"), self.position)
        self._add_row(self.tr("Your ha&nd"), self.hand)

    def _add_rare(self) -> None:
        body = QWidget(self)
        self.rare = Fold(self.tr("More: filler goal, gap, length, machine"), body, self)
        form = QFormLayout(body)
        form.setContentsMargins(0, 0, 0, 0)
        form.setVerticalSpacing(8)
        self.goal = ChoiceBox(self.tr("Filler goal"), self._words.goals(), body)
        self.gap = QuantityEdit(self.tr("Gap"), self.tr("none"), body)
        self.length = QuantityEdit(self.tr("Weld length"), self.tr("not stated"), body)
        self.gas = ChoiceBox(self.tr("Gas on the machine"), (("", self.tr("Let the card choose")),), body)
        self.wire = ChoiceBox(self.tr("Wire on the machine"), self._words.wires(), body)
        self.transfer = ChoiceBox(self.tr("Transfer"), self._words.transfers(), body)
        rows = (
            (self.tr("Filler &goal"), self.goal),
            (self.tr("Gap"), self.gap),
            (self.tr("Weld length"), self.length),
            (self.tr("Gas"), self.gas),
            (self.tr("Wire"), self.wire),
            (self.tr("Transfer"), self.transfer),
        )
        for words, widget in rows:
            form.addRow(_buddy(words, widget), widget)
        self._rare_form = form
        self._grid.addWidget(self.rare, self._grid.rowCount(), 0, 1, 2)
        self._choices: dict[str, ChoiceBox | ChoiceRow | JointPicker] = {
            "process": self.process, "joint": self.joint, "solvent": self.solvent, "part": self.part,
            "place": self.place, "position": self.position, "hand": self.hand, "goal": self.goal,
            "gas": self.gas, "wire": self.wire, "transfer": self.transfer,
        }  # fmt: skip
        self._metals = {"metal": self.metal, "other_metal": self.other_metal}
        self._lengths = {
            "thickness": self.thickness, "other_thickness": self.other_thickness,
            "gap": self.gap, "length": self.length,
        }  # fmt: skip
        for name in ("solvent", "part", "place", "position", "hand", "goal", "gas", "wire", "transfer"):
            self._choices[name].chosen.connect(lambda value, field=name: self.changed.emit(field, value))
        for name, edit in self._lengths.items():
            edit.text_edited.connect(lambda text, field=name: self.changed.emit(field, text))
            edit.reading_chosen.connect(lambda text, field=name: self.reading_chosen.emit(field, text))

    def _add_row(self, words: str, widget: QWidget) -> None:
        row = self._grid.rowCount()
        if words:
            named = _buddy(words, widget)
            self._grid.addWidget(named, row, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(widget, row, 1)

    def _add_wide(self, words: str, widget: QWidget) -> None:
        row = self._grid.rowCount()
        self._grid.addWidget(_buddy(words, widget, is_above=True), row, 0, 1, 2)
        self._grid.addWidget(widget, row + 1, 0, 1, 2)

    def _on_process_chosen(self, process: str) -> None:
        self._show_process(process)
        self.changed.emit("process", process)

    def _show_process(self, process: str) -> None:
        for widget in (self.wire, self.transfer):
            self._rare_form.setRowVisible(widget, process == "mig")

    def _on_is_different_toggled(self, on: bool) -> None:
        self._other.setVisible(on)
        if not on:
            self.other_metal.set_value("")
            self.other_thickness.set_text("")
            self.changed.emit("other_metal", "")
            self.changed.emit("other_thickness", "")


def _buddy(words: str, widget: QWidget, *, is_above: bool = False) -> QLabel:
    named = label(words, "soft", wrap=is_above)
    named.setBuddy(widget.focusProxy() or widget)
    if not is_above:
        named.setMinimumHeight(36)
    return named
