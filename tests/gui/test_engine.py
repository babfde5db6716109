"""The window's side of the real advice: lists, words and the way out of a refusal."""

from itertools import product

import pytest

from welds.advice.request import Joint
from welds.gui.engine import load_engine
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.quantities.units import Units


@pytest.fixture(scope="module")
def real():
    return load_engine(None)


@pytest.fixture
def presenter(real):
    return SetupPresenter(real)


def test_metals_stand_by_family_with_their_number_first(real):
    metals = real.metals()
    families = [metal.family for metal in metals]
    assert families == sorted(families, key=families.index)
    by_id = {metal.id: metal for metal in metals}
    assert by_id["5052"].text.startswith("5052 ")
    assert by_id["5052"].text.count("5052") == 1
    assert "5052-H32" in by_id["5052"].names
    assert "galvanised" in by_id["galvanised"].searched


METALS = ("5052", "low-carbon", "galvanised", "304")
ANSWERED = [
    *product(("tig",), METALS, ("butt", "outside-corner")),
    *product(("mig",), METALS, ("butt", "outside-corner", "plug")),
]


@pytest.mark.parametrize(("process", "metal", "joint"), ANSWERED)
def test_every_card_has_a_face_in_both_units(real, process, metal, joint):
    fields = {"process": process, "metal": metal, "thickness": "3 mm", "joint": joint}
    card = real.card(real.request(fields))
    for units in Units:
        face = real.face(card, units)
        shown = [face.main, *face.big, *(figure for group in face.groups for figure in group.figures)]
        assert {figure.name for figure in shown} == set(card.settings)
        assert len(shown) == face.figure_count
        assert all(figure.start and figure.label and figure.grade and figure.reasons for figure in shown)
        assert face.weak_count == sum(not figure.is_published for figure in shown)
        assert len(face.stops) + len(face.warnings) + len(face.notes) == len(card.cautions)


@pytest.mark.parametrize(
    ("process", "joint"), [(process, joint) for process in ("tig", "mig") for joint in Joint]
)
def test_the_way_out_of_a_refused_thickness_leads_to_a_card(presenter, process, joint):
    if (process, joint) == ("tig", "plug"):
        pytest.skip("not a matter of thickness: see the next test")
    fields = {"process": process, "metal": "5052", "thickness": "55 mm", "joint": joint}
    presenter.restore(fields, Units.METRIC)
    assert presenter.is_stale
    presenter.go_to_nearest()
    assert not presenter.is_stale
    assert presenter.fields["joint"] == joint


def test_a_joint_that_does_not_suit_the_process_leads_to_the_other_process(presenter):
    presenter.restore({"process": "tig", "metal": "low-carbon", "joint": "plug"}, Units.METRIC)
    assert presenter.is_stale
    assert presenter.fields["joint"] == "plug"
    assert presenter.nearest.changes == {"process": "mig"}
    presenter.go_to_nearest()
    assert not presenter.is_stale


def test_a_metal_that_is_never_welded_has_no_way_out(presenter):
    presenter.restore({"metal": "7075"}, Units.METRIC)
    assert presenter.is_stale
    assert presenter.nearest is None


def test_a_slip_in_a_metals_name_offers_the_right_one(presenter):
    presenter.restore({"metal": "galvanized-steel"}, Units.METRIC)
    assert presenter.nearest.changes == {"metal": "galvanised"}
    presenter.go_to_nearest()
    assert presenter.card.request.metal == "galvanised"


def test_a_metal_without_gauges_gets_plate_marks(presenter):
    presenter.restore({"metal": "titanium-2"}, Units.METRIC)
    assert (2.0, "2 mm") in presenter.thickness_marks()
    presenter.set_units(Units.INCH)
    assert (25.4 / 8, "1/8 in") in presenter.thickness_marks()


def test_every_mark_can_be_typed_back(presenter):
    for metal in ("5052", "low-carbon", "galvanised", "304", "titanium-2"):
        presenter.restore({"metal": metal}, Units.METRIC)
        for thickness_mm, name in presenter.thickness_marks():
            asked = {**presenter.fields, "thickness": name}
            assert presenter.engine.request(asked).thickness_mm == pytest.approx(thickness_mm, abs=0.006)
