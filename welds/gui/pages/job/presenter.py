"""The job page's state: which file is open, its plan or its faults."""

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from welds.advice.equipment import GENERIC
from welds.errors import WeldsError
from welds.gui.engine import Engine
from welds.gui.jobs.runner import JobRunner
from welds.gui.pages.log.desk import LogDesk
from welds.job.demo import demo_file
from welds.job.faults import JobFileError
from welds.quantities.units import Units

if TYPE_CHECKING:
    from welds.job.past import Past
    from welds.job.plan import JobPlan
    from welds.logbook.logbook import Logbook


@dataclass(frozen=True, slots=True)
class Opened:
    """A file that was read: its plan, or what is wrong with it, one line a fault."""

    path: Path
    plan: "JobPlan | None"
    faults: tuple[str, ...]

    @property
    def is_demo(self) -> bool:
        """True for the program's own job, which is not to be written into."""
        return self.path == demo_file()


class JobPresenter(QObject):
    """Reads and plans off the window's thread; `opened` brings plan or faults, `units_changed` new words."""

    opened = Signal(object)
    busy_changed = Signal(bool)
    units_changed = Signal()

    def __init__(
        self, engine: Engine, units: Units, parent: QObject | None = None, desk: LogDesk | None = None
    ) -> None:
        super().__init__(parent)
        self.engine, self.units, self._desk = engine, units, desk
        self.shown: Opened | None = None
        self.jobs = JobRunner(self)
        self.jobs.finished.connect(self._on_planned)
        self.jobs.failed.connect(self._on_failed)

    def open_demo(self) -> None:
        """Open the job that comes with the program."""
        self.open(demo_file())

    def open(self, path: Path) -> None:
        """Read a job file and plan it for the machine in use, with what the log says where there is one."""
        self.busy_changed.emit(True)
        if self._desk is None or not self._desk.is_worth_opening:
            self._plan(path)
            return
        tables, past = self.engine.tables, self.engine.past
        is_learning = past is not None and past.is_on

        def read(log: "Logbook") -> "Past":
            from welds.job.job_file import load_job
            from welds.job.past import read_past

            return read_past(load_job(path, tables), log, tables, is_learning=is_learning)

        # Faults of the file come out once more, with their lines, when it is planned.
        self._desk.ask(read, lambda found: self._plan(path, found), "job", lambda _error: self._plan(path))

    def _plan(self, path: Path, past: "Past | None" = None) -> None:
        tables = self.engine.tables
        equipment = self.engine.bench.equipment if self.engine.bench is not None else GENERIC

        def work() -> Opened:
            from welds.job.job_file import load_job
            from welds.job.plan import plan_job

            try:
                return Opened(path, plan_job(load_job(path, tables), tables, equipment, past), ())
            except JobFileError as error:
                first = f"{path.name}, line {error.line}: {error.problem}"
                others = (f"{path.name}, line {each.line}: {each.problem}" for each in error.others)
                return Opened(path, None, (first, *others))
            except WeldsError as error:
                return Opened(path, None, (str(error),))

        self.jobs.submit(work)

    def open_again(self) -> None:
        """Read the same file anew, after it was edited."""
        if self.shown is not None:
            self.open(self.shown.path)

    def set_units(self, units: Units) -> None:
        """Show lengths in other units."""
        self.units = units
        if self.shown is not None:
            self.units_changed.emit()

    def _on_planned(self, opened: Opened) -> None:
        self.shown = opened
        self.busy_changed.emit(False)
        self.opened.emit(opened)

    def _on_failed(self, error: Exception) -> None:
        self.busy_changed.emit(False)
        raise error
