"""Numbers as the JSON answers give them."""

_DIGITS = 6


def plain_number(value: float) -> float:
    """Return the number without the dust of binary arithmetic: six significant digits."""
    return float(f"{value:.{_DIGITS}g}")
