"""The person's own file: a mistake in it leaves the last good bench in use, and everyone says so."""

import pytest

from welds.advice.equipment import GENERIC
from welds.bench.folders import config_folder
from welds.bench.keep import BEFORE, LAST_GOOD, bench_file, equipment_for, own_bench, save_bench
from welds.bench.templates import USUAL, starting_bench
from welds.errors import BenchFileError, FileUnavailableError

GOOD = starting_bench(USUAL)
BAD = GOOD.replace("current_max_a: 200", "current_max_a: two hundred")


@pytest.fixture
def own(tables):
    save_bench(GOOD, tables)
    return bench_file()


def test_no_file_means_any_machine(tables) -> None:
    assert equipment_for(None, tables) == GENERIC
    assert own_bench(tables).bench is None


def test_the_own_file_counts_without_being_named(own, tables) -> None:
    assert equipment_for(None, tables).machine.name == USUAL[0]
    assert own.parent == config_folder()


def test_a_mistake_by_hand_keeps_the_last_good_bench(own, tables) -> None:
    own.write_text(BAD, encoding="utf-8")
    equipment = equipment_for(None, tables)
    assert equipment.machine.current_max_a == 200
    for words in (str(own), "line ", "machines.current_max_a", "the last good bench"):
        assert words in equipment.trouble
    assert own.read_text(encoding="utf-8") == BAD
    own.write_text(GOOD, encoding="utf-8")
    assert equipment_for(None, tables).trouble == ""


def test_every_good_reading_by_hand_becomes_the_last_good(own, tables) -> None:
    own.write_text(GOOD.replace("current_max_a: 200", "current_max_a: 180"), encoding="utf-8")
    equipment_for(None, tables)
    own.write_text(BAD, encoding="utf-8")
    assert equipment_for(None, tables).machine.current_max_a == 180


def test_without_a_good_copy_the_mistake_is_raised(own, tables) -> None:
    (own.parent / LAST_GOOD).unlink()
    own.write_text(BAD, encoding="utf-8")
    with pytest.raises(BenchFileError, match="current_max_a"):
        equipment_for(None, tables)
    kept = own_bench(tables)
    assert kept.bench is None
    assert "no last good copy" in kept.trouble
    assert kept.equipment.machine == GENERIC.machine


def test_a_named_file_has_to_be_right(tmp_path, own, tables) -> None:
    named = tmp_path / "other.yaml"
    named.write_text(BAD, encoding="utf-8")
    with pytest.raises(BenchFileError):
        equipment_for(str(named), tables)
    with pytest.raises(BenchFileError, match="cannot be read"):
        equipment_for(str(tmp_path / "none.yaml"), tables)
    with pytest.raises(BenchFileError):
        equipment_for("a\0b", tables)


def test_saving_checks_first_and_keeps_what_was_there(own, tables) -> None:
    with pytest.raises(BenchFileError):
        save_bench(BAD, tables)
    assert own.read_text(encoding="utf-8") == GOOD
    other = GOOD.replace("current_max_a: 200", "current_max_a: 150")
    save_bench(other, tables)
    assert own.read_text(encoding="utf-8") == other
    assert (own.parent / BEFORE).read_text(encoding="utf-8") == GOOD
    assert not list(own.parent.glob("*.new"))


def test_a_disk_that_refuses_is_named(tmp_path, tables) -> None:
    in_the_way = tmp_path / "file"
    in_the_way.write_text("", encoding="utf-8")
    with pytest.raises(FileUnavailableError):
        save_bench(GOOD, tables, in_the_way / "bench.yaml")
