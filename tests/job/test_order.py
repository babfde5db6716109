"""What gets covered up, what needs access and what needs a dry fit comes in the right order."""

import pytest

from welds.errors import InputError
from welds.job.order import ordered


def ids(job) -> list[str]:
    return [turn.id for turn in ordered(job)]


def test_what_gets_covered_up_comes_first(job_of):
    job = job_of("steps: [{id: paint, covers: [drain]}, {id: hang, covers: [paint]}, {id: drain}]")
    assert ids(job) == ["drain", "paint", "hang"]
    assert ordered(job)[1].needs[0].why == "paint covers it up"


def test_what_needs_access_comes_before_what_closes_it(job_of):
    job = job_of("steps: [{id: close}, {id: wire, open_for: [close]}]")
    assert ids(job) == ["wire", "close"]


def test_pieces_then_dry_fit_then_weld(job_of):
    job = job_of("""
pieces: [{id: left, size: 50 x 50}, {id: right, size: 50 x 50}]
joints: [{id: seam, pieces: [left, right], joint: butt, length: 50, dry_fit: yes}]
""")
    assert ids(job) == ["left", "right", "dry-fit-seam", "seam"]
    assert [turn.is_now for turn in ordered(job)] == [True, True, False, False]


def test_what_can_wait_comes_last_unless_something_needs_it(job_of):
    alone = job_of("steps: [{id: rack, can_wait: yes}, {id: drain}]")
    assert ids(alone) == ["drain", "rack"]
    needed = ordered(job_of("steps: [{id: rack, can_wait: yes}, {id: drain, covers: [rack]}]"))
    assert [(turn.id, turn.can_wait) for turn in needed] == [("rack", False), ("drain", False)]


def test_done_tasks_free_what_waits_for_them(job_of):
    turns = ordered(
        job_of("steps: [{id: drain, done: yes}, {id: paint, after: [drain]}, {id: hang, after: [paint]}]")
    )
    assert [(turn.is_done, turn.is_now) for turn in turns] == [(True, False), (False, True), (False, False)]


def test_a_circle_is_told_with_its_names(job_of):
    job = job_of(
        "steps: [{id: a, after: [b]}, {id: b, covers: [c]}, {id: c, open_for: [d]}, {id: d, covers: [a]}]"
    )
    with pytest.raises(InputError) as caught:
        ordered(job_of("steps: [{id: a, after: [b]}, {id: b, covers: [c]}, {id: c, after: [a]}, {id: d}]"))
    assert all(name in str(caught.value) for name in ("a before", "b before", "c before"))
    assert "d" not in str(caught.value.given).split()
    assert ids(job) == ["c", "b", "a", "d"]
