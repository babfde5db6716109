"""Two pieces of different thickness, seen as one sheet of the thickness that takes the same heat."""

from welds.advice.request import Joint

PATHS = {
    Joint.BUTT: (1, 1),
    Joint.TEE: (1, 2),
    Joint.LAP: (1, 2),
    Joint.OUTSIDE_CORNER: (1, 1),
    Joint.INSIDE_CORNER: (1, 1),
    Joint.EDGE: (1, 1),
    Joint.PLUG: (1, 2),
}
"""Ways the heat leaves through the first piece (it ends at the joint) and through the other one."""

THIN_EDGE_LIMIT = 1.6
"""The thin edge sets the limit: never as if more than this many times the thinner piece."""

LARGEST_RATIO = 6.0
"""Beyond this ratio the thin edge is gone before the thick piece melts."""


def effective_thickness_mm(joint: Joint, first_mm: float, other_mm: float) -> float:
    """Return the thickness of two equal sheets that would draw the same heat.

    Shop practice: thickness weighted by heat paths, held down by what the thinner edge can stand. Grows with
    either thickness.
    """
    first_paths, other_paths = PATHS[joint]
    mean = (first_paths * first_mm + other_paths * other_mm) / (first_paths + other_paths)
    return min(mean, THIN_EDGE_LIMIT * min(first_mm, other_mm))
