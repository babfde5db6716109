"""Ratings of a tungsten pooled from a few rows, by hand. Rows are invented."""

from dataclasses import dataclass, fields

import pytest

from welds.advice.rules.tungsten_diameter import BALANCED, build_ratings
from welds.reference.basis import Basis
from welds.reference.tungsten import TungstenCurrent


@dataclass
class Made:
    """Tables that hold these rows and nothing else."""

    rows: tuple

    def records(self, kind):
        return [row for row in self.rows if isinstance(row, kind)]


def row(low: float | None, high: float, **more) -> TungstenCurrent:
    usual = {
        "row_id": "A-1", "diameter_mm": 2.4, "polarity": "DCEN", "wave": "any", "electrode_class": "oxide",
        "current_min_a": low, "current_max_a": high, "source_id": "A", "basis": Basis.RECALLED,
    }  # fmt: skip
    return TungstenCurrent(**{each.name: None for each in fields(TungstenCurrent)} | usual | more)


def rated(*rows, of="DCEN"):
    return {each.diameter_mm: (each.low_a, each.high_a) for each in build_ratings(Made(rows))[of]}


def test_recalled_rows_alone_are_averaged_at_the_top_and_widest_at_the_bottom():
    """Lows 140 and 150 A: 140; highs 240 and 260 A: 250."""
    assert rated(row(140, 240), row(150, 260)) == {2.4: (140, 250)}


def test_printed_rows_hold_the_top_half_way():
    """Printed 200 A; all together (200 + 240 + 250) / 3 = 230; half way is 215."""
    found = rated(row(130, 200, basis=Basis.PRINTED), row(140, 240), row(150, 250))
    assert found == {2.4: (130, pytest.approx(215))}
    both = build_ratings(Made((row(130, 200, basis=Basis.PRINTED, row_id="P"), row(140, 240))))["DCEN"][0]
    assert [each.row_id for each in both.rows] == ["P"]


@pytest.mark.parametrize(
    "more",
    [{"electrode_class": "pure"}, {"polarity": "DCEP"}, {"diameter_mm": 2.0}, {"current_min_a": None}],
)
def test_rows_of_another_kind_say_nothing(more):
    assert rated(row(140, 240), row(10, 500, **more)) == {2.4: (140, 240)}


def test_a_size_named_in_inches_is_the_size_sold():
    """3/32 in is 2.38 mm, sold as 2.4; 2.34 mm is another size."""
    assert rated(row(140, 240, diameter_mm=2.38)) == {2.4: (140, 240)}
    assert rated(row(140, 240, diameter_mm=2.34)) == {}


def test_on_ac_both_waves_bound_the_rating_and_balanced_rows_stand_alone_too():
    rows = row(60, 120, polarity="AC", wave="balanced"), row(100, 180, polarity="AC", wave="unbalanced")
    assert rated(*rows, of="AC") == {2.4: (60, 150)}
    assert rated(*rows, of=BALANCED) == {2.4: (60, 120)}


def test_sizes_come_thin_to_thick(tables):
    for ratings in build_ratings(tables).values():
        sizes = [each.diameter_mm for each in ratings]
        assert sizes == sorted(sizes)
        assert [each.high_a for each in ratings] == sorted(each.high_a for each in ratings)
        assert all(0 < each.low_a < each.high_a for each in ratings)
