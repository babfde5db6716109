"""Current ranges of zirconiated tungsten on square-wave alternating current, as printed.

G. Mathers, The Welding of Aluminium and its Alloys, Woodhead, 2002, Table 6.4, p. 109 [MATHERS_2002_T6_4]:
electrode diameter in mm, current range in amperes, balanced square wave, argon. Beside it for comparison,
recalled and not read: [ISO_6848] informative annex, oxide electrodes on alternating current.
"""

from itertools import pairwise

import pytest

from welds.reference.basis import Basis
from welds.reference.tungsten import TungstenCurrent

SQUARE_WAVE = [
    (1.0, 20, 50),
    (1.6, 50, 80),
    (2.4, 80, 160),
    (3.2, 160, 225),
    (4.0, 225, 330),
    (5.0, 330, 400),
    (6.4, 400, 550),
]


def printed(tables):
    return [row for row in tables.records(TungstenCurrent) if row.source_id == "MATHERS_2002_T6_4"]


def test_the_table_as_printed(tables):
    rows = printed(tables)
    assert [(row.diameter_mm, row.current_min_a, row.current_max_a) for row in rows] == SQUARE_WAVE
    for row in rows:
        assert row.basis is Basis.PRINTED
        assert (row.polarity, row.wave, row.wave_shape) == ("AC", "balanced", "square")
        assert row.electrode_class == "zirconiated"
        assert row.place == "Table 6.4, p.109"


def test_the_printed_scale_has_no_gap_and_each_current_a_size(tables):
    rows = printed(tables)
    for smaller, larger in pairwise(rows):
        assert smaller.current_max_a == larger.current_min_a
    assert (rows[0].current_min_a, rows[-1].current_max_a) == (SQUARE_WAVE[0][1], SQUARE_WAVE[-1][2])


def test_only_this_table_is_printed(tables):
    others = [row for row in tables.records(TungstenCurrent) if row.source_id != "MATHERS_2002_T6_4"]
    assert {row.basis for row in others} == {Basis.RECALLED}


@pytest.mark.parametrize(
    ("diameter_mm", "low", "high"),
    [(1.0, 15, 70), (1.6, 60, 125), (2.4, 120, 210), (3.2, 150, 250), (4.0, 240, 350), (6.4, 430, 575)],
)
def test_the_note_of_a_printed_row_shows_what_the_recalled_standard_says(tables, diameter_mm, low, high):
    row = next(row for row in printed(tables) if row.diameter_mm == diameter_mm)
    assert f"ISO {low} to {high} A" in row.note
