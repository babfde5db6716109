"""Settings of a logged weld as they are shown in a form and typed into it; the log itself stays metric."""

import re
from collections.abc import Mapping

from welds.errors import InputError
from welds.language import mark, tr
from welds.logbook.entry import Value
from welds.logbook.settings import Kind
from welds.quantities.display import display_unit, show
from welds.quantities.registry import convert
from welds.quantities.sizes import SOLD_AS, sold_size
from welds.quantities.typed import read_typed
from welds.quantities.units import Units

YES_NO = ("gas_lens",)
_IN_WORDS = ("tip", "pulse", "backing")
"""Settings that a card says in words, kept in English; what nobody touches is logged as it came."""
USUAL: Mapping[str, tuple[str, ...]] = {
    "tig": (
        *("current", "polarity", "ac_frequency", "electrode_negative", "tungsten_diameter"),
        *("filler_metal", "filler_diameter", "shielding_gas", "gas_flow", "cup"),
    ),
    "mig": (
        *("wire_feed", "voltage", "current", "transfer", "wire", "wire_diameter"),
        *("shielding_gas", "gas_flow", "tip_to_work"),
    ),
}
"""What a form that starts from nothing asks for."""

_CHOICES = {
    "yes": mark("yes"),
    "no": mark("no"),
    "short-circuit": mark("short-circuit"),
    "spray": mark("spray"),
    "globular": mark("globular"),
    "pulsed": mark("pulsed"),
}
_PLAIN_NUMBER = re.compile(r"[0-9]{1,9}([.,][0-9]{1,9})?")
_BY_WORD = {"yes": True, "true": True, "no": False, "false": False}
_NAMES = {"in": "inch", "in/min": "ipm", "%": "percent", "°c": "degC", "°f": "degF"}


def unit_words(name: str, kind: Kind, units: Units) -> str:
    """Return the unit that stands behind the field of a setting, or an empty text."""
    return "" if kind.unit is None else show(1.0, kind.unit, name, units).unit_text


def choice_words(choice: str) -> str:
    """Return what can be chosen for a setting in words; a code stays a code."""
    return tr(_CHOICES[choice]) if choice in _CHOICES else choice


def field_text(shown: str) -> str:
    """Return a figure as a field holds it: with the point, for "1,250" can be read in two ways."""
    return shown.replace(",", ".")


def text_of(name: str, value: Value, kind: Kind, units: Units) -> str:
    """Return a setting as its field shows it."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if not isinstance(value, int | float):
        return tr(value) if name in _IN_WORDS else value
    if kind.unit is None:
        return f"{value:g}"
    if display_unit(name, kind.unit, units) == kind.unit:
        return f"{value:g}"
    return field_text(show(float(value), kind.unit, name, units).text)


def value_of(name: str, text: str, kind: Kind, units: Units) -> Value:
    """Return what was typed into a setting's field, in the log's unit.

    Raises InputError for a figure that cannot be read; words are checked where the entry is read.
    """
    word = text.strip()
    if kind.unit is None:
        if name in YES_NO:
            return _BY_WORD.get(word.lower(), word)
        return float(word.replace(",", ".")) if _PLAIN_NUMBER.fullmatch(word) else word
    unit = display_unit(name, kind.unit, units)
    allowed = tr("a figure, as in {example}", example=show(10.0, kind.unit, name, units))
    typed = read_typed(word, f"settings.{name}", allowed)
    given = typed.unit.lower()
    if given and given not in (unit.lower(), unit_words(name, kind, units).lower()):
        unit = _other_unit(name, word, given, kind, allowed)
    value = convert(typed.value, unit, kind.unit)
    if name in SOLD_AS:
        size = sold_size(value, name) if value > 0.0 else None
        return value if size is None else size[0]
    return float(f"{value:.6g}")


def _other_unit(name: str, text: str, given: str, kind: Kind, allowed: str) -> str:
    """Return the unit that was typed behind a figure, of either system."""
    for units in Units:
        unit = display_unit(name, str(kind.unit), units)
        if given in (unit.lower(), _NAMES.get(given, "")) or _NAMES.get(given) == unit:
            return unit
    if given == str(kind.unit).lower():
        return str(kind.unit)
    raise InputError(f"settings.{name}", text, allowed)
