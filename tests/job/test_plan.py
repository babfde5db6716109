"""The whole plan: shared cards, sheets, refusals; three hundred unlike joints in under a second."""

from collections.abc import Callable
from datetime import date, timedelta
from time import process_time

import pytest

from tests.job.many import three_hundred_joints
from tests.logbook.conftest import BAIT_TANK
from welds.advice.equipment import Equipment, Machine
from welds.job.brake_book import BrakeK, book_file, keep
from welds.job.demo import demo_file
from welds.job.job_file import load_job
from welds.job.past import Past, read_past
from welds.job.plan import flat_size, plan_job
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.logbook.places import Place


def test_the_demo_has_an_answer_for_everything(tables):
    plan = plan_job(load_job(demo_file(), tables), tables)
    assert plan.problems == ()
    assert {key: answer.choice.value for key, answer in plan.repairs.items()} == {
        "mudguard-left": "patch",
        "mudguard-right": "plug",
    }
    assert sum(len(sheet.placed) for sheet in plan.sheets) == sum(piece.count for piece in plan.job.pieces)


def test_joints_set_up_alike_share_a_card_judged_by_the_longest(job_of, tables):
    lengths = "tee, length: 50", "lap, length: 5", "tee, length: 90"
    joints = [f"{{id: {key}, joint: {words}}}" for key, words in zip("abc", lengths, strict=True)]
    plan = plan_job(job_of(f"joints: [{', '.join(joints)}]"), tables)
    assert [[joint.id for joint in each.joints] for each in plan.set_ups] == [["a", "c"], ["b"]]
    assert plan.set_ups[0].card.request.length_mm == 90.0


def test_blanks_do_not_overlap_and_stay_on_their_sheet(tables):
    plan = plan_job(load_job(demo_file(), tables), tables)
    for sheet in plan.sheets:
        length, width = sheet.stock.size_mm
        for number, a in enumerate(sheet.placed):
            assert a.left_mm >= 0.0
            assert a.left_mm + a.width_mm <= length + 1e-6
            assert a.bottom_mm + a.height_mm <= width + 1e-6
            for b in sheet.placed[number + 1 :]:
                is_beside = a.left_mm + a.width_mm < b.left_mm or b.left_mm + b.width_mm < a.left_mm
                is_above = a.bottom_mm + a.height_mm < b.bottom_mm or b.bottom_mm + b.height_mm < a.bottom_mm
                assert is_beside or is_above
        area = sum(each.width_mm * each.height_mm for each in sheet.placed)
        assert sheet.waste == pytest.approx(1.0 - area / (length * width))
    flats = {piece.id: flat_size(piece, plan.blanks) for piece in plan.job.pieces}
    for sheet in plan.sheets:
        for each in sheet.placed:
            assert sorted((each.width_mm, each.height_mm)) == pytest.approx(
                sorted(flats[each.piece]), abs=1e-3
            )


def test_unlike_metals_and_what_carries_are_named_not_hidden(job_of, tables):
    plan = plan_job(
        job_of("""
stock: [{id: offcut, size: 100 x 100}]
pieces: [{id: large, stock: offcut, size: 90 x 200}]
joints: [{id: rail, joint: lap, length: 50, other_metal: "304"}]
repairs: [{id: coupling, holes: 3 mm x 2, region: 50 x 50, part: towing}]
"""),
        tables,
    )
    text = " ".join(plan.problems)
    assert "rail: no card" in text
    assert "bolt them" in text
    assert "coupling" in text
    assert "qualified welder" in text
    assert "large: no room on offcut" in text


@pytest.fixture
def log(tables, tmp_path):
    """Return an open log of 240 welds in 5052 by TIG: four joints, good, burnt and cold ones."""
    kinds = ("butt", "tee", "lap", "outside-corner")
    outcomes = (
        ("worked-well", []),
        ("worked", []),
        ("failed", ["burn-through"]),
        ("failed", ["lack-of-fusion"]),
    )
    with open_logbook(Place(tmp_path / "data", path=tmp_path / "bench.db")) as opened:
        for n in range(240):
            outcome, faults = outcomes[n % 4]
            made_at = (date.today() - timedelta(days=n)).isoformat()
            weld = {"joint": kinds[n // 4 % 4], "thickness_mm": 1.2 + n / 200, "made_at": made_at}
            weld |= {"outcome": outcome, "faults": faults, "settings": {"current": 60 + n % 50}}
            opened.add(read_entry(BAIT_TANK | weld, tables))
        yield opened


def seconds_to_plan(job, tables, past: Callable[[], Past | None]) -> float:
    """Return the best of five runs, in time of the processor: the machine may be busy with something else."""
    times = []
    for _ in range(5):
        start = process_time()
        plan = plan_job(job, tables, past=past())
        times.append(process_time() - start)
    assert (len(plan.tacks), len(plan.set_ups), plan.problems) == (300, 300, ())
    return min(times)


@pytest.mark.heavy
def test_three_hundred_joints_that_all_differ_in_under_a_second_without_and_with_a_log(job_of, tables, log):
    """Every joint after the one before: 0.5 s of one core of 2026, 0.6 s with a log."""
    job = job_of(three_hundred_joints())
    plan_job(job_of("joints: [{id: a, joint: tee, length: 50}]"), tables)
    without = seconds_to_plan(job, tables, lambda: None)
    learned = seconds_to_plan(job, tables, lambda: read_past(job, log, tables))
    assert plan_job(job, tables, past=read_past(job, log, tables)).set_ups[0].card.learned.welds == 240
    print(f"300 unlike joints: {without:.2f} s, with a log {learned:.2f} s of the processor; goal 1 s")
    # A shared machine's processor seconds stretch to twice and more: this stops a slip, not a slow day.
    assert max(without, learned) < 4.0


def test_a_known_k_and_the_grain_reach_the_blank(job_of, tables):
    piece = "legs: [40, 40], angles: [90], radius: 3, width: 50"
    plan = plan_job(job_of(f"pieces: [{{id: a, {piece}, k: 0.4, grain: along}}, {{id: b, {piece}}}]"), tables)
    a, b = plan.blanks["a"], plan.blanks["b"]
    assert a.blank.lines[0].k == 0.4
    assert a.radii[0].radius_mm == pytest.approx(1.5 * b.radii[0].radius_mm)


def test_the_k_kept_of_a_brake_reaches_the_blank(job_of, tables):
    piece = "legs: [40, 40], angles: [90], radius: 3, width: 50"
    job = job_of(f"pieces: [{{id: a, {piece}, brake: yard brake}}]")
    assert "yard brake" in plan_job(job, tables).problems[0]
    keep(book_file(), BrakeK("yard brake", "5052-H32", 2.0, 3.0, 0.37))
    answer = plan_job(job, tables).blanks["a"]
    assert (answer.blank.lines[0].k, answer.ks[0].method) == (0.37, "test bend on yard brake")


def test_an_impossible_k_is_a_problem_of_its_piece(job_of, tables):
    plan = plan_job(
        job_of("pieces: [{id: a, legs: [40, 40], angles: [90], radius: 3, width: 50, k: 0.9}]"), tables
    )
    assert "a: no blank: k: 0.9" in plan.problems[0]


def test_each_card_is_for_a_machine_that_does_its_process(job_of, tables):
    tig = Machine("the TIG set", frozenset({"tig"}), current_max_a=200.0)
    mig = Machine("the MIG set", frozenset({"mig"}), current_max_a=180.0)
    joints = (
        "[{id: a, joint: tee, length: 50}, {id: b, process: mig, metal: low-carbon, joint: tee, length: 50}]"
    )
    plan = plan_job(job_of(f"joints: {joints}"), tables, Equipment(tig, others=(mig,)))
    assert [each.card.machine for each in plan.set_ups] == ["the TIG set", "the MIG set"]


def test_cautions_of_repairs_stand_with_those_of_cards(job_of, tables):
    sheet = "metal: low-carbon, thickness: 1.2 mm, coating: [galvanised]"
    repair = f"{{id: a, {sheet}, holes: 3 mm x 2, region: 50 x 50}}"
    plan = plan_job(job_of(f"repairs: [{repair}]"), tables)
    assert "zinc" in " ".join(caution.text for caution in plan.cautions)
