"""Entries in the database: found, read with their pictures, inserted, replaced."""

from collections.abc import Iterable, Sequence

from sqlalchemy import Connection, RowMapping, delete, insert, select, update

from welds.errors import InputError
from welds.language import tr
from welds.logbook.entry import Entry, Photo
from welds.logbook.rows import entry_of, row_of
from welds.logbook.schema import entries, photos

BATCH = 500
"""Rows written or read at once."""


def update_entry(connection: Connection, entry: Entry) -> None:
    """Replace the entry with this number."""
    connection.execute(update(entries).where(entries.c.number == entry.number).values(**row_of(entry)))
    connection.execute(delete(photos).where(photos.c.number == entry.number))
    insert_photos(connection, [(entry.number, entry.photos)])


def entries_by_number(connection: Connection, numbers: Sequence[int]) -> list[Entry]:
    """Return the entries with these numbers, in this order."""
    rows = connection.execute(select(entries).where(entries.c.number.in_(numbers))).mappings().all()
    found = {entry.number: entry for entry in with_photos(connection, rows)}
    return [found[number] for number in numbers if number in found]


def all_entries(connection: Connection) -> Iterable[Entry]:
    """Yield every entry by number, a batch at a time, so that memory stays flat."""
    last = -1
    while True:
        query = select(entries).where(entries.c.number > last).order_by(entries.c.number).limit(BATCH)
        rows = connection.execute(query).mappings().all()
        if not rows:
            return
        yield from with_photos(connection, rows)
        last = rows[-1]["number"]


def find_entry(connection: Connection, name: str | int) -> Entry:
    """Return the entry by number, or by uid or its first characters; InputError else."""
    word = str(name).strip().lower()
    query = select(entries)
    if word.isdigit() and len(word) < 10:
        rows = connection.execute(query.where(entries.c.number == int(word))).mappings().all()
    elif len(word) >= 6 and set(word) <= set("0123456789abcdef-"):
        rows = connection.execute(query.where(entries.c.uid.startswith(word)).limit(2)).mappings().all()
    else:
        raise InputError("entry", name, tr("a number from the list, or the first six characters of its uid"))
    if len(rows) != 1:
        raise InputError("entry", name, tr("an entry of this log; welds log list shows them"))
    return with_photos(connection, rows)[0]


def one_entry(connection: Connection, number: int | None) -> Entry:
    """Return the entry with this number, or raise InputError."""
    row = connection.execute(select(entries).where(entries.c.number == number)).mappings().one_or_none()
    if row is None:
        raise InputError("entry", number, tr("an entry of this log; it may have been removed meanwhile"))
    return with_photos(connection, [row])[0]


def with_photos(connection: Connection, rows: Sequence[RowMapping]) -> list[Entry]:
    """Return the entries of whole rows, each with its pictures."""
    numbers = [row["number"] for row in rows]
    query = select(photos).where(photos.c.number.in_(numbers)).order_by(photos.c.number, photos.c.place)
    found: dict[int, list[Photo]] = {}
    for photo in connection.execute(query).mappings():
        found.setdefault(photo["number"], []).append(Photo(photo["name"], photo["sha256"]))
    return [entry_of(dict(row), found.get(row["number"], ())) for row in rows]


def insert_entries(connection: Connection, new: Sequence[Entry], *, with_numbers: bool = False) -> None:
    """Insert entries with their pictures; under the numbers they carry where that is asked."""
    rows = [row_of(entry) for entry in new]
    if with_numbers:
        for row, entry in zip(rows, new, strict=True):
            row["number"] = entry.number
    connection.execute(insert(entries), rows)
    pictured = [entry for entry in new if entry.photos]
    if not pictured:
        return
    query = select(entries.c.uid, entries.c.number).where(entries.c.uid.in_([each.uid for each in pictured]))
    numbers = {row.uid: row.number for row in connection.execute(query)}
    insert_photos(connection, [(numbers[entry.uid], entry.photos) for entry in pictured])


def insert_photos(connection: Connection, listed: Iterable[tuple[int | None, Iterable[Photo]]]) -> None:
    """Insert the pictures of entries, given by number."""
    rows = [
        {"number": number, "place": place, "name": photo.name, "sha256": photo.sha256}
        for number, each in listed
        for place, photo in enumerate(each)
    ]
    if rows:
        connection.execute(insert(photos), rows)
