"""The shelf as lists to tick, one kind below the other."""

from collections.abc import Mapping

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from welds.gui.pages.bench.own_units import LEFT, size_words
from welds.gui.pages.bench.shelf_state import (
    PAIRS,
    PLAIN,
    SOLD_BY,
    Offer,
    gases_there,
    names_there,
    sizes_of,
    ticked,
)
from welds.gui.pages.bench.words import BenchWords
from welds.gui.widgets.choices import CheckChips, ChoiceBox
from welds.gui.widgets.texts import label, set_text
from welds.quantities.units import Units
from welds.reference.names import id_or_name


class PairList(QWidget):
    """A list of types or classes, and the diameters of the chosen one to tick; what is there stands below."""

    ticked_sizes = Signal(str, object)

    def __init__(
        self, title: str, names: tuple[str, ...], sizes: tuple[str, ...], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._shelf: Mapping[str, object] = {}
        self._kind = ""
        self._words = {size: size for size in sizes}
        self.names = ChoiceBox(title, [(name, name) for name in names], self)
        self.names.chosen.connect(lambda _name: self._show_sizes())
        self.sizes = CheckChips(title, [(size, size) for size in sizes], 66, self)
        self.sizes.changed.connect(lambda values: self.ticked_sizes.emit(self.names.value(), values))
        self._there = label(role="small", wrap=True, parent=self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(3)
        layout.addWidget(self.names)
        layout.addWidget(self.sizes)
        layout.addWidget(self._there)

    def set_words(self, words: Mapping[str, str]) -> None:
        """Call the diameters by other words."""
        self._words = dict(words)
        self.sizes.set_words(words)

    def show_shelf(self, shelf: Mapping[str, object], kind: str) -> None:
        """Show what is there of one kind; the first that is there is chosen at first."""
        is_first, self._shelf, self._kind = not self._kind, shelf, kind
        there = names_there(shelf, kind)
        if is_first and there:
            self.names.set_value(there[0])
        said = "; ".join(f"{name}: {', '.join(self._said(sizes_of(shelf, kind, name)))}" for name in there)
        set_text(self._there, said or self.tr("Nothing ticked: nothing is ruled out."))
        self._show_sizes()

    def _said(self, sizes: tuple[str, ...]) -> list[str]:
        return [self._words.get(size, size) for size in sizes]

    def _show_sizes(self) -> None:
        self.sizes.set_values(sizes_of(self._shelf, self._kind, self.names.value()))


class GasList(QWidget):
    """Gases to tick, each ticked one with how much is left."""

    changed = Signal(object)

    def __init__(self, title: str, gases: tuple[tuple[str, str], ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._names = dict(gases)
        self._left: dict[str, str] = {}
        self._units = Units.METRIC
        self._named: dict[str, QLabel] = {}
        self._bench_words = BenchWords(self)
        self.chips = CheckChips(title, gases, 150, self)
        self.chips.changed.connect(self._on_chips_changed)
        self.lines: dict[str, QLineEdit] = {}
        self._rows: dict[str, QWidget] = {}
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(3)
        layout.addWidget(self.chips)
        for gas, _name in gases:
            layout.addWidget(self._row(gas))
        self.set_units(Units.METRIC)

    def set_units(self, units: Units) -> None:
        """Ask for what is left in the person's unit."""
        self._units = units
        for gas, line in self.lines.items():
            words = self._bench_words.left(self._names[gas], units)
            line.setAccessibleName(words)
            line.setPlaceholderText(self._bench_words.left_hint(units))
            self._named[gas].setText(words)

    def show_gases(self, gases: Mapping[str, str]) -> None:
        """Show ticks and what is left, in litres here, without reporting it."""
        self._left = dict(gases)
        self.chips.set_values(gases)
        for gas, row in self._rows.items():
            row.setVisible(gas in gases)
            left = gases.get(gas, "")
            if LEFT.kept(self.lines[gas].text().strip(), self._units) != left:
                self.lines[gas].setText(LEFT.shown(left, self._units))

    def _row(self, gas: str) -> QWidget:
        row = QWidget(self)
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 0, 0, 0)
        line = QLineEdit(row)
        line.textEdited.connect(lambda text: self._on_line_edited(gas, text))
        named = self._named[gas] = label(role="soft", parent=row)
        named.setBuddy(line)
        layout.addWidget(named, 1)
        layout.addWidget(line, 1)
        row.hide()
        self.lines[gas], self._rows[gas] = line, row
        return row

    def _on_chips_changed(self, values: tuple[str, ...]) -> None:
        self._left = {gas: self._left.get(gas, "") for gas in values}
        self.changed.emit(dict(self._left))

    def _on_line_edited(self, gas: str, text: str) -> None:
        self._left[gas] = LEFT.kept(text.strip(), self._units)
        self.changed.emit(dict(self._left))


class ShelfPanel(QWidget):
    """Every kind under its heading."""

    plain_ticked = Signal(str, object)
    sizes_ticked = Signal(str, str, object)
    gases_changed = Signal(object)
    helmets_edited = Signal(str)
    lens_chosen = Signal(str)

    def __init__(self, offer: Offer, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._offer = offer
        words = BenchWords(self).shelf()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(12, 8, 12, 12)
        self._grid.setVerticalSpacing(4)
        self.pairs = {
            kind: PairList(words[kind], offer.names[kind], offer.sizes[kind], self) for kind in PAIRS
        }
        for kind, pair in self.pairs.items():
            pair.ticked_sizes.connect(lambda name, sizes, of=kind: self.sizes_ticked.emit(of, name, sizes))
            self._add(words[kind], pair)
        self.gases = GasList(words["gases"], offer.gases, self)
        self.gases.changed.connect(self.gases_changed)
        self._add(words["gases"], self.gases)
        self.plain: dict[str, CheckChips] = {}
        for kind in PLAIN:
            chips = CheckChips(
                words[kind], [(each, id_or_name(each)) for each in offer.plain[kind]], 66, self
            )
            chips.changed.connect(lambda values, of=kind: self.plain_ticked.emit(of, values))
            self.plain[kind] = chips
            self._add(words[kind], chips)
        options = (("", self.tr("not stated")), ("yes", self.tr("yes")), ("no", self.tr("no")))
        self.lens = ChoiceBox(words["has_gas_lens"], options, self)
        self.lens.chosen.connect(self.lens_chosen)
        self._add(words["has_gas_lens"], self.lens)
        self.helmets = QLineEdit(self)
        self.helmets.setAccessibleName(words["helmet_shades"])
        self.helmets.setPlaceholderText("9-13, 10")
        self.helmets.textEdited.connect(self.helmets_edited)
        self._add(words["helmet_shades"], self.helmets)
        self._grid.setRowStretch(self._grid.rowCount(), 1)
        self.set_units(Units.METRIC)

    def set_units(self, units: Units) -> None:
        """Call sizes and gases left as the person's system does; `show_shelf` follows."""
        for kind, sold_by in SOLD_BY.items():
            sizes = self._offer.sizes.get(kind) or self._offer.plain[kind]
            words = {size: size_words(size, sold_by, units) for size in sizes}
            (self.pairs.get(kind) or self.plain[kind]).set_words(words)
        self.gases.set_units(units)

    def show_shelf(self, shelf: Mapping[str, object]) -> None:
        """Show everything without reporting it."""
        for kind, pair in self.pairs.items():
            pair.show_shelf(shelf, kind)
        self.gases.show_gases(gases_there(shelf))
        for kind, chips in self.plain.items():
            chips.set_values(ticked(shelf, kind))
        self.lens.set_value(str(shelf.get("has_gas_lens", "")))
        helmets = ", ".join(ticked(shelf, "helmet_shades"))
        if self.helmets.text().replace(" ", "") != helmets.replace(" ", ""):
            self.helmets.setText(helmets)

    def _add(self, title: str, widget: QWidget) -> None:
        row = self._grid.rowCount()
        heading = label(title, "heading", parent=self)
        heading.setBuddy(widget)
        self._grid.addWidget(heading, row, 0)
        self._grid.addWidget(widget, row + 1, 0)
