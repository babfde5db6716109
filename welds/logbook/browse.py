"""The log as a table that pages: filter, sort, count, and filters kept under a name."""

import json
from collections.abc import Sequence
from dataclasses import dataclass

from sqlalchemy import ColumnElement, Connection, Select, delete, exists, func, insert, select

from welds.errors import InputError, nearest
from welds.logbook.entry import Entry
from welds.logbook.entry_table import entries_by_number
from welds.logbook.filters import Filter, filter_from_json
from welds.logbook.logbook import Logbook
from welds.logbook.schema import entries, photos, saved_filters
from welds.logbook.times import sortable

SORTS = (
    *("made_at", "number", "process", "metal", "family", "thickness_mm", "joint", "position"),
    *("current_a", "outcome", "machine", "welder"),
)
MOST_AT_ONCE = 10_000
_LAST_OF_DAY = "~"


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
        raise InputError("limit", limit, f"1 to {MOST_AT_ONCE}, from an offset of 0 on")
    column = entries.c["made_on" if sort == "made_at" else sort]
    order = (column.desc(), entries.c.number.desc()) if is_descending else (column, entries.c.number)
    query = _filtered(select(entries.c.number), log, wanted or Filter())
    query = query.order_by(*order).offset(offset).limit(limit)
    found = log.store.read(
        lambda connection: entries_by_number(connection, connection.execute(query).scalars().all())
    )
    return Page(found, offset)


def count(log: Logbook, wanted: Filter | None = None) -> int:
    """Return how many entries fit."""
    query = _filtered(select(func.count()).select_from(entries), log, wanted or Filter())
    return log.store.read(lambda connection: connection.execute(query).scalar_one())


def values_of(log: Logbook, field: str, limit: int = 200) -> list[str]:
    """Return what stands in a text field of the log, for a list to choose from."""
    if field not in ("machine", "welder", "material_lot", "metal", "family"):
        raise InputError("field", field, "machine, welder, material_lot, metal, family")
    column = entries.c[field]
    query = select(column).where(column != "").distinct().order_by(column).limit(limit)
    return log.store.read(lambda connection: list(connection.execute(query).scalars()))


def save_filter(log: Logbook, name: str, wanted: Filter) -> None:
    """Keep a filter under a name; one of that name is replaced."""
    if not 1 <= len(name.strip()) <= 80:
        raise InputError("filter", name, "a name of 1 to 80 characters")
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


def _filtered(query: Select, log: Logbook, wanted: Filter) -> Select:
    """Return the query with every condition of the filter."""
    c = entries.c
    conditions: list[ColumnElement[bool]] = [
        # Joined to nothing, so that no narrower index is taken instead of the one that holds it all.
        c[name].concat("") == getattr(wanted, name)
        for name in ("process", "family", "joint", "position", "outcome")
        if getattr(wanted, name)
    ]
    contains = func.instr if log.store.is_file else func.strpos
    conditions += [contains(c.search, word) > 0 for word in wanted.text.casefold().split()]
    conditions += [
        contains(func.lower(c[name]), getattr(wanted, name).lower()) > 0
        for name in ("machine", "welder", "material_lot", "metal")
        if getattr(wanted, name)
    ]
    if wanted.fault:
        conditions.append(contains(c.faults, json.dumps(wanted.fault)) > 0)
    if wanted.since:
        conditions.append(c.made_on >= sortable(wanted.since))
    if wanted.until:
        end = wanted.until + _LAST_OF_DAY if len(wanted.until) == 10 else sortable(wanted.until)
        conditions.append(c.made_on <= end)
    for column, low, high in (
        (c.thickness_mm, wanted.thickness_min_mm, wanted.thickness_max_mm),
        (c.current_a, wanted.current_min_a, wanted.current_max_a),
    ):
        if low is not None:
            conditions.append(column >= low)
        if high is not None:
            conditions.append(column <= high)
    if wanted.has_photos is not None:
        pictured = exists().where(photos.c.number == c.number)
        conditions.append(pictured if wanted.has_photos else ~pictured)
    return query.where(*conditions)
