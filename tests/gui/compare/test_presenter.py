"""What stands side by side, without a window."""

from dataclasses import replace

import pytest

from tests.gui.compare.conftest import CARD
from welds.advice.advise import advise
from welds.gui.bench_in_use import BenchInUse
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.quantities.units import Units


def heard(signal):
    said = []
    signal.connect(lambda *values: said.append(values))
    return said


def test_it_starts_with_all_joints_and_the_present_one_as_base(presenter):
    assert presenter.shown.titles == ("Butt", "Tee", "Lap", "Outside corner", "Inside corner", "Edge")
    assert presenter.shown.pinned == 3


@pytest.mark.parametrize(
    ("kind", "titles"),
    [
        ("process", ("TIG", "MIG")),
        ("hand", ("Unhurried hand", "Brisk hand")),
        ("metal", ("TIG, outside corner, 5052, 2.03 mm, position PA, unhurried hand",)),
    ],
)
def test_another_kind_takes_the_place_of_the_columns(presenter, kind, titles):
    presenter.choose_kind(kind)
    assert presenter.shown.titles == titles


def test_thicknesses_stand_between_their_neighbours(presenter):
    presenter.choose_kind("thickness")
    sheets = [column.request.thickness_mm for column in presenter.shown.comparison.columns]
    assert sheets == sorted(sheets)
    assert len(sheets) == 7
    assert presenter.shown.comparison.columns[presenter.shown.pinned].request.thickness_mm == pytest.approx(
        2.032
    )


def test_kept_columns_get_company(presenter):
    presenter.tick(("outside-corner", "tee"))
    presenter.keep_columns(True)
    presenter.choose_kind("metal")
    assert presenter.add_value("6061")
    assert presenter.shown.titles == ("Tee, 5052", "Outside corner, 5052", "Outside corner, 6061")


def test_a_tick_adds_and_removes(presenter):
    presenter.tick(("outside-corner", "edge"))
    assert presenter.shown.titles == ("Outside corner", "Edge")
    assert presenter.ticked() == ("outside-corner", "edge")


def test_the_base_thickness_moves_every_column_without_its_own(presenter):
    presenter.keep_columns(True)
    presenter.choose_kind("thickness")
    presenter.add_value("5 mm")
    presenter.set_thickness_mm(3.0)
    sheets = [column.request.thickness_mm for column in presenter.shown.comparison.columns]
    assert sheets == [3.0] * 6 + [5.0]


def test_curves_are_outdated_by_another_metal_but_not_by_another_thickness(presenter):
    outdated = heard(presenter.curves_outdated)
    presenter.set_thickness_mm(3.0)
    assert outdated == []
    presenter.choose_kind("hand")
    assert len(outdated) == 1


def test_slips_are_told_and_change_nothing(presenter):
    said = heard(presenter.refused)
    before = presenter.shown
    presenter.choose_kind("metal")
    assert not presenter.add_value("50522")
    assert "metal" in said[-1][0]
    presenter.set_thickness("a thick one")
    assert "thickness" in said[-1][0]
    assert presenter.shown is not before
    assert presenter.base_thickness_mm == pytest.approx(2.032)


def test_no_ninth_column(presenter):
    said = heard(presenter.refused)
    presenter.keep_columns(True)
    presenter.choose_kind("metal")
    assert presenter.add_value("6061")
    assert presenter.add_value("304")
    assert not presenter.add_value("1100")
    assert "Eight" in said[-1][0]


def test_a_refusal_is_a_column_with_its_reason(presenter):
    presenter.choose_kind("metal")
    assert presenter.add_value("7075")
    column = presenter.shown.comparison.columns[1]
    assert column.card is None
    assert column.problem


def test_a_machine_from_its_file(presenter, tmp_path):
    file = tmp_path / "mains.yaml"
    file.write_text(
        "machine:\n  name: mains set\n  processes: [tig]\n"
        "  ac_frequency_min_hz: 50\n  ac_frequency_max_hz: 50\n",
        encoding="utf-8",
    )
    presenter.choose_kind("machine")
    presenter.add_machine_file(file)
    assert presenter.shown.titles == ("any machine", "mains set")
    rows = {row.name: row for group in presenter.shown.groups for row in group.rows}
    assert rows["ac_frequency"].cells[1].line.start == "50"
    said = heard(presenter.refused)
    presenter.add_machine_file(tmp_path / "nowhere.yaml")
    assert "nowhere.yaml" in said[-1][0]


def test_the_machines_of_the_bench_stand_side_by_side(qapp, real_engine, tmp_path):
    file = tmp_path / "bench.yaml"
    file.write_text(
        "in_use: mains set\nmachines:\n"
        + "".join(
            f"  - name: {name}\n    processes: [tig]\n"
            f"    ac_frequency_min_hz: 50\n    ac_frequency_max_hz: {highest}\n"
            for name, highest in (("modern set", 150), ("mains set", 50))
        ),
        encoding="utf-8",
    )
    tables = real_engine.tables
    bench = BenchInUse(tables, file)
    engine = replace(real_engine, bench=bench, card=lambda request: advise(request, tables, bench.equipment))
    made = ComparePresenter(engine)
    made.take_card(CARD, Units.METRIC)
    assert "mains set" in made.shown.heading
    made.choose_kind("machine")
    assert made.shown.titles == ("modern set", "mains set")
    assert made.ticked() == made.shown.titles
    assert made.shown.pinned == 1
    made.tick(("mains set",))
    assert made.ticked() == ("mains set",)


def test_a_gauge_stays_the_same_sheet_in_another_metal(qapp, real_engine):
    made = ComparePresenter(real_engine)
    made.take_card({**CARD, "thickness": "14 ga", "joint": "butt"}, Units.METRIC)
    made.choose_kind("metal")
    made.add_value("304")
    first, second = made.shown.comparison.columns
    assert first.request.thickness_mm == pytest.approx(second.request.thickness_mm)


def test_a_new_card_keeps_the_columns_and_pins_its_own(presenter):
    presenter.take_card({**CARD, "joint": "tee", "thickness": "3 mm"}, Units.INCH)
    assert presenter.shown.titles[presenter.shown.pinned] == "Tee"
    assert "0.118 in" in presenter.shown.heading


def test_a_column_opens_as_the_set_up_page_would_hold_it(presenter):
    assert presenter.fields_of(1) == {**CARD, "joint": "tee"}


def test_curves_come_from_the_columns(presenter):
    presenter.tick(("outside-corner", "tee"))
    curves = presenter.curve_work()()
    assert [curve.title for curve in curves] == list(presenter.shown.titles)
    tee = curves[0]
    card = presenter.shown.comparison.columns[0].card
    place = min(range(len(tee.thicknesses_mm)), key=lambda i: abs(tee.thicknesses_mm[i] - 2.032))
    assert tee.start_a[place] == pytest.approx(card.settings["current"].band.start, rel=0.06)
    assert all(point.row_id for point in tee.points)
