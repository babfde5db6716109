"""The pictures of a joint: the whole set-up, and the small plain section for picking a joint."""

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter

from welds.advice.request import Joint
from welds.gui.drawing.geometry import Outline, joint_shape
from welds.gui.drawing.ink import Ink
from welds.gui.drawing.placing import bounds
from welds.gui.drawing.scene import JointScene
from welds.gui.drawing.section import paint_section
from welds.gui.drawing.side import paint_side
from welds.gui.drawing.strokes import View, fill, hatch, line, pen, sheet

LEAST_PX = 24.0
TILE_MM = 3.0
"""The thicker sheet of a tile, whatever its real size: all tiles are then equally legible."""
TILE_LEAST_MM = 0.75
SIDE_BY_SIDE_FROM_PX = (520.0, 220.0)
STACKED_FROM_PX = (300.0, 520.0)


def paint_joint(painter: QPainter, rect: QRectF, scene: JointScene, ink: Ink) -> None:
    """Draw the set-up into the rectangle, nothing outside it.

    A wide rectangle shows the cut across the weld with the view along it at the right, a tall one beneath;
    a small one shows the cut alone, a very small one without words.
    """
    if rect.width() < LEAST_PX or rect.height() < LEAST_PX:
        return
    painter.save()
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(rect, QColor(ink.ground))
        section, side = _panels(rect) if scene.joint is not Joint.PLUG else (rect, None)
        scale = paint_section(painter, section, scene, ink)
        if side is not None:
            _divide(painter, section, side, ink)
            paint_side(painter, side, scene, scale, ink)
    finally:
        painter.restore()


def paint_joint_tile(
    painter: QPainter, rect: QRectF, joint: Joint, first_mm: float, other_mm: float, ink: Ink
) -> None:
    """Draw the plain cross-section with its weld, legible down to 72 by 56 pixels.

    The ratio of the thicknesses is kept as far as 1 to 4.
    """
    if rect.width() < LEAST_PX or rect.height() < LEAST_PX:
        return
    painter.save()
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(rect, QColor(ink.ground))
        _paint_tile(painter, rect, joint, first_mm, other_mm, ink)
    finally:
        painter.restore()


def _panels(rect: QRectF) -> tuple[QRectF, QRectF | None]:
    if rect.width() >= SIDE_BY_SIDE_FROM_PX[0] and rect.height() >= SIDE_BY_SIDE_FROM_PX[1]:
        across = rect.width() * 0.6
        return (
            QRectF(rect.left(), rect.top(), across, rect.height()),
            QRectF(rect.left() + across, rect.top(), rect.width() - across, rect.height()),
        )
    if rect.width() >= STACKED_FROM_PX[0] and rect.height() >= STACKED_FROM_PX[1]:
        down = rect.height() * 0.6
        return (
            QRectF(rect.left(), rect.top(), rect.width(), down),
            QRectF(rect.left(), rect.top() + down, rect.width(), rect.height() - down),
        )
    return rect, None


def _divide(painter: QPainter, section: QRectF, side: QRectF, ink: Ink) -> None:
    thin = pen(ink.hatch, ink.thin_px * 0.7)
    if side.left() > section.left():
        line(painter, side.topLeft() + QPointF(0.0, 14.0), side.bottomLeft() - QPointF(0.0, 14.0), thin)
    else:
        line(painter, side.topLeft() + QPointF(14.0, 0.0), side.topRight() - QPointF(14.0, 0.0), thin)


def _paint_tile(painter: QPainter, rect: QRectF, joint: Joint, first: float, other: float, ink: Ink) -> None:
    worth = TILE_MM / max(first, other)
    upper, lower = (max(mm * worth, TILE_LEAST_MM) for mm in (first, other))
    hole = 2.2 * upper if joint is Joint.PLUG else 0.0
    shape = joint_shape(joint, upper, lower, 0.0, hole, 2.6 * TILE_MM)
    outlines: list[Outline] = [piece.outline for piece in shape.pieces]
    view = View.fitting(bounds([*outlines, shape.bead]), rect.adjusted(6.0, 6.0, -6.0, -6.0))
    for piece in shape.pieces:
        outline = view.outline(piece.outline)
        sheet(painter, outline, (), ink.first if piece.is_first else ink.other,
              pen(ink.line, ink.outline_px * 0.8), pen(ink.line, ink.thin_px))  # fmt: skip
        if ink.is_print:
            hatch(painter, outline, 45.0 if piece.is_first else -45.0, 5.0, pen(ink.hatch, 0.6))
    fill(painter, view.outline(shape.bead), ink.weld, pen(ink.line, ink.thin_px * 0.8))
