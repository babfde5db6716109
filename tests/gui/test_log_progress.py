"""Long work on the log in the window: the bar that says how far it is, its button, the way on after it."""

from threading import Event

import pytest

from tests.gui.fakes import FakePrompts
from tests.logbook.many import fill
from welds.gui.engine import load_engine
from welds.gui.jobs.queue import JobQueue
from welds.gui.pages.log.desk import LogDesk
from welds.gui.pages.log.files import GO_ON, LogFiles
from welds.gui.pages.log.notices import STOP, Notices
from welds.logbook import migrate, progress
from welds.logbook.archive import back_up
from welds.logbook.exporting import export_file
from welds.logbook.logbook import Logbook
from welds.logbook.opening import open_logbook
from welds.logbook.places import place_of
from welds.logbook.store import Store

COUNT = 1_200
PATIENCE_MS = 20_000


@pytest.fixture
def gate(monkeypatch):
    """Let the work go on only while it is open, so that a moment of it can be looked at; open at the end."""
    opened = Event()
    at = progress.Progress.at

    def wait_and_tell(self, stage, done, total):
        at(self, stage, done, total)
        assert total == 0 or opened.wait(PATIENCE_MS / 1000)  # of a new log nothing is told
        if self.is_stopped:
            at(self, stage, done, total)

    monkeypatch.setattr(progress.Progress, "at", wait_and_tell)
    yield opened
    opened.set()


@pytest.fixture
def bars(qtbot):
    made = Notices()
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.fixture
def desk_of(bars):
    made = []

    def open_desk(file):
        desk = LogDesk(JobQueue(bars), JobQueue(bars), str(file), bars)
        desk.at_work_changed.connect(bars.show_work)
        bars.stop_wanted.connect(desk.stop_work)
        made.append(desk)
        return desk

    yield open_desk
    for desk in made:
        desk.close()


@pytest.fixture
def old_file(tmp_path, tables):
    file = tmp_path / "yard.db"
    store = Store(place_of(str(file)))
    migrate.migrate(store, "0003")
    fill(Logbook(store), tables, COUNT)
    store.close()
    return file


@pytest.fixture(scope="module")
def engine():
    return load_engine(None)


@pytest.fixture
def files_of(bars, engine):
    def make(desk):
        files = LogFiles(engine, desk, FakePrompts(bars), bars)
        files.heard = []
        files.said.connect(files.heard.append)
        return files

    return make


def test_an_update_says_how_far_it_is_is_stopped_and_done_after_all(
    qtbot, bars, desk_of, files_of, old_file, gate
):
    desk = desk_of(old_file)
    counts = []
    desk.ask(lambda log: log.count(), counts.append)
    qtbot.waitUntil(lambda: "0 of 17 steps" in bars.work.words(), timeout=PATIENCE_MS)
    bars.work.buttons[STOP].click()
    assert bars.work.words() == "Stopping…"
    gate.set()
    qtbot.waitUntil(lambda: desk.trouble is not None, timeout=PATIENCE_MS)
    assert bars.work.words() == ""
    assert "as it was" in desk.trouble.problem
    files = files_of(desk)
    (go_on, _choose) = files.ways_out(desk.trouble)
    assert go_on == (GO_ON, "Bring it up to date")
    assert not desk._again.isActive()  # only the person begins it again
    files.go(GO_ON)
    qtbot.waitUntil(lambda: desk.trouble is None, timeout=PATIENCE_MS)
    desk.ask(lambda log: log.count(), counts.append)
    qtbot.waitUntil(lambda: counts == [COUNT], timeout=PATIENCE_MS)


def test_a_window_that_is_closed_does_not_wait_for_the_update(qtbot, bars, desk_of, old_file, gate):
    desk = desk_of(old_file)
    desk.ask(lambda log: log.count(), print)
    qtbot.waitUntil(lambda: desk.at_work is not None, timeout=PATIENCE_MS)
    gate.set()
    desk.close()
    store = Store(place_of(str(old_file)))
    assert migrate.version_of(store) == "0003"
    store.close()


@pytest.fixture
def importing(qtbot, bars, desk_of, files_of, tables, tmp_path, gate):
    """Return a desk with an empty log, and the files that are about to read one of many welds."""
    gate.set()
    with open_logbook(str(tmp_path / "other.db")) as other:
        fill(other, tables, COUNT)
        export_file(other, tmp_path / "other.csv", tables)
    desk = desk_of(tmp_path / "yard.db")
    files = files_of(desk)
    files._prompts.open_path = tmp_path / "other.csv"
    gate.clear()
    return desk, files


def test_reading_a_file_is_stopped(qtbot, bars, importing, gate):
    _desk, files = importing
    files.look_into()
    qtbot.waitUntil(
        lambda: "Reading the file, 0 of about 1 201 rows" in bars.work.words(), timeout=PATIENCE_MS
    )
    bars.work.buttons[STOP].click()
    gate.set()
    qtbot.waitUntil(lambda: files.heard == ["Stopped. Nothing was written."], timeout=PATIENCE_MS)
    assert bars.work.words() == ""
    assert not files.is_previewing
    assert files._prompts.told == []


def test_writing_is_stopped_and_the_preview_stays(qtbot, bars, importing, gate):
    desk, files = importing
    gate.set()
    files.look_into()
    qtbot.waitUntil(lambda: files.is_previewing, timeout=PATIENCE_MS)
    gate.clear()
    files.accept()
    qtbot.waitUntil(lambda: "Writing the welds, 0 of 1 200" in bars.work.words(), timeout=PATIENCE_MS)
    bars.work.buttons[STOP].click()
    gate.set()
    qtbot.waitUntil(lambda: files.heard == ["Stopped. Nothing was written."], timeout=PATIENCE_MS)
    assert files.is_previewing
    counts = []
    desk.ask(lambda log: log.count(), counts.append)
    qtbot.waitUntil(lambda: counts == [0], timeout=PATIENCE_MS)
    with qtbot.waitSignal(files.imported, timeout=PATIENCE_MS):
        files.accept()


def test_a_window_that_is_closed_finishes_writing(qtbot, bars, importing, gate, tmp_path):
    desk, files = importing
    gate.set()
    files.look_into()
    qtbot.waitUntil(lambda: files.is_previewing, timeout=PATIENCE_MS)
    gate.clear()
    files.accept()
    qtbot.waitUntil(lambda: "Writing" in bars.work.words(), timeout=PATIENCE_MS)
    gate.set()
    desk.close()
    with open_logbook(str(tmp_path / "yard.db")) as log:
        assert log.count() == COUNT


@pytest.fixture
def full(desk_of, files_of, tables, tmp_path, gate):
    """Return a desk with many welds, and its files, about to write one over another that is there."""
    gate.set()
    with open_logbook(str(tmp_path / "yard.db")) as log:
        fill(log, tables, COUNT)
        back_up(log, tmp_path / "whole.zip")
    desk = desk_of(tmp_path / "yard.db")
    files = files_of(desk)
    (tmp_path / "there.zip").write_bytes(b"from before")
    (tmp_path / "there.csv").write_bytes(b"from before")
    gate.clear()
    return desk, files


@pytest.mark.parametrize(("kind", "write"), [("csv", LogFiles.export), ("zip", LogFiles.back_up)])
def test_writing_a_file_is_stopped_and_the_one_before_stays(qtbot, bars, full, gate, tmp_path, kind, write):
    _desk, files = full
    files._prompts.save_path = tmp_path / f"there.{kind}"
    write(files)
    qtbot.waitUntil(lambda: "Writing the file, 0 of 1 200 welds" in bars.work.words(), timeout=PATIENCE_MS)
    bars.work.buttons[STOP].click()
    gate.set()
    qtbot.waitUntil(lambda: files.heard == ["Stopped. Nothing was written."], timeout=PATIENCE_MS)
    assert (tmp_path / f"there.{kind}").read_bytes() == b"from before"
    assert sorted(each.name for each in tmp_path.glob("*there*")) == ["there.csv", "there.zip"]


def test_restoring_is_stopped_and_the_log_stays(qtbot, bars, full, gate, tmp_path, monkeypatch):
    desk, files = full
    monkeypatch.setattr(files._prompts, "confirm", lambda *_words: True)
    files.restore(tmp_path / "whole.zip")
    qtbot.waitUntil(lambda: "Reading the backup, 0 of 1 200 welds" in bars.work.words(), timeout=PATIENCE_MS)
    bars.work.buttons[STOP].click()
    gate.set()
    qtbot.waitUntil(lambda: files.heard == ["Stopped. Nothing was written."], timeout=PATIENCE_MS)
    assert not list(tmp_path.glob("*replaced*"))
    counts = []
    desk.ask(lambda log: log.count(), counts.append)
    qtbot.waitUntil(lambda: counts == [COUNT], timeout=PATIENCE_MS)
