"""Electrode types, the current each size carries, and tips."""

import pytest

from welds.reference.basis import Basis
from welds.reference.tungsten import (
    TungstenCurrent,
    TungstenTip,
    TungstenType,
    electrode_class,
    tungstens_for,
)


def test_the_preferred_types_come_first_and_none_is_radioactive(tables):
    for polarity in ("AC", "DCEN"):
        types = tungstens_for(tables, polarity)
        assert [each.iso_code for each in types][:2] == ["WLa20", "WLa15"]
        first_radioactive = next((n for n, each in enumerate(types) if each.is_radioactive), len(types))
        assert all(each.is_radioactive for each in types[first_radioactive:])
    assert "WP" not in [each.iso_code for each in tungstens_for(tables, "DCEN")]
    assert "WTh20" not in [each.iso_code for each in tungstens_for(tables, "AC")]


def test_thoria_alone_is_radioactive_and_codes_say_the_oxide(tables):
    letters = {"none": "P", "ceria": "Ce", "lanthana": "La", "thoria": "Th", "zirconia": "Zr"}
    for each in tables.records(TungstenType):
        assert each.is_radioactive is (each.oxide == "thoria")
        assert each.iso_code.startswith("W" + letters[each.oxide])
        assert (each.oxide_min_percent is None) is (each.oxide == "none")


def test_iso_codes_carry_ten_times_the_oxide(tables):
    """ISO 6848: the digits give the nominal oxide in tenths of a percent by weight."""
    for each in tables.records(TungstenType):
        digits = "".join(filter(str.isdigit, each.iso_code))
        if digits:
            assert each.oxide_min_percent <= int(digits) / 10 <= each.oxide_max_percent, each.iso_code


def test_cells_keep_their_own_grade(tables):
    lanthanated = next(each for each in tables.records(TungstenType) if each.iso_code == "WLa20")
    assert lanthanated.basis_of("colour") is Basis.RECALLED
    assert lanthanated.basis_of("standing") is Basis.PRACTICE
    assert lanthanated.basis_of("aws_code") is Basis.QUOTED


def test_the_two_standards_name_the_same_types(tables):
    by_code = {row["aws_code"]: row for row in tables.table("tungsten_codes").rows}
    for each in tables.records(TungstenType):
        if each.aws_code:
            row = by_code[each.aws_code]
            assert row["iso_code"] == each.iso_code
            assert row["oxide"] == each.oxide
            if each.iso_code != "WCe20":  # orange in the AWS edition of 1998, grey in ISO 6848
                assert row["colour"] == each.colour


def test_classes_of_the_current_table(tables):
    by_code = {each.iso_code: electrode_class(each) for each in tables.records(TungstenType)}
    assert by_code["WP"] == ("pure",)
    assert by_code["WLa15"] == ("oxide",)
    assert by_code["WZr8"] == ("zirconiated", "oxide")


def test_thicker_tungsten_carries_more(tables):
    scales: dict[tuple[str, ...], list[TungstenCurrent]] = {}
    for row in tables.records(TungstenCurrent):
        key = (row.source_id, row.polarity, row.wave, row.electrode_class)
        scales.setdefault(key, []).append(row)
    assert len(scales) == 13  # one printed, six of each recalled standard
    for rows in scales.values():
        diameters = [row.diameter_mm for row in rows]
        assert diameters == sorted(set(diameters))
        highest = [row.current_max_a for row in rows]
        assert highest == sorted(highest)
        lowest = [row.current_min_a or 0 for row in rows]
        assert lowest == sorted(lowest)


def test_inch_names_are_the_metric_size(tables):
    for row in tables.records(TungstenCurrent):
        if row.diameter_inch_name:
            top, _, bottom = row.diameter_inch_name.partition("/")
            inches = float(top) / float(bottom or 1)
            assert row.diameter_mm == pytest.approx(inches * 25.4, abs=0.051), row.row_id


def test_electrode_positive_carries_about_a_tenth(tables):
    """The trade's rule of thumb; for oxide electrodes of one size and document."""
    rows = [row for row in tables.records(TungstenCurrent) if row.electrode_class == "oxide"]
    negative = {(row.source_id, row.diameter_mm): row for row in rows if row.polarity == "DCEN"}
    positive = [row for row in rows if row.polarity == "DCEP"]
    assert len(positive) >= 12
    for row in positive:
        assert 0.08 < row.current_max_a / negative[row.source_id, row.diameter_mm].current_max_a < 0.17


def test_blunter_tips_take_more_current(tables):
    tips = tables.records(TungstenTip)
    assert [tip.tip_angle_deg for tip in tips] == [12, 20, 25, 30, 35, 45, 60, 90]
    assert [tip.current_max_a for tip in tips] == sorted(tip.current_max_a for tip in tips)
    assert all(tip.basis is Basis.RECALLED for tip in tips)
