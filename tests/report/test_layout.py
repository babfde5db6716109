"""The one decision about order, labels and words."""

import dataclasses

import pytest

from welds.advice.request import Joint, Process, Request
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.report import layout
from welds.report.wording import GROUPS, HEADLINES, JOINT_NAMES, LABELS, PROCESS_NAMES

# The names fixed for the card, TIG, MIG and both.
CONTRACT_NAMES = (
    *(
        "current",
        "machine_maximum",
        "polarity",
        "ac_frequency",
        "electrode_negative",
        "pulse",
        "tungsten_type",
    ),
    *("tungsten_diameter", "tip", "filler_metal", "filler_diameter", "shielding_gas", "gas_flow", "cup"),
    *("gas_lens", "stick_out", "pre_flow", "post_flow", "backing"),
    *("wire", "wire_diameter", "wire_feed", "voltage", "transfer", "tip_to_work", "plug_hole", "plug_time"),
    *("arc_voltage", "travel_speed", "heat_input", "passes", "filter_shade", "preheat", "interpass", "tacks"),
)


def test_every_setting_of_the_contract_has_a_label_and_one_place() -> None:
    placed = [name for _title, names in GROUPS for name in names]
    assert sorted(placed) == sorted(CONTRACT_NAMES) == sorted(LABELS)


def test_headlines_are_settings_and_every_enum_has_words() -> None:
    assert set(HEADLINES) == set(PROCESS_NAMES) == set(Process)
    assert all(name in LABELS for names in HEADLINES.values() for name in names)
    assert set(JOINT_NAMES) == set(Joint)


def test_no_setting_is_lost_in_grouping(tig_card, mig_card) -> None:
    for card in (tig_card, mig_card):
        names = [line.name for group in layout.groups(card, Units.METRIC) for line in group.lines]
        assert sorted(names) == sorted(card.settings)


def test_a_setting_without_label_is_spelled_out_at_the_end(mig_card) -> None:
    last = layout.groups(mig_card, Units.METRIC)[-1]
    assert (last.title, last.lines[0].label) == ("More", "A setting of next year")


def test_lines_carry_figure_range_and_second_unit(tig_card) -> None:
    lines = {line.name: line for group in layout.groups(tig_card, Units.METRIC) for line in group.lines}
    assert (lines["current"].start_text, lines["current"].range_text) == ("85 A", "70 to 100 A")
    assert (lines["tungsten_diameter"].start_text, lines["tungsten_diameter"].second) == ("2.4 mm", "3/32 in")
    assert lines["tungsten_diameter"].alternatives == ("1.6 mm: below 90 A",)
    assert (lines["gas_flow"].start_text, lines["gas_flow"].second) == ("8.5 L/min", "18 cfh")
    assert lines["gas_lens"].start_text == "yes"
    assert (lines["shielding_gas"].start, lines["shielding_gas"].second) == ("argon", "I1")
    assert (lines["tungsten_type"].start, lines["tungsten_type"].second) == ("WLa20", "blue band")
    assert lines["filler_metal"].alternatives == ("ER4043: flows better, greys when anodised",)
    assert lines["travel_speed"].start_text == "150 mm/min"


def test_polarity_is_said_as_what_to_plug_where(tig_card, mig_card) -> None:
    gun = layout.setting_line(mig_card.settings["polarity"], Process.MIG, Units.METRIC)
    assert (gun.start, gun.second) == ("DC, gun on plus", "DCEP")
    torch = dataclasses.replace(tig_card.settings["polarity"], value="DCEN")
    assert layout.setting_line(torch, Process.TIG, Units.METRIC).start == "DC, torch on minus"


@pytest.mark.parametrize(
    ("units", "expected"),
    [
        (Units.METRIC, "2.03 mm (0.080 in), position PA, indoors, oil"),
        (Units.INCH, "0.080 in (2.03 mm), position PA, indoors, oil"),
    ],
)
def test_titles(tig_card, units, expected) -> None:
    assert layout.title(tig_card.request) == "TIG, outside corner, 5052-H32"
    assert layout.subtitle(tig_card.request, units) == expected


def test_unequal_parts_are_both_named(mig_card) -> None:
    assert layout.title(mig_card.request) == "MIG, lap, galvanised to low-carbon"
    assert layout.subtitle(mig_card.request, Units.METRIC).startswith("1.5 mm (0.059 in) to 3 mm (0.118 in)")


def test_plain_request_has_no_empty_words() -> None:
    request = Request(Process.TIG, "304", 2.0, Joint.BUTT, other_metal="304", other_thickness_mm=2.0)
    assert layout.title(request) == "TIG, butt, 304"
    assert layout.subtitle(request, Units.METRIC) == "2 mm (0.079 in), position PA, indoors"


def test_sources_come_once_in_reading_order_with_their_grades(tig_card) -> None:
    assert layout.sources_in_order(tig_card) == ("DOC-3", "DOC-1", "DOC-2")
    assert layout.grades_by_source(tig_card)["DOC-3"] == (Basis.PRINTED, Basis.QUOTED)
    assert layout.grades_used(tig_card) == tuple(Basis)
