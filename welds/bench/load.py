"""The person's bench, machine and shelf, from one small YAML file.

Example::

    machine:
      name: 200 A AC/DC TIG, 230 V
      processes: [tig]
      current_min_a: 5
      current_max_a: 200
      duty_cycle:
        - {current_a: 200, percent: 30}
    shelf:
      tungsten_diameters: [1.6 mm, 3/32 in]
      filler_metals: [ER5356]
      has_gas_lens: yes
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from welds.advice.equipment import Equipment, Machine, Shelf
from welds.errors import BenchFileError, InputError, ReferenceDataError, nearest
from welds.quantities.length import Limits, parse_length
from welds.quantities.sizes import SOLD_AS, sold_size
from welds.reference.strict_yaml import YamlMap, read_yaml
from welds.reference.tables import Tables

_SIZES = Limits(0.2, 10.0, (0.3, 8.0))
_NUMBER = re.compile(r"\d{1,6}([.,]\d{1,3})?")
_YES_NO = {"yes": True, "true": True, "no": False, "false": False}
_PROCESSES = ("tig", "mig")


@dataclass(frozen=True, slots=True)
class _Place:
    """Where in the file a value stands, for its error."""

    file: str
    field: str
    line: int | None

    def error(self, problem: str) -> BenchFileError:
        return BenchFileError(self.file, f"{self.field}: {problem}", self.line)


Reader = Callable[[object, _Place], object]


def load_equipment(path: Path, tables: Tables) -> Equipment:
    """Return the machine and shelf that the file describes, or raise BenchFileError with field and line.

    Gases, tungsten types and filler metals have to be names that the tables know.
    """
    file = str(path)
    try:
        top = read_yaml(path, file)
    except ReferenceDataError as error:
        raise BenchFileError(file, error.problem, error.row) from error
    _refuse_unknown(top, ("machine", "shelf"), file, "")
    machine = _section(top, "machine", _MACHINE, file)
    if "name" not in machine:
        raise BenchFileError(file, "machine.name is missing: a few words, such as 200 A AC/DC TIG, 230 V")
    if "processes" not in machine:
        raise BenchFileError(file, "machine.processes is missing; allowed: [tig], [mig] or [tig, mig]")
    for low, high in _ORDERED:
        if machine.get(low) is not None and machine.get(high) is not None and machine[low] > machine[high]:  # type: ignore[operator]
            raise BenchFileError(file, f"machine.{low} {machine[low]:g} is above {high} {machine[high]:g}")
    known = {field: _known(tables, table, column) for field, (table, column) in _NAMED.items()}
    found = _section(top, "shelf", {**_SHELF, **known}, file)
    shelf = {_SHELF_NAMES.get(name, name): value for name, value in found.items()}
    return Equipment(Machine(**machine), Shelf(**shelf))  # type: ignore[arg-type]


def _section(top: YamlMap, name: str, readers: Mapping[str, Reader], file: str) -> dict[str, object]:
    found = top.get(name, YamlMap())
    if not isinstance(found, YamlMap):
        raise BenchFileError(file, f"{name}: expected 'name: value' lines below it", top.line_of[name])
    _refuse_unknown(found, tuple(readers), file, f"{name}.")
    return {
        field: readers[field](value, _Place(file, f"{name}.{field}", found.line_of[field]))
        for field, value in found.items()
    }


def _refuse_unknown(found: YamlMap, allowed: tuple[str, ...], file: str, prefix: str) -> None:
    for field in found:
        if field not in allowed:
            near = nearest(field, allowed)
            hint = f"; nearest: {near}" if near else ""
            problem = f"unknown field {prefix}{field}; allowed: {', '.join(allowed)}{hint}"
            raise BenchFileError(file, problem, found.line_of[field])


def _text(value: object, place: _Place) -> str:
    if not isinstance(value, str) or not value:
        raise place.error("a few words, please")
    return value


def _flag(value: object, place: _Place) -> bool:
    if not isinstance(value, str) or value.lower() not in _YES_NO:
        raise place.error(f"{value!s:.40} is not usable; allowed: yes, no")
    return _YES_NO[value.lower()]


def _number(lowest: float, highest: float) -> Reader:
    def read(value: object, place: _Place) -> float:
        allowed = f"a number from {lowest:g} to {highest:g}"
        if not isinstance(value, str) or not _NUMBER.fullmatch(value):
            raise place.error(f"{value!s:.40} is not usable; allowed: {allowed}")
        number = float(value.replace(",", "."))
        if not lowest <= number <= highest:
            raise place.error(f"{value} is not usable; allowed: {allowed}")
        return number

    return read


def _each(read: Reader) -> Reader:
    def read_all(value: object, place: _Place) -> frozenset[object]:
        if not isinstance(value, list):
            raise place.error("expected a list in brackets, such as [a, b]")
        return frozenset(read(entry, place) for entry in value)

    return read_all


def _process(value: object, place: _Place) -> str:
    word = _text(value, place).lower()
    if word not in _PROCESSES:
        near = nearest(word, _PROCESSES)
        raise place.error(f"{word} is not usable; allowed: tig, mig" + (f"; nearest: {near}" if near else ""))
    return word


def _known(tables: Tables, table: str, column: str) -> Reader:
    """Read a list of names, each of which stands in the column of the table."""
    by_lower = {str(row[column]).lower(): str(row[column]) for row in tables.table(table).rows if row[column]}

    def read(value: object, place: _Place) -> str:
        word = _text(value, place)
        if word.lower() not in by_lower:
            near = nearest(word, by_lower.values())
            allowed = ", ".join(by_lower.values())
            raise place.error(
                f"{word} is not usable; allowed: {allowed}" + (f"; nearest: {near}" if near else "")
            )
        return by_lower[word.lower()]

    return _each(read)


def _size(kind: str) -> Reader:
    """Read one sold size; either of its names will do."""

    def read(value: object, place: _Place) -> float:
        try:
            mm = parse_length(_text(value, place), field=place.field, limits=_SIZES).mm
        except InputError as error:
            raise BenchFileError(place.file, str(error), place.line) from error
        size = sold_size(mm, kind)
        if size is None:
            near = min(SOLD_AS[kind], key=lambda sold: abs(sold - mm))
            sold = ", ".join(f"{each} mm" for each in SOLD_AS[kind])
            raise place.error(f"{value} is not sold; allowed: {sold}; nearest: {near} mm")
        return size[0]

    return read


def _cup(value: object, place: _Place) -> int:
    number = _number(3, 24)(value, place)
    assert isinstance(number, float)
    if not number.is_integer():
        raise place.error(f"{value} is not usable; allowed: a whole cup number")
    return int(number)


def _duty_cycle(value: object, place: _Place) -> tuple[tuple[float, float], ...]:
    wanted = "lines such as - {current_a: 200, percent: 30}"
    if not isinstance(value, list):
        raise place.error(f"expected {wanted}")
    pairs = []
    for entry in value:
        if not isinstance(entry, YamlMap) or set(entry) != {"current_a", "percent"}:
            raise place.error(f"expected {wanted}")
        pairs.append((_AMPS(entry["current_a"], place), _PERCENT(entry["percent"], place)))
    return tuple(pairs)  # type: ignore[arg-type]


_AMPS = _number(1, 1000)
_HERTZ = _number(1, 1000)
_PERCENT = _number(1, 100)
_MACHINE: Mapping[str, Reader] = {
    "name": _text,
    "processes": _each(_process),
    "current_min_a": _AMPS,
    "current_max_a": _AMPS,
    "has_ac": _flag,
    "ac_frequency_min_hz": _HERTZ,
    "ac_frequency_max_hz": _HERTZ,
    "electrode_negative_min_percent": _PERCENT,
    "electrode_negative_max_percent": _PERCENT,
    "has_pulse": _flag,
    "has_pedal": _flag,
    "duty_cycle": _duty_cycle,
}
_SHELF: Mapping[str, Reader] = {
    "tungsten_diameters": _each(_size("tungsten_diameter")),
    "filler_diameters": _each(_size("filler_diameter")),
    "wire_diameters": _each(_size("wire_diameter")),
    "cups": _each(_cup),
    "has_gas_lens": _flag,
}
_NAMED = {
    "tungsten_types": ("tungstens", "iso_code"),
    "filler_metals": ("fillers", "id"),
    "gases": ("gases", "id"),
}
"""Shelf fields whose entries are names in a table."""
_SHELF_NAMES = {
    "tungsten_diameters": "tungsten_diameters_mm",
    "filler_diameters": "filler_diameters_mm",
    "wire_diameters": "wire_diameters_mm",
}
_ORDERED = (
    ("current_min_a", "current_max_a"),
    ("ac_frequency_min_hz", "ac_frequency_max_hz"),
    ("electrode_negative_min_percent", "electrode_negative_max_percent"),
)
