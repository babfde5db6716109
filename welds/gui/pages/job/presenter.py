"""The job page's state: which file is open, its plan or its faults."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
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
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.metals import Metal
from welds.reference.whole_file import write_whole

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
    entries: Mapping[str, Mapping[str, Mapping[str, str]]] = field(default_factory=dict)
    """What the file says, by section and id; empty where it is no YAML."""

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
        self,
        engine: Engine,
        units: Units,
        parent: QObject | None = None,
        desk: LogDesk | None = None,
        usual: Callable[[], Mapping[str, str]] = dict,
    ) -> None:
        super().__init__(parent)
        self.engine, self.units, self._desk, self._usual = engine, units, desk, usual
        self.shown: Opened | None = None
        self._undone_by: list[tuple[Path, str, str]] = []
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

            entries = _entries_of(path)
            try:
                plan = plan_job(load_job(path, tables), tables, equipment, past)
                return Opened(path, plan, (), entries)
            except JobFileError as error:
                first = tr(
                    "{name}, line {line}: {problem}", name=path.name, line=error.line, problem=error.problem
                )
                others = (
                    tr("{name}, line {line}: {problem}", name=path.name, line=each.line, problem=each.problem)
                    for each in error.others
                )
                return Opened(path, None, (first, *others), entries)
            except WeldsError as error:
                return Opened(path, None, (str(error),), entries)

        self.jobs.submit(work)

    def open_again(self) -> None:
        """Read the same file anew, after it was edited."""
        if self.shown is not None:
            self.open(self.shown.path)

    @property
    def metals(self) -> list[str]:
        """Every metal of the catalogue."""
        return [metal.id for metal in self.engine.tables.records(Metal)]

    def begin(self, path: Path) -> str:
        """Write a job with nothing but the usual metal, thickness and process; returns what went wrong."""
        from welds.job.job_edit import new_job

        name = path.stem.replace("-", " ")
        return self._write(path, lambda: new_job(name, self.units.value, self._usual()))

    def keep_copy(self, path: Path) -> str:
        """Write what is open to a file of the person's own and open that; returns what went wrong."""
        shown = self.shown
        if shown is None:
            return ""
        return self._write(path, lambda: shown.path.read_text(encoding="utf-8"))

    def save_entry(self, section: str, key: str, fields: Mapping[str, str], *, is_new: bool = False) -> str:
        """Write one entry and plan again; returns why it was not written, or nothing."""
        from welds.job.job_edit import with_entry
        from welds.job.job_file import faults_of_entry

        if is_new and key in (self.shown.entries.get(section, {}) if self.shown else {}):
            return self.tr("There is a {key} already: choose another short name.").format(key=key)

        def change(text: str) -> str:
            changed = with_entry(text, section, key, fields)
            faults = faults_of_entry(changed, section, key, self.engine.tables)
            if faults:
                raise JobFileError(key, "\n".join(faults), None)
            return changed

        return self._change(change)

    def take_out(self, section: str, key: str) -> str:
        """Take one entry out of the file; returns what went wrong, or nothing."""
        from welds.job.job_edit import without_entry

        return self._change(lambda text: without_entry(text, section, key))

    @property
    def can_undo(self) -> bool:
        """True where a change of the file that is open can be taken back."""
        return self.shown is not None and any(path == self.shown.path for path, *_ in self._undone_by)

    def undo(self) -> str:
        """Take the last change of the open file back; returns why that cannot be done, or nothing."""
        if self.shown is None or not self.can_undo:
            return ""
        place = max(n for n, step in enumerate(self._undone_by) if step[0] == self.shown.path)
        _path, before, after = self._undone_by[place]

        def back(text: str) -> str:
            if text != after:
                problem = self.tr("The file was changed by another program since; nothing was taken back.")
                raise JobFileError("undo", problem, None)
            return before

        trouble = self._rewrite(back)
        if not trouble:
            del self._undone_by[place]
        return trouble

    def _change(self, change: Callable[[str], str]) -> str:
        """Change the file that is open, and keep what stood there before."""
        texts: list[str] = []

        def kept(text: str) -> str:
            texts[:] = [text, change(text)]
            return texts[1]

        trouble = self._rewrite(kept)
        if not trouble and self.shown is not None:
            self._undone_by.append((self.shown.path, texts[0], texts[1]))
        return trouble

    def _rewrite(self, change: Callable[[str], str]) -> str:
        from welds.job.job_edit import write_job

        if self.shown is None or self.shown.is_demo:
            return self.tr("The demo is not changed: keep a copy of it first.")
        try:
            write_job(self.shown.path, change)
        except JobFileError as error:
            return error.problem
        except WeldsError as error:
            return str(error)
        self.open_again()
        return ""

    def _write(self, path: Path, text: Callable[[], str]) -> str:
        try:
            write_whole(path, text())
        except OSError as error:
            return f"{path}: {error.strerror or error}"
        except WeldsError as error:
            return str(error)
        self.open(path)
        return ""

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


def _entries_of(path: Path) -> Mapping[str, Mapping[str, Mapping[str, str]]]:
    from welds.job.job_edit import entries_in

    try:
        return entries_in(path.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError, WeldsError):
        return {}
