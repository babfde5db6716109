"""Lengths as people at a bench type them, in millimetres; what can be read two ways is asked back."""

from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass

from welds.errors import AmbiguousInputError, InputError, WeldsError, nearest
from welds.language import tr
from welds.quantities.registry import convert
from welds.quantities.typed import Typed, read_typed
from welds.quantities.units import Units

_UNITS = {
    "mm": "mm", "millimetre": "mm", "millimetres": "mm", "millimeter": "mm", "millimeters": "mm",
    "cm": "cm", "m": "m",
    "in": "inch", "in.": "inch", "inch": "inch", "inches": "inch", '"': "inch", "''": "inch",
    "ft": "foot", "ft.": "foot", "foot": "foot", "feet": "foot",
}  # fmt: skip
_GAUGE_WORDS = ("ga", "ga.", "gauge", "gage")
_SHOWN_UNIT = {"inch": "in", "foot": "ft"}
_HIGHEST_BARE_GAUGE = 30
_DECIMALS = 6
"""A nanometre: keeps the dust of binary arithmetic out of 1-1/2 in = 38.1 mm."""

GaugeTable = Callable[[int], float]


@dataclass(frozen=True, slots=True)
class Limits:
    """What can be meant: lowest to highest with a stated unit, `plausible_mm` for a bare number."""

    lowest_mm: float
    highest_mm: float
    plausible_mm: tuple[float, float]

    def allows(self, mm: float) -> bool:
        """Say whether a length with a stated unit is possible at all."""
        return self.lowest_mm <= mm <= self.highest_mm


THICKNESS = Limits(0.01, 1000.0, (0.2, 80.0))
GAP = Limits(0.0, 100.0, (0.2, 12.0))
WELD_LENGTH = Limits(0.1, 100_000.0, (5.0, 5000.0))


@dataclass(frozen=True, slots=True)
class ParsedLength:
    """The length in millimetres, and how the person would name it."""

    mm: float
    shown: str


def parse_length(
    text: object,
    *,
    field: str,
    gauge: GaugeTable | None = None,
    default: Units | None = None,
    limits: Limits = THICKNESS,
) -> ParsedLength:
    """Read a length such as "2 mm", "0.080", "1-1/2 in" or "14 ga".

    `gauge` turns a gauge number into millimetres and raises for one it does not have; without it a gauge
    number is refused, because gauges differ between metals. A bare number is taken when it has one plausible
    reading, or when `default` says which units the person works in.
    """
    allowed = tr("a length such as 2 mm, 0.080 in, 1/8 in") + (tr(", 14 ga") if gauge else "")
    typed = read_typed(text, field, allowed)
    if typed.value < 0:
        raise InputError(field, typed_text(typed), allowed + tr(", not negative"))
    word = typed.unit.lower()
    if word in _GAUGE_WORDS:
        return _gauge_reading(typed, field, gauge)
    if not word:
        return _bare_reading(typed, field, gauge, default, limits, allowed)
    unit = _UNITS.get(word)
    if unit is None:
        raise InputError(field, typed_text(typed), allowed, nearest(word, (*_UNITS, *_GAUGE_WORDS)))
    return _within(convert(typed.value, unit, "mm"), typed, unit, field, limits)


def typed_text(typed: Typed) -> str:
    """Return the input again, tidied."""
    return f"{typed.number_text} {typed.unit}".strip()


def _within(mm: float, typed: Typed, unit: str, field: str, limits: Limits) -> ParsedLength:
    shown = f"{typed.number_text} {_SHOWN_UNIT.get(unit, unit)}"
    if not limits.allows(mm):
        raise InputError(
            field,
            shown,
            tr("{lowest:g} mm to {highest:g} mm", lowest=limits.lowest_mm, highest=limits.highest_mm),
        )
    return ParsedLength(round(mm, _DECIMALS), shown)


def _gauge_reading(typed: Typed, field: str, gauge: GaugeTable | None) -> ParsedLength:
    if not typed.is_whole:
        raise InputError(field, typed_text(typed), tr("a whole gauge number such as 14 ga"))
    if gauge is None:
        raise InputError(
            field,
            typed_text(typed),
            tr("a gauge number only for a known metal (gauges differ by metal), mm or in"),
        )
    number = int(typed.value)
    return ParsedLength(gauge(number), f"{number} ga")


def _bare_reading(
    typed: Typed,
    field: str,
    gauge: GaugeTable | None,
    default: Units | None,
    limits: Limits,
    allowed: str,
) -> ParsedLength:
    """Choose the reading of a number without unit; fractions are always inches."""
    if typed.value == 0 and limits.lowest_mm == 0:
        return ParsedLength(0.0, "0")
    if typed.is_fraction:
        return _within(convert(typed.value, "inch", "mm"), typed, "inch", field, limits)
    by_units = {Units.METRIC: (typed.value, "mm"), Units.INCH: (convert(typed.value, "inch", "mm"), "in")}
    low, high = limits.plausible_mm
    plausible = {
        units: ParsedLength(round(mm, _DECIMALS), f"{typed.number_text} {name}")
        for units, (mm, name) in by_units.items()
        if low <= mm <= high
    }
    if default is not None and default in plausible:
        return plausible[default]
    readings = list(plausible.values())
    if gauge is not None and typed.is_whole and 0 <= typed.value <= _HIGHEST_BARE_GAUGE:
        with suppress(WeldsError):  # no such gauge, so not a reading
            readings.append(_gauge_reading(typed, field, gauge))
    if len(readings) == 1:
        return readings[0]
    if readings:
        raise AmbiguousInputError(field, typed.number_text, [reading.shown for reading in readings])
    raise InputError(
        field,
        typed.number_text,
        tr(
            "{allowed}; a number without unit from {low:g} to {high:g} mm",
            allowed=allowed,
            low=low,
            high=high,
        ),
    )
