"""Making a log what a backup holds."""

import hashlib
import json
import os
import zipfile
import zlib
from collections.abc import Generator, Iterator, Mapping
from contextlib import closing
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, delete, text
from sqlalchemy.exc import IntegrityError

from welds.errors import FileUnavailableError, InputError
from welds.language import tr
from welds.logbook.archive import ENTRIES, MANIFEST, PHOTOS, SCHEMA
from welds.logbook.changes import thawed
from welds.logbook.entry import Entry
from welds.logbook.entry_table import BATCH, insert_entries
from welds.logbook.filters import filter_from_json
from welds.logbook.health import MAGIC
from welds.logbook.logbook import Logbook
from welds.logbook.opening import open_logbook
from welds.logbook.photos import LARGEST_BYTES, FolderPhotos, suffix_of
from welds.logbook.places import Place
from welds.logbook.progress import Progress, Stage
from welds.logbook.schema import changes, entries, saved_filters

LONGEST_BYTES = 1_000_000
"""A line of an entry; its notes take 120 kB at the very most."""
MOST_UNPACKED = 20
"""Pictures, unpacked, to the size of the file: ours are stored as they are; another program may pack them."""
_NOT_WHOLE = (
    *(zipfile.BadZipFile, zlib.error, NotImplementedError, RuntimeError, RecursionError, EOFError),
    *(KeyError, ValueError, TypeError, AttributeError),
)
"""What a damaged or invented archive makes its reader raise."""


def restore(place: Place, file: Path, progress: Progress | None = None) -> tuple[int, Path | None]:
    """Make the log what the backup holds; return the number of entries and where the old log went.

    Takes a file of `back_up` or a dated backup of the ring. What stood in a log that is a file is not
    deleted: it is moved aside under the moment's name. A server's log is replaced in one transaction.
    Raises StoppedError where `progress` is stopped meanwhile; the log is as it was then.
    """
    told = progress or Progress()
    is_database = _start(file) == MAGIC
    if place.path is None:
        if is_database:
            raise InputError(
                "restore", file.name, tr("a file of `welds log backup`: this log is on a server")
            )
        with open_logbook(place) as log:
            return _read(log, file, told), None
    fresh = Place(place.data / "restoring", path=place.path.with_name(f".{place.path.name}.restoring"))
    _clear(fresh)
    try:
        if is_database:
            _copy(file, fresh)
        with open_logbook(fresh) as log:
            log.photos = FolderPhotos(place.photos)
            count = log.count() if is_database else _read(log, file, told)
        return count, _swap(fresh, place)
    finally:
        _clear(fresh)


def _start(file: Path) -> bytes:
    try:
        if file.exists() and not file.is_file():  # a device or a pipe may have no end
            raise InputError("restore", str(file), tr("a file of `welds log backup`, whole"))
        with file.open("rb") as opened:
            return opened.read(len(MAGIC))
    except (OSError, ValueError) as error:
        raise FileUnavailableError(str(file), getattr(error, "strerror", None) or str(error)) from error


def _copy(file: Path, fresh: Place) -> None:
    assert fresh.path is not None
    try:
        fresh.path.parent.mkdir(parents=True, exist_ok=True)
        fresh.path.write_bytes(file.read_bytes())
    except OSError as error:
        raise FileUnavailableError(str(file), error.strerror or str(error)) from error


def _swap(fresh: Place, place: Place) -> Path | None:
    """Put the restored file in the log's place, the old one aside with all that belongs to it."""
    assert fresh.path is not None
    assert place.path is not None
    aside = None
    if place.path.exists():
        stamp = datetime.now().strftime("%Y%m%d-%H%M%S-%f")
        aside = place.path.with_name(f"{place.path.stem}-replaced-{stamp}.db")
        for end in ("-wal", "-shm", ""):
            old = place.path.with_name(place.path.name + end)
            if old.exists():
                os.replace(old, aside.with_name(aside.name + end))
    os.replace(fresh.path, place.path)
    return aside


def _clear(fresh: Place) -> None:
    assert fresh.path is not None
    for end in ("", "-wal", "-shm"):
        fresh.path.with_name(fresh.path.name + end).unlink(missing_ok=True)
    for old in fresh.backups.glob("*"):
        old.unlink()
    if fresh.backups.is_dir():
        fresh.backups.rmdir()


def _read(log: Logbook, file: Path, progress: Progress) -> int:
    wrong = InputError("restore", file.name, tr("a file of `welds log backup`, whole"))
    try:
        with zipfile.ZipFile(file) as archive:
            _refuse_bombs(archive, file.stat().st_size)
            manifest = json.loads(archive.read(MANIFEST))
            if manifest.get("schema") != SCHEMA:
                raise wrong
            for _ in _pictures(archive):
                pass  # all of them are looked at before the first is kept
            count = log.store.write(lambda connection: _replace(log, connection, archive, manifest, progress))
    except OSError as error:
        raise FileUnavailableError(str(file), error.strerror or str(error)) from error
    except _NOT_WHOLE as error:
        raise wrong from error
    return count


def _refuse_bombs(archive: zipfile.ZipFile, size: int) -> None:
    """Raise ValueError where what is held in memory, or all pictures, would be larger than any of ours."""
    pictures = [each.file_size for each in archive.infolist() if each.filename.startswith(PHOTOS)]
    if max(pictures, default=0) > LARGEST_BYTES or sum(pictures) > MOST_UNPACKED * size:
        raise ValueError("pictures too large")
    if archive.getinfo(MANIFEST).file_size > LARGEST_BYTES:
        raise ValueError("manifest too large")


def _replace(
    log: Logbook,
    connection: Connection,
    archive: zipfile.ZipFile,
    manifest: Mapping[str, Any],
    progress: Progress,
) -> int:
    for table in (entries, changes, saved_filters):
        connection.execute(delete(table))
    count, batch = 0, list[Entry]()
    with closing(_entries(archive)) as found:
        for entry in progress.counted(Stage.RESTORE, found, int(manifest["entries"])):
            batch.append(entry)
            count += 1
            if len(batch) == BATCH:
                _insert(connection, batch)
                batch.clear()
    if batch:
        _insert(connection, batch)
    if count != manifest["entries"]:
        raise ValueError("entries are missing")
    for content, suffix in _pictures(archive):
        log.photos.put(content, suffix)
    for name, value in manifest["filters"].items():
        kept = json.dumps(filter_from_json(value).as_json())
        connection.execute(saved_filters.insert(), {"name": name, "filter": kept})
    if not log.store.is_file:
        highest = "SELECT setval(pg_get_serial_sequence('entries', 'number'), max(number)) FROM entries"
        connection.execute(text(highest))
    return count


def _insert(connection: Connection, batch: list[Entry]) -> None:
    try:
        insert_entries(connection, batch, with_numbers=True)
    except IntegrityError as error:
        raise ValueError("an entry twice, or one that cannot be") from error


def _pictures(archive: zipfile.ZipFile) -> Iterator[tuple[bytes, str]]:
    """Yield each picture with the suffix of its kind; ValueError for one that is not what its name says."""
    for name in archive.namelist():
        if name.startswith(PHOTOS):
            content = archive.read(name)
            if hashlib.sha256(content).hexdigest() != name.removeprefix(PHOTOS):
                raise ValueError("a picture was changed")
            yield content, suffix_of(content, name)


def _entries(archive: zipfile.ZipFile) -> Generator[Entry, None, None]:
    with archive.open(ENTRIES) as lines:
        while line := lines.readline(LONGEST_BYTES + 1):
            if len(line) > LONGEST_BYTES:
                raise ValueError("a line too long")
            yield thawed(json.loads(line))
