"""The settings of a weld as fields side by side, each with its unit, and a way to add one that is missing."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from welds.gui.pages.log.entry_form import EntryForm
from welds.gui.pages.log.setting_texts import YES_NO, choice_words, unit_words
from welds.gui.widgets.choices import ChoiceBox
from welds.gui.widgets.texts import label
from welds.report.wording import label as setting_label

COLUMNS = 2


class SettingGrid(QWidget):
    """Shows every setting of the form; reports what is typed by the setting's name."""

    changed = Signal(str, str)

    def __init__(self, form: EntryForm, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._form = form
        self.fields: dict[str, QLineEdit | ChoiceBox] = {}
        self._grid = QGridLayout()
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(2)
        for column in range(COLUMNS):
            self._grid.setColumnStretch(column, 1)
        self.more = ChoiceBox(self.tr("Add a setting"), (), self)
        self.more.chosen.connect(self._on_more_chosen)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        layout.addLayout(self._grid)
        layout.addWidget(self.more)
        layout.addStretch(1)
        for name, text in form.settings.items():
            self._add(name, text)
        self._offer_more()

    def _add(self, name: str, text: str) -> None:
        kind = self._form.kinds[name]
        words = setting_label(name)
        field: QLineEdit | ChoiceBox
        choices = ("yes", "no") if name in YES_NO else kind.choices
        if choices:
            field = ChoiceBox(
                words, (("", self.tr("not noted")), *((each, choice_words(each)) for each in choices)), self
            )
            field.set_value(text)
            field.chosen.connect(lambda value: self.changed.emit(name, value))
        else:
            field = QLineEdit(text, self)
            field.setCursorPosition(0)
            field.setAccessibleName(words)
            field.textEdited.connect(lambda typed: self.changed.emit(name, typed))
        place = len(self.fields)
        self.fields[name] = field
        named = label(words, "soft", parent=self)
        named.setBuddy(field)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(field, 1)
        unit = unit_words(name, kind, self._form.units)
        if unit:
            row.addWidget(label(unit, "soft", parent=self))
            field.setAccessibleDescription(unit)
        column, line = place % COLUMNS, 2 * (place // COLUMNS)
        self._grid.addWidget(named, line, column)
        self._grid.addLayout(row, line + 1, column)

    def _offer_more(self) -> None:
        missing = self._form.missing_settings
        named = tuple((name, setting_label(name)) for name in missing)
        self.more.set_options((("", self.tr("Add a setting…")), *named))
        self.more.setVisible(bool(missing))

    def _on_more_chosen(self, name: str) -> None:
        if not name:
            return
        self._add(name, "")
        self.changed.emit(name, "")
        self._offer_more()
        self.more.set_value("")
        self.fields[name].setFocus()
