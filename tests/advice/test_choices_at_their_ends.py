"""Choices of the card on either side of the sheet at which they change; shop rules, by hand."""

import pytest

from welds.advice.advise import advise
from welds.advice.equipment import GENERIC, Equipment, Machine, Shelf
from welds.advice.evidence import Outcome, PastWeld, Says
from welds.advice.heat_share import effective_thickness_mm
from welds.advice.pooling import Reading
from welds.advice.reading_words import alone
from welds.advice.request import Joint, Process, Request
from welds.errors import InputError, NotCoveredError
from welds.reference.basis import Basis

TIG, MIG = Process.TIG, Process.MIG


def card(tables, process, metal, thickness, joint=Joint.BUTT, equipment=GENERIC, **more):
    return advise(Request(process, metal, thickness, joint, **more), tables, equipment)


def value(tables, name, *request, **more):
    return card(tables, *request, **more).settings[name].value


@pytest.mark.parametrize(
    ("metal", "thickness", "helps"),
    [
        ("5052", 1.3, True),
        ("5052", 1.4, False),
        ("304", 2.1, True),
        ("304", 2.2, False),
        ("4130", 1.4, False),
    ],
)
def test_a_slow_pulse_on_thin_sheet_and_thin_stainless(tables, metal, thickness, helps):
    assert (value(tables, "pulse", TIG, metal, thickness) != "off") is helps
    plain = Equipment(Machine("a plain set", frozenset({"tig"}), has_pulse=False))
    setting = card(tables, TIG, metal, thickness, equipment=plain).settings["pulse"]
    assert setting.value == "off"
    assert any("blip" in reason.text for reason in setting.reasons) is helps


@pytest.mark.parametrize(
    ("process", "metal", "thickness", "joint", "backing"),
    [
        (TIG, "5052", 3.2, Joint.BUTT, "stainless or copper bar, clean and dry"),
        (TIG, "5052", 3.3, Joint.BUTT, "none"),
        (MIG, "low-carbon", 3.2, Joint.BUTT, "copper bar"),
        (MIG, "low-carbon", 3.3, Joint.BUTT, "none"),
        (TIG, "5052", 1.0, Joint.TEE, "none"),
        (TIG, "5052", 1.0, Joint.EDGE, "none"),
        (TIG, "304", 5.0, Joint.BUTT, "argon purge, 5 L/min"),
        (TIG, "304", 1.0, Joint.TEE, "none"),
        (TIG, "304", 1.0, Joint.EDGE, "none"),
        (TIG, "304", 1.0, Joint.OUTSIDE_CORNER, "none"),
        (MIG, "304", 3.0, Joint.BUTT, "copper bar"),
        (TIG, "titanium-2", 1.0, Joint.TEE, "argon purge, 5 L/min"),
        (MIG, "low-carbon", 1.0, Joint.PLUG, "copper bar"),
    ],
)
def test_what_goes_behind(tables, process, metal, thickness, joint, backing):
    assert value(tables, "backing", process, metal, thickness, joint) == backing


def test_a_bar_that_is_not_there_is_done_without_where_that_goes(tables):
    without = Equipment(
        Machine("a set", frozenset({"tig", "mig"})), Shelf(backing_bars=frozenset({"stainless"}))
    )
    assert value(tables, "backing", MIG, "low-carbon", 2.0, equipment=without) == "none"
    assert value(tables, "backing", TIG, "5052", 2.0, equipment=without).startswith("stainless")
    assert value(tables, "backing", MIG, "low-carbon", 1.0, Joint.PLUG, equipment=without) == "copper bar"


@pytest.mark.parametrize(
    ("process", "thickness", "joint", "is_said"),
    [
        (MIG, 2.0, Joint.BUTT, True), (MIG, 2.1, Joint.BUTT, False), (MIG, 2.0, Joint.PLUG, True),
        (MIG, 2.0, Joint.TEE, False), (TIG, 2.0, Joint.BUTT, True),
    ],
)  # fmt: skip
def test_copper_behind_thin_sheet_is_a_step_of_the_preparation(tables, process, thickness, joint, is_said):
    steps = [step.text for step in card(tables, process, "low-carbon", thickness, joint).preparation]
    assert ("Back it with copper, clamped tight." in steps) is is_said
    assert any("Look behind" in step for step in steps) is (joint is Joint.PLUG)
    assert steps[-1].startswith("Run a test bead")


@pytest.mark.parametrize(
    ("metal", "thickness", "low", "start", "high"),
    [("low-carbon", 2.0, 8, 10, 13), ("low-carbon", 8.0, 13, 18, 22), ("5083", 3.0, 13, 16, 19)],
)
def test_contact_tip_to_work(tables, metal, thickness, low, start, high):
    """Handbook ranges: 6 to 13 mm of wire by short circuit, 13 to 25 mm by spray (from memory)."""
    band = card(tables, MIG, metal, thickness).settings["tip_to_work"].band
    assert (band.low, band.start, band.high) == (low, start, high)


@pytest.mark.parametrize(
    ("metal", "thickness", "tacks"),
    [
        ("304", 2.0, "every 70 to 120 mm (2.75 to 4.75 in), 8 to 13 mm long"),
        ("5052", 2.0, "every 50 to 100 mm (2 to 4 in), 8 to 13 mm long"),
        ("low-carbon", 1.0, "every 19 to 38 mm (0.75 to 1.5 in), 3 to 6 mm long"),
        ("titanium-2", 1.0, "every 15 to 30 mm (0.5 to 1.25 in), 3 to 6 mm long"),
    ],
)
def test_tacks_by_sheet(tables, metal, thickness, tacks):
    assert value(tables, "tacks", TIG, metal, thickness) == tacks


def test_tip_by_diameter_and_current(tables):
    """Remembered from the handbook's table of tip shapes: 1.6 mm 30 degrees to 70 A, 2.4 mm 45 to 150 A."""
    for thickness in (0.8, 1.5, 3.0):
        settings = card(tables, TIG, "304", thickness).settings
        diameter, amps = settings["tungsten_diameter"].value, settings["current"].band.start
        rated = {1.0: [(15, 12), (30, 20)], 1.6: [(50, 25), (70, 30)], 2.4: [(90, 35), (150, 45)]}[diameter]
        angle = next((degrees for most, degrees in rated if amps <= most), rated[-1][1])
        assert settings["tip"].value.startswith(f"{angle} deg cone")
    assert value(tables, "tip", TIG, "5052", 2.0) == "30 to 45 deg cone, small flat"


@pytest.mark.parametrize(
    ("joint", "first", "other", "effective"),
    [
        (Joint.BUTT, 2.0, 3.0, 2.5),
        (Joint.TEE, 2.0, 3.0, 8.0 / 3.0),
        (Joint.TEE, 3.0, 2.0, 7.0 / 3.0),
        (Joint.BUTT, 2.0, 6.0, 3.2),
        (Joint.LAP, 6.0, 2.0, 3.2),
        (Joint.EDGE, 2.0, 2.0, 2.0),
    ],
)
def test_unlike_sheets_as_one(joint, first, other, effective):
    """The mean over the ways out of the heat, never more than 1.6 times the thinner."""
    assert effective_thickness_mm(joint, first, other) == pytest.approx(effective)


@pytest.mark.parametrize(("thick", "is_refused"), [(12.0, False), (12.1, True)])
def test_six_to_one_is_the_most(tables, thick, is_refused):
    request = (TIG, "5052", 2.0)
    if is_refused:
        with pytest.raises(NotCoveredError, match=r"6 to 1.*2\.02 mm .* on 12\.1 mm"):
            card(tables, *request, other_thickness_mm=thick)
    else:
        assert card(tables, *request, other_thickness_mm=thick).settings["current"].start > 0


@pytest.mark.parametrize(
    ("more", "field"),
    [
        ({"thickness": 0.19}, "thickness"), ({"thickness": 80.1}, "thickness"),
        ({"thickness": 2.0, "other_thickness_mm": 0.19}, "other thickness"),
        ({"thickness": 2.0, "gap_mm": -0.1}, "gap"), ({"thickness": 2.0, "gap_mm": 80.1}, "gap"),
        ({"thickness": 2.0, "length_mm": 0.0}, "length"), ({"thickness": 2.0, "length_mm": 1.1e6}, "length"),
    ],
)  # fmt: skip
def test_what_cannot_be_meant(tables, more, field):
    with pytest.raises(InputError, match=field):
        card(tables, TIG, "5052", more.pop("thickness"), **more)


def test_ends_of_what_can_be_meant_are_taken(tables):
    assert card(tables, TIG, "5052", 2.0, length_mm=1e6, gap_mm=0.0).settings
    for thickness in (0.2, 80.0):
        with pytest.raises(NotCoveredError):
            card(tables, TIG, "5052", thickness)


@pytest.mark.parametrize(
    ("outcome", "faults", "says"),
    [
        (Outcome.WORKED_WELL, (), Says.CENTRE),
        (Outcome.WORKED_WELL, ("burn-through",), Says.CENTRE),
        (Outcome.WORKED, (), Says.CENTRE),
        (Outcome.WORKED, ("510",), Says.BELOW),
        (Outcome.WORKED, ("401",), Says.ABOVE),
        (Outcome.WORKED, ("burn-through", "lack-of-fusion"), Says.NOTHING),
        (Outcome.FAILED, (), Says.NOTHING),
        (Outcome.FAILED, ("504",), Says.BELOW),
        (Outcome.FAILED, ("402",), Says.ABOVE),
        (Outcome.FAILED, ("510", "402"), Says.NOTHING),
        (Outcome.FAILED, ("porosity",), Says.NOTHING),
    ],
)
def test_what_a_weld_says_of_its_current(outcome, faults, says):
    """ISO 6520-1: 510 burn-through, 504 excess penetration, 401 lack of fusion, 402 of penetration."""
    assert PastWeld("1", Request(TIG, "5052", 2.0, Joint.BUTT), outcome, 90.0, faults=faults).says is says


@pytest.mark.parametrize(
    ("by_document", "lines"),
    [
        ({"A": 100.0}, 0),
        ({"A": 100.0, "B": 101.9}, 0),
        ({"A": 100.0, "B": 102.1}, 2),
        ({"A": 98.0, "B": 100.1}, 2),
        ({name: 100.0 + 10 * n for n, name in enumerate("ABCDEFG")}, 5),
    ],
)
def test_documents_are_told_apart_from_two_percent(by_document, lines):
    found = alone(Reading(90.0, 100.0, 110.0, Basis.PRINTED, (), by_document))
    assert len(found) == lines
    for reason, (document, amps) in zip(found, by_document.items(), strict=False):
        assert (reason.source, reason.text) == (document, f"this document by itself says {amps:.0f} A")


def test_a_gas_of_three_quarters_helium_counts_as_helium(tables):
    """AC under argon and argon-rich mixes; electrode negative under helium."""
    found = {gas: value(tables, "polarity", TIG, "5052", 3.0, gas=gas) for gas in ("argon", "helium")}
    assert found == {"argon": "AC", "helium": "DCEN"}


def test_the_gas_on_the_shelf_is_taken_where_it_suits(tables):
    machine = Machine("a set", frozenset({"tig"}))
    there = Equipment(machine, Shelf(gases=frozenset({"helium", "co2"})))
    setting = card(tables, TIG, "5052", 3.0, equipment=there).settings["shielding_gas"]
    assert setting.text != card(tables, TIG, "5052", 3.0).settings["shielding_gas"].text
    assert any("not on the shelf" in reason.text for reason in setting.reasons)
    useless = Equipment(machine, Shelf(gases=frozenset({"co2"})))
    assert value(tables, "shielding_gas", TIG, "5052", 3.0, equipment=useless) == "I1"
    with pytest.raises(InputError, match="argon"):
        card(tables, TIG, "5052", 3.0, gas="co2")


@pytest.mark.parametrize(
    ("metal", "thickness", "band"),
    [
        ("low-carbon", 6.0, "none"),
        ("4130", 3.0, "none"),
        ("4130", 3.1, (150, 175, 200)),
        ("430", 3.1, (150, 175, 200)),
        ("5052", 6.0, "none"),
        ("copper", 3.0, "none"),
        ("copper", 3.1, (250, 375, 500)),
    ],
)
def test_preheat_by_metal_and_sheet(tables, metal, thickness, band):
    """EN 1011-2 table C.1 for plain steel, handbooks from memory for the rest."""
    setting = card(tables, TIG, metal, thickness).settings["preheat"]
    found = (
        setting.value if setting.band is None else (setting.band.low, setting.band.start, setting.band.high)
    )
    assert found == band


@pytest.mark.parametrize(
    ("metal", "celsius"), [("5052", 120.0), ("6061", 100.0), ("304", 150.0), ("low-carbon", 150.0)]
)
def test_between_runs(tables, metal, celsius):
    """The metal's own limit; where none is stated hand-warm steel, 150 degC, by shop practice."""
    assert value(tables, "interpass", TIG, metal, 3.0) == celsius
