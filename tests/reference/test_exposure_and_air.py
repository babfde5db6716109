"""Limits and ventilation: arithmetic between the units printed side by side."""

from itertools import pairwise

import pytest

FOOT_M = 0.3048


def test_a_limit_has_a_figure_with_its_unit_or_a_statement(tables):
    for row in tables.table("exposure_limits").rows:
        has_figure = row["value_min"] is not None
        assert has_figure is (row["unit"] is not None), row["row_id"]
        assert has_figure is not bool(row["statement"]), row["row_id"]


@pytest.mark.parametrize(
    ("substance", "authority", "averaging", "value", "unit"),
    [
        ("chromium VI", "OSHA", "shift", 0.005, "mg/m3"),
        ("manganese fume (as Mn)", "OSHA", "ceiling", 5, "mg/m3"),
        ("ozone", "OSHA", "shift", 0.1, "ppm"),
        ("phosgene", "OSHA", "shift", 0.1, "ppm"),
        ("cadmium", "OSHA", "shift", 0.005, "mg/m3"),
    ],
)
def test_federal_limits(tables, substance, authority, averaging, value, unit):
    """29 CFR 1910.1000, .1026 and .1027, as quoted or printed in the agencies' pages."""
    rows = [
        row
        for row in tables.table("exposure_limits").rows
        if (row["substance"], row["authority"], row["averaging"], row["kind"])
        == (substance, authority, averaging, "limit")
    ]
    assert [(row["value_min"], row["unit"]) for row in rows] == [(value, unit)]


def test_an_action_level_lies_below_its_limit(tables):
    rows = tables.table("exposure_limits").rows
    levels = [row for row in rows if row["kind"] == "action-level"]
    assert len(levels) == 4
    for level in levels:
        limits = [
            row["value_min"]
            for row in rows
            if row["kind"] == "limit"
            and row["averaging"] == "shift"
            and (row["substance"], row["authority"]) == (level["substance"], level["authority"])
        ]
        assert limits
        assert level["value_max"] < min(limits)


METRIC_OF = {
    ("ft3", "m3"): lambda value: value * FOOT_M**3,
    ("ft", "m"): lambda value: value * FOOT_M,
    ("ft3/min", "m3/min"): lambda value: value * FOOT_M**3,
    ("ft/min", "m/s"): lambda value: value * FOOT_M / 60,
    ("mile/h", "m/s"): lambda value: value * 1609.344 / 3600,
    ("deg F", "degC"): lambda value: (value - 32) / 1.8,
}


def test_metric_figures_agree_with_the_printed_ones(tables):
    compared = 0
    for row in tables.table("ventilation").rows:
        if row["printed_value"] is not None:
            compared += 1
            expected = METRIC_OF[row["printed_unit"], row["unit"]](row["printed_value"])
            assert row["value"] == pytest.approx(expected, rel=0.02), row["row_id"]
    assert compared >= 12


def test_hood_air_grows_with_distance(tables):
    """29 CFR 1910.252(c)(3): 150, 275, 425, 600 cubic feet a minute as the hood moves off."""
    hoods = [row for row in tables.table("ventilation").rows if row["duct_mm"] is not None]
    assert [row["printed_value"] for row in hoods] == [150, 275, 425, 600]
    for near, far in pairwise(hoods):
        assert near["hood_to_mm"] == far["hood_from_mm"]
        assert near["duct_mm"] < far["duct_mm"]
