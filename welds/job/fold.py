"""Folding a flat back: the section that comes out, built from the marks on the flat alone."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import cos, degrees, pi, sin

from welds.job.blank import Blank, Dimensions

Point = tuple[float, float]
_STEP_RAD = pi / 36.0


@dataclass(frozen=True, slots=True)
class Straight:
    """A straight run: where its lower face begins and ends, and its direction in radians."""

    start: Point
    end: Point
    heading: float


@dataclass(frozen=True, slots=True)
class Curve:
    """A bend: centre, radius of the lower face, and the angle turned (positive turns up)."""

    centre: Point
    lower_mm: float
    turned: float


@dataclass(frozen=True, slots=True)
class Section:
    """The folded part seen from its end; `straights` and `curves` alternate."""

    thickness_mm: float
    straights: tuple[Straight, ...]
    curves: tuple[Curve, ...]


def fold(blank: Blank) -> Section:
    """Walk along the flat and turn wherever a bend is marked."""
    thickness = blank.part.thickness_mm
    at, heading, position = (0.0, 0.0), 0.0, 0.0
    straights, curves = [], []
    for line in blank.lines:
        end = _ahead(at, heading, line.start_mm - position)
        straights.append(Straight(at, end, heading))
        bend = line.bend
        angle = line.allowance_mm / (bend.radius_mm + line.k * thickness)
        turned = angle if bend.is_up else -angle
        offset = thickness + bend.radius_mm if bend.is_up else -bend.radius_mm
        centre = _ahead(end, heading + pi / 2.0, offset)
        curves.append(Curve(centre, abs(offset), turned))
        at = _turned(end, centre, turned)
        heading += turned
        position = line.start_mm + line.allowance_mm
    straights.append(Straight(at, _ahead(at, heading, blank.length_mm - position), heading))
    return Section(thickness, tuple(straights), tuple(curves))


def measured_legs(section: Section, dimensions: Dimensions) -> tuple[float, ...]:
    """Return the legs as they would be measured on the folded part."""
    legs = []
    for number, run in enumerate(section.straights):
        before = _reach(section, number, number - 1, dimensions) if number else run.start
        is_last = number == len(section.straights) - 1
        after = run.end if is_last else _reach(section, number, number, dimensions)
        legs.append(_along(run, after) - _along(run, before))
    return tuple(legs)


def measured_angles(section: Section) -> tuple[float, ...]:
    """Return the angles turned through, in degrees."""
    return tuple(degrees(abs(curve.turned)) for curve in section.curves)


def outline(section: Section) -> tuple[Point, ...]:
    """Return both faces as one closed line, bends drawn in short steps."""
    lower = list(_face(section, 0.0))
    upper = list(_face(section, section.thickness_mm))
    return (*lower, *reversed(upper))


def _face(section: Section, above: float) -> Iterator[Point]:
    for number, run in enumerate(section.straights):
        across = run.heading + pi / 2.0
        yield _ahead(run.start, across, above)
        end = _ahead(run.end, across, above)
        yield end
        if number < len(section.curves):
            curve = section.curves[number]
            steps = max(2, round(abs(curve.turned) / _STEP_RAD))
            for step in range(1, steps):
                yield _turned(end, curve.centre, curve.turned * step / steps)


def _reach(section: Section, leg: int, bend: int, dimensions: Dimensions) -> Point:
    """Return the point that the dimension of a leg goes to at one of its bends."""
    curve, run = section.curves[bend], section.straights[leg]
    is_up = curve.turned > 0.0
    if dimensions is Dimensions.OVERALL and abs(curve.turned) > pi / 2.0:
        outside = curve.lower_mm if is_up else curve.lower_mm + section.thickness_mm
        return _ahead(curve.centre, run.heading, outside if leg == bend else -outside)
    is_lower_face = is_up is not (dimensions is Dimensions.INSIDE)
    above = 0.0 if is_lower_face else section.thickness_mm
    first, second = section.straights[bend], section.straights[bend + 1]
    return _crossing(first, second, above)


def _crossing(first: Straight, second: Straight, above: float) -> Point:
    a, b = (_ahead(run.end, run.heading + pi / 2.0, above) for run in (first, second))
    ux, uy, vx, vy = cos(first.heading), sin(first.heading), cos(second.heading), sin(second.heading)
    distance = ((b[0] - a[0]) * vy - (b[1] - a[1]) * vx) / (ux * vy - uy * vx)
    return _ahead(a, first.heading, distance)


def _along(run: Straight, point: Point) -> float:
    return (point[0] - run.start[0]) * cos(run.heading) + (point[1] - run.start[1]) * sin(run.heading)


def _ahead(point: Point, heading: float, distance: float) -> Point:
    return point[0] + distance * cos(heading), point[1] + distance * sin(heading)


def _turned(point: Point, centre: Point, angle: float) -> Point:
    x, y = point[0] - centre[0], point[1] - centre[1]
    return centre[0] + x * cos(angle) - y * sin(angle), centre[1] + x * sin(angle) + y * cos(angle)
