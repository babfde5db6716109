"""Dated backups of a log that is a file: one a day, the newest kept, in a folder beside it."""

import os
from contextlib import suppress
from datetime import date
from pathlib import Path

from welds.errors import LogbookUnavailableError
from welds.language import tr
from welds.logbook.offers import TRY_AGAIN
from welds.logbook.places import Place
from welds.logbook.progress import Progress, stoppable
from welds.logbook.store import Store

KEPT = 10
"""Backups in the ring; the oldest goes when one more comes."""


def backups_of(place: Place) -> list[Path]:
    """Return the backups in the ring, newest first."""
    if place.path is None:
        return []
    try:
        return sorted(place.backups.glob("*.db"), reverse=True)
    except OSError:
        return []


def back_up_today(store: Store, today: date) -> Path | None:
    """Make today's backup where there is none yet; return it, or None where nothing had to be done."""
    if store.place.path is None:
        return None
    target = store.place.backups / f"{today.isoformat()}.db"
    return None if target.exists() else _back_up(store, target)


def back_up_before(store: Store, version: str, today: date, progress: Progress | None = None) -> Path | None:
    """Make a backup before the tables are changed."""
    if store.place.path is None:
        return None
    target = store.place.backups / f"{today.isoformat()}-before-{version}.db"
    return None if target.exists() else _back_up(store, target, progress)


def _back_up(store: Store, target: Path, progress: Progress | None = None) -> Path:
    part = target.with_suffix(".part")
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        part.unlink(missing_ok=True)
        with store.engine.connect() as connection, stoppable(connection, progress or Progress()):
            # VACUUM cannot run inside a transaction: straight to the driver.
            connection.connection.cursor().execute("VACUUM INTO ?", (str(part),))
        os.replace(part, target)
    except Exception as error:
        with suppress(OSError):
            part.unlink(missing_ok=True)
        raise LogbookUnavailableError(
            str(target), tr("the backup failed ({problem})", problem=error), (TRY_AGAIN,)
        ) from error
    others = [old for old in backups_of(store.place) if old != target]  # the clock may have gone back
    for old in others[KEPT - 1 :]:
        old.unlink(missing_ok=True)
    return target
