"""The cut across the weld: sheets, backing, torch and arc, to one scale, with dimensions and labels."""

from collections.abc import Iterable
from math import atan2, degrees, dist

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from welds.advice.request import Joint
from welds.gui.drawing.callouts import Picture, callouts, points, remarks
from welds.gui.drawing.geometry import JointShape, Outline, Piece
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.labels import Lettering, paint_key, paint_labels, write
from welds.gui.drawing.placing import bounds
from welds.gui.drawing.scene import JointScene, shape_of, torch_of
from welds.gui.drawing.strokes import (
    NO_BRUSH,
    View,
    dashes,
    dimension,
    dots,
    fill,
    hatch,
    line,
    pen,
    polygon,
    sheet,
    text_font,
)
from welds.gui.drawing.torch import Pose, Torch
from welds.quantities.units import Units

MARGIN_PX = 10.0
LABELS_FROM = (280.0, 220.0)
LEADERS_SHARE = 0.38
"""Leaders are given up for a numbered key when they leave the drawing less than this of the width."""
KEY_FROM = 1.15
"""And when the place is tall enough for a key: height over width."""
TOP_MM = 2.0
LEADER_PX = 13.0
SCALE_BAR_PX = 112.0
_BARS = {
    Units.METRIC: ((2.0, "2 mm"), (5.0, "5 mm"), (10.0, "10 mm"), (20.0, "20 mm"), (50.0, "50 mm")),
    Units.INCH: ((3.175, "1/8 in"), (6.35, "1/4 in"), (12.7, "1/2 in"), (25.4, "1 in"), (50.8, "2 in")),
}


def paint_section(painter: QPainter, area: QRectF, scene: JointScene, ink: Ink) -> float:
    """Draw the cross-section into the area and return its scale; a small one goes without words."""
    shape = shape_of(scene)
    torch = torch_of(scene, shape)
    box = bounds(_everything(scene, shape, torch))
    lettering = Lettering(painter, ink)
    inner = area.adjusted(MARGIN_PX, MARGIN_PX, -MARGIN_PX, -MARGIN_PX)
    if area.width() < LABELS_FROM[0] or area.height() < LABELS_FROM[1]:
        picture = Picture(scene, shape, torch, View.fitting(box, inner))
        _paint_metal(painter, picture, ink)
        return picture.view.scale
    rough = Picture(scene, shape, torch, View.fitting(box, inner))
    caption = _caption_lines(lettering, rough, inner.width())
    labels = callouts(rough)
    left = lettering.column(label for label in labels if label.is_left)
    right = lettering.column(label for label in labels if not label.is_left)
    foot = len(caption) * lettering.line_px + 4.0
    words = inner.adjusted(0.0, 0.0, 0.0, -foot)
    room = words.adjusted(left + LEADER_PX, 0.0, -right - LEADER_PX, 0.0)
    needs_key = room.width() < LEADERS_SHARE * inner.width() and inner.height() > KEY_FROM * inner.width()
    if needs_key:
        key_height = lettering.key_height(labels, words.width())
        room = words.adjusted(0.0, 0.0, 0.0, -key_height - 6.0)
    picture = Picture(scene, shape, torch, View.fitting(box, room))
    _paint_metal(painter, picture, ink)
    _paint_dimensions(painter, picture, ink)
    labels = callouts(picture)
    if needs_key:
        paint_key(lettering, labels, QRectF(words.left(), room.bottom() + 6.0, words.width(), key_height))
    else:
        paint_labels(lettering, labels, words, is_left=True)
        paint_labels(lettering, labels, words, is_left=False)
    _paint_caption(
        lettering, QRectF(inner.left(), inner.bottom() - foot + 4.0, inner.width(), foot - 4.0), caption
    )
    _paint_scale_bar(lettering, inner, picture)
    return picture.view.scale


def paint_sheets(painter: QPainter, shape: JointShape, view: View, ink: Ink) -> None:
    """Draw the pieces: fill, hatching that differs from piece to piece, outline."""
    for piece in shape.pieces:
        outline = view.outline(piece.outline)
        colour = ink.first if piece.is_first else ink.other
        sheet(
            painter, outline, piece.breaks, colour, pen(ink.line, ink.outline_px), pen(ink.line, ink.thin_px)
        )
        hatch(painter, outline, _hatch_deg(shape, piece), 8.0, pen(ink.hatch, 0.8))


def _hatch_deg(shape: JointShape, piece: Piece) -> float:
    """Half a right angle off the piece's own length; the other piece is hatched the other way."""
    first = next(candidate for candidate in shape.pieces if candidate.is_first)
    own, theirs = _run_deg(piece) + 45.0, _run_deg(first) + 45.0
    return own + 90.0 if not piece.is_first and abs(own - theirs) % 180.0 < 1.0 else own


def _run_deg(piece: Piece) -> float:
    """Direction of the piece's longest edge in the painter's frame."""
    edges = zip(piece.outline, piece.outline[1:] + piece.outline[:1], strict=True)
    start, end = max(edges, key=lambda edge: dist(*edge))
    return round(-degrees(atan2(end[1] - start[1], end[0] - start[0])), 3) % 180.0


def paint_bar(painter: QPainter, outline: Outline, ink: Ink) -> None:
    """Draw a copper bar: filled and hatched both ways."""
    fill(painter, outline, ink.copper, pen(ink.line, ink.thin_px))
    for angle in (20.0, -20.0):
        hatch(painter, outline, angle, 6.0, pen(ink.line if ink.is_print else ink.hatch, 0.6))


def paint_torch(painter: QPainter, torch: Torch, pose: Pose, view: View, ink: Ink) -> None:
    """Draw cup or nozzle and what is in it; the arc is drawn apart, beneath the metal."""

    def parts(name: str) -> list[Outline]:
        return _placed(torch, name, pose, view)

    thin = pen(ink.line, ink.thin_px)
    firm = pen(ink.line, ink.outline_px)
    for outline in parts("body"):
        fill(painter, outline, ink.ceramic if not ink.is_print else ink.ground, thin)
    for outline in parts("lens"):
        fill(painter, outline, ink.ground, thin)
        for angle in (pose.axis_deg, pose.axis_deg + 90.0):
            hatch(painter, outline, -angle, 3.6, pen(ink.line, 0.7))
    for outline in parts("contact"):
        fill(painter, outline, ink.copper, thin)
    for outline in (*parts("cup"), *parts("nozzle")):
        fill(painter, outline, ink.ceramic, firm)
        if ink.is_print:
            hatch(painter, outline, 60.0, 4.0, pen(ink.line, 0.5))
    for outline in parts("tungsten"):
        fill(painter, outline, ink.tungsten, pen(ink.line, 0.8))
    for outline in parts("wire"):
        fill(painter, outline, ink.rod, pen(ink.line, 0.8))


def paint_arc(painter: QPainter, torch: Torch, pose: Pose, view: View, ink: Ink) -> None:
    """Draw the cone of the arc: a warm wedge with a pale core, rays alone in print."""
    for outline in _placed(torch, "arc", pose, view):
        near_left, near_right, far_right, far_left = outline
        fill(painter, outline, ink.arc, dashes(ink.line, 0.8, 2.0, 2.0) if ink.is_print else None)
        if not ink.is_print:
            core = (
                near_left,
                near_right,
                _between(far_left, far_right, 0.66),
                _between(far_left, far_right, 0.34),
            )
            fill(painter, core, ink.arc_core)
        for share in (0.0, 0.25, 0.5, 0.75, 1.0):
            start, end = _between(near_left, near_right, share), _between(far_left, far_right, share)
            ray = pen(ink.line, 0.8) if ink.is_print else pen(ink.weld, 0.6)
            line(painter, QPointF(*start), QPointF(*end), ray)


def _placed(torch: Torch, name: str, pose: Pose, view: View) -> list[Outline]:
    return [view.outline(pose.carried(part)) for part in torch.parts.get(name, ())]


def _paint_metal(painter: QPainter, picture: Picture, ink: Ink) -> None:
    scene, shape, view = picture.scene, picture.shape, picture.view
    for part in _backing(scene, shape):
        outline = view.outline(part)
        if scene.has_bar:
            paint_bar(painter, outline, ink)
        else:
            dots(painter, outline, 7.0, ink.gas)
    paint_arc(painter, picture.torch, picture.pose, view, ink)
    paint_sheets(painter, shape, view, ink)
    painter.setBrush(NO_BRUSH)
    painter.setPen(dashes(ink.weld, 1.4, 3.0, 2.0))
    painter.drawPolygon(polygon(view.outline(shape.bead)))
    axis = dashes(ink.quiet, ink.thin_px * 0.8, 9.0, 3.0, 2.0, 3.0)
    line(painter, view.at(shape.root), view.at(picture.pose.along(picture.torch.top_mm + TOP_MM)), axis)
    paint_torch(painter, picture.torch, picture.pose, view, ink)


def _paint_dimensions(painter: QPainter, picture: Picture, ink: Ink) -> None:
    shape, view = picture.shape, picture.view
    marks = [*picture.torch_marks, *(piece.thickness for piece in picture.measured_pieces)]
    if shape.gap:
        marks.append(shape.gap)
    if shape.hole:
        marks.append(picture.hole_mark)
        for edge, end in zip(shape.hole, picture.hole_mark, strict=True):
            line(painter, view.at(edge), view.at(end), dashes(ink.quiet, ink.thin_px * 0.8, 4.0, 3.0))
    for mark in marks:
        dimension(painter, *points(mark, view), ink)
    if shape.joint not in {Joint.OUTSIDE_CORNER, Joint.EDGE}:
        _paint_angle(painter, picture, ink)


def _paint_angle(painter: QPainter, picture: Picture, ink: Ink) -> None:
    """Draw the arc of a circle from the face to the torch."""
    shape = picture.shape
    sweep = (shape.axis_deg - shape.face_deg + 180.0) % 360.0 - 180.0
    radius = picture.view.scale * 0.82 * picture.torch.mouth_mm
    root = picture.view.at(shape.root)
    painter.setBrush(NO_BRUSH)
    painter.setPen(pen(ink.quiet, ink.thin_px))
    box = QRectF(root.x() - radius, root.y() - radius, 2 * radius, 2 * radius)
    painter.drawArc(box, round(shape.face_deg * 16), round(sweep * 16))


def _backing(scene: JointScene, shape: JointShape) -> tuple[Outline, ...]:
    return shape.backing if scene.has_bar or scene.has_purge else ()


def _everything(scene: JointScene, shape: JointShape, torch: Torch) -> Iterable[Outline]:
    yield from (piece.outline for piece in shape.pieces)
    yield from _backing(scene, shape)
    pose = Pose(shape.root, shape.axis_deg)
    for parts in torch.parts.values():
        for part in parts:
            yield pose.carried(part)
    yield (pose.along(torch.top_mm + TOP_MM),)
    if shape.hole:
        yield Picture(scene, shape, torch, View(1.0, 0.0, 0.0)).hole_mark


def _between(start: tuple[float, float], end: tuple[float, float], share: float) -> tuple[float, float]:
    return (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))


def _caption_lines(lettering: Lettering, picture: Picture, width: float) -> list[str]:
    """The remarks in lines, the last of them beside the scale bar."""
    metrics = QFontMetricsF(text_font(lettering.painter, lettering.small_px))
    head, *rest = remarks(picture)
    lines: list[str] = []
    for remark, room in [*((remark, width) for remark in rest), (head, width - SCALE_BAR_PX)]:
        current = ""
        for part in remark.split(" "):
            longer = f"{current} {part}".strip()
            if current and metrics.horizontalAdvance(longer) > room:
                lines.append(current)
                current = part
            else:
                current = longer
        lines.append(current)
    return lines


def _paint_caption(lettering: Lettering, box: QRectF, lines: list[str]) -> None:
    font = text_font(lettering.painter, lettering.small_px)
    for number, text in enumerate(lines):
        row = QRectF(box.left(), box.top() + number * lettering.line_px, box.width(), lettering.line_px)
        write(lettering.painter, row, text, font, lettering.ink.quiet, Qt.AlignmentFlag.AlignLeft)


def _paint_scale_bar(lettering: Lettering, inner: QRectF, picture: Picture) -> None:
    painter, ink = lettering.painter, lettering.ink
    lengths = _BARS[picture.scene.units]
    mm, text = max((entry for entry in lengths if entry[0] * picture.view.scale <= 56.0), default=lengths[0])
    font = text_font(painter, lettering.small_px)
    width = QFontMetricsF(font).horizontalAdvance(text) + 2.0
    level = inner.bottom() - lettering.line_px / 2.0
    right = inner.right() - width - 5.0
    start, end = QPointF(right - mm * picture.view.scale, level), QPointF(right, level)
    line(painter, start, end, pen(ink.quiet, ink.outline_px))
    for edge in (start, end):
        line(painter, edge + QPointF(0.0, -3.0), edge + QPointF(0.0, 3.0), pen(ink.quiet, ink.outline_px))
    box = QRectF(right + 5.0, inner.bottom() - lettering.line_px, width, lettering.line_px)
    write(painter, box, text, font, ink.quiet, Qt.AlignmentFlag.AlignLeft)
