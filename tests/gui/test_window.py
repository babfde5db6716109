"""The whole window over sample cards: what a person does, and what stands on the screen afterwards."""

import re
import sys
from itertools import combinations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible, QGuiApplication
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QScrollArea,
    QSlider,
    QWidget,
)

from tests.gui.sample_cards import CADMIUM, sample_engine
from welds.advice.card import NOTICE
from welds.errors import ReferenceDataError
from welds.gui.crash import CrashReporter
from welds.gui.memory import FILE_NAME
from welds.gui.theme import ThemeChoice

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)

SMALLEST_INPUT_PX = 34


def words_on(widget: QWidget) -> list[str]:
    return [
        label.text() for label in widget.findChildren(QLabel) if label.isVisibleTo(widget) and label.text()
    ]


def type_over(qtbot, line: QLineEdit, text: str) -> None:
    line.selectAll()
    qtbot.keyClicks(line, text)


def test_typing_a_thickness_changes_the_card(window, qtbot):
    card = window.view.card
    before = card.main.start.text()
    type_over(qtbot, window.view.request.thickness.line, "1/8 in")
    assert window.presenter.card.request.thickness_mm == pytest.approx(3.175)
    assert card.main.start.text() != before
    assert "3.17" in window.view.request.thickness.note() or "3.18" in window.view.request.thickness.note()
    assert "0.125" in window.view.request.thickness.note() or "1/8" in window.view.request.thickness.note()


def test_typing_5052_finds_it(window, qtbot):
    type_over(qtbot, window.view.request.metal.line, "304")
    assert window.presenter.card.request.metal == "304"
    type_over(qtbot, window.view.request.metal.line, "5052")
    assert window.presenter.card.request.metal == "5052"
    window.view.request.metal.line.completer().popup().hide()


def test_a_bare_2_gets_buttons_and_one_click_answers(window, qtbot):
    request = window.view.request
    type_over(qtbot, request.thickness.line, "2")
    buttons = request.thickness.reading_buttons()
    assert {"2 mm", "2 in"} <= {button.text() for button in buttons}
    assert not window.view.card.body.isEnabled()
    qtbot.mouseClick(next(each for each in buttons if each.text() == "2 mm"), Qt.MouseButton.LeftButton)
    assert request.thickness.text() == "2 mm"
    assert request.thickness.reading_buttons() == []
    assert window.view.card.body.isEnabled()


def test_a_refusal_greys_the_card_says_why_and_leads_on(window, qtbot):
    card = window.view.card
    shown = card.main.start.text()
    type_over(qtbot, window.view.request.thickness.line, "60 mm")
    assert "12.7 mm" in card.refusal.reason()
    assert card.main.start.text() == shown
    assert not card.body.isEnabled()
    assert card.state.text() == "OLD CARD"
    assert not window.commands.print_card.isEnabled()
    qtbot.mouseClick(card.refusal.button, Qt.MouseButton.LeftButton)
    assert window.presenter.card.request.thickness_mm == 12.7
    assert window.view.request.thickness.text() == "12.7 mm"
    assert card.body.isEnabled()
    assert not card.refusal.isVisible()
    assert window.commands.print_card.isEnabled()


def test_a_stop_caution_must_be_ticked_before_the_card_is_ready(window, qtbot):
    card = window.view.card
    assert card.state.text() == "READY"
    window.presenter.set_field("coating", ("cadmium",))
    assert card.state.text() == "NOT READY: 1 to tick"
    assert CADMIUM.text in words_on(card.stops)
    qtbot.mouseClick(card.stops.boxes[CADMIUM.rule], Qt.MouseButton.LeftButton)
    assert card.state.text() == "READY"
    assert card.stops.isVisible()
    window.presenter.set_field("joint", "tee")
    assert card.state.text() == "NOT READY: 1 to tick"
    assert not card.stops.boxes[CADMIUM.rule].isChecked()


def test_the_state_leads_to_the_first_open_tick(window, qtbot):
    window.presenter.set_field("coating", ("cadmium",))
    window.activateWindow()
    qtbot.mouseClick(window.view.card.state, Qt.MouseButton.LeftButton)
    assert window.focusWidget() is window.view.card.stops.boxes[CADMIUM.rule]


def test_stops_stand_above_warnings_above_figures(window, qtbot):
    window.presenter.set_field("coating", ("cadmium", "galvanised"))
    card = window.view.card
    qtbot.waitUntil(lambda: card.stops.height() > 50)
    tops = [
        part.mapTo(card, part.rect().topLeft()).y()
        for part in (card.stops, card.warnings, card.main, card.big)
    ]
    assert tops == sorted(tops)
    assert len(set(tops)) == 4


def test_the_notice_is_on_show_with_and_without_a_card(window, qtbot):
    assert NOTICE in words_on(window.view.card)
    type_over(qtbot, window.view.request.thickness.line, "nonsense")
    assert NOTICE in words_on(window.view.card)


def test_units_change_the_words_only(window):
    card = window.presenter.card
    window.commands.switch_units.trigger()
    assert window.presenter.card == card
    assert "0.079 in" in words_on(window.view.card)[1]
    assert "inch" in window.commands.switch_units.text()


def test_grades_without_a_document_are_said_in_words(window):
    words = words_on(window.view.card)
    assert "shop practice" in words
    assert "from memory" in words
    assert any("figures have no published source behind them" in text for text in words)


def test_the_main_figure_is_at_least_40_px_high(window):
    start = window.view.card.main.start
    assert start.fontMetrics().capHeight() >= 40
    assert start.text() == "90"


def test_last_request_and_looks_are_remembered(make_window):
    first = make_window()
    first.presenter.set_field("metal", "304")
    first.presenter.set_field("coating", ("oil",))
    first.commands.switch_units.trigger()
    first.commands.themes[ThemeChoice.DARK].trigger()
    first.commands.larger.trigger()
    first.close()
    second = make_window()
    assert second.presenter.fields["metal"] == "304"
    assert second.presenter.fields["coating"] == ("oil",)
    assert second.view.request.coating.values() == ("oil",)
    assert second.presenter.units.value == "inch"
    assert second.commands.themes[ThemeChoice.DARK].isChecked()
    second.commands.themes[ThemeChoice.LIGHT].trigger()
    second.commands.usual.trigger()


def test_ticks_are_not_remembered(make_window):
    first = make_window()
    first.presenter.set_field("coating", ("cadmium",))
    first.presenter.tick(CADMIUM.rule, on=True)
    first.close()
    assert make_window().view.card.state.text() == "NOT READY: 1 to tick"


def test_a_broken_memory_starts_fresh_and_says_so(make_window, tmp_path):
    (tmp_path / FILE_NAME).write_text("{broken")
    window = make_window()
    assert "starting fresh" in window.statusBar().currentMessage()
    assert window.presenter.card.request.metal == "5052"
    assert (tmp_path / f"{FILE_NAME}.broken-1").read_text() == "{broken"


def test_remembered_nonsense_is_refused_in_words_and_can_be_corrected(make_window, tmp_path):
    (tmp_path / FILE_NAME).write_text('{"schema": "welds.last-use/1", "fields": {"metal": "gone"}}')
    window = make_window()
    assert window.view.card.state.text() == "NO CARD"
    window.commands.start_over.trigger()
    assert window.view.card.state.text() == "READY"


def test_tables_that_cannot_be_used_are_named(make_window, qtbot):
    def load():
        raise ReferenceDataError("data/tables/metals.csv", "no such column", 3)

    window = make_window(load)
    qtbot.waitUntil(lambda: "metals.csv, row 3" in window.centralWidget().text())
    assert window.view is None


def test_a_mistake_of_the_program_is_shown_and_nothing_is_lost(window, tmp_path):
    reporter = CrashReporter(window.show_crash, window.save)
    window.presenter.set_field("metal", "304")
    reporter.install()
    try:
        sys.excepthook(*_raised())
    finally:
        reporter.remove()
    title, introduction, text = window._prompts.shown[0]
    assert "mistake in the program" in introduction
    assert "ZeroDivisionError" in text
    assert "_raised" in text
    assert "304" in (tmp_path / FILE_NAME).read_text()
    assert window.isVisible()
    assert title


def _raised():
    try:
        1 / 0  # noqa: B018
    except ZeroDivisionError as error:
        return type(error), error, error.__traceback__


def test_copy_pdf_and_print_take_the_card_out(window, tmp_path):
    window.commands.copy_text.trigger()
    assert "5052" in QGuiApplication.clipboard().text()
    assert NOTICE[:30] in QGuiApplication.clipboard().text()
    window._prompts.save_path = tmp_path / "card"
    window.commands.save_pdf.trigger()
    assert window._prompts.suggested == ["tig-5052-2.00mm-butt.pdf"]
    assert (tmp_path / "card.pdf").read_bytes().startswith(b"%PDF")
    window._prompts.save_path = tmp_path / "no" / "such" / "folder.pdf"
    window.commands.save_pdf.trigger()
    assert "folder.pdf" in window._prompts.told[0][1]
    window.commands.print_card.trigger()  # the dialog is answered with "no"


def test_printing_puts_ink_on_the_page(window, tmp_path):
    from PySide6.QtPrintSupport import QPrinter

    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    window._prompts.printer = printer
    window.commands.print_card.trigger()
    assert (tmp_path / "printed.pdf").stat().st_size > 5000


def test_taking_out_a_card_that_is_not_ready_says_so(window):
    window.presenter.set_field("coating", ("cadmium",))
    window.commands.copy_text.trigger()
    assert "not ticked" in window.statusBar().currentMessage()
    assert "[ ] STOP" in QGuiApplication.clipboard().text()


def test_help_lists_every_shortcut(window):
    window.commands.show_shortcuts.trigger()
    window.commands.show_about.trigger()
    shortcuts, about = (text for _title, _introduction, text in window._prompts.shown)
    for action in window.actions() + list(vars(window.commands).values()):
        if hasattr(action, "shortcut") and not action.shortcut().isEmpty():
            assert action.shortcut().toString() in shortcuts
    assert "Ctrl+U" in shortcuts
    assert "Apache-2.0" in about
    assert "rows from" in about
    assert NOTICE in about


def test_help_tells_the_everyday_uses_and_names_keys_that_exist(window):
    window.commands.show_guide.trigger()
    window.commands.show_method.trigger()
    guide, method = (text for _title, _introduction, text in window._prompts.shown)
    for use in ("ALUMINIUM CORNERS", "LOG A SUCCESSFUL SETTING", "COMPARE JOINT TYPES"):
        assert use in guide
    known = {keys for keys, _words in window.commands.shortcuts} | {"Ctrl+1", "Ctrl+2"}
    named = set(re.findall(r"\b(?:Ctrl\+\w|F\d)\b", guide))
    assert named
    assert named <= known
    assert "no welding procedure" in method


def focusable(window) -> list[QWidget]:
    kinds = (QAbstractButton, QComboBox, QLineEdit, QSlider)
    return [
        widget
        for widget in window.findChildren(QWidget)
        if isinstance(widget, kinds)
        and widget.isVisibleTo(window)
        and widget.isEnabled()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and not (isinstance(widget, QLineEdit) and isinstance(widget.parent(), QComboBox))
    ]


@pytest.fixture
def full_window(window):
    """Return the window with everything unfolded and stops on show."""
    window.view.request.rare.open()
    window.presenter.set_field("process", "mig")
    window.view.request.show_fields(window.presenter.fields)
    window.view.request.is_different.setChecked(True)
    window.presenter.set_field("coating", ("cadmium",))
    return window


def test_everything_that_takes_the_keyboard_has_a_name(full_window):
    nameless = [
        widget
        for widget in focusable(full_window)
        if not widget.accessibleName()
        and not (isinstance(widget, QAbstractButton) and widget.text())
        and not QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)
    ]
    assert not nameless
    boxes = [
        widget for widget in focusable(full_window) if isinstance(widget, QComboBox | QLineEdit | QSlider)
    ]
    assert len(boxes) >= 10
    assert all(widget.accessibleName() for widget in boxes)


def test_tab_reaches_everything_in_reading_order(full_window, qtbot):
    window = full_window
    window.activateWindow()
    start = window.view.request.process.focusProxy()
    start.setFocus(Qt.FocusReason.TabFocusReason)
    walked = [window.focusWidget()]
    for _ in range(300):
        qtbot.keyClick(window.focusWidget(), Qt.Key.Key_Tab)
        if window.focusWidget() is start:
            break
        walked.append(window.focusWidget())
    assert window.focusWidget() is start, "the walk does not come back"
    grouped = {
        button for button in focusable(window) if isinstance(button, QAbstractButton) and button.group()
    }
    missed = [
        widget.accessibleName() or widget.text()
        for widget in focusable(window)
        if widget not in walked and widget not in grouped
    ]
    assert not missed
    request = window.view.request
    order = [
        request.metal.line, request.thickness.line, request.slider, request.is_different,
        request.other_metal.line, request.other_thickness.line, request.part, request.solvent,
        request.position,
        request.rare.button, request.goal, request.gap.line, request.length.line, request.gas, request.wire,
        request.transfer, window.view.card.state, window.view.card.stops.boxes[CADMIUM.rule],
        window.view.card.warnings.button, window.view.card.main.why, window.view.card.big.tiles[0].why,
    ]  # fmt: skip
    places = [walked.index(widget) for widget in order]
    assert places == sorted(places)


def test_the_page_follows_the_keyboard(window, qtbot):
    """A focused input outside the picture is scrolled into it."""
    area = next(each for each in window.findChildren(QScrollArea) if each.isAncestorOf(window.view.request))
    position = window.view.request.position
    window.resize(1366, 500)
    QApplication.processEvents()
    assert not area.viewport().rect().contains(position.mapTo(area.viewport(), position.rect().center()))
    window.activateWindow()
    position.setFocus(Qt.FocusReason.ShortcutFocusReason)
    qtbot.waitUntil(
        lambda: area.viewport().rect().contains(position.mapTo(area.viewport(), position.rect().center()))
    )


def test_inputs_are_made_for_gloves(full_window, qtbot):
    QApplication.processEvents()
    low = [
        (widget.accessibleName(), widget.height())
        for widget in focusable(full_window)
        if widget.height() < SMALLEST_INPUT_PX
    ]
    assert not low


@pytest.mark.parametrize(("width", "height"), [(1366, 768), (1920, 1080)])
def test_nothing_scrolls_sideways_or_is_cut(full_window, qtbot, width, height):
    full_window.resize(width, height)
    for _ in range(3):
        QApplication.processEvents()
    for area in full_window.findChildren(QScrollArea):
        assert area.widget().width() <= area.viewport().width()
        assert area.widget().minimumSizeHint().width() <= area.viewport().width()
    cut = [
        (label.text(), label.width(), label.sizeHint().width())
        for label in full_window.findChildren(QLabel)
        if label.isVisibleTo(full_window)
        and not label.wordWrap()
        and label.sizeHint().width() > label.width() + 1
    ]
    assert not cut
    short = [
        (label.text(), label.height(), label.heightForWidth(label.width()))
        for label in full_window.findChildren(QLabel)
        if label.isVisibleTo(full_window)
        and label.wordWrap()
        and label.heightForWidth(label.width()) > label.height() + 1
    ]
    assert not short


def test_larger_text_still_fits(full_window):
    for _ in range(3):
        full_window.commands.larger.trigger()
    for _ in range(3):
        QApplication.processEvents()
    for area in full_window.findChildren(QScrollArea):
        assert area.widget().width() <= area.viewport().width()
    full_window.commands.usual.trigger()


@pytest.mark.parametrize("steps", range(4))
def test_every_page_button_is_whole_at_every_size_of_text(window, steps):
    for _ in range(steps):
        window.commands.larger.trigger()
    for _ in range(3):
        QApplication.processEvents()
    seen = window.commands.bar.rect()
    for button in window.pages.buttons:
        assert button.width() >= button.sizeHint().width()
        assert button.height() >= SMALLEST_INPUT_PX
        assert seen.contains(button.rect().translated(button.mapTo(window.commands.bar, QPoint())))
    places = [
        each.rect().translated(each.mapTo(window.commands.bar, QPoint()))
        for each in window.commands.bar.findChildren(QAbstractButton)
        if each.isVisible()
    ]
    assert not any(one.intersects(other) for one, other in combinations(places, 2))
    window.commands.usual.trigger()


@pytest.mark.parametrize("choice", [ThemeChoice.DARK, ThemeChoice.LIGHT])
def test_the_page_is_painted_in_the_chosen_colours(window, choice):
    window.commands.themes[choice].trigger()
    QApplication.processEvents()
    picture = window.view.card.main.grab().toImage()
    corner = picture.pixelColor(picture.width() // 2, 6).lightnessF()
    assert corner < 0.3 if choice is ThemeChoice.DARK else corner > 0.9
    window.commands.themes[ThemeChoice.LIGHT].trigger()


def test_unticking_the_other_piece_takes_it_out_of_the_request(window, qtbot):
    request = window.view.request
    request.is_different.setChecked(True)
    type_over(qtbot, request.other_thickness.line, "5 mm")
    assert window.presenter.card.request.other_thickness_mm == 5
    request.is_different.setChecked(False)
    assert window.presenter.card.request.other_thickness_mm is None


def test_closing_frees_the_engine(make_window, qtbot):
    window = make_window(sample_engine)
    qtbot.waitUntil(lambda: window.view is not None, timeout=10_000)
    assert window.close()


def test_the_page_opens_at_its_top_with_the_metal_in_hand(window, qtbot):
    qtbot.waitUntil(lambda: window.view.request.metal.line.hasFocus() or not window.isActiveWindow())
    assert window.view._request_area.verticalScrollBar().value() == 0


def test_print_is_grey_where_the_page_has_nothing_and_the_fault_finder_is_not(window):
    bench, job = 2, 3
    for place in (bench, job):
        window.pages.show(place)
        assert not window.commands.print_card.isEnabled()
        assert window.commands.find_fault.isEnabled()
    window.pages.show(0)
    assert window.commands.print_card.isEnabled()


def test_the_demo_job_opens_from_the_help_menu(make_window, qtbot):
    window = make_window()
    window.commands.open_demo.trigger()
    page = window.pages.stack.currentWidget()
    qtbot.waitUntil(lambda: page.tabs.count() > 5, timeout=20_000)
    assert "Console box" in page.heading.text()
