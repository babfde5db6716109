"""Columns as plain values: order, base, room."""

from welds.gui.pages.compare.column_set import MOST, Change, ColumnSet

JOINTS = ("butt", "tee", "lap", "edge")


def varying(kind, values, present):
    return ColumnSet.of([Change({kind: value}) for value in values], Change({kind: present}))


def named(columns):
    return [change.fields["joint"] for change in columns.changes]


def test_one_column_for_each_value_with_the_present_one_as_base():
    columns = varying("joint", JOINTS, "lap")
    assert named(columns) == list(JOINTS)
    assert columns.base == 2


def test_no_more_columns_than_can_be_read():
    columns = varying("thickness", [f"{mm} mm" for mm in range(1, 13)], "2 mm")
    assert len(columns.changes) == MOST
    assert columns.is_full
    assert columns.with_change(Change({"thickness": "20 mm"})) is columns


def test_the_same_column_is_not_added_twice():
    columns = varying("joint", JOINTS, "butt")
    assert columns.with_change(Change({"joint": "tee"})) is columns


def test_the_base_stays_the_same_column_when_others_move_or_go():
    columns = varying("joint", JOINTS, "lap")
    assert named(columns.moved(0, 3)) == ["tee", "lap", "edge", "butt"]
    assert columns.moved(0, 3).base == 1
    assert columns.moved(2, 0).base == 0
    assert columns.without(0).base == 1
    assert columns.without(3).base == 2


def test_without_the_base_the_first_column_takes_its_place():
    assert varying("joint", JOINTS, "lap").without(2).base == 0


def test_the_last_column_stays():
    assert len(ColumnSet().without(0).changes) == 1


def test_a_move_beyond_the_end_stops_there():
    assert named(varying("joint", JOINTS, "butt").moved(1, 9))[-1] == "tee"
