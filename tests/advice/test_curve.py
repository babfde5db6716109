"""Curves of a few rows and their readings: reach, grades, votes and bands, by hand. Rows are invented."""

import pytest

from welds.advice.pooling import Curve, Point, Reading
from welds.reference.basis import Basis


def test_a_reading_is_scaled_as_a_whole():
    """A joint factor of 1.2 lifts low, middle, high and what each document says alike."""
    point = Point("A-1", "A", Basis.PRINTED, 2.0, 81.0, 100.0)
    assert point.middle == 90.5
    scaled = Reading(80.0, 90.0, 105.0, Basis.PRINTED, (point,), {"A": 90.5, "B": 85.0}).scaled(1.2)
    assert (scaled.low, scaled.middle, scaled.high) == pytest.approx((96.0, 108.0, 126.0))
    assert scaled.by_document == pytest.approx({"A": 108.6, "B": 102.0})
    assert scaled.documents == ("A", "B")


def test_a_curve_reaches_an_eighth_beyond_its_rows_and_never_falls():
    """1.18 times either way: rows of 2 and 4 mm serve 1.695 to 4.72 mm."""
    rows = [Point(f"A-{mm}", "A", Basis.PRINTED, mm, 38.0 * mm, 42.0 * mm) for mm in (2.0, 4.0)]
    curve = Curve(rows)
    assert (curve.thinnest_mm, curve.thickest_mm) == pytest.approx((2.0, 4.0))
    assert [curve.covers(mm) for mm in (1.69, 1.70, 4.71, 4.73)] == [False, True, True, False]
    falling = Curve([*rows, Point("B-1", "B", Basis.PRINTED, 4.5, 76.0, 84.0)])
    places = [2.0 + 0.1 * n for n in range(26)]
    for end in ("low", "middle", "high"):
        values = [getattr(falling.at(mm), end) for mm in places]
        assert values == sorted(values)
    assert curve.middle(3.0) == curve.at(3.0).middle


def line(document: str, basis: Basis, amps_per_mm: float, *thickness: float) -> list[Point]:
    return [
        Point(f"{document}-{mm}", document, basis, mm, amps_per_mm * mm * 0.95, amps_per_mm * mm * 1.05)
        for mm in thickness
    ]


def test_the_rows_nearest_and_best_are_named_first_and_eight_at_the_most():
    near, far = line("A", Basis.PRINTED, 40, 2.0), line("A", Basis.PRINTED, 40, 1.5, 3.0)
    worse = line("B", Basis.RECALLED, 40, 2.0)
    reading = Curve([*far, *worse, *near]).at(2.0)
    assert reading.points[0] == near[0]
    assert reading.documents[0] == "A"
    many = Curve(line("A", Basis.PRINTED, 40, *(1.8 + 0.04 * n for n in range(12)))).at(2.0)
    assert len(many.points) == 8


def test_the_grade_is_that_of_the_rows_that_carry_the_figure():
    """Printed where published rows carry a third or more of the weight, else what is remembered."""
    here = line("B", Basis.RECALLED, 40, 2.0, 2.1)
    assert Curve([*here, *line("A", Basis.PRINTED, 40, 2.0)]).at(2.0).basis is Basis.PRINTED
    assert Curve([*here, *line("A", Basis.PRINTED, 40, 6.0)]).at(2.0).basis is Basis.RECALLED
    assert (
        Curve(line("A", Basis.QUOTED, 40, 2.0) + line("B", Basis.DERIVED, 40, 2.6)).at(2.0).basis
        is Basis.QUOTED
    )


def test_a_document_has_one_vote_at_one_thickness_however_many_rows():
    """Three rows of A at 36 A/mm weigh as much as one of B at 44: the middle of the ratio, 39.8."""
    rows = line("A", Basis.PRINTED, 36, 2.0) * 3 + line("B", Basis.PRINTED, 44, 2.0)
    assert Curve(rows).at(2.0).middle == pytest.approx(2.0 * (36 * 44) ** 0.5, rel=0.01)


@pytest.mark.parametrize(
    ("basis", "least", "most"), [(Basis.PRINTED, 0.10, 0.19), (Basis.RECALLED, 0.15, 0.28)]
)
@pytest.mark.parametrize("width", [0.01, 0.9])
def test_no_band_is_narrower_or_wider_than_its_grade_allows(basis, least, most, width):
    """10 to 19 % where rows are published, 15 to 28 % where they are not, whatever one row prints."""
    rows = [
        Point(f"A-{mm}", "A", basis, mm, 40 * mm * (1 - width), 40 * mm * (1 + width))
        for mm in (1.9, 2.0, 2.1)
    ]
    reading = Curve(rows).at(2.0)
    half = least if width < least else most
    assert reading.high / reading.middle - 1 == pytest.approx(half, abs=0.012)
    assert 1 - reading.low / reading.middle == pytest.approx(half, abs=0.012)


def test_one_row_is_followed_at_the_usual_slope():
    """With the 0.85th power of thickness where nothing else is known: 80 A at 2 mm, 91.4 A at 2.34."""
    curve = Curve(line("A", Basis.PRINTED, 40, 2.0))
    assert curve.at(2.0).middle == pytest.approx(80.0, rel=2e-3)
    assert curve.at(2.0 * 1.17).middle == pytest.approx(80.0 * 1.17**0.85, rel=0.01)
    assert curve.at(2.0 / 1.17).middle == pytest.approx(80.0 / 1.17**0.85, rel=0.01)
