import subprocess
import sys

import pytest

from tests.gui.sample_cards import CADMIUM, TANK
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.quantities.units import Units

CONSOLE_BOX = {"metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}
FUEL_TANK = {**CONSOLE_BOX, "joint": "lap", "coating": ("cadmium",), "part": "tank"}


class Seen:
    """Notes everything a presenter emits."""

    def __init__(self, presenter):
        self.faces, self.refusals, self.errors, self.readings, self.changed = [], [], [], [], []
        presenter.card_changed.connect(self.faces.append)
        presenter.refused.connect(lambda *refusal: self.refusals.append(refusal))
        presenter.field_error.connect(lambda *error: self.errors.append(error))
        presenter.readings_offered.connect(lambda *offer: self.readings.append(offer))
        presenter.field_changed.connect(lambda *change: self.changed.append(change))


@pytest.fixture
def presenter(engine):
    return SetupPresenter(engine)


@pytest.fixture
def seen(presenter):
    return Seen(presenter)


def test_it_works_in_a_process_without_an_application_or_widgets():
    code = """
import sys
from tests.gui.sample_cards import sample_engine
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.quantities.units import Units
from PySide6.QtCore import QCoreApplication
presenter = SetupPresenter(sample_engine())
faces = []
presenter.card_changed.connect(faces.append)
presenter.restore({"thickness": "3 mm"}, Units.METRIC)
assert faces[0].main.label == "Current", faces
assert QCoreApplication.instance() is None
assert "PySide6.QtWidgets" not in sys.modules and "PySide6.QtGui" not in sys.modules
"""
    subprocess.run([sys.executable, "-c", code], check=True, timeout=60)


def test_every_change_brings_another_card(presenter, seen):
    presenter.restore(CONSOLE_BOX, Units.METRIC)
    presenter.set_field("thickness", "3 mm")
    presenter.set_field("metal", "304")
    assert [face.title for face in seen.faces] == [
        "TIG, outside corner, 5052",
        "TIG, outside corner, 5052",
        "TIG, outside corner, 304",
    ]
    first, second, third = seen.faces
    assert float(second.main.start) > float(first.main.start)
    assert first.has_wave
    assert not third.has_wave


def test_the_same_value_again_is_not_a_change(presenter, seen):
    presenter.restore(CONSOLE_BOX, Units.METRIC)
    presenter.set_field("thickness", "0.080 in")
    assert len(seen.faces) == 1


def test_a_bare_2_is_asked_back_and_a_click_settles_it(presenter, seen):
    presenter.restore({**CONSOLE_BOX, "metal": "low-carbon", "thickness": "2"}, Units.METRIC)
    field, readings = seen.readings[0]
    assert field == "thickness"
    assert {"2 mm", "2 in"} <= set(readings)
    assert presenter.is_stale
    presenter.choose_reading("thickness", "2 mm")
    assert not presenter.is_stale
    assert presenter.card.request.thickness_mm == 2.0
    assert seen.changed == [("thickness", "2 mm")]


def test_switching_units_never_guesses_at_a_bare_number(presenter, seen):
    presenter.restore({**CONSOLE_BOX, "thickness": "2"}, Units.INCH)
    presenter.set_units(Units.METRIC)
    assert len(seen.readings) == 2
    assert not seen.faces


@pytest.mark.parametrize("text", ["thick", "0 mm", "-2 mm", "1e9", "nan", "2 furlongs", ""])
def test_a_thickness_that_cannot_be_used_names_its_field_and_keeps_the_card(presenter, seen, text):
    presenter.restore(CONSOLE_BOX, Units.METRIC)
    card = presenter.card
    presenter.set_field("thickness", text)
    field, message = seen.errors[0]
    assert field == "thickness"
    assert "\n" not in message
    assert presenter.card is card
    assert presenter.is_stale
    assert not presenter.is_ready


def test_an_unknown_metal_offers_the_nearest(presenter, seen):
    presenter.restore({**CONSOLE_BOX, "metal": "5025"}, Units.METRIC)
    assert seen.errors[0][0] == "metal"
    assert presenter.nearest is not None
    presenter.go_to_nearest()
    assert presenter.card.request.metal == presenter.fields["metal"]


def test_a_refusal_keeps_the_card_and_leads_to_the_nearest_case(presenter, seen):
    presenter.restore(CONSOLE_BOX, Units.METRIC)
    card = presenter.card
    presenter.set_field("thickness", "40 mm")
    message, nearest = seen.refusals[0]
    assert "12.7 mm" in message
    assert presenter.card is card
    assert nearest.changes == {"thickness": "12.7 mm"}
    presenter.go_to_nearest()
    assert presenter.card.request.thickness_mm == 12.7
    assert presenter.fields["thickness"] == "12.7 mm"
    assert not presenter.is_stale


def test_stop_cautions_hold_the_card_back_until_each_is_ticked(presenter):
    presenter.restore(FUEL_TANK, Units.METRIC)
    assert presenter.open_stops == 2
    assert not presenter.is_ready
    presenter.tick(CADMIUM.rule, on=True)
    assert not presenter.is_ready
    presenter.tick(TANK.rule, on=True)
    assert presenter.is_ready
    presenter.tick(TANK.rule, on=False)
    assert not presenter.is_ready


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("process", "mig"),
        ("metal", "304"),
        ("other_metal", "6061"),
        ("joint", "tee"),
        ("coating", ("cadmium", "oil")),
        ("solvent", "acetone"),
        ("part", "tank"),
        ("place", "enclosed"),
    ],
)
def test_what_changes_the_danger_takes_the_ticks_away(presenter, name, value):
    presenter.restore({**FUEL_TANK, "part": ""}, Units.METRIC)
    presenter.tick(CADMIUM.rule, on=True)
    assert presenter.is_ready
    presenter.set_field(name, value)
    assert not presenter.is_ready


def test_what_does_not_change_the_danger_leaves_the_ticks(presenter):
    presenter.restore({**FUEL_TANK, "part": ""}, Units.METRIC)
    presenter.tick(CADMIUM.rule, on=True)
    presenter.set_field("thickness", "3 mm")
    presenter.set_field("position", "PF")
    presenter.set_units(Units.INCH)
    assert presenter.is_ready


def test_units_change_words_and_not_settings(presenter, seen):
    presenter.restore(CONSOLE_BOX, Units.METRIC)
    presenter.set_units(Units.INCH)
    metric, inch = seen.faces
    assert metric.card == inch.card
    flows = [next(figure for figure in face.big if figure.name == "gas_flow") for face in (metric, inch)]
    assert [flow.unit for flow in flows] == ["L/min", "cfh"]
    assert "2.03 mm" in metric.subtitle.split("(")[0]
    assert "0.080 in" in inch.subtitle.split("(")[0]


def test_the_slider_writes_what_a_person_would_type(presenter):
    presenter.restore(CONSOLE_BOX, Units.METRIC)
    presenter.set_thickness_mm(3.2)
    assert presenter.fields["thickness"] == "3.2 mm"
    presenter.set_units(Units.INCH)
    presenter.set_thickness_mm(3.175)
    assert presenter.fields["thickness"] == "0.125 in"
    assert presenter.card.request.thickness_mm == pytest.approx(3.175)


def test_gauge_marks_are_the_metals_own(presenter):
    """16 ga: 0.0508 in AWG (ASTM B258), 0.0598 in for uncoated sheet steel, 0.0625 in by US statute."""
    presenter.restore(CONSOLE_BOX, Units.METRIC)
    sixteen = {}
    for metal in ("5052", "low-carbon", "304"):
        presenter.set_field("metal", metal)
        sixteen[metal] = {name: mm for mm, name in presenter.thickness_marks()}["16 ga"] / 25.4
    assert sixteen == pytest.approx({"5052": 0.0508, "low-carbon": 0.0598, "304": 0.0625}, abs=0.0002)


def test_mig_inputs_do_not_reach_a_tig_request(presenter):
    presenter.restore({**CONSOLE_BOX, "process": "mig", "wire": "0.9 mm"}, Units.METRIC)
    assert presenter.card.request.wire_diameter_mm == 0.9
    presenter.set_field("process", "tig")
    assert presenter.card.request.wire_diameter_mm is None


def test_remembered_choices_that_are_gone_start_as_usual(presenter, seen):
    gone = {**CONSOLE_BOX, "joint": "scarf", "hand": "third", "coating": ("moss",), "colour": "red"}
    presenter.restore(gone, Units.METRIC)
    assert not seen.errors
    assert presenter.fields["joint"] == "butt"
    assert presenter.fields["coating"] == ()
    assert "colour" not in presenter.fields
    assert presenter.card.request.thickness_mm == pytest.approx(2.032)


def test_starting_over_forgets_the_request_and_keeps_the_units(presenter):
    presenter.restore(FUEL_TANK, Units.INCH)
    presenter.start_over()
    assert presenter.fields["coating"] == ()
    assert "part" not in presenter.fields
    assert presenter.units is Units.INCH
    assert presenter.is_ready
