"""Entries as one JSON file."""

import json
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from welds.errors import InputError
from welds.language import tr
from welds.logbook.entry import Entry
from welds.logbook.fields import entry_json

SCHEMA = "welds.log/1"


def json_lines(entries: Iterable[Entry]) -> Iterator[str]:
    """Yield the file piece by piece, one entry a line."""
    yield f'{{"schema": "{SCHEMA}", "entries": ['
    comma = "\n"
    for entry in entries:
        yield comma + json.dumps(entry_json(entry))
        comma = ",\n"
    yield "\n]}\n"


def read_json(text: str) -> Iterator[tuple[int, Mapping[str, Any]]]:
    """Yield each entry's place in the file, from 1, and its fields.

    A bare list of entries, as `welds log list --json` prints it, is read as well.
    """
    try:
        value = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError(
            "JSON",
            tr("not JSON ({problem})", problem=error),
            tr('a file with "schema": "{schema}"', schema=SCHEMA),
        ) from error
    if isinstance(value, dict) and value.get("schema") == SCHEMA:
        value = value.get("entries")
    if not isinstance(value, list):
        raise InputError(
            "JSON",
            f"{value!s:.40}",
            tr('a file with "schema": "{schema}", or a list of entries', schema=SCHEMA),
        )
    for place, fields in enumerate(value, 1):
        yield place, fields if isinstance(fields, dict) else {"entry": fields}
