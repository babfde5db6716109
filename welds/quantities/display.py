"""Figures as a welder reads them: the unit of the person's choice, rounded the way the trade rounds.

`kind` is a setting name of the card or one of "thickness", "gap", "length". Rounding is for the eye only;
the value itself is never changed. Texts have the decimal sign of the language in use: no data for files.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from welds.language import figure, tr
from welds.quantities.band import Band
from welds.quantities.registry import convert
from welds.quantities.sizes import SOLD_AS, sold_size
from welds.quantities.units import Units


@dataclass(frozen=True, slots=True)
class Shown:
    """A figure ready to print; `second_text` is the same in the other system, empty where no one needs it."""

    text: str
    unit_text: str
    second_text: str = ""

    def __str__(self) -> str:
        return f"{self.text} {self.unit_text}".strip()


@dataclass(frozen=True, slots=True)
class ShownBand:
    """A band ready to print: three figures that share one rounding."""

    low: str
    start: str
    high: str
    unit_text: str
    second_text: str = ""

    @property
    def range_text(self) -> str:
        """Lowest to highest without the unit; one figure where the band has no width on paper."""
        return self.low if self.low == self.high else tr("{low} to {high}", low=self.low, high=self.high)


@dataclass(frozen=True, slots=True)
class Scale:
    """How one kind is shown in one unit system: unit, its name on paper, and steps.

    `steps` are (below this size, round to this step) from small to large.
    """

    unit: str
    name: str
    steps: tuple[tuple[float, float], ...]
    is_trimmed: bool = False
    """True where "2 mm" reads better than "2.00 mm"."""


@dataclass(frozen=True, slots=True)
class _Style:
    metric: Scale
    inch: Scale
    has_second: bool = False
    fraction: int = 0
    """Largest denominator of an inch fraction; 0 where inches are shown as decimals only."""
    is_coarse: bool = False
    """True where the nearest fraction will do (a distance set by eye)."""


_ANY = math.inf


def _same(unit: str, name: str, *steps: tuple[float, float], is_trimmed: bool = False) -> _Style:
    scale = Scale(unit, name, steps, is_trimmed)
    return _Style(scale, scale)


_AMPS = _same("A", "A", (50, 1), (_ANY, 5))
_PERCENT = _same("percent", "%", (_ANY, 1))
_SECONDS = _same("s", "s", (3, 0.1), (10, 0.5), (_ANY, 1), is_trimmed=True)
_VOLTS = _same("V", "V", (_ANY, 0.5), is_trimmed=True)
_SHEET = _Style(
    Scale("mm", "mm", ((10, 0.01), (_ANY, 0.1)), is_trimmed=True),
    Scale("inch", "in", ((_ANY, 0.001),)),
    has_second=True,
    fraction=64,
)
_BY_EYE = _Style(
    Scale("mm", "mm", ((10, 0.5), (_ANY, 1)), is_trimmed=True),
    Scale("inch", "in", ((_ANY, 0.01),)),
    has_second=True,
    fraction=16,
    is_coarse=True,
)
_HOLE = replace(_BY_EYE, metric=Scale("mm", "mm", ((_ANY, 0.5),), is_trimmed=True), fraction=32)
_SOLD = _Style(Scale("mm", "mm", ((_ANY, 0.1),)), Scale("inch", "in", ((_ANY, 0.001),)), has_second=True)
_HEAT = _Style(Scale("degC", "°C", ((_ANY, 5),)), Scale("degF", "°F", ((_ANY, 5),)), has_second=True)
_STYLES: Mapping[str, _Style] = {
    "current": _AMPS,
    "machine_maximum": _AMPS,
    "ac_frequency": _same("Hz", "Hz", (_ANY, 5)),
    "electrode_negative": _PERCENT,
    "tungsten_diameter": _SOLD,
    "filler_diameter": _SOLD,
    "wire_diameter": _SOLD,
    "gas_flow": _Style(
        Scale("L/min", "L/min", ((_ANY, 0.5),), is_trimmed=True),
        Scale("cfh", "cfh", ((_ANY, 1),)),
        has_second=True,
    ),
    "stick_out": _BY_EYE,
    "tip_to_work": _BY_EYE,
    "plug_hole": _HOLE,
    "pre_flow": _SECONDS,
    "post_flow": _SECONDS,
    "plug_time": _SECONDS,
    "voltage": _VOLTS,
    "arc_voltage": _VOLTS,
    "wire_feed": _Style(
        Scale("m/min", "m/min", ((_ANY, 0.1),)),
        Scale("ipm", "in/min", ((100, 1), (_ANY, 5))),
        has_second=True,
    ),
    "travel_speed": _Style(
        Scale("mm/min", "mm/min", ((50, 1), (200, 5), (_ANY, 10))),
        Scale("ipm", "in/min", ((10, 0.5), (_ANY, 1)), is_trimmed=True),
        has_second=True,
    ),
    "heat_input": _Style(
        Scale("kJ/mm", "kJ/mm", ((0.1, 0.001), (_ANY, 0.01))),
        Scale("kJ/inch", "kJ/in", ((1, 0.01), (_ANY, 0.1))),
    ),
    "preheat": _HEAT,
    "interpass": _HEAT,
    "thickness": _SHEET,
    "gap": _SHEET,
    "length": _Style(Scale("mm", "mm", ((_ANY, 1),)), Scale("inch", "in", ((_ANY, 0.1),)), has_second=True),
}
_PLAIN = ("cup", "passes", "filter_shade")
_NARROW_AMPS = 20.0
"""A band that starts below 100 A and is narrower than this is shown to 1 A: steps of 5 would blur it."""
_FRACTION_EXACT = 0.005


def show(value: float, unit: str, kind: str, units: Units) -> Shown:
    """Return one figure of `kind`, given in `unit`, as text in the person's units."""
    style = _style(kind, unit)
    first, second = _order(style, units)
    text = _text(value, unit, kind, style, first, None)
    other = f"{_text(value, unit, kind, style, second, None)} {second.name}" if style.has_second else ""
    return Shown(text, first.name, other)


def show_band(band: Band, kind: str, units: Units) -> ShownBand:
    """Return the three figures of a band with one common rounding, and the start in the other system."""
    style = _style(kind, band.unit)
    first, second = _order(style, units)
    step = _band_step(band, first)
    low, start, high = (
        _text(value, band.unit, kind, style, first, step) for value in (band.low, band.start, band.high)
    )
    if not style.has_second:
        return ShownBand(low, start, high, first.name)
    other = _text(band.start, band.unit, kind, style, second, _band_step(band, second))
    return ShownBand(low, start, high, first.name, f"{other} {second.name}")


def display_unit(kind: str, unit: str, units: Units) -> str:
    """Return the unit (as the registry names it) in which `kind` is shown."""
    return _order(_style(kind, unit), units)[0].unit


def _style(kind: str, unit: str) -> _Style:
    if kind in _PLAIN:
        return _same(unit, "", (_ANY, 1))
    return _STYLES.get(kind) or _same(unit, "" if unit == "1" else unit, (1, 0.01), (10, 0.1), (_ANY, 1))


def _order(style: _Style, units: Units) -> tuple[Scale, Scale]:
    pair = (style.metric, style.inch)
    return pair if units is Units.METRIC else (pair[1], pair[0])


def _band_step(band: Band, scale: Scale) -> float:
    """Return the step that all three figures of a band share, decided by its start."""
    start = convert(band.start, band.unit, scale.unit)
    if scale.unit == "A" and start <= 100 and band.high - band.low < _NARROW_AMPS:
        return 1
    return _step(start, scale)


def _step(value: float, scale: Scale) -> float:
    return next(step for below, step in scale.steps if abs(value) < below)


def _text(value: float, unit: str, kind: str, style: _Style, scale: Scale, step: float | None) -> str:
    if kind in SOLD_AS:
        size = sold_size(convert(value, unit, "mm"), kind)
        if size is not None:
            return figure(f"{size[0]:.1f}" if scale.unit == "mm" else size[1])
    shown = convert(value, unit, scale.unit)
    if scale.unit == "inch" and style.fraction:
        fraction = _fraction_text(shown, style)
        if fraction:
            return fraction
    return figure(_rounded(shown, step or _step(shown, scale), scale.is_trimmed))


def _rounded(value: float, step: float, is_trimmed: bool) -> str:
    """Return `value` rounded to a multiple of `step`, with no more digits than the step has."""
    digits = max(0, -math.floor(math.log10(step) + 1e-9))
    text = f"{round(value / step) * step:.{digits}f}"
    if is_trimmed and digits:
        text = text.rstrip("0").rstrip(".")
    return "0" if float(text) == 0 else text


def _fraction_text(inches: float, style: _Style) -> str:
    """Return the inch fraction with the smallest denominator that is exact enough, or an empty text."""
    if inches <= 0:
        return ""
    for denominator in (2, 4, 8, 16, 32, 64):
        if denominator > style.fraction:
            break
        top = round(inches * denominator)
        exact = abs(top / denominator - inches) <= _FRACTION_EXACT * inches
        last_chance = style.is_coarse and denominator == style.fraction
        if top and (exact or last_chance):
            whole, rest = divmod(Fraction(top, denominator), 1)
            if not rest:
                return str(whole)
            return f"{whole}-{rest}" if whole else str(rest)
    return ""
