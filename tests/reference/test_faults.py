"""Faults, their numbers, and the setting that answers them."""

import pytest

from welds.errors import InputError
from welds.reference.faults import Fault, Imperfection, fault_names, find_fault, remedies


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("burn-through", "burn-through"),
        ("Burn through", "burn-through"),
        ("lack_of_fusion", "lack-of-fusion"),
        ("510", "510"),
        (" 2017 ", "2017"),
    ],
)
def test_a_fault_by_name_or_number(tables, text, name):
    assert find_fault(tables, text) == name


def test_an_unknown_fault_is_refused_with_the_nearest(tables):
    with pytest.raises(InputError) as caught:
        find_fault(tables, "burnthrough")
    assert caught.value.nearest == "burn-through"
    with pytest.raises(InputError):
        find_fault(tables, "")


def test_burn_through_asks_for_less_current_and_more_speed(tables):
    rows = remedies(tables, "burn-through", "tig", "aluminium")
    changes = {row.setting: row.direction for row in rows if row.setting}
    assert changes["current"] == "down"
    assert changes["travel_speed"] == "up"
    assert changes["pulse"] == "up"
    assert "pulse" not in {row.setting for row in remedies(tables, "burn-through", "mig", "aluminium")}
    assert remedies(tables, "510", "tig", "aluminium") == rows


def test_cleaning_share_is_answered_in_opposite_ways(tables):
    """Less electrode negative cleans more; a wide frosty band means there is too much of it."""

    def balance(fault):
        rows = remedies(tables, fault, "tig", "aluminium")
        return {row.direction for row in rows if row.setting == "electrode_negative"}

    assert balance("oxide-inclusion") == {"down"}
    assert balance("wide-etch-band") == {"up"}
    assert balance("tungsten-inclusion") == {"up"}


def test_too_hot_and_too_cold_are_answered_in_opposite_ways(tables):
    def current(fault):
        return {
            row.direction for row in remedies(tables, fault, "tig", "stainless") if row.setting == "current"
        }

    for hot in ("burn-through", "undercut", "excess-penetration", "heat-tint"):
        assert current(hot) == {"down"}, hot
    for cold in ("lack-of-fusion", "incomplete-penetration", "convex-bead"):
        assert current(cold) == {"up"}, cold


def test_numbers_stand_in_the_table_of_imperfections(tables):
    numbers = {each.number for each in tables.records(Imperfection)}
    assert {number for row in tables.records(Fault) for number in row.iso_6520} <= numbers


def test_the_first_digit_is_the_group(tables):
    """ISO 6520-1 parts imperfections into six groups by their first digit."""
    groups = {
        "1": "cracks",
        "2": "cavities",
        "3": "solid-inclusions",
        "4": "fusion-and-penetration",
        "5": "shape-and-size",
        "6": "other",
    }
    for each in tables.records(Imperfection):
        assert each.group == groups[each.number[0]]


def test_a_row_names_a_setting_and_a_direction_or_neither(tables):
    for row in tables.records(Fault):
        assert (row.setting is None) is (row.direction == "none"), row.row_id
        assert row.remedy.endswith("."), row.row_id


def test_rows_of_one_fault_look_alike_and_carry_the_same_numbers(tables):
    for name in fault_names(tables):
        rows = [row for row in tables.records(Fault) if row.fault == name]
        assert len({(row.seen_as, row.iso_6520) for row in rows}) == 1, name
