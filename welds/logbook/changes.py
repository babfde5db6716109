"""The list of changes, by which each can be taken back."""

import json
from collections.abc import Sequence
from dataclasses import dataclass

from sqlalchemy import Connection, insert, select

from welds.errors import InputError
from welds.language import tr
from welds.logbook.entry import Entry, Photo
from welds.logbook.rows import entry_of, row_of
from welds.logbook.schema import changes
from welds.logbook.times import now


@dataclass(frozen=True, slots=True)
class Change:
    """One change: what was done, to which entry, what it left, and the entry before."""

    token: str
    what: str
    uid: str
    version: int
    before: Entry | None
    uids: tuple[str, ...] = ()


def note_change(
    connection: Connection, token: str, what: str, after: Entry | None, before: Entry | Sequence[str] | None
) -> None:
    """Write the change down, in the transaction that makes it."""
    kept: str | None
    if isinstance(before, Entry):
        kept = json.dumps(frozen(before))
    else:
        kept = None if before is None else json.dumps(list(before))
    connection.execute(
        insert(changes),
        {
            "token": token,
            "made_at": now(),
            "what": what,
            "uid": after.uid if after else "",
            "number": after.number if after else None,
            "version": after.version if after else 0,
            "before": kept,
        },
    )


def is_done(connection: Connection, token: str) -> bool:
    """Say whether the change with this token has been made."""
    query = select(changes.c.id).where(changes.c.token == token)
    return connection.execute(query).scalar_one_or_none() is not None


def change_of(connection: Connection, token: str) -> Change:
    """Return the change, or raise InputError."""
    row = connection.execute(select(changes).where(changes.c.token == token)).mappings().one_or_none()
    if row is None:
        raise InputError("undo", token, tr("the token that a change was answered with"))
    kept = json.loads(row["before"]) if row["before"] else None
    if isinstance(kept, list):
        return Change(token, row["what"], "", 0, None, tuple(kept))
    return Change(token, row["what"], row["uid"], row["version"], thawed(kept) if kept else None)


def frozen(entry: Entry) -> dict[str, object]:
    """Return everything an entry holds as plain values, to be brought back without any table."""
    pictures = [[photo.name, photo.sha256] for photo in entry.photos]
    return {**row_of(entry), "number": entry.number, "photos": pictures}


def thawed(kept: dict[str, object]) -> Entry:
    """Return the entry that `frozen` was given."""
    pictures = kept["photos"]
    assert isinstance(pictures, list)
    return entry_of(kept, tuple(Photo(name, sha256) for name, sha256 in pictures))
