"""Tables in memory, and typed records made from them."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, fields
from typing import TYPE_CHECKING, Any, ClassVar, Protocol, TypeVar

from welds.errors import InputError, nearest
from welds.reference.cells import Cell
from welds.reference.sheet import Sheet
from welds.reference.sources import Source

if TYPE_CHECKING:
    import pandas as pd

Row = Mapping[str, Cell]


class Record(Protocol):
    """A frozen dataclass whose field names are columns of the table it names."""

    TABLE: ClassVar[str]
    __dataclass_fields__: ClassVar[dict[str, Any]]


R = TypeVar("R", bound=Record)
T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Table:
    """Rows with typed values; `user_keys` are the keys of rows that came from the person's own folder."""

    name: str
    sheet: Sheet
    rows: tuple[Row, ...]
    user_keys: frozenset[tuple[Cell, ...]] = frozenset()

    def key_of(self, row: Row) -> tuple[Cell, ...]:
        """Return the values that identify the row."""
        return tuple(row[name] for name in self.sheet.key)

    def frame(self) -> "pd.DataFrame":
        """Return the rows as a pandas frame, columns in the sheet's order."""
        import pandas as pd

        return pd.DataFrame([dict(row) for row in self.rows], columns=list(self.sheet.columns))


@dataclass(frozen=True, slots=True)
class Tables:
    """The whole reference data set."""

    by_name: Mapping[str, Table]
    sources: Mapping[str, Source]
    _records: dict[type, tuple[Any, ...]] = field(default_factory=dict, repr=False, compare=False)
    _derived: dict[Callable[..., Any], Any] = field(default_factory=dict, repr=False, compare=False)

    @property
    def names(self) -> tuple[str, ...]:
        """The tables' names, sorted."""
        return tuple(sorted(self.by_name))

    def table(self, name: str) -> Table:
        """Return the table, or raise InputError with the nearest name."""
        if name not in self.by_name:
            raise InputError("table", name, ", ".join(self.names), nearest(name, self.names))
        return self.by_name[name]

    def records(self, record_class: type[R]) -> tuple[R, ...]:
        """Return the rows of `record_class.TABLE` as records, in the table's order; made once."""
        if record_class not in self._records:
            names = [each.name for each in fields(record_class)]
            rows = self.table(record_class.TABLE).rows
            self._records[record_class] = tuple(
                record_class(**{name: row[name] for name in names}) for row in rows
            )
        return self._records[record_class]

    def derived(self, build: "Callable[[Tables], T]") -> T:
        """Return what `build` makes of these tables; made once, so that a card need not fit curves anew."""
        if build not in self._derived:
            self._derived[build] = build(self)
        return self._derived[build]
