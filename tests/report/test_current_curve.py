"""Current over thickness is the card's own current, step by step."""

import csv
import io
from dataclasses import replace
from math import isnan

import pytest

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.reference.basis import Basis
from welds.report.current_curve import THICKEST_MM, THINNEST_MM, current_curve, curves_csv, grid_mm

REQUESTS = (
    Request(Process.TIG, "5052", 2.0, Joint.TEE),
    Request(Process.TIG, "304", 2.0, Joint.BUTT, position="PF"),
    Request(Process.MIG, "low-carbon", 2.0, Joint.LAP),
)


@pytest.mark.parametrize("request_", REQUESTS, ids=lambda each: f"{each.process}-{each.metal}")
def test_the_curve_is_the_cards_own_current(tables, request_):
    curve = current_curve("any", request_, tables, thicknesses_mm=(1.0, 2.0, 3.0))
    for place, thickness_mm in enumerate(curve.thicknesses_mm):
        band = advise(replace(request_, thickness_mm=thickness_mm), tables).settings["current"].band
        assert (curve.low_a[place], curve.start_a[place], curve.high_a[place]) == (
            band.low,
            band.start,
            band.high,
        )


def test_where_the_tables_end_there_is_a_gap(tables):
    curve = current_curve("any", REQUESTS[0], tables, thicknesses_mm=(2.0, 60.0))
    assert [isnan(start) for start in curve.start_a] == [False, True]
    assert not curve.is_empty
    assert current_curve("any", REQUESTS[0], tables, thicknesses_mm=(60.0,)).is_empty


def test_points_are_rows_of_the_tables_for_the_curves_own_joint(tables):
    curve = current_curve("any", REQUESTS[0], tables)
    rows = {row["row_id"]: row for row in tables.table("tig_schedules").rows}
    assert any(point.basis is Basis.PRINTED for point in curve.points)
    for point in curve.points:
        row = rows[point.row_id]
        assert (row["joint"], row["family"]) == ("tee", "aluminium")
        assert (row["current_min_a"], row["current_max_a"]) == (point.low_a, point.high_a)


def test_the_grid_is_even_in_ratio():
    grid = grid_mm(10)
    assert (grid[0], grid[-1]) == (pytest.approx(THINNEST_MM), pytest.approx(THICKEST_MM))
    assert grid[1] / grid[0] == pytest.approx(grid[-1] / grid[-2])


def test_csv_holds_every_step_and_every_row(tables):
    curve = current_curve("Tee, thin", REQUESTS[0], tables, thicknesses_mm=(1.0, 2.0, 60.0))
    lines = list(csv.DictReader(io.StringIO(curves_csv([curve]))))
    assert [line["kind"] for line in lines] == ["advised"] * 2 + ["schedule"] * len(curve.points)
    assert {line["title"] for line in lines} == {"Tee, thin"}
