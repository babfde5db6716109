"""Comma-separated values as a spreadsheet opens them, with nothing in them that it would run."""

import csv
import io
import re
from collections.abc import Iterable

_DANGEROUS = "=+\\-@\uff1d\uff0b\uff0d\uff20"
_RISKY = re.compile(f"(^|[;,|\\t\\r\\n])([ \"]*)(?=[{_DANGEROUS}'])")
_GUARDED = re.compile(f"(^|[;,|\\t\\r\\n])([ \"]*)'(?=[{_DANGEROUS}'])")
"""A formula begins a cell, or stands behind a character that some spreadsheet takes for the end of one."""
_NUMBER = re.compile(r"[+-]?[0-9]+(\.[0-9]+)?(e[+-]?[0-9]+)?")


def guarded(text: str) -> str:
    """Return the text with an apostrophe before everything that could begin a formula."""
    return _RISKY.sub(r"\1\2'", text)


def unguarded(text: str) -> str:
    """Return what `guarded` was given."""
    return _GUARDED.sub(r"\1\2", text)


def csv_text(rows: Iterable[Iterable[object]]) -> str:
    """Return the rows, a line each; words are guarded, numbers stay numbers."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerows([_cell(value) for value in row] for row in rows)
    return out.getvalue()


def _cell(value: object) -> str:
    text = "" if value is None else str(value)
    return text if _NUMBER.fullmatch(text) else guarded(text)
