"""Figures that the bench file keeps in metric, as a person who works in inches reads and types them."""

from collections.abc import Callable
from dataclasses import dataclass

from welds.bench.machine_fields import MACHINE, SUPPLY
from welds.bench.readers import NUMBER, Number
from welds.language import figure, mark, tr
from welds.quantities.registry import convert
from welds.quantities.sizes import sold_size
from welds.quantities.units import Units

DIGITS = 4
"""Figures shown of a converted number; the file takes three decimals, so it comes back as it was typed."""


@dataclass(frozen=True, slots=True)
class OwnUnit:
    """Unit of the file, unit of the inch system, and what each is called."""

    metric: str
    inch: str
    metric_name: str
    inch_name: str

    def name(self, units: Units) -> str:
        """Return what the unit is called."""
        return tr(self.inch_name if units is Units.INCH else self.metric_name)

    def shown(self, text: str, units: Units) -> str:
        """Return the file's text in the person's unit; what is no number stays as it is."""
        return self._turned(text, self.metric, self.inch, _short) if units is Units.INCH else text

    def kept(self, text: str, units: Units) -> str:
        """Return what was typed in the file's unit; what is no number stays as it is."""
        return self._turned(text, self.inch, self.metric, _filed) if units is Units.INCH else text

    def _turned(self, text: str, unit: str, to: str, written: Callable[[float], str]) -> str:
        plain = text.strip()
        if not NUMBER.fullmatch(plain):
            return text
        return written(convert(float(plain.replace(",", ".")), unit, to))


FEED = OwnUnit("m/min", "ipm", "m/min", "in/min")
CORD = OwnUnit("m", "foot", "m", "ft")
LEFT = OwnUnit("liter", "foot**3", mark("litres"), mark("cubic feet"))
UNITS_OF = {
    "wire_feed_min_m_min": FEED,
    "wire_feed_max_m_min": FEED,
    "supply.cord_length_m": CORD,
}


def problem_in(units: Units, name: str, text: str, problem: str) -> str:
    """Return a fault of one line with the figures that the person sees; `text` is what the file holds."""
    own = UNITS_OF.get(name)
    if own is None or units is Units.METRIC:
        return problem
    unit = own.name(units)
    reader = {**MACHINE, **SUPPLY}[name.removeprefix("supply.")]
    if isinstance(reader, Number) and not _is_usable(reader, text):
        low, high = (own.shown(f"{end:g}", units) for end in (reader.lowest, reader.highest))
        return tr(
            "{given} is not usable; allowed: a number from {low} to {high} {unit}",
            given=own.shown(text, units),
            low=low,
            high=high,
            unit=unit,
        )
    if own is FEED:
        return tr("{feed} {unit} is above the highest feed", feed=own.shown(text, units), unit=unit)
    return problem


def size_words(size: str, kind: str, units: Units) -> str:
    """Return a sold size, such as "1.6 mm", by the name on the packet in the person's system."""
    number, _, unit = size.partition(" ")
    if units is Units.METRIC or unit != "mm" or not NUMBER.fullmatch(number):
        return figure(size)
    sold = sold_size(float(number.replace(",", ".")), kind)
    return figure(f"{sold[1]} in" if sold else size)


def _is_usable(reader: Number, text: str) -> bool:
    plain = text.strip()
    if not NUMBER.fullmatch(plain):
        return False
    return reader.lowest <= float(plain.replace(",", ".")) <= reader.highest


def _short(value: float) -> str:
    return f"{float(f'{value:.{DIGITS}g}'):g}"


def _filed(value: float) -> str:
    return f"{round(value, 3):.3f}".rstrip("0").rstrip(".")
