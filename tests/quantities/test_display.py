"""Figures as a welder reads them."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.quantities.band import Band
from welds.quantities.display import display_unit, show, show_band
from welds.quantities.length import parse_length
from welds.quantities.registry import convert
from welds.quantities.speed import parse_speed
from welds.quantities.units import Units


@pytest.mark.parametrize(
    ("value", "unit", "kind", "metric", "inch"),
    [
        (45.4, "A", "current", "45 A", "45 A"),
        (133, "A", "current", "135 A", "135 A"),
        (118, "Hz", "ac_frequency", "120 Hz", "120 Hz"),
        (71.6, "percent", "electrode_negative", "72 %", "72 %"),
        (8.3, "L/min", "gas_flow", "8.5 L/min", "18 cfh"),
        (2.032, "mm", "thickness", "2.03 mm", "0.080 in"),
        (3.2, "mm", "thickness", "3.2 mm", "0.126 in"),
        (6.35, "mm", "thickness", "6.35 mm", "1/4 in"),
        (6.0, "mm", "stick_out", "6 mm", "1/4 in"),
        (8.0, "mm", "plug_hole", "8 mm", "5/16 in"),
        (5.6, "m/min", "wire_feed", "5.6 m/min", "220 in/min"),
        (2.5, "mm/s", "travel_speed", "150 mm/min", "6 in/min"),
        (0.234, "kJ/mm", "heat_input", "0.23 kJ/mm", "5.9 kJ/in"),
        (120, "degC", "preheat", "120 °C", "250 °F"),
        (17.4, "V", "voltage", "17.5 V", "17.5 V"),
        (2.5, "s", "post_flow", "2.5 s", "2.5 s"),
        (8, "1", "cup", "8", "8"),
        (11, "1", "filter_shade", "11", "11"),
    ],
)
def test_trade_rounding(value: float, unit: str, kind: str, metric: str, inch: str) -> None:
    assert str(show(value, unit, kind, Units.METRIC)) == metric
    assert str(show(value, unit, kind, Units.INCH)) == inch


# Inch names as wire, rod and electrode packets of the trade carry them (AWS A5.12 and A5.10 size tables).
@pytest.mark.parametrize(
    ("kind", "mm", "inch"),
    [
        ("tungsten_diameter", 1.6, "1/16"),
        ("tungsten_diameter", 2.4, "3/32"),
        ("tungsten_diameter", 3.2, "1/8"),
        ("filler_diameter", 1.59, "1/16"),
        ("filler_diameter", 2.4, "3/32"),
        ("wire_diameter", 0.8, "0.030"),
        ("wire_diameter", 0.9, "0.035"),
        ("wire_diameter", 1.0, "0.040"),
        ("wire_diameter", 1.2, "0.045"),
        ("wire_diameter", 0.762, "0.030"),
        ("wire_diameter", 1.143, "0.045"),
    ],
)
def test_sold_sizes_carry_their_inch_name(kind: str, mm: float, inch: str) -> None:
    metric = show(mm, "mm", kind, Units.METRIC)
    assert metric.second_text == f"{inch} in"
    assert show(mm, "mm", kind, Units.INCH).text == inch
    assert show(mm, "mm", kind, Units.INCH).second_text == str(metric)


def test_wire_typed_in_inch_is_the_metric_size_it_is_sold_as() -> None:
    assert str(show(0.762, "mm", "wire_diameter", Units.METRIC)) == "0.8 mm"


def test_size_that_is_not_sold_keeps_its_own_figure() -> None:
    assert str(show(2.9, "mm", "filler_diameter", Units.METRIC)) == "2.9 mm"
    assert show(2.9, "mm", "filler_diameter", Units.INCH).text == "0.114"


def test_bands_share_one_rounding() -> None:
    narrow = show_band(Band(60.4, 67.2, 74.1, "A"), "current", Units.METRIC)
    assert (narrow.low, narrow.start, narrow.high) == ("60", "67", "74")
    wide = show_band(Band(70.4, 89.2, 110.1, "A"), "current", Units.METRIC)
    assert (wide.low, wide.start, wide.high) == ("70", "90", "110")
    assert wide.range_text == "70 to 110"
    assert show_band(Band(4, 4, 4, "1"), "passes", Units.METRIC).range_text == "4"


KINDS = {
    "current": "A",
    "ac_frequency": "Hz",
    "gas_flow": "L/min",
    "wire_feed": "m/min",
    "travel_speed": "mm/s",
    "heat_input": "kJ/mm",
    "interpass": "degC",
    "voltage": "V",
    "pre_flow": "s",
    "stick_out": "mm",
    "thickness": "mm",
    "something_new": "mm",
}


@given(
    st.sampled_from(sorted(KINDS)),
    st.lists(st.floats(min_value=0.2, max_value=400.0), min_size=3, max_size=3).map(sorted),
    st.sampled_from(Units),
)
def test_rounding_keeps_the_order_of_a_band(kind: str, values: list[float], units: Units) -> None:
    shown = show_band(Band(*values, KINDS[kind]), kind, units)
    figures = [_number(text) for text in (shown.low, shown.start, shown.high)]
    assert figures == sorted(figures)
    assert all(re.fullmatch(r"[\d./-]+", text) for text in (shown.low, shown.start, shown.high))


@given(st.floats(min_value=0.2, max_value=80.0), st.sampled_from(Units))
def test_shown_thickness_parses_back_within_its_rounding(mm: float, units: Units) -> None:
    back = parse_length(str(show(mm, "mm", "thickness", units)), field="thickness").mm
    step_mm = 0.001 * 25.4 if units is Units.INCH else 0.01 if mm < 10 else 0.1
    assert back == pytest.approx(mm, rel=0.0051, abs=step_mm / 2 + 1e-9)


@given(st.floats(min_value=0.5, max_value=50.0), st.sampled_from(Units))
def test_shown_speed_parses_back_within_its_rounding(mm_s: float, units: Units) -> None:
    shown = show(mm_s, "mm/s", "travel_speed", units)
    back = parse_speed(str(shown), field="travel").mm_s
    step = {"mm/min": 10 / 60, "in/min": 25.4 / 60}[shown.unit_text]
    assert back == pytest.approx(mm_s, abs=step / 2 + 1e-9)


@given(st.sampled_from(sorted(KINDS)), st.floats(min_value=0.2, max_value=400.0))
def test_units_change_the_words_not_the_value(kind: str, value: float) -> None:
    unit = KINDS[kind]
    for units in Units:
        shown_unit = display_unit(kind, unit, units)
        there_and_back = convert(convert(value, unit, shown_unit), shown_unit, unit)
        assert there_and_back == pytest.approx(value, rel=1e-9)


def test_metric_and_inch_carry_each_other_as_second() -> None:
    assert show(2.032, "mm", "thickness", Units.METRIC).second_text == "0.080 in"
    assert show(2.032, "mm", "thickness", Units.INCH).second_text == "2.03 mm"
    assert show(80, "A", "current", Units.METRIC).second_text == ""


def _number(text: str) -> float:
    if "/" not in text:
        return float(text)
    whole, _, rest = text.rpartition("-")
    top, bottom = rest.split("/")
    return float(whole or 0) + int(top) / int(bottom)
