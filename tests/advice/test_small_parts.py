"""Sizes and words that many rules share, by hand."""

import pytest

from welds.advice.sizes import holds, nearest_size
from welds.advice.words import apart, both, joined


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
    """50 to 100 mm are 2 to 4 in to the quarter; 60 mm is 2.36, so 2.25."""
    assert apart(50.0, 100.0) == "50 to 100 mm (2 to 4 in)"
    assert apart(60.0, 95.0) == "60 to 95 mm (2.25 to 3.75 in)"
    assert [joined(["a"]), joined(["a", "b"]), joined(["a", "b", "c"], "or")] == ["a", "a and b", "a, b or c"]
