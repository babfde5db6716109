"""The page as a person uses it: mouse, keys, files."""

import csv

import numpy as np
import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QAccessible, QImage
from PySide6.QtWidgets import QWidget

from tests.gui.compare.conftest import CARD
from tests.gui.fakes import FakePrompts
from welds.gui.drawing.export import png, svg
from welds.gui.pages.compare.outputs import CompareOutput
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.gui.pages.compare.view import CURVES, WAVES, CompareView
from welds.gui.theme import Theme
from welds.quantities.units import Units
from welds.report.comparison_rows import SIGNS, Mark


@pytest.fixture
def page(qtbot, qapp, real_engine):
    """Return the page in a window of its own, with what it said and asked."""
    Theme(qapp).apply()
    window = QWidget()
    window.said = []
    presenter = ComparePresenter(real_engine, window)
    prompts = FakePrompts(window)
    output = CompareOutput(presenter, prompts, window.said.append, window)
    made = CompareView(presenter, output, prompts, window)
    made.presenter, made.prompts, made.said = presenter, prompts, window.said
    made.resize(1366, 700)
    window.resize(1366, 700)
    presenter.take_card(CARD, Units.METRIC)
    presenter.tick(("outside-corner", "tee"))
    window.show()
    qtbot.waitExposed(window)
    yield made
    made.curves.wait()
    window.close()
    window.deleteLater()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def names(page):
    return [row.name for row in page.table.comparison.rows]


def test_only_what_differs_is_on_show_until_asked(page):
    assert "current" in names(page)
    assert "polarity" not in names(page)
    folded = len(names(page))
    page.equal_rows.click()
    assert "polarity" in names(page)
    assert len(names(page)) == folded + len(page.table.comparison.equal_rows)


def test_a_cell_in_hand_tells_its_reasons(page):
    page.table.choose(names(page).index("current"), 0)
    assert "T-joint: one more plate takes the heat" in page.why.reasons.text()


def test_a_cell_says_in_words_what_its_sign_shows(page):
    index = page.table.comparison.index(names(page).index("current"), 0)
    words = page.table.comparison.data(index, Qt.ItemDataRole.AccessibleTextRole)
    assert words.startswith("Current, Tee: 95 A")
    assert "more than the base: +7 A, +8 %" in words
    assert len({SIGNS[mark] for mark in (Mark.MORE, Mark.LESS, Mark.OTHER)}) == 3


def test_keys_move_a_column_and_the_base_stays(page, qtbot):
    assert page.presenter.shown.titles == ("Tee", "Outside corner")
    page.table.choose(0, 0)
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    qtbot.keyClick(page.table, Qt.Key.Key_Right, both)
    assert page.presenter.shown.titles == ("Outside corner", "Tee")
    assert page.presenter.shown.pinned == 0
    assert page.table.current_cell()[1] == 1


def test_a_dragged_head_reorders(page, qtbot):
    page.table.heads.moveSection(0, 1)
    qtbot.waitUntil(lambda: page.presenter.shown.titles == ("Outside corner", "Tee"))
    assert [page.table.heads.logicalIndex(place) for place in range(2)] == [0, 1]


def test_another_base(page):
    page.table.choose(names(page).index("current"), 0)
    page.why.pin_button.click()
    cell = page.table.comparison.rows[names(page).index("current")].cells[1]
    assert cell.mark is Mark.LESS


def test_a_column_goes_and_opens(page, qtbot):
    with qtbot.waitSignal(page.card_opened) as opened:
        page.table.choose_column(0)
        page.why.open_button.click()
    assert opened.args == [{**CARD, "joint": "tee"}]
    page.why.remove_button.click()
    assert page.presenter.shown.comparison.columns[0].request.joint == "outside-corner"
    assert not page.why.remove_button.isEnabled()


def test_the_slider_moves_all_columns(page):
    page.vary.slider.dragged.emit(3.0)
    assert {column.request.thickness_mm for column in page.presenter.shown.comparison.columns} == {3.0}


def test_a_refused_column_shows_its_reason_over_its_whole_height(page):
    page.presenter.keep_columns(True)
    page.presenter.choose_kind("metal")
    page.presenter.add_value("7075")
    place = len(page.presenter.shown.titles) - 1
    index = page.table.comparison.index(0, place)
    assert page.presenter.shown.comparison.columns[place].problem == page.table.comparison.data(index)
    assert page.table.rowSpan(0, place) == len(names(page))


def test_a_stop_stands_above_the_table(page):
    page.presenter.take_card({**CARD, "coating": ("cadmium",)}, Units.METRIC)
    assert page.cautions.isVisible()
    assert page.cautions.property("panel") == "stop"
    assert page.cautions.y() < page.table.mapTo(page, page.table.rect().topLeft()).y()


def test_curves_are_worked_out_and_read(page, qtbot):
    page.show_page(CURVES)
    qtbot.waitUntil(lambda: bool(page.curves.curves))
    chart = page.curves.chart
    chart.setFocus()
    qtbot.keyClick(chart, Qt.Key.Key_Right)
    assert "Tee" in page.curves.value()
    assert " A (" in page.curves.value()
    left, right = chart.getPlotItem().getViewBox().viewRange()[0]
    qtbot.keyClick(chart, Qt.Key.Key_Plus)
    nearer = chart.getPlotItem().getViewBox().viewRange()[0]
    assert nearer[1] - nearer[0] < right - left


@pytest.mark.parametrize("ending", ["png", "svg", "csv"])
def test_the_curves_are_saved(page, qtbot, tmp_path, ending):
    page.show_page(CURVES)
    qtbot.waitUntil(lambda: bool(page.curves.curves))
    page.prompts.save_path = tmp_path / f"curves.{ending}"
    page.save.click()
    data = page.prompts.save_path.read_bytes()
    assert len(data) > 1000
    if ending == "csv":
        lines = list(csv.DictReader(data.decode("utf-8").splitlines()))
        assert {line["kind"] for line in lines} == {"advised", "schedule"}
    else:
        assert data.startswith({"png": b"\x89PNG", "svg": b"<?xml"}[ending])
    assert page.said[-1].startswith("Saved as")


def test_the_saved_picture_is_the_one_on_show(page, qtbot, tmp_path):
    """At 96 dots an inch a saved pixel is one on the screen; smoothing may differ, places may not."""
    page.show_page(CURVES)
    qtbot.waitUntil(lambda: bool(page.curves.curves))
    chart = page.curves.chart
    qtbot.wait(30)
    seen = chart.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    saved = QImage.fromData(png(chart.width(), chart.height(), chart.paint_picture, dpi=96))
    saved = saved.convertToFormat(QImage.Format.Format_Grayscale8)
    assert saved.size() == seen.size()
    one, two = (
        np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine()).astype(int)
        for image in (seen, saved)
    )
    dark = (one < 128).mean()
    assert dark > 0.005
    assert (abs(one - two) > 90).mean() < 0.2 * dark


def test_the_svg_holds_words_and_the_same_number_of_lines(page, qtbot):
    page.show_page(CURVES)
    qtbot.waitUntil(lambda: bool(page.curves.curves))
    chart = page.curves.chart
    text = svg(chart.width(), chart.height(), chart.paint_picture).decode("utf-8")
    for words in ("Thickness [mm]", "Current [A]", "Tee", "schedule row, printed"):
        assert words in text
    assert "nan" not in text
    assert "<image" not in text


def test_the_waves_are_saved(page, tmp_path):
    page.show_page(WAVES)
    page.prompts.save_path = tmp_path / "waves.svg"
    page.save.click()
    assert b"125 Hz" in page.prompts.save_path.read_bytes()
    assert "Tee 125 Hz" in page.waves.accessibleDescription()


@pytest.mark.parametrize("ending", ["pdf", "html", "md", "csv"])
def test_the_comparison_is_saved_as_its_name_says(page, tmp_path, ending):
    page.prompts.save_path = tmp_path / f"side.{ending}"
    page.save.click()
    assert page.prompts.save_path.stat().st_size > 1000


def test_a_file_that_cannot_be_written_is_told(page, tmp_path):
    page.prompts.save_path = tmp_path / "nowhere" / "side.html"
    page.save.click()
    assert "nowhere" in page.prompts.told[-1][1]
    page.prompts.save_path = tmp_path / "side.docx"
    page.save.click()
    assert ".pdf" in page.prompts.told[-1][1]


def test_a_wall_chart_of_the_base(page, tmp_path):
    page.prompts.save_path = tmp_path / "wall.pdf"
    page.wall_chart.click()
    assert page.prompts.save_path.read_bytes().startswith(b"%PDF")


def test_every_input_has_a_name(page):
    for widget in page.findChildren(QWidget):
        if widget.focusPolicy() is Qt.FocusPolicy.NoFocus or not widget.isVisible():
            continue
        if widget.focusProxy() is not None or type(widget).__name__ in ("QScrollArea", "QWidget"):
            continue
        told = QAccessible.queryAccessibleInterface(widget)
        assert widget.accessibleName() or (told and told.text(QAccessible.Text.Name)), widget
