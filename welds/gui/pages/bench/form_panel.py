"""The form of one machine: every line of its entry, with its mistake written below it."""

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QWidget

from welds.gui.pages.bench.form_fields import GROUPS, FormField
from welds.gui.pages.bench.words import BenchWords
from welds.gui.widgets.choices import ChoiceBox
from welds.gui.widgets.texts import label, set_property, set_text
from welds.quantities.units import Units
from welds.reference.names import id_or_name

COLUMNS = 2
LABEL_PX, SHORTEST = 138, 6
LONG = frozenset({"name", "duty_cycle"})
"""Lines that take the whole width, besides the scales."""


class FormPanel(QWidget):
    """Reports each edit by its field name; knows nothing of what a machine can be."""

    edited = Signal(str, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = BenchWords(self)
        self._named: dict[str, QLabel] = {}
        self.lines: dict[str, QLineEdit] = {}
        self.boxes: dict[str, ChoiceBox] = {}
        self._troubles: dict[str, QLabel] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(12, 8, 12, 12)
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(4)
        for column in range(COLUMNS):
            self._grid.setColumnStretch(column, 1)
        self.general = label(role="small", tone="stop", wrap=True, parent=self)
        self._grid.addWidget(self.general, 0, 0, 1, COLUMNS)
        self.general.hide()
        row, titles = 1, self._words.groups()
        for group, fields in GROUPS.items():
            self._grid.addWidget(label(titles[group], "heading", parent=self), row, 0, 1, COLUMNS)
            row = self._add_fields(fields, row + 1)
        self._grid.setRowStretch(row, 1)
        self.set_units(Units.METRIC)

    def set_units(self, units: Units) -> None:
        """Name every line, its unit and its example in the person's system."""
        names, hints = self._words.fields(units), self._words.hints(units)
        for name, named in self._named.items():
            named.setText(names[name])
        for name, line in self.lines.items():
            line.setAccessibleName(names[name])
            line.setPlaceholderText(hints.get(name, ""))
        for name, box in self.boxes.items():
            box.setAccessibleName(names[name])

    def show_texts(self, texts: Mapping[str, str]) -> None:
        """Show a machine without reporting it."""
        for name, line in self.lines.items():
            if line.text() != texts.get(name, ""):
                line.setText(texts.get(name, ""))
        for name, box in self.boxes.items():
            box.set_value(texts.get(name, ""))

    def show_faults(self, faults: Mapping[str, str]) -> None:
        """Write each mistake below its line; one without a line stands on top."""
        set_text(self.general, faults.get("", ""))
        for name, trouble in self._troubles.items():
            set_text(trouble, faults.get(name, ""))
            if name in self.lines:
                set_property(self.lines[name], "invalid", name in faults)
                self.lines[name].setAccessibleDescription(faults.get(name, ""))

    def _add_fields(self, fields: tuple[FormField, ...], row: int) -> int:
        column = 0
        for field in fields:
            is_long = field.name in LONG or field.kind == "yaml"
            if is_long and column:
                row, column = row + 1, 0
            self._grid.addWidget(self._cell(field), row, column, 1, COLUMNS if is_long else 1)
            column = 0 if is_long else (column + 1) % COLUMNS
            row += column == 0
        return row + (column != 0)

    def _cell(self, field: FormField) -> QWidget:
        cell = QWidget(self)
        layout = QGridLayout(cell)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setHorizontalSpacing(8)
        layout.setVerticalSpacing(0)
        layout.setColumnStretch(1, 1)
        layout.setRowStretch(2, 1)
        named = self._named[field.name] = label(role="soft", parent=cell)
        layout.setColumnMinimumWidth(0, LABEL_PX)
        layout.addWidget(named, 0, 0, Qt.AlignmentFlag.AlignVCenter)
        if field.options:
            options = (("", self.tr("not stated")), *((each, id_or_name(each)) for each in field.options))
            box = ChoiceBox("", options, cell)
            box.setMinimumContentsLength(SHORTEST)
            box.chosen.connect(lambda value, name=field.name: self.edited.emit(name, value))
            self.boxes[field.name] = box
            named.setBuddy(box)
            layout.addWidget(box, 0, 1)
        else:
            line = QLineEdit(cell)
            line.setMinimumWidth(LABEL_PX // 2)
            line.textEdited.connect(lambda text, name=field.name: self.edited.emit(name, text))
            self.lines[field.name] = line
            named.setBuddy(line)
            layout.addWidget(line, 0, 1)
        trouble = label(role="small", tone="stop", wrap=True, parent=cell)
        trouble.hide()
        self._troubles[field.name] = trouble
        layout.addWidget(trouble, 1, 0, 1, 2)
        return cell
