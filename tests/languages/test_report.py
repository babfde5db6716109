"""What the reports say in the made-up language: decimal commas for people, points in files for programs."""

import re

import pytest

from tests.languages.pseudo import left_over
from welds.advice.request import Process
from welds.logbook.fields import read_entry
from welds.quantities.units import Units
from welds.reference.metals import find_metal
from welds.report.cut_length import both_lengths
from welds.report.html_page import page
from welds.report.procedure_sheet import procedure_sheet
from welds.report.wording import GROUPS, LABELS, label, label_inside, value_words

WELD = {
    **{"process": "mig", "metal": "5052", "thickness_mm": 1.5, "joint": "lap", "outcome": "worked-well"},
    "settings": {"current": 95.5, "wire_feed": 5.1, "transfer": "short-circuit", "polarity": "DCEP"},
}


def test_every_setting_has_a_label_in_every_place(pseudo_language):
    for _title, names in GROUPS:
        for name in names:
            assert left_over(label(name)) == left_over(label_inside(name)) == []
    assert set(LABELS) == {name for _, names in GROUPS for name in names}


@pytest.mark.parametrize(
    ("name", "value"),
    [("polarity", "DCEN"), ("transfer", "short-circuit"), ("backing", "copper bar"), ("gas_lens", True)],
)
def test_values_are_said(pseudo_language, name, value):
    assert left_over(value_words(name, value, Process.MIG)) == []


def test_what_is_no_word_stays(pseudo_language):
    assert value_words("filler_metal", "ER5356", Process.TIG) == "ER5356"


def test_lengths_have_the_comma(pseudo_language):
    assert both_lengths(25.4, Units.METRIC) == "25,4 mm (1,000 in)"


def test_a_page_says_its_language(pseudo_language):
    assert '<html lang="xx">' in page("x", "")


def test_a_procedure_sheet_leaves_no_word_in_english(tables, pseudo_language):
    entry = read_entry(WELD, tables, None).entry
    sheet = procedure_sheet(entry, tables, Units.METRIC)
    known = [*left_over(find_metal(tables, "5052").name), *left_over(entry.uid), "ISO", "min"]
    assert left_over(sheet.text, known) == []
    assert "95,5 A" in sheet.text
    assert left_over(re.sub(r"<style>.*?</style>|<[^>]+>", " ", sheet.html), known) == []
