"""Preheat limits and tack spacing: no gap, no overlap, nothing that contradicts itself."""

from itertools import groupby, pairwise

import pytest

from welds.reference.load import load_tables
from welds.reference.metals import Metal

TABLES = load_tables()
PREHEAT = TABLES.table("preheat").rows
TACKS = TABLES.table("tacks").rows


def by(rows, *names):
    def key(row):
        return tuple(row[name] for name in names)

    return {group: list(found) for group, found in groupby(sorted(rows, key=key), key=key)}


@pytest.mark.parametrize(
    "rows", [by(PREHEAT, "family", "group"), by(TACKS, "family")], ids=["preheat", "tacks"]
)
def test_thickness_bands_join_without_gap_or_overlap(rows):
    for group, bands in rows.items():
        bands.sort(key=lambda row: row["thickness_min_mm"])
        for thinner, thicker in pairwise(bands):
            assert thinner["thickness_max_mm"] == thicker["thickness_min_mm"], group


def test_every_weldable_group_but_magnesium_has_a_preheat_row():
    groups = {(metal.family, metal.group) for metal in TABLES.records(Metal) if metal.is_weldable}
    assert groups - set(by(PREHEAT, "family", "group")) == {("magnesium", "magnesium")}


def test_every_family_has_tacks_for_sheet():
    families = {metal.family for metal in TABLES.records(Metal)}
    assert {family for (family,) in by(TACKS, "family")} == families
    for bands in by(TACKS, "family").values():
        assert min(row["thickness_min_mm"] for row in bands) <= 0.5
        assert max(row["thickness_max_mm"] for row in bands) >= 12.7


@pytest.mark.parametrize("row", PREHEAT, ids=lambda row: row["row_id"])
def test_a_least_preheat_stands_exactly_where_one_is_asked_for(row):
    assert (row["preheat_min_c"] is not None) == (row["need"] == "yes")


@pytest.mark.parametrize("row", PREHEAT, ids=lambda row: row["row_id"])
def test_preheat_never_asks_for_more_than_interpass_allows(row):
    if row["preheat_min_c"] is not None and row["interpass_max_c"] is not None:
        assert row["preheat_min_c"] <= row["interpass_max_c"]


@pytest.mark.parametrize("row", PREHEAT, ids=lambda row: row["row_id"])
def test_aluminium_is_never_warmed_near_its_ageing_temperature(row):
    # 6061 ages between 163 and 204 degC (325 to 400 degF)
    if row["family"] == "aluminium":
        assert row["preheat_max_c"] <= 120
        assert row["interpass_max_c"] <= 120


def test_spacing_grows_with_thickness():
    for bands in by(TACKS, "family").values():
        bands.sort(key=lambda row: row["thickness_min_mm"])
        for thinner, thicker in pairwise(bands):
            assert thinner["spacing_min_mm"] <= thicker["spacing_min_mm"]
            assert thinner["spacing_max_mm"] <= thicker["spacing_max_mm"]
            assert thinner["length_max_mm"] <= thicker["length_max_mm"]


def test_tacks_leave_more_gap_than_bead():
    for row in TACKS:
        assert row["length_max_mm"] < row["spacing_min_mm"]
