"""One piece of work at a time off the window's thread; of those that wait only the newest is done."""

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from welds.gui.jobs.runner import JobRunner

Work = Callable[[], object]


class NewestRunner(QObject):
    """Keeps the window free while a slider moves: what was overtaken before it began is never begun."""

    answered = Signal(object)
    failed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = JobRunner(self)
        self._jobs.finished.connect(self._on_finished)
        self._jobs.failed.connect(self._on_failed)
        self._is_busy = False
        self._next: Work | None = None
        self._is_stopped = False

    @property
    def is_overtaken(self) -> bool:
        """True where newer work waits; may be read from the work itself."""
        return self._next is not None

    @property
    def is_busy(self) -> bool:
        """True while work is under way."""
        return self._is_busy

    def ask(self, work: Work) -> None:
        """Do this as soon as what is under way has ended, unless something newer comes."""
        if self._is_stopped:
            return
        if self._is_busy:
            self._next = work
            return
        self._is_busy = True
        self._jobs.submit(work)

    def stop(self) -> bool:
        """Begin nothing more and wait for what is under way; False when time ran out."""
        self._is_stopped, self._next = True, None
        return self._jobs.wait()

    def _on_finished(self, result: object) -> None:
        self._go_on()
        self.answered.emit(result)

    def _on_failed(self, error: Exception) -> None:
        self._go_on()
        self.failed.emit(error)

    def _go_on(self) -> None:
        self._is_busy = False
        work, self._next = self._next, None
        if work is not None:
            self.ask(work)
