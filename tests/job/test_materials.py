"""Filler against closed geometry and printed masses; gas, time and cost by hand."""

from math import pi, sqrt, tan

import pytest

from welds.advice.equipment import GENERIC_MACHINE, Equipment, Shelf
from welds.advice.request import Joint
from welds.job.plan import plan_job
from welds.job.weld_section import fillet_section, plug_volume, v_section, weld_section

STEEL, ALUMINIUM = 7.85e-3, 2.7e-3
"""Grams in a cubic millimetre."""


@pytest.mark.parametrize(
    ("leg", "steel", "aluminium"),
    [(3, 35.3, 12.2), (4, 62.8, 21.6), (5, 98.1, 33.8), (6, 141, 48.6), (8, 251, 86.4)],
)
def test_fillet_grams_a_metre(leg: int, steel: float, aluminium: float):
    """Equal-leg fillet, z squared over two (welding institute, job knowledge 95), per metre, three digits."""
    volume = fillet_section(leg) * 1000.0
    assert float(f"{volume * STEEL:.3g}") == steel
    assert float(f"{volume * ALUMINIUM:.3g}") == pytest.approx(aluminium, abs=0.06)


def test_v_against_the_triangle_the_gap_and_the_parabola_integrated():
    thickness, gap, steps = 8.0, 2.0, 20_000
    half = thickness / sqrt(3.0) + gap / 2.0
    groove = (
        sum(gap + 2.0 * tan(pi / 6.0) * thickness * (n + 0.5) / steps for n in range(steps))
        * thickness
        / steps
    )
    cap = sum(1.0 - ((n + 0.5) / steps) ** 2 for n in range(steps)) * 2.0 * half / steps
    assert v_section(thickness, gap) == pytest.approx(groove + cap, rel=1e-6)


def test_square_butt_and_plug():
    assert weld_section(Joint.BUTT, 2.0, 1.0) == pytest.approx(2.0 + 2.0 / 3.0 * 5.0 * 0.5)
    assert plug_volume(8.0, 1.5) == pytest.approx(pi * 16.0 * 1.5)


def test_filler_of_a_metre_of_tee(job_of, tables):
    """1 m in 2 mm sheet: 2 mm2 x 1 m; a fifth over for the cap, 85 % of the rod ends in the weld."""
    plan = plan_job(job_of("joints: [{id: a, joint: tee, length: 500, count: 2}]"), tables)
    filler = plan.materials.fillers[0]
    density = next(row["density_kg_m3"] for row in tables.table("fillers").rows if row["id"] == filler.filler)
    assert plan.amounts["a"].volume_mm3 == 2000.0
    assert filler.kg.start == pytest.approx(2000e-9 * density * 1.2 / 0.85)
    area = pi * filler.diameter_mm**2 / 4.0
    assert filler.length_m.start == pytest.approx(2000.0 * 1.2 / 0.85 / area / 1000.0)


def test_time_gas_and_power_follow_the_card(job_of, tables):
    plan = plan_job(job_of("joints: [{id: a, joint: tee, length: 500}]"), tables)
    settings = plan.set_ups[0].card.settings
    amounts = plan.amounts["a"]
    arc = 500.0 * float(settings["passes"].start) / settings["travel_speed"].figure.start
    assert amounts.arc_s.start == pytest.approx(arc)
    runs = len(plan.tacks["a"].runs)
    flows = settings["pre_flow"].figure.start + settings["post_flow"].figure.start
    assert amounts.gas_l.start == pytest.approx(
        settings["gas_flow"].figure.start * (arc + runs * flows) / 60.0
    )
    assert amounts.arc_s.low < amounts.arc_s.start < amounts.bench_s.start


def test_only_what_has_a_price_costs(job_of, tables):
    priced = job_of("joints: [{id: a, joint: tee, length: 500}]\nprices: {currency: EUR, gas_m3: {I1: 10}}")
    materials = plan_job(priced, tables).materials
    assert [line.what for line in materials.costs] == ["gas I1"]
    assert materials.cost.start == pytest.approx(materials.gases[0].litres.start * 0.01)
    assert "time at the bench" in materials.unpriced
    assert plan_job(job_of("joints: [{id: a, joint: tee, length: 500}]"), tables).materials.cost is None


def test_gas_on_the_shelf_is_taken_off_what_is_to_be_bought(job_of, tables):
    """The shelf names argon, the card its ISO 14175 code I1: the same cylinder."""
    job = job_of("joints: [{id: a, joint: tee, length: 2000, count: 10}]")
    shelf = Shelf(gases=frozenset({"argon"}), gas_left_l=(("argon", 40.0),))
    (gas,) = plan_job(job, tables, Equipment(GENERIC_MACHINE, shelf)).materials.gases
    assert (gas.gas, gas.left_l) == ("I1", 40.0)
    assert gas.buy_l == pytest.approx(gas.litres.high - 40.0)
    (unmeasured,) = plan_job(job, tables).materials.gases
    assert (unmeasured.left_l, unmeasured.buy_l) == (None, pytest.approx(unmeasured.litres.high))
