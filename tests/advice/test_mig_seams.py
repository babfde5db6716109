"""The laws fitted to MIG rows: rows made from a known law must give it back. Rows are invented."""

from dataclasses import fields
from math import pi, sqrt

import pytest

from welds.advice.mig_seams import (
    EXTENSION_MM,
    Bench,
    fit_mig_seams,
    middle,
    thickness_of,
    wire_of,
)
from welds.advice.request import Transfer
from welds.reference.basis import Basis
from welds.reference.schedules import MigSchedule

SPRAY = Bench("carbon-steel", "spray")


class Made:
    """Tables that hold these MIG rows and nothing else."""

    def __init__(self, *rows: MigSchedule) -> None:
        self.rows = rows

    def records(self, kind):
        return self.rows if kind is MigSchedule else ()

    def derived(self, build):
        return build(self)


def row(number: int, amps: float, **more) -> MigSchedule:
    usual = {
        "row_id": f"A-{number}", "family": "carbon-steel", "kind": "seam", "thickness_mm": 3.0,
        "joint": "butt", "preparation": "square", "positions": ("PA",), "transfer": "spray", "gas": "ar-co2",
        "use": "pooled", "current_min_a": 0.9 * amps, "current_max_a": 1.1 * amps, "source_id": "A",
        "basis": Basis.PRINTED,
    }  # fmt: skip
    return MigSchedule(**{each.name: None for each in fields(MigSchedule)} | usual | more)


def fed(
    number: int, amps: float, wire: float, arc: float, resistance: float, off: float = 1.0
) -> MigSchedule:
    """Return a row whose wire, drawn as `arc I / A + resistance L (I / A)^2` in mm/s, melts as it comes."""
    density = amps / (pi * wire**2 / 4)
    feed = (arc * density + resistance * 18.0 * density**2) * 60 / 1000 * off
    return row(number, amps, wire_mm=wire, feed_min_m_min=0.95 * feed, feed_max_m_min=1.05 * feed)


STEEL_ROWS = ((150, 0.9), (200, 1.2), (250, 1.2), (300, 1.6))


def test_the_wire_that_stands_out_is_that_of_the_handbook():
    """6 to 13 mm beyond the tip for short circuits, 13 to 25 mm for spray [AWS handbook, from memory]."""
    assert 6 <= EXTENSION_MM[Transfer.SHORT_CIRCUIT] <= 13
    for transfer in (Transfer.SPRAY, Transfer.PULSED, Transfer.GLOBULAR):
        assert 13 <= EXTENSION_MM[transfer] <= 25


def test_a_melting_law_comes_back():
    rows = [fed(n, amps, wire, 0.30, 6e-5) for n, (amps, wire) in enumerate(STEEL_ROWS)]
    law = fit_mig_seams(Made(*rows), lambda row: True).melt_laws[SPRAY]
    assert law.arc_mm3_as == pytest.approx(0.30, rel=1e-6)
    assert law.resistance_mm4_a2s == pytest.approx(6e-5, rel=1e-6)
    assert law.scatter == pytest.approx(0.0, abs=1e-6)
    assert len(law.rows) == 4


def test_rows_beside_the_law_show_as_scatter():
    """Two rows a tenth above and two a tenth below: their distance is a tenth."""
    rows = [
        fed(2 * n + above, amps, wire, 0.30, 6e-5, 1.1 if above else 0.9)
        for n, (amps, wire) in enumerate(STEEL_ROWS)
        for above in (0, 1)
    ]
    law = fit_mig_seams(Made(*rows), lambda row: True).melt_laws[SPRAY]
    assert law.scatter == pytest.approx(0.1, abs=0.01)
    assert law.arc_mm3_as == pytest.approx(0.30, rel=0.02)


def test_a_resistance_below_nothing_is_not_believed():
    """Feeds that grow slower than current: a straight line through them, as wire of no resistance."""
    rows = [fed(n, amps, wire, 0.40, -4e-5) for n, (amps, wire) in enumerate(STEEL_ROWS)]
    law = fit_mig_seams(Made(*rows), lambda row: True).melt_laws[SPRAY]
    assert law.resistance_mm4_a2s == 0.0
    shares = [0.40 - 4e-5 * 18.0 * amps / (pi * wire**2 / 4) for amps, wire in STEEL_ROWS]
    assert min(shares) < law.arc_mm3_as < max(shares)
    assert law.scatter > 0.01


@pytest.mark.parametrize(("count", "is_law"), [(2, False), (3, True)])
def test_two_rows_are_no_law(count, is_law):
    rows = [fed(n, amps, wire, 0.30, 6e-5) for n, (amps, wire) in enumerate(STEEL_ROWS[:count])]
    unfed = [
        row(9, 220.0),
        row(10, 220.0, feed_min_m_min=5.0, feed_max_m_min=6.0),
        row(11, 180.0, wire_mm=1.2),
    ]
    assert (SPRAY in fit_mig_seams(Made(*rows, *unfed), lambda row: True).melt_laws) == is_law


def volts(number: int, amps: float, at: float, **more) -> MigSchedule:
    return row(number, amps, voltage_min_v=at - 1.0, voltage_max_v=at + 1.0, **more)


def test_a_voltage_line_of_the_usual_slope_comes_back():
    """15 V and 4 V per 100 A: the slope that few rows are held to is their own."""
    rows = [volts(n, amps, 15.0 + 0.04 * amps) for n, amps in enumerate((120.0, 200.0, 300.0))]
    line = fit_mig_seams(Made(*rows), lambda row: True).volt_lines[SPRAY, "ar-co2"]
    assert (line.at_zero_v, line.slope_v_a) == pytest.approx((15.0, 0.04))
    assert line.scatter_v == pytest.approx(0.0, abs=1e-9)
    assert len(line.rows) == 3


def test_few_rows_pull_the_slope_a_little_and_many_take_it_over():
    """By hand, rows of 100 and 300 A at slope 0.08: 2 x 100^2 against a pull of 2 x 40^2.

    (20000 x 0.08 + 3200 x 0.04) / 23200 = 0.0745; with a hundred rows of each (2e6 x 0.08 + 128) / 2003200.
    """
    for copies, slope in ((1, 0.07448), (100, 0.07994)):
        rows = [volts(n, amps, 10.0 + 0.08 * amps) for n, amps in enumerate((100.0, 300.0) * copies)]
        line = fit_mig_seams(Made(*rows), lambda row: True).volt_lines[SPRAY, "ar-co2"]
        assert line.slope_v_a == pytest.approx(slope, abs=1e-5)
        assert line.at_zero_v + 200.0 * line.slope_v_a == pytest.approx(26.0)
        assert line.scatter_v == pytest.approx((0.08 - slope) * 100.0, abs=2e-3)


def test_a_lone_row_gives_its_own_volts_at_the_usual_slope():
    line = fit_mig_seams(Made(volts(1, 200.0, 26.0)), lambda row: True).volt_lines[SPRAY, "ar-co2"]
    assert (line.at_zero_v, line.slope_v_a, line.scatter_v) == pytest.approx((18.0, 0.04, 0.0))


def test_gases_have_lines_of_their_own_and_rows_without_volts_none():
    seams = fit_mig_seams(
        Made(volts(1, 200.0, 26.0), volts(2, 200.0, 28.0, gas="co2"), row(3, 200.0, gas="he")),
        lambda row: True,
    )
    assert {gas for _, gas in seams.volt_lines} == {"ar-co2", "co2"}
    assert seams.volt_lines[SPRAY, "co2"].at_zero_v == pytest.approx(20.0)


def exponent(*rows: MigSchedule) -> float:
    return fit_mig_seams(Made(*rows), lambda row: True).wire_exponent[SPRAY]


def test_wire_exponent_of_one_pair_and_of_none():
    """1.2 over 0.9 mm at as much over in current is an exponent of 1; with two pairs' worth of 0.4, 0.6."""
    thin, thick = row(1, 180.0, wire_mm=0.9), row(2, 240.0, wire_mm=1.2)
    assert exponent(thin) == pytest.approx(0.4)
    assert exponent(thin, thick) == pytest.approx((1.0 + 2 * 0.4) / 3)
    assert exponent(thick, thin) == pytest.approx((1.0 + 2 * 0.4) / 3)


@pytest.mark.parametrize(
    "more", [{"source_id": "B"}, {"joint": "tee"}, {"thickness_mm": 4.0}, {"gas": "co2"}, {"wire_mm": 0.94}]
)
def test_rows_that_differ_in_more_than_the_wire_are_no_pair(more):
    assert exponent(row(1, 180.0, wire_mm=0.9), row(2, 240.0, **{"wire_mm": 1.2} | more)) == pytest.approx(
        0.4
    )


def test_wire_exponent_stays_within_what_can_be():
    """Current that falls with the wire counts as none; current that grows faster than the wire as in step."""
    falling = [row(n, amps, wire_mm=wire) for n, (amps, wire) in enumerate(((300.0, 0.9), (60.0, 1.2)))]
    leaping = [row(n, amps, wire_mm=wire) for n, (amps, wire) in enumerate(((60.0, 0.9), (300.0, 1.2)))]
    assert exponent(*falling) == 0.0
    assert exponent(*leaping) == 1.0


def test_ranges_are_read_at_their_middles():
    """Printed 2 to 8 mm is 4 mm on a scale of ratios; volts and feeds have the plain middle."""
    assert thickness_of(row(1, 100.0, thickness_mm=2.0, thickness_max_mm=8.0)) == pytest.approx(4.0)
    assert thickness_of(row(1, 100.0, thickness_mm=2.0)) == 2.0
    assert wire_of(row(1, 100.0, wire_mm=0.8, wire_max_mm=1.25)) == pytest.approx(1.0)
    assert wire_of(row(1, 100.0, wire_mm=0.8)) == 0.8
    assert wire_of(row(1, 100.0)) is None
    assert middle(2.0, 5.0) == 3.5
    assert middle(None, 5.0) is middle(2.0, None) is None


def test_a_row_of_another_wire_is_brought_to_the_reference():
    """1.6 mm wire, exponent 0.4: over (1.6 / 0.9)^0.4 = 1.2588."""
    seams = fit_mig_seams(Made(row(1, 125.88, wire_mm=1.6)), lambda row: True)
    reading = seams.curves[SPRAY].at(3.0)
    assert reading.middle == pytest.approx(100.0, rel=1e-3)
    assert sqrt(reading.low * reading.high) == pytest.approx(100.0, rel=0.02)


def test_rows_not_pooled_not_kept_or_not_of_seams_say_nothing():
    rows = [row(1, 100.0), row(2, 300.0, use="shown"), row(3, 300.0, kind="plug"), row(4, 300.0)]
    seams = fit_mig_seams(Made(*rows), lambda each: each.row_id != "A-4")
    assert [each.row_id for each in seams.rows[SPRAY]] == ["A-1"]
    assert seams.curves[SPRAY].at(3.0).middle == pytest.approx(100.0, rel=1e-3)
