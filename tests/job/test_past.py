"""Past welds move a job's cards, and entries named in the file are looked up."""

from datetime import date, timedelta

import pytest

from tests.logbook.conftest import BAIT_TANK
from welds.job.past import read_past
from welds.job.plan import plan_job
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.logbook.past import evidence_for
from welds.logbook.places import Place
from welds.quantities.units import Units
from welds.report.job_texts import job_json
from welds.report.job_words import order_rows, set_up_rows

FIRST_DAY = (date.today() - timedelta(days=30)).isoformat()
JOINTS = """
joints:
  - {id: corner, joint: outside-corner, length: 200, log: ["1"]}
  - {id: rail, joint: tee, length: 200, metal: low-carbon, log: ["99"]}
"""


@pytest.fixture
def log(tables, tmp_path):
    with open_logbook(Place(tmp_path / "data", path=tmp_path / "bench.db")) as opened:
        for days in range(30, 22, -1):
            made_at = (date.today() - timedelta(days=days)).isoformat()
            weld = BAIT_TANK | {"settings": {"current": 68}, "made_at": made_at}
            opened.add(read_entry(weld, tables))
        yield opened


def start_of(plan, place: int = 0) -> float:
    return plan.set_ups[place].card.settings["current"].figure.start


def test_welds_made_cold_pull_the_card_down_and_leave_other_metals_alone(job_of, tables, log):
    job = job_of(JOINTS)
    bare, learned = plan_job(job, tables), plan_job(job, tables, past=read_past(job, log, tables))
    assert 68.0 <= start_of(learned) < start_of(bare)
    assert start_of(learned, 1) == pytest.approx(start_of(bare, 1), rel=0.25)
    assert learned.set_ups[0].card.learned.welds == 8
    assert "learned from 8 past welds" in next(iter(set_up_rows(learned, Units.METRIC)))[3]


def test_the_evidence_is_the_log_s_own_for_the_request(job_of, tables, log):
    job = job_of(JOINTS)
    request = job.joints[0].request
    assert read_past(job, log, tables).of(request, tables) == evidence_for(log, request, tables)
    assert read_past(job, log, tables, is_learning=False).of(request, tables) is None


def test_named_entries_say_what_came_of_them_and_missing_ones_are_a_problem(job_of, tables, log):
    job = job_of(JOINTS)
    plan = plan_job(job, tables, past=read_past(job, log, tables))
    assert "rail: the log has no entry 99" in plan.problems
    assert f"(log 1: 68 A, worked well, {FIRST_DAY})" in next(iter(order_rows(plan)))[2]
    assert job_json(plan)["logged"]["1"]["outcome"] == "worked-well"
    assert job_json(plan)["logged"]["99"] is None


def test_without_a_log_the_names_stand_and_are_no_problem(job_of, tables):
    plan = plan_job(job_of(JOINTS), tables)
    assert plan.problems == ()
    assert next(iter(order_rows(plan)))[2].endswith("(log 1)")
