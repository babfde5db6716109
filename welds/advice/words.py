"""Lengths, lists and values inside sentences."""

from welds.language import figure, tr
from welds.quantities.registry import convert
from welds.reference.basis import Basis


class Phrase(str):
    """A chosen value in words and figures: English, as JSON and the log keep it, and ready to be said."""

    template: str
    figures: dict[str, float]

    def __new__(cls, template: str, **figures: float) -> "Phrase":
        """Fill in the English template, a marked text."""
        made = super().__new__(cls, template.format(**figures))
        made.template, made.figures = template, figures
        return made


def value_said(value: str) -> str:
    """Return a setting's chosen words in the language in use."""
    return tr(value.template, **value.figures) if isinstance(value, Phrase) else tr(value)


def both(mm: float) -> str:
    """Return a length in both systems, since reasons are read in either: "2.03 mm (0.080 in)"."""
    digits = 1 if mm >= 10 else 2
    metric = f"{mm:.{digits}f}"
    if digits == 2 and metric.endswith("0"):
        metric = metric[:-1]
    return figure(f"{metric} mm ({convert(mm, 'mm', 'inch'):.3f} in)")


def span(low: float, high: float, unit: str) -> str:
    """Return what lies between two figures, as an error allows it."""
    return tr("{low:g} to {high:g} {unit}", low=low, high=high, unit=tr(unit))


def grade_words(basis: Basis) -> str:
    """Return a grade inside a sentence."""
    return tr("from memory") if basis is Basis.RECALLED else basis.word
