"""Sizes and words that many rules share, by hand."""

import pytest

from welds.advice.sizes import holds, nearest_size
from welds.advice.words import both
from welds.reference.names import all_of, any_of


def test_sizes_sold_and_held():
    """Nearest in ratio: 1.96 is nearer to 2.4 than to 1.6 (1.22 against 1.225); 0.05 mm is the same size."""
    assert nearest_size(1.97, (1.6, 2.4)) == 2.4
    assert nearest_size(1.95, (1.6, 2.4)) == 1.6
    assert nearest_size(3.0, (1.6, 2.4, 3.2), {1.6, 2.4}) == 2.4
    assert nearest_size(3.0, (1.6, 2.4, 3.2), {5.0}) == 3.2
    assert holds({1.6, 2.4}, 2.44)
    assert not holds({1.6, 2.4}, 2.46)
    assert not holds({1.6, 2.4}, 1.54)


@pytest.mark.parametrize(
    ("mm", "words"),
    [
        (2.03, "2.03 mm (0.080 in)"), (2.0, "2.0 mm (0.079 in)"), (9.99, "9.99 mm (0.393 in)"),
        (10.0, "10.0 mm (0.394 in)"), (12.7, "12.7 mm (0.500 in)"),
    ],
)  # fmt: skip
def test_a_length_in_both_systems(mm, words):
    assert both(mm) == words


def test_words_in_a_sentence():
    assert [all_of(["a"]), all_of(["a", "b"]), any_of(["a", "b", "c"])] == ["a", "a and b", "a, b or c"]
