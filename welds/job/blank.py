"""The flat of a folded part: where it is bent, how long it is."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from welds.errors import InputError
from welds.language import figure, tr
from welds.physics.bending import LARGEST_ANGLE_DEG, bend_allowance, bend_deduction, setback


class Dimensions(StrEnum):
    """What the legs are measured to: where outside or inside faces cross, or over the bend as it stands.

    Overall differs from outside only where the sheet is turned by more than 90 degrees: callipers then stop
    at the bend, which is how DIN 6935 counts.
    """

    OUTSIDE = "outside"
    INSIDE = "inside"
    OVERALL = "overall"


@dataclass(frozen=True, slots=True)
class Bend:
    """One bend: angle turned through, inside radius, and which way it goes."""

    angle_deg: float
    radius_mm: float
    is_up: bool = True


@dataclass(frozen=True, slots=True)
class FoldedPart:
    """Legs in order with a bend between each two."""

    thickness_mm: float
    legs_mm: tuple[float, ...]
    bends: tuple[Bend, ...]
    dimensions: Dimensions = Dimensions.OUTSIDE

    def __post_init__(self) -> None:
        if len(self.legs_mm) != len(self.bends) + 1:
            given = tr("{legs} legs and {bends} bends", legs=len(self.legs_mm), bends=len(self.bends))
            raise InputError("legs", given, tr("one leg more than there are angles"))
        for bend in self.bends:
            if not 0.0 < bend.angle_deg <= LARGEST_ANGLE_DEG:
                allowed = tr(
                    "above 0 to {largest:g} degrees turned through; a minus bends the other way",
                    largest=LARGEST_ANGLE_DEG,
                )
                raise InputError("angles", figure(f"{bend.angle_deg:g}"), allowed)


@dataclass(frozen=True, slots=True)
class BendLine:
    """A bend on the flat: it begins at `start_mm` and uses up `allowance_mm`."""

    bend: Bend
    start_mm: float
    allowance_mm: float
    deduction_mm: float
    k: float

    @property
    def middle_mm(self) -> float:
        """Where to scribe the line."""
        return self.start_mm + self.allowance_mm / 2.0


@dataclass(frozen=True, slots=True)
class Blank:
    """The flat of a folded part."""

    part: FoldedPart
    lines: tuple[BendLine, ...]
    flats_mm: tuple[float, ...]

    @property
    def length_mm(self) -> float:
        """Flat length along the strip."""
        return sum(self.flats_mm) + sum(line.allowance_mm for line in self.lines)


def make_blank(part: FoldedPart, ks: Sequence[float]) -> Blank:
    """Return the flat; `ks` has the neutral line of each bend."""
    flats = _flats(part)
    lines = []
    at = 0.0
    for flat, bend, k in zip(flats[:-1], part.bends, ks, strict=True):
        at += flat
        measures = (bend.angle_deg, bend.radius_mm, part.thickness_mm, k)
        lines.append(BendLine(bend, at, bend_allowance(*measures), bend_deduction(*measures), k))
        at += lines[-1].allowance_mm
    return Blank(part, tuple(lines), tuple(flats))


def leg_end(bend: Bend, thickness_mm: float, dimensions: Dimensions) -> float:
    """Return how far a leg's dimension reaches beyond its straight part at a bend."""
    outside = bend.radius_mm + thickness_mm
    if dimensions is Dimensions.INSIDE:
        return setback(bend.angle_deg, bend.radius_mm)
    if dimensions is Dimensions.OVERALL and bend.angle_deg > 90.0:
        return outside
    return setback(bend.angle_deg, outside)


def _flats(part: FoldedPart) -> Sequence[float]:
    ends = [0.0, *(leg_end(bend, part.thickness_mm, part.dimensions) for bend in part.bends), 0.0]
    flats = [leg - ends[n] - ends[n + 1] for n, leg in enumerate(part.legs_mm)]
    for number, (leg, flat) in enumerate(zip(part.legs_mm, flats, strict=True), 1):
        if flat < 0.0:
            least = leg - flat
            allowed = tr(
                "{least:.2f} mm or more, or a smaller radius: the bends beside it take that much", least=least
            )
            raise InputError(tr("leg {number}", number=number), f"{figure(f'{leg:g}')} mm", allowed)
    return flats
