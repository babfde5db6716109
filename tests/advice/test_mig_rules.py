"""MIG settings of the card against printed plug rows, the trade's wires and the shop rules, by hand."""

from math import prod

import pytest

from welds.advice.advise import advise
from welds.advice.equipment import GENERIC, Equipment, Machine, Shelf
from welds.advice.request import Joint, Process, Request, Transfer
from welds.advice.validate import request_from_fields
from welds.errors import InputError, NotCoveredError
from welds.reference.settings import WireRange


def card(tables, metal, thickness, joint=Joint.BUTT, equipment=GENERIC, **more):
    return advise(Request(Process.MIG, metal, thickness, joint, **more), tables, equipment).settings


def words(setting) -> str:
    return " | ".join(reason.text for reason in setting.reasons)


# ------------------------------------------------------------------------------------- printed plugs


@pytest.mark.parametrize(
    ("top", "volts", "amps"),
    [
        (2.1, 26.0, 180.0), (2.5, 26.0, 180.0), (3.0, 25.29, 237.1),
        (3.2, 25.0, 260.0), (6.4, 24.5, 385.0), (7.6, 24.5, 385.0),
    ],
)  # fmt: skip
def test_aluminium_plugs_lie_on_straight_lines_between_the_printed_rows(tables, top, volts, amps):
    """[MATHERS_2002_T7_7]: 180 A 26 V on 2.5 mm, 260 A 25 V on 3.2 mm, 400 A 24 V and 370 A 25 V on 6.4 mm.

    At 3.0 mm five sevenths of the way: 180 + 57.1 A, 26 - 0.71 V. A fifth beyond the rows their ends hold.
    Voltage a volt either way, current 19 % as for any published row.
    """
    settings = card(tables, "5083", top, Joint.PLUG)
    voltage, current = settings["voltage"].band, settings["current"].band
    assert (voltage.low, voltage.start, voltage.high) == pytest.approx(
        (volts - 1, volts, volts + 1), abs=0.051
    )
    assert current.start == pytest.approx(amps, abs=0.51)
    assert (current.low, current.high) == pytest.approx((0.81 * amps, 1.19 * amps), abs=1.01)
    assert current.low >= 0.81 * amps - 1e-9
    assert current.high <= 1.19 * amps + 1e-9
    assert settings["voltage"].basis.value == settings["current"].basis.value == "printed"
    assert "MATHERS_2002_T7_7" in settings["current"].sources


@pytest.mark.parametrize(("top", "nearest"), [(2.05, "2.5 mm"), (7.75, "6.4 mm")])
def test_aluminium_plugs_beyond_a_fifth_are_refused_with_the_nearest(tables, top, nearest):
    with pytest.raises(NotCoveredError, match=nearest):
        card(tables, "5083", top, Joint.PLUG)


# ---------------------------------------------------------------------------------------------- wire


@pytest.mark.parametrize(
    ("metal", "thickness", "wires"),
    [
        ("low-carbon", 0.8, (0.6, 0.8)),
        ("low-carbon", 1.0, (0.6, 0.8)),
        ("low-carbon", 2.0, (0.8, 0.9)),
        ("low-carbon", 5.0, (0.9, 1.0)),
        ("low-carbon", 8.0, (1.0, 1.2)),
        ("5083", 2.0, (0.8, 0.9)),
        ("5083", 6.0, (1.2,)),
        ("5083", 12.0, (1.6,)),
        ("304", 2.0, (0.8, 0.9)),
    ],
)
def test_wire_by_sheet(tables, metal, thickness, wires):
    """The trade: 0.6 or 0.8 mm on body sheet, 0.8 or 0.9 to 5 mm, 1.0 or 1.2 on plate; aluminium thicker."""
    setting = card(tables, metal, thickness)["wire_diameter"]
    assert setting.value in wires
    assert setting.value not in [each.value for each in setting.alternatives]
    assert setting.rows


@pytest.mark.parametrize("metal", ["low-carbon", "5083"])
def test_a_thicker_sheet_never_takes_a_thinner_wire(tables, metal):
    wires = [card(tables, metal, 1.6 + 0.4 * n)["wire_diameter"].value for n in range(20)]
    assert wires == sorted(wires)
    assert len(set(wires)) > 1


def test_a_wire_that_is_asked_for_is_used(tables):
    """0.035 in, 0.889 mm, is sold as 0.9 mm; thicker wire in the same sheet takes more current."""
    thin, thick = (card(tables, "low-carbon", 2.0, wire_diameter_mm=each) for each in (0.8, 1.2))
    assert (thin["wire_diameter"].value, thick["wire_diameter"].value) == (0.8, 1.2)
    assert thick["current"].band.start > thin["current"].band.start
    assert thick["wire_feed"].band.start < thin["wire_feed"].band.start
    assert card(tables, "low-carbon", 2.0, wire_diameter_mm=0.889)["wire_diameter"].value == 0.9


@pytest.mark.parametrize(("asked", "nearest"), [(0.7, "0.6|0.8"), (1.08, "1.0|1.2"), (2.4, "1.2|1.6")])
def test_a_wire_no_shop_sells_is_refused_with_the_nearest(tables, asked, nearest):
    with pytest.raises(InputError, match=nearest):
        card(tables, "low-carbon", 2.0, wire_diameter_mm=asked)


@pytest.mark.parametrize(
    ("typed", "nearest"), [("0.7 mm", "0.6|0.8"), ("1.45 mm", "1.6"), ("2.9 mm", "2.4|3.2")]
)
def test_a_wire_typed_between_sizes_is_refused_with_the_nearest(tables, typed, nearest):
    fields = {"process": "mig", "metal": "low-carbon", "thickness": "2 mm", "joint": "butt", "wire": typed}
    with pytest.raises(InputError) as refusal:
        request_from_fields(fields, tables)
    assert str(refusal.value.nearest).removesuffix(" mm") in nearest.split("|")


def test_the_wire_that_is_there_is_taken(tables):
    usual = card(tables, "low-carbon", 2.0)["wire_diameter"].value
    for stock, fed, chosen in (
        ({("ER70S-6", 1.2)}, set(), 1.2),
        (set(), {0.6}, 0.6),
        ({("ER70S-6", 1.2), ("ER70S-6", 0.6)}, {0.6}, 0.6),
        ({("ER70S-6", 1.2)}, {0.6}, 0.6),  # the spool does not fit the rolls: it has to be bought
        ({("ER70S-6", usual), ("ER70S-6", 1.2)}, set(), usual),
    ):
        machine = Machine("a feeder", frozenset({"mig"}), wire_diameters_mm=frozenset(fed))
        bench = Equipment(machine, Shelf(wires=frozenset(stock)))
        setting = card(tables, "low-carbon", 2.0, equipment=bench)["wire_diameter"]
        assert setting.value == chosen
        assert ("this one is there" in words(setting)) == (chosen != usual)


# ------------------------------------------------------------------------------------------ transfer


@pytest.mark.parametrize(
    ("metal", "thickness", "position", "transfer"),
    [
        ("low-carbon", 1.0, "PA", "short-circuit"),
        ("low-carbon", 6.5, "PA", "short-circuit"),
        ("low-carbon", 6.6, "PA", "spray"),
        ("low-carbon", 6.6, "PB", "spray"),
        ("low-carbon", 6.6, "PF", "short-circuit"),
        ("304", 6.6, "PA", "spray"),
        ("5083", 2.0, "PF", "spray"),
    ],
)
def test_transfer_by_sheet_and_position(tables, metal, thickness, position, transfer):
    """Shop rule: steel by short circuit to 6.5 mm and out of position, spray flat above; aluminium spray."""
    setting = card(tables, metal, thickness, position=position)["transfer"]
    assert setting.value == transfer
    assert transfer not in [each.value for each in setting.alternatives]


def test_a_transfer_that_no_row_covers_is_refused_with_what_is_held(tables):
    with pytest.raises(NotCoveredError, match=r"cover 3\.2 mm .* to 10\.0 mm .*3\.2 mm .* by MIG, or TIG"):
        card(tables, "low-carbon", 1.0, transfer=Transfer.SPRAY)
    asked = card(tables, "low-carbon", 6.0, transfer=Transfer.SPRAY)
    assert asked["transfer"].value == "spray"
    assert "as asked" in words(asked["transfer"])


def test_a_wire_carries_only_so_much(tables):
    """0.8 mm steel wire by short circuit ends at some 150 A in every table of that trade."""
    settings = card(tables, "low-carbon", 6.0, wire_diameter_mm=0.8)
    assert settings["current"].band.high <= 160.0
    assert settings["current"].band.low <= settings["current"].band.start <= settings["current"].band.high


# ----------------------------------------------------------------------------------- current by hand


@pytest.mark.parametrize(
    ("metal", "thickness", "more"),
    [
        ("low-carbon", 2.0, {}),
        ("low-carbon", 2.0, {"joint": Joint.TEE}),
        ("low-carbon", 2.0, {"joint": Joint.LAP, "position": "PF"}),
        ("low-carbon", 2.0, {"joint": Joint.OUTSIDE_CORNER, "wire_diameter_mm": 0.8}),
        ("low-carbon", 2.0, {"other_thickness_mm": 3.0}),
        ("4130", 2.0, {"joint": Joint.TEE, "position": "PE"}),
        ("5083", 4.0, {"joint": Joint.TEE}),
        ("5083", 6.0, {"position": "PE"}),
        ("304", 2.0, {"joint": Joint.EDGE, "position": "PG"}),
    ],
)
def test_the_start_is_the_base_times_every_factor_said(tables, metal, thickness, more):
    """To the ampere that base and start are each rounded to; the wire is that of the reason or 0.9 mm."""
    setting = card(tables, metal, thickness, **more)["current"]
    base = float(setting.reasons[0].text.split(": ")[1].split(" A from")[0])
    factor = prod(reason.factor for reason in setting.reasons if reason.factor is not None)
    assert setting.band.start == pytest.approx(base * factor, abs=0.51 + 0.51 * factor)
    assert setting.band.low < setting.band.start < setting.band.high
    assert any("draws heat like" in reason.text for reason in setting.reasons) is (
        "other_thickness_mm" in more
    )


def test_current_of_another_wire_grows_with_less_than_its_diameter(tables):
    """Trade: from 0.8 to 1.2 mm about a fifth more in the same sheet, never in step with the wire (1.5)."""
    thin, thick = (card(tables, "low-carbon", 2.0, wire_diameter_mm=each)["current"] for each in (0.8, 1.2))
    ratio = thick.band.start / thin.band.start
    assert 1.05 < ratio < 1.5
    for setting, wire in ((thin, 0.8), (thick, 1.2)):
        said = next(reason for reason in setting.reasons if "mm wire instead of 0.9 mm" in reason.text)
        assert (said.factor > 1.0) is (wire > 0.9)
    usual = card(tables, "low-carbon", 2.0, wire_diameter_mm=0.9)["current"]
    assert not any("wire instead" in reason.text for reason in usual.reasons)


@pytest.mark.parametrize(("gas", "volts"), [("co2", 1.5), (None, 0.0)])
def test_carbon_dioxide_wants_more_volts_at_the_same_current(tables, gas, volts):
    """Shop practice: a volt or two over an argon-rich mix."""
    plain = card(tables, "low-carbon", 2.0)["voltage"].band.start
    found = card(tables, "low-carbon", 2.0, gas=gas)["voltage"].band.start
    assert found - plain == pytest.approx(volts, abs=1.01 if gas else 0.0)


@pytest.mark.parametrize("thickness", [1.0, 2.0, 5.0, 8.0])
def test_voltage_lies_where_the_trade_sets_it(tables, thickness):
    """Short circuit on steel 15 to 22 V, spray 24 to 32 V, both growing with the current."""
    settings = card(tables, "low-carbon", thickness)
    low, high = (24.0, 32.0) if settings["transfer"].value == "spray" else (15.0, 22.0)
    assert low <= settings["voltage"].band.start <= high
    line = settings["voltage"].reasons[0].text
    at_zero, slope = float(line.split(" V and ")[0]), float(line.split(" V and ")[1].split(" V per")[0]) / 100
    assert settings["voltage"].band.start == pytest.approx(
        at_zero + slope * settings["current"].band.start,
        abs=0.05 + 0.051 + 0.0005 * settings["current"].band.start,
    )


def test_a_gas_without_rows_borrows_a_line_with_a_volt_more_room(tables):
    """Helium mixes want about a volt and a half more than argon with a little carbon dioxide: shop rule."""
    printed, borrowed = (card(tables, "304", 2.0, gas=gas)["voltage"] for gas in ("he-ar-co2", "ar-2co2"))
    assert borrowed.band.start == pytest.approx(printed.band.start - 1.5, abs=0.051)
    room = printed.band.high - printed.band.start
    assert borrowed.band.high - borrowed.band.start == pytest.approx(room + 1.0, abs=0.11)
    assert "about -1.5 V from there" in words(borrowed)
    assert "runs about" not in words(printed)


@pytest.mark.parametrize(("wire", "is_said"), [(0.8, False), (1.2, True)])
def test_a_wire_too_thick_for_the_sheet_is_said(tables, wire, is_said):
    """1.2 mm wire is usual from 100 A; 1 mm sheet takes some 70 A."""
    setting = card(tables, "low-carbon", 1.0, wire_diameter_mm=wire)["current"]
    assert (f"{wire:g} mm wire is usual from" in words(setting)) is is_said


@pytest.mark.parametrize(
    ("metal", "family", "wire"),
    [("low-carbon", "carbon-steel", 0.8), ("5083", "aluminium", 1.2), ("304", "stainless", 0.9)],
)
def test_the_wires_sources_are_those_of_its_own_size(tables, metal, family, wire):
    settings = card(tables, metal, 5.0, wire_diameter_mm=wire)
    here = (family, settings["transfer"].value, wire)
    rows = [row for row in tables.records(WireRange) if (row.family, row.transfer, row.wire_mm) == here]
    assert settings["wire_diameter"].sources == tuple(dict.fromkeys(row.source_id for row in rows))
    assert rows
