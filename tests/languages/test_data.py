"""Words of the tables and cautions for translators, and figures as a language writes them."""

import csv
import re

import pytest

from tests.languages.pseudo import left_over
from welds import language
from welds.quantities.band import Band
from welds.quantities.display import show, show_band
from welds.quantities.length import parse_length
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.reference.cells import Kind
from welds.reference.hazards import load_hazards
from welds.reference.load import load_tables
from welds.reference.paths import data_root
from welds.reference.prose import prose_of_data

CODED = {
    ("consumption", "unit"),
    ("exposure_limits", "authority"),
    ("mig_schedules", "passes_text"),
    ("repair_rules", "unit"),
    ("shielding_rules", "case"),
}
"""Columns of several words that no card or page shows, or that name an authority."""

UNSAID = ("source_id", "place", "note", "row_id")
"""Ids, places in documents, and notes about the row's origin, which only `welds tables` shows."""

_SENTENCE = re.compile(r"[a-z]{3,} [a-z]{2,}")


@pytest.fixture
def german(monkeypatch) -> None:
    """Write figures as German does, with no word translated."""
    monkeypatch.setattr(language, "_code", "de")


def test_translators_are_given_each_text_once_and_in_english(pseudo_language) -> None:
    texts = prose_of_data()
    assert len(set(texts)) == len(texts) > 500
    assert all(text.isascii() for text in texts)
    with (data_root() / "tables" / "cleaning.csv").open(encoding="utf-8") as file:
        assert {row["step"] for row in csv.DictReader(file)} <= set(texts)


def test_prose_and_cautions_are_said_in_the_language_in_use(pseudo_language) -> None:
    tables = load_tables()
    said = [language.tr(hazard.text) for hazard in load_hazards(tables)]
    for name in tables.names:
        table = tables.table(name)
        said += [table.sheet.title, table.sheet.about]
        prose = [column for column, about in table.sheet.columns.items() if about.kind is Kind.PROSE]
        said += [str(row[column]) for row in table.rows for column in prose]
    assert not [text for text in said if left_over(text)]


def test_a_column_of_sentences_is_prose(tables) -> None:
    """Fails where a new column of words for people is typed as text, and so is left in English."""
    found = {
        (name, column)
        for name in tables.names
        for column, about in tables.table(name).sheet.columns.items()
        if about.kind is Kind.TEXT and column not in UNSAID
        for row in tables.table(name).rows
        if _SENTENCE.search(str(row[column]))
    }
    assert found <= CODED


def test_what_is_prose_is_what_english_says(tables) -> None:
    texts = set(prose_of_data())
    for hazard in tables.derived(load_hazards):
        assert hazard.text in texts
    assert {row["why"] for row in tables.table("preheat").rows} <= texts


def test_grades_are_said(pseudo_language) -> None:
    assert not left_over(" ".join(f"{basis.word} {basis.meaning}" for basis in Basis))


def test_german_figures_have_a_comma(german) -> None:
    assert str(show(2.03, "mm", "thickness", Units.METRIC)) == "2,03 mm"
    assert show(2.03, "mm", "thickness", Units.METRIC).second_text == "0,080 in"
    assert str(show(1.6, "mm", "tungsten_diameter", Units.METRIC)) == "1,6 mm"
    band = show_band(Band(5.0, 7.5, 10.0, "L/min"), "gas_flow", Units.METRIC)
    assert (band.start, band.range_text) == ("7,5", "5 to 10")


def test_english_figures_have_a_point() -> None:
    assert str(show(2.03, "mm", "thickness", Units.METRIC)) == "2.03 mm"
    assert show(2.03, "mm", "thickness", Units.METRIC).second_text == "0.080 in"


def test_a_figure_shown_in_german_is_read_back(german) -> None:
    """Three digits behind the comma are a part, not thousands: the program itself shows inches so."""
    for mm in (2.03, 28.575, 0.4):
        for units in Units:
            shown = show(mm, "mm", "thickness", units)
            assert parse_length(str(shown), field="thickness").mm == pytest.approx(mm, rel=0.02)
    assert parse_length("1,125 in", field="thickness").mm == pytest.approx(28.575)
    assert parse_length("1.125 in", field="thickness").mm == pytest.approx(28.575)
