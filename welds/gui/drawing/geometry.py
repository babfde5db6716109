"""Cross-sections of the seven joints as point lists: millimetres, x to the right, y up, no Qt.

The first piece is the one that is added (upright of a tee, upper sheet of a lap, sheet with the hole
of a plug weld); the other is what it is added to. The torch lies along `axis_deg`, counted
anticlockwise from +x, as seen from the root the arc points at.
"""

from collections.abc import Callable
from dataclasses import dataclass
from math import hypot, radians, tan

from welds.advice.request import Joint

Point = tuple[float, float]
Outline = tuple[Point, ...]
Mark = tuple[Point, Point]

LEAN_MAX_DEG = 10.0
LAP_AXIS_DEG = 55.0
BEVEL_DEG = 30.0
ROOT_FACE_MM = 1.5
BAR_MM = 5.0


@dataclass(frozen=True, slots=True)
class Piece:
    """One cut sheet; `breaks` are the edges (by first corner) where it goes on beyond the picture."""

    outline: Outline
    breaks: tuple[int, ...]
    is_first: bool
    thickness: Mark


@dataclass(frozen=True, slots=True)
class JointShape:
    """A joint ready to draw: `bisector_deg` is where the torch would lie for two equal pieces."""

    joint: Joint
    pieces: tuple[Piece, ...]
    root: Point
    bisector_deg: float
    axis_deg: float
    face_deg: float
    bead: Outline
    backing: tuple[Outline, ...]
    gap: Mark | None = None
    hole: Mark | None = None

    @property
    def work_angle_deg(self) -> float:
        """Angle between the torch and the face it is measured from, 0 to 180."""
        return abs((self.axis_deg - self.face_deg + 180.0) % 360.0 - 180.0)

    @property
    def lean_deg(self) -> float:
        """How far the torch is off the bisector, towards the thinner piece: the arc heats the thicker."""
        return self.axis_deg - self.bisector_deg


def lean_deg(first_mm: float, other_mm: float) -> float:
    """Return how far the torch leans off the bisector so that the thicker piece gets more of the arc.

    Positive where the other piece is the thicker one. Common practice gives no figure, only the
    direction; 20 degrees times the relative difference, at most 10, is the size drawn here.
    """
    relative = (other_mm - first_mm) / (other_mm + first_mm)
    return max(-LEAN_MAX_DEG, min(LEAN_MAX_DEG, 20.0 * relative))


def joint_shape(
    joint: Joint,
    first_mm: float,
    other_mm: float | None = None,
    gap_mm: float = 0.0,
    hole_mm: float = 0.0,
    arm_mm: float | None = None,
    is_bevelled: bool = False,
) -> JointShape:
    """Return the cross-section as it lies on a bench, `arm_mm` of sheet shown to each side of the root.

    Only a butt can be bevelled: to a V over a root face.
    """
    other = first_mm if other_mm is None else other_mm
    arm = max(14.0, 2.5 * max(first_mm, other)) if arm_mm is None else arm_mm
    if joint is Joint.PLUG:
        return _plug(first_mm, other, gap_mm, hole_mm or plug_hole_mm(first_mm), arm)
    if joint is Joint.BUTT:
        return _butt(first_mm, other, gap_mm, arm, is_bevelled)
    return _MAKERS[joint](first_mm, other, gap_mm, arm)


def plug_hole_mm(upper_mm: float) -> float:
    """Return a hole to draw where the card states none: five times the upper sheet, 5 to 16 mm."""
    return max(5.0, min(16.0, 5.0 * upper_mm))


def box(left: float, bottom: float, right: float, top: float) -> Outline:
    """Return a rectangle, anticlockwise from the lower left corner."""
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def bulge(start: Point, end: Point, height: float, steps: int = 14) -> Outline:
    """Return a parabola from start to end that rises `height` to the left of the way."""
    length = hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    left = (-(end[1] - start[1]) / length, (end[0] - start[0]) / length)
    points = []
    for step in range(steps + 1):
        share = step / steps
        rise = 4.0 * height * share * (1.0 - share)
        points.append(
            (
                start[0] + share * (end[0] - start[0]) + rise * left[0],
                start[1] + share * (end[1] - start[1]) + rise * left[1],
            )
        )
    return tuple(points)


def _butt(first: float, other: float, gap: float, arm: float, bevelled: bool) -> JointShape:
    thin = min(first, other)
    half = gap / 2.0
    face = min(ROOT_FACE_MM, 0.5 * thin)

    def edge(thickness: float, side: float) -> Outline:
        """The prepared end from bottom to top, square or bevelled over a root face."""
        if not bevelled:
            return ((side * half, 0.0), (side * half, thickness))
        run = half + (thickness - face) * tan(radians(BEVEL_DEG))
        return ((side * half, 0.0), (side * half, face), (side * run, thickness))

    left_end, right_end = edge(first, -1.0), edge(other, 1.0)
    left = ((-arm, 0.0), *left_end, (-arm, first))
    right = ((arm, 0.0), (arm, other), *reversed(right_end))
    cap_left, cap_right = left_end[-1][0], right_end[-1][0]
    cap = min(max(0.8 * thin, 1.2), 4.0) if not bevelled else 1.2
    under = half + min(max(0.35 * thin, 0.5), 1.2)
    bead = (
        *reversed(bulge((cap_left - cap, first), (cap_right + cap, other), min(0.3 + 0.12 * thin, 1.4))),
        *bulge((-under, 0.0), (under, 0.0), -min(0.2 + 0.12 * thin, 0.8)),
    )
    bar = max(8.0, 1.8 * thin)
    groove = under + 0.6
    deep = min(0.3 + 0.2 * thin, 1.0)
    backing = (
        (-bar, 0.0), (-bar, -BAR_MM), (bar, -BAR_MM), (bar, 0.0),
        (groove, 0.0), (groove, -deep), (-groove, -deep), (-groove, 0.0),
    )  # fmt: skip
    at = arm * 0.82
    return JointShape(
        Joint.BUTT,
        (
            Piece(left, (len(left) - 1,), True, ((-at, 0.0), (-at, first))),
            Piece(right, (0,), False, ((at, 0.0), (at, other))),
        ),
        root=(0.0, face if bevelled else thin),
        bisector_deg=90.0,
        axis_deg=90.0 + lean_deg(first, other),
        face_deg=0.0 if other <= first else 180.0,
        bead=bead,
        backing=(backing,),
        gap=((-half, 0.0), (half, 0.0)) if gap > 0 else None,
    )


def _fillet_bead(leg_x: float, leg_y: float, first: float, other: float) -> Outline:
    into = 0.25 * min(first, other)
    return (
        *bulge((leg_x, 0.0), (0.0, leg_y), -0.12 * min(leg_x, leg_y)),
        (-into, 0.55 * leg_y), (-into, -0.6 * into), (-0.6 * into, -into), (0.55 * leg_x, -into),
    )  # fmt: skip


def _tee(first: float, other: float, gap: float, arm: float) -> JointShape:
    return _upright(Joint.TEE, first, other, gap, arm, behind=0.62 * arm)


def _inside_corner(first: float, other: float, gap: float, arm: float) -> JointShape:
    return _upright(Joint.INSIDE_CORNER, first, other, gap, arm, behind=0.0)


def _upright(joint: Joint, first: float, other: float, gap: float, arm: float, behind: float) -> JointShape:
    """A sheet standing on another; the arc works in the right-hand corner."""
    leg = min(max(min(first, other), 1.0), 8.0)
    upright = box(-first, gap, 0.0, gap + arm)
    base = box(-first - behind, -other, arm, 0.0)
    if behind > 0:
        backing = box(-max(8.0, first), -other - BAR_MM, max(8.0, other), -other)
    else:
        backing = box(-first - BAR_MM, -other, -first, 0.5 * arm)
    high, far = gap + 0.82 * arm, 0.82 * arm
    return JointShape(
        joint,
        (
            Piece(upright, (2,), True, ((-first, high), (0.0, high))),
            Piece(base, (1, 3) if behind > 0 else (1,), False, ((far, -other), (far, 0.0))),
        ),
        root=(0.0, 0.0),
        bisector_deg=45.0,
        axis_deg=45.0 + lean_deg(first, other),
        face_deg=0.0,
        bead=_fillet_bead(leg, leg + gap, first, other),
        backing=(backing,),
        gap=((-first / 2.0, 0.0), (-first / 2.0, gap)) if gap > 0 else None,
    )


def _lap(first: float, other: float, gap: float, arm: float) -> JointShape:
    overlap = 0.6 * arm
    upper = box(-arm, gap, 0.0, gap + first)
    lower = box(-overlap, -other, arm, 0.0)
    leg = min(max(min(first, other), 1.0), 8.0)
    at = 0.82 * arm
    return JointShape(
        Joint.LAP,
        (
            Piece(upper, (3,), True, ((-at, gap), (-at, gap + first))),
            Piece(lower, (1,), False, ((at, -other), (at, 0.0))),
        ),
        root=(0.0, 0.0),
        bisector_deg=LAP_AXIS_DEG,
        axis_deg=LAP_AXIS_DEG + lean_deg(first, other),
        face_deg=0.0,
        bead=_fillet_bead(1.15 * leg, min(leg, first) + gap, first, other),
        backing=(box(-0.5 * overlap, -other - BAR_MM, 8.0, -other),),
        gap=((-overlap / 2.0, 0.0), (-overlap / 2.0, gap)) if gap > 0 else None,
    )


def _outside_corner(first: float, other: float, gap: float, arm: float) -> JointShape:
    """Two sheets that touch with their inner edges only; the weld fills the notch between them."""
    apart = gap / 2.0 / 2.0**0.5
    top = tuple((x - apart, y + apart) for x, y in box(-arm, 0.0, 0.0, first))
    side = tuple((x + apart, y - apart) for x, y in box(0.0, -arm, other, 0.0))
    thin = min(first, other)
    into, shoulder = 0.2 * thin, 0.25 * thin
    bead = (
        *bulge((other + apart, -shoulder), (-shoulder, first + apart), -(0.35 * thin + 0.25 * shoulder)),
        (-into, 0.4 * first), (-into, -0.4 * into), (-0.4 * into, -into), (0.4 * other, -into),
    )  # fmt: skip
    bar = max(7.0, 1.6 * thin)
    relief = min(0.6 + 0.2 * thin, 1.4)
    backing = ((-bar, 0.0), (-bar, -bar), (0.0, -bar), (0.0, -relief), (-relief, 0.0))
    at = 0.82 * arm
    return JointShape(
        Joint.OUTSIDE_CORNER,
        (
            Piece(top, (3,), True, ((-at - apart, apart), (-at - apart, first + apart))),
            Piece(side, (0,), False, ((apart, -at - apart), (other + apart, -at - apart))),
        ),
        root=(0.0, 0.0),
        bisector_deg=45.0,
        axis_deg=45.0 + lean_deg(first, other),
        face_deg=180.0,
        bead=bead,
        backing=(tuple((x - apart / 2.0, y - apart / 2.0) for x, y in backing),),
        gap=((-apart, apart), (apart, -apart)) if gap > 0 else None,
    )


def _edge(first: float, other: float, gap: float, arm: float) -> JointShape:
    half = gap / 2.0
    left = box(-half - first, -arm, -half, 0.0)
    right = box(half, -arm, half + other, 0.0)
    both = first + other + gap
    deep = min(0.8 * min(first, other) + 0.3, 4.0)
    bead = (
        *reversed(bulge((-half - first, 0.0), (half + other, 0.0), min(0.18 * both + 0.3, 3.0))),
        *bulge((-half - first, 0.0), (half + other, 0.0), -deep),
    )
    below, foot = -max(1.2 * deep, 1.0), -0.7 * arm
    at = -0.82 * arm
    return JointShape(
        Joint.EDGE,
        (
            Piece(left, (0,), True, ((-half - first, at), (-half, at))),
            Piece(right, (0,), False, ((half, at), (half + other, at))),
        ),
        root=(0.0, 0.0),
        bisector_deg=90.0,
        axis_deg=90.0 + lean_deg(first, other),
        face_deg=0.0 if other <= first else 180.0,
        bead=bead,
        backing=(
            box(-half - first - BAR_MM, foot, -half - first, below),
            box(half + other, foot, half + other + BAR_MM, below),
        ),
        gap=((-half, at * 0.8), (half, at * 0.8)) if gap > 0 else None,
    )


def _plug(first: float, other: float, gap: float, hole: float, arm: float) -> JointShape:
    arm = max(arm, hole / 2.0 + 5.0)
    half, top = hole / 2.0, gap + first
    left = box(-arm, gap, -half, top)
    right = box(half, gap, arm, top)
    lower = box(-arm, -other, arm, 0.0)
    rim = min(0.5 * first, 1.0)
    bead = (
        *reversed(bulge((-half - rim, top), (half + rim, top), min(0.08 * hole + 0.2, 1.2))),
        (-half - 0.3 * rim, gap),
        *bulge((-0.85 * half, 0.0), (0.85 * half, 0.0), -0.45 * other),
        (half + 0.3 * rim, gap),
    )
    at, bar = 0.86 * arm, max(8.0, hole)
    return JointShape(
        Joint.PLUG,
        (
            Piece(left, (3,), True, ((-at, gap), (-at, top))),
            Piece(right, (1,), True, ((at, gap), (at, top))),
            Piece(lower, (1, 3), False, ((at, -other), (at, 0.0))),
        ),
        root=(0.0, 0.0),
        bisector_deg=90.0,
        axis_deg=90.0,
        face_deg=0.0,
        bead=bead,
        backing=(box(-bar, -other - BAR_MM, bar, -other),),
        gap=((-half - 3.0, 0.0), (-half - 3.0, gap)) if gap > 0 else None,
        hole=((-half, top), (half, top)),
    )


_MAKERS: dict[Joint, Callable[[float, float, float, float], JointShape]] = {
    Joint.TEE: _tee,
    Joint.LAP: _lap,
    Joint.OUTSIDE_CORNER: _outside_corner,
    Joint.INSIDE_CORNER: _inside_corner,
    Joint.EDGE: _edge,
}
