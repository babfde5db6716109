"""From a request and settings to a bead: what must hold whatever the metal."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from welds.advice.advise import advise
from welds.advice.heat.bead import HeatSettings, bead_of
from welds.advice.heat.disagreement import disagreement, settings_of
from welds.advice.heat.hot_metal import build_hot_metals
from welds.advice.heat.picture import plan, section
from welds.advice.heat.sharing import members
from welds.advice.request import Joint, Process, Request
from welds.errors import InputError, NotCoveredError
from welds.reference.load import load_tables

TABLES = load_tables()
SHEET = Request(Process.TIG, "5052", 2.0, Joint.BUTT)
STEEL = Request(Process.TIG, "low-carbon", 2.0, Joint.BUTT)
SEAMS = [joint for joint in Joint if joint is not Joint.PLUG]


def bead(request=SHEET, current=90.0, travel=4.0, **others):
    return bead_of(request, HeatSettings(current, travel, **others), TABLES)


def test_half_is_cold_and_double_burns_through():
    assert bead().full_penetration
    assert bead().burn_through_margin > 0.0
    assert not bead(current=45.0).full_penetration
    assert bead(current=180.0).burn_through_margin < 0.0


def test_margin_is_nothing_at_the_current_that_falls_out():
    limit = bead().collapse_current_a
    assert bead(current=limit).burn_through_margin == pytest.approx(0.0, abs=0.01)


def test_bands_hold_the_figure_and_come_from_the_stated_error():
    found = bead()
    for band in (found.width_mm, found.depth_mm):
        assert band.low <= band.middle <= band.high
    assert found.width_mm.low < found.width_mm.high


def test_heat_input_is_the_cards_own():
    """EN 1011-1: 0.6 x 13.6 V x 90 A / 4 mm/s = 0.1836 kJ/mm."""
    assert bead().heat_input_kj_mm == pytest.approx(0.6 * 13.6 * 90.0 / 4.0 / 1000.0)


def test_only_carbon_steel_has_a_cooling_time():
    assert bead().cooling_t85_s is None
    found = bead(STEEL, 110.0, 4.0)
    # EN 1011-2, two-dimensional, d = 2 mm, F2 = 0.9
    q = 0.6 * 14.4 * 110.0 / 4000.0
    by_hand = (4300 - 86) * 1e5 * (q / 2.0) ** 2 * (1 / 480**2 - 1 / 780**2) * 0.9
    assert found.cooling_t85_s == pytest.approx(by_hand, rel=1e-6)


def test_more_ways_out_take_more_current():
    """A butt has two ways out, a T-joint three; a thicker neighbour takes more."""
    butt, tee = bead(), bead(Request(Process.TIG, "5052", 2.0, Joint.TEE))
    assert tee.through_current_a > 1.2 * butt.through_current_a
    thick = bead(Request(Process.TIG, "5052", 2.0, Joint.BUTT, other_thickness_mm=4.0))
    assert thick.through_current_a > butt.through_current_a


@pytest.mark.parametrize("joint", SEAMS)
def test_no_heat_is_lost_between_the_pieces(joint):
    """Half plates count half, whole plates whole: the parts of the arc's heat add up to it."""
    first, other = members(joint, 2.0, 3.0)
    ways = 2 if joint in (Joint.TEE, Joint.LAP) else 1
    assert first.share / 2.0 + other.share * ways / 2.0 == pytest.approx(1.0)


def test_preheat_and_a_bar_pull_opposite_ways():
    plain = bead(STEEL, 110.0)
    assert bead(STEEL, 110.0, start_c=150.0).through_current_a < plain.through_current_a
    assert bead(STEEL, 110.0, has_bar=True).through_current_a > plain.through_current_a


def test_frequency_and_balance_are_marked_as_trends():
    found = bead(frequency_hz=150.0, electrode_negative_percent=75.0)
    assert len(found.trends) == 2
    assert found.efficiency.is_trend
    assert found.width_mm.middle != bead().width_mm.middle
    assert bead(electrode_negative_percent=80.0).through_current_a < bead().through_current_a


@pytest.mark.parametrize(
    ("field", "given_values"),
    [
        ("current", {"current": 0.0}),
        ("current", {"current": float("nan")}),
        ("travel", {"travel": 0.0}),
        ("travel", {"travel": float("inf")}),
        ("voltage", {"voltage_v": 400.0}),
        ("preheat", {"start_c": 1200.0}),
        ("frequency", {"request": STEEL, "frequency_hz": 120.0}),
    ],
)
def test_what_cannot_be_meant_is_refused(field, given_values):
    with pytest.raises(InputError, match=field):
        bead(**given_values)


def test_a_plug_does_not_travel():
    with pytest.raises(NotCoveredError, match="travel"):
        bead(Request(Process.MIG, "low-carbon", 1.5, Joint.PLUG))


@settings(max_examples=40)
@given(
    metal=st.sampled_from(
        ["1100", "5052", "6061-T6", "low-carbon", "galvanised", "304", "titanium-2", "copper"]
    ),
    thickness=st.floats(0.6, 12.0),
    joint=st.sampled_from(SEAMS),
    current=st.floats(5.0, 400.0),
    travel=st.floats(0.5, 20.0),
)
def test_every_tig_case_has_an_answer(metal, thickness, joint, current, travel):
    found = bead_of(Request(Process.TIG, metal, thickness, joint), HeatSettings(current, travel), TABLES)
    assert 0.0 <= found.fused_depth_mm <= thickness
    assert found.full_penetration == (found.root_width_mm > 0.0)
    assert found.full_penetration or found.burn_through_margin > 0.0
    assert found.through_current_a <= found.collapse_current_a


@pytest.mark.parametrize("metal", ["low-carbon", "304", "6061"])
def test_mig_has_an_answer_where_the_wire_law_is_known(metal):
    found = bead(Request(Process.MIG, metal, 3.0, Joint.TEE), 150.0, 8.0)
    assert found.model.arc.wire is not None
    assert found.fused_depth_mm > 0.0


def test_hot_metals_lie_between_cold_and_liquid():
    """Carbon steel by EN 1993-1-2, integrated by hand: (31470 + 27.3 x 688) / 1468 = 34.2 W/(m K)."""
    hot = build_hot_metals(TABLES)
    assert hot["low-carbon"].conductivity_w_mk == pytest.approx(34.2, abs=0.1)
    assert all(metal.melting_c > 400.0 for metal in hot.values())


def test_pictures_show_what_the_figures_say():
    found = bead()
    across = section(found)
    molten = across.across_mm[across.temperature_c[0] >= found.model.metal.melting_c]
    cell = across.across_mm[1] - across.across_mm[0]
    assert np.ptp(molten) == pytest.approx(found.fused_width_mm, abs=2.0 * cell)
    (left, right) = (
        line[:, 0].mean()
        for line in sorted(across.isotherm(found.model.metal.melting_c), key=lambda line: line[0, 0])
    )
    assert left == pytest.approx(-right, abs=0.1)
    above = plan(found)
    pool = above.across_mm[(above.temperature_c >= found.model.metal.melting_c).any(axis=0)]
    cell = above.across_mm[1] - above.across_mm[0]
    assert np.ptp(pool) == pytest.approx(found.pool_length_mm, abs=2.0 * cell)


@pytest.mark.parametrize("joint", SEAMS)
@pytest.mark.parametrize("metal", ["5052", "304", "low-carbon"])
def test_cards_and_picture_are_set_side_by_side(metal, joint):
    card = advise(Request(Process.TIG, metal, 2.0, joint), TABLES)
    said = disagreement(card, bead_of(card.request, settings_of(card), TABLES))
    assert said is None or "Both are shown" in said


def test_a_card_that_melts_nothing_is_contradicted_with_both_bands():
    """The card's own current at twelve times its travel."""
    card = advise(STEEL, TABLES)
    start = settings_of(card)
    hurried = HeatSettings(start.current_a, 12.0 * start.travel_mm_s, start.voltage_v)
    said = disagreement(card, bead_of(STEEL, hurried, TABLES))
    assert said is not None
    assert "stay cold" in said
    assert f"{card.settings['current'].figure.low:.0f} to" in said


PLATE = Request(Process.MIG, "low-carbon", 4.0, Joint.BUTT)


def test_the_wires_section_is_its_volume_over_the_travel():
    """By hand: 0.9 mm wire; feed from the card at the same current, which is rounded to 0.1 m/min."""
    card = advise(replace(PLATE, joint=Joint.TEE), TABLES)
    start = settings_of(card)
    feed_mm_s = card.settings["wire_feed"].band.start * 1000.0 / 60.0
    wire_mm = card.settings["wire_diameter"].value
    by_hand = np.pi * wire_mm**2 / 4.0 * feed_mm_s / start.travel_mm_s
    found = bead_of(card.request, start, TABLES)
    assert found.deposited_mm2 == pytest.approx(by_hand, rel=0.03)
    assert found.fillet_leg_mm**2 / 2.0 == pytest.approx(found.deposited_mm2)


def test_only_a_wire_adds_a_known_section_and_only_a_fillet_has_a_leg():
    assert bead().deposited_mm2 is None
    assert bead(PLATE, 150.0, 6.0).deposited_mm2 > 0.0
    assert bead(PLATE, 150.0, 6.0).fillet_leg_mm is None


def test_a_gap_lets_less_current_through_and_counts_in_the_width():
    """Rows on 3.2 mm and more print a gap for just that reason (tests/published/heat_conditions.py)."""
    tight, open_ = (bead(replace(PLATE, gap_mm=gap), 150.0, 6.0) for gap in (0.0, 1.5))
    assert open_.through_current_a < tight.through_current_a
    assert tight.fused_width_mm < open_.fused_width_mm < tight.fused_width_mm + 1.5
    root = section(open_).isotherm(open_.model.metal.melting_c)
    across = np.concatenate(root)[:, 0]
    assert across.max() - across.min() == pytest.approx(open_.fused_width_mm, rel=0.03)


def test_a_gap_no_bead_closes_is_refused():
    with pytest.raises(InputError, match="0 to 8 mm"):
        bead(replace(PLATE, gap_mm=9.0), 150.0, 6.0)
