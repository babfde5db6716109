"""Bringing a log's tables to what this program knows."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import Connection, event, inspect, text

from welds.errors import LogbookUnavailableError
from welds.language import tr
from welds.logbook.offers import CHOOSE, OPEN_READ_ONLY, RESTORE, UPDATE
from welds.logbook.progress import Progress, Stage, stoppable
from welds.logbook.schema import APPLICATION_ID, HEAD
from welds.logbook.store import Store

_LOCK = 0x57454C44
"""Key of the lock on a server, so that two benches do not migrate at once."""

KNOWN = ("0001", "0002", "0003", "0004")

_STATEMENTS = {"0002": (8, 6), "0003": (2, 2), "0004": (17, 12)}
"""How many change the tables of a file, and of a server."""


def version_of(store: Store) -> str | None:
    """Return the migration the log stands at; None for a place that holds nothing yet.

    Raises LogbookUnavailableError for a database that is something else.
    """
    return store.read(lambda connection: _version(connection, store))


def check_version(store: Store, version: str | None) -> None:
    """Raise LogbookUnavailableError for a log that a newer program has written."""
    if version is not None and version not in KNOWN:
        raise LogbookUnavailableError(
            store.place.name,
            tr(
                "the log was written by a newer version of the program (its tables: {version},"
                " known: {known})",
                version=version,
                known=HEAD,
            ),
            (UPDATE, OPEN_READ_ONLY, CHOOSE),
        )


def steps_from(version: str, *, is_file: bool) -> int:
    """Return how many statements bring a log of this version up to date."""
    return sum(counts[not is_file] for later, counts in _STATEMENTS.items() if later > version)


def migrate(store: Store, target: str = HEAD, progress: Progress | None = None) -> None:
    """Bring the tables to the target, in one transaction: all of it or nothing.

    Raises StoppedError, or what a statement says that was cut short, where the person stops it.
    """

    def work(connection: Connection) -> None:
        if not store.is_file:
            connection.execute(text("SELECT pg_advisory_xact_lock(:key)"), {"key": _LOCK})
        version = _version(connection, store)  # again, now that nobody else can change it
        check_version(store, version)
        if version is None or version < target:
            wanted = progress if progress is not None and version is not None else Progress()
            total = steps_from(version or HEAD, is_file=store.is_file)
            with stoppable(connection, wanted), _told(connection, wanted, total):
                _upgrade(connection, target)
        if store.is_file:
            connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")

    store.write(work)


@contextmanager
def _told(connection: Connection, progress: Progress, total: int) -> Iterator[None]:
    """Say before each statement that changes the tables how many went before it."""
    done = 0

    def tell(_connection: Connection, _cursor: object, statement: str, *_more: object) -> None:
        nonlocal done
        if not statement.lstrip().startswith(("SELECT", "PRAGMA")):
            progress.at(Stage.UPDATE, done, total)
            done += 1

    event.listen(connection, "before_cursor_execute", tell)
    try:
        yield
    finally:
        event.remove(connection, "before_cursor_execute", tell)


def _upgrade(connection: Connection, target: str) -> None:
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
    config.set_main_option("path_separator", "os")
    config.attributes["connection"] = connection
    command.upgrade(config, target)


def _version(connection: Connection, store: Store) -> str | None:
    names = set(inspect(connection).get_table_names())
    if "alembic_version" in names and "entries" in names:
        return str(connection.execute(text("SELECT version_num FROM alembic_version")).scalar_one())
    if names and (store.is_file or "entries" in names):
        raise LogbookUnavailableError(
            store.place.name, tr("the database holds something else than a log"), (CHOOSE, RESTORE)
        )
    return None
