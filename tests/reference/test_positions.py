"""Positions by letters, numbers and words."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.errors import AmbiguousInputError, InputError
from welds.reference.positions import Position, find_position

READINGS = [
    ("PA", "PA"), ("pa", "PA"), (" PA ", "PA"), ("1G", "PA"), ("1F", "PA"), ("flat", "PA"), ("Flat", "PA"),
    ("down-hand", "PA"), ("PB", "PB"), ("2F", "PB"), ("horizontal fillet", "PB"), ("PC", "PC"), ("2G", "PC"),
    ("PD", "PD"), ("4F", "PD"), ("overhead fillet", "PD"), ("PE", "PE"), ("4G", "PE"), ("overhead", "PE"),
    ("PF", "PF"), ("3G up", "PF"), ("3F up", "PF"), ("vertical-up", "PF"), ("vertical up", "PF"),
    ("Vertical_Up", "PF"), ("uphill", "PF"), ("PG", "PG"), ("3G down", "PG"), ("3g-down", "PG"),
    ("vertical-down", "PG"), ("downhill", "PG"), ("PH", "PH"), ("5G up", "PH"), ("PJ", "PJ"), ("PK", "PK"),
    ("H-L045", "H-L045"), ("6G up", "H-L045"), ("J-L045", "J-L045"),
]  # fmt: skip

AMBIGUOUS = [
    ("3G", ["PF", "PG"]),
    ("3F", ["PF", "PG"]),
    ("vertical", ["PF", "PG"]),
    ("horizontal", ["PB", "PC"]),
    ("5G", ["PH", "PJ", "PK"]),
    ("6G", ["H-L045", "J-L045"]),
]


@pytest.mark.parametrize(("text", "letters"), READINGS)
def test_a_name_with_one_reading(tables, text, letters):
    assert find_position(tables, text) == letters


@pytest.mark.parametrize(("text", "letters"), AMBIGUOUS)
def test_a_name_with_several_is_asked_back(tables, text, letters):
    with pytest.raises(AmbiguousInputError) as caught:
        find_position(tables, text)
    assert [reading.split(" ")[0] for reading in caught.value.readings] == letters
    assert all("(" in reading for reading in caught.value.readings)


@pytest.mark.parametrize(
    ("text", "near"), [("PX", "p"), ("overheat", "overhead"), ("vertical upp", "vertical up"), ("7G", "g")]
)
def test_an_unknown_name_is_refused_with_the_nearest(tables, text, near):
    with pytest.raises(InputError) as caught:
        find_position(tables, text)
    assert not isinstance(caught.value, AmbiguousInputError)
    assert near in (caught.value.nearest or "")
    assert "PA" in caught.value.allowed


@pytest.mark.parametrize("text", ["", "   ", "12", "\u2603", "P" * 500])
def test_nonsense_is_bad_input(tables, text):
    with pytest.raises(InputError):
        find_position(tables, text)


@given(text=st.text(max_size=30))
def test_any_text_is_answered_or_refused(tables, text):
    try:
        letters = find_position(tables, text)
    except InputError:
        return
    assert letters in {position.iso_6947 for position in tables.records(Position)}


def test_letters_and_aliases_are_written_plainly_and_letters_are_never_ambiguous(tables):
    for position in tables.records(Position):
        assert find_position(tables, position.iso_6947) == position.iso_6947
        for alias in position.aliases:
            assert alias == " ".join(alias.lower().replace("-", " ").split())


def test_numbers_tell_grooves_from_fillets(tables):
    """AWS: G stands for groove, F for fillet."""
    kind = {"G": "groove", "F": "fillet"}
    for position in tables.records(Position):
        assert {kind[number[-1]] for number in position.aws} == set(position.welds), position.iso_6947
