"""What two chains of reasons do not share, in words."""

from itertools import product

import pytest

from welds.advice.advise import BOTH, MIG, TIG
from welds.advice.case import make_case
from welds.advice.equipment import GENERIC
from welds.advice.request import Joint, Process, Request
from welds.advice.setting import Reason, Setting
from welds.errors import WeldsError
from welds.quantities.band import Band
from welds.reference.basis import Basis
from welds.report.reason_change import READS, changed_links, has_own_cause

BASE = Reason("butt in aluminium, flat, 2 mm: 78 A from 4 rows")


def setting(*reasons):
    return Setting("current", Basis.PRINTED, reasons, band=Band(1, 2, 3, "A"))


def test_a_new_link_tells_its_effect_in_percent():
    tee = setting(BASE, Reason("T-joint: one more plate takes the heat", 1.11))
    assert changed_links(setting(BASE), tee) == ("T-joint: one more plate takes the heat, +11 %",)


def test_a_link_that_is_gone_tells_the_reverse_effect():
    outdoors = setting(BASE, Reason("open joint: nothing holds the gas", 1.25))
    assert changed_links(outdoors, setting(BASE)) == (
        "not here: open joint: nothing holds the gas, -20 %",
    )  # 1 / 1.25 = 0.80


def test_a_link_in_anothers_place_names_both():
    one, two = setting(BASE, Reason("lap: two edges", 1.05)), setting(BASE, Reason("edge: no sink", 0.9))
    assert changed_links(one, two) == ("edge: no sink, -10 % (base: lap: two edges, +5 %)",)


def test_a_shared_sentence_is_not_said_twice():
    thick = Reason("butt in aluminium, flat, 3 mm: 117 A from 4 rows")
    assert changed_links(setting(BASE), setting(thick)) == (
        "butt in aluminium, flat, 3 mm: 117 A from 4 rows (base: 2 mm: 78)",
    )


def test_a_change_of_figures_alone_is_no_cause_of_its_own():
    rated = (Reason("rated 80 A; wanted 60 A"),), (Reason("rated 80 A; wanted 65.5 A"),)
    assert not has_own_cause(setting(*rated[0]), setting(*rated[1]))
    assert has_own_cause(setting(*rated[0]), setting(*rated[0], Reason("clipped")))


def test_equal_chains_say_nothing():
    factor = Reason("T-joint", 1.0811), Reason("T-joint", 1.0812)
    assert changed_links(setting(BASE, factor[0]), setting(BASE, factor[1])) == ()


def test_what_single_documents_say_is_no_reason_for_a_difference(tables):
    case = make_case(Request(Process.TIG, "5052", 2.0, Joint.BUTT), tables, GENERIC)
    chain = TIG[1](case, {"polarity": TIG[0](case, {})}).reasons
    alone = [reason for reason in chain if reason.is_aside]
    assert len(alone) > 1
    assert changed_links(setting(BASE), setting(BASE, *alone)) == ()


class Watched(dict):
    """What was decided so far, noting what is looked at."""

    def __init__(self, decided):
        super().__init__(decided)
        self.read = set()

    def __getitem__(self, name):
        self.read.add(name)
        return super().__getitem__(name)

    def get(self, name, default=None):
        self.read.add(name)
        return super().get(name, default)


@pytest.mark.parametrize("process", Process)
def test_what_a_setting_is_worked_out_from_is_what_its_rule_reads(tables, process):
    """Watches every rule over metals and joints and compares with the list that the words are made from."""
    read = {}
    for metal, joint in product(("5052", "304", "low-carbon"), Joint):
        try:
            case = make_case(Request(process, metal, 3.0, joint), tables, GENERIC)
        except WeldsError:
            continue
        decided = {}
        for rule in (*(TIG if process is Process.TIG else MIG), *BOTH):
            watched = Watched(decided)
            try:
                made = rule(case, watched)
            except WeldsError:
                break
            if made is not None:
                decided[made.name] = made
                read.setdefault(made.name, set()).update(watched.read)
    assert len(read) > 15
    for name, causes in read.items():
        assert causes <= set(READS.get(name, ())), name
