"""Reading one value of the bench file: a reader takes what stands there and where, or names the mistake."""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace

from welds.errors import NOTHING, BenchFileError, InputError, nearest
from welds.language import figure, mark, tr
from welds.quantities.length import Limits, parse_length
from welds.quantities.sizes import SOLD_AS, sold_size
from welds.reference.strict_yaml import YamlList, YamlMap
from welds.reference.tables import Tables

_SIZES = Limits(0.2, 10.0, (0.3, 8.0))
NUMBER = re.compile(r"\d{1,6}([.,]\d{1,3})?")
_YES_NO = {"yes": True, "true": True, "no": False, "false": False}
_LONGEST_TEXT = 80


@dataclass(frozen=True, slots=True)
class Place:
    """Where in the file a value stands, for its error."""

    file: str
    field: str
    line: int | None

    def error(self, problem: str) -> BenchFileError:
        """Return the error for this place."""
        return BenchFileError(self.file, f"{self.field}: {problem}", self.line, self.field)

    def below(self, name: str, line: int | None) -> "Place":
        """Return the place of a field inside this one."""
        return replace(self, field=f"{self.field}.{name}" if self.field else name, line=line)

    def at(self, line: int) -> "Place":
        """Return the same field on the line of one of its entries."""
        return replace(self, line=line)


Reader = Callable[[object, Place], object]


def text(value: object, place: Place) -> str:
    """Read a few words."""
    if not isinstance(value, str) or not value or len(value) > _LONGEST_TEXT:
        raise place.error(tr("a few words, please"))
    return value


def flag(value: object, place: Place) -> bool:
    """Read yes or no."""
    if not isinstance(value, str) or value.lower() not in _YES_NO:
        raise place.error(tr("{shown} is not usable; allowed: yes, no", shown=_shown(value)))
    return _YES_NO[value.lower()]


@dataclass(frozen=True, slots=True)
class Number:
    """Reads a plain number in this range; a decimal comma will do."""

    lowest: float
    highest: float

    def __call__(self, value: object, place: Place) -> float:
        """Return the number, or raise with what is allowed."""
        allowed = tr("a number from {lowest:g} to {highest:g}", lowest=self.lowest, highest=self.highest)
        if not isinstance(value, str) or not NUMBER.fullmatch(value):
            raise place.error(
                tr("{shown} is not usable; allowed: {allowed}", shown=_shown(value), allowed=allowed)
            )
        figure = float(value.replace(",", "."))
        if not self.lowest <= figure <= self.highest:
            raise place.error(tr("{value} is not usable; allowed: {allowed}", value=value, allowed=allowed))
        return figure


def whole(lowest: int, highest: int, what: str) -> Callable[[object, Place], int]:
    """Return the reader of a whole number in this range."""
    any_number = Number(lowest, highest)

    def read(value: object, place: Place) -> int:
        figure = any_number(value, place)
        if not figure.is_integer():
            raise place.error(
                tr("{value} is not usable; allowed: a whole {what}", value=value, what=tr(what))
            )
        return int(figure)

    return read


def choice(*allowed: str) -> Callable[[object, Place], str]:
    """Return the reader of one of these words."""

    def read(value: object, place: Place) -> str:
        word = text(value, place)
        if word.lower() not in allowed:
            raise place.error(not_usable(word, allowed))
        return word.lower()

    return read


def each(read: Reader) -> Callable[[object, Place], frozenset[object]]:
    """Return the reader of a list."""

    def read_all(value: object, place: Place) -> frozenset[object]:
        return frozenset(read(entry, place.at(line)) for entry, line in entries(value, place))

    return read_all


def in_order(read: Reader) -> Callable[[object, Place], tuple[object, ...]]:
    """Return the reader of a list whose order counts."""

    def read_all(value: object, place: Place) -> tuple[object, ...]:
        return tuple(read(entry, place.at(line)) for entry, line in entries(value, place))

    return read_all


def entries(value: object, place: Place) -> Iterable[tuple[object, int]]:
    """Return the entries of a list with their lines."""
    if not isinstance(value, YamlList):
        raise place.error(tr("expected a list in brackets, such as [a, b]"))
    return zip(value, value.lines, strict=True)


def known(tables: Tables, table: str, column: str) -> Callable[[object, Place], str]:
    """Return the reader of a name that stands in the column of the table."""
    by_lower = {str(row[column]).lower(): str(row[column]) for row in tables.table(table).rows if row[column]}

    def read(value: object, place: Place) -> str:
        word = text(value, place)
        if word.lower() not in by_lower:
            raise place.error(not_usable(word, by_lower.values()))
        return by_lower[word.lower()]

    return read


def size(kind: str) -> Callable[[object, Place], float]:
    """Return the reader of one sold size; either of its names will do."""

    def read(value: object, place: Place) -> float:
        try:
            mm = parse_length(text(value, place), field=place.field, limits=_SIZES).mm
        except InputError as error:
            raise BenchFileError(place.file, str(error), place.line) from error
        found = sold_size(mm, kind)
        if found is None:
            near = min(SOLD_AS[kind], key=lambda sold: abs(sold - mm))
            sold = figure(", ".join(f"{each_size} mm" for each_size in SOLD_AS[kind]))
            raise place.error(
                tr(
                    "{value} is not sold; allowed: {sold}; nearest: {near} mm",
                    value=value,
                    sold=sold,
                    near=near,
                )
            )
        return found[0]

    return read


def by_name(
    read_name: Callable[[object, Place], str], read_sizes: Reader
) -> Callable[[object, Place], frozenset[tuple[str, object]]]:
    """Return the reader of `name: [sizes]` lines, as pairs."""

    def read(value: object, place: Place) -> frozenset[tuple[str, object]]:
        lines = mapping(value, place)
        return frozenset(
            (read_name(name, place.at(lines.line_of[name])), found)
            for name, sizes in lines.items()
            for found in read_many(sizes, place.below(name, lines.line_of[name]))
        )

    def read_many(value: object, place: Place) -> Iterable[object]:
        if isinstance(value, str):
            return (read_sizes(value, place),)
        return [read_sizes(entry, place.at(line)) for entry, line in entries(value, place)]

    return read


def mapping(value: object, place: Place, example: str = mark("'name: value' lines below it")) -> YamlMap:
    """Return `name: value` lines, or say that they were expected."""
    if value == "":
        return YamlMap()
    if not isinstance(value, YamlMap):
        raise place.error(tr("expected {example}", example=tr(example)))
    return value


def fields(
    value: object, place: Place, readers: Mapping[str, Reader], faults: list[BenchFileError]
) -> dict[str, object]:
    """Read every field of a section; mistakes are collected, and the fields with one left out."""
    found = mapping(value, place)
    good: dict[str, object] = {}
    for name, entry in found.items():
        here = place.below(name, found.line_of[name])
        try:
            if name not in readers:
                raise BenchFileError(
                    place.file,
                    tr(
                        "unknown field {field}; {allowed}",
                        field=here.field,
                        allowed=_allowed(name, tuple(readers)),
                    ),
                    here.line,
                )
            good[name] = readers[name](entry, here)
        except BenchFileError as error:
            faults.append(error)
    return good


def not_usable(word: str, allowed: Iterable[str]) -> str:
    """Return what was given, what is allowed, and the nearest right word."""
    return tr("{shown} is not usable; {allowed}", shown=_shown(word), allowed=_allowed(word, tuple(allowed)))


def _allowed(word: str, allowed: tuple[str, ...]) -> str:
    near = nearest(word, allowed)
    return tr("allowed: {words}", words=", ".join(allowed)) + (
        tr("; nearest: {near}", near=near) if near else ""
    )


def _shown(value: object) -> str:
    return f"{value!s:.40}" if value != "" else tr(NOTHING)
