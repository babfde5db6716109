"""Figures for across the bench: they follow the card, never hide a stop, and leave with one key."""

import pytest
from PySide6.QtCore import Qt

from welds.gui.pages.setup.large_figures import LargeFigures


@pytest.fixture
def large(window, qtbot):
    window.commands.large_figures.trigger()
    shown = window.view.findChild(LargeFigures)
    qtbot.waitExposed(shown)
    return shown


def test_it_says_the_main_figures_and_follows_the_card(window, large):
    before = large.accessibleName()
    assert "Current" in before
    window.presenter.set_field("thickness", "4 mm")
    after = large.accessibleName()
    assert after != before
    assert window.view._face.main.start in after


def test_an_open_stop_stands_on_top_until_it_is_ticked(window, large):
    window.presenter.set_field("coating", ("cadmium",))
    stop = window.presenter.card.stops[0]
    assert stop.text in large.accessibleName()
    assert large._warning().startswith("STOP")
    window.presenter.tick(stop.rule, True)
    assert large._warning() == ""


def test_a_request_without_an_answer_marks_the_card_as_old(window, large):
    window.presenter.set_field("thickness", "999 mm")
    assert large._warning().startswith("OLD CARD")


@pytest.mark.parametrize("key", [Qt.Key.Key_Escape, Qt.Key.Key_Return, Qt.Key.Key_Space])
def test_one_key_leaves(window, large, qtbot, key):
    qtbot.keyClick(large, key)
    assert not large.isVisible()
    assert window.view._large is None
    window.presenter.set_field("thickness", "3 mm")


@pytest.mark.parametrize("size", [(800, 480), (1366, 768), (1920, 1080)])
def test_it_paints_at_any_size(window, large, size):
    large.showNormal()
    large.resize(*size)
    image = large.grab().toImage()
    colours = {image.pixelColor(x, y).name() for x in range(0, size[0], 7) for y in range(0, size[1], 7)}
    assert len(colours) > 3
