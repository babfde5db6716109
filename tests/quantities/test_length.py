"""Lengths as people type them."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.errors import AmbiguousInputError, InputError
from welds.quantities.length import GAP, WELD_LENGTH, parse_length
from welds.quantities.units import Units

# Invented gauge table: the real ones live in data/ and belong to a metal.
GAUGES = {10: 2.5, 14: 1.6, 20: 0.8}


def gauge(number: int) -> float:
    if number not in GAUGES:
        raise InputError("gauge", number, "10, 14, 20")
    return GAUGES[number]


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("2mm", 2.0),
        ("2 mm", 2.0),
        ("2.0 MM", 2.0),
        ("0.080", 2.032),
        (".080 in", 2.032),
        ("0,080 in", 2.032),
        ("1/8", 3.175),
        ("1/8 in", 3.175),
        ("1/8-in", 3.175),
        ("⅛ in", 3.175),
        ('3/16"', 4.7625),
        ("3/16″", 4.7625),
        ("1-1/2 in", 38.1),
        ("1 1/2 inches", 38.1),
        ("1½ in", 38.1),
        ("5/64 in", 1.984375),
        ("14 ga", 1.6),
        ("14ga", 1.6),
        ("14-gauge", 1.6),
        ("1,6 mm", 1.6),
        ("1.2 cm", 12.0),
        ("0.4", 0.4 * 25.4),  # also 0.4 mm: see the ambiguous ones; here with inch as the person's units
    ],
)
def test_typed_lengths(text: str, mm: float) -> None:
    parsed = parse_length(text, field="thickness", gauge=gauge, default=Units.INCH)
    assert parsed.mm == pytest.approx(mm, abs=1e-6)


@pytest.mark.parametrize(
    ("text", "default", "mm"),
    [
        ("2", Units.METRIC, 2.0),
        ("2", Units.INCH, 50.8),
        ("14", Units.METRIC, 14.0),
        ("0.125", None, 3.175),  # 0.125 mm is no sheet
        ("12.5", None, 12.5),  # 12.5 in is no sheet, and gauges are whole
        ("40", None, 40.0),  # beyond every gauge number
    ],
)
def test_bare_numbers_with_one_reading(text: str, default: Units | None, mm: float) -> None:
    assert parse_length(text, field="thickness", gauge=gauge, default=default).mm == pytest.approx(mm)


@pytest.mark.parametrize(
    ("text", "default", "readings"),
    [
        ("2", None, ("2 mm", "2 in")),
        ("10", None, ("10 mm", "10 ga")),
        ("14", Units.INCH, ("14 mm", "14 ga")),
        ("0.5", None, ("0.5 mm", "0.5 in")),
        ("1,600 mm", Units.METRIC, ("1.600 mm", "1600 mm")),
    ],
)
def test_two_readings_are_asked_back(text: str, default: Units | None, readings: tuple[str, ...]) -> None:
    with pytest.raises(AmbiguousInputError) as caught:
        parse_length(text, field="thickness", gauge=gauge, default=default)
    assert caught.value.readings == readings
    assert caught.value.field == "thickness"


@pytest.mark.parametrize(
    "text",
    [
        *("", " ", "abc", "0", "0 mm", "-1", "-2 mm", "nan", "inf", "1e9", "1e9 mm", "1e999 mm", "1/0 in"),
        *("2 mm 3 mm", "2 mmm", "1.2.3 mm", "12 ga 3", "1.5 ga", "99 ga", "2 kg", "1,234,567 mm", "9" * 60),
        *("∞ mm", "2/", "100 in", "1/", "/8", ",", ".", "mm", "ga", "--2 mm"),
    ],
)
def test_refused_in_one_line_that_names_the_field(text: str) -> None:
    with pytest.raises(InputError) as caught:
        parse_length(text, field="thickness", gauge=gauge)
    assert "\n" not in str(caught.value)
    assert len(str(caught.value)) < 250


def test_gauge_without_a_metal_is_asked_back() -> None:
    with pytest.raises(InputError, match="known metal"):
        parse_length("14 ga", field="thickness")


def test_misspelt_unit_gets_the_nearest() -> None:
    with pytest.raises(InputError) as caught:
        parse_length("2 inchs", field="thickness")
    assert caught.value.nearest in {"inch", "inches"}


def test_limits_belong_to_the_field() -> None:
    assert parse_length("0", field="gap", limits=GAP).mm == 0.0
    assert parse_length("1/16 in", field="gap", limits=GAP).mm == 1.5875
    assert parse_length("1.2 m", field="length", limits=WELD_LENGTH).mm == 1200.0
    with pytest.raises(InputError, match="0 mm to 100 mm"):
        parse_length("200 mm", field="gap", limits=GAP)


def test_shown_keeps_the_persons_own_words() -> None:
    assert parse_length(".080", field="thickness").shown == ".080 in"
    assert parse_length("14ga", field="thickness", gauge=gauge).shown == "14 ga"


@given(st.floats(min_value=0.2, max_value=80.0))
def test_millimetres_come_back_exactly(mm: float) -> None:
    assert parse_length(f"{mm!r} mm", field="thickness").mm == pytest.approx(mm, abs=1e-6)


@given(st.integers(1, 3), st.integers(1, 63), st.sampled_from([2, 4, 8, 16, 32, 64]))
def test_mixed_fractions_add_up(whole: int, top: int, bottom: int) -> None:
    mm = parse_length(f"{whole}-{top}/{bottom} in", field="thickness").mm
    assert mm == pytest.approx((whole + top / bottom) * 25.4, abs=1e-6)


@given(st.text(max_size=30))
def test_any_text_is_a_length_or_a_named_refusal(text: str) -> None:
    mm = None
    with suppress(InputError):
        mm = parse_length(text, field="thickness", gauge=gauge).mm
    assert mm is None or 0 < mm <= 1000
