"""Cooling time of a steel joint from 800 to 500 degC."""

from welds.advice.case import Case
from welds.advice.request import Joint
from welds.physics.cooling_time import cooling_time

SHAPE_FACTORS = {
    Joint.BUTT: (0.9, 0.9),
    Joint.TEE: (0.56, 0.67),
    Joint.LAP: (0.56, 0.67),
    Joint.INSIDE_CORNER: (0.78, 0.67),
    Joint.OUTSIDE_CORNER: (0.78, 0.67),
    Joint.EDGE: (0.9, 0.9),
}
"""F2 and F3 of EN 1011-2 table D.1 (from memory), the middle where it prints a range; a lap as a T-joint."""


def cooling_time_s(case: Case, heat_input_kj_mm: float, preheat_c: float) -> float | None:
    """Return the cooling time of carbon steel, None for metals the standard is not for."""
    if case.families != {"carbon-steel"}:
        return None
    return cooling_time(heat_input_kj_mm, case.thin_mm, preheat_c, *SHAPE_FACTORS[case.request.joint])
