"""Pooling of schedules: what grades, disagreement and outliers do to the curve."""

import pytest

from welds.advice.pooling import PUBLISHED_LIMIT, UNPUBLISHED_LIMIT, Curve, Point
from welds.reference.basis import Basis


def line(document: str, basis: Basis, amps_per_mm: float, *thickness: float) -> list[Point]:
    return [
        Point(f"{document}-{mm}", document, basis, mm, amps_per_mm * mm * 0.93, amps_per_mm * mm * 1.07)
        for mm in thickness
    ]


def test_one_document_is_followed_through_its_points():
    curve = Curve(line("A", Basis.PRINTED, 40.0, 1.0, 2.0, 4.0))
    for mm in (1.0, 2.0, 4.0):
        assert curve.at(mm).middle == pytest.approx(40.0 * mm, rel=0.03)


def test_a_better_grade_outranks_a_worse_one():
    curve = Curve(line("A", Basis.PRINTED, 40.0, 1, 2, 4) + line("B", Basis.RECALLED, 60.0, 1, 2, 4))
    assert curve.at(2.0).middle == pytest.approx(40.0 * 2, rel=0.08)


def test_equal_documents_that_disagree_meet_in_the_middle_with_a_wider_band():
    agreeing = Curve(line("A", Basis.PRINTED, 40, 1, 2, 4) + line("B", Basis.PRINTED, 40, 1, 2, 4)).at(2.0)
    apart = Curve(line("A", Basis.PRINTED, 37, 1, 2, 4) + line("B", Basis.PRINTED, 43, 1, 2, 4)).at(2.0)
    assert apart.middle == pytest.approx(agreeing.middle, rel=0.02)
    assert apart.high - apart.low > agreeing.high - agreeing.low


def test_each_document_is_told_by_its_own_figure():
    reading = Curve(line("A", Basis.PRINTED, 37, 1, 2, 4) + line("B", Basis.PRINTED, 43, 1, 2, 4)).at(2.0)
    assert reading.by_document["A"] == pytest.approx(37.0 * 2, rel=0.01)
    assert reading.by_document["B"] == pytest.approx(43.0 * 2, rel=0.01)


def test_rows_of_quite_another_thickness_do_not_speak():
    curve = Curve(line("A", Basis.PRINTED, 40, 1, 2) + line("B", Basis.PRINTED, 40, 16, 20))
    assert curve.at(1.0).documents == ("A",)
    assert curve.at(20.0).documents == ("B",)


def test_the_band_is_what_a_lone_document_prints():
    rows = [
        Point(f"A-{mm}", "A", Basis.PRINTED, mm, 40 * mm * 0.87, 40 * mm * 1.13) for mm in (1.0, 2.0, 4.0)
    ]
    reading = Curve(rows).at(2.0)
    assert reading.high / reading.middle - 1 == pytest.approx(0.13, abs=0.01)
    assert 1 - reading.low / reading.middle == pytest.approx(0.13, abs=0.01)


def test_one_row_far_from_all_others_does_not_pull_the_curve():
    sound = line("A", Basis.PRINTED, 40, 1, 1.5, 2, 3, 4) + line("B", Basis.PRINTED, 41, 1, 1.5, 2, 3, 4)
    with_slip = Curve([*sound, *line("C", Basis.PRINTED, 80, 1.7)])
    assert with_slip.at(1.7).middle == pytest.approx(Curve(sound).at(1.7).middle, rel=0.03)


def test_bands_stay_inside_their_limits():
    wild = Curve(line("A", Basis.PRINTED, 20, 1, 2, 4) + line("B", Basis.PRINTED, 70, 1, 2, 4)).at(2.0)
    assert wild.high / wild.middle - 1 <= PUBLISHED_LIMIT + 1e-9
    recalled = Curve(line("A", Basis.RECALLED, 20, 1, 2, 4) + line("B", Basis.RECALLED, 70, 1, 2, 4)).at(2.0)
    assert recalled.high / recalled.middle - 1 <= UNPUBLISHED_LIMIT + 1e-9
    assert recalled.basis is Basis.RECALLED


def test_recalled_rows_never_give_a_narrower_band_than_printed_ones():
    printed = Curve(line("A", Basis.PRINTED, 40, 1, 2, 4)).at(2.0)
    recalled = Curve(line("A", Basis.RECALLED, 40, 1, 2, 4)).at(2.0)
    assert recalled.high - recalled.low > printed.high - printed.low


def test_low_start_and_high_never_fall_with_thickness():
    dip = (
        line("A", Basis.PRINTED, 40, 1, 2) + line("A", Basis.PRINTED, 15, 3) + line("A", Basis.PRINTED, 40, 4)
    )
    readings = [Curve(dip).at(0.9 + 0.05 * step) for step in range(70)]
    for name in ("low", "middle", "high"):
        values = [getattr(reading, name) for reading in readings]
        assert values == sorted(values)


def test_the_curve_says_where_it_ends():
    curve = Curve(line("A", Basis.PRINTED, 40, 1, 4))
    assert [curve.covers(mm) for mm in (0.8, 0.9, 4.5, 5.0)] == [False, True, True, False]


def test_a_curve_without_rows_is_a_mistake():
    with pytest.raises(ValueError, match="at least one"):
        Curve([])
