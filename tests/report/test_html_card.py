"""The card as a page to print."""

import re
from dataclasses import replace
from html.parser import HTMLParser

import pytest

from welds.quantities.units import Units
from welds.report import layout
from welds.report.html_card import html_card

VOID = {"meta", "br"}


class Reader(HTMLParser):
    """Collects the text, and sees that every tag is closed in order."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.tags: list[str] = []
        self.text: list[str] = []

    def handle_starttag(self, tag, attrs) -> None:
        self.tags.append(tag)
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data) -> None:
        if not {"style", "title"} & set(self.open):
            self.text.append(data)


def read(page: str) -> Reader:
    reader = Reader()
    reader.feed(page)
    reader.close()
    assert reader.open == []
    return reader


def words(page: str) -> str:
    return " ".join(" ".join(read(page).text).split())


def test_page_is_well_formed_and_black_on_white(tig_card, mig_card, sources) -> None:
    for card in (tig_card, mig_card):
        page = html_card(card, Units.METRIC, sources)
        read(page)
        assert set(re.findall(r"#[0-9a-fA-F]{6}", page)) == {"#000000", "#ffffff"}
        assert "grid" not in page
        assert "flex" not in page


def test_stop_cautions_come_first_with_a_box_to_tick(tig_card, sources) -> None:
    page = html_card(tig_card, Units.METRIC, sources)
    text = words(page)
    assert text.index("No chlorinated solvent") < text.index("Current")
    assert page.index("<table border=") < page.index("No chlorinated solvent")
    assert 'class="stop"' in page


@pytest.mark.parametrize("units", list(Units))
def test_every_setting_stands_on_the_page_once_with_range_and_grade(
    tig_card, mig_card, sources, units
) -> None:
    for card in (tig_card, mig_card):
        text = words(html_card(card, units, sources))
        for group in layout.groups(card, units):
            for line in group.lines:
                assert line.label in text
                assert line.start_text in text
                assert line.range_text in text
        assert text.count("printed") > 3


def test_headlines_are_not_repeated_small(tig_card, sources) -> None:
    assert words(html_card(tig_card, Units.METRIC, sources)).count("AC frequency") == 1


def test_marks_in_values_are_escaped(tig_card, sources) -> None:
    hostile = replace(tig_card, machine='5 l/min until < 50 ppm <script>alert("x")</script>')
    page = html_card(hostile, Units.METRIC, sources)
    assert "<script" not in page
    assert "&lt; 50 ppm" in page
    text = words(page)
    assert "Clear <everything> that burns & keep watch." in text
    assert "Paper on corners <draft>" in text
    assert 'until < 50 ppm <script>alert("x")</script>' in text


def test_foot_names_sources_with_grades_and_the_notice(tig_card, sources) -> None:
    text = words(html_card(tig_card, Units.METRIC, sources))
    assert tig_card.notice in text
    assert "DOC-3: Rule on hot work & fumes (printed, quoted)" in text
    assert text.index(tig_card.notice) < text.index("DOC-3: Rule")


def test_unknown_source_is_said(tig_card) -> None:
    assert "DOC-1: no citation" in words(html_card(tig_card, Units.METRIC, {}))
