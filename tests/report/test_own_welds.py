"""Which logged welds stand on a curve; the figures are what a person would have written down."""

import csv
import io
from dataclasses import replace

import pytest

from welds.advice.advise import advise
from welds.advice.evidence import Evidence, Outcome, PastWeld
from welds.advice.request import Joint, Process, Request
from welds.report.current_curve import current_curve, curves_csv
from welds.report.own_welds import own_welds

TEE = Request(Process.TIG, "5052", 2.0, Joint.TEE)
LAP = Request(Process.MIG, "low-carbon", 2.0, Joint.LAP)


def weld(name, request=TEE, current_a=90.0, outcome=Outcome.WORKED_WELL, **more):
    return PastWeld(name, request, outcome, current_a, **more)


def test_only_welds_of_the_same_process_metal_and_joint(tables):
    welds = (
        weld("same"),
        weld("other temper", replace(TEE, metal="5052-H32")),
        weld("upwards", replace(TEE, position="PF")),
        weld("other joint", replace(TEE, joint=Joint.BUTT)),
        weld("other metal", replace(TEE, metal="6061")),
        weld("other process", replace(TEE, process=Process.MIG)),
        weld("a metal of another bench", replace(TEE, metal="no-such-metal")),
        weld("nothing read off", current_a=None),
    )
    found = own_welds(TEE, Evidence(welds), tables)
    assert [each.id for each in found] == ["same", "other temper", "upwards"]
    assert own_welds(TEE, None, tables) == ()


def test_a_current_that_was_not_read_off_comes_from_the_wire_feed(tables):
    """The advised feed must lead back to the advised current, which another rule works out the other way."""
    settings = advise(LAP, tables).settings
    feed = settings["wire_feed"].figure.start
    (found,) = own_welds(LAP, Evidence((weld("1", LAP, None, wire_feed_m_min=feed),)), tables)
    assert found.is_from_feed
    assert found.current_a == pytest.approx(settings["current"].figure.start, rel=0.05)


def test_the_csv_holds_each_with_its_outcome(tables):
    curve = current_curve("Tee", TEE, tables, thicknesses_mm=(1.0, 2.0))
    logged = Evidence((weld("a"), weld("b", current_a=140.0, outcome=Outcome.FAILED)))
    curve = replace(curve, own=own_welds(TEE, logged, tables))
    lines = [line for line in csv.DictReader(io.StringIO(curves_csv([curve]))) if line["kind"] == "own weld"]
    assert [(line["row"], line["start_a"], line["outcome"]) for line in lines] == [
        ("a", "90", "worked-well"),
        ("b", "140", "failed"),
    ]
    assert {line["thickness_mm"] for line in lines} == {"2"}


def test_a_learned_curve_is_the_learned_cards_own_current(tables):
    start = advise(TEE, tables).settings["current"].figure.start
    logged = Evidence(tuple(weld(str(number), current_a=start * 1.2) for number in range(6)))
    curve = current_curve("Tee", TEE, tables, thicknesses_mm=(1.5, 2.0), evidence=logged)
    for place, thickness_mm in enumerate(curve.thicknesses_mm):
        band = (
            advise(replace(TEE, thickness_mm=thickness_mm), tables, evidence=logged).settings["current"].band
        )
        assert (curve.low_a[place], curve.start_a[place], curve.high_a[place]) == (
            band.low,
            band.start,
            band.high,
        )
    assert curve.start_a[1] > start
