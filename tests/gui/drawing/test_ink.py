"""Palettes: readable words, and print that needs no colour."""

import pytest

from welds.gui.drawing.ink import DARK, LIGHT, PRINT, contrast


def test_contrast_of_known_pairs():
    # WCAG 2.1: black on white is 21, equal colours are 1; #767676 is the known lightest grey that passes 4.5.
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#123456", "#123456") == 1.0
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.01)


@pytest.mark.parametrize("ink", [LIGHT, DARK, PRINT], ids=lambda ink: ink.name)
def test_words_can_be_read(ink):
    for colour in (ink.text, ink.quiet):
        assert contrast(colour, ink.ground) >= 4.5


@pytest.mark.parametrize("ink", [LIGHT, DARK, PRINT], ids=lambda ink: ink.name)
def test_outlines_stand_out_from_what_they_enclose(ink):
    for colour in (ink.ground, ink.first, ink.other, ink.copper, ink.ceramic):
        assert contrast(ink.line, colour) >= 3.0
    assert contrast(ink.weld, ink.ground) >= 3.0


def test_print_is_black_and_white():
    colours = [
        value for value in (getattr(PRINT, name) for name in PRINT.__slots__) if str(value).startswith("#")
    ]
    assert set(colours) == {"#000000", "#ffffff"}
