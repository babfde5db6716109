"""The heat picture's inputs at the ends of what is taken, and its parts by hand."""

from dataclasses import replace

import pytest

from welds.advice.advise import advise
from welds.advice.heat.bead import HeatSettings, bead_of
from welds.advice.heat.disagreement import disagreement, settings_of
from welds.advice.heat.hot_metal import build_hot_metals
from welds.advice.heat.picture import picture_json, plan, section
from welds.advice.request import Joint, Process, Request
from welds.errors import InputError
from welds.reference.tables import Tables

SHEET = Request(Process.TIG, "5052", 2.0, Joint.BUTT)
STEEL = Request(Process.TIG, "low-carbon", 2.0, Joint.BUTT)
MIG_STEEL = Request(Process.MIG, "low-carbon", 4.0, Joint.BUTT)
USUAL = HeatSettings(90.0, 4.0)


@pytest.fixture
def bead(tables: Tables):
    def of(request=SHEET, **more):
        return bead_of(request, replace(USUAL, **more), tables)

    return of


LIMITS = [
    ("current_a", "current", 1.0, 600.0),
    ("travel_mm_s", "travel", 0.2, 200.0),
    ("voltage_v", "voltage", 5.0, 60.0),
    ("start_c", "preheat", -40.0, 400.0),
    ("frequency_hz", "frequency", 20.0, 500.0),
    ("electrode_negative_percent", "electrode negative", 40.0, 99.0),
]


@pytest.mark.parametrize(("name", "field", "low", "high"), LIMITS)
def test_settings_are_taken_up_to_their_ends_and_no_farther(bead, name, field, low, high):
    for end in (low, high):
        assert bead(**{name: end}).collapse_current_a > 0.0
    for beyond in (low - 0.01, high + 0.01):
        with pytest.raises(InputError, match=f"{field}.*{low:g} to {high:g}"):
            bead(**{name: beyond})


def test_a_gap_of_two_thicknesses_is_the_widest(bead):
    assert bead(replace(MIG_STEEL, gap_mm=8.0), current_a=150.0).fused_width_mm >= 0.0
    with pytest.raises(InputError, match="gap"):
        bead(replace(MIG_STEEL, gap_mm=8.01), current_a=150.0)


@pytest.mark.parametrize("metal", ["low-carbon", "304", "titanium-2"])
@pytest.mark.parametrize("more", [{"frequency_hz": 100.0}, {"electrode_negative_percent": 70.0}])
def test_only_an_arc_on_ac_has_frequency_and_balance(bead, metal, more):
    with pytest.raises(InputError, match="only with TIG"):
        bead(replace(SHEET, metal=metal), **more)
    assert bead(replace(SHEET, metal="magnesium-az31"), **more).trends


@pytest.mark.parametrize(
    ("joint", "f2", "f3"),
    [
        (Joint.BUTT, 0.9, 0.9),
        (Joint.TEE, 0.56, 0.67),
        (Joint.LAP, 0.56, 0.67),
        (Joint.INSIDE_CORNER, 0.78, 0.67),
        (Joint.OUTSIDE_CORNER, 0.78, 0.67),
        (Joint.EDGE, 0.9, 0.9),
    ],
)
def test_cooling_time_by_joint(bead, joint, f2, f3):
    """EN 1011-2, annex D, shape factors; thin sheet by the two-dimensional form, thick by the other."""
    thin = bead(replace(STEEL, joint=joint))
    q = thin.heat_input_kj_mm
    flat = (4300 - 86) * 1e5 * (q / 2.0) ** 2 * (1 / 480**2 - 1 / 780**2) * f2
    assert thin.cooling_t85_s == pytest.approx(flat, rel=1e-6)
    thick = bead(replace(STEEL, thickness_mm=20.0, joint=joint))
    assert thick.cooling_t85_s == pytest.approx(6600 * q * (1 / 480 - 1 / 780) * f3, rel=1e-6)


@pytest.mark.parametrize(
    ("metal", "celsius"),
    [
        ("6061-T6", 250.0), ("5052-H32", 345.0), ("low-carbon", 730.0),
        ("304", 650.0), ("titanium-2", None), ("copper", None),
    ],
)  # fmt: skip
def test_where_the_metal_is_no_longer_what_it_was(bead, metal, celsius):
    """Ageing undone, cold work annealed out, the lattice of steel changing, carbides in stainless."""
    found = bead(replace(SHEET, metal=metal), current_a=110.0)
    assert found.affected_c == celsius
    assert (found.heat_affected_width_mm is None) == (celsius is None)
    if celsius is not None:
        assert found.heat_affected_width_mm > 0.0


@pytest.mark.parametrize(("first", "other", "melting"), [(2.0, 3.0, "5052"), (3.0, 2.0, "6061")])
def test_the_thinner_piece_is_drawn_with_its_own_metal(bead, tables, first, other, melting):
    unlike = replace(SHEET, thickness_mm=first, other_metal="6061", other_thickness_mm=other)
    found = bead(unlike)
    assert found.model.thickness_mm == 2.0
    assert found.model.metal == build_hot_metals(tables)[melting]
    assert [piece.thickness_mm for piece in found.pieces] == [first, other]


def test_a_plate_warmer_than_the_bound_has_no_affected_zone(bead):
    aged = replace(SHEET, metal="6061-T6")
    assert bead(aged, start_c=250.0).heat_affected_width_mm is None
    assert bead(aged, start_c=200.0).heat_affected_width_mm > bead(aged, start_c=20.0).heat_affected_width_mm


def test_the_sentence_comes_where_the_bands_part_and_not_before(tables, bead):
    """A card's 30 to 40 A against a model that needs more, and 10 times that: cold, and through."""
    card = advise(STEEL, tables)
    start = settings_of(card)
    usual = bead_of(STEEL, start, tables)
    band = card.settings["current"].figure
    low = usual.through_current_a * (1.0 - usual.error)
    high = usual.collapse_current_a * (1.0 + usual.error)
    assert disagreement(card, usual) is None
    for share, words in ((0.99 * low / band.high, "stay cold"), (1.01 * high / band.low, "fall through")):
        moved = replace(card.settings["current"], band=band.scaled(share))
        said = disagreement(replace(card, settings={**card.settings, "current": moved}), usual)
        assert words in said
        assert f"expects {low:.0f} to {high:.0f} A" in said
    for share in (1.01 * low / band.high, 0.99 * high / band.low):
        moved = replace(card.settings["current"], band=band.scaled(share))
        assert disagreement(replace(card, settings={**card.settings, "current": moved}), usual) is None


def test_the_pictures_frame_is_the_plate_and_the_pool(bead):
    found = bead()
    across, above = section(found, 51), plan(found, cells=51)
    assert across.temperature_c.shape == above.temperature_c.shape == (51, 51)
    assert (across.down_mm[0], across.down_mm[-1]) == (0.0, 2.0)
    assert across.across_mm[-1] == -across.across_mm[0] >= 4.0
    assert across.across_mm[-1] >= 1.6 * found.fused_width_mm / 2.0
    assert above.across_mm[0] <= -1.3 * found.pool_length_mm + 1e-9
    assert above.across_mm[0] <= -2.0 * across.across_mm[-1] + 1e-9
    assert above.down_mm[-1] == -above.down_mm[0] == across.across_mm[-1]
    assert 0.0 < above.across_mm[-1] < -above.across_mm[0]
    for field in (across, above):
        assert field.temperature_c == pytest.approx(
            field.temperature_c[:, ::-1] if field is across else field.temperature_c[::-1]
        )
        assert field.temperature_c.min() >= 20.0
    # The even and the odd grid tell the same field.
    assert section(found, 50).temperature_c.max() == pytest.approx(across.temperature_c.max(), rel=0.02)


def test_the_error_is_that_of_the_heat(bead):
    """A fifth less and a fifth more heat: the ends of width and depth."""
    found = bead()
    assert found.error == 0.20
    less, more = (found.model.with_heat(share) for share in (0.8, 1.2))
    for ends, of in (
        (found.width_mm, lambda model: model.width_mm(90.0, 0.0)),
        (found.depth_mm, lambda model: model.depth_mm(90.0)),
    ):
        assert (ends.low, ends.high) == pytest.approx((of(less), of(more)))


@pytest.mark.parametrize(
    ("thickness", "amps", "half"), [(2.0, 5.0, 4.0), (8.0, 5.0, 12.0), (40.0, 5.0, 40.0), (2.0, 90.0, None)]
)
def test_the_frame_holds_the_zone_the_plate_and_no_more(bead, thickness, amps, half):
    """1.6 times the zone, 1.5 thicknesses, 4 mm: the widest of them, up to 40 mm."""
    found = bead(replace(STEEL, thickness_mm=thickness), current_a=amps)
    zone = found.fused_width_mm / 2.0 + (found.heat_affected_width_mm or 0.0)
    assert section(found, 11).across_mm[-1] == pytest.approx(half or 1.6 * zone)


def test_lines_for_a_painter_are_thinned_but_keep_their_ends(bead):
    drawn = picture_json(bead(), points=20)
    assert drawn["thickness_mm"] == 2.0
    for name in ("section", "pool"):
        roles = {line["role"] for line in drawn[name]}
        assert roles == {"melting", "affected"}
        for line in drawn[name]:
            assert 2 <= len(line["points_mm"]) <= 42
            assert all(len(point) == 2 for point in line["points_mm"])
    full = picture_json(bead(), points=10_000)
    for thin, line in zip(drawn["section"], full["section"], strict=True):
        assert thin["points_mm"][0] == line["points_mm"][0]
        assert thin["points_mm"][-1] == line["points_mm"][-1]
        assert len(line["points_mm"]) > len(thin["points_mm"])
