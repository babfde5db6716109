"""A flat folded back is the part that was asked for; and the blanks of printed examples."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from welds.errors import InputError
from welds.job.blank import Bend, Dimensions, FoldedPart, make_blank
from welds.job.fold import fold, measured_angles, measured_legs

THICKNESS = st.floats(0.3, 6.0)


@st.composite
def folded_parts(draw) -> tuple[FoldedPart, float]:
    bends = draw(
        st.lists(
            st.builds(Bend, st.floats(2.0, 165.0), st.floats(0.0, 12.0), st.booleans()),
            min_size=0,
            max_size=5,
        )
    )
    legs = draw(st.lists(st.floats(300.0, 900.0), min_size=len(bends) + 1, max_size=len(bends) + 1))
    part = FoldedPart(draw(THICKNESS), tuple(legs), tuple(bends), draw(st.sampled_from(Dimensions)))
    return part, draw(st.floats(0.3, 0.5))


@given(folded_parts())
def test_the_flat_folds_back_into_the_part(case: tuple[FoldedPart, float]):
    part, k = case
    section = fold(make_blank(part, [k] * len(part.bends)))
    assert measured_legs(section, part.dimensions) == pytest.approx(part.legs_mm, abs=1e-9, rel=1e-9)
    assert measured_angles(section) == pytest.approx([bend.angle_deg for bend in part.bends], abs=1e-9)


@given(folded_parts())
def test_a_larger_k_never_shortens_the_flat(case: tuple[FoldedPart, float]):
    part, k = case
    assert (
        make_blank(part, [k + 0.05] * len(part.bends)).length_mm
        >= make_blank(part, [k] * len(part.bends)).length_mm
    )


def test_a_square_tray_by_hand():
    """Legs 50 and 30, 2 mm, R 3, K 0.42: 80 - 3.9681 mm."""
    part = FoldedPart(2.0, (50.0, 30.0), (Bend(90.0, 3.0),))
    assert make_blank(part, [0.42]).length_mm == pytest.approx(76.0319, abs=1e-4)


def test_inside_and_outside_dimensions_of_one_part_give_one_flat():
    bends = (Bend(90.0, 2.0), Bend(90.0, 2.0))
    outside = FoldedPart(1.5, (20.0, 60.0, 20.0), bends)
    inside = FoldedPart(1.5, (18.5, 57.0, 18.5), bends, Dimensions.INSIDE)
    assert make_blank(outside, [0.4, 0.4]).length_mm == pytest.approx(
        make_blank(inside, [0.4, 0.4]).length_mm
    )


def test_a_leg_shorter_than_its_bend_is_refused_with_the_least_leg():
    part = FoldedPart(2.0, (4.0, 50.0), (Bend(90.0, 3.0),))
    with pytest.raises(InputError, match=r"leg 1: 4 mm.*5\.00 mm or more"):
        make_blank(part, [0.4])


def test_legs_and_bends_have_to_match():
    with pytest.raises(InputError, match="one leg more than there are angles"):
        FoldedPart(2.0, (50.0, 50.0), ())
