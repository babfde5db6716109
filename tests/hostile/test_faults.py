"""Full and read-only disks, kills, clocks that go back, two programs at once: what is promised then."""

import errno
import os
import random
import re
import signal
import subprocess
import sys
import time
from datetime import date, timedelta
from pathlib import Path

import pytest

from tests.hostile.sites import OLD_BENCH, refusal, writers
from tests.logbook.conftest import BAIT_TANK
from welds.bench.keep import BEFORE, LAST_GOOD, own_bench, save_bench
from welds.bench.templates import USUAL, starting_bench
from welds.errors import FileUnavailableError, LogbookUnavailableError
from welds.logbook.browse import page
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.logbook.places import place_of
from welds.logbook.ring import KEPT, backups_of
from welds.reference.whole_file import write_whole

ROOT = Path(__file__).parents[2]
OWN_WAYS = {
    "cli/output.py": "sees whether a file can be written, writes nothing",
    "logbook/archive.py": "inside a file that is lent",
    "logbook/photos.py": "thumbnails, drawn again",
    "logbook/restoring.py": "a log beside the log",
}
"""Modules that write a file by other means than `whole_file`, and why nothing can be lost by it."""


def contents(folder: Path) -> dict[str, bytes]:
    return {str(each): each.read_bytes() for each in sorted(folder.rglob("*")) if each.is_file()}


def test_files_are_written_in_one_place_only():
    found = set()
    writing = re.compile(r"\.write_(text|bytes)\(|copyfile\(|open\([^)]*[\"'][wxa]b?[\"']")
    for file in (ROOT / "welds").rglob("*.py"):
        if writing.search(file.read_text(encoding="utf-8")):
            found.add(str(file.relative_to(ROOT / "welds")))
    assert found == {*OWN_WAYS, "reference/whole_file.py"}


# ------------------------------------------------------------------------------------ full, read-only disk


def refuse_flush(number, patch):
    def refuse(_handle):
        raise OSError(number, os.strerror(number))

    patch.setattr("welds.reference.whole_file.os.fsync", refuse)


def refuse_opening(number, patch):
    opened = Path.open

    def open_or_refuse(path, mode="r", *rest, **named):
        if path.suffix == ".part":
            raise OSError(number, os.strerror(number))
        return opened(path, mode, *rest, **named)

    patch.setattr(Path, "open", open_or_refuse)


def test_no_write_takes_the_old_file_with_it(tmp_path, tables, qapp, monkeypatch):
    monkeypatch.setattr("welds.reference.load.load_tables", lambda folder=None: tables)
    sites = writers(tmp_path / "disk", tmp_path / "log", tables)
    before = contents(tmp_path / "disk")
    harms = ((refuse_flush, errno.ENOSPC), (refuse_opening, errno.ENOSPC), (refuse_opening, errno.EROFS))
    for harm, number in harms:
        with pytest.MonkeyPatch.context() as patch:
            harm(number, patch)
            for name, (_, write) in sites.items():
                told = refusal(write)
                assert os.strerror(number) in told or told == "exit 4", name
                assert "\n" not in told
        assert contents(tmp_path / "disk") == before


@pytest.mark.slow
@pytest.mark.skipif(sys.platform != "linux", reason="mounts a small disk of its own")
def test_the_same_on_a_disk_that_is_really_full_and_then_read_only(tmp_path, tmp_path_factory):
    code = f"""
import os, subprocess, sys
sys.path.insert(0, {str(ROOT)!r})
os.environ["QT_QPA_PLATFORM"] = "offscreen"
from pathlib import Path
disk = Path({str(tmp_path)!r})
if subprocess.run(["mount", "-t", "tmpfs", "-o", "size=3m", "none", str(disk)]).returncode:
    sys.exit(77)
from tests.hostile.sites import refusal, writers
from tests.hostile.test_faults import contents
from welds.reference import load
tables = load.load_tables()
load.load_tables = lambda folder=None: tables  # read once
sites = writers(disk, Path({str(tmp_path_factory.mktemp("log"))!r}), tables)
before = contents(disk)
with open(disk / "filler", "wb", buffering=0) as filler:
    for size in (65536, 512, 1):
        try:
            while True:
                filler.write(b"x" * size)
        except OSError:
            pass
def try_all(word):
    for name, (file, write) in sites.items():
        told = refusal(write)
        assert word in told or told == "exit 4", (name, told)
    assert {{name: old for name, old in contents(disk).items() if "filler" not in name}} == before
try_all("No space left")
(disk / "filler").unlink()
for file, write in sites.values():
    assert refusal(write) == ""
before = contents(disk)
subprocess.run(["mount", "-o", "remount,ro", str(disk)], check=True)
try_all("Read-only file system")
"""
    command = [
        "unshare",
        "--mount",
        *(["--map-root-user"] if os.geteuid() else []),
        sys.executable,
        "-P",
        "-c",
        code,
    ]
    done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=120)
    if done.returncode == 77 or "unshare" in done.stderr:
        pytest.skip("no small disk can be mounted here")
    assert done.returncode == 0, done.stderr


def test_a_link_stays_a_link_and_modes_stay(tmp_path):
    real, link = tmp_path / "real.yaml", tmp_path / "link.yaml"
    real.write_text("old")
    real.chmod(0o600)
    link.symlink_to(real)
    write_whole(link, "new")
    assert link.is_symlink()
    assert (real.read_text(), real.stat().st_mode & 0o777) == ("new", 0o600)


@pytest.mark.parametrize("name", ["no/such/folder", "a\0b", "x" * 300, "folder"])
def test_a_name_that_cannot_be_written(tmp_path, name):
    (tmp_path / "folder").mkdir()
    with pytest.raises(FileUnavailableError) as caught:
        write_whole(tmp_path / name, "x")
    assert "\n" not in str(caught.value)
    assert [each.name for each in tmp_path.iterdir()] == ["folder"]


# --------------------------------------------------------------------------------------------------- kills


@pytest.mark.slow
@pytest.mark.skipif(not hasattr(os, "fork"), reason="kills a copy of this program")
def test_a_bench_killed_while_it_is_saved_is_the_old_or_the_new_one(tmp_path, tables):
    file = tmp_path / "bench.yaml"
    texts = [starting_bench([OLD_BENCH]), starting_bench(USUAL)]
    save_bench(texts[0], tables, file)
    chance = random.Random(1)
    for _ in range(int(os.environ.get("WELDS_KILLS", "12"))):
        child = os.fork()
        if child == 0:
            try:
                while True:
                    for text in texts:
                        save_bench(text, tables, file)
            finally:
                os._exit(1)
        time.sleep(chance.uniform(0.0, 0.08))
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        assert file.read_text(encoding="utf-8") in texts
        for name in (BEFORE, LAST_GOOD):
            assert not (tmp_path / name).exists() or (tmp_path / name).read_text(encoding="utf-8") in texts
        assert own_bench(tables, file).trouble == ""


# ------------------------------------------------------------------------------------------ two at once


def start(code: str) -> subprocess.Popen:
    head = f"import sys; sys.path.insert(0, {str(ROOT)!r})\nfrom pathlib import Path\n"
    return subprocess.Popen([sys.executable, "-P", "-c", head + code], stderr=subprocess.PIPE, text=True)


def finish(*programs: subprocess.Popen) -> None:
    for each in programs:
        _, said = each.communicate(timeout=120)
        assert each.returncode == 0, said


@pytest.mark.slow
def test_two_programs_that_save_the_bench_leave_one_of_the_two(tmp_path, tables):
    file = tmp_path / "bench.yaml"
    code = f"""
from welds.bench.keep import save_bench
from welds.bench.templates import starting_bench
from welds.reference.load import load_tables
tables, text = load_tables(), starting_bench(NAMES)
for _ in range(40):
    save_bench(text, tables, Path({str(file)!r}))
"""
    finish(*(start(code.replace("NAMES", repr(names))) for names in ([OLD_BENCH], list(USUAL))))
    texts = [starting_bench([OLD_BENCH]), starting_bench(USUAL)]
    assert file.read_text(encoding="utf-8") in texts
    assert (tmp_path / BEFORE).read_text(encoding="utf-8") in texts
    assert not list(tmp_path.glob("*.part"))


@pytest.mark.slow
def test_a_window_and_a_command_line_write_one_log_and_send_what_waits_once(tmp_path, tables, monkeypatch):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    path = str(tmp_path / "yard.db")
    with open_logbook(path) as log:
        for n in range(10):  # what two programs find waiting at the same moment
            waiting = read_entry({**BAIT_TANK, "notes": f"waits {n}"}, tables)
            log.outbox.keep(waiting, LogbookUnavailableError("yard.db", "was away"))
        code = f"""
from tests.logbook.conftest import BAIT_TANK
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.reference.load import load_tables
tables = load_tables()
with open_logbook({path!r}) as log:
    log.send_waiting()
    for n in range(40):
        log.add(read_entry({{**BAIT_TANK, "notes": f"NAME {{n}}"}}, tables))
"""
        finish(*(start(code.replace("NAME", name)) for name in ("window", "command line")))
        notes = sorted(entry.notes for entry in page(log, limit=1000).entries)
        assert notes == sorted(
            [
                *(f"waits {n}" for n in range(10)),
                *(f"{w} {n}" for w in ("window", "command line") for n in range(40)),
            ]
        )
        assert len(log.outbox) == 0


# -------------------------------------------------------------------------------------- clocks that go back


def test_the_backup_just_made_stays_when_the_clock_went_back(tmp_path, tables):
    path, ahead = str(tmp_path / "yard.db"), date(2099, 1, 1)
    open_logbook(path, today=ahead).close()
    for day in range(KEPT + 2):
        open_logbook(path, today=ahead + timedelta(days=day)).close()
    with open_logbook(path, today=date(2026, 3, 3)) as log:
        log.add(read_entry(BAIT_TANK, tables))
    open_logbook(path, today=date(2026, 3, 4)).close()
    names = [each.stem for each in backups_of(place_of(path))]
    assert len(names) == KEPT
    assert names[-1] == "2026-03-04"


def test_welds_keep_their_numbers_and_their_undo_when_the_clock_went_back(tmp_path, tables):
    with open_logbook(str(tmp_path / "yard.db")) as log:
        later = log.add(read_entry({**BAIT_TANK, "made_at": "2099-01-01T10:00:00+00:00"}, tables))
        now = log.add(read_entry({**BAIT_TANK, "made_at": "2026-03-03T10:00:00+00:00"}, tables))
        assert (later.entry.number, now.entry.number) == (1, 2)
        log.undo(now.undo)
        assert [entry.number for entry in page(log).entries] == [1]
