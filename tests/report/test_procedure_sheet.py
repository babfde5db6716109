"""The preliminary procedure sheet: the headings of ISO 15609-1:2019 (clause 4), filled from the log."""

import pytest

from welds.logbook.fields import read_entry
from welds.quantities.units import Units
from welds.report.procedure_sheet import BLANK, STANDING, procedure_sheet

RAIL = {
    "process": "tig",
    "metal": "316L",
    "thickness_mm": 3.2,
    "joint": "tee",
    "position": "PB",
    "settings": {
        "current": 96,
        "polarity": "DCEN",
        "shielding_gas": "I1",
        "gas_flow": 7.5,
        "filler_diameter": 1.6,
        "travel_speed": 1.9,
    },
    "outcome": "worked-well",
    "notes": "rail bracket <invented> & tight",
    "material_lot": "lot 12",
}
HEADINGS = (
    "Manufacturer",
    "Welding process (ISO 4063)",
    "Type of joint and weld",
    "Welding position (ISO 6947)",
    "Heat or lot",
    "Thickness",
    "Filler, designation",
    "Shielding gas (ISO 14175)",
    "Current and polarity",
    "Travel speed",
    "Heat input",
    "Preheat temperature",
    "Interpass temperature",
    "Post-weld heat treatment",
)


@pytest.fixture
def sheet(tables):
    return procedure_sheet(read_entry(RAIL, tables).entry, tables, Units.METRIC)


def test_every_heading_is_there_and_what_is_known_is_filled(sheet):
    fields = dict(sheet.fields)
    assert set(HEADINGS) <= set(fields)
    assert fields["Welding process (ISO 4063)"].startswith("141")
    assert fields["Current and polarity"] == "96 A DC, torch on minus"
    assert fields["Shielding gas flow"] == "7.5 L/min"
    assert fields["Heat or lot"] == "lot 12"
    assert fields["Preheat temperature"] == ""


def test_the_page_says_what_it_is_and_leaves_lines_to_write_on(sheet):
    assert STANDING in sheet.html
    assert BLANK in sheet.html
    assert "rail bracket &lt;invented&gt; &amp; tight" in sheet.html


def test_metal_active_and_inert_gas_have_their_numbers(tables):
    mig = {**RAIL, "process": "mig", "metal": "low-carbon"}
    for gas, number in (("M21", "135"), ("I1", "131")):
        entry = read_entry({**mig, "settings": {"shielding_gas": gas}}, tables).entry
        fields = dict(procedure_sheet(entry, tables, Units.METRIC).fields)
        assert fields["Welding process (ISO 4063)"].startswith(number)


def test_inches_on_request(tables):
    fields = dict(procedure_sheet(read_entry(RAIL, tables).entry, tables, Units.INCH).fields)
    assert "1/16" in fields["Filler, size"]
    assert fields["Current and polarity"].startswith("96 A")


def test_the_metal_with_its_temper_and_faults_with_their_numbers(tables):
    """510 and 509 for burn-through, 5012 for intermittent undercut: ISO 6520-1, as the tables have them."""
    corner = {**RAIL, "metal": "5052-H32", "outcome": "failed", "faults": ["burn-through", "5012"]}
    fields = dict(procedure_sheet(read_entry(corner, tables).entry, tables, Units.METRIC).fields)
    assert fields["Designation"].startswith("5052-H32 (")
    assert fields["Imperfections (ISO 6520-1)"] == "burn through (510 or 509), intermittent undercut (5012)"
