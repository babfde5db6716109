"""WCAG 2.1, success criterion 1.4.3: plain text needs a contrast of 4.5, 1.4.11: edges of inputs need 3.

High contrast is held to 1.4.6, which asks 7 of plain text, and to the same of edges.
"""

import pytest
from PySide6.QtGui import QPalette

from welds.gui.colours import ALL, CONTRAST_DARK, CONTRAST_LIGHT, DARK, LIGHT, Colours
from welds.gui.drawing.ink import contrast
from welds.gui.theme import Theme, ThemeChoice, palette_of

EVERY = pytest.mark.parametrize("colours", ALL, ids=["light", "dark", "contrast, light", "contrast, dark"])
HIGH = pytest.mark.parametrize("colours", [CONTRAST_LIGHT, CONTRAST_DARK], ids=["light", "dark"])


@pytest.fixture
def theme(qapp):
    made = Theme(qapp)
    yield made
    made.choose(ThemeChoice.LIGHT)
    made.set_text_step(1)


@EVERY
def test_every_text_can_be_read(colours):
    low = [(ink, paper, contrast(ink, paper)) for ink, paper in colours.text_pairs()]
    assert min(ratio for *_pair, ratio in low) >= 4.5, min(low, key=lambda each: each[2])


@EVERY
def test_edges_of_inputs_stand_out(colours):
    for paper in (colours.paper, colours.sheet):
        assert contrast(colours.edge, paper) >= 3
        assert contrast(colours.accent, paper) >= 3


@EVERY
def test_the_palette_leads_back_to_its_colours(colours):
    assert Colours.of(palette_of(colours)) is colours


@HIGH
def test_high_contrast_is_higher(colours):
    assert min(contrast(ink, paper) for ink, paper in colours.text_pairs()) >= 7
    for paper in (colours.paper, colours.sheet, colours.raised):
        assert contrast(colours.edge, paper) >= 7
        assert contrast(colours.line, paper) >= 7


def test_choosing_puts_the_colours_on_the_application(theme, qapp):
    for choice, colours in (
        (ThemeChoice.DARK, DARK),
        (ThemeChoice.CONTRAST, CONTRAST_LIGHT),
        (ThemeChoice.LIGHT, LIGHT),
    ):
        theme.choose(choice)
        assert qapp.palette().color(QPalette.ColorRole.Window).name() == colours.paper
        assert colours.sheet in qapp.styleSheet()


def test_it_says_so_once_and_only_when_something_changed(theme, qtbot):
    theme.choose(ThemeChoice.LIGHT)
    with qtbot.waitSignal(theme.changed, timeout=500):
        theme.choose(ThemeChoice.DARK)
    with qtbot.assertNotEmitted(theme.changed):
        theme.choose(ThemeChoice.DARK)


def test_text_grows_and_shrinks_within_its_steps(theme, qapp):
    theme.choose(ThemeChoice.LIGHT)
    usual = qapp.font().pixelSize()
    theme.change_text_size(1)
    assert qapp.font().pixelSize() > usual
    for _ in range(20):
        theme.change_text_size(-1)
    assert 12 <= qapp.font().pixelSize() < usual
    theme.change_text_size(0)
    assert qapp.font().pixelSize() == usual


@pytest.mark.parametrize("word", ["", "pink", "7", "-1", "1.5"])
def test_remembered_nonsense_counts_as_usual(word):
    assert Theme.choice_named(word) is ThemeChoice.SYSTEM
    assert Theme.step_named(word) == 1
