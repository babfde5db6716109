"""A filter as conditions of a query, put so that a long log is looked through quickly."""

import json
from collections.abc import Callable, Iterator, Sequence
from typing import Any

from sqlalchemy import ColumnElement, Connection, false, func, select, text

from welds.logbook.filters import Filter
from welds.logbook.schema import entries, photos
from welds.logbook.times import sortable
from welds.logbook.values import values_in

MOST_VALUES = 1000
"""A column with more values than this is looked through itself, not the list of its values."""

MOST_RARE = 2000
"""Words that fewer entries hold are found by the index of words; others are met soon in any order."""

MOST_RUNS = 32
RUN = 3
_LAST_OF_DAY = "~"
c = entries.c


def conditions(
    connection: Connection, wanted: Filter, *, for_count: bool = False
) -> list[ColumnElement[bool]]:
    """Return what has to hold for an entry to fit."""
    is_file = connection.dialect.name == "sqlite"
    is_narrow = for_count and len({name.partition("_")[0] for name in wanted.as_json()}) == 1

    def column(name: str) -> ColumnElement[Any]:
        return c[name] if is_narrow or not is_file else looked_through(c[name])

    found: list[ColumnElement[bool]] = [
        column(name) == getattr(wanted, name)
        for name in ("process", "family", "joint", "position", "outcome")
        if getattr(wanted, name)
    ]
    contains = func.instr if is_file else func.strpos
    for name in ("machine", "welder", "material_lot", "metal"):
        part = getattr(wanted, name)
        if not part:
            continue
        values = values_in(connection, name, MOST_VALUES + 1)
        if len(values) > MOST_VALUES:
            found.append(contains(func.lower(c[name]), part.lower()) > 0)
        else:
            fitting = [value for value in values if part.casefold() in value.casefold()]
            found.append(column(name).in_(fitting) if fitting else false())
    words = wanted.text.casefold().split()
    if is_file and (numbers := _holders(connection, words)) is not None:
        found.append(c.number.in_(numbers))
    found += [contains(c.search, word) > 0 for word in words]
    if wanted.fault:
        found.append(contains(c.faults, json.dumps(wanted.fault)) > 0)
    return [*found, *_ranges(wanted, column), *_pictured(wanted)]


def looked_through(column: ColumnElement[Any]) -> ColumnElement[Any]:
    """Return the column so that SQLite takes no narrow index for it, but the one that holds all columns.

    With other conditions or another order a narrow index costs a look into the table for each of its entries.
    """
    return func.coalesce(column, None)


def _ranges(wanted: Filter, column: Callable[[str], ColumnElement[Any]]) -> Iterator[ColumnElement[bool]]:
    if wanted.since:
        yield c.made_on >= sortable(wanted.since)
    if wanted.until:
        end = wanted.until + _LAST_OF_DAY if len(wanted.until) == 10 else sortable(wanted.until)
        yield c.made_on <= end
    for name, low, high in (
        ("thickness_mm", wanted.thickness_min_mm, wanted.thickness_max_mm),
        ("current_a", wanted.current_min_a, wanted.current_max_a),
    ):
        if low is not None:
            yield column(name) >= low
        if high is not None:
            yield column(name) <= high


def _pictured(wanted: Filter) -> Iterator[ColumnElement[bool]]:
    if wanted.has_photos is not None:
        pictured = c.number.in_(select(photos.c.number))
        yield pictured if wanted.has_photos else ~pictured


def _holders(connection: Connection, words: Sequence[str]) -> list[int] | None:
    """Return the numbers of those that may hold the words; None where these are many, or the words short."""
    runs = dict.fromkeys(word[start : start + RUN] for word in words for start in range(len(word) - RUN + 1))
    if not runs:
        return None
    wanted = " AND ".join('"' + run.replace('"', '""') + '"' for run in list(runs)[:MOST_RUNS])
    query = text("SELECT rowid FROM entry_words WHERE entry_words MATCH :wanted LIMIT :most")
    found = connection.execute(query, {"wanted": wanted, "most": MOST_RARE + 1}).scalars().all()
    return None if len(found) > MOST_RARE else list(found)
