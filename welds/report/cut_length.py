"""Lengths to cut and scribe by: finer than a card shows, and never as a fraction that is only near."""

from welds.language import figure
from welds.quantities.units import Units

_MM_PER_INCH = 25.4


def cut_length(mm: float, units: Units) -> str:
    """Return the length to a tenth of a millimetre or a thousandth of an inch."""
    return figure(f"{mm / _MM_PER_INCH:.3f} in" if units is Units.INCH else f"{mm:.1f} mm")


def both_lengths(mm: float, units: Units) -> str:
    """Return the length with the other unit in brackets."""
    other = Units.METRIC if units is Units.INCH else Units.INCH
    return f"{cut_length(mm, units)} ({cut_length(mm, other)})"
