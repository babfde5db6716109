"""What the card offers beside its choice, and the printed rows that choices rest on, by hand."""

import pytest

from welds.advice.adjustment import Adjustment
from welds.advice.advise import advise
from welds.advice.equipment import Control, Equipment, Machine, Shelf
from welds.advice.request import Joint, Place, Process, Request

TIG, MIG = Process.TIG, Process.MIG
FREE = Equipment(Machine("a large set", frozenset({"tig", "mig"})))


def card(tables, process, metal, thickness, joint=Joint.BUTT, equipment=FREE, steps=(), **more):
    return advise(Request(process, metal, thickness, joint, **more), tables, equipment, None, steps).settings


def others(setting) -> list:
    return [each.value for each in setting.alternatives]


def words(setting) -> str:
    return " | ".join(reason.text for reason in setting.reasons)


def test_gases_beside_argon(tables):
    """Helium and its mixes on aluminium; on steel by MIG carbon dioxide and other mixes, argon on neither."""
    aluminium = card(tables, TIG, "5052", 2.0)["shielding_gas"]
    assert aluminium.text == "argon"
    assert "inert gas only" in words(aluminium)
    assert [each.text for each in aluminium.alternatives][-1] == "helium"
    steel = card(tables, MIG, "low-carbon", 2.0)["shielding_gas"]
    assert "C1" in others(steel)
    assert "inert gas only" not in words(steel)
    for setting in (aluminium, steel):
        names = [setting.text, *(each.text for each in setting.alternatives)]
        assert len(set(names)) == len(names) <= 5


@pytest.mark.parametrize(
    ("thickness", "chosen", "beside"),
    [(1.0, "short-circuit", []), (5.0, "short-circuit", ["spray"]), (6.6, "spray", ["short-circuit"])],
)
def test_transfers_beside_the_usual_one(tables, thickness, chosen, beside):
    setting = card(tables, MIG, "low-carbon", thickness)["transfer"]
    assert (setting.value, others(setting)) == (chosen, beside)


@pytest.mark.parametrize(
    ("metal", "thickness", "rod", "beside"),
    [("5052", 0.8, 1.6, [1.2, 2.0]), ("5052", 2.0, 2.4, [2.0, 3.2]), ("304", 2.0, 1.6, [1.2, 2.0])],
)
def test_rods_beside_the_usual_one(tables, metal, thickness, rod, beside):
    """The sold sizes to either side: 1.0, 1.2, 1.6, 2.0, 2.4, 3.2, 4.0, 4.8 mm."""
    setting = card(tables, TIG, metal, thickness)["filler_diameter"]
    assert (setting.value, others(setting)) == (rod, beside)


def test_a_rod_from_the_shelf_has_the_usual_one_beside_it(tables):
    held = Equipment(FREE.machine, Shelf(fillers=frozenset({("ER5356", 3.2)})))
    setting = card(tables, TIG, "5052", 2.0, equipment=held)["filler_diameter"]
    assert (setting.value, others(setting)) == (3.2, [2.0, 2.4])


@pytest.mark.parametrize(
    ("thickness", "sheet"),
    [
        (1.0, "1.2 mm"),
        (1.1, "1.6 mm"),
        (2.0, "3.2 mm"),
        (2.9, "3.2 mm"),
        (2.95, "4.8 mm"),
        (4.4, "6.4 mm"),
        (6.4, "9.5 mm"),
    ],
)
def test_the_pedal_s_top_is_that_of_the_next_usual_sheet(tables, thickness, sheet):
    """0.8, 1.2, 1.6, 3.2, 4.8, 6.4 mm: the first that is more than a tenth thicker."""
    setting = card(tables, TIG, "5052", thickness)["machine_maximum"]
    assert f"as for about {sheet}" in words(setting)
    working = card(tables, TIG, "5052", thickness)["current"].band.start
    of_sheet = card(tables, TIG, "5052", float(sheet.split()[0]))["current"].band.start
    by_hand = min(max(of_sheet, 1.25 * working), 1.6 * working)
    assert setting.band.start == pytest.approx(by_hand, abs=0.51)
    assert ("kept between 1.25 and 1.6 times" in words(setting)) is (by_hand != of_sheet)


@pytest.mark.parametrize(
    ("thickness", "bore"),
    [(2.0, "8 to 9.5 mm"), (3.0, "9.5 to 11 mm"), (4.2, "11 to 13 mm"), (5.0, "13 to 16 mm")],
)
def test_bore_as_printed_for_the_current(tables, thickness, bore):
    """[CN_WELDING_HB_V1_E2], AC: 8 to 9.5 mm to 100 A, 9.5 to 11 to 150, 11 to 13 to 200, 13 to 16 to 300."""
    settings = card(tables, TIG, "5052", thickness)
    amps = settings["current"].band.start
    by_hand = next(text for most, text in ((100, 8), (150, 9.5), (200, 11), (300, 13)) if amps <= most)
    assert bore.startswith(f"{by_hand:g} to")
    assert f"{bore} bore printed for this current" in words(settings["cup"])
    low, high = (float(each) for each in bore.removesuffix(" mm").split(" to "))
    at_least = max(3.0 * settings["tungsten_diameter"].value, (low + high) / 2)
    assert settings["cup"].value * 25.4 / 16 == pytest.approx(at_least, abs=0.8)


@pytest.mark.parametrize(
    ("process", "metal", "thickness", "floor", "start"),
    [
        (TIG, "304", 0.8, 8, 10),
        (TIG, "5052", 2.0, 8, 12),
        (TIG, "5052", 6.4, 10, 14),
        (MIG, "low-carbon", 1.0, 10, 11),
        (MIG, "low-carbon", 4.0, 10, 12),
        (MIG, "low-carbon", 8.0, 10, 14),
    ],
)
def test_shade_by_the_regulation_and_the_guide(tables, process, metal, thickness, floor, start):
    """OSHA 1910.133(a)(5): TIG 8 to 150 A, 10 above; MIG 10 from 60 A. Starts by the guide of ANSI Z49.1."""
    settings = card(tables, process, metal, thickness)
    shade = settings["filter_shade"]
    assert (shade.band.low, shade.band.start) == (floor, start)
    assert shade.band.high == max(start, min(start + 1, 14))
    assert shade.reasons[0].source == "OSHA-1910.133"
    assert shade.reasons[1].source == "ANSI-Z49.1"


@pytest.mark.parametrize(("metal", "is_said"), [("1100", True), ("5083", True), ("low-carbon", False)])
@pytest.mark.parametrize("process", [TIG, MIG])
def test_an_alloy_is_only_named_where_it_differs(tables, process, metal, is_said):
    setting = card(tables, process, metal, 3.0)["current"]
    assert ("against the family" in words(setting)) is is_said


@pytest.mark.parametrize(
    ("more", "grade"), [({}, True), ({"joint": Joint.EDGE}, False), ({"place": Place.OUTDOORS}, False)]
)
def test_a_flow_that_is_raised_is_no_longer_what_is_printed(tables, more, grade):
    assert card(tables, TIG, "5052", 2.0, **more)["gas_flow"].basis.is_published is grade


@pytest.mark.parametrize(
    ("stock", "chosen", "beside"),
    [
        (set(), "ER5356", "ER5183"),
        ({("ER5183", 2.4)}, "ER5183", "ER5356"),
        ({("ER70S-6", 1.6)}, "ER5356", "ER5183"),
    ],
)
def test_the_filler_that_is_not_taken_is_offered(tables, stock, chosen, beside):
    """Trade: 5052 takes 5356, also 5183 or 5554; steel rod on the shelf changes nothing."""
    held = Equipment(FREE.machine, Shelf(fillers=frozenset(stock)))
    setting = card(tables, TIG, "5052", 2.0, equipment=held)["filler_metal"]
    assert setting.value == chosen
    assert beside in others(setting)
    assert chosen not in others(setting)


def test_a_tungsten_that_only_holds_the_start_is_taken_before_one_that_does_not(tables):
    """Of 1.6 and 2.4 mm on the shelf the one whose rating holds the current that is asked for."""
    held = Equipment(FREE.machine, Shelf(tungstens=frozenset({("WLa20", 1.6), ("WLa20", 2.4)})))
    for thickness, size in ((0.8, 1.6), (3.2, 2.4), (5.0, 2.4)):
        settings = card(tables, TIG, "5052", thickness, equipment=held)
        assert settings["tungsten_diameter"].value == size
    assert "the thickest on hand" in words(
        card(tables, TIG, "5052", 6.4, equipment=held)["tungsten_diameter"]
    )


def step(setting: str, direction: str) -> Adjustment:
    return Adjustment(setting, direction, "porosity", "Change it.", "COMMON_PRACTICE")


def test_a_lens_is_put_on_and_never_taken_off_by_a_fault(tables):
    for direction, joint, is_on in (
        ("up", Joint.TEE, True), ("down", Joint.TEE, False),
        ("up", Joint.OUTSIDE_CORNER, True), ("down", Joint.OUTSIDE_CORNER, True),
    ):  # fmt: skip
        found = card(tables, TIG, "5052", 2.0, joint, steps=(step("gas_lens", direction),))["gas_lens"]
        assert found.value is is_on
    moved = card(tables, TIG, "5052", 2.0, Joint.TEE, steps=(step("gas_lens", "up"),))["gas_lens"]
    assert moved.alternatives == ()
    assert "porosity seen: change it" in words(moved)


@pytest.mark.parametrize(("direction", "by"), [("up", 1), ("down", -1)])
def test_a_cup_goes_one_size(tables, direction, by):
    before = card(tables, TIG, "5052", 2.0)["cup"].value
    after = card(tables, TIG, "5052", 2.0, steps=(step("cup", direction),))["cup"]
    assert after.value == before + by
    assert after.text == f"{after.value * 25.4 / 16:.1f} mm bore"


def test_a_pulse_is_switched_on_and_not_off(tables):
    off = card(tables, TIG, "5052", 3.0)["pulse"]
    assert off.value == "off"
    assert card(tables, TIG, "5052", 3.0, steps=(step("pulse", "up"),))["pulse"].value == others(off)[0]
    assert card(tables, TIG, "5052", 3.0, steps=(step("pulse", "down"),))["pulse"] == off


def test_half_way_up_and_down_within_the_band_and_the_machine(tables):
    """From the start half way to the end, twice three quarters; a machine's step holds what is reached."""
    before = card(tables, TIG, "5052", 2.0)["ac_frequency"].band
    for direction, end in (("up", before.high), ("down", before.low)):
        once = card(tables, TIG, "5052", 2.0, steps=(step("ac_frequency", direction),))["ac_frequency"]
        twice = card(tables, TIG, "5052", 2.0, steps=(step("ac_frequency", direction),) * 2)["ac_frequency"]
        assert once.band.start == pytest.approx((before.start + end) / 2)
        assert twice.band.start == pytest.approx(before.start + 0.75 * (end - before.start))
        assert (once.band.low, once.band.high) == (before.low, before.high)
        assert once.reasons[-1].factor == pytest.approx(once.band.start / before.start)
    coarse = Machine("in tens", frozenset({"tig"}), controls=(Control("ac_frequency", step=10),))
    stepped = card(tables, TIG, "5052", 2.0, equipment=Equipment(coarse), steps=(step("ac_frequency", "up"),))
    assert stepped["ac_frequency"].band.start % 10 == 0
