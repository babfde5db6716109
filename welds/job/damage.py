"""What is wrong with a sheet, as the person measured it."""

import re
from dataclasses import dataclass
from enum import StrEnum
from math import pi

from welds.advice.request import Coating, Part, Process
from welds.errors import InputError
from welds.job.lengths import read_length
from welds.language import figure, mark, tr
from welds.quantities.units import Units
from welds.reference.metals import Metal

_HOLES = re.compile(r"(.+?)\s*[x\u00d7*]\s*(\d{1,4})")
HOLES_FORM = mark('diameter and number, such as "4 mm x 12", several separated by commas')
NOT_YOURS = {
    Part.STEERING_SUSPENSION: mark("steering-suspension"),
    Part.TOWING: mark("towing"),
    Part.LIFTING: mark("lifting"),
    Part.ROLLOVER: mark("rollover"),
    Part.PRESSURE: mark("pressure"),
    Part.SEALED_ITEM: mark("sealed-item"),
}
"""Parts whose failure hurts someone, by the words they are named with."""


class Behind(StrEnum):
    """What stands behind the sheet where the holes are."""

    SOUND = "sound"
    THIN = "thin"
    NONE = "none"


@dataclass(frozen=True, slots=True)
class Holes:
    """Holes of one size."""

    diameter_mm: float
    count: int


@dataclass(frozen=True, slots=True)
class Damage:
    """One damaged region of one sheet."""

    metal: Metal
    nominal_mm: float
    holes: tuple[Holes, ...]
    region_mm: tuple[float, float]
    behind: Behind = Behind.NONE
    measured_mm: float | None = None
    panel_mm: tuple[float, float] | None = None
    part: Part | None = None
    is_load_bearing: bool = False
    traps_water: bool = False
    process: Process | None = None
    coatings: tuple[Coating, ...] = ()
    closest_mm: float | None = None
    """Between the middles of the two nearest holes, where they were drawn."""

    @property
    def thickness_mm(self) -> float:
        """What is left of the sheet."""
        return self.nominal_mm if self.measured_mm is None else self.measured_mm

    @property
    def count(self) -> int:
        """All holes together."""
        return sum(holes.count for holes in self.holes)

    @property
    def largest_mm(self) -> float:
        """The largest hole."""
        return max(holes.diameter_mm for holes in self.holes)

    @property
    def area_mm2(self) -> float:
        """The region's area."""
        return self.region_mm[0] * self.region_mm[1]

    def __post_init__(self) -> None:
        lost = sum(holes.count * pi * holes.diameter_mm**2 / 4.0 for holes in self.holes)
        if self.largest_mm > min(self.region_mm) or lost > self.area_mm2:
            given = figure(f"{self.region_mm[0]:g} x {self.region_mm[1]:g} mm")
            raise InputError("region", given, tr("a region that the holes fit into"))
        if self.measured_mm is not None and self.measured_mm > 1.25 * self.nominal_mm:
            allowed = tr("at most a quarter over the nominal {nominal:g} mm", nominal=self.nominal_mm)
            raise InputError("measured", figure(f"{self.measured_mm:g} mm"), allowed)


def read_holes(text: object, units: Units | None) -> tuple[Holes, ...]:
    """Read holes by size and number."""
    found = []
    for entry in re.split(r"[,;]", str(text)):
        match = _HOLES.fullmatch(entry.strip())
        diameter = read_length(match[1], "holes", units) if match else 0.0
        if match is None or not diameter or not int(match[2]):
            raise InputError("holes", text, tr(HOLES_FORM))
        found.append(Holes(diameter, int(match[2])))
    return tuple(found)
