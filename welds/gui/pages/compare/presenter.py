"""The page of columns without its widgets: what stands side by side, and the comparison that follows."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from welds.advice.equipment import Equipment
from welds.errors import WeldsError
from welds.gui.engine import Engine, Fields
from welds.gui.pages.compare.answers import Answers
from welds.gui.pages.compare.column_set import Change, ColumnSet
from welds.gui.pages.compare.vary import Vary
from welds.quantities.units import Units
from welds.report.comparison import Asked, Comparison, compare, heading, titles
from welds.report.comparison_rows import RowGroup, row_groups
from welds.report.current_curve import CurrentCurve

_ONLY_FOR = {"wire": "mig", "transfer": "mig"}


@dataclass(frozen=True)
class Shown:
    """A comparison in words, ready for the table."""

    comparison: Comparison
    titles: tuple[str, ...]
    heading: str
    groups: tuple[RowGroup, ...]
    pinned: int


class ComparePresenter(QObject):
    """Keeps the columns and answers all of them whenever one or the card behind them changes."""

    shown_changed = Signal(object)
    curves_outdated = Signal()
    values_changed = Signal()
    base_changed = Signal(float, str)
    refused = Signal(str)

    def __init__(self, engine: Engine, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._engine = engine
        self.vary = Vary(engine, self)
        self._answers = Answers(engine, self.vary.equipment)
        self._units = Units.METRIC
        self._fields: dict[str, str | tuple[str, ...]] = {}
        self._taken: dict[str, str | tuple[str, ...]] = {}
        self._kind = "joint"
        self._is_kept = False
        self._columns = ColumnSet()
        self._shown: Shown | None = None
        self._curve_keys: tuple[object, ...] = ()

    @property
    def engine(self) -> Engine:
        """What the page asks of the layers below."""
        return self._engine

    @property
    def units(self) -> Units:
        """The units that words are shown in."""
        return self._units

    @property
    def kind(self) -> str:
        """What is varied at present."""
        return self._kind

    @property
    def columns(self) -> ColumnSet:
        """The columns as they were asked for."""
        return self._columns

    @property
    def shown(self) -> Shown | None:
        """What is on show."""
        return self._shown

    @property
    def base_fields(self) -> Fields:
        """The card on the set-up page that the columns start from."""
        return dict(self._fields)

    @property
    def base_thickness_mm(self) -> float:
        """The thickness that columns have unless they have one of their own."""
        return self._engine.request(self._for_process(self._fields)).thickness_mm

    def thickness_marks(self) -> tuple[tuple[float, str], ...]:
        """Return the named thicknesses of the base metal."""
        return self._engine.thickness_marks(str(self._fields.get("metal", "")), self._units)

    def take_card(self, fields: Fields, units: Units) -> None:
        """Start from this card; the first time with all joints, later with the columns as they were left."""
        is_first = not self._fields
        self._units = units
        if dict(fields) == self._taken:
            self._answer()
            return
        self._taken = dict(fields)
        self._fields = self._with_plain_thickness(self._taken)
        self.values_changed.emit()
        if is_first:
            self.choose_kind(self._kind)
            return
        for place, change in enumerate(self._columns.changes):
            if change.fields and change.of(self._fields) == self._fields:
                self._columns = self._columns.pinned(place)
        self._answer()

    def set_units(self, units: Units) -> None:
        """Show the same columns in other words."""
        self._units = units
        if self._fields:
            self.values_changed.emit()
            self._answer()

    def answer_again(self) -> None:
        """Answer the same columns anew: what stands behind the advice has changed."""
        if self._fields:
            self.values_changed.emit()
            self._answer()

    def choose_kind(self, kind: str) -> None:
        """Vary this; unless columns are kept, its values take the place of the columns there are."""
        self._kind = kind
        self.values_changed.emit()
        if not self._is_kept:
            values = self.vary.first_values(kind, self._fields, self._units)
            changes = [self.vary.change(kind, value) for value in values] or [Change()]
            present = self.vary.change(kind, self.vary.present(kind, self._fields))
            self._columns = ColumnSet.of(changes, present)
        self._answer()

    def keep_columns(self, keep: bool) -> None:
        """Say whether another kind adds to the columns or takes their place."""
        self._is_kept = keep

    def ticked(self) -> tuple[str, ...]:
        """Return the values of the present kind that have a column."""
        values = (self.vary.value_of(self._kind, change) for change in self._columns.changes)
        return tuple(value for value in values if value)

    def tick(self, values: tuple[str, ...]) -> None:
        """Have a column for each of these values of the present kind, beside the columns of other kinds."""
        columns = self._columns
        for value in self.ticked():
            if value not in values:
                columns = columns.without(columns.changes.index(self.vary.change(self._kind, value)))
        for value in values:
            columns = columns.with_change(self.vary.change(self._kind, value))
        self._set_columns(columns)
        if set(self.ticked()) != set(values):
            self.values_changed.emit()

    def add_value(self, text: str) -> bool:
        """Add a column for a typed thickness or metal; where that cannot be done, say why."""
        change = Change({self._kind: text.strip()})
        if self._columns.is_full:
            self.refused.emit(self.tr("Eight columns are on show; remove one first."))
            return False
        try:
            self._engine.request(self._asked(change))
        except WeldsError as error:
            self.refused.emit(str(error))
            return False
        self._set_columns(self._columns.with_change(change))
        self.values_changed.emit()
        return True

    def add_machine(self, equipment: Equipment) -> None:
        """Add a column for the present card on this machine."""
        if self._columns.is_full:
            self.refused.emit(self.tr("Eight columns are on show; remove one first."))
            return
        self._set_columns(self._columns.with_change(Change({}, equipment)))

    def add_machine_file(self, path: Path) -> None:
        """Add a column for the machine and shelf in a file; say why where it cannot be read."""
        from welds.bench.load import load_equipment

        try:
            equipment = load_equipment(path, self._engine.tables)
        except WeldsError as error:
            self.refused.emit(str(error))
        else:
            self.add_machine(equipment)

    def remove(self, place: int) -> None:
        """Take a column away."""
        self._set_columns(self._columns.without(place))
        self.values_changed.emit()

    def move(self, old: int, new: int) -> None:
        """Put a column in another place."""
        self._set_columns(self._columns.moved(old, new))

    def pin(self, place: int) -> None:
        """Hold the others against this column."""
        self._set_columns(self._columns.pinned(place))

    def set_thickness_mm(self, thickness_mm: float) -> None:
        """Move the base thickness; columns with a thickness of their own stay."""
        self.set_thickness(self._engine.length_text(thickness_mm, self._units))

    def set_thickness(self, text: str) -> None:
        """Take a typed base thickness."""
        asked = {**self._fields, "thickness": text}
        try:
            self._engine.request(self._for_process(asked))
        except WeldsError as error:
            self.refused.emit(str(error))
            return
        self._fields = asked
        self._answer()

    def fields_of(self, place: int) -> Fields:
        """Return a column's whole request, as the set-up page would hold it."""
        return self._columns.changes[place].of(self._fields)

    def curve_work(self) -> Callable[[], tuple[CurrentCurve, ...]]:
        """Return a function that works out every column's curve; it may be called on any thread."""
        assert self._shown is not None
        return self._answers.curve_work(self._shown.titles, self._all_asked())

    def _set_columns(self, columns: ColumnSet) -> None:
        if columns != self._columns:
            self._columns = columns
            self._answer()

    def _answer(self) -> None:
        try:
            asked = self._all_asked()
            comparison = compare(asked, self._answers.card, self._columns.base)
        except WeldsError as error:
            self.refused.emit(str(error))
            return
        units = self._units
        has_card = comparison.pinned.card is not None
        self._shown = Shown(
            comparison,
            titles(comparison, units),
            heading(comparison, units),
            row_groups(comparison, units) if has_card else (),
            comparison.columns.index(comparison.pinned),
        )
        self.refused.emit("")
        here_mm = self.base_thickness_mm
        self.base_changed.emit(here_mm, self._engine.understood(here_mm, units))
        self.shown_changed.emit(self._shown)
        keys = tuple(self._answers.curve_key(each) for each in asked)
        if keys != self._curve_keys:
            self._curve_keys = keys
            self.curves_outdated.emit()

    def _all_asked(self) -> list[Asked]:
        present = self.vary.equipment()
        return [
            Asked(self._engine.request(self._asked(change)), change.equipment or present, change.grounds)
            for change in self._columns.changes
        ]

    def _asked(self, change: Change) -> dict[str, str | tuple[str, ...]]:
        return self._for_process(change.of(self._fields))

    def _for_process(self, fields: Fields) -> dict[str, str | tuple[str, ...]]:
        process = fields.get("process")
        return {
            name: value for name, value in fields.items() if value and _ONLY_FOR.get(name, process) == process
        }

    def _with_plain_thickness(
        self, fields: dict[str, str | tuple[str, ...]]
    ) -> dict[str, str | tuple[str, ...]]:
        """Write a gauge as a length: the same gauge is another thickness in another metal."""
        text = str(fields.get("thickness", ""))
        if "ga" not in text.lower():
            return fields
        try:
            thickness_mm = self._engine.request(self._for_process(fields)).thickness_mm
        except WeldsError:
            return fields
        return {**fields, "thickness": f"{thickness_mm:.3f} mm"}
