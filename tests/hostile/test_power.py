"""The power goes, or the machine sleeps, in the middle of a write: what is promised then.

A cut of the power is played out, not made: see power.py for what that leaves open.
"""

import os
import random
import shutil
import signal
import subprocess
import sys
import time
from copy import deepcopy
from pathlib import Path

import pytest

from tests.hostile.power import Disk, can_record, record
from tests.hostile.sites import OLD_BENCH, refusal, writers
from tests.logbook.conftest import BAIT_TANK
from welds.bench.templates import USUAL, starting_bench
from welds.errors import LogbookUnavailableError
from welds.logbook.browse import page
from welds.logbook.checking import check_log
from welds.logbook.opening import open_logbook
from welds.logbook.places import Place, place_of
from welds.logbook.ring import backups_of

ROOT = Path(__file__).parents[2]
CUTS = int(os.environ.get("WELDS_CUTS", "15"))

LOGGING = f"""
import os, random
from welds.logbook.fields import changed_entry, read_entry
from welds.logbook.opening import open_logbook
from welds.reference.load import load_tables
tables, chance = load_tables(), random.Random(1)
for opening in range(3):
    with open_logbook("FOLDER/yard.db") as log:
        for n in range(4):
            given = {BAIT_TANK!r} | {{"notes": "n" * chance.randrange(9000)}}
            entry = log.add(read_entry(given, tables)).entry
            os.write(1, f"{{entry.uid}} 1\\n".encode())
            if n == 1:
                log.edit(changed_entry(entry, {{"machine": "changed"}}, tables))
                os.write(1, f"{{entry.uid}} 2\\n".encode())
            if n == 2:
                os.write(1, f"{{entry.uid}} ?\\n".encode())
                log.remove(entry.number)
                os.write(1, f"{{entry.uid}} 0\\n".encode())
"""
CARELESS_LOGGING = f"""
import sqlite3
class Careless(sqlite3.Connection):
    def execute(self, words, *more):
        return super().execute(words.replace("synchronous = FULL", "synchronous = OFF"), *more)
connect = sqlite3.connect
sqlite3.connect = lambda *given, **named: connect(*given, factory=Careless, **named)
{LOGGING}"""
SAVING = f"""
from pathlib import Path
from welds.bench.keep import save_bench
from welds.bench.templates import USUAL, starting_bench
from welds.reference.load import load_tables
tables = load_tables()
for names in (list(USUAL), [{OLD_BENCH!r}], list(USUAL)):
    save_bench(starting_bench(names), tables, Path("FOLDER/bench.yaml"))
"""
CARELESS_SAVING = f"import os\nos.fsync = lambda handle: None\n{SAVING}"

needs_strace = pytest.mark.skipif(
    not can_record(), reason="needs strace (Debian: strace), and leave to use it"
)


# ---------------------------------------------------------------------------------------- the power is cut


def play(code, tmp_path, is_well):
    """Cut the power at many moments of a run; return at how many of them something promised was lost."""
    folder, left = tmp_path / "disk", tmp_path / "left"
    folder.mkdir(exist_ok=True)
    before = Disk(folder)
    steps = record(code.replace("FOLDER", str(folder)), folder)
    assert sum(step.what == "sync" for step in steps) + sum(step.what == "write" for step in steps) > 5
    bad = 0
    for number in range(CUTS):
        chance, disk = random.Random(number), deepcopy(before)
        done = steps[: chance.randint(0, 40 if number % 5 == 0 else len(steps))]  # a file's first moments too
        for step in done:
            disk.do(step)
        disk.leave(left, chance)
        bad += not is_well(left, b"".join(step.content for step in done if step.what == "said").decode())
    return bad


def log_is_well(folder, said):
    """Every acknowledged entry is there in its version or a later one, or gone; log and backups are whole."""
    promised = dict(line.split() for line in said.splitlines())

    def kept(promise):
        uid, version = promise
        if version == "?":  # being removed
            return True
        return uid not in versions if version == "0" else versions.get(uid, 0) >= int(version)

    path = folder / "yard.db"
    try:
        for each in [path, *backups_of(place_of(str(path)))]:
            with open_logbook(Place(folder / "data", path=each)) as log:
                if check_log(log).damage:
                    return False
                versions = {entry.uid: entry.version for entry in page(log, limit=100).entries}
                if each == path and not all(map(kept, promised.items())):
                    return False
    except LogbookUnavailableError:
        return False
    return True


@needs_strace
@pytest.mark.slow
def test_a_cut_of_the_power_takes_no_acknowledged_weld_and_no_backup(tmp_path):
    assert play(LOGGING, tmp_path, log_is_well) == 0


@needs_strace
@pytest.mark.slow
def test_the_same_cuts_find_a_log_that_does_not_wait_for_the_disk(tmp_path):
    assert play(CARELESS_LOGGING, tmp_path, log_is_well) > CUTS / 4


@pytest.fixture
def bench_is_well(tables):
    texts = [starting_bench([OLD_BENCH]), starting_bench(USUAL)]

    def look(folder, _said):
        files = [each for each in folder.iterdir() if each.suffix == ".yaml"]
        return (folder / "bench.yaml") in files and all(each.read_text("utf-8") in texts for each in files)

    return look


@needs_strace
@pytest.mark.slow
@pytest.mark.parametrize(
    ("code", "is_careful"), [(SAVING, True), (CARELESS_SAVING, False)], ids=("ours", "careless")
)
def test_a_cut_of_the_power_leaves_the_old_bench_or_the_new_one(tmp_path, bench_is_well, code, is_careful):
    (tmp_path / "disk").mkdir()
    (tmp_path / "disk" / "bench.yaml").write_text(starting_bench([OLD_BENCH]), encoding="utf-8")
    assert (play(code, tmp_path, bench_is_well) == 0) is is_careful


# ------------------------------------------------------------------------------- what reaches the disk when


def test_every_file_is_on_the_disk_before_it_takes_its_name_and_its_folder_after(
    tmp_path, tables, qapp, monkeypatch
):
    """Watched at the calls themselves, so that it is seen without strace too."""
    monkeypatch.setattr("welds.reference.load.load_tables", lambda folder=None: tables)
    sites = writers(tmp_path / "disk", tmp_path / "log", tables)
    done = []
    sync, replace = os.fsync, os.replace

    def watched_sync(handle):
        path = os.readlink(f"/proc/self/fd/{handle}")
        done.append(("sync", path, os.fstat(handle).st_size))
        sync(handle)

    def watched_replace(old, new):
        done.append(("name", str(old), str(new)))
        replace(old, new)

    monkeypatch.setattr(os, "fsync", watched_sync)
    monkeypatch.setattr(os, "replace", watched_replace)
    for name, (_file, write) in sites.items():
        done.clear()
        assert refusal(write) == ""
        names = [place for place, step in enumerate(done) if step[0] == "name"]
        assert names, name
        for place in names:
            _, part, target = done[place]
            assert done[place - 1] == ("sync", part, os.path.getsize(target)), name
            assert done[place + 1][:2] == ("sync", os.path.dirname(target)), name


# --------------------------------------------------------------------------------------- the machine sleeps

SLEEPING = """
import os, signal, sys, time
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QApplication
from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.gui import pdf
from welds.quantities.units import Units
from welds.reference.load import load_tables

now = time.time

def asleep_before(call):
    def then(*given):
        if time.time is now:
            os.kill(os.getpid(), signal.SIGSTOP)
            time.time = lambda: now() + 8 * 3600  # it was a night
        return call(*given)
    return then

application = QApplication(["welds"])
tables = load_tables()
card = advise(Request(Process.TIG, "5052", 2.03, Joint.OUTSIDE_CORNER), tables)
page = pdf.card_page(card, Units.METRIC, tables.sources)
WHERE = asleep_before(WHERE)
if sys.argv[2] == "printer":
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(sys.argv[1])
    pdf.paint_page(printer, page)
else:
    pdf.write_page_pdf(sys.argv[1], page)
"""


def words_of(file):
    read = subprocess.run(["pdftotext", "-raw", file, "-"], capture_output=True, text=True, check=True)
    assert read.stderr == ""
    return read.stdout


@pytest.mark.slow
@pytest.mark.skipif(not hasattr(signal, "SIGSTOP"), reason="stops a program with SIGSTOP")
@pytest.mark.skipif(shutil.which("pdftotext") is None, reason="reads the PDF with poppler's pdftotext")
@pytest.mark.parametrize(
    ("where", "to"),
    [
        ("pdf.paint_joint", "file"),
        ("os.fsync", "file"),
        ("os.replace", "file"),
        ("pdf.paint_joint", "printer"),
    ],
)
def test_a_page_comes_out_whole_when_the_machine_sleeps_in_the_middle(tmp_path, where, to):
    """The program is stopped and goes on, its own clock hours later; the system's clock stays."""
    file = tmp_path / "card.pdf"
    file.write_bytes(b"what stood there")
    code = f"import sys; sys.path.insert(0, {str(ROOT)!r})\n" + SLEEPING.replace("WHERE", where)
    program = subprocess.Popen(
        [sys.executable, "-P", "-c", code, file, to], stderr=subprocess.PIPE, text=True
    )
    try:
        _, status = os.waitpid(program.pid, os.WUNTRACED)
        assert os.WIFSTOPPED(status)
        time.sleep(0.3)
        if to == "file":
            assert file.read_bytes() == b"what stood there"
        program.send_signal(signal.SIGCONT)
        _, said = program.communicate(timeout=60)
    finally:
        program.kill()
    assert program.returncode == 0, said
    assert [each.name for each in tmp_path.iterdir()] == ["card.pdf"]
    assert file.read_bytes().rstrip().endswith(b"%%EOF")
    words = words_of(file)
    assert "outside corner" in words
    assert "Tungsten" in words
