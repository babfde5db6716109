"""Long work says how far it is, and ends as if it had never begun when it is stopped."""

import pytest

from tests.logbook.many import fill
from tests.logbook.test_migrations import EARLIER
from welds.errors import LogbookUnavailableError, StoppedError
from welds.logbook import importing, migrate, progress
from welds.logbook.exporting import export_file
from welds.logbook.importing import accept, preview_file
from welds.logbook.logbook import Logbook
from welds.logbook.offers import GO_ON
from welds.logbook.opening import open_logbook
from welds.logbook.places import place_of
from welds.logbook.progress import Progress, Stage, Step
from welds.logbook.ring import backups_of
from welds.logbook.schema import HEAD
from welds.logbook.store import Store

COUNT = 1_200


@pytest.fixture(autouse=True)
def all_told(monkeypatch):
    monkeypatch.setattr(progress, "TELL_EVERY_S", 0.0)


@pytest.fixture
def old_file(tmp_path, tables):
    """Return a log whose tables are those of an earlier program, with entries in it."""
    place = place_of(str(tmp_path / "yard.db"))
    store = Store(place)
    migrate.migrate(store, "0003")
    fill(Logbook(store), tables, COUNT)
    store.close()
    return place


class Impatient(Progress):
    """Keeps what it was told, and has had enough after so many steps."""

    def __init__(self, patience: int) -> None:
        self.steps: list[Step] = []
        self._patience = patience
        super().__init__(self._keep)

    def _keep(self, step: Step) -> None:
        self.steps.append(step)
        if len(self.steps) > self._patience:
            self.stop()


@pytest.mark.parametrize("version", EARLIER)
def test_every_statement_is_told_on_the_way_to_the_newest_tables(address, version):
    store = Store(place_of(address))
    migrate.migrate(store, version)
    told = Impatient(1000)
    migrate.migrate(store, progress=told)
    total = migrate.steps_from(version, is_file=store.is_file)
    assert told.steps == [Step(Stage.UPDATE, done, total) for done in range(total)]
    store.close()


def test_a_new_log_has_nothing_to_tell(tmp_path):
    told = Impatient(0)
    open_logbook(str(tmp_path / "yard.db"), progress=told).close()
    assert told.steps == []


@pytest.mark.parametrize("patience", [0, 1, 5, 13])
def test_a_stopped_update_leaves_the_log_as_it_was(old_file, patience):
    with pytest.raises(LogbookUnavailableError, match="as it was") as caught:
        open_logbook(old_file, progress=Impatient(patience))
    assert GO_ON in caught.value.offers
    store = Store(old_file)
    assert migrate.version_of(store) == "0003"
    assert Logbook(store).count() == COUNT
    store.close()
    assert not list(old_file.backups.glob("*.part"))
    with open_logbook(old_file) as log:
        assert (migrate.version_of(log.store), log.count()) == (HEAD, COUNT)


class StoppedMeanwhile(Progress):
    """Is stopped in the middle of a statement: seen only from the second look on."""

    def __init__(self) -> None:
        super().__init__()
        self.looks = 0

    @property
    def is_stopped(self) -> bool:
        self.looks += 1
        return self.looks > 6


def test_even_one_long_statement_is_cut_short(old_file, monkeypatch):
    monkeypatch.setattr(progress, "LOOK_EVERY", 500)
    with pytest.raises(LogbookUnavailableError, match="as it was"):
        open_logbook(old_file, progress=StoppedMeanwhile())
    assert backups_of(old_file) == []  # it was the backup that was cut short
    assert not list(old_file.backups.glob("*.part"))
    store = Store(old_file)
    assert migrate.version_of(store) == "0003"
    store.close()


@pytest.fixture
def exported(tmp_path, tables):
    with open_logbook(str(tmp_path / "other.db")) as other:
        fill(other, tables, COUNT)
        for kind in ("csv", "json"):
            export_file(other, tmp_path / f"other.{kind}", tables)
    return tmp_path


@pytest.mark.parametrize("kind", ["csv", "json"])
def test_an_import_says_how_far_it_is(exported, log, tables, kind):
    told = Impatient(10_000)
    found = preview_file(log, exported / f"other.{kind}", tables, progress=told)
    assert told.steps[-1].done == COUNT - 1
    assert COUNT <= told.steps[-1].total <= COUNT + 2
    told.steps.clear()
    accept(log, found, told)
    assert told.steps == [Step(Stage.WRITE, done, COUNT) for done in range(0, COUNT, importing.BATCH)]
    assert log.count() == COUNT


def test_a_stopped_import_has_written_nothing(exported, log, tables):
    file = exported / "other.csv"
    with pytest.raises(StoppedError):
        preview_file(log, file, tables, progress=Impatient(7))
    found = preview_file(log, file, tables)
    with pytest.raises(StoppedError):
        accept(log, found, Impatient(1))
    assert log.count() == 0
    assert accept(log, found) is not None
    assert log.count() == COUNT
