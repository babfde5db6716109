"""TIG current and travel put together by hand from what the reasons say: base, joint, metals, hand."""

from math import ceil, floor, prod, sqrt

import pytest

from welds.advice.advise import advise
from welds.advice.factors import joint_factor
from welds.advice.request import Hand, Joint, Process, Request
from welds.errors import NotCoveredError
from welds.physics.conduction import power_to_melt_thin_plate
from welds.reference.metals import find_metal


def card(tables, metal="5052", thickness=2.0, joint=Joint.BUTT, process=Process.TIG, **more):
    return advise(Request(process, metal, thickness, joint, **more), tables).settings


def factors(setting) -> list[float]:
    return [reason.factor for reason in setting.reasons if reason.factor is not None]


def base_a(setting) -> float:
    """Return the pooled current that the first reason prints."""
    return float(setting.reasons[0].text.split(": ")[1].split(" A from")[0])


@pytest.mark.parametrize("metal", ["5052", "1100", "304", "low-carbon", "titanium-2", "copper"])
@pytest.mark.parametrize("joint", [Joint.BUTT, Joint.TEE, Joint.LAP, Joint.OUTSIDE_CORNER, Joint.EDGE])
@pytest.mark.parametrize("position", ["PA", "PF"])
def test_the_start_is_the_base_times_every_factor_said(tables, metal, joint, position):
    """To the ampere that base and start are each rounded to."""
    setting = card(tables, metal, 2.0, joint, position=position)["current"]
    by_hand = base_a(setting) * prod(factors(setting))
    assert setting.band.start == pytest.approx(by_hand, abs=0.51 + 0.51 * prod(factors(setting)))
    assert setting.band.low < setting.band.start < setting.band.high
    assert all(each == int(each) for each in (setting.band.low, setting.band.start, setting.band.high))


@pytest.mark.parametrize(
    ("joint", "low", "high"),
    [
        (Joint.TEE, 1.03, 1.2),
        (Joint.LAP, 1.03, 1.2),
        (Joint.INSIDE_CORNER, 1.0, 1.15),
        (Joint.OUTSIDE_CORNER, 0.95, 1.05),
        (Joint.EDGE, 0.85, 1.0),
    ],
)
def test_a_joint_is_told_once_with_its_factor(tables, joint, low, high):
    """The trade: a fillet a tenth more than a butt, an edge less, an outside corner about the same."""
    setting, butt = (card(tables, joint=each)["current"] for each in (joint, Joint.BUTT))
    words = joint.value.replace("-", " ").replace("tee", "T-joint")
    said = [reason for reason in setting.reasons if reason.text.startswith(f"{words}: ")]
    assert len(said) == 1
    assert low <= said[0].factor <= high
    assert setting.band.start == pytest.approx(said[0].factor * butt.band.start, abs=1.1)
    assert not [reason for reason in butt.reasons if reason.text.startswith("butt: ")]


def test_fillets_under_helium_start_from_printed_t_joints(tables):
    """No factor for the T-joint itself; a lap by the quotient of the two factors over a butt."""
    tee, lap, corner = (
        card(tables, "5083", 3.2, joint, gas="helium")["current"]
        for joint in (Joint.TEE, Joint.LAP, Joint.OUTSIDE_CORNER)
    )
    assert tee.reasons[0].text.startswith("T-joint in aluminium")
    assert not any(reason.text.startswith("T-joint: ") for reason in tee.reasons)
    over_butt = [
        joint_factor(tables, Process.TIG, "aluminium", "any", joint, "helium").value
        for joint in (Joint.LAP, Joint.TEE)
    ]
    assert lap.band.start == pytest.approx(tee.band.start * over_butt[0] / over_butt[1], abs=1.1)
    assert corner.reasons[0].text.startswith("butt in aluminium")


def test_unlike_metals_take_the_middle_of_the_ratio(tables):
    """Between 96 and 80 A it is the root of 96 x 80, not their mean."""
    one, other, both = (
        card(tables, metal, 3.0, other_metal=second)["current"].band
        for metal, second in (("1100", None), ("5083", None), ("1100", "5083"))
    )
    for end in ("low", "start", "high"):
        by_hand = sqrt(getattr(one, end) * getattr(other, end))
        assert getattr(both, end) == pytest.approx(by_hand, abs=1.1)
    for second, is_said in ((None, False), ("1100", False), ("5083", True)):
        setting = card(tables, "1100", 3.0, other_metal=second)["current"]
        assert any(reason.text.startswith("unlike metals") for reason in setting.reasons) is is_said


def test_unlike_thicknesses_are_asked_as_the_sheet_between(tables):
    """2 on 3 mm as a butt draws as 2.5 mm does."""
    unlike = card(tables, other_thickness_mm=3.0)["current"]
    assert unlike.band == card(tables, thickness=2.5)["current"].band
    assert any("draws heat like two pieces of 2.5 mm" in reason.text for reason in unlike.reasons)


@pytest.mark.parametrize(("thickness", "nearest"), [(0.2, 0), (25.0, 1)])
def test_beyond_the_rows_the_nearest_end_is_named(tables, thickness, nearest):
    with pytest.raises(NotCoveredError) as refusal:
        card(tables, thickness=thickness)
    ends = str(refusal.value).split("cover ")[1].split("; nearest")[0].split(" to ")
    assert str(refusal.value).endswith(ends[nearest])


# ------------------------------------------------------------------------------------------ hands


@pytest.mark.parametrize("metal", ["304", "low-carbon"])
def test_a_brisk_hand_takes_more_current_and_travels_faster(tables, metal):
    calm, brisk = (card(tables, metal, 1.5, hand=hand) for hand in (Hand.UNHURRIED, Hand.BRISK))
    assert brisk["current"].band.start > 1.1 * calm["current"].band.start
    assert brisk["travel_speed"].band.start > 1.3 * calm["travel_speed"].band.start
    assert "about" in calm["current"].reasons[-1].text


@pytest.mark.parametrize("metal", ["304", "low-carbon"])
def test_an_unhurried_travel_is_the_brisk_one_at_less_power(tables, metal):
    """[WELLS-1952]: the same melted width (2 mm and 1.5 sheets) at both speeds, powers as the currents."""
    calm = card(tables, metal, 1.5)["travel_speed"]
    share = next(reason.factor for reason in calm.reasons if reason.factor is not None)
    brisk = float(calm.reasons[0].text.split("print ")[1].split(" mm/s")[0])
    found = find_metal(tables, metal)
    powers = [
        power_to_melt_thin_plate(
            found.conductivity_w_mk,
            found.density_kg_m3 * found.specific_heat_j_kgk,
            1500.0,
            1.5,
            2.0 + 1.5 * 1.5,
            speed,
        )
        for speed in (calm.band.start, brisk)
    ]
    assert 0.4 < share < 0.9
    assert powers[0] / powers[1] == pytest.approx(share, rel=0.03)
    assert 0.4 * calm.band.start <= calm.band.low <= 0.86 * calm.band.start


@pytest.mark.parametrize(
    ("process", "metal", "pace"),
    [(Process.TIG, "copper", (1.5, 2.5, 4.0)), (Process.MIG, "304", (5.0, 7.5, 11.0))],
)
def test_a_hands_usual_pace_where_no_row_prints_one(tables, process, metal, pace):
    """Shop practice: 90 to 240 mm/min by TIG, 300 to 660 by MIG."""
    setting = card(tables, metal, 2.0, process=process)["travel_speed"]
    assert (setting.band.low, setting.band.start, setting.band.high) == pace
    assert "usual pace" in setting.reasons[0].text


def test_bands_are_whole_amperes_inside_what_was_pooled(tables):
    """Low is rounded up and high down: never outside what rows carry."""
    for thickness in (0.8, 1.0, 1.27, 2.03, 3.175):
        setting = card(tables, thickness=thickness)["current"]
        middle = base_a(setting) * prod(factors(setting))
        assert ceil(0.72 * middle) <= setting.band.low
        assert setting.band.high <= floor(1.28 * middle) + 1
