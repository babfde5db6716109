"""Never silent: a request is answered with a current and a filter shade, or refused and told where to go.

The map is all metals by all joints and processes over sheet as sold, some 8,000 requests. What a refusal
names is asked in its turn, so that nobody is sent in a circle.
"""

from itertools import groupby

import pytest

from tests.validation.coverage_map import SHEETS_MM, coverage_map, ends
from welds.advice.request import Joint, Process
from welds.reference.metals import Metal

pytestmark = pytest.mark.slow

TIG_PLUG = (Process.TIG, Joint.PLUG)
"""The one pair that no metal is welded with."""


@pytest.fixture(scope="module")
def asked(tables):
    return tables.derived(coverage_map)


@pytest.fixture(scope="module")
def never_welded(tables):
    return {metal.id for metal in tables.records(Metal) if not metal.is_weldable}


def test_the_map_is_whole(tables, asked):
    assert len(asked) == len(tables.records(Metal)) * len(Joint) * len(Process) * len(SHEETS_MM)


def test_an_answer_has_its_current_and_its_filter_shade(asked):
    answered = [each for each in asked if each.refusal is None]
    assert len(answered) > len(asked) / 3
    assert [each.request for each in answered if not {"current", "filter_shade"} <= set(each.grades)] == []


def test_a_refusal_says_why_in_one_line(asked):
    for each in asked:
        if each.refusal is not None:
            assert len(each.reason) > 20
            assert "\n" not in str(each.refusal)


@pytest.mark.heavy
def test_what_a_refusal_names_leads_to_an_answer(tables, asked, never_welded):
    """The joint or process may be wrong, then the thickness, then the hole: three steps, each named."""
    refused = [each for each in asked if each.refusal and each.request.metal not in never_welded]
    assert refused
    assert [str(each.refusal) for each in refused if not ends(each, tables, 3)] == []


def test_a_wrong_thickness_alone_leads_to_an_answer_at_once(tables, asked):
    wrong = [each for each in asked if " cover " in each.reason and " by MIG" not in str(each.refusal)]
    wrong = [each for each in wrong if each.request.joint is not Joint.PLUG]
    assert wrong
    assert [str(each.refusal) for each in wrong if not ends(each, tables, 1)] == []


def test_an_alloy_that_is_never_welded_names_alloys_that_are(tables, asked, never_welded):
    refused = [each for each in asked if each.request.metal in never_welded]
    assert never_welded == {"2024", "7075"}
    assert all(each.refusal for each in refused)
    for each in refused:
        if each.request.thickness_mm == 4.0 and (each.request.process, each.request.joint) != TIG_PLUG:
            assert ends(each, tables, 1)


def test_between_the_thinnest_and_the_thickest_answer_there_is_no_hole(asked):
    for (metal, process, joint), line in groupby(
        asked, key=lambda each: (each.request.metal, each.request.process, each.request.joint)
    ):
        answered = [each.refusal is None for each in line]
        runs = [is_answered for is_answered, _ in groupby(answered)]
        assert runs.count(True) <= 1, f"{process} {metal} {joint}"
