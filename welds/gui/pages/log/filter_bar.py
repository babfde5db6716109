"""Above the table: free text, a choice for every field of a weld, filters kept under a name."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QCompleter, QFrame, QGridLayout, QHBoxLayout, QLineEdit, QPushButton, QWidget

from welds.advice.evidence import Outcome
from welds.gui.pages.log.words import fault_words
from welds.gui.pages.setup.options import OptionWords
from welds.gui.widgets.chip import Chip
from welds.gui.widgets.choices import ChoiceBox
from welds.gui.widgets.even_grid import EvenGrid
from welds.gui.widgets.fold import FoldButton
from welds.gui.widgets.texts import label, set_property
from welds.reference.faults import Imperfection, fault_names
from welds.reference.metals import Metal
from welds.reference.names import name_of
from welds.reference.tables import Tables
from welds.report.wording import outcome_words

SAVE, FORGET = "\0save", "\0forget"
FIELD_PX = 156
SHORTEST = 7
"""Letters that a choice keeps of its words where the text is large and the window small; else it has all."""


class FilterBar(QFrame):
    """Reports every change by the field's name; decides nothing."""

    changed = Signal(str, str)
    cleared = Signal()
    nearest_toggled = Signal(bool)
    saved_chosen = Signal(str)
    save_wanted = Signal()
    forget_wanted = Signal()

    def __init__(self, tables: Tables, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self.fields: dict[str, QLineEdit | ChoiceBox] = {}
        self._words = OptionWords(self)
        self.text = QLineEdit(self)
        self.text.setClearButtonEnabled(True)
        self.text.setPlaceholderText(self.tr("search: bait tank 5052"))
        self._register("text", self.tr("Search the log"), self.text)
        self.nearest = Chip(self.tr("Nearest to the card"), self)
        self.nearest.setMinimumWidth(self.nearest.sizeHint().width() + 14)
        self.nearest.toggled.connect(self.nearest_toggled)
        self.saved = ChoiceBox(self.tr("Kept filters"), (), self)
        self.saved.setMaximumWidth(190)
        self.saved.chosen.connect(self._on_saved_chosen)
        self.more = FoldButton(self.tr("More filters"), parent=self)
        self.clear = QPushButton(self.tr("Show all"), self)
        self.clear.clicked.connect(self.cleared)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.text, 1)
        row.addWidget(self._choice("process", self.tr("Process"), self._words.processes()))
        row.addWidget(self._choice("joint", self.tr("Joint"), self._words.joints()))
        outcomes = [(each.value, outcome_words(each)) for each in Outcome]
        row.addWidget(self._choice("outcome", self.tr("Came out"), outcomes))
        for part in (self.more, self.nearest, self.saved, self.clear):
            row.addWidget(part)
        self._tables = tables
        self._rest: QWidget | None = None
        self.more.toggled.connect(self._on_more_toggled)
        self._layout = layout = QGridLayout(self)
        layout.setContentsMargins(10, 6, 10, 6)
        layout.setVerticalSpacing(6)
        layout.addLayout(row, 0, 0)
        self._trouble = label(role="small", tone="stop", wrap=True, parent=self)
        self._trouble.hide()
        layout.addWidget(self._trouble, 2, 0)
        self.show_saved(())
        QTimer.singleShot(0, self, self.complete)  # the page is painted first

    def complete(self) -> None:
        """Make the fields behind "More filters", if they are not there yet."""
        if self._rest is None:
            self._rest = self._make_rest(self._tables)
            self._rest.setVisible(self.more.isChecked())
            self._layout.addWidget(self._rest, 1, 0)

    def show_fields(self, fields: Mapping[str, str]) -> None:
        """Show a filter without reporting it."""
        self.complete()
        for name, field in self.fields.items():
            value = fields.get(name, "")
            if isinstance(field, ChoiceBox):
                field.set_value(value)
            else:
                field.setText(value)
        rare = set(self.fields) - {"text", "process", "joint", "outcome"}
        if any(fields.get(name) for name in rare):
            self.more.setChecked(True)

    def show_saved(self, names: Sequence[str]) -> None:
        """Offer these kept filters."""
        offers = [("", self.tr("Kept filters")), *((name, name) for name in names)]
        offers.append((SAVE, self.tr("Keep this filter…")))
        if names:
            offers.append((FORGET, self.tr("Forget a filter…")))
        self.saved.set_options(offers)
        self.saved.set_value("")

    def show_values(self, values: Mapping[str, Sequence[str]]) -> None:
        """Offer what the log holds while it is typed."""
        self.complete()
        for name, words in values.items():
            field = self.fields[name]
            if isinstance(field, QLineEdit):
                field.setCompleter(QCompleter(list(words), field))

    def show_trouble(self, name: str, words: str) -> None:
        """Say which field cannot be used, or that all can."""
        for each, field in self.fields.items():
            set_property(field, "invalid", each == name)
        self._trouble.setText(words)
        self._trouble.setVisible(bool(words))

    def show_nearest(self, is_nearest: bool) -> None:
        """Show whether the welds nearest to the card are on show."""
        self.nearest.blockSignals(True)
        self.nearest.setChecked(is_nearest)
        self.nearest.blockSignals(False)

    def _make_rest(self, tables: Tables) -> QWidget:
        rest = QWidget(self)
        grid = EvenGrid(FIELD_PX, spacing=6, max_columns=8)
        rest.setLayout(grid)
        families = dict.fromkeys(metal.family for metal in tables.records(Metal))
        faults = [(fault, fault_words(fault)) for fault in fault_names(tables)]
        faults += [(each.number, f"{each.number} {each.name}") for each in tables.records(Imperfection)]
        family_words = [(each, name_of(each)) for each in families]
        grid.addWidget(self._choice("family", self.tr("Family"), family_words))
        grid.addWidget(self._line("metal", self.tr("Metal")))
        grid.addWidget(self._choice("position", self.tr("Position"), self._words.positions()))
        grid.addWidget(self._choice("fault", self.tr("Fault"), faults))
        grid.addWidget(self._line("thickness_min", self.tr("Thickness from")))
        grid.addWidget(self._line("thickness_max", self.tr("Thickness to")))
        grid.addWidget(self._line("current_min", self.tr("Current from (A)")))
        grid.addWidget(self._line("current_max", self.tr("Current to (A)")))
        grid.addWidget(self._line("since", self.tr("Since (2026-03-01)")))
        grid.addWidget(self._line("until", self.tr("Until (2026-04-30)")))
        grid.addWidget(self._line("machine", self.tr("Machine")))
        grid.addWidget(self._line("welder", self.tr("Who")))
        grid.addWidget(self._line("material_lot", self.tr("Material lot")))
        pictured = (("yes", self.tr("with pictures")), ("no", self.tr("without pictures")))
        grid.addWidget(self._choice("photos", self.tr("Pictures"), pictured))
        return rest

    def _on_more_toggled(self, on: bool) -> None:
        self.complete()
        assert self._rest is not None
        self._rest.setVisible(on)

    def _choice(self, name: str, words: str, options: Sequence[tuple[str, str]]) -> ChoiceBox:
        field = ChoiceBox(words, (("", self.tr("{words}: any").format(words=words)), *options), self)
        field.setSizeAdjustPolicy(ChoiceBox.SizeAdjustPolicy.AdjustToContents)
        field.setMinimumContentsLength(SHORTEST)
        field.chosen.connect(lambda value: self.changed.emit(name, value))
        self.fields[name] = field
        return field

    def _line(self, name: str, words: str) -> QLineEdit:
        field = QLineEdit(self)
        field.setPlaceholderText(words)
        field.setClearButtonEnabled(True)
        self._register(name, words, field)
        return field

    def _register(self, name: str, words: str, field: QLineEdit) -> None:
        field.setAccessibleName(words)
        field.setToolTip(words)
        field.textChanged.connect(lambda text: self.changed.emit(name, text))
        self.fields[name] = field

    def _on_saved_chosen(self, name: str) -> None:
        self.saved.set_value("")
        if name == SAVE:
            self.save_wanted.emit()
        elif name == FORGET:
            self.forget_wanted.emit()
        elif name:
            self.saved_chosen.emit(name)
