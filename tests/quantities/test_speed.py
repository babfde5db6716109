"""Travel speeds as people type them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.errors import AmbiguousInputError, InputError
from welds.quantities.speed import parse_speed
from welds.quantities.units import Units


@pytest.mark.parametrize(
    ("text", "default", "mm_s"),
    [
        ("12 ipm", None, 5.08),
        ("12 in/min", None, 5.08),
        ("5 mm/s", None, 5.0),
        ("5 mm / s", None, 5.0),
        ("300 mm/min", None, 5.0),
        ("30 cm/min", None, 5.0),
        ("0,3 m/min", None, 5.0),
        ("300", None, 5.0),  # 300 mm/s or 300 in/min is no weld
        ("300", Units.METRIC, 5.0),
        ("12", Units.INCH, 5.08),
        ("5", Units.METRIC, 5.0),
    ],
)
def test_typed_speeds(text: str, default: Units | None, mm_s: float) -> None:
    assert parse_speed(text, field="travel", default=default).mm_s == pytest.approx(mm_s)


def test_two_readings_are_asked_back() -> None:
    with pytest.raises(AmbiguousInputError) as caught:
        parse_speed("12", field="travel")
    assert caught.value.readings == ("12 mm/s", "12 in/min")


@pytest.mark.parametrize("text", ["", "fast", "0 mm/s", "-5 mm/s", "5 mm", "1e9", "nan mm/s", "5 mph"])
def test_refused(text: str) -> None:
    with pytest.raises(InputError):
        parse_speed(text, field="travel")


def test_misspelt_unit_gets_the_nearest() -> None:
    with pytest.raises(InputError) as caught:
        parse_speed("5 mm/sec", field="travel")
    assert caught.value.nearest == "mm/s"


@given(st.floats(min_value=0.1, max_value=100.0))
def test_metric_and_inch_spelling_agree(mm_s: float) -> None:
    by_inch = parse_speed(f"{mm_s / 25.4 * 60!r} ipm", field="travel").mm_s
    assert by_inch == pytest.approx(parse_speed(f"{mm_s!r} mm/s", field="travel").mm_s, rel=1e-9)
