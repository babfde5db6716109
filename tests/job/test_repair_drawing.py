"""The drawing of a repair: its edge is as long as the seam, tacks lie on it, holes lie where drawn."""

from itertools import pairwise
from math import dist, pi

import pytest

from welds.advice.equipment import Equipment, Machine
from welds.job.bench_cards import BenchCards
from welds.job.damage import Behind, Damage, Holes
from welds.job.hole_drawing import DrawnHole, HoleDrawing, Scale, drawing_yaml
from welds.job.plan import plan_job
from welds.job.plan_drawing import Layer
from welds.job.repair import Choice, decide_repair
from welds.job.repair_drawing import draw_repair
from welds.reference.metals import find_metal

SCALE = Scale((0.0, 0.0), (500.0, 0.0), 100.0)
SHEET = "metal: low-carbon, thickness: 1.2 mm"


def mm(length: float) -> str:
    return f"{length:.0f} mm"


def damage_of(tables, **given) -> Damage:
    values = {"holes": (Holes(9.0, 2),), "region_mm": (100.0, 80.0)} | given
    return Damage(find_metal(tables, "low-carbon"), 1.2, **values)


def drawing_of(*points: tuple[float, float], diameter_mm: float = 3.0) -> HoleDrawing:
    return HoleDrawing("a.png", SCALE, tuple(DrawnHole(point, diameter_mm) for point in points))


def strokes_of(drawing, layer: Layer):
    return [stroke.points for stroke in drawing.strokes if stroke.layer is layer]


def test_the_edge_is_the_seam_and_every_tack_lies_on_it(tables):
    """Cut out 120 by 100 with corners of 12: four straight sides and one whole circle."""
    answer = decide_repair(BenchCards(tables), damage_of(tables))
    assert answer.choice is Choice.PATCH
    drawing = draw_repair("a", answer, None, None, 10.0, mm)
    (edge,) = strokes_of(drawing, Layer.OUTLINE)
    length = sum(dist(a, b) for a, b in pairwise((*edge, edge[0])))
    assert length == pytest.approx(2 * (96 + 76) + 2 * pi * 12, rel=2e-3)
    assert max(x for x, _ in edge) == pytest.approx(60.0, abs=0.2)
    assert max(y for _, y in edge) == pytest.approx(50.0, abs=0.2)
    ticks = [points for points in strokes_of(drawing, Layer.SECTION) if len(points) == 2]
    middles = [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in ticks]
    assert len(middles) == len(answer.patch.tacks.tacks_mm)
    for x, y in middles:
        # a rounded rectangle: as far from its inner rectangle (48 by 38 half) as the radius
        beyond = max(abs(x) - 48.0, 0.0), max(abs(y) - 38.0, 0.0)
        assert dist(beyond, (0.0, 0.0)) == pytest.approx(12.0, abs=1e-6)
    assert dist(middles[0], middles[1]) > 100.0, "the second tack is across from the first"


def test_a_lapped_patch_is_drawn_over_its_hole(tables):
    answer = decide_repair(BenchCards(tables), damage_of(tables, measured_mm=0.7))
    assert answer.patch.lap_mm
    (over,) = strokes_of(draw_repair("a", answer, None, None, 10.0, mm), Layer.BEND)
    assert max(x for x, _ in over) == pytest.approx(60.0 + answer.patch.lap_mm, abs=0.2)


def test_drawn_holes_keep_their_places_and_are_filled_from_both_ends(tables):
    points = (100.0, 100.0), (350.0, 100.0), (600.0, 150.0), (850.0, 100.0)
    damage = damage_of(tables, holes=(Holes(3.0, 4),), region_mm=(180.0, 120.0), behind=Behind.NONE)
    answer = decide_repair(BenchCards(tables), damage)
    assert answer.choice is Choice.PLUG
    drawing = draw_repair("a", answer, drawing_of(*points), None, 10.0, mm)
    circles = [points for points in strokes_of(drawing, Layer.SECTION) if len(points) > 2]
    middles = [(sum(x for x, _ in each) / len(each), sum(y for _, y in each) / len(each)) for each in circles]
    assert middles == [pytest.approx((x / 5.0, -y / 5.0)) for x, y in points]
    turns = [words.at[0] for words in drawing.words if words.text in ("1", "2", "3", "4")]
    assert turns == [pytest.approx(x) for x in (20.0, 170.0, 70.0, 120.0)]


def test_the_two_nearest_drawn_holes_decide_over_the_mean(tables):
    """Four holes in 180 x 120 are 73 mm apart on average, so plugs; drawn 5 mm apart they are not."""
    drawn = drawing_of((100.0, 100.0), (125.0, 100.0), (600.0, 150.0), (850.0, 100.0))
    assert drawn.closest_mm == pytest.approx(5.0)
    given = {"holes": (Holes(3.0, 4),), "region_mm": (180.0, 120.0)}
    assert decide_repair(BenchCards(tables), damage_of(tables, **given)).choice is Choice.PLUG
    near = decide_repair(BenchCards(tables), damage_of(tables, **given, closest_mm=drawn.closest_mm))
    assert near.choice is Choice.PATCH
    assert any("as drawn" in reason.text and reason.against is Choice.PLUG for reason in near.reasons)


def test_a_drawing_beside_the_job_reaches_the_plan_and_differences_are_said(job_file, tables):
    from welds.job.job_file import load_job

    path = job_file(f"repairs: [{{id: left, {SHEET}, holes: 3 mm x 2, region: 50 x 20}}]")
    drawing = drawing_of((0.0, 0.0), (150.0, 0.0))
    path.with_name("left-holes.yaml").write_text(drawing_yaml(drawing), encoding="utf-8")
    path.with_name("a.png").write_bytes(b"")
    plan = plan_job(load_job(path, tables), tables)
    assert (plan.problems, plan.drawings["left"]) == ((), drawing)
    assert plan.repairs["left"].damage.closest_mm == pytest.approx(30.0)
    wide = drawing_of((0.0, 0.0), (150.0, 0.0), (400.0, 0.0))
    path.with_name("left-holes.yaml").write_text(drawing_yaml(wide), encoding="utf-8")
    text = " ".join(plan_job(load_job(path, tables), tables).problems)
    assert "3 mm x 3" in text
    assert "83 x 3 mm, more than the region" in text
    path.with_name("left-holes.yaml").write_text("[\n", encoding="utf-8")
    assert "cannot be read" in plan_job(load_job(path, tables), tables).problems[0]


def test_repairs_are_set_up_for_the_machines_on_the_bench(tables):
    tig = Machine("the TIG set", frozenset({"tig"}), current_max_a=200.0)
    mig = Machine("the MIG set", frozenset({"mig"}), current_max_a=60.0)
    small = damage_of(tables, holes=(Holes(3.0, 4),), region_mm=(180.0, 120.0))
    both = decide_repair(BenchCards(tables, Equipment(tig, others=(mig,))), small)
    assert both.card.machine == "the MIG set"
    assert both.plug.card.settings["current"].figure.high <= 60.0
    alone = decide_repair(BenchCards(tables, Equipment(tig)), small)
    assert alone.choice is Choice.PATCH
    assert any("no machine on the bench" in reason.text for reason in alone.reasons)
    assert (alone.card.machine, alone.card.request.process.value) == ("the TIG set", "tig")
