"""One entry of a job as a form: a line or a list to choose from for every field."""

from collections.abc import Mapping

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QCompleter, QFormLayout, QLineEdit, QWidget

from welds.gui.widgets.choices import ChoiceBox
from welds.job.job_form import CHOICE_WORDS, FORMS, FormField
from welds.language import tr


class EntryForm(QWidget):
    """Holds what was typed; nothing is read or judged here."""

    def __init__(
        self,
        section: str,
        key: str,
        fields: Mapping[str, str],
        metals: list[str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.section, self.key = section, key
        self._others = {name: value for name, value in fields.items() if name != "id"}
        self.name = QLineEdit(key, self)
        self.name.setEnabled(not key)
        self.name.setPlaceholderText(self.tr("short, such as left-mudguard"))
        self._inputs: dict[str, QLineEdit | ChoiceBox] = {}
        layout = QFormLayout(self)
        layout.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        layout.addRow(self.tr("Short name"), self.name)
        for each in FORMS[section]:
            made = self._input(each, self._others.pop(each.name, ""), metals)
            made.setAccessibleName(tr(each.label))
            layout.addRow(tr(each.label), made)
            self._inputs[each.name] = made

    def entry_key(self) -> str:
        """Return the id: what was typed in small letters with dashes."""
        return self.key or "-".join(self.name.text().lower().split())

    def fields(self) -> dict[str, str]:
        """Return every field that says something, those the form does not know among them."""
        typed = {name: self._text(made) for name, made in self._inputs.items()}
        return self._others | {name: text for name, text in typed.items() if text}

    def _input(self, each: FormField, value: str, metals: list[str]) -> QLineEdit | ChoiceBox:
        if not each.choices:
            line = QLineEdit(value, self)
            line.setPlaceholderText(tr(each.example))
            if each.name in ("metal", "other_metal"):
                known = QCompleter(metals, line)
                known.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
                line.setCompleter(known)
            return line
        listed = each.choices if not value or value in each.choices else (*each.choices, value)
        words = [("", "\N{EN DASH}"), *((choice, _words(choice)) for choice in listed)]
        box = ChoiceBox(tr(each.label), words, self)
        box.set_value(value)
        return box

    def _text(self, made: QLineEdit | ChoiceBox) -> str:
        return made.value() if isinstance(made, QComboBox) else made.text().strip()


def _words(choice: str) -> str:
    """Return a choice in words; what a file holds and nobody offers stands as it is."""
    return tr(CHOICE_WORDS[choice]) if choice in CHOICE_WORDS else choice.replace("-", " ")
