"""Work off the window's thread, one piece after the other; every answer is delivered, in order."""

from collections.abc import Callable
from typing import Any, Protocol

from PySide6.QtCore import QObject, QRunnable, QThreadPool, Signal, SignalInstance

Work = Callable[[], Any]
Done = Callable[[Any], None]
Failed = Callable[[Exception], None]


class Jobs(Protocol):
    """Whatever runs work and hands back its answer."""

    def submit(self, work: Work, done: Done, failed: Failed, key: str = "") -> None:
        """Run the work; work of the same key that still waits or runs is then no longer of interest."""

    def wait(self) -> None:
        """Wait for what was begun."""


class JobQueue(QObject):
    """Runs plain functions on one thread of its own; lives as long as the main window."""

    _ended = Signal(int, object, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._count = 0
        self._waiting: dict[int, tuple[Done, Failed]] = {}
        self._latest: dict[str, int] = {}
        self._ended.connect(self._on_ended)

    def submit(self, work: Work, done: Done, failed: Failed, key: str = "") -> None:
        """Run the work after all that was submitted before it."""
        self._count += 1
        if key:
            self._waiting.pop(self._latest.get(key, 0), None)
            self._latest[key] = self._count
        number = self._count
        self._waiting[number] = (done, failed)
        self._pool.start(_Job(number, work, lambda: number in self._waiting, self._ended))

    def wait(self) -> None:
        """Wait until everything has been done."""
        self._pool.waitForDone()

    def _on_ended(self, number: int, result: object, error: Exception | None) -> None:
        done, failed = self._waiting.pop(number, (None, None))
        if error is None and done is not None:
            done(result)
        elif error is not None and failed is not None:
            failed(error)


class _Job(QRunnable):
    """One call; left out where nobody waits for its answer any more."""

    def __init__(self, number: int, work: Work, is_wanted: Callable[[], bool], ended: SignalInstance) -> None:
        super().__init__()
        self._number, self._work, self._is_wanted, self._ended = number, work, is_wanted, ended

    def run(self) -> None:
        result: object = None
        error: Exception | None = None
        if self._is_wanted():
            try:
                result = self._work()
            except Exception as exception:
                error = exception
        self._ended.emit(self._number, result, error)
