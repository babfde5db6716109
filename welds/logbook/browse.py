"""The log as a table that pages: filter, sort, count, and filters kept under a name."""

import json
from collections.abc import Sequence
from dataclasses import dataclass

from sqlalchemy import Connection, delete, func, insert, select

from welds.errors import InputError, nearest
from welds.language import tr
from welds.logbook.conditions import conditions, looked_through
from welds.logbook.entry import Entry
from welds.logbook.entry_table import entries_by_number
from welds.logbook.filters import Filter, filter_from_json
from welds.logbook.logbook import Logbook
from welds.logbook.schema import entries, saved_filters
from welds.logbook.values import values_in

SORTS = (
    *("made_at", "number", "process", "metal", "family", "thickness_mm", "joint", "position"),
    *("current_a", "outcome", "machine", "welder"),
)
MOST_AT_ONCE = 10_000


@dataclass(frozen=True, slots=True)
class Page:
    """Some entries of a filtered, sorted log, and where they stand in it."""

    entries: Sequence[Entry]
    offset: int


def page(
    log: Logbook,
    wanted: Filter | None = None,
    *,
    sort: str = "made_at",
    is_descending: bool = True,
    offset: int = 0,
    limit: int = 50,
) -> Page:
    """Return the entries from `offset` on; equals are in the order they were logged."""
    if sort not in SORTS:
        raise InputError("sort", sort, ", ".join(SORTS), nearest(sort, SORTS))
    if offset < 0 or not 1 <= limit <= MOST_AT_ONCE:
        raise InputError("limit", limit, tr("1 to {most}, from an offset of 0 on", most=MOST_AT_ONCE))
    column = entries.c["made_on" if sort == "made_at" else sort]

    def work(connection: Connection) -> list[Entry]:
        fitting = conditions(connection, wanted or Filter())
        is_scan = fitting and log.store.is_file and sort not in ("made_at", "number")
        by = looked_through(column) if is_scan else column
        order = (by.desc(), entries.c.number.desc()) if is_descending else (by, entries.c.number)
        query = select(entries.c.number).where(*fitting).order_by(*order).offset(offset).limit(limit)
        return entries_by_number(connection, connection.execute(query).scalars().all())

    return Page(log.store.read(work), offset)


def count(log: Logbook, wanted: Filter | None = None) -> int:
    """Return how many entries fit."""

    def work(connection: Connection) -> int:
        fitting = conditions(connection, wanted or Filter(), for_count=True)
        return connection.execute(select(func.count()).select_from(entries).where(*fitting)).scalar_one()

    return log.store.read(work)


def values_of(log: Logbook, field: str, limit: int = 200) -> list[str]:
    """Return what stands in a text field of the log, for a list to choose from."""
    if field not in ("machine", "welder", "material_lot", "metal", "family"):
        raise InputError("field", field, "machine, welder, material_lot, metal, family")
    found = log.store.read(lambda connection: values_in(connection, field, limit + 1))
    return [value for value in found if value][:limit]


def save_filter(log: Logbook, name: str, wanted: Filter) -> None:
    """Keep a filter under a name; one of that name is replaced."""
    if not 1 <= len(name.strip()) <= 80:
        raise InputError("filter", name, tr("a name of 1 to 80 characters"))
    row = {"name": name.strip(), "filter": json.dumps(wanted.as_json())}

    def work(connection: Connection) -> None:
        connection.execute(delete(saved_filters).where(saved_filters.c.name == row["name"]))
        connection.execute(insert(saved_filters), row)

    log.store.write(work)


def saved(log: Logbook) -> dict[str, Filter]:
    """Return the kept filters by name."""
    query = select(saved_filters).order_by(saved_filters.c.name)
    rows = log.store.read(lambda connection: connection.execute(query).mappings().all())
    return {row["name"]: filter_from_json(json.loads(row["filter"])) for row in rows}


def forget_filter(log: Logbook, name: str) -> None:
    """Remove a kept filter."""
    query = delete(saved_filters).where(saved_filters.c.name == name)
    log.store.write(lambda connection: connection.execute(query))
