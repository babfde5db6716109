"""Choosing a size that is sold, from the shelf where the shelf is stated."""

from collections.abc import Collection, Iterable
from math import log


def nearest_size(wanted_mm: float, sold_mm: Iterable[float], shelf_mm: Collection[float] = ()) -> float:
    """Return the sold size nearest in ratio, among those on the shelf where any are stated."""
    sold = list(sold_mm)
    on_shelf = [each for each in sold if any(abs(each - have) < 0.05 for have in shelf_mm)]
    return min(on_shelf or sold, key=lambda each: abs(log(each / wanted_mm)))
