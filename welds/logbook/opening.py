"""Opening a log: look at the file, back it up, bring its tables up to date, send what waited."""

from datetime import date
from pathlib import Path

from welds.errors import InputError, LogbookUnavailableError, WeldsError
from welds.language import tr
from welds.logbook import health, migrate, ring
from welds.logbook.logbook import Logbook
from welds.logbook.offers import CHOOSE, GO_ON, OPEN_READ_ONLY
from welds.logbook.places import Place, place_of
from welds.logbook.progress import Progress, Stage
from welds.logbook.schema import HEAD
from welds.logbook.store import Store


def open_logbook(
    where: str | Place | None = None,
    *,
    read_only: bool = False,
    today: date | None = None,
    progress: Progress | None = None,
) -> Logbook:
    """Return the open log; a new file or an empty database becomes one.

    Raises LogbookUnavailableError, with what can be done, for a log that is damaged, newer than the program,
    not a log, or out of reach. Where its tables are brought up to date, `progress` hears of it and may stop
    it: that is an error too, and the log stays as it was. A large file is neither checked as a whole nor
    backed up here; see `maintain`.
    """
    place = where if isinstance(where, Place) else place_of(where)
    if read_only:
        return _open_to_read(place)
    if place.path is not None:
        health.check_file(place)
        health.check_folder(place)
    store = Store(place)
    try:
        log = Logbook(store)
        _prepare(log, today or date.today(), progress or Progress())
        _send(log)
    except BaseException:
        store.close()
        raise
    return log


def maintain(log: Logbook, today: date | None = None) -> Path | None:
    """Check the whole file and make today's backup, whatever its size; return the backup that was made."""
    if not log.store.is_file or log.is_read_only:
        return None
    health.check_whole(log.store)
    return ring.back_up_today(log.store, today or date.today())


def _prepare(log: Logbook, today: date, progress: Progress) -> None:
    store = log.store
    version = migrate.version_of(store)
    migrate.check_version(store, version)
    is_small = store.place.path is not None and store.place.path.stat().st_size <= health.SMALL_BYTES
    if version is not None and is_small:
        health.check_whole(store)
    if version != HEAD:
        _bring_up_to_date(store, version, today, progress)
    elif is_small:
        try:
            ring.back_up_today(store, today)
        except LogbookUnavailableError as error:
            log.notices.append(tr("no backup today: {problem}", problem=error))


def _bring_up_to_date(store: Store, version: str | None, today: date, progress: Progress) -> None:
    try:
        if version is not None:
            progress.at(Stage.UPDATE, 0, migrate.steps_from(version, is_file=store.is_file))
            ring.back_up_before(store, HEAD, today, progress)
        migrate.migrate(store, progress=progress)
    except WeldsError as error:
        if not progress.is_stopped:
            raise
        problem = tr("bringing it up to date was stopped; the log is as it was")
        raise LogbookUnavailableError(store.place.name, problem, (GO_ON, CHOOSE)) from error


def _send(log: Logbook) -> None:
    try:
        sent = log.send_waiting()
        if sent:
            log.notices.append(
                tr("1 weld that waited on this computer went into the log")
                if sent == 1
                else tr("{count} welds that waited on this computer went into the log", count=sent)
            )
    except LogbookUnavailableError as error:
        log.notices.append(
            tr("{count} welds still wait on this computer: {problem}", count=len(log.outbox), problem=error)
        )


def _open_to_read(place: Place) -> Logbook:
    """Open what can still be read: no check, no migration, no file written, not even beside it."""
    if place.path is not None and not place.path.exists():
        raise LogbookUnavailableError(place.name, tr("there is no log to read"))
    notices = []
    store = Store(place, is_read_only=True)
    try:
        version = migrate.version_of(store)
    except LogbookUnavailableError:
        store.close()
        if place.path is None:
            raise
        store = Store(place, is_read_only=True, is_immutable=True)
        notices.append(tr("read as the file stands: what was written last may be missing"))
        try:
            version = migrate.version_of(store)
        except LogbookUnavailableError as error:
            store.close()
            others = tuple(offer for offer in error.offers if offer != OPEN_READ_ONLY)
            raise LogbookUnavailableError(error.log, error.problem, others) from error
    if version is None:
        store.close()
        raise LogbookUnavailableError(place.name, tr("the log holds nothing yet"))
    if version < HEAD:
        store.close()
        raise InputError(
            "--read-only", place.name, tr("a log at version {version}; open it once to write", version=HEAD)
        )
    log = Logbook(store)
    log.notices += notices
    return log
