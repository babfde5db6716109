"""Work off the window's thread: plain functions in, a result or an error out."""

from collections.abc import Callable
from contextlib import suppress

from PySide6.QtCore import QObject, QRunnable, QThreadPool, Signal, SignalInstance


class _Job(QRunnable):
    """One call on a pool thread; owns no Qt object."""

    def __init__(self, number: int, work: Callable[[], object], ended: SignalInstance) -> None:
        super().__init__()
        self._number, self._work, self._ended = number, work, ended

    def run(self) -> None:
        result: object = None
        error: Exception | None = None
        try:
            result = self._work()
        except Exception as exception:
            error = exception
        with suppress(RuntimeError):  # the window is gone: nobody waits for the answer any more
            self._ended.emit(self._number, result, error)


class JobRunner(QObject):
    """Runs plain functions on a pool; lives as long as the main window. Only the latest job is delivered."""

    finished = Signal(object)
    failed = Signal(object)
    _ended = Signal(int, object, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._latest = 0
        self._ended.connect(self._on_ended)

    def submit(self, work: Callable[[], object]) -> None:
        """Start `work` on a pool thread; an earlier job's answer is then dropped."""
        self._latest += 1
        self._pool.start(_Job(self._latest, work, self._ended))

    def wait(self, milliseconds: int = 5000) -> bool:
        """Wait for every job to end; False when time ran out."""
        return self._pool.waitForDone(milliseconds)

    def _on_ended(self, number: int, result: object, error: Exception | None) -> None:
        if number != self._latest:
            return
        if error is None:
            self.finished.emit(result)
        else:
            self.failed.emit(error)
