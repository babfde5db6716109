"""Reading one entry of a job file field by field; a fault is noted with its line and stops nothing."""

import re
from collections.abc import Callable, Iterable, Sequence
from typing import TypeVar

from welds.errors import WeldsError, nearest
from welds.job.faults import JobFileError
from welds.job.job import Links
from welds.language import tr
from welds.reference.strict_yaml import YamlMap

T = TypeVar("T")

LINK_FIELDS = ("after", "covers", "open_for", "can_wait", "done", "log")
_ID = re.compile(r"[a-z0-9][a-z0-9-]{0,39}")
_YES_NO = {"yes": True, "true": True, "no": False, "false": False}
_NUMBER = re.compile(r"\d{1,9}(\.\d{1,6})?")
_MOST = 1000


class Entry:
    """One mapping of the file, with its place in every complaint."""

    def __init__(self, file: str, where: str, found: YamlMap, faults: list[JobFileError]) -> None:
        self.file = file
        self.where = where
        self.found = found
        self.faults = faults

    def complain(self, problem: str, name: str | None = None) -> None:
        """Note a fault of one field, or of the entry as a whole."""
        lines = self.found.line_of
        line = lines.get(name) if name else min(lines.values(), default=None)
        place = f"{self.where}.{name}" if name and self.where else name or self.where
        self.faults.append(JobFileError(self.file, f"{place}: {problem}", line))

    def refuse_unknown(self, allowed: Iterable[str]) -> None:
        """Note every field that means nothing here."""
        known = tuple(allowed)
        for name in self.found:
            if name not in known:
                near = nearest(name, known)
                hint = tr("; nearest: {near}", near=near) if near else ""
                self.complain(
                    tr("unknown field; allowed: {names}{hint}", names=", ".join(known), hint=hint), name
                )

    def read(self, name: str, read: Callable[[object], T], default: T, *, is_needed: bool = False) -> T:
        """Return a field's value, or the default where it is missing or a fault."""
        if name not in self.found:
            if is_needed:
                self.complain(tr("{name} is missing", name=name))
            return default
        try:
            return read(self.found[name])
        except WeldsError as error:
            self.complain(str(error), name)
        except ValueError as error:
            self.complain(
                tr("{given!s:.60} is not usable; allowed: {allowed}", given=self.found[name], allowed=error),
                name,
            )
        return default

    def text(self, name: str, default: str = "") -> str:
        """Return a few words."""
        return self.read(name, _text, default)

    def flag(self, name: str) -> bool:
        """Return yes or no; no where it is missing."""
        return self.read(name, _flag, False)

    def count(self, name: str) -> int:
        """Return a whole number from 1; 1 where it is missing."""
        return self.read(name, _count, 1)

    def price(self, name: str) -> float | None:
        """Return an amount of money, or None where it is missing."""
        return self.read(name, read_number, None)

    def names(self, name: str) -> tuple[str, ...]:
        """Return ids from a list, or from one word."""
        return self.read(name, _names, ())

    def links(self) -> Links:
        """Return how this task hangs together with others."""
        return Links(
            self.names("after"),
            self.names("covers"),
            self.names("open_for"),
            self.flag("can_wait"),
            self.flag("done"),
            self.names("log"),
        )


def entries(file: str, top: YamlMap, section: str, faults: list[JobFileError]) -> list[tuple[str, Entry]]:
    """Return the entries of a list section with their ids."""
    found = top.get(section, [])
    if not isinstance(found, list):
        faults.append(
            JobFileError(
                file,
                tr("{section}: expected a list of entries, each with '- id:'", section=section),
                top.line_of[section],
            )
        )
        return []
    read = []
    for number, each in enumerate(found, 1):
        if not isinstance(each, YamlMap):
            problem = tr(
                "{section}[{number}]: expected 'name: value' lines with an id", section=section, number=number
            )
            faults.append(JobFileError(file, problem, top.line_of[section]))
            continue
        key = each.get("id")
        where = f"{section}.{key}" if isinstance(key, str) else f"{section}[{number}]"
        entry = Entry(file, where, each, faults)
        if not isinstance(key, str) or not _ID.fullmatch(key):
            problem = tr("id: small letters, digits and dashes are allowed, such as front-panel")
            entry.complain(problem, "id" if key else None)
            continue
        read.append((key, entry))
    return read


def read_number(value: object) -> float:
    """Return a plain number, zero or above."""
    if not isinstance(value, str) or not _NUMBER.fullmatch(value):
        raise ValueError(tr("a number such as 12.50"))
    return float(value)


def _text(value: object) -> str:
    if not isinstance(value, str):
        raise ValueError(tr("a few words"))
    return value


def _flag(value: object) -> bool:
    if not isinstance(value, str) or value.lower() not in _YES_NO:
        raise ValueError("yes, no")
    return _YES_NO[value.lower()]


def _count(value: object) -> int:
    if (
        not isinstance(value, str)
        or not value.isascii()
        or not value.isdigit()
        or not 1 <= int(value) <= _MOST
    ):
        raise ValueError(tr("a whole number from 1 to {most}", most=_MOST))
    return int(value)


def _names(value: object) -> tuple[str, ...]:
    listed: Sequence[object] = value if isinstance(value, list) else [value]
    if not all(isinstance(each, str) and each for each in listed):
        raise ValueError(tr("ids in brackets, such as [front, back]"))
    return tuple(str(each) for each in listed)
