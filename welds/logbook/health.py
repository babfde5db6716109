"""Is the file a log, and is it whole? Looked at before anything is done with it."""

from pathlib import Path

from sqlalchemy import Connection

from welds.errors import LogbookUnavailableError
from welds.language import tr
from welds.logbook.offers import CHOOSE, OPEN_READ_ONLY, RESTORE, TRY_AGAIN
from welds.logbook.places import Place
from welds.logbook.ring import backups_of
from welds.logbook.store import Store

MAGIC = b"SQLite format 3\0"
SMALL_BYTES = 48_000_000
"""Up to this size the whole file is checked at every opening; larger ones by `welds log check`."""


def check_file(place: Place) -> None:
    """Raise LogbookUnavailableError where the file cannot be a log, before it is opened.

    A missing or empty file is a new log, unless backups lie beside it: then a log has gone missing.
    """
    assert place.path is not None
    path = place.path
    try:
        if path.is_dir():
            raise LogbookUnavailableError(place.name, tr("this is a folder, not a log"), (CHOOSE,))
        start = _start(path) if path.exists() else b""
    except OSError as error:
        raise LogbookUnavailableError(place.name, _reason(error), (TRY_AGAIN, CHOOSE)) from error
    if start == b"":
        newest = next(iter(backups_of(place)), None)
        if newest is not None:
            problem = (
                tr("the log is empty, but backups are there (newest: {name})", name=newest.name)
                if path.exists()
                else tr("the log is missing, but backups are there (newest: {name})", name=newest.name)
            )
            raise LogbookUnavailableError(place.name, problem, (RESTORE, CHOOSE))
    elif start != MAGIC and not path.with_name(f"{path.name}-journal").exists():
        # A new log whose first write was cut off has a journal beside it, by which SQLite takes it back.
        raise LogbookUnavailableError(place.name, tr("the file is not a log"), _instead(place))


def check_folder(place: Place) -> None:
    """Make the folder of a new log, or raise LogbookUnavailableError."""
    assert place.path is not None
    try:
        place.path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        problem = tr("its folder cannot be made: {reason}", reason=_reason(error))
        raise LogbookUnavailableError(place.name, problem, (CHOOSE,)) from error


def check_whole(store: Store) -> None:
    """Read the whole file and raise LogbookUnavailableError where a page is damaged or missing."""
    found = store.read(lambda connection: damage_of(connection))
    if found:
        raise LogbookUnavailableError(
            store.place.name, tr("the file is damaged ({found})", found=found), _mending(store.place)
        )


def damage_of(connection: Connection) -> str:
    """Return what is wrong with the file, or an empty text."""
    rows = connection.exec_driver_sql("PRAGMA quick_check(1)").scalars().all()
    return "" if list(rows) == ["ok"] else " ".join(str(rows[0]).split())


def _mending(place: Place) -> tuple[str, ...]:
    has_backups = bool(backups_of(place))
    return (RESTORE, OPEN_READ_ONLY) if has_backups else (OPEN_READ_ONLY, CHOOSE)


def _instead(place: Place) -> tuple[str, ...]:
    return (RESTORE, CHOOSE) if backups_of(place) else (CHOOSE,)


def _start(path: Path) -> bytes:
    with path.open("rb") as file:
        return file.read(len(MAGIC))


def _reason(error: OSError) -> str:
    return error.strerror or str(error)
