"""What is drawn of a joint and its zones, and the outline of the metal that is added to it."""

from dataclasses import dataclass

from welds.advice.request import Joint
from welds.gui.drawing.geometry import JointShape, Outline, box, bulge
from welds.gui.drawing.heat_marks import Line
from welds.physics.deposition import fillet_leg
from welds.quantities.units import Units

USUAL_CAP = (0.3, 0.12)
"""Height of a cap nobody has measured: so many mm, and so much of the thickness."""

USUAL = frozenset({Joint.OUTSIDE_CORNER, Joint.EDGE})
"""Joints whose added metal is always drawn at a usual size."""


@dataclass(frozen=True)
class PieceZones:
    """One piece: closed rings that melt or change, and lines of one temperature."""

    fused: tuple[Line, ...]
    affected: tuple[Line, ...]
    fusion_line: tuple[Line, ...]
    error_lines: tuple[Line, ...]
    isotherms: tuple[tuple[float, tuple[Line, ...]], ...]


@dataclass(frozen=True)
class ZoneScene:
    """A joint with the zones of its first and its other piece; `arm_mm` of sheet is shown to each side."""

    joint: Joint
    first_mm: float
    other_mm: float
    gap_mm: float
    arm_mm: float
    first: PieceZones
    other: PieceZones
    face_width_mm: float
    root_width_mm: float
    added_mm2: float | None = None
    """Section of the added metal where it is known: the wire of a MIG arc."""
    units: Units = Units.METRIC
    kept: "ZoneScene | None" = None

    @property
    def knows_added(self) -> bool:
        """True where the size of the added metal follows from the wire feed."""
        return self.added_mm2 is not None and self.joint not in USUAL


def added_metal(scene: ZoneScene, shape: JointShape) -> tuple[Outline, ...]:
    """Return what is added to the sheets: by its area where that is known, else at a usual size."""
    if scene.joint in USUAL:
        return (shape.bead,)
    if scene.joint is Joint.BUTT:
        return _added_to_butt(scene)
    first, gap, area = scene.first_mm, scene.gap_mm, scene.added_mm2
    leg = min(max(min(first, scene.other_mm), 1.0), 8.0) if area is None else fillet_leg(area)
    rise = min(leg, first) if scene.joint is Joint.LAP else leg
    run = leg * leg / rise
    return ((*bulge((run, 0.0), (0.0, rise + gap), -0.03 * leg), (0.0, 0.0)),)


def _added_to_butt(scene: ZoneScene) -> tuple[Outline, ...]:
    """Return what fills the gap, what stands above the face and what hangs below the root."""
    first, other, gap, area = scene.first_mm, scene.other_mm, scene.gap_mm, scene.added_mm2
    thin, half, root = min(first, other), scene.face_width_mm / 2.0, scene.root_width_mm / 2.0
    if not half:
        return ()
    high = USUAL_CAP[0] + USUAL_CAP[1] * thin
    found = []
    if gap:
        filled = thin if area is None else min(area / gap, thin)
        found.append(box(-gap / 2.0, 0.0, gap / 2.0, filled))
    if area is not None:
        high = 0.75 * max(area - gap * thin, 0.0) / half
    if high:
        found.append(bulge((-half, first), (half, other), min(high, half)))
    if root:
        found.append(bulge((-root, 0.0), (root, 0.0), -min(USUAL_CAP[1] * thin + 0.1, root)))
    return tuple(found)
