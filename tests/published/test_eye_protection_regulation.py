"""Filter shades as the United States regulation prints them, and the comfort column beside it.

[OSHA-1910.133] 29 CFR 1910.133(a)(5), "Filter lenses for protection against radiant energy": operation, arc
current in amperes, minimum protective shade. Read in the regulation. The printed bands are "less than 60",
"60-160", "160-250" and so on: their edges touch, and a current on an edge is here given the darker of the
two bands.

[ANSI-Z49.1] ANSI Z49.1 (2012), lens shade guide, suggested shade for comfort: quoted from copies of the
guide.
"""

import pytest

from welds.reference.basis import Basis
from welds.reference.filter_shades import FilterShade, shade_floor_and_start

REGULATION = {
    "stick": [(0, 60, 7), (60, 160, 8), (160, 250, 10), (250, 550, 11)],
    "mig": [(0, 60, 7), (60, 160, 10), (160, 250, 10), (250, 500, 10)],
    "flux-cored": [(0, 60, 7), (60, 160, 10), (160, 250, 10), (250, 500, 10)],
    "tig": [(0, 50, 8), (50, 150, 8), (150, 500, 10)],
    "air-carbon-arc": [(0, 500, 10), (500, 1000, 11)],
    "plasma-welding": [(0, 20, 6), (20, 100, 8), (100, 400, 10), (400, 800, 11)],
    "plasma-cutting": [(0, 300, 8), (300, 400, 9), (400, 800, 10)],
    "torch-brazing": [(None, None, 3)],
    "torch-soldering": [(None, None, 2)],
    "carbon-arc": [(None, None, 14)],
}

COMFORT = {
    "mig": [(0, 60, None), (60, 160, 11), (160, 250, 12), (250, 550, 14)],
    "tig": [(0, 50, 10), (50, 150, 12), (150, 500, 14)],
}

# (current, least shade), with every printed edge and the ends
ARC_FLOORS = {
    "mig": [
        (1, 7), (59, 7), (59.99, 7), (60, 10), (61, 10), (159, 10), (160, 10), (161, 10),
        (249, 10), (250, 10), (251, 10), (500, 10),
    ],
    "tig": [
        (1, 8), (49, 8), (50, 8), (51, 8), (149, 8), (149.99, 8), (150, 10), (151, 10), (499, 10), (500, 10),
    ],
}  # fmt: skip

COMFORT_STARTS = {
    "mig": [(60, 11), (159, 11), (160, 12), (249, 12), (250, 14), (500, 14)],
    "tig": [(1, 10), (49, 10), (50, 12), (149, 12), (150, 14), (500, 14)],
}

FAMILIES = ("aluminium", "carbon-steel", "stainless")


def bands(tables, document, process):
    return [row for row in tables.records(FilterShade) if (row.document, row.process) == (document, process)]


@pytest.mark.parametrize("process", REGULATION)
def test_the_regulation_in_full(tables, process):
    rows = bands(tables, "us-rule", process)
    assert [(row.current_from_a, row.current_to_a, row.shade_min) for row in rows] == REGULATION[process]
    assert {row.basis for row in rows} == {Basis.PRINTED}
    assert {row.source_id for row in rows} == {"OSHA-1910.133"}


def test_the_regulation_has_no_other_row(tables):
    rows = [row for row in tables.records(FilterShade) if row.document == "us-rule"]
    assert {row.process for row in rows} == set(REGULATION)


@pytest.mark.parametrize("process", COMFORT)
def test_the_comfort_column(tables, process):
    rows = bands(tables, "us-guide", process)
    found = [(row.current_from_a, row.current_to_a, row.shade_suggested_max) for row in rows]
    assert found == COMFORT[process]
    assert [row.shade_suggested_min for row in rows] == [row.shade_suggested_max for row in rows]
    assert {row.basis for row in rows} == {Basis.QUOTED}


@pytest.mark.parametrize("family", FAMILIES)
@pytest.mark.parametrize(
    ("process", "current_a", "floor"),
    [(process, *case) for process, cases in ARC_FLOORS.items() for case in cases],
)
def test_the_floor_is_the_regulation_whatever_the_metal(tables, process, current_a, floor, family):
    assert shade_floor_and_start(tables, process, current_a, family).floor == floor


@pytest.mark.parametrize(
    ("process", "current_a", "start"),
    [(process, *case) for process, cases in COMFORT_STARTS.items() for case in cases],
)
def test_the_start_is_the_comfort_shade(tables, process, current_a, start):
    assert shade_floor_and_start(tables, process, current_a, "aluminium").start == start
