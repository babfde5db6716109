"""One bend measured on the person's own brake, and the K it shows."""

from dataclasses import dataclass

from welds.errors import InputError, nearest
from welds.job.blank_answer import LEAST_K, MOST_K
from welds.job.lengths import read_length, read_size
from welds.language import figure, tr
from welds.physics.bending import LARGEST_ANGLE_DEG, neutral_line_from_test_bend
from welds.quantities.units import Units

_FIELDS = ("flat", "legs", "angle", "radius")
FORM = "flat=100 mm; legs=52 x 51.5 mm; angle=90; radius=2 mm"


@dataclass(frozen=True, slots=True)
class TestBend:
    """A strip before and after: length, both outside dimensions, the angle turned and the inside radius."""

    flat_mm: float
    legs_mm: tuple[float, float]
    angle_deg: float
    radius_mm: float

    def k(self, thickness_mm: float) -> float:
        """Return the K the bend shows, or raise InputError where it was measured wrongly."""
        k = neutral_line_from_test_bend(
            self.angle_deg, self.radius_mm, thickness_mm, self.flat_mm, sum(self.legs_mm)
        )
        if not LEAST_K <= k <= MOST_K:
            allowed = tr(
                "measurements that give {least} to {most}: measure strip and legs again, outside",
                least=LEAST_K,
                most=MOST_K,
            )
            raise InputError("test-bend", figure(f"K = {k:.2f}"), allowed)
        return k


def read_test_bend(text: str, units: Units | None) -> TestBend:
    """Read the measurements from `name=value` pairs between semicolons; the angle is 90 where left out."""
    given: dict[str, str] = {}
    for entry in filter(None, (each.strip() for each in text.split(";"))):
        name, _, value = (each.strip() for each in entry.partition("="))
        if name not in _FIELDS:
            raise InputError("test-bend", name, FORM, nearest(name, _FIELDS))
        given[name] = value
    missing = [name for name in _FIELDS if name not in given and name != "angle"]
    if missing:
        raise InputError(
            "test-bend", text, tr("{form} (missing: {names})", form=FORM, names=", ".join(missing))
        )
    return TestBend(
        read_length(given["flat"], "test-bend flat", units),
        read_size(given["legs"], "test-bend legs", units),
        read_angle(given.get("angle", "90"), "test-bend angle"),
        read_length(given["radius"], "test-bend radius", units),
    )


def read_angle(text: object, field: str) -> float:
    """Return an angle in degrees; a minus is kept."""
    try:
        angle = float(str(text).strip().removesuffix("deg").strip())
    except ValueError:
        angle = 0.0
    if not 0.0 < abs(angle) <= LARGEST_ANGLE_DEG:
        allowed = tr(
            "degrees turned through, up to {largest:g}; 90 for a square bend",
            largest=LARGEST_ANGLE_DEG,
        )
        raise InputError(field, text, allowed)
    return angle
