"""From fields to a request: every field checked, what is wrong named with the nearest right one."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.advice.request import Coating, Goal, Hand, Joint, Part, Place, Process, Request, Solvent, Transfer
from welds.advice.validate import FIELDS, IN_MILLIMETRES, request_from_fields
from welds.errors import AmbiguousInputError, InputError, WeldsError
from welds.quantities.units import Units
from welds.reference.load import load_tables
from welds.reference.metals import Metal
from welds.report.json_card import request_json

BASE = {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt"}


@pytest.fixture(scope="module")
def tables():
    return load_tables()


def test_shortest_request_takes_the_defaults(tables) -> None:
    assert request_from_fields(BASE, tables) == Request(Process.TIG, "5052", 2.0, Joint.BUTT)


def test_every_field(tables) -> None:
    fields = {
        "process": "MIG",
        "metal": "low-carbon",
        "thickness": "1/8",
        "other_metal": "galvanised",
        "other_thickness": "16 ga",
        "joint": "Lap",
        "position": "2F",
        "gap": "0.5 mm",
        "goal": "strength",
        "coating": ["oil", "mill scale"],
        "solvent": "acetone",
        "part": "closed_section",
        "place": "outdoors",
        "length": "300 mm",
        "hand": "brisk",
        "gas": "co2",
        "wire": "0.030",
        "transfer": "short circuit",
    }
    assert set(fields) == set(FIELDS)
    assert request_from_fields(fields, tables) == Request(
        process=Process.MIG,
        metal="low-carbon",
        thickness_mm=3.175,
        joint=Joint.LAP,
        position="PB",
        other_metal="galvanised",
        other_thickness_mm=pytest.approx(0.0635 * 25.4, rel=1e-3),
        gap_mm=0.5,
        goal=Goal.STRENGTH,
        coatings=(Coating.OIL, Coating.MILL_SCALE),
        solvent=Solvent.ACETONE,
        part=Part.CLOSED_SECTION,
        place=Place.OUTDOORS,
        length_mm=300.0,
        hand=Hand.BRISK,
        gas="co2",
        wire_diameter_mm=0.8,
        transfer=Transfer.SHORT_CIRCUIT,
    )


def test_millimetres_as_numbers(tables) -> None:
    fields = {"process": "mig", "metal": "304", "thickness_mm": 2, "joint": "tee"}
    more = {"other_thickness_mm": 5.0, "gap_mm": 0, "length_mm": 120, "wire_mm": 0.9}
    request = request_from_fields(fields | more, tables)
    assert (request.thickness_mm, request.other_thickness_mm, request.gap_mm) == (2.0, 5.0, 0.0)
    assert (request.length_mm, request.wire_diameter_mm) == (120.0, 0.9)


# 14 gauge: AWG by its definition 0.005 in x 92^((36 - n) / 39); the others as printed sheet charts have them.
@pytest.mark.parametrize(
    ("metal", "inches"),
    [("5052", 0.005 * 92 ** (22 / 39)), ("low-carbon", 0.0747), ("galvanised", 0.0785), ("304", 0.078125)],
)
def test_gauge_follows_the_metals_own_system(tables, metal, inches) -> None:
    request = request_from_fields(BASE | {"metal": metal, "thickness": "14 ga"}, tables)
    assert request.thickness_mm == pytest.approx(inches * 25.4, rel=2e-3)


def test_other_thickness_uses_the_other_metals_gauge(tables) -> None:
    fields = BASE | {"metal": "304", "other_metal": "low-carbon", "other_thickness": "14 ga"}
    assert request_from_fields(fields, tables).other_thickness_mm == pytest.approx(0.0747 * 25.4, rel=2e-3)


@pytest.mark.parametrize(
    ("typed", "name"), [("5052-h34", "5052-H34"), ("5052", "5052"), ("6061-T6", "6061-T6"), ("304", "304")]
)
def test_metal_keeps_the_temper_that_was_asked(tables, typed, name) -> None:
    assert request_from_fields(BASE | {"metal": typed}, tables).metal == name


def test_every_metal_of_the_catalogue_in_every_temper_comes_back(tables) -> None:
    for metal in tables.records(Metal):
        for name in (metal.id, *(f"{metal.id}-{temper}" for temper in metal.tempers)):
            assert request_from_fields(BASE | {"metal": name}, tables).metal == name


@pytest.mark.parametrize(
    ("changes", "field", "nearest"),
    [
        ({"process": "tigg"}, "process", "tig"),
        ({"process": 141}, "process", None),
        ({"process": None}, "process", None),
        ({"metal": "5025"}, "metal", "5052"),
        ({"metal": "6061-T7"}, "metal", "6061-T6"),
        ({"metal": True}, "metal", None),
        ({"other_metal": "galvanishd"}, "other_metal", "galvanised"),
        ({"thickness": None}, "thickness", None),
        ({"thickness": "thin"}, "thickness", None),
        ({"thickness": "0"}, "thickness", None),
        ({"thickness": "-1 mm"}, "thickness", None),
        ({"thickness": 1e9}, "thickness", None),
        ({"thickness": ["2 mm"]}, "thickness", None),
        ({"thickness": True}, "thickness", None),
        ({"thickness_mm": 2.0}, "thickness_mm", None),
        ({"joint": "outside corners"}, "joint", "outside-corner"),
        ({"joint": ["butt"]}, "joint", None),
        ({"position": "PX"}, "position", None),
        ({"position": "flatt"}, "position", "flat"),
        ({"gap": "wide"}, "gap", None),
        ({"goal": "strenght"}, "goal", "strength"),
        ({"coating": ["oil", "galvanized"]}, "coating", "galvanised"),
        ({"coating": [["oil"]]}, "coating", None),
        ({"solvent": "brake cleaner"}, "solvent", None),
        ({"part": "towed"}, "part", "towing"),
        ({"place": "outside"}, "place", "outdoors"),
        ({"hand": "bris"}, "hand", "brisk"),
        ({"gas": "argonn"}, "gas", "argon"),
        ({"length": "-3 mm"}, "length", None),
        ({"length_mm": float("nan")}, "length_mm", None),
        ({"length_mm": "30"}, "length_mm", None),
        ({"gap_mm": -0.1}, "gap_mm", None),
        ({"wire": "0.9 mm"}, "wire", None),
        ({"transfer": "spray"}, "transfer", None),
        ({"process": "mig", "wire": "0.7 mm"}, "wire", "0.6 mm"),
        ({"process": "mig", "transfer": "sprayy"}, "transfer", "spray"),
        ({"thicknes": "2 mm"}, "field", "thickness"),
        ({"other_thicknes_mm": 2}, "field", "other_thickness_mm"),
        ({"coatings": ["oil"], "coating": "oil"}, "coating", None),
    ],
)
def test_what_is_wrong_is_named(tables, changes, field, nearest) -> None:
    with pytest.raises(InputError) as caught:
        request_from_fields(BASE | changes, tables)
    assert caught.value.field == field
    if nearest is not None:
        assert caught.value.nearest == nearest
    assert "\n" not in str(caught.value)


def test_two_readings_are_asked_back_unless_the_units_are_known(tables) -> None:
    with pytest.raises(AmbiguousInputError):
        request_from_fields(BASE | {"thickness": "2"}, tables)
    assert request_from_fields(BASE | {"thickness": "2"}, tables, Units.METRIC).thickness_mm == 2.0
    with pytest.raises(AmbiguousInputError) as caught:
        request_from_fields(BASE | {"position": "vertical"}, tables)
    assert caught.value.field == "position"


def test_nothing_given_means_not_given(tables) -> None:
    empty = {"goal": "", "coating": [], "gap": None, "gas": "", "position": None, "other_metal": ""}
    assert request_from_fields(BASE | empty, tables) == request_from_fields(BASE, tables)


def test_joint_that_does_not_suit_is_left_to_the_advice(tables) -> None:
    assert request_from_fields(BASE | {"joint": "plug"}, tables).joint is Joint.PLUG


@pytest.mark.parametrize("joint", list(Joint))
def test_a_request_as_json_asks_the_same_again(tables, joint) -> None:
    fields = BASE | {"process": "mig", "metal": "5052-H32", "joint": joint.value, "wire": "1.2 mm"}
    request = request_from_fields(fields | {"coating": ["oil"], "thickness": "0.080 in"}, tables)
    assert request_from_fields(request_json(request), tables) == request


any_json = (
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=12) | st.just([]) | st.just({})
)


@given(
    st.dictionaries(
        st.sampled_from((*FIELDS, *IN_MILLIMETRES, "colour")), any_json | st.lists(any_json, max_size=2)
    )
)
def test_any_fields_give_a_request_or_a_named_refusal(tables, fields) -> None:
    for changes in (fields, BASE | fields):
        error = None
        try:
            request_from_fields(changes, tables)
        except WeldsError as caught:
            error = caught
        assert error is None or isinstance(error, InputError)
