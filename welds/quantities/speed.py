"""Travel speeds as people type them, in millimetres per second."""

from dataclasses import dataclass

from welds.errors import AmbiguousInputError, InputError, nearest
from welds.language import mark, tr
from welds.quantities.registry import convert
from welds.quantities.typed import read_typed
from welds.quantities.units import Units

_UNITS = {
    "mm/s": "mm/s", "mm/min": "mm/min", "cm/min": "cm/min", "m/min": "m/min",
    "ipm": "ipm", "in/min": "ipm", "inch/min": "ipm", "in./min": "ipm", "inches/min": "ipm",
}  # fmt: skip
_SHOWN_UNIT = {"ipm": "in/min"}
_BARE = {Units.METRIC: ("mm/s", "mm/min"), Units.INCH: ("ipm",)}
_LOWEST, _HIGHEST = 0.05, 200.0
_PLAUSIBLE = (0.5, 50.0)
_ALLOWED = mark("a travel speed such as 12 ipm, 5 mm/s, 300 mm/min")


@dataclass(frozen=True, slots=True)
class ParsedSpeed:
    """The speed in mm/s, and how the person would name it."""

    mm_s: float
    shown: str


def parse_speed(text: object, *, field: str, default: Units | None = None) -> ParsedSpeed:
    """Read a travel speed; a bare number is taken only when one reading is plausible for a weld."""
    typed = read_typed(text, field, tr(_ALLOWED))
    word = typed.unit.lower().replace(" ", "")
    if word and word not in _UNITS:
        raise InputError(field, f"{typed.number_text} {typed.unit}", tr(_ALLOWED), nearest(word, _UNITS))
    if word:
        return _reading(typed.value, typed.number_text, _UNITS[word], field)
    for candidates in ([_BARE[default]] if default else []) + [_BARE[Units.METRIC] + _BARE[Units.INCH]]:
        low, high = _PLAUSIBLE
        units = [unit for unit in candidates if low <= convert(typed.value, unit, "mm/s") <= high]
        if len(units) == 1:
            return _reading(typed.value, typed.number_text, units[0], field)
        if units:
            readings = [f"{typed.number_text} {_SHOWN_UNIT.get(unit, unit)}" for unit in units]
            raise AmbiguousInputError(field, typed.number_text, readings)
    raise InputError(field, typed.number_text, tr(_ALLOWED))


def _reading(value: float, number_text: str, unit: str, field: str) -> ParsedSpeed:
    shown = f"{number_text} {_SHOWN_UNIT.get(unit, unit)}"
    mm_s = convert(value, unit, "mm/s")
    if not _LOWEST <= mm_s <= _HIGHEST:
        raise InputError(
            field, shown, tr("{low:g} to {high:g} {unit}", low=_LOWEST, high=_HIGHEST, unit="mm/s")
        )
    return ParsedSpeed(mm_s, shown)
