"""Turning a joint into its welding position, and keeping the torch out of the metal; no Qt."""

from collections.abc import Callable, Iterable
from dataclasses import replace
from math import cos, radians, sin

from welds.advice.request import Joint
from welds.gui.drawing.geometry import JointShape, Mark, Outline, Point

_TILTED_WHEN_FLAT = frozenset({Joint.TEE, Joint.INSIDE_CORNER, Joint.OUTSIDE_CORNER})


def turn(point: Point, angle_deg: float) -> Point:
    """Return the point turned anticlockwise about the origin."""
    c, s = cos(radians(angle_deg)), sin(radians(angle_deg))
    return (point[0] * c - point[1] * s, point[0] * s + point[1] * c)


def turned(shape: JointShape, angle_deg: float) -> JointShape:
    """Return the joint turned anticlockwise about the origin."""
    if angle_deg == 0:
        return shape
    moved = _moved(shape, lambda point: turn(point, angle_deg))
    return replace(
        moved,
        bisector_deg=shape.bisector_deg + angle_deg,
        axis_deg=shape.axis_deg + angle_deg,
        face_deg=shape.face_deg + angle_deg,
    )


def upside_down(shape: JointShape) -> JointShape:
    """Return the joint mirrored top to bottom, so that a torch from above comes from beneath."""
    moved = _moved(shape, lambda point: (point[0], -point[1]))
    return replace(
        moved, bisector_deg=-shape.bisector_deg, axis_deg=-shape.axis_deg, face_deg=-shape.face_deg
    )


def placed(shape: JointShape, position: str) -> JointShape:
    """Return the joint as it stands in an ISO 6947 position.

    PA brings the bisector upright (a lap stays flat on the bench), PC lays it level, PE and PD come from
    beneath. PF, PG and whatever is not named here keep the bench picture: vertical welds are seen from above.
    """
    flat = position in {"PA", "PB"}
    if position == "PA" and shape.joint in _TILTED_WHEN_FLAT:
        return turned(shape, 90.0 - shape.bisector_deg)
    if flat:
        return shape
    if position == "PC":
        return turned(shape, -shape.bisector_deg)
    if position == "PE" and shape.joint in _TILTED_WHEN_FLAT:
        return turned(shape, -90.0 - shape.bisector_deg)
    if position in {"PE", "PD"}:
        return upside_down(shape)
    return shape


def least_distance(outlines: Iterable[Outline], root: Point, axis_deg: float, radius_mm: float) -> float:
    """Return how far from the root, along the axis, a blunt end of this radius first touches metal."""
    furthest = 0.0
    for outline in outlines:
        ahead = [turn((x - root[0], y - root[1]), -axis_deg) for x, y in outline]
        for (s1, l1), (s2, l2) in zip(ahead, ahead[1:] + ahead[:1], strict=True):
            low, high = _share_within(l1, l2, radius_mm)
            if low <= high:
                furthest = max(furthest, s1 + low * (s2 - s1), s1 + high * (s2 - s1))
    return furthest


def is_inside(point: Point, outline: Outline) -> bool:
    """Say whether the point lies within the closed outline."""
    x, y = point
    inside = False
    for (x1, y1), (x2, y2) in zip(outline, outline[1:] + outline[:1], strict=True):
        if (y1 > y) != (y2 > y) and x < x1 + (y - y1) * (x2 - x1) / (y2 - y1):
            inside = not inside
    return inside


def bounds(outlines: Iterable[Outline]) -> tuple[float, float, float, float]:
    """Return left, bottom, right, top of everything given."""
    points = [point for outline in outlines for point in outline]
    across, up = [x for x, _ in points], [y for _, y in points]
    return min(across), min(up), max(across), max(up)


def _share_within(start: float, end: float, limit: float) -> tuple[float, float]:
    """The part of the way from start to end (shares 0 to 1) on which the value stays within +-limit."""
    if start == end:
        return (0.0, 1.0) if abs(start) < limit else (1.0, 0.0)
    one, two = sorted(((-limit - start) / (end - start), (limit - start) / (end - start)))
    return max(0.0, one), min(1.0, two)


def _moved(shape: JointShape, move: Callable[[Point], Point]) -> JointShape:
    def mark(ends: Mark) -> Mark:
        return (move(ends[0]), move(ends[1]))

    def outline(points: Outline) -> Outline:
        return tuple(move(point) for point in points)

    return replace(
        shape,
        pieces=tuple(
            replace(piece, outline=outline(piece.outline), thickness=mark(piece.thickness))
            for piece in shape.pieces
        ),
        root=move(shape.root),
        bead=outline(shape.bead),
        backing=tuple(outline(part) for part in shape.backing),
        gap=mark(shape.gap) if shape.gap else None,
        hole=mark(shape.hole) if shape.hole else None,
    )
