"""The bench file of the configuration folder: read with a last good copy behind it, written in one move."""

from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from welds.advice.equipment import GENERIC, Equipment
from welds.bench.bench import Bench
from welds.bench.folders import config_folder
from welds.bench.load import bench_text, read_bench
from welds.errors import BenchFileError, FileUnavailableError
from welds.language import tr
from welds.reference.tables import Tables
from welds.reference.whole_file import write_whole

FILE_NAME, LAST_GOOD, BEFORE = "bench.yaml", "bench.last-good.yaml", "bench.before.yaml"


@dataclass(frozen=True, slots=True)
class Kept:
    """The bench in use, None where there is no file; `trouble` says why it is not what the file now says."""

    bench: Bench | None
    text: str = ""
    trouble: str = ""

    @property
    def equipment(self) -> Equipment:
        """What the advice is given."""
        if self.bench is None:
            return Equipment(GENERIC.machine, trouble=self.trouble)
        return self.bench.equipment(self.trouble)


def bench_file() -> Path:
    """Return where the person's bench is; it need not exist yet."""
    return config_folder() / FILE_NAME


def equipment_for(file: str | None, tables: Tables) -> Equipment:
    """Return the equipment of the named file, else of the person's own bench, else any machine.

    A named file has to be right. The person's own may have mistakes as long as a last good copy is there;
    without one they are raised.
    """
    if file is not None:
        return read_bench(bench_text(Path(file)), file, tables).equipment()
    kept = own_bench(tables)
    if kept.trouble and kept.bench is None:
        raise _error_of(bench_file(), tables)
    return kept.equipment


def own_bench(tables: Tables, file: Path | None = None) -> Kept:
    """Return the person's bench; with mistakes in the file, the last good copy and one line that says so."""
    path = file or bench_file()
    if not _is_there(path):
        return Kept(None)
    try:
        written = bench_text(path)
        bench = read_bench(written, str(path), tables)
    except BenchFileError as error:
        return _last_good(path, error, tables)
    _remember(path, written)
    return Kept(bench, written)


def save_bench(written: str, tables: Tables, file: Path | None = None) -> Kept:
    """Check and write the file in one move, keeping what stood there beside it; return what is now in use.

    Raises BenchFileError for a mistake, before anything is written, and FileUnavailableError for the disk.
    """
    path = file or bench_file()
    bench = read_bench(written, str(path), tables)
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        if path.exists():
            write_whole(path.with_name(BEFORE), path.read_bytes())
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        raise FileUnavailableError(str(path), reason) from error
    write_whole(path, written)
    _remember(path, written)
    return Kept(bench, written)


def _is_there(path: Path) -> bool:
    try:
        return path.exists()
    except OSError:  # a folder that may not be looked into: reading says why
        return True


def _last_good(path: Path, error: BenchFileError, tables: Tables) -> Kept:
    copy = path.with_name(LAST_GOOD)
    try:
        written = bench_text(copy)
        bench = read_bench(written, str(copy), tables)
        day = datetime.fromtimestamp(copy.stat().st_mtime).astimezone().strftime("%Y-%m-%d %H:%M")
    except (BenchFileError, OSError):
        return Kept(None, "", tr("{error}; there is no last good copy, so no machine is stated", error=error))
    return Kept(
        bench, written, tr("{error}; the last good bench, of {day}, stays in use", error=error, day=day)
    )


def _error_of(path: Path, tables: Tables) -> BenchFileError:
    try:
        read_bench(bench_text(path), str(path), tables)
    except BenchFileError as error:
        return error
    return BenchFileError(str(path), tr("was changed while it was read; try again"))


def _remember(path: Path, written: str) -> None:
    """Keep the good text. A folder that takes no copy is no reason to refuse a card."""
    copy = path.with_name(LAST_GOOD)
    with suppress(OSError, ValueError, FileUnavailableError):
        if not copy.exists() or copy.read_text(encoding="utf-8") != written:
            write_whole(copy, written)
