"""What single welds do to the card's current: which way, how far, which are read and which are not."""

from dataclasses import replace

import pytest

from welds.advice.advise import advise
from welds.advice.equipment import Control, Machine
from welds.advice.evidence import Evidence, Outcome, PastWeld
from welds.advice.own_scale import reading, with_readings
from welds.advice.request import Joint, Process, Request
from welds.advice.table_current import build_table_currents

SHEET = Request(Process.TIG, "5052", 2.0, Joint.BUTT)
SEAM = Request(Process.MIG, "low-carbon", 2.0, Joint.BUTT)


def start_a(tables, request=SHEET):
    return advise(request, tables).settings["current"].figure.start


def learned(tables, *welds, request=SHEET):
    return advise(request, tables, evidence=Evidence(welds)).learned


def weld(amps, outcome=Outcome.WORKED_WELL, *faults, name="1", request=SHEET, **more):
    return PastWeld(name, request, outcome, amps, faults=faults, **more)


def test_burnt_welds_lower_and_cold_ones_raise_the_start(tables):
    at = start_a(tables)
    hot = learned(tables, *(weld(at, Outcome.FAILED, "510", name=str(n)) for n in range(8)))
    cold = learned(tables, *(weld(at, Outcome.FAILED, "401", name=str(n)) for n in range(8)))
    assert hot.factor < 0.93
    assert cold.factor > 1.07
    assert hot.factor * cold.factor == pytest.approx(1.0, abs=0.01)
    assert (hot.too_hot, hot.too_cold, hot.worked) == (8, 0, 0)
    assert (cold.too_hot, cold.too_cold, cold.worked) == (0, 8, 0)


def test_the_nearest_burnt_and_cold_currents_are_named(tables):
    at = start_a(tables)
    found = learned(
        tables,
        weld(at * 1.3, Outcome.FAILED, "510", name="a"),
        weld(at * 1.1, Outcome.FAILED, "510", name="b"),
        weld(at * 0.7, Outcome.FAILED, "401", name="c"),
        weld(at * 0.9, Outcome.FAILED, "401", name="d"),
    )
    assert found.burnt_at_a == pytest.approx(at * 1.1)
    assert found.cold_at_a == pytest.approx(at * 0.9)


def test_a_weld_that_merely_worked_pulls_less(tables):
    at = start_a(tables) * 1.2
    well, worked = (
        learned(tables, *(weld(at, outcome, name=str(n)) for n in range(4))).factor
        for outcome in (Outcome.WORKED_WELL, Outcome.WORKED)
    )
    assert 1.0 < worked < well < 1.2


@pytest.mark.parametrize(("share", "is_read"), [(2.45, True), (2.55, False), (0.41, True), (0.39, False)])
def test_more_than_two_and_a_half_times_off_is_a_slip(tables, share, is_read):
    found = learned(tables, weld(start_a(tables) * share), weld(start_a(tables), name="2"))
    assert found.welds == (2 if is_read else 1)


@pytest.mark.parametrize("amps", [0.0, -5.0, None])
def test_a_weld_without_a_current_says_nothing(tables, amps):
    assert learned(tables, weld(amps)) is None


def test_alike_are_those_of_the_same_joint(tables):
    corner = replace(SHEET, joint=Joint.OUTSIDE_CORNER)
    found = learned(
        tables, weld(start_a(tables), name="1"), weld(start_a(tables, corner), name="2", request=corner)
    )
    assert (found.welds, found.alike) == (2, 1)
    assert found.spoke == ("1",)


def test_a_log_of_thousands_is_read_from_its_newest(tables):
    """400 speak: the newest here run hotter, the thousand before them colder."""
    at = start_a(tables)
    newest = [weld(at * 1.2, name=f"n{n}") for n in range(400)]
    oldest = [weld(at * 0.8, name=f"o{n}") for n in range(1000)]
    found = learned(tables, *newest, *oldest)
    assert found.welds == 400
    assert found.factor == pytest.approx(1.2, abs=0.02)


def test_the_sureness_is_that_of_the_side_it_moved_to(tables):
    at = start_a(tables)
    for share in (0.8, 1.2):
        found = learned(tables, *(weld(at * share, name=str(n)) for n in range(12)))
        assert found.sureness > 0.97
    assert 0.5 <= learned(tables, weld(at * 1.001)).sureness < 0.6


def test_tables_answer_the_same_each_time_and_none_where_they_end(tables):
    currents = build_table_currents(tables)
    assert currents.of(SHEET).current_a == start_a(tables)
    assert currents.of(SHEET) is currents.of(SHEET)
    assert currents.of(replace(SHEET, thickness_mm=70.0)) is None
    assert currents.of(SHEET).current_at_feed(5.0) is None


def test_a_feed_is_the_current_that_melts_it(tables):
    """The card's own start feed is melted by its own start current."""
    settings = advise(SEAM, tables).settings
    figures = build_table_currents(tables).of(SEAM)
    found = figures.current_at_feed(settings["wire_feed"].figure.start)
    assert found == pytest.approx(settings["current"].figure.start, rel=0.02)
    assert figures.wire_mm == settings["wire_diameter"].value
    assert figures.extension_mm == 10.0


# ------------------------------------------------------------------------------- the machine's scale


def test_the_range_is_read_on_the_dial_too(tables):
    """Marks 1 at 2, 5 at 6 and 10 at 16 m/min; start and both ends in proportion between them."""
    dial = Control("wire_feed", scale="dial", marks=(("1", 2.0), ("5", 6.0), ("10", 16.0)))
    settings = advise(SEAM, tables).settings
    shown = with_readings(settings, Machine("a set", frozenset({"mig"}), controls=(dial,)))["wire_feed"]
    band = shown.band

    def by_hand(feed):
        return 1 + (feed - 2.0) if feed <= 6.0 else 5 + (feed - 6.0) / 2.0

    ends = [f"{round(by_hand(each), 1):g} on this machine's dial" for each in (band.low, band.high)]
    assert shown.own_scale == f"{round(by_hand(band.start), 1):g} on this machine's dial"
    assert shown.reasons[-1].text == f"set {shown.own_scale}; the range is {ends[0]} to {ends[1]}"
    taps = Control("wire_feed", scale="tap", marks=(("A", 2.0), ("B", 40.0)))
    tapped = with_readings(settings, Machine("a set", frozenset({"mig"}), controls=(taps,)))["wire_feed"]
    assert tapped.reasons[-1].text == "set A on this machine's tap"


def test_marks_out_of_order_and_beyond(tables):
    dial = Control("wire_feed", scale="dial", marks=(("10", 16.0), ("1", 2.0)))
    assert reading(dial, 9.0) == "5.5"
    assert reading(dial, 1.0) == "1"
    assert reading(dial, 20.0) == "10"
    assert reading(Control("wire_feed", scale="dial", marks=(("1,5", 2.0), ("2,5", 4.0))), 3.0) == "2"
