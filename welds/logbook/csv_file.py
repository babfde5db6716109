"""Entries as CSV: for spreadsheets, losing nothing, and nothing in it that a spreadsheet would run."""

import csv
import io
import json
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from welds.errors import InputError
from welds.language import tr
from welds.logbook.entry import Entry, Value
from welds.logbook.fields import entry_json
from welds.logbook.settings import build_kinds
from welds.quantities.spreadsheet import guarded, unguarded
from welds.reference.tables import Tables

PLAIN = (
    *("uid", "process", "metal", "thickness_mm", "joint", "position", "other_metal", "other_thickness_mm"),
    *("gap_mm", "hand", "outcome", "faults", "notes", "made_at", "machine", "welder", "material_lot"),
    "photos",
)
_NUMBERS = frozenset({"thickness_mm", "other_thickness_mm", "gap_mm"})
_LISTS = frozenset({"faults", "photos"})
_SETTING = "settings."


def csv_lines(entries: Iterable[Entry], tables: Tables) -> Iterator[str]:
    """Yield the head and one line an entry; the first line carries the mark by which UTF-8 is recognised."""
    names = tuple(tables.derived(build_kinds))
    yield "\ufeff" + _line([*PLAIN, *(_SETTING + name for name in names)])
    for entry in entries:
        fields = entry_json(entry)
        settings = fields.pop("settings")
        cells = [_cell(name, fields.get(name)) for name in PLAIN]
        yield _line([*cells, *(_setting_cell(settings.get(name)) for name in names)])


def read_csv(text: str) -> Iterator[tuple[int, Mapping[str, Any]]]:
    """Yield each line's number and its fields as `read_entry` takes them.

    Raises InputError for a file that has no head of ours.
    """
    lines = csv.reader(io.StringIO(text.removeprefix("\ufeff"), newline=""), strict=True)
    try:
        head = next(lines, [])
        unknown = [name for name in head if name not in PLAIN and not name.startswith(_SETTING)]
        if unknown or "process" not in head:
            raise InputError(
                "CSV",
                (unknown or head or [tr("nothing")])[0],
                tr("the columns {names}", names=", ".join(PLAIN)),
            )
        for cells in lines:
            if any(cells):
                yield lines.line_num, _fields(head, cells)
    except csv.Error as error:
        raise InputError(
            "CSV",
            tr("line {line}: {problem}", line=lines.line_num, problem=error),
            tr("comma-separated values, UTF-8"),
        ) from error


def _line(cells: Iterable[str]) -> str:
    out = io.StringIO()
    csv.writer(out, quoting=csv.QUOTE_ALL, lineterminator="\r\n").writerow(cells)
    return out.getvalue()


def _cell(name: str, value: object) -> str:
    if value is None:
        return ""
    if name in _NUMBERS:
        return repr(value)
    if name == "photos":
        return guarded(json.dumps(value))
    if name in _LISTS:
        assert isinstance(value, list)
        return guarded(";".join(value))
    return guarded(str(value))


def _setting_cell(value: Value | None) -> str:
    """Write a number or a yes as it is, and a text in quotes where it would be read back as one of them."""
    if value is None:
        return ""
    if not isinstance(value, str):
        return json.dumps(value)
    return guarded(value if _plain_value(value) == value else json.dumps(value))


def _fields(head: list[str], cells: list[str]) -> dict[str, Any]:
    fields: dict[str, Any] = {}
    settings: dict[str, Value] = {}
    if len(cells) > len(head):
        return {"line": "more cells than columns"}
    for name, cell in zip(head, cells, strict=False):
        text = unguarded(cell)
        if text == "":
            continue
        if name.startswith(_SETTING):
            settings[name.removeprefix(_SETTING)] = _plain_value(text)
        elif name in _NUMBERS:
            fields[name] = _plain_value(text)
        elif name == "photos":
            fields[name] = _json_or_text(text)
        elif name in _LISTS:
            fields[name] = [each.strip() for each in text.split(";") if each.strip()]
        else:
            fields[name] = text
    return {**fields, "settings": settings}


def _plain_value(text: str) -> Value:
    """Return what a cell means: a number, yes or no, a text in quotes, or the text as it is."""
    value = _json_or_text(text)
    return value if isinstance(value, str | int | float | bool) else text


def _json_or_text(text: str) -> object:
    try:
        return json.loads(text, parse_constant=lambda _: text)
    except (ValueError, RecursionError):
        return text
