"""Lesser figures read off near rows: means worked by hand. Rows are invented."""

from dataclasses import dataclass
from math import exp

import pytest

from welds.advice.nearby import pair_of, read_nearby
from welds.advice.pooling import BANDWIDTH, GRADE_WEIGHT
from welds.reference.basis import Basis


@dataclass(frozen=True)
class Row:
    row_id: str
    thickness_mm: float
    low: float | None
    high: float | None
    source_id: str = "A"
    basis: Basis = Basis.PRINTED


def read(*rows: Row, thickness: float = 2.0):
    return read_nearby(rows, thickness, lambda row: pair_of(row.low, row.high))


def test_one_row_is_told_as_it_prints():
    found = read(Row("A-1", 2.0, 6.0, 8.0))
    assert (found.low, found.start, found.high) == pytest.approx((6.0, 7.0, 8.0))
    assert (found.rows, found.sources, found.basis) == (("A-1",), ("A",), Basis.PRINTED)


def test_rows_that_agree_leave_no_more_room_than_they_print():
    found = read(Row("A-1", 2.0, 6.0, 8.0), Row("B-1", 2.0, 6.0, 8.0, "B"))
    assert (found.low, found.start, found.high) == pytest.approx((6.0, 7.0, 8.0))
    assert found.sources == ("A", "B")


def test_rows_that_differ_open_the_band_by_as_much_as_they_differ():
    """Middles 6 and 10: mean 8, 2 from each; ends 5.5 and 9.5, 6.5 and 10.5, so 7.5 - 2 to 8.5 + 2."""
    found = read(Row("A-1", 2.0, 5.5, 6.5), Row("B-1", 2.0, 9.5, 10.5, "B"))
    assert (found.low, found.start, found.high) == pytest.approx((5.5, 8.0, 10.5))


def test_the_band_never_leaves_what_a_row_prints():
    """Three at 6 to 8 and one at 2 to 3: mean middle 5.875, 1.948 apart; ends 5 and 6.75."""
    rows = [Row(f"A-{n}", 2.0, 6.0, 8.0) for n in range(3)] + [Row("B-1", 2.0, 2.0, 3.0, "B")]
    found = read(*rows)
    assert (found.low, found.start) == pytest.approx((5.0 - 1.9486, 5.875), abs=1e-3)
    assert found.high == 8.0


def test_a_better_grade_counts_more():
    """1.0 against 0.35: (7 + 0.35 x 14) / 1.35 = 8.815."""
    found = read(Row("A-1", 2.0, 7.0, 7.0), Row("B-1", 2.0, 14.0, 14.0, "B", Basis.RECALLED))
    assert found.start == pytest.approx((7.0 + 0.35 * 14.0) / 1.35)
    assert found.basis is Basis.PRINTED


def test_the_grade_is_the_one_that_carries_most():
    """Three recalled rows outweigh one printed: 1.05 against 1."""
    many = [Row(f"B-{n}", 2.0, 7.0, 7.0, "B", Basis.RECALLED) for n in range(3)]
    assert read(Row("A-1", 2.0, 7.0, 7.0), *many).basis is Basis.RECALLED
    assert read(Row("A-1", 2.0, 7.0, 7.0), *many[:2]).basis is Basis.PRINTED


@pytest.mark.parametrize("ratio", [exp(BANDWIDTH), exp(-BANDWIDTH)])
def test_a_row_one_reach_away_counts_three_fifths(ratio):
    """A Gaussian at one deviation: e^-0.5 = 0.6065; (7 + 0.6065 x 14) / 1.6065 = 9.643."""
    found = read(Row("A-1", 2.0, 7.0, 7.0), Row("A-2", 2.0 * ratio, 14.0, 14.0))
    assert found.start == pytest.approx((7.0 + 0.60653 * 14.0) / 1.60653, rel=1e-4)


@pytest.mark.parametrize(("thickness", "is_read"), [(5.0, True), (5.01, False), (0.8, True), (0.79, False)])
def test_rows_two_and_a_half_times_off_say_nothing(thickness, is_read):
    assert (read(Row("A-1", thickness, 7.0, 7.0)) is not None) == is_read


@pytest.mark.parametrize(("reaches", "is_heard"), [(2.1, True), (2.2, False)])
def test_a_row_of_a_tenth_of_the_weight_is_left_out(reaches, is_heard):
    """e^(-2.1^2 / 2) = 0.110, e^(-2.2^2 / 2) = 0.089."""
    far = Row("B-1", 2.0 * exp(reaches * BANDWIDTH), 14.0, 14.0, "B")
    found = read(far, Row("A-1", 2.0, 7.0, 7.0))
    assert (found.start > 7.0) == is_heard
    assert found.sources == (("A", "B") if is_heard else ("A",))


def test_rows_without_the_figure_say_nothing():
    assert read(Row("A-1", 2.0, None, 7.0), Row("A-2", 2.0, 7.0, None)) is None
    assert read() is None
    assert pair_of(1.0, 2.0) == (1.0, 2.0)


def test_eight_rows_are_named_and_all_are_counted():
    rows = [Row(f"A-{n}", 2.0, 7.0, 7.0) for n in range(8)] + [Row("B-1", 2.1, 16.0, 16.0, "B")]
    found = read(*rows)
    assert len(found.rows) == 8
    assert found.sources == ("A", "B")
    assert found.start > 7.5


def test_grades_stand_in_their_order():
    """A printed row outweighs a quoted one, that a derived one, and all of them what is from memory."""
    order = [Basis.PRINTED, Basis.QUOTED, Basis.DERIVED, Basis.RECALLED, Basis.PRACTICE]
    assert sorted(GRADE_WEIGHT, key=GRADE_WEIGHT.get, reverse=True) == order
    assert 0.0 < GRADE_WEIGHT[Basis.PRACTICE] < GRADE_WEIGHT[Basis.PRINTED] == 1.0
