"""The one open log of the window: opened when first needed, read and written off the window's thread."""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QTimer, Signal

from welds.errors import InputError, LogbookUnavailableError, WeldsError
from welds.gui.jobs.queue import Jobs
from welds.logbook.drafts import Drafts
from welds.logbook.offers import TRY_AGAIN
from welds.logbook.places import Place, place_of

if TYPE_CHECKING:
    from welds.logbook.fields import Reading
    from welds.logbook.logbook import Logbook, Receipt
    from welds.logbook.progress import Progress, Step

LongWork = Callable[["Logbook", "Progress"], Any]
Tell = Callable[[WeldsError], None]

AGAIN_MS, LONGEST_MS = 15_000, 240_000
"""A log that is out of reach is tried again by itself after this time, then after twice as long each time."""


class LogDesk(QObject):
    """Hands work to the log and its answers back; a log that cannot be used is told once, with its offers.

    Nothing is opened, and no file made, before something is asked of the log.
    """

    changed = Signal()
    trouble_changed = Signal(object)
    opened = Signal()
    at_work_changed = Signal(object)
    _told = Signal(object)

    def __init__(
        self, jobs: Jobs, draft_jobs: Jobs, address: str = "", parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._jobs, self._draft_jobs = jobs, draft_jobs
        self.place: Place = place_of(address or None)
        self._log: Logbook | None = None
        self._closed_by: LogbookUnavailableError | None = None
        self._is_read_only = False
        self.trouble: LogbookUnavailableError | None = None
        self.remarks: tuple[str, ...] = ()
        self.at_work: Step | None = None
        self._progress: Progress | None = None
        self._told.connect(self._on_told)
        self._again = QTimer(self, singleShot=True, interval=AGAIN_MS)
        self._again.timeout.connect(self._on_again_due)

    @property
    def is_worth_opening(self) -> bool:
        """True where there is something to read, or to worry about, before anything is logged."""
        path = self.place.path
        return path is None or path.exists() or self.place.backups.exists() or self.place.waiting.exists()

    @property
    def is_read_only(self) -> bool:
        """True where the person chose to open a log only to read it."""
        return self._is_read_only

    def ask(
        self,
        work: "Callable[[Logbook], Any]",
        done: Callable[[Any], None],
        key: str = "",
        refused: Tell | None = None,
    ) -> None:
        """Read from the log; a newer question of the same key takes this one's place."""

        def failed(error: Exception) -> None:
            if refused is None:
                self._on_failed(error)
            else:
                self._on_refused(error, refused)

        self._jobs.submit(lambda: work(self._opened()), done, failed, key)

    def ask_long(self, work: "LongWork", done: Callable[[Any], None], refused: Tell) -> None:
        """Read from the log as `ask` does, with work that says how far it is and may be stopped."""
        self.ask(self._telling(work), done, refused=refused)

    def write_long(self, work: "LongWork", done: Callable[[Any], None], refused: Tell) -> None:
        """Change the log as `write` does, with work that says how far it is and may be stopped."""
        self.write(self._telling(work), done, refused)

    def stop_work(self) -> None:
        """Stop what is at work and says how far it is, as if it had never begun."""
        progress = self._progress
        if progress is not None:
            progress.stop()

    def write(self, work: "Callable[[Logbook], Any]", done: Callable[[Any], None], refused: Tell) -> None:
        """Change the log; `refused` hears of whatever kept it from being done."""

        def finished(answer: object) -> None:
            self._on_written()
            done(answer)

        self._jobs.submit(
            lambda: work(self._opened()), finished, lambda error: self._on_refused(error, refused)
        )

    def add(
        self,
        reading: "Reading",
        done: "Callable[[Receipt], None]",
        refused: Callable[[WeldsError, bool], None],
    ) -> None:
        """Log a weld; where that cannot be done, say so and whether it was kept on this computer instead."""
        uid, waiting = reading.entry.uid, self.place.waiting

        def work() -> "Receipt":
            try:
                log = self._opened()
            except LogbookUnavailableError as error:
                from welds.logbook.outbox import Outbox

                raise Outbox(waiting).keep(reading, error) from error
            return log.add(reading)

        def finished(receipt: "Receipt") -> None:
            self._on_written()
            done(receipt)

        def tell(error: WeldsError) -> None:
            refused(error, (waiting / f"{uid}.json").exists())

        self._jobs.submit(work, finished, lambda error: self._on_refused(error, tell))

    def open_again(self, *, read_only: bool = False) -> None:
        """Try once more to open the log, to read only where that is asked."""
        self._is_read_only = read_only
        self._closed_by = None
        self._jobs.submit(self._reopened, self._on_opened, self._on_failed)

    def try_again(self) -> None:
        """Open a log that was out of reach, and write what waits for it."""
        self.open_again(read_only=self._is_read_only)

    def switch(self, address: str) -> None:
        """Use another log from now on."""
        place = place_of(address or None)
        self._is_read_only, self._closed_by = False, None

        def work() -> "Logbook":
            self._close()
            self.place = place
            return self._opened()

        self._jobs.submit(work, self._on_opened, self._on_failed)

    def restore(self, file: Path, done: Callable[[tuple[int, Path | None]], None], refused: Tell) -> None:
        """Make the log what a backup holds; the log that was there is kept aside."""

        def work() -> tuple[int, Path | None]:
            from welds.logbook.restoring import restore

            self._close()
            with self._working() as progress:
                answer = restore(self.place, file, progress)
            self._closed_by = None
            self._opened()
            return answer

        def finished(answer: tuple[int, Path | None]) -> None:
            self._is_read_only = False
            self._set_trouble(None)
            self.changed.emit()
            done(answer)

        self._jobs.submit(work, finished, lambda error: self._on_refused(error, refused))

    def prepare(self, work: Callable[[], None]) -> None:
        """Do something that needs no log after all that was asked so far."""
        self._jobs.submit(work, lambda _none: None, _raise)

    def keep_draft(self, fields: Mapping[str, Any], name: str, refused: Tell) -> None:
        """Keep an entry that is being written, so that a crash cannot take it."""
        drafts = Drafts(self.place)
        self._draft_jobs.submit(
            lambda: drafts.keep(fields, name),
            lambda _name: None,
            lambda error: self._on_refused(error, refused),
            name,
        )

    def drop_draft(self, name: str) -> None:
        """Forget a draft."""
        drafts = Drafts(self.place)
        self._draft_jobs.submit(lambda: drafts.drop(name), lambda _none: None, _raise, name)

    def read_drafts(self, done: Callable[[dict[str, dict[str, Any]]], None]) -> None:
        """Hand over every draft by name."""
        drafts = Drafts(self.place)
        self._draft_jobs.submit(drafts.all, done, _raise)

    def wait(self) -> None:
        """Wait until everything that was asked has been done."""
        self._draft_jobs.wait()
        self._jobs.wait()

    def close(self) -> None:
        """Finish what was begun, but for long work of which nothing is lost, and let go of the log."""
        self._again.stop()
        progress = self._progress
        if progress is not None and not progress.is_writing:
            progress.stop()
        self.wait()
        self._close()

    # ------------------------------------------------------------------------- on the log's own thread

    def _telling(self, work: "LongWork") -> "Callable[[Logbook], Any]":
        def run(log: "Logbook") -> object:
            with self._working() as progress:
                return work(log, progress)

        return run

    @contextmanager
    def _working(self) -> "Iterator[Progress]":
        from welds.logbook.progress import Progress

        self._progress = Progress(self._told.emit)
        try:
            yield self._progress
        finally:
            self._progress = None
            self._told.emit(None)

    def _opened(self) -> "Logbook":
        if self._closed_by is not None:
            raise self._closed_by
        if self._log is None:
            from welds.logbook.opening import open_logbook

            try:
                with self._working() as progress:
                    self._log = open_logbook(self.place, read_only=self._is_read_only, progress=progress)
                self.remarks = tuple(self._log.notices)
                self.opened.emit()
            except InputError as error:
                self._closed_by = LogbookUnavailableError(self.place.name, str(error))
                raise self._closed_by from error
            except LogbookUnavailableError as error:
                self._closed_by = error
                raise
        return self._log

    def _reopened(self) -> "Logbook":
        self._close()
        return self._opened()

    def _close(self) -> None:
        if self._log is not None:
            self._log.close()
            self._log = None

    # --------------------------------------------------------------------------- on the window's thread

    def _on_told(self, step: "Step | None") -> None:
        if step != self.at_work:
            self.at_work = step
            self.at_work_changed.emit(step)

    def _on_opened(self, log: "Logbook") -> None:
        self._set_trouble(None)
        self.changed.emit()
        if log.outbox and not log.is_read_only:
            self._again.start()
        else:
            self._again.setInterval(AGAIN_MS)

    def _on_again_due(self) -> None:
        self._again.setInterval(min(2 * self._again.interval(), LONGEST_MS))
        self.try_again()

    def _on_written(self) -> None:
        if self.trouble is not None:  # it works again: what waits goes in too
            self.try_again()
        self.changed.emit()

    def _on_failed(self, error: Exception) -> None:
        if not isinstance(error, LogbookUnavailableError):
            raise error
        self._set_trouble(error)

    def _on_refused(self, error: Exception, refused: Tell) -> None:
        if not isinstance(error, WeldsError):
            raise error
        if isinstance(error, LogbookUnavailableError):
            self._set_trouble(error)
        refused(error)

    def _set_trouble(self, trouble: LogbookUnavailableError | None) -> None:
        if trouble is not None and TRY_AGAIN in trouble.offers:
            self._again.start()
        else:
            self._again.stop()
        if str(trouble) != str(self.trouble):
            self.trouble = trouble
            self.trouble_changed.emit(trouble)


def _raise(error: Exception) -> None:
    raise error
