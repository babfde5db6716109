"""How far long work on the log is, told from the log's own thread; and whether the person still wants it."""

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from enum import StrEnum
from threading import Event
from time import monotonic
from typing import TypeVar

from sqlalchemy import Connection

from welds.errors import StoppedError

T = TypeVar("T")

TELL_EVERY_S = 0.1
LOOK_EVERY = 100_000
"""Steps of SQLite's own machine, some milliseconds, after which it is seen that a statement is not wanted."""


class Stage(StrEnum):
    """What is being done."""

    UPDATE = "update"
    READ = "read"
    WRITE = "write"
    SAVE = "save"
    RESTORE = "restore"


ROW_BY_ROW = frozenset({Stage.READ, Stage.SAVE, Stage.RESTORE})
"""What tells of each row is not heard each time."""


@dataclass(frozen=True, slots=True)
class Step:
    """So many of so many are done."""

    stage: Stage
    done: int
    total: int


class Progress:
    """Told by the work how far it is; `stop` may be called from any thread."""

    def __init__(self, tell: Callable[[Step], None] = lambda _step: None) -> None:
        self._tell = tell
        self._stopped = Event()
        self._told_s = 0.0
        self._stage: Stage | None = None

    @property
    def is_stopped(self) -> bool:
        """True once the person has had enough."""
        return self._stopped.is_set()

    @property
    def is_writing(self) -> bool:
        """True while what the person wants kept goes into the log."""
        return self._stage is Stage.WRITE

    def stop(self) -> None:
        """Have the work end as if it had never begun."""
        self._stopped.set()

    def at(self, stage: Stage, done: int, total: int) -> None:
        """Say how far the work is, rows not too often; raise StoppedError where it is no longer wanted."""
        if self.is_stopped:
            raise StoppedError
        now = monotonic()
        if stage not in ROW_BY_ROW or now - self._told_s >= TELL_EVERY_S:
            self._stage, self._told_s = stage, now
            self._tell(Step(stage, done, total))

    def counted(self, stage: Stage, rows: Iterable[T], about: int) -> Iterator[T]:
        """Pass rows on, of which there are about so many, and say how many there were."""
        for done, row in enumerate(rows):
            self.at(stage, done, max(done, about))
            yield row


@contextmanager
def stoppable(connection: Connection, progress: Progress) -> Iterator[None]:
    """Have even a long statement of a log in a file end when the work is stopped."""
    driver = connection.connection.driver_connection
    watch = getattr(driver, "set_progress_handler", None)
    if watch is None:  # a server's statements end by themselves
        yield
        return
    watch(lambda: progress.is_stopped, LOOK_EVERY)
    try:
        yield
    finally:
        watch(None, 0)
