"""TIG torch and MIG gun as point lists in millimetres; no Qt.

Parts are made lying along +y from the point the arc strikes, then carried to root and axis.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from math import radians, tan

from welds.gui.drawing.geometry import Outline, Point, box
from welds.gui.drawing.placing import turn

CUP_WALL_MM = 1.7
NOZZLE_WALL_MM = 1.8
CLEAR_MM = 0.4


@dataclass(frozen=True, slots=True)
class Torch:
    """Parts by name, each one or more outlines; distances are along the axis from the struck point.

    `mouth_mm` is where cup or nozzle ends as drawn; `is_moved_back` says that it would touch metal at
    the stick-out given. `end_mm` is where tungsten or wire ends, `tube_end_mm` where the contact tip does.
    """

    parts: Mapping[str, tuple[Outline, ...]]
    end_mm: float
    mouth_mm: float
    top_mm: float
    outer_radius_mm: float
    is_moved_back: bool
    tube_end_mm: float = 0.0


def tig_torch(
    tungsten_mm: float,
    tip_angle_deg: float,
    tip_flat_mm: float,
    bore_mm: float,
    stick_out_mm: float,
    arc_mm: float,
    arc_spread_deg: float,
    has_gas_lens: bool,
    least_mouth_mm: float = 0.0,
) -> Torch:
    """Return the torch with its tungsten `arc_mm` off the work; the cup is kept `least_mouth_mm` away."""
    radius = bore_mm / 2.0
    outer = radius + CUP_WALL_MM
    mouth = max(arc_mm + stick_out_mm, least_mouth_mm)
    top = mouth + max(11.0, 1.1 * bore_mm)
    rod = tungsten_mm / 2.0
    flat = min(tip_flat_mm / 2.0, rod)
    taper = (rod - flat) / tan(radians(tip_angle_deg / 2.0))
    spread = arc_mm * tan(radians(arc_spread_deg / 2.0))
    parts: dict[str, tuple[Outline, ...]] = {
        "arc": (((-flat, arc_mm), (flat, arc_mm), (flat + spread, 0.0), (-flat - spread, 0.0)),),
        "tungsten": (
            ((-flat, arc_mm), (flat, arc_mm), (rod, arc_mm + taper), (rod, top), (-rod, top),
             (-rod, arc_mm + taper)),
        ),
        "cup": (
            ((-radius, mouth), (-radius, top), (-outer - 0.4, top), (-outer, mouth)),
            ((radius, mouth), (outer, mouth), (outer + 0.4, top), (radius, top)),
        ),
    }  # fmt: skip
    if has_gas_lens:
        low = mouth + max(2.5, 0.2 * bore_mm)
        parts["lens"] = (box(-radius, low, radius, low + 3.0),)
        parts["body"] = (
            box(-radius, low + 3.0, -rod, top),
            box(rod, low + 3.0, radius, top),
        )
    else:
        low = mouth + 4.0
        collet = min(rod + 1.8, radius)
        parts["body"] = (box(-collet, low, -rod, top), box(rod, low, collet, top))
    return Torch(parts, arc_mm, mouth, top, outer, least_mouth_mm > arc_mm + stick_out_mm)


def mig_gun(
    wire_mm: float,
    bore_mm: float,
    tip_to_work_mm: float,
    arc_mm: float,
    arc_spread_deg: float,
    tip_recess_mm: float,
    least_mouth_mm: float = 0.0,
) -> Torch:
    """Return the gun with its contact tip `tip_to_work_mm` off the work.

    A nozzle that would touch metal is drawn further back, so that the contact tip stands proud of it.
    """
    radius = bore_mm / 2.0
    outer = radius + NOZZLE_WALL_MM
    wanted = tip_to_work_mm - tip_recess_mm
    mouth = max(wanted, least_mouth_mm)
    top = max(mouth, tip_to_work_mm) + 12.0
    wire, tube = wire_mm / 2.0, 3.2
    spread = arc_mm * tan(radians(arc_spread_deg / 2.0))
    low = tip_to_work_mm
    parts: dict[str, tuple[Outline, ...]] = {
        "arc": (((-wire, arc_mm), (wire, arc_mm), (wire + spread, 0.0), (-wire - spread, 0.0)),),
        "wire": (box(-wire, arc_mm, wire, top),),
        "contact": (
            ((-wire, low), (-wire, top), (-tube, top), (-tube, low + 1.5), (-tube + 1.0, low)),
            ((wire, low), (tube - 1.0, low), (tube, low + 1.5), (tube, top), (wire, top)),
        ),
        "nozzle": (
            ((-radius, mouth), (-radius - 0.8, top), (-outer - 1.4, top), (-outer, mouth)),
            ((radius, mouth), (outer, mouth), (outer + 1.4, top), (radius + 0.8, top)),
        ),
    }
    return Torch(parts, arc_mm, mouth, top, outer, least_mouth_mm > wanted, low)


@dataclass(frozen=True, slots=True)
class Pose:
    """Where a torch is: the point it works on, and the direction it lies in from there."""

    root: Point
    axis_deg: float

    def carried(self, outline: Outline) -> Outline:
        """Return a part carried from its own frame to the root, lying along the axis."""
        points = (turn(point, self.axis_deg - 90.0) for point in outline)
        return tuple((self.root[0] + x, self.root[1] + y) for x, y in points)

    def along(self, distance: float, aside: float = 0.0) -> Point:
        """Return the point that far from the root along the axis, and aside of it to the right."""
        return self.carried(((aside, distance),))[0]
