"""Choosing a size that is sold, from the shelf where the shelf is stated."""

from collections.abc import Collection, Iterable
from math import log

SAME_MM = 0.05


def holds(sizes_mm: Collection[float], wanted_mm: float) -> bool:
    """Say whether a size is among those in stock."""
    return any(abs(each - wanted_mm) < SAME_MM for each in sizes_mm)


def nearest_size(wanted_mm: float, sold_mm: Iterable[float], shelf_mm: Collection[float] = ()) -> float:
    """Return the sold size nearest in ratio, among those on the shelf where any are stated."""
    sold = list(sold_mm)
    on_shelf = [each for each in sold if holds(shelf_mm, each)]
    return min(on_shelf or sold, key=lambda each: abs(log(each / wanted_mm)))
