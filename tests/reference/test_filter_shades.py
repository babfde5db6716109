"""Floor and start of the filter shade, its edges, grade and refusals."""

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.errors import InputError, NotCoveredError
from welds.reference.basis import Basis
from welds.reference.filter_shades import FilterShade, shade_floor_and_start


def documents(answer):
    return [row.document for row in answer.rows]


def test_the_start_is_the_comfort_column_where_there_is_one(tables):
    floor, start, rows = shade_floor_and_start(tables, "tig", 90, "aluminium")
    assert (floor, start) == (8, 12)
    assert [row.document for row in rows] == ["us-rule", "us-guide", "eu-standard"]


def test_without_a_comfort_value_the_start_is_our_own_and_says_so(tables):
    answer = shade_floor_and_start(tables, "mig", 40, "carbon-steel")
    assert (answer.floor, answer.start) == (7, 9)
    assert answer.basis is Basis.DERIVED


def test_the_grade_is_that_of_the_weaker_document(tables):
    assert shade_floor_and_start(tables, "tig", 90, "aluminium").basis is Basis.QUOTED


@pytest.mark.parametrize(
    ("family", "current_a", "shade"),
    [("aluminium", 90, 10), ("copper", 260, 12), ("carbon-steel", 90, 11), ("stainless", 130, 12)],
)
def test_the_european_band_goes_by_metal_and_gas(tables, family, current_a, shade):
    """EN 169, older band layout: MIG light, MIG heavy, and MAG for steel under active gas."""
    answer = shade_floor_and_start(tables, "mig", current_a, family)
    assert answer.rows[-1].document == "eu-standard"
    assert answer.rows[-1].shade_suggested_max == shade


def test_a_band_the_european_table_lacks_is_left_out(tables):
    assert documents(shade_floor_and_start(tables, "mig", 60, "aluminium")) == ["us-rule", "us-guide"]


@pytest.mark.parametrize("current_a", [0, -5, math.nan])
def test_no_current_no_shade(tables, current_a):
    with pytest.raises(InputError):
        shade_floor_and_start(tables, "tig", current_a, "aluminium")


@pytest.mark.parametrize("process", ["tig", "mig"])
def test_above_the_table_the_nearest_covered_current_is_named(tables, process):
    assert shade_floor_and_start(tables, process, 500, "aluminium").floor == 10
    with pytest.raises(NotCoveredError) as caught:
        shade_floor_and_start(tables, process, 500.5, "aluminium")
    assert caught.value.nearest == "500 A"


def test_an_unknown_process_is_bad_input(tables):
    with pytest.raises(InputError):
        shade_floor_and_start(tables, "laser", 100, "aluminium")


@given(
    process=st.sampled_from(["tig", "mig"]),
    family=st.sampled_from(["aluminium", "magnesium", "carbon-steel", "stainless", "copper", "titanium"]),
    currents=st.tuples(st.floats(1, 500), st.floats(1, 500)),
)
def test_more_current_never_gets_a_lighter_shade(tables, process, family, currents):
    low, high = (shade_floor_and_start(tables, process, current, family) for current in sorted(currents))
    assert low.floor <= high.floor
    assert low.start <= high.start
    assert low.start >= low.floor


@pytest.mark.parametrize("document", ["us-rule", "us-guide", "eu-standard"])
@pytest.mark.parametrize("process", ["tig", "mig", "mag", "stick", "flux-cored", "plasma-cutting"])
def test_bands_of_a_scale_touch(tables, document, process):
    scales: dict[str, list[FilterShade]] = {}
    for row in tables.records(FilterShade):
        if (row.document, row.process) == (document, process) and row.current_to_a is not None:
            scales.setdefault(row.metals, []).append(row)
    for rows in scales.values():
        for lower, upper in pairwise(rows):
            assert lower.current_to_a == upper.current_from_a
            for column in ("shade_min", "shade_suggested_max"):
                shades = getattr(lower, column), getattr(upper, column)
                assert None in shades or shades[0] <= shades[1]
