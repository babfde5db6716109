"""The one way to the database: transactions, retries, and every fault of it in plain words."""

import time
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import DBAPIError, NoSuchModuleError, SQLAlchemyError
from sqlalchemy.pool import QueuePool

from welds.errors import LogbookUnavailableError
from welds.language import mark, tr
from welds.logbook.offers import OPEN_READ_ONLY, RESTORE, TRY_AGAIN
from welds.logbook.places import Place

T = TypeVar("T")

BUSY_S = 15.0
"""How long a bench waits for another one that is writing."""

ATTEMPTS, FIRST_PAUSE_S = 4, 0.1
"""A dropped connection is tried again after 0.1, 0.2 and 0.4 s."""

_PATIENCE = {
    "connect_timeout": 4,
    "keepalives_idle": 5,
    "keepalives_interval": 2,
    "keepalives_count": 3,
    "tcp_user_timeout": 10_000,
}
"""A server that has gone silent is given up after some ten seconds, not after a quarter of an hour."""

_SQLITE = (
    ("SQLITE_FULL", mark("the disk is full"), (TRY_AGAIN,)),
    ("SQLITE_READONLY", mark("it cannot be written: the file or its folder is read-only"), (OPEN_READ_ONLY,)),
    ("SQLITE_CANTOPEN", mark("it cannot be opened: folder or permission"), (OPEN_READ_ONLY, TRY_AGAIN)),
    ("SQLITE_CORRUPT", mark("the file is damaged"), (RESTORE, OPEN_READ_ONLY)),
    ("SQLITE_NOTADB", mark("the file is not a log"), (RESTORE,)),
    ("SQLITE_BUSY", mark("another bench has been writing for too long"), (TRY_AGAIN,)),
    ("SQLITE_LOCKED", mark("another bench has been writing for too long"), (TRY_AGAIN,)),
    ("SQLITE_IOERR", mark("the disk does not read or write"), (TRY_AGAIN, RESTORE)),
    ("SQLITE_PERM", mark("permission is missing"), (OPEN_READ_ONLY,)),
)


class Store:
    """A database with read and write transactions; safe to use from several threads."""

    def __init__(self, place: Place, *, is_read_only: bool = False, is_immutable: bool = False) -> None:
        self.place = place
        self.is_read_only = is_read_only
        self.engine = _engine(place, is_read_only, is_immutable)

    @property
    def is_file(self) -> bool:
        """True for a log in a file, false for one on a server."""
        return self.place.path is not None

    def read(self, work: Callable[[Connection], T]) -> T:
        """Run the work in a transaction that reads."""
        return self._tried(lambda: self._in_transaction(work, writes=False))

    def write(self, work: Callable[[Connection], T]) -> T:
        """Run the work in one transaction: all of it or nothing; it may be run again after a lost connection.

        So the work has to be such that doing it twice is the same as doing it once.
        """
        if self.is_read_only:
            raise LogbookUnavailableError(self.place.name, tr("it was opened to read only"))
        return self._tried(lambda: self._in_transaction(work, writes=True))

    def close(self) -> None:
        """Let go of every connection."""
        self.engine.dispose()

    def _in_transaction(self, work: Callable[[Connection], T], *, writes: bool) -> T:
        with self.engine.connect().execution_options(writes=writes) as connection, connection.begin():
            return work(connection)

    def _tried(self, attempt: Callable[[], T]) -> T:
        pause = FIRST_PAUSE_S
        for left in reversed(range(ATTEMPTS)):
            try:
                return attempt()
            except SQLAlchemyError as error:
                if left == 0 or not self._may_pass(error):
                    raise unavailable(self.place, error) from error
            time.sleep(pause)
            pause *= 2.0
        raise AssertionError("the last attempt returns or raises")

    def _may_pass(self, error: SQLAlchemyError) -> bool:
        """Say whether the same again may work: a connection to a server was lost or refused."""
        if self.is_file or not isinstance(error, DBAPIError):
            return False
        state = getattr(error.orig, "sqlstate", None)
        return error.connection_invalidated or state is None or state[:2] in ("08", "40", "57")


def unavailable(place: Place, error: Exception) -> LogbookUnavailableError:
    """Return the error in plain words, with what can be done."""
    if isinstance(error, LogbookUnavailableError):
        return error
    cause = getattr(error, "orig", None) or error
    if place.path is None:
        first = (str(cause).strip().splitlines() or [type(cause).__name__])[0]
        return LogbookUnavailableError(
            place.name, tr("the server cannot be used ({problem})", problem=first), (TRY_AGAIN,)
        )
    name = getattr(cause, "sqlite_errorname", "")
    for start, problem, offers in _SQLITE:
        if name.startswith(start):
            return LogbookUnavailableError(place.name, tr(problem), offers)
    return LogbookUnavailableError(place.name, str(cause), (TRY_AGAIN,))


def _engine(place: Place, is_read_only: bool, is_immutable: bool) -> Engine:
    if place.path is None:
        assert place.url is not None
        try:
            engine = create_engine(place.url, pool_pre_ping=True, connect_args=_PATIENCE, pool_size=2)
        except (ModuleNotFoundError, NoSuchModuleError) as error:
            raise LogbookUnavailableError(
                place.name, tr("a log on a server needs psycopg: pip install 'welds[shop]'")
            ) from error
        except SQLAlchemyError as error:
            raise LogbookUnavailableError(
                place.name, tr("not an address of a log: {problem}", problem=error)
            ) from error
        return engine
    engine = create_engine(
        "sqlite://", creator=_opener(place.path, is_read_only, is_immutable), poolclass=QueuePool
    )
    event.listen(engine, "begin", _begin)
    return engine


def _opener(path: Path, is_read_only: bool, is_immutable: bool) -> Callable[[], Any]:
    import sqlite3

    mode = "mode=ro" + ("&immutable=1" if is_immutable else "") if is_read_only else "mode=rwc"

    def connect() -> sqlite3.Connection:
        connection = sqlite3.connect(
            f"{path.as_uri()}?{mode}",
            uri=True,
            timeout=BUSY_S,
            isolation_level=None,  # transactions are begun by us
            check_same_thread=False,
        )
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("PRAGMA synchronous = FULL")
        if not is_read_only:
            connection.execute("PRAGMA journal_mode = WAL")
        return connection

    return connect


def _begin(connection: Connection) -> None:
    writes = connection.get_execution_options().get("writes")
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")
