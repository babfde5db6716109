"""Writing a weld down: what the card said goes in as it was shown, what was typed goes in as it was meant."""

import pytest

from tests.gui.log_support import BAIT_TANK
from welds.advice.evidence import Outcome
from welds.errors import InputError
from welds.gui.engine import load_engine
from welds.gui.pages.log.entry_form import EntryForm
from welds.gui.pages.log.setting_texts import text_of, value_of
from welds.logbook.fields import read_entry
from welds.logbook.filter_fields import fields_of, filter_of
from welds.quantities.units import Units


@pytest.fixture(scope="module")
def engine():
    return load_engine(None)


@pytest.fixture(scope="module")
def card(engine):
    asked = {"process": "tig", "metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}
    return engine.card(engine.request(asked))


@pytest.mark.parametrize("units", list(Units))
def test_an_untouched_form_logs_the_figures_that_stood_on_the_card(engine, card, units):
    form = EntryForm.from_card(engine, units, card, {"welder": "first bench"})
    entry = form.reading(Outcome.WORKED_WELL).entry
    assert entry.thickness_mm == pytest.approx(2.032)
    assert entry.welder == "first bench"
    assert entry.machine == ""  # "any machine" is nobody's machine
    assert f"{entry.settings['current']:g}" == engine.face(card, units).main.start
    assert entry.settings["tungsten_diameter"] == 2.4


def test_figures_typed_in_inches_are_logged_in_metric(engine, card):
    form = EntryForm.from_card(engine, Units.INCH, card, {})
    form.set_setting("gas_flow", "20")
    form.set_setting("travel_speed", "6 in/min")
    form.set_setting("tungsten_diameter", "3/32")
    form.set_setting("cup", "7")
    settings = form.reading(Outcome.WORKED).entry.settings
    assert settings["gas_flow"] == pytest.approx(
        20 * 28.316846592 / 60, rel=1e-5
    )  # a cubic foot is 28.3168 L
    assert settings["travel_speed"] == pytest.approx(6 * 25.4 / 60)
    assert settings["tungsten_diameter"] == 2.4  # the size it is sold as
    assert settings["cup"] == 7


def test_a_unit_of_the_other_system_is_understood(engine):
    form = EntryForm(engine, Units.METRIC, {"process": "tig"})
    assert value_of("gas_flow", "20 cfh", form.kinds["gas_flow"], Units.METRIC) == pytest.approx(
        9.439, rel=1e-3
    )
    with pytest.raises(InputError):
        value_of("gas_flow", "20 gallons", form.kinds["gas_flow"], Units.METRIC)
    with pytest.raises(InputError):
        value_of("current", "a lot", form.kinds["current"], Units.METRIC)


def test_a_setting_that_is_emptied_is_left_out(engine, card):
    form = EntryForm.from_card(engine, Units.METRIC, card, {})
    form.set_setting("cup", "")
    assert "cup" not in form.reading(Outcome.WORKED).entry.settings


def test_an_untouched_edit_changes_nothing_but_the_version(engine, tables):
    entry = read_entry(BAIT_TANK, tables).entry
    for units in Units:
        form = EntryForm.of_entry(engine, units, entry)
        assert form.reading(entry.outcome).entry == entry


def test_an_edit_takes_settings_away_and_keeps_the_uid(engine, tables):
    entry = read_entry(BAIT_TANK, tables).entry
    form = EntryForm.of_entry(engine, Units.METRIC, entry)
    form.set_setting("cup", "")
    form.set_fault("porosity", on=True)
    changed = form.reading(Outcome.WORKED).entry
    assert changed.uid == entry.uid
    assert "cup" not in changed.settings
    assert changed.faults == ("porosity",)


def test_a_draft_comes_back_in_its_own_units(engine, card):
    form = EntryForm.from_card(engine, Units.INCH, card, {})
    form.set_setting("gas_flow", "20")
    form.set_text("notes", "half a sentence")
    again = EntryForm.of_draft(engine, form.draft())
    assert again.units is Units.INCH
    assert again.reading(Outcome.WORKED).entry == form.reading(Outcome.WORKED).entry


def test_a_draft_of_nonsense_is_a_form_and_not_a_crash(engine):
    form = EntryForm.of_draft(engine, {"texts": [], "settings": {"no-such": "1"}, "units": 3})
    with pytest.raises(InputError):
        form.reading(Outcome.WORKED)


def test_texts_of_settings_come_back_as_they_were(engine, tables):
    kinds = EntryForm(engine, Units.METRIC, {"process": "tig"}).kinds
    for name, value in (("current", 112), ("gas_lens", True), ("polarity", "AC"), ("tip_to_work", 12.5)):
        assert (
            value_of(name, text_of(name, value, kinds[name], Units.METRIC), kinds[name], Units.METRIC)
            == value
        )


def test_a_filter_survives_being_shown_in_other_units(tables):
    given = {
        "text": "bait tank",
        "thickness_min": "0.080 in",
        "current_max": "120 A",
        "position": "flat",
        "photos": "no",
    }
    wanted = filter_of(given, tables, Units.METRIC)
    assert wanted.thickness_min_mm == pytest.approx(2.032)
    assert wanted.position == "PA"
    assert filter_of(fields_of(wanted), tables, Units.INCH) == wanted


@pytest.mark.parametrize(
    ("field", "text"), [("current_min", "lots"), ("thickness_max", "thick"), ("since", "yesterday")]
)
def test_a_filter_that_cannot_be_read_names_its_field(tables, field, text):
    with pytest.raises(InputError) as refused:
        filter_of({field: text}, tables, Units.METRIC)
    assert refused.value.field == field
