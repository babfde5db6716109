"""The view along the weld as point lists: metal, bead, torch axis, rod and way of travel; no Qt."""

from collections.abc import Callable
from dataclasses import dataclass
from math import cos, radians, sin

from welds.advice.request import Joint, Process
from welds.gui.drawing.geometry import Mark, Outline, Point, box
from welds.gui.drawing.scene import ROD_ANGLE_DEG, JointScene
from welds.gui.drawing.torch import Pose

ARM_MM = 14.0
ROD_MM = 16.0
RIPPLE_MM = 1.6
_STANDING = frozenset({Joint.TEE, Joint.INSIDE_CORNER})


@dataclass(frozen=True, slots=True)
class SideShape:
    """Everything placed for the position. `behind` is the sheet that stands behind the plane, if any."""

    plate: Outline
    behind: Outline | None
    bead: tuple[Outline, ...]
    pose: Pose
    square_deg: float
    rod: Mark | None
    travel: Mark

    @property
    def is_level(self) -> bool:
        """True where travel goes level, not up or down."""
        return self.travel[0][1] == self.travel[1][1]

    @property
    def is_upright(self) -> bool:
        """True where the torch is above the metal."""
        return self.is_level and self.square_deg > 0


def side_shape(scene: JointScene) -> SideShape:
    """Return the view with travel to the right; PF turns travel upwards, PG down; PE and PD hang it."""
    thick = scene.other_thickness_mm
    behind = None
    if scene.joint in _STANDING:
        behind = box(-ARM_MM, 0.0, ARM_MM, 7.0)
    elif scene.joint is Joint.LAP:
        behind = box(-ARM_MM, 0.0, ARM_MM, min(scene.thickness_mm, 7.0))
    rise = min(0.5 + 0.15 * thick, 1.3)
    below = -thick - 3.0
    move, angle = _way(scene.position)
    return SideShape(
        plate=_all(box(-ARM_MM, -thick, ARM_MM, 0.0), move),
        behind=_all(behind, move) if behind else None,
        bead=tuple(_all(ripple, move) for ripple in _ripples(rise)),
        pose=Pose(move((0.0, 0.0)), angle(90.0 + scene.travel_lean_deg)),
        square_deg=angle(90.0),
        rod=_rod(rise, move) if scene.process is Process.TIG and scene.filler_mm > 0 else None,
        travel=(move((-7.0, below)), move((7.0, below))),
    )


def _way(position: str) -> tuple[Callable[[Point], Point], Callable[[float], float]]:
    """How points and directions move from the bench picture into the position."""
    if position == "PF":
        return (lambda p: (p[1], p[0])), (lambda a: 90.0 - a)
    if position == "PG":
        return (lambda p: (p[1], -p[0])), (lambda a: a - 90.0)
    if position in {"PE", "PD"}:
        return (lambda p: (p[0], -p[1])), (lambda a: -a)
    return (lambda p: p), (lambda a: a)


def _ripples(rise: float) -> list[Outline]:
    """Half-moons of solidified bead behind the pool, the newest at the right."""
    made = []
    right = 1.4
    while right > -ARM_MM + RIPPLE_MM:
        left = max(right - 2.2 * RIPPLE_MM, -ARM_MM)
        made.append(
            tuple(
                (left + (right - left) * share, rise * (4.0 * share * (1.0 - share)) ** 0.5)
                for share in (step / 10.0 for step in range(11))
            )
        )
        right -= RIPPLE_MM
    return list(reversed(made))


def _rod(rise: float, move: Callable[[Point], Point]) -> Mark:
    tip = (2.0, rise * 0.6)
    along = (cos(radians(ROD_ANGLE_DEG)), sin(radians(ROD_ANGLE_DEG)))
    return move(tip), move((tip[0] + ROD_MM * along[0], tip[1] + ROD_MM * along[1]))


def _all(outline: Outline, move: Callable[[Point], Point]) -> Outline:
    return tuple(move(point) for point in outline)
