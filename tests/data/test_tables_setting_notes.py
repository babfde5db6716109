"""Every setting that a card can hold says what it does, and nothing else does."""

import pytest

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.reference.settings import SettingNote, setting_notes
from welds.report.wording import LABELS

REQUESTS = [
    Request(Process.TIG, "5052", 2.0, Joint.OUTSIDE_CORNER),
    Request(Process.TIG, "304", 2.0, Joint.TEE),
    Request(Process.MIG, "low-carbon", 2.0, Joint.TEE),
    Request(Process.MIG, "low-carbon", 1.2, Joint.PLUG),
]


@pytest.mark.parametrize("request_", REQUESTS, ids=lambda each: f"{each.process}-{each.metal}-{each.joint}")
def test_no_setting_of_a_card_is_without_a_note(tables, request_):
    notes = setting_notes(tables, request_.process.value)
    assert set(advise(request_, tables).settings) <= set(notes)


def test_every_note_is_for_a_setting_that_has_a_label_and_is_said_once(tables):
    rows = tables.records(SettingNote)
    assert {row.setting for row in rows} <= set(LABELS)
    for process in ("tig", "mig"):
        names = [row.setting for row in rows if row.process in (process, "both")]
        assert len(names) == len(set(names))


def test_notes_are_marked_as_practice(tables):
    assert {row.basis.value for row in tables.records(SettingNote)} == {"practice"}
