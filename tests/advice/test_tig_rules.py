"""TIG settings of the card by the shop rule: cup, stick-out, tungsten, waveform, pedal, rod, position."""

import pytest

from welds.advice.advise import advise
from welds.advice.equipment import GENERIC, Equipment, Machine, Shelf
from welds.advice.request import Coating, Hand, Joint, Process, Request

TIG = Process.TIG
STEEL = "low-carbon"


def card(tables, process, metal, thickness, joint=Joint.BUTT, equipment=GENERIC, **more):
    return advise(Request(process, metal, thickness, joint, **more), tables, equipment).settings


def shelf(**more) -> Equipment:
    return Equipment(Machine("a set", frozenset({"tig", "mig"})), Shelf(**more))


def texts(setting) -> str:
    return " | ".join(reason.text for reason in setting.reasons)


@pytest.mark.parametrize(("metal", "thickness"), [("5052", 1.0), ("5052", 3.0), ("304", 1.5)])
def test_bore_is_three_tungstens_at_least(tables, metal, thickness) -> None:
    """A cup's number counts sixteenths of an inch."""
    for joint in (Joint.BUTT, Joint.TEE, Joint.LAP, Joint.INSIDE_CORNER):
        settings = card(tables, TIG, metal, thickness, joint)
        bore = settings["cup"].value * 25.4 / 16
        assert bore >= 3 * settings["tungsten_diameter"].value - 0.8
        assert f"{bore:.1f} mm bore" in settings["cup"].text
        chosen = settings["cup"].value
        assert [each.value for each in settings["cup"].alternatives] == [chosen - 1, chosen + 1]


def test_a_cup_goes_one_smaller_into_a_corner_and_two_larger_with_a_lens(tables) -> None:
    butt, tee, corner = (
        card(tables, TIG, "5052", 2.0, joint)["cup"].value
        for joint in (Joint.BUTT, Joint.TEE, Joint.OUTSIDE_CORNER)
    )
    assert (tee, corner) == (butt - 1, butt + 2)
    assert butt in (6, 7)  # what the trade puts on for sheet of this thickness


def test_the_largest_cup_on_the_shelf_is_the_last(tables) -> None:
    settings = card(tables, TIG, "5052", 2.0, Joint.OUTSIDE_CORNER, shelf(cups=frozenset({4, 5, 6})))
    assert settings["cup"].value == 6
    only = card(tables, TIG, "5052", 2.0, Joint.TEE, shelf(cups=frozenset({7})))["cup"]
    assert (only.value, only.alternatives) == (7, ())


def test_stick_out_by_joint_and_lens(tables) -> None:
    """1/8 to 3/16 in on a butt, 1/4 to 3/8 in into a fillet, but 6 mm at most without a lens, 10 with one."""
    butt = card(tables, TIG, "5052", 2.0)["stick_out"].band
    assert (butt.low, butt.start, butt.high) == (3.2, 4.0, 4.8)
    for joint in (Joint.TEE, Joint.LAP, Joint.INSIDE_CORNER):
        plain = card(tables, TIG, "5052", 2.0, joint)
        assert plain["gas_lens"].value is False
        assert plain["stick_out"].band.high == 6.0
        lens = card(tables, TIG, "304", 2.0, joint)
        assert lens["gas_lens"].value is True
        band = lens["stick_out"].band
        assert (band.low, band.start, band.high) == (6.4, 8.0, 9.5)


@pytest.mark.parametrize(
    ("amps_of", "metal", "least"), [("AC", "5052", 1.0), ("DCEN", "304", 0.5), ("DCEN", STEEL, 0.5)]
)
def test_tungsten_grows_with_the_sheet_and_holds_the_current(tables, amps_of, metal, least) -> None:
    """Trade figures: 1.6 mm to about 100 A AC or 150 A DCEN, 2.4 mm to 180 or 250 A."""
    sizes = []
    for thickness in (1.0, 1.6, 3.2, 5.0, 6.4):
        settings = card(tables, TIG, metal, thickness)
        assert settings["polarity"].value == amps_of
        sizes.append(settings["tungsten_diameter"].value)
        limit = {
            "AC": {1.6: 120, 2.4: 200, 3.2: 275, 4.0: 375},
            "DCEN": {1.0: 90, 1.6: 160, 2.4: 260, 3.2: 420},
        }
        most = limit[amps_of].get(sizes[-1])
        assert most is None or settings["current"].band.start <= most
    assert sizes == sorted(sizes)
    assert sizes[0] >= least
    assert sizes[-1] > sizes[0]


def test_ac_frequency_comes_down_on_thick_plate(tables) -> None:
    thin, thick = (card(tables, TIG, "5083", each)["ac_frequency"].band for each in (6.0, 10.0))
    assert (thin.low, thin.start, thin.high) == (90, 120, 140)
    assert (thick.low, thick.start, thick.high) == (60, 70, 80)


def test_more_cleaning_for_castings_and_anodised_metal(tables) -> None:
    clean = card(tables, TIG, "5052", 2.0)["electrode_negative"].band
    assert (clean.low, clean.start, clean.high) == (65, 70, 80)
    assert "fades above about 90 %" in texts(card(tables, TIG, "5052", 2.0)["electrode_negative"])
    for more in ({"metal": "356"}, {"metal": "5052", "coatings": (Coating.ANODISED,)}):
        dirty = card(tables, TIG, more.pop("metal"), 4.0, **more)["electrode_negative"].band
        assert (dirty.low, dirty.start, dirty.high) == (50, 60, 65)


@pytest.mark.parametrize("thickness", [1.0, 2.0, 3.0, 5.0])
def test_pedal_room_is_a_quarter_to_six_tenths(tables, thickness) -> None:
    settings = card(tables, TIG, "5052", thickness)
    working, top = settings["current"].band.start, settings["machine_maximum"].band
    assert 1.25 * working - 1 <= top.start <= 1.6 * working + 1
    assert top.low == min(round(1.1 * working), top.start)
    assert top.high == max(round(1.6 * working), top.start)


@pytest.mark.parametrize(("metal", "thickness"), [("5052", 2.0), ("304", 1.5), ("5083", 6.0)])
def test_a_rod_is_about_as_thick_as_the_sheet(tables, metal, thickness) -> None:
    """Shop rule: half to once the sheet up to 3 mm or so, and one that is sold."""
    setting = card(tables, TIG, metal, thickness)["filler_diameter"]
    assert setting.value in (1.0, 1.2, 1.6, 2.4, 3.2, 4.0, 4.8)
    assert 0.4 * thickness <= setting.value <= 1.35 * thickness
    assert all(each.value != setting.value for each in setting.alternatives)


def test_a_rod_from_the_shelf_says_how_it_feeds(tables) -> None:
    for size, word in ((1.0, "thinner one faster"), (4.0, "thicker one slower")):
        held = shelf(fillers=frozenset({("ER5356", size)}))
        setting = card(tables, TIG, "5052", 2.0, equipment=held)["filler_diameter"]
        assert setting.value == size
        assert word in texts(setting)


def test_a_brisk_hand_starts_half_way_to_the_top(tables) -> None:
    calm = card(tables, TIG, "5052", 2.0, hand=Hand.UNHURRIED)["current"].band
    brisk = card(tables, TIG, "5052", 2.0, hand=Hand.BRISK)["current"].band
    assert (brisk.low, brisk.high) == (calm.low, calm.high)
    assert brisk.start == pytest.approx((calm.start + calm.high) / 2, abs=1.0)


@pytest.mark.parametrize(
    ("position", "share"), [("PB", 1.0), ("PC", 0.95), ("PD", 0.90), ("PF", 0.90), ("PG", 0.95)]
)
def test_out_of_flat_takes_a_little_less(tables, position, share) -> None:
    """Shop rule by position; TIG overhead instead 10 to 20 A less, as one book prints."""
    flat = card(tables, TIG, "5052", 2.0, Joint.TEE)["current"].band
    there = card(tables, TIG, "5052", 2.0, Joint.TEE, position=position)["current"].band
    assert there.start == pytest.approx(share * flat.start, abs=1.0)
    assert there.high == pytest.approx(share * flat.high, abs=1.5)


def test_overhead_by_tig_is_fifteen_amperes_less_and_never_more_than_a_fifth(tables) -> None:
    for thickness, joint in ((0.8, Joint.BUTT), (3.0, Joint.BUTT), (1.0, Joint.EDGE), (3.0, Joint.TEE)):
        flat = card(tables, TIG, "5052", thickness, joint)["current"].band.start
        overhead = card(tables, TIG, "5052", thickness, joint, position="PE")["current"].band.start
        assert overhead == pytest.approx(max(flat - 15, 0.8 * flat), abs=1.0)
