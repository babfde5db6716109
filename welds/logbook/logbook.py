"""The log of welds: add, change, remove, undo; every write is acknowledged only when it is on the disk."""

import uuid
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from pathlib import Path

from sqlalchemy import Connection, delete, func, select

from welds.errors import InputError, LogbookUnavailableError
from welds.language import tr
from welds.logbook.changes import Change, change_of, is_done, note_change
from welds.logbook.entry import Entry, Photo
from welds.logbook.entry_table import (
    BATCH,
    find_entry,
    insert_entries,
    one_entry,
    update_entry,
    with_photos,
)
from welds.logbook.fields import Reading
from welds.logbook.outbox import Outbox
from welds.logbook.photos import FolderPhotos, PhotoStore, ServerPhotos, add_photo, suffix_of, thumbnail
from welds.logbook.progress import Progress, Stage
from welds.logbook.rows import fingerprint
from welds.logbook.schema import entries
from welds.logbook.store import Store


@dataclass(frozen=True, slots=True)
class Receipt:
    """What was written, and the token that undoes it; no token where nothing had to be done."""

    entry: Entry
    undo: str | None


class Logbook:
    """One open log. Made by `welds.logbook.opening.open_logbook`; close it after use.

    `notices` are what the person should know although the log works: a backup that failed, entries that wait.
    """

    def __init__(self, store: Store) -> None:
        self.store = store
        self.place = store.place
        self.photos: PhotoStore = FolderPhotos(store.place.photos) if store.is_file else ServerPhotos(store)
        self.outbox = Outbox(store.place.waiting)
        self.notices: list[str] = []

    def __enter__(self) -> "Logbook":
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def close(self) -> None:
        """Let go of the log."""
        self.store.close()

    @property
    def is_read_only(self) -> bool:
        """True where nothing can be written."""
        return self.store.is_read_only

    # ------------------------------------------------------------------------------------------- write

    def add(self, reading: Reading) -> Receipt:
        """Write a new entry with its pictures.

        The same entry twice is written once. Where the log cannot be written, the entry is kept on this
        computer until it can, and LogbookUnavailableError says so.
        """
        if self.is_read_only:
            raise LogbookUnavailableError(self.place.name, tr("it was opened to read only"))
        try:
            entry = self._with_photos(reading)
            return self._add(entry)
        except LogbookUnavailableError as error:
            raise self.outbox.keep(reading, error) from error

    def edit(self, reading: Reading) -> Receipt:
        """Write a changed entry, made from one that was read from here.

        Raises InputError where another bench has changed or removed it meanwhile.
        """
        entry = self._with_photos(reading)
        token = str(uuid.uuid4())
        changed = replace(entry, version=entry.version + 1)

        def work(connection: Connection) -> None:
            if is_done(connection, token):
                return
            before = one_entry(connection, entry.number)
            if before.version != entry.version:
                raise _meanwhile(entry)
            update_entry(connection, changed)
            note_change(connection, token, "edit", changed, before)

        self.store.write(work)
        return Receipt(changed, token)

    def remove(self, number: int) -> Receipt:
        """Take an entry out; its pictures stay until nothing can bring it back."""
        token = str(uuid.uuid4())
        kept: list[Entry] = []

        def work(connection: Connection) -> None:
            if is_done(connection, token):
                return
            before = one_entry(connection, number)
            kept[:] = [before]
            connection.execute(delete(entries).where(entries.c.number == number))
            note_change(connection, token, "remove", before, before)

        self.store.write(work)
        return Receipt(kept[0], token)

    def add_all(self, new: Sequence[Entry], progress: Progress | None = None) -> str:
        """Write many entries at once, all or nothing; return the token that takes them all out again."""
        token = str(uuid.uuid4())
        told = progress or Progress()

        def work(connection: Connection) -> None:
            if is_done(connection, token):
                return
            for start in range(0, len(new), BATCH):
                told.at(Stage.WRITE, start, len(new))
                insert_entries(connection, new[start : start + BATCH])
            note_change(connection, token, "import", None, [entry.uid for entry in new])

        self.store.write(work)
        return token

    def undo(self, token: str) -> str:
        """Take a change back; return the token that takes this back in turn.

        Raises InputError where the change is not known or the entry was changed again since.
        """
        back = str(uuid.uuid4())

        def work(connection: Connection) -> None:
            if not is_done(connection, back):
                self._undo(connection, change_of(connection, token), back)

        self.store.write(work)
        return back

    def send_waiting(self) -> int:
        """Write the entries that were kept on this computer; return how many went in."""
        sent = 0
        for entry in self.outbox.entries():
            for photo in entry.photos:
                content = self.outbox.photos.content(photo.sha256)
                path = self.outbox.photos.path(photo.sha256)
                if content is not None and path is not None:
                    self.photos.put(content, path.suffix)
            with suppress(InputError):  # it went in before, and was changed there since
                self._add(entry)
            self.outbox.drop(entry)
            sent += 1
        return sent

    # -------------------------------------------------------------------------------------------- read

    def get(self, name: str | int) -> Entry:
        """Return the entry with this number or uid; the first characters of a uid will do.

        Raises InputError where there is none, or more than one.
        """
        return self.store.read(lambda connection: find_entry(connection, name))

    def find(self, name: str | int) -> Entry | None:
        """Return the entry as `get` does, or None where that would raise InputError."""
        try:
            return self.get(name)
        except InputError:
            return None

    def count(self) -> int:
        """Return the number of entries."""
        return self.store.read(
            lambda connection: connection.execute(select(func.count()).select_from(entries)).scalar_one()
        )

    def thumbnail(self, photo: Photo) -> bytes | None:
        """Return a small upright JPEG of a picture, or None."""
        return thumbnail(self.photos, photo.sha256, self.place.data / "thumbnails")

    def photo_file(self, photo: Photo) -> Path | None:
        """Return a file of a picture, a copy where it is on a server; None where it is gone."""
        own = self.photos.path(photo.sha256)
        content = None if own else self.photos.content(photo.sha256)
        if content is None:
            return own
        copies = FolderPhotos(self.place.data / "pictures")
        copies.put(content, suffix_of(content, photo.name))
        return copies.path(photo.sha256)

    # ----------------------------------------------------------------------------------------- details

    def _with_photos(self, reading: Reading) -> Entry:
        new = tuple(add_photo(self.photos, each.path, each.name) for each in reading.new_photos)
        return replace(reading.entry, photos=tuple(dict.fromkeys((*reading.entry.photos, *new))))

    def _add(self, entry: Entry) -> Receipt:
        token = str(uuid.uuid4())
        found: list[Entry] = []

        def work(connection: Connection) -> None:
            query = select(entries).where(entries.c.uid == entry.uid)
            row = connection.execute(query).mappings().one_or_none()
            if row is not None:
                there = with_photos(connection, [row])[0]
                if fingerprint(there) != fingerprint(entry):
                    raise InputError(
                        "uid",
                        entry.uid,
                        tr(
                            "an entry the log does not hold yet (it holds {number} with another content: edit"
                            " that, or leave the uid out)",
                            number=there.number,
                        ),
                    )
                found[:] = [there]
                return
            insert_entries(connection, [entry])
            there = find_entry(connection, entry.uid)
            note_change(connection, token, "add", there, None)
            found[:] = [there]

        self.store.write(work)
        known = self.store.read(lambda connection: is_done(connection, token))
        return Receipt(found[0], token if known else None)

    def _undo(self, connection: Connection, change: Change, token: str) -> None:
        if change.what == "import":
            uids = change.uids
            for start in range(0, len(uids), BATCH):
                part = uids[start : start + BATCH]
                connection.execute(delete(entries).where(entries.c.uid.in_(part), entries.c.version == 1))
            note_change(connection, token, "undone", None, uids)
            return
        if change.what == "remove":
            assert change.before is not None
            insert_entries(connection, [change.before], with_numbers=True)
            note_change(connection, token, "add", change.before, None)
            return
        there = (
            connection.execute(select(entries).where(entries.c.uid == change.uid)).mappings().one_or_none()
        )
        if there is None or there["version"] != change.version:
            raise InputError("undo", change.token, tr("a change after which the entry was left alone"))
        now = with_photos(connection, [there])[0]
        if change.what == "add":
            connection.execute(delete(entries).where(entries.c.number == now.number))
            note_change(connection, token, "remove", now, now)
        elif change.what == "edit":
            assert change.before is not None
            earlier = replace(change.before, version=now.version + 1, number=now.number)
            update_entry(connection, earlier)
            note_change(connection, token, "edit", earlier, now)
        else:
            raise InputError("undo", change.token, tr("a change that can be taken back"))


def _meanwhile(entry: Entry) -> InputError:
    return InputError(
        "entry", entry.number, tr("one that no other bench has changed meanwhile; show it again and repeat")
    )
