"""The one unit registry: every conversion factor in the program comes out of it.

pint is imported when a conversion is needed that `unit_lines` does not keep: starting the window needs none.
"""

from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from welds.quantities.unit_lines import LINES

if TYPE_CHECKING:
    from pint import UnitRegistry

UNIT_FILE = Path(__file__).with_name("welders_units.txt")


@lru_cache(maxsize=1)
def registry() -> "UnitRegistry":
    """Return the registry of welders' units, built once and made pint's own default."""
    import pint

    units: UnitRegistry = pint.UnitRegistry(str(UNIT_FILE), on_redefinition="raise")
    pint.set_application_registry(units)  # type: ignore[no-untyped-call]
    return units


@lru_cache(maxsize=256)
def line(unit: str, to: str) -> tuple[float, float]:
    """Return scale and offset of the straight line from one unit to the other, as pint works them out."""
    units = registry()
    offset = float(units.Quantity(0.0, unit).m_as(to))
    return float(units.Quantity(1.0, unit).m_as(to)) - offset, offset


def convert(value: float, unit: str, to: str) -> float:
    """Return `value` given in `unit`, expressed in the unit `to`; temperatures are points on the scale."""
    if unit == to:
        return value
    scale, offset = LINES.get((unit, to)) or line(unit, to)
    return value * scale + offset
