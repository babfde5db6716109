"""Add, change, remove, undo: the same in a file and on a server."""

from dataclasses import replace

import pytest

from tests.logbook.conftest import BAIT_TANK, MUDGUARD
from welds.errors import InputError
from welds.logbook.fields import changed_entry, entry_json, read_entry


def test_what_is_added_is_read_back_as_it_was(log, reading):
    for given in (BAIT_TANK, MUDGUARD):
        receipt = log.add(reading(given))
        assert entry_json(log.get(receipt.entry.uid)) == entry_json(receipt.entry)
        assert receipt.entry.number is not None
    assert log.count() == 2
    assert log.get(2).faults == ("burn-through", "porosity")


def test_an_entry_as_listed_is_what_add_takes(log, reading, tables):
    entry = log.add(reading(MUDGUARD)).entry
    assert entry_json(read_entry(entry_json(entry), tables).entry) == entry_json(entry)


def test_the_same_entry_twice_is_written_once(log, reading):
    first = log.add(reading())
    again = log.add(replace(reading(), entry=replace(first.entry, number=None)))
    assert (again.entry.number, again.undo) == (first.entry.number, None)
    assert log.count() == 1


def test_the_same_uid_with_another_content_is_refused(log, reading):
    first = log.add(reading()).entry
    with pytest.raises(InputError, match="another content"):
        log.add(reading(uid=first.uid, notes="something else"))


def test_settings_are_changed_one_by_one(log, reading, tables):
    entry = log.add(reading()).entry
    changed = log.edit(changed_entry(entry, {"settings": {"current": 118}}, tables)).entry
    assert changed.settings == {**entry.settings, "current": 118}
    assert changed.version == 2
    assert log.get(1).settings["current"] == 118


def test_an_edit_by_another_bench_in_between_is_not_lost(log, reading, tables):
    entry = log.add(reading()).entry
    log.edit(changed_entry(entry, {"notes": "from the other bench"}, tables))
    with pytest.raises(InputError, match="no other bench"):
        log.edit(changed_entry(entry, {"notes": "from this bench"}, tables))
    assert log.get(1).notes == "from the other bench"


def test_every_change_can_be_taken_back_and_made_again(log, reading, tables):
    added = log.add(reading())
    edited = log.edit(changed_entry(added.entry, {"notes": "changed"}, tables))
    back = log.undo(edited.undo)
    assert log.get(1).notes == BAIT_TANK["notes"]
    log.undo(back)
    assert log.get(1).notes == "changed"
    removed = log.remove(1)
    assert log.count() == 0
    again = log.undo(removed.undo)
    assert entry_json(log.get(1)) == entry_json(edited.entry)
    log.undo(again)
    assert log.count() == 0


def test_adding_can_be_taken_back_unless_it_was_changed_since(log, reading, tables):
    added = log.add(reading())
    log.edit(changed_entry(added.entry, {"notes": "changed"}, tables))
    with pytest.raises(InputError, match="left alone"):
        log.undo(added.undo)
    second = log.add(reading(MUDGUARD))
    log.undo(second.undo)
    assert log.count() == 1


def test_many_at_once_are_all_or_nothing(log, reading):
    new = [reading(notes=f"bead {n}").entry for n in range(3)]
    with pytest.raises(Exception, match=r"(?i)unique|duplicate"):
        log.add_all([*new, new[0]])
    assert log.count() == 0
    token = log.add_all(new)
    assert log.count() == 3
    log.undo(token)
    assert log.count() == 0


@pytest.mark.parametrize("name", ["99", "no", "deadbeef", "", "0"])
def test_an_entry_that_is_not_there_is_said_to_be_missing(log, name):
    with pytest.raises(InputError, match="entry"):
        log.get(name)


def test_a_uid_may_be_shortened(log, reading):
    entry = log.add(reading()).entry
    assert log.get(entry.uid[:8]).number == entry.number


@pytest.mark.parametrize(
    ("changes", "word"),
    [
        ({"settings": {"curent": 100}}, "nearest: current"),
        ({"settings": {"current": "plenty"}}, "number"),
        ({"settings": {"current": float("nan")}}, "number"),
        ({"settings": {"current": 9400}}, "0 to 2000, in A"),
        ({"settings": {"polarity": "upside"}}, "AC, DCEN, DCEP"),
        ({"settings": None}, "settings"),
        ({"outcome": "so-so"}, "worked"),
        ({"faults": ["burn-thru"]}, "nearest: burn-through"),
        ({"made_at": "yesterday"}, "2026-03-03"),
        ({"made_at": "0001-01-01T00:00:00+14:00"}, "2026-03-03"),
        ({"metal": "5025"}, "nearest"),
        ({"thickness_mm": -1}, "0.01"),
        ({"notes": "a\x00b"}, "control character"),
        ({"notes": "x" * 20_001}, "up to 20000"),
        ({"notes": 7}, "a text"),
        ({"uid": "12"}, "UUID"),
        ({"photos": [7]}, "picture"),
        ({"photos": [{"sha256": "zz"}]}, "SHA-256"),
        ({"amps": 100}, "field"),
    ],
)
def test_a_slip_is_answered_in_one_line(reading, changes, word):
    with pytest.raises(InputError) as caught:
        reading(**changes)
    assert word in str(caught.value)
    assert "\n" not in str(caught.value)


def test_a_whole_setting_of_a_card_stands_for_its_start(reading):
    card = {"current": {"low": 70, "start": 86, "high": 100, "unit": "A"}, "polarity": {"value": "AC"}}
    assert reading(settings=card).entry.settings == {"current": 86, "polarity": "AC"}


def test_a_card_fills_an_entry(log, tables):
    from welds.advice.advise import advise
    from welds.advice.request import Joint, Process, Request
    from welds.logbook.from_card import fields_from_card

    card = advise(Request(Process.TIG, "5052", 2.0, Joint.OUTSIDE_CORNER), tables)
    fields = fields_from_card(card) | {"outcome": "worked"}
    entry = log.add(read_entry(fields, tables)).entry
    assert entry.settings["current"] == card.settings["current"].figure.start
    assert "heat_input" not in entry.settings
    assert entry.request == card.request
