"""The page inside the window: turned to by button and key, made when first shown."""

from PySide6.QtCore import Qt

from welds.gui.colours import DARK, LIGHT
from welds.gui.main_window import COMPARE, SETUP
from welds.gui.page_switch import PageSwitch
from welds.gui.pages.compare.view import CURVES
from welds.gui.theme import ThemeChoice


def test_the_page_is_made_when_it_is_first_shown(window):
    assert window.comparing is None
    window.pages.buttons[COMPARE].click()
    assert window.comparing is not None
    assert window.pages.front == COMPARE


def test_it_follows_the_card_and_its_units(window):
    window.presenter.set_field("thickness", "3 mm")
    window.pages.show(COMPARE)
    assert {column.request.thickness_mm for column in window.comparing.shown.comparison.columns} == {3.0}
    window.commands.switch_units.trigger()
    assert window.comparing.units is window.presenter.units
    assert " in" in window.comparing.shown.heading


def test_a_column_opens_on_the_set_up_page(window):
    window.pages.show(COMPARE)
    titles = window.comparing.shown.titles
    window.compare_view.table.choose_column(titles.index("Tee"))
    window.compare_view.why.open_button.click()
    assert window.pages.front == SETUP
    assert window.presenter.fields["joint"] == "tee"


def test_starting_over_goes_to_the_set_up_page(window):
    window.pages.show(COMPARE)
    window.commands.start_over.trigger()
    assert window.pages.front == SETUP


def test_copy_takes_the_page_in_front(window, qapp):
    window.pages.show(COMPARE)
    window.commands.copy_text.trigger()
    assert "WHY" in qapp.clipboard().text()
    window.pages.show(SETUP)
    window.commands.copy_text.trigger()
    assert "WHY" not in qapp.clipboard().text()


def test_keys_turn_pages(qtbot, window):
    window.activateWindow()
    qtbot.keyClick(window, Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert window.pages.front == COMPARE
    assert isinstance(window.pages, PageSwitch)


def test_colours_change_while_the_curves_are_on_show(window, qtbot):
    """Restyling the window walks through the picture: taking items away meanwhile ended the program."""
    window.pages.show(COMPARE)
    window.compare_view.show_page(CURVES)
    qtbot.waitUntil(lambda: bool(window.compare_view.curves.curves), timeout=30_000)
    chart, themes = window.compare_view.curves.chart, window.commands.themes
    for choice, colours in ((ThemeChoice.DARK, DARK), (ThemeChoice.LIGHT, LIGHT)) * 2:
        themes[choice].trigger()
        qtbot.waitUntil(lambda wanted=colours.sheet: chart.backgroundBrush().color().name() == wanted)
