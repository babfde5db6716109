"""What the labels of a cross-section say and where their leaders end."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from math import dist

from PySide6.QtCore import QPointF

from welds.advice.request import Joint, Process
from welds.gui.drawing.geometry import BAR_MM, BEVEL_DEG, JointShape, Mark, Piece, Point
from welds.gui.drawing.labels import Label
from welds.gui.drawing.placing import bounds, is_inside
from welds.gui.drawing.scene import JointScene
from welds.gui.drawing.strokes import View
from welds.gui.drawing.torch import Pose, Torch
from welds.gui.drawing.words import position_words, word
from welds.quantities.display import show
from welds.quantities.units import Units

SAME_MM = 0.005
_ANGLE_NAMES = {
    Joint.BUTT: "to_face",
    Joint.TEE: "to_base",
    Joint.LAP: "to_lower",
    Joint.OUTSIDE_CORNER: "at_edge",
    Joint.INSIDE_CORNER: "to_base",
    Joint.EDGE: "to_face",
    Joint.PLUG: "to_face",
}


@dataclass(frozen=True, slots=True)
class Picture:
    """One cross-section with everything placed: what is drawn, and where."""

    scene: JointScene
    shape: JointShape
    torch: Torch
    view: View

    @property
    def pose(self) -> Pose:
        """Where the torch is."""
        return Pose(self.shape.root, self.shape.axis_deg)

    @property
    def measured_pieces(self) -> tuple[Piece, ...]:
        """The pieces whose thickness is dimensioned: one of each, one alone where both are as thick."""
        first = next(piece for piece in self.shape.pieces if piece.is_first)
        other = next(piece for piece in self.shape.pieces if not piece.is_first)
        is_equal = abs(self.scene.thickness_mm - self.scene.other_thickness_mm) < SAME_MM
        return (first,) if is_equal else (first, other)

    @property
    def hole_mark(self) -> Mark:
        """The hole's dimension, beyond the metal on the far side of the torch."""
        half = self.hole_mm / 2.0
        away = -self.scene.other_thickness_mm - 1.8 - (BAR_MM if self.scene.has_bar else 0.0)
        return self.pose.along(away, -half), self.pose.along(away, half)

    @property
    def hole_mm(self) -> float:
        """Diameter of the plug's hole, 0 without one."""
        return dist(*self.shape.hole) if self.shape.hole else 0.0

    @property
    def free_side(self) -> float:
        """+1 or -1: the side of the torch on which dimensions are drawn, clear of metal and angle arc."""
        aside = self.aside_mm
        toward_face = (self.shape.axis_deg - self.shape.face_deg) % 360.0 <= 180.0
        for side in (-1.0, 1.0) if toward_face else (1.0, -1.0):
            middle = self.pose.along(0.6 * self.torch.mouth_mm, side * aside)
            if not any(is_inside(middle, piece.outline) for piece in self.shape.pieces):
                return side
        return 1.0

    @property
    def aside_mm(self) -> float:
        """How far off its axis the torch's dimensions are drawn."""
        core = self.scene.tungsten_mm if self.scene.process is Process.TIG else self.scene.wire_mm
        return core / 2.0 + 1.3

    @property
    def torch_marks(self) -> tuple[Mark, ...]:
        """The chain of dimensions along the torch: arc and stick-out, or tip to work."""
        aside = self.free_side * self.aside_mm
        if self.scene.process is Process.MIG:
            aside = self.free_side * (self.aside_mm + 2.2)
            return ((self.pose.along(0.0, aside), self.pose.along(self.torch.tube_end_mm, aside)),)
        ends = (0.0, self.torch.end_mm, self.torch.mouth_mm)
        return tuple(
            (self.pose.along(start, aside), self.pose.along(end, aside)) for start, end in pairwise(ends)
        )


def length_text(mm: float, kind: str, units: Units) -> str:
    """Return a length as the person reads it, unit included."""
    return str(show(mm, "mm", kind, units))


def callouts(picture: Picture) -> list[Label]:
    """Return every label of the cross-section, half of them on each side."""
    labels = [*_sheet_labels(picture), _angle_label(picture)]
    labels += _gun_labels(picture) if picture.scene.process is Process.MIG else _torch_labels(picture)
    if picture.scene.has_bar or picture.scene.has_purge:
        labels.append(_backing_label(picture))
    return _shared_out(labels)


def remarks(picture: Picture) -> list[str]:
    """Return the sentences under the picture: what it is and what was drawn differently."""
    scene = picture.scene
    position = position_words(scene.position)
    head = f"{word('section')} · {position}"
    if scene.position in {"PF", "PG"}:
        head += f" · {word('from_above')}"
    lines = [head]
    if picture.torch.is_moved_back and scene.process is Process.MIG:
        lines.append(word("nozzle_back"))
    elif picture.torch.is_moved_back:
        drawn = length_text(picture.torch.mouth_mm - picture.torch.end_mm, "stick_out", scene.units)
        given = length_text(scene.stick_out_mm, "stick_out", scene.units)
        if drawn != given:
            lines.append(word("moved_back", drawn=drawn, given=given))
    if abs(picture.shape.lean_deg) >= 1.0:
        lines.append(word("heat_thicker"))
    if scene.joint is Joint.BUTT and scene.is_bevelled:
        lines.append(word("bevelled", angle=round(2 * BEVEL_DEG)))
    return lines


def _label(
    picture: Picture, value: str, name: str, at: Point, weight: int, at_right: Point | None = None
) -> Label:
    right = picture.view.at(at_right) if at_right else None
    return Label(value, name, picture.view.at(at), is_left=False, weight=weight, anchor_right=right)


def _middle(mark: Mark) -> Point:
    return ((mark[0][0] + mark[1][0]) / 2.0, (mark[0][1] + mark[1][1]) / 2.0)


def _sheet_labels(picture: Picture) -> list[Label]:
    scene, shape = picture.scene, picture.shape
    labels = []
    for piece in picture.measured_pieces:
        mm = scene.thickness_mm if piece.is_first else scene.other_thickness_mm
        text = length_text(mm, "thickness", scene.units)
        labels.append(_label(picture, text, word("thickness"), _middle(piece.thickness), 9))
    if shape.gap:
        text = length_text(scene.gap_mm, "gap", scene.units)
        labels.append(_label(picture, text, word("gap"), _middle(shape.gap), 5))
    if shape.hole:
        text = length_text(picture.hole_mm, "plug_hole", scene.units)
        labels.append(_label(picture, text, word("hole"), _middle(picture.hole_mark), 6))
    return labels


def _torch_labels(picture: Picture) -> list[Label]:
    scene, torch = picture.scene, picture.torch
    stick_out = torch.mouth_mm - torch.end_mm
    arc, stick = picture.torch_marks
    deep = (torch.mouth_mm + torch.top_mm) / 2.0
    wall = scene.cup_bore_mm / 2.0 + 0.8
    labels = [
        _label(picture, length_text(scene.stick_out_mm, "stick_out", scene.units), word("stick_out"),
               _middle(stick), 10),
        _label(picture, length_text(scene.arc_mm, "tungsten_diameter", scene.units), word("arc"),
               _middle(arc), 8),
        _label(picture, word("cup_number", number=f"{scene.cup_number:g}"),
               word("cup", size=length_text(scene.cup_bore_mm, "thickness", scene.units)),
               picture.pose.along(deep + 2.0, -wall), 7, picture.pose.along(deep + 2.0, wall)),
        _label(picture, length_text(scene.tungsten_mm, "tungsten_diameter", scene.units),
               word("tungsten", angle=_tip_text(scene)),
               picture.pose.along(torch.end_mm + 0.62 * stick_out), 8),
    ]  # fmt: skip
    if scene.has_gas_lens:
        middle = torch.mouth_mm + max(2.5, 0.2 * scene.cup_bore_mm) + 1.5
        labels.append(_label(picture, word("lens"), "", picture.pose.along(middle, 0.6 * wall), 4))
    return labels


def _tip_text(scene: JointScene) -> str:
    low, high = round(scene.tip_low_deg), round(scene.tip_high_deg)
    return f"{low}" if low == high else word("from_to", low=low, high=high)


def _gun_labels(picture: Picture) -> list[Label]:
    scene, torch = picture.scene, picture.torch
    deep = torch.tube_end_mm + 5.0
    wall = torch.outer_radius_mm - 0.6
    return [
        _label(picture, length_text(scene.tip_to_work_mm, "tip_to_work", scene.units), word("tip_to_work"),
               _middle(picture.torch_marks[0]), 10),
        _label(picture, length_text(scene.wire_mm, "wire_diameter", scene.units), word("wire"),
               picture.pose.along(0.5 * (torch.end_mm + torch.tube_end_mm)), 8),
        _label(picture, word("contact"), "", picture.pose.along(deep, 2.0), 4),
        _label(picture, word("nozzle"), "", picture.pose.along(torch.mouth_mm + 6.0, -wall), 3,
               picture.pose.along(torch.mouth_mm + 6.0, wall)),
    ]  # fmt: skip


def _angle_label(picture: Picture) -> Label:
    shape = picture.shape
    value = word("angle", angle=round(shape.work_angle_deg))
    if shape.joint is Joint.OUTSIDE_CORNER:
        off = round(abs(shape.lean_deg))
        value = word("off_halfway", angle=off) if off else word("halfway")
    place = picture.pose.along(picture.torch.top_mm + 1.5)
    return _label(picture, value, word(_ANGLE_NAMES[shape.joint]), place, 9)


def _backing_label(picture: Picture) -> Label:
    kind = "bar" if picture.scene.has_bar else "purge"
    left, bottom, right, top = bounds(picture.shape.backing[-1:])
    return _label(picture, word(kind), word("behind"), ((left + right) / 2.0, (bottom + top) / 2.0), 6)


def _shared_out(labels: Sequence[Label]) -> list[Label]:
    """The left half of the anchors gets the left column."""
    in_order = sorted(labels, key=lambda label: label.anchor.x())
    half = len(in_order) // 2
    return [
        replace(label, is_left=True)
        if number < half
        else replace(label, is_left=False, anchor=label.anchor_right or label.anchor)
        for number, label in enumerate(in_order)
    ]


def points(mark: Mark, view: View) -> tuple[QPointF, QPointF]:
    """Return both ends of a mark on the painter."""
    return view.at(mark[0]), view.at(mark[1])
