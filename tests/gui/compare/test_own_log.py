"""What the person's own log adds to the page: columns with and without it, marks on the curves, logging."""

import csv
from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from tests.gui.compare.conftest import CARD
from tests.gui.fakes import FakePrompts
from welds.advice.advise import advise
from welds.advice.equipment import Equipment, Machine
from welds.advice.evidence import Evidence, Outcome, PastWeld
from welds.gui.drawing.export import svg
from welds.gui.main_window import COMPARE
from welds.gui.pages.compare.line_styles import OWN_SHAPES, SHAPES
from welds.gui.pages.compare.outputs import CompareOutput
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.gui.pages.compare.view import CURVES, CompareView
from welds.gui.past_welds import PastWelds
from welds.gui.theme import Theme
from welds.quantities.units import Units
from welds.report.comparison import Grounds


@pytest.fixture
def logged(real_engine):
    """Return welds a quarter above the tables on the console box's corner, and one that burned through."""
    request = real_engine.request(CARD)
    start = advise(request, real_engine.tables).settings["current"].figure.start
    good = tuple(
        PastWeld(str(number), request, Outcome.WORKED_WELL, start * 1.25, made_at="2025-03-01T10:00:00")
        for number in range(5)
    )
    burnt = PastWeld("burnt", request, Outcome.FAILED, start * 1.6, faults=("burn-through",))
    return Evidence((*good, burnt))


@pytest.fixture
def engine(real_engine, logged):
    """Return the real advice with a log that has been read."""
    tables, past = real_engine.tables, PastWelds(real_engine.tables)
    past.ask = lambda _request: None
    past.put(real_engine.request(CARD), logged)
    return replace(
        real_engine,
        past=past,
        card=lambda request, _steps=(): advise(request, tables, evidence=past.of(request)),
    )


@pytest.fixture
def presenter(qapp, engine):
    made = ComparePresenter(engine)
    made.take_card(CARD, Units.METRIC)
    return made


@pytest.fixture
def page(qtbot, qapp, presenter):
    """Return the page in a window of its own, with the corner and the tee."""
    Theme(qapp).apply()
    window = QWidget()
    prompts = FakePrompts(window)
    made = CompareView(presenter, CompareOutput(presenter, prompts, print, window), prompts, window)
    made.prompts = prompts
    window.resize(1366, 700)
    made.resize(1366, 700)
    presenter.tick(("outside-corner", "tee"))
    window.show()
    qtbot.waitExposed(window)
    yield made
    made.curves.wait()
    window.close()
    window.deleteLater()


def starts(presenter):
    return [column.card.settings["current"].figure.start for column in presenter.shown.comparison.columns]


def test_tables_against_learned(presenter):
    presenter.choose_kind("grounds")
    assert presenter.shown.titles == ("Tables alone", "Tables and log")
    assert presenter.ticked() == (Grounds.TABLES, Grounds.LOG)
    assert presenter.shown.pinned == 0
    alone, learned = (column.card for column in presenter.shown.comparison.columns)
    assert alone.learned is None
    assert learned.learned.welds == 6
    assert starts(presenter)[1] > 1.1 * starts(presenter)[0]
    rows = {row.name: row for group in presenter.shown.groups for row in group.rows}
    assert any("your log: 6 past welds" in why for why in rows["current"].cells[1].why)
    curves = presenter.curve_work()()
    assert max(curves[1].start_a[20:30]) > max(curves[0].start_a[20:30])


def test_the_two_stay_what_they_are_when_cards_do_not_learn(presenter, engine):
    presenter.choose_kind("grounds")
    before = starts(presenter)
    engine.past.is_on = False
    presenter.answer_again()
    assert starts(presenter) == before
    assert before[0] < before[1]


def test_both_grounds_beside_joints_are_named(presenter):
    presenter.tick(("outside-corner", "tee"))
    presenter.keep_columns(True)
    presenter.choose_kind("grounds")
    presenter.tick((Grounds.TABLES,))
    assert presenter.shown.titles == ("Tee", "Outside corner", "Outside corner, tables alone")


def test_a_log_without_a_word_is_told(qapp, real_engine):
    silent = ComparePresenter(replace(real_engine, past=PastWelds(real_engine.tables)))
    silent.take_card(CARD, Units.METRIC)
    silent.choose_kind("grounds")
    words = dict(silent.vary.values("grounds", silent.base_fields, Units.METRIC))
    assert "no weld speaks" in words[Grounds.LOG]
    assert starts(silent)[0] == starts(silent)[1]


def test_another_machine_learns_too(presenter):
    presenter.choose_kind("machine")
    presenter.add_machine(Equipment(Machine("mains set", frozenset({"tig"}), ac_frequency_max_hz=50)))
    here, there = (column.card for column in presenter.shown.comparison.columns)
    assert there.learned is not None
    assert there.learned.factor == pytest.approx(here.learned.factor)


def test_curves_follow_when_the_log_has_spoken(presenter, engine, logged):
    outdated = []
    presenter.curves_outdated.connect(lambda: outdated.append(True))
    presenter.answer_again()
    assert outdated == []
    engine.past.put(engine.request(CARD), Evidence(logged.welds[1:]))
    presenter.answer_again()
    assert outdated == [True]


def test_own_welds_stand_on_the_curve_in_shapes_of_their_own(page, qtbot, tmp_path):
    page.show_page(CURVES)
    qtbot.waitUntil(lambda: bool(page.curves.curves), timeout=30_000)
    assert [len(curve.own) for curve in page.curves.curves] == [0, 6]
    chart = page.curves.chart
    text = svg(chart.width(), chart.height(), chart.paint_picture).decode("utf-8")
    assert "your weld, worked well" in text
    assert "your weld, failed" in text
    assert "your weld, worked<" not in text
    assert len(set(OWN_SHAPES.values())) == len(OWN_SHAPES)
    assert not set(OWN_SHAPES.values()) & set(SHAPES.values())
    page.prompts.save_path = tmp_path / "curves.csv"
    page.save.click()
    lines = list(csv.DictReader(page.prompts.save_path.read_text(encoding="utf-8").splitlines()))
    assert [line["outcome"] for line in lines if line["kind"] == "own weld"] == ["worked-well"] * 5 + [
        "failed"
    ]


@pytest.mark.parametrize("units", list(Units))
def test_the_pointer_reads_an_own_weld(page, qtbot, logged, units):
    page.show_page(CURVES)
    qtbot.waitUntil(lambda: bool(page.curves.curves), timeout=30_000)
    page.presenter.set_units(units)
    page.curves.redraw()
    chart, burnt = page.curves.chart, logged.welds[-1]
    across = burnt.request.thickness_mm / (25.4 if units is Units.INCH else 1.0)
    box = chart.getPlotItem().getViewBox()
    chart.show_everything()
    chart._on_mouse_moved(box.mapViewToScene(QPointF(across, burnt.current_a)))
    assert f"{burnt.current_a:.0f} A, failed (burn-through)" in page.curves.value()
    assert "your weld: 5052" in page.curves.value()
    chart._on_mouse_moved(box.mapViewToScene(QPointF(across, logged.welds[0].current_a)))
    assert "your weld of 2025-03-01" in page.curves.value()


@pytest.mark.parametrize("is_typed", [False, True], ids=["button", "Ctrl+L"])
def test_a_column_is_logged_in_the_form_of_the_set_up_page(window, is_typed):
    window.pages.show(COMPARE)
    titles = window.comparing.shown.titles
    window.compare_view.table.choose_column(titles.index("Tee"))
    if is_typed:
        keys = QKeySequence("Ctrl+L")
        next(each for each in window.findChildren(QShortcut) if each.key() == keys).activated.emit()
    else:
        window.compare_view.why.log_button.click()
    dialog = window.log.entering.dialog
    assert dialog is not None
    assert dialog.form.texts["joint"] == "tee"
    dialog.finish()


def test_a_refused_column_cannot_be_logged(page):
    page.presenter.keep_columns(True)
    page.presenter.choose_kind("metal")
    page.presenter.add_value("7075")
    page.table.choose_column(len(page.presenter.shown.titles) - 1)
    assert not page.why.log_button.isEnabled()
