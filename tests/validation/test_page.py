"""VALIDATION.md says what the program does now, and leaves no document out."""

import pytest

from tests.validation.documents import documents, published
from tests.validation.page import PAGE, page

HOW = "out of date: python -m tests.validation.page writes it"


@pytest.mark.slow
def test_the_page_is_up_to_date(tables):
    assert PAGE.read_text(encoding="utf-8") == page(tables), HOW


def test_every_document_is_on_the_page(tables):
    text = PAGE.read_text(encoding="utf-8")
    assert [source for source in tables.sources if source not in text] == [], HOW


def test_every_published_test_names_a_document_or_a_tool(tables):
    """So that the page can say what a document is compared with."""
    by_tool = {"test_element_properties.py", "test_heat_finite_elements.py"}
    by_table = {"test_heat_rows.py"}
    unnamed = {each.name for each in published(tables) if not each.documents}
    assert unnamed <= by_tool | by_table
    assert all(each.checks for each in published(tables))


def test_a_document_without_scores_has_none(tables):
    found = {each.id: each for each in documents(tables, (), ())}
    assert list(found) == list(tables.sources)
    assert not any("median" in words for each in found.values() for words in each.compared)
    assert "test_tungsten_ranges.py" in found["MATHERS_2002_T6_4"].compared
    assert any(words.startswith("tig_schedules (14 printed)") for words in found["NIMI_WELDER_TT_191"].rests)
