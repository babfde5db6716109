"""Properties that hold for every request in the domain, not for chosen ones."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from welds.advice.advise import advise
from welds.advice.card import Card
from welds.advice.request import Coating, Goal, Hand, Joint, Part, Place, Process, Request, Solvent, Transfer
from welds.errors import InputError, NotCoveredError
from welds.reference.metals import Metal
from welds.reference.positions import Position

POSITIONS = ["PA", "PB", "PC", "PD", "PE", "PF", "PG"]


def metal_ids(tables):
    return [metal.id for metal in tables.records(Metal)]


def answered(request, tables) -> Card | None:
    try:
        return advise(request, tables)
    except (NotCoveredError, InputError):
        return None


@settings(max_examples=400)
@given(data=st.data())
def test_every_request_gets_a_card_or_a_clear_refusal(tables, data):
    metals = st.sampled_from(metal_ids(tables))
    thickness = st.floats(0.05, 100.0)
    request = Request(
        data.draw(st.sampled_from(Process)),
        data.draw(metals),
        data.draw(thickness),
        data.draw(st.sampled_from(Joint)),
        data.draw(st.sampled_from([each.iso_6947 for each in tables.records(Position)])),
        data.draw(st.none() | metals),
        data.draw(st.none() | thickness),
        data.draw(st.floats(0.0, 5.0)),
        data.draw(st.none() | st.sampled_from(Goal)),
        tuple(data.draw(st.lists(st.sampled_from(Coating), max_size=3, unique=True))),
        data.draw(st.none() | st.sampled_from(Solvent)),
        data.draw(st.none() | st.sampled_from(Part)),
        data.draw(st.sampled_from(Place)),
        None,
        data.draw(st.sampled_from(Hand)),
        data.draw(st.none() | st.sampled_from(["argon", "helium", "ar-25co2", "co2", "nonsense"])),
        data.draw(st.none() | st.sampled_from([0.6, 0.8, 0.889, 1.2, 7.0])),
        data.draw(st.none() | st.sampled_from(Transfer)),
    )
    try:
        card = advise(request, tables)
    except (NotCoveredError, InputError) as refusal:
        text = str(refusal)
        assert text
        assert "\n" not in text
        assert "None" not in text
        return
    for name, setting in card.settings.items():
        assert setting.name == name
        assert setting.reasons
        assert set(setting.sources) <= set(tables.sources)
        assert {reason.source for reason in setting.reasons if reason.source} <= set(tables.sources)
        if setting.band:
            assert setting.band.low >= 0.0
    assert "current" in card.settings
    assert "filter_shade" in card.settings


SOLD_MM = (
    *(0.5, 0.6, 0.7, 0.75, 0.8, 0.9, 1.0, 1.2, 1.25, 1.5, 1.6, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0),
    *(0.794, 1.27, 1.588, 2.032, 2.381, 3.175, 3.969, 4.763, 6.35, 9.525, 12.7),
)
"""Round sizes: rows print the same figure there, and a mean of them has the dust of binary arithmetic."""

STANDING = ("1100", "5052", "6061", "low-carbon", "galvanised", "304", "copper", "titanium-2")


@pytest.mark.parametrize("metal", STANDING)
@pytest.mark.parametrize("process", Process)
def test_sheet_as_sold_gets_a_card_or_a_clear_refusal_in_every_joint(tables, process, metal):
    cards = [answered(Request(process, metal, mm, joint), tables) for mm in SOLD_MM for joint in Joint]
    for card in cards:
        assert card is None or card.settings["gas_flow"].band.low <= card.settings["gas_flow"].band.high


@settings(max_examples=200)
@given(data=st.data())
def test_more_thickness_never_needs_less_current(tables, data):
    process = data.draw(st.sampled_from(Process))
    metal = data.draw(st.sampled_from(metal_ids(tables)))
    joint = data.draw(st.sampled_from(Joint))
    position = data.draw(st.sampled_from(POSITIONS))
    hand = data.draw(st.sampled_from(Hand))
    thin = data.draw(st.floats(0.4, 14.0))
    ratio = data.draw(st.floats(1.0, 2.0))
    cards = [
        answered(Request(process, metal, mm, joint, position, hand=hand), tables)
        for mm in (thin, thin * ratio)
    ]
    if None in cards:
        return
    low, high = (card.settings["current"].band for card in cards)
    assert low.start <= high.start
    assert low.low <= high.low


@settings(max_examples=100)
@given(data=st.data())
def test_a_thicker_second_piece_never_needs_less_current(tables, data):
    joint = data.draw(st.sampled_from([Joint.BUTT, Joint.TEE, Joint.LAP]))
    first = data.draw(st.floats(0.8, 4.0))
    second = data.draw(st.floats(0.8, 4.0))
    more = data.draw(st.floats(1.0, 1.5))
    cards = [
        answered(Request(Process.TIG, "6061", first, joint, other_thickness_mm=mm), tables)
        for mm in (second, second * more)
    ]
    if None not in cards:
        low, high = (card.settings["current"].band for card in cards)
        assert low.start <= high.start


def test_unlike_metals_get_an_answer_or_a_reasoned_refusal(tables):
    bracket = answered(Request(Process.TIG, "304", 2.0, Joint.TEE, other_metal="low-carbon"), tables)
    assert bracket.settings["filler_metal"].value == "ER309L"
    mixed = answered(Request(Process.TIG, "5052", 2.0, Joint.LAP, other_metal="6061"), tables)
    assert mixed.settings["filler_metal"].value == "ER5356"
    unequal = answered(Request(Process.TIG, "304", 2.0, Joint.TEE, other_thickness_mm=5.0), tables)
    even = answered(Request(Process.TIG, "304", 2.0, Joint.TEE), tables)
    assert unequal.settings["current"].start > even.settings["current"].start
