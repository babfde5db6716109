"""Number and unit as people type them: shared by every parser of a quantity."""

import math
import re
import unicodedata
from dataclasses import dataclass
from fractions import Fraction

from welds import language
from welds.errors import NOTHING, AmbiguousInputError, InputError

_NUMBER = re.compile(
    r"""(?P<sign>[-+]?)\s*
    (?: (?:(?P<whole>\d+)(?:\s*-\s*|\s+))? (?P<top>\d+)\s*/\s*(?P<bottom>\d+)
      | (?P<decimal>(?:\d+[.,]?\d*|[.,]\d+)(?:[eE][-+]?\d{1,3})?)
    )""",
    re.VERBOSE,
)
_THOUSANDS = re.compile(r"[1-9]\d{0,2},\d{3}")
_LONGEST = 40


@dataclass(frozen=True, slots=True)
class Typed:
    """A number, the unit word behind it (empty when none) and whether it was typed as a fraction."""

    value: float
    unit: str
    is_fraction: bool
    number_text: str

    @property
    def is_whole(self) -> bool:
        """True for a plain whole number."""
        return not self.is_fraction and self.value.is_integer() and self.number_text.isdigit()


def read_typed(text: object, field: str, allowed: str) -> Typed:
    """Split `text` into number and unit; `allowed` is what the error names as usable.

    A decimal comma is accepted. A comma before three digits could also group thousands: that is asked back in
    English; in the other languages figures are shown with the comma and so are read back with it.
    """
    plain = _plain(text)
    match = _NUMBER.match(plain)
    if match is None or len(plain) > _LONGEST:
        raise InputError(field, _echo(text), allowed)
    unit = re.sub(r"^-\s*(?=[a-zA-Z])", "", plain[match.end() :].strip())
    if unit and (unit[0].isdigit() or unit[0] in ".,/-+"):
        raise InputError(field, _echo(text), allowed)
    number_text = match.group(0).strip()
    decimal = match["decimal"]
    if decimal is not None:
        if _THOUSANDS.fullmatch(decimal) and language.code() == language.ENGLISH:
            named = f" {unit}" if unit else ""
            readings = (f"{decimal.replace(',', '.')}{named}", f"{decimal.replace(',', '')}{named}")
            raise AmbiguousInputError(field, _echo(text), readings)
        value = float(decimal.replace(",", "."))
    else:
        if int(match["bottom"]) == 0:
            raise InputError(field, _echo(text), allowed)
        value = float(int(match["whole"] or 0) + Fraction(int(match["top"]), int(match["bottom"])))
    if match["sign"] == "-":
        value = -value
    if not math.isfinite(value):
        raise InputError(field, _echo(text), allowed)
    return Typed(value, unit, decimal is None, number_text)


def _echo(text: object) -> str:
    """Return the input as an error can repeat it on one line."""
    return " ".join(str(text).split()) or NOTHING


def _plain(text: object) -> str:
    """Return the text with printed fractions, quotes and dashes turned into keyboard characters."""
    spelled = "".join(_spelled(character) for character in str(text))
    return " ".join(spelled.split())


def _spelled(character: str) -> str:
    if character in "\u2033\u201d\u201c":
        return '"'
    if character in "\u2010\u2011\u2012\u2013\u2212":
        return "-"
    if unicodedata.category(character) == "No":
        parts = unicodedata.normalize("NFKC", character).split("\u2044")
        if len(parts) == 2:
            return f" {parts[0]}/{parts[1]}"
    return "/" if character == "\u2044" else character
