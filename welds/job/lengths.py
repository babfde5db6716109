"""Lengths as a job needs them typed: one, a list, or a size such as 120 x 80 mm."""

import re

from welds.errors import InputError
from welds.language import tr
from welds.quantities.length import Limits, ParsedLength, parse_length
from welds.quantities.units import Units
from welds.reference.gauges import gauge_thickness_mm
from welds.reference.metals import Metal
from welds.reference.tables import Tables

PART = Limits(0.0, 20_000.0, (0.1, 20_000.0))
"""Legs, radii, sheets: from a sharp edge to a whole plate."""
_CROSS = re.compile(r"\s*[x\u00d7*]\s*")
_UNIT_AT_END = re.compile(r"\d\s*(mm|cm|m|in\.?|inch|inches|ft|\")\s*$", re.IGNORECASE)


def read_length(text: object, field: str, units: Units | None) -> float:
    """Return one length in millimetres; a bare number is in `units`."""
    return parse_length(text, field=field, default=units, limits=PART).mm


def read_lengths(text: object, field: str, units: Units | None) -> tuple[float, ...]:
    """Return lengths separated by commas or semicolons; a unit after the last one counts for all."""
    entries = [str(each) for each in text] if isinstance(text, list) else re.split(r"[,;]", str(text))
    return tuple(read_length(each, field, units) for each in _same_unit([each.strip() for each in entries]))


def read_size(text: object, field: str, units: Units | None) -> tuple[float, float]:
    """Return both sides of a size such as 120 x 80 mm."""
    sides = _same_unit(_CROSS.split(str(text).strip()))
    if len(sides) != 2:
        raise InputError(field, text, tr("two lengths with an x between, such as 120 x 80 mm"))
    first, second = (read_length(side, field, units) for side in sides)
    if not (first > 0.0 and second > 0.0):
        raise InputError(field, text, tr("two lengths above zero"))
    return first, second


def read_thickness(text: object, metal: Metal, tables: Tables, units: Units | None) -> ParsedLength:
    """Return a sheet's thickness; gauges are the metal's own."""
    system = metal.gauge_system
    gauge = (lambda number: gauge_thickness_mm(tables, system, number)) if system else None
    return parse_length(text, field="thickness", gauge=gauge, default=units)


def units_of(thickness: ParsedLength) -> Units | None:
    """Return the units the person thinks in, by how the thickness was given; None for a gauge."""
    if thickness.shown.endswith("ga"):
        return None
    return Units.INCH if thickness.shown.endswith(("in", "ft")) else Units.METRIC


def _same_unit(entries: list[str]) -> list[str]:
    found = _UNIT_AT_END.search(entries[-1]) if entries else None
    if found is None:
        return entries
    return [entry if _UNIT_AT_END.search(entry) else f"{entry} {found[1]}" for entry in entries]
