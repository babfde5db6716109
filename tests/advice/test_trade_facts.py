"""Check values from common practice (no published source), as the trade states them."""

import pytest

from welds.advice.advise import advise
from welds.advice.equipment import Equipment, Machine
from welds.advice.request import Joint, Process, Request
from welds.quantities.registry import convert

SHEET_MM = convert(0.080, "inch", "mm")
TO_150_HZ = Equipment(
    Machine(
        "200 A AC/DC TIG, 230 V",
        frozenset({"tig"}),
        current_min_a=5,
        current_max_a=200,
        ac_frequency_min_hz=50,
        ac_frequency_max_hz=150,
    )
)


def card(tables, joint, equipment=TO_150_HZ, **more):
    return advise(Request(Process.TIG, "5052", SHEET_MM, joint, **more), tables, equipment)


def start(card, name):
    return card.settings[name].start


def test_a_corner_wants_a_wider_arc_than_a_tee(tables):
    corner, tee, butt = (card(tables, joint) for joint in (Joint.OUTSIDE_CORNER, Joint.TEE, Joint.BUTT))
    assert start(corner, "ac_frequency") == pytest.approx(100, abs=5)
    assert 120 <= start(tee, "ac_frequency") <= 130
    assert start(butt, "ac_frequency") == pytest.approx(120, abs=5)


def test_the_full_edge_of_a_corner_melts_without_more_current(tables):
    corner, butt = (card(tables, joint) for joint in (Joint.OUTSIDE_CORNER, Joint.BUTT))
    assert start(corner, "current") == pytest.approx(start(butt, "current"), rel=0.03)


def test_a_tee_takes_more_current_than_a_butt(tables):
    assert (
        1.03 <= start(card(tables, Joint.TEE), "current") / start(card(tables, Joint.BUTT), "current") <= 1.2
    )


def test_frequency_is_clipped_where_the_machine_stops_and_says_so(tables):
    inside = card(tables, Joint.INSIDE_CORNER)
    setting = inside.settings["ac_frequency"]
    assert setting.band.high == 150
    assert any("stops at 150 Hz" in reason.text for reason in setting.reasons)


def test_a_set_up_for_either_neighbour_works_for_080_sheet(tables):
    """0.080 in lies between 14 gauge and 1/8 in: the band must sit between their starts."""
    thinner = advise(Request(Process.TIG, "5052", 1.628, Joint.OUTSIDE_CORNER), tables)
    thicker = advise(Request(Process.TIG, "5052", 3.175, Joint.OUTSIDE_CORNER), tables)
    here = card(tables, Joint.OUTSIDE_CORNER)
    assert start(thinner, "current") < start(here, "current") < start(thicker, "current")


def test_with_a_pedal_the_machine_is_set_as_for_an_eighth(tables):
    thicker = advise(Request(Process.TIG, "5052", 3.175, Joint.OUTSIDE_CORNER), tables)
    top = card(tables, Joint.OUTSIDE_CORNER).settings["machine_maximum"].band
    assert top.start == pytest.approx(start(thicker, "current"), rel=0.08)


def test_no_pedal_no_machine_maximum(tables):
    no_pedal = Equipment(Machine("fixed", frozenset({"tig"}), has_pedal=False))
    assert "machine_maximum" not in card(tables, Joint.BUTT, no_pedal).settings


def test_an_outside_corner_wants_a_gas_lens_and_a_tee_does_not(tables):
    corner, tee = card(tables, Joint.OUTSIDE_CORNER), card(tables, Joint.TEE)
    assert start(corner, "gas_lens") is True
    assert start(tee, "gas_lens") is False
    assert start(corner, "cup") > start(tee, "cup")


def test_film_then_degrease_then_brush_then_wipe(tables):
    steps = [step.text.lower() for step in card(tables, Joint.OUTSIDE_CORNER).preparation]

    def place(*words):
        return next(i for i, text in enumerate(steps) if any(text.startswith(word) for word in words))

    assert place("peel") < place("degrease") < place("brush") < place("wipe")


def test_keep_filler_at_hand_on_a_corner(tables):
    reasons = card(tables, Joint.OUTSIDE_CORNER).settings["filler_metal"].reasons
    assert any("at hand" in reason.text for reason in reasons)


@pytest.mark.parametrize(
    ("metal", "polarity"),
    [
        ("5052", "AC"),
        ("356", "AC"),
        ("magnesium-az31", "AC"),
        ("low-carbon", "DCEN"),
        ("304", "DCEN"),
        ("copper", "DCEN"),
        ("titanium-2", "DCEN"),
    ],
)
def test_ac_for_light_metal_and_electrode_negative_for_the_rest(tables, metal, polarity):
    settings = advise(Request(Process.TIG, metal, 2.0, Joint.BUTT), tables).settings
    assert settings["polarity"].value == polarity
    assert ("ac_frequency" in settings) == (polarity == "AC")


def test_small_holes_in_thin_steel(tables):
    plug = advise(Request(Process.MIG, "low-carbon", 0.9, Joint.PLUG), tables)
    words = " ".join(reason.text for reason in plug.settings["plug_hole"].reasons)
    for word in ("bright metal", "burr", "copper", "from the front", "sound"):
        assert word in words
    assert "copper" in str(plug.settings["backing"].value)
