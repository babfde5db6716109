"""The column sheet beside each table: what a row is, and what each column may hold. Checked itself."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from welds.errors import ReferenceDataError, nearest
from welds.language import tr
from welds.reference import cells
from welds.reference.basis import Basis
from welds.reference.cells import Cell, Kind
from welds.reference.strict_yaml import YamlMap, read_yaml


@dataclass(frozen=True, slots=True)
class Column:
    """One column: kind, unit and the lowest and highest value that can be believed."""

    name: str
    kind: Kind
    meaning: str
    unit: str = ""
    lowest: float | None = None
    highest: float | None = None
    choices: tuple[str, ...] = ()
    optional: bool = False

    @property
    def empty(self) -> Cell:
        """The value of an empty cell."""
        if self.kind in (Kind.TEXT, Kind.PROSE):
            return ""
        return () if self.kind in (Kind.LIST, Kind.GRADES) else None

    def reader(self) -> Callable[[str], Cell]:
        """Return the function that turns a cell's text into its value or raises ValueError."""
        match self.kind:
            case Kind.NUMBER | Kind.INTEGER:
                read = cells.read_number if self.kind is Kind.NUMBER else cells.read_integer
                assert self.lowest is not None
                assert self.highest is not None
                return cells.limited(read, self.lowest, self.highest, self.unit)
            case Kind.CHOICE:
                return cells.read_grade if self.name == "basis" else cells.chosen(self.choices)
            case Kind.LIST:
                return cells.listed(self.choices) if self.choices else cells.read_list
            case Kind.FLAG:
                return cells.read_flag
            case Kind.GRADES:
                return cells.read_grades
            case Kind.TEXT:
                return str
            case Kind.PROSE:
                return tr


@dataclass(frozen=True, slots=True)
class Sheet:
    """Title, what a row is, key columns, all columns in order, pairs that must not be out of order.

    Title and what a row is are in the language in use.
    """

    title: str
    about: str
    key: tuple[str, ...]
    columns: Mapping[str, Column]
    order: tuple[tuple[str, str], ...] = ()


_NOTE = Column("note", Kind.TEXT, "what a reader should know about the row", optional=True)
CLOSING_COLUMNS = (
    Column("source_id", Kind.TEXT, "the document the row comes from, as in sources.yaml"),
    Column("place", Kind.TEXT, "where in the document: table, page, clause"),
    Column("basis", Kind.CHOICE, "how good the row is", choices=tuple(Basis)),
    _NOTE,
)
"""Every table ends with these; a sheet repeats one only to say that its notes are words for cards."""

_SHEET_KEYS = ("title", "about", "key", "columns", "order")
_COLUMN_KEYS = ("type", "meaning", "unit", "min", "max", "choices", "optional")


def read_sheet(path: Path, shown: str) -> Sheet:
    """Return the checked sheet, or raise ReferenceDataError for its first fault."""
    found = read_yaml(path, shown)
    _only(found, _SHEET_KEYS, shown)
    for part in ("title", "about"):
        if not isinstance(found.get(part), str) or not found[part]:
            raise ReferenceDataError(
                shown, tr("{part!r} is missing or empty", part=part), found.line_of.get(part)
            )
    declared = found.get("columns")
    if not isinstance(declared, YamlMap):
        raise ReferenceDataError(shown, tr("'columns' is missing"))
    columns = {name: _column(name, declared, shown) for name in declared}
    for closing in CLOSING_COLUMNS:
        own = columns.pop(closing.name, closing)
        if own.kind is Kind.PROSE and closing is _NOTE:
            columns[closing.name] = own
            continue
        if own.kind is not closing.kind:
            problem = tr("this closing column is always of type {kind}", kind=closing.kind)
            raise ReferenceDataError(shown, problem, declared.line_of[closing.name], closing.name)
        columns[closing.name] = closing
    key = _names(found, "key", columns, shown)
    for name in key:
        if columns[name].optional:
            raise ReferenceDataError(shown, tr("a key column cannot be optional"), found.line_of["key"], name)
    order = found.get("order", [])
    if not isinstance(order, list) or not all(isinstance(pair, list) and len(pair) == 2 for pair in order):
        raise ReferenceDataError(shown, tr("'order' is a list of pairs of columns"), found.line_of["order"])
    pairs = tuple((str(low), str(high)) for low, high in order)
    for bound in (bound for pair in pairs for bound in pair):
        if bound not in columns or columns[bound].kind not in (Kind.NUMBER, Kind.INTEGER):
            raise ReferenceDataError(
                shown, tr("'order' names no number column"), found.line_of["order"], bound
            )
    return Sheet(tr(str(found["title"])), tr(str(found["about"])), key, columns, pairs)


def _column(name: str, declared: YamlMap, shown: str) -> Column:
    line = declared.line_of[name]
    found = declared[name]

    def fault(problem: str) -> ReferenceDataError:
        return ReferenceDataError(shown, problem, line, name)

    if not isinstance(found, YamlMap):
        raise fault(tr("expected {type: ..., meaning: ...}"))
    _only(found, _COLUMN_KEYS, shown, name)
    kinds = tuple(Kind)
    if found.get("type") not in kinds:
        raise fault(cells.one_of(str(found.get("type", "")), kinds))
    kind = Kind(str(found["type"]))
    meaning, unit = str(found.get("meaning", "")), str(found.get("unit", ""))
    if not meaning:
        raise fault(tr("'meaning' is missing"))
    choices = found.get("choices", [])
    if not isinstance(choices, list) or (kind is Kind.CHOICE and not choices):
        raise fault(tr("'choices' must be a list of words"))
    if choices and kind not in (Kind.CHOICE, Kind.LIST):
        raise fault(tr("'choices' belongs to a choice or a list"))
    lowest = highest = None
    try:
        optional = cells.chosen(("true", "false"))(str(found.get("optional", "false"))) == "true"
        if kind in (Kind.NUMBER, Kind.INTEGER):
            lowest, highest = (cells.read_number(str(found.get(bound, ""))) for bound in ("min", "max"))
    except ValueError as error:
        raise fault(tr("optional, min or max: {error}", error=error)) from error
    if kind is Kind.NUMBER and not unit:
        raise fault(tr("a number needs its 'unit' (1 for a plain ratio)"))
    if lowest is not None and highest is not None and lowest >= highest:
        raise fault(tr("'min' must be below 'max'"))
    if lowest is None and ("min" in found or "max" in found):
        raise fault(tr("'min' and 'max' belong to a number or an integer"))
    return Column(name, kind, meaning, unit, lowest, highest, tuple(map(str, choices)), optional)


def _names(found: YamlMap, part: str, columns: Mapping[str, Column], shown: str) -> tuple[str, ...]:
    names = found.get(part)
    if not isinstance(names, list) or not names:
        raise ReferenceDataError(
            shown, tr("{part!r} is missing; it lists column names", part=part), found.line_of.get(part)
        )
    for name in names:
        if name not in columns:
            raise ReferenceDataError(
                shown, tr("{part!r} names no column of this sheet", part=part), found.line_of[part], str(name)
            )
    return tuple(map(str, names))


def _only(found: YamlMap, allowed: tuple[str, ...], shown: str, column: str | None = None) -> None:
    for key in found:
        if key not in allowed:
            hint = nearest(key, allowed)
            problem = tr("unknown entry {key!r}; allowed: {allowed}", key=key, allowed=", ".join(allowed)) + (
                tr("; nearest: {hint}", hint=hint) if hint else ""
            )
            raise ReferenceDataError(shown, problem, found.line_of[key], column)
