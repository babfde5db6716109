"""A yard's folder to break: a bench, a job, a log with its exports, pictures, and things that are none."""

import contextlib
import io
import os
import shutil
import sys
from dataclasses import dataclass
from pathlib import Path

from tests.hostile.watch import written_paths
from tests.logbook.conftest import BAIT_TANK, MUDGUARD
from welds.bench.templates import USUAL, starting_bench
from welds.cli.main import main
from welds.job.demo import demo_file
from welds.logbook.archive import back_up
from welds.logbook.exporting import export_file
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.reference.tables import Tables

FILES = (
    *("bench.yaml", "torn.yaml", "job.yaml", "yard.db", "yard.csv", "yard.json", "yard.zip", "bead.jpg"),
    *("shopping.txt", "empty", "folder", "new.out", "no/such/folder.out", "/dev/null", "/dev/full", "."),
)
"""What stands in the folder, and names of what does not."""


@dataclass(frozen=True)
class Answer:
    """What a command left behind."""

    code: int
    out: str
    err: str
    written: frozenset[Path]


class Box:
    """Folders of its own: `work`, where the person stands, and `home` with their configuration and data."""

    def __init__(self, folder: Path, tables: Tables) -> None:
        self.work, self.home, self._pristine = folder / "work", folder / "home", folder / "pristine"
        _fill(self._pristine, tables)
        self.fresh()

    def fresh(self) -> None:
        """Put everything back to how it was."""
        for folder in (self.work, self.home):
            shutil.rmtree(folder, ignore_errors=True)
        shutil.copytree(self._pristine, self.work)
        self.home.mkdir()

    def run(self, words: list[str], stdin: bytes = b"") -> Answer:
        """Run one command in the folder, with nothing left over from the one before."""
        out, err, given = (io.TextIOWrapper(io.BytesIO(each), "utf-8") for each in (b"", b"", stdin))
        before, sys.stdin = sys.stdin, given
        try:
            with (
                contextlib.chdir(self.work),
                contextlib.redirect_stdout(out),
                contextlib.redirect_stderr(err),
                written_paths() as written,
            ):
                code = main(words, open_window=_no_window, write_pdf=_write_pdf)
                out.flush(), err.flush()
        finally:
            sys.stdin = before
        said = [stream.buffer.getvalue().decode() for stream in (out, err)]
        return Answer(code, *said, frozenset(written))

    def strays(self, answer: Answer, words: list[str]) -> list[Path]:
        """Return what was written neither in the person's folders nor under a name that was given."""
        named = [self.work / word.rpartition("=")[2] for word in words if word and "\0" not in word]
        places = [(Path(os.path.realpath(each.parent)), each.stem) for each in named if each.stem]
        places += [(path.parent, path.stem) for each in named if (path := Path(os.path.realpath(each))).stem]
        return [path for path in answer.written if not self._is_allowed(path, places)]

    def _is_allowed(self, path: Path, places: list[tuple[Path, str]]) -> bool:
        if path.is_relative_to(self.home) or path == Path(os.devnull):
            return True
        for folder, stem in places:
            if path.parent == folder and path.name.startswith(".welds-") and path.suffix == ".part":
                return True  # the draft of a file that was asked for
            if path.is_relative_to(folder) and path != folder and stem in path.relative_to(folder).parts[0]:
                return True
            if (folder / stem).is_relative_to(path):  # a folder on the way to a file that was asked for
                return True
        return False


def _no_window(_log: str, _lang: str) -> int:
    return 0


def _write_pdf(file: str, *_: object) -> None:
    Path(file).write_bytes(b"%PDF-1.4 made by the test")


def _fill(folder: Path, tables: Tables) -> None:
    from PIL import Image

    folder.mkdir(parents=True)
    (folder / "folder").mkdir()
    (folder / "bench.yaml").write_text(starting_bench(USUAL), encoding="utf-8")
    (folder / "torn.yaml").write_text("machines: [{name: ", encoding="utf-8")
    shutil.copy(demo_file(), folder / "job.yaml")
    (folder / "shopping.txt").write_text("screws\n", encoding="utf-8")
    (folder / "empty").touch()
    Image.new("RGB", (8, 8), "red").save(folder / "bead.jpg")
    with open_logbook(str(folder / "yard.db")) as log:
        log.add_all([read_entry(fields, tables).entry for fields in (BAIT_TANK, MUDGUARD)])
        export_file(log, folder / "yard.csv", tables)
        export_file(log, folder / "yard.json", tables)
        back_up(log, folder / "yard.zip")
