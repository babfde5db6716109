"""From the text of a cell to a value: own readers, one a kind of column."""

import re
from collections.abc import Callable
from enum import StrEnum

from welds.errors import nearest
from welds.language import tr
from welds.reference.basis import Basis

Cell = str | float | int | bool | tuple[str, ...] | tuple[tuple[str, Basis], ...] | Basis | None
"""An empty optional cell is None; an empty optional text is '' and an empty optional list ()."""


class Kind(StrEnum):
    """What a column holds."""

    TEXT = "text"
    NUMBER = "number"
    INTEGER = "integer"
    CHOICE = "choice"
    LIST = "list"
    FLAG = "flag"
    GRADES = "grades"
    """Grades of single cells: `column=grade`, separated by semicolons."""
    PROSE = "prose"
    """Words for people to read: said in the language in use, unlike names and codes."""


_NUMBER = re.compile(r"[+-]?([0-9]+(\.[0-9]*)?|\.[0-9]+)([eE][+-]?[0-9]{1,3})?")
_INTEGER = re.compile(r"[+-]?[0-9]{1,15}")
_FLAGS = {"yes": True, "no": False}
_GRADES = {grade.value: grade for grade in Basis}


def read_number(text: str) -> float:
    """Return a finite number; refuses nan, infinity, units, decimal commas and thousands marks."""
    if not _NUMBER.fullmatch(text):
        raise ValueError(tr("{text!r} is not a number (digits and a decimal point, no unit)", text=text))
    number = float(text)
    if number in (float("inf"), float("-inf")):
        raise ValueError(tr("{text!r} is too large", text=text))
    return number


def read_integer(text: str) -> int:
    """Return a whole number."""
    if not _INTEGER.fullmatch(text):
        raise ValueError(tr("{text!r} is not a whole number", text=text))
    return int(text)


def read_flag(text: str) -> bool:
    """Return True for yes, False for no, and take nothing else."""
    if text not in _FLAGS:
        raise ValueError(tr("{text!r} is neither yes nor no", text=text))
    return _FLAGS[text]


def read_grade(text: str) -> Basis:
    """Return the grade of that name."""
    if text not in _GRADES:
        raise ValueError(one_of(text, _GRADES))
    return _GRADES[text]


def read_list(text: str) -> tuple[str, ...]:
    """Return the semicolon-separated entries; none may be empty or come twice."""
    entries = tuple(entry.strip() for entry in text.split(";"))
    if "" in entries:
        raise ValueError(tr("{text!r} has an empty entry between its semicolons", text=text))
    if len(set(entries)) < len(entries):
        raise ValueError(tr("{text!r} names an entry twice", text=text))
    return entries


def read_grades(text: str) -> tuple[tuple[str, Basis], ...]:
    """Return (column, grade) pairs from `column=grade; column=grade`."""
    pairs = [entry.partition("=") for entry in read_list(text)]
    return tuple((column.strip(), read_grade(grade.strip())) for column, _, grade in pairs)


def limited(read: Callable[[str], float], lowest: float, highest: float, unit: str) -> Callable[[str], float]:
    """Return a reader that also refuses values outside what can be believed."""

    def read_within(text: str) -> float:
        value = read(text)
        if not lowest <= value <= highest:
            raise ValueError(
                tr(
                    "{text} is not believable; allowed: {lowest:g} to {highest:g} {unit}",
                    text=text,
                    lowest=lowest,
                    highest=highest,
                    unit=unit,
                ).rstrip()
            )
        return value

    return read_within


def chosen(choices: tuple[str, ...]) -> Callable[[str], str]:
    """Return a reader that takes only the listed words."""
    allowed = frozenset(choices)

    def read_choice(text: str) -> str:
        if text not in allowed:
            raise ValueError(one_of(text, choices))
        return text

    return read_choice


def listed(choices: tuple[str, ...]) -> Callable[[str], tuple[str, ...]]:
    """Return a list reader whose entries must all be among the choices."""
    read_choice = chosen(choices)
    return lambda text: tuple(read_choice(entry) for entry in read_list(text))


def one_of(text: str, choices: tuple[str, ...] | dict[str, Basis]) -> str:
    """Return the message for a word outside a closed list."""
    hint = nearest(text, choices)
    return tr("{text!r} is not one of {choices}", text=text, choices=", ".join(choices)) + (
        tr("; nearest: {hint}", hint=hint) if hint else ""
    )
