"""Lengths and lists inside sentences."""

from collections.abc import Sequence

from welds.quantities.registry import convert
from welds.reference.basis import Basis


def both(mm: float) -> str:
    """Return a length in both systems, since reasons are read in either: "2.03 mm (0.080 in)"."""
    digits = 1 if mm >= 10 else 2
    metric = f"{mm:.{digits}f}"
    if digits == 2 and metric.endswith("0"):
        metric = metric[:-1]
    return f"{metric} mm ({convert(mm, 'mm', 'inch'):.3f} in)"


def apart(low_mm: float, high_mm: float) -> str:
    """Return a distance set by eye in both systems: "50 to 100 mm (2 to 4 in)"."""
    low, high = (f"{round(convert(each, 'mm', 'inch') * 4) / 4:g}" for each in (low_mm, high_mm))
    return f"{low_mm:.0f} to {high_mm:.0f} mm ({low} to {high} in)"


def joined(words: Sequence[str], last: str = "and") -> str:
    """Return words as a list in a sentence."""
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} {last} {words[-1]}"


def grade_words(basis: Basis) -> str:
    """Return a grade inside a sentence."""
    return "from memory" if basis is Basis.RECALLED else basis.value
