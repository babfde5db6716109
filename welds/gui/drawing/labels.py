"""Words beside a drawing: two columns of labels with leader lines, stacked so that none touch."""

from collections.abc import Collection, Iterable
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter

from welds.gui.drawing.ink import Ink
from welds.gui.drawing.strokes import NO_PEN, line, pen, text_font

GAP_PX = 7.0


@dataclass(frozen=True, slots=True)
class Label:
    """A value with its name above; `weight` decides who stays when there is no room (highest first)."""

    value: str
    name: str
    anchor: QPointF
    is_left: bool
    weight: int = 1
    anchor_right: QPointF | None = None
    """Where the leader ends instead when the label stands at the right."""


@dataclass(frozen=True, slots=True)
class Lettering:
    """Fonts and sizes of one picture's labels."""

    painter: QPainter
    ink: Ink

    @property
    def small_px(self) -> float:
        """Height of names and captions."""
        return max(self.ink.text_px * 0.88, 9.0)

    @property
    def line_px(self) -> float:
        """Height of one line of captions."""
        return QFontMetricsF(text_font(self.painter, self.small_px)).height()

    @property
    def key_row_px(self) -> float:
        """Height of one row of the numbered key."""
        return self.line_px + 4.0

    def key_columns(self, labels: Iterable[Label], width: float) -> int:
        """Return how many columns of the key fit into the width, two or one."""
        name = QFontMetricsF(text_font(self.painter, self.small_px))
        value = QFontMetricsF(text_font(self.painter, self.small_px, bold=True))
        widest = max(
            name.horizontalAdvance(f"{label.name} ") + value.horizontalAdvance(label.value)
            for label in labels
        )
        return 2 if widest + self.key_row_px + 10.0 <= width / 2.0 else 1

    def key_height(self, labels: Collection[Label], width: float) -> float:
        """Return the height of the whole key."""
        return -(-len(labels) // self.key_columns(labels, width)) * self.key_row_px

    def size(self, label: Label) -> tuple[float, float]:
        """Width and height of a label in pixels."""
        value = QFontMetricsF(text_font(self.painter, self.ink.text_px, bold=True))
        name = QFontMetricsF(text_font(self.painter, self.small_px))
        width = max(value.horizontalAdvance(label.value), name.horizontalAdvance(label.name))
        return width + 2.0, value.height() + (name.height() if label.name else 0.0)

    def column(self, labels: Iterable[Label]) -> float:
        """Width a column needs, 0 without labels."""
        return max((self.size(label)[0] for label in labels), default=0.0)


def stacked(
    lettering: Lettering, labels: Iterable[Label], top: float, bottom: float
) -> list[tuple[Label, float]]:
    """Return (label, top edge) for those that fit between top and bottom, in order of their anchors."""
    kept = sorted(labels, key=lambda label: -label.weight)
    room = bottom - top
    while kept and sum(lettering.size(label)[1] + GAP_PX for label in kept) - GAP_PX > room:
        kept.pop()
    kept.sort(key=lambda label: (label.anchor.y(), label.anchor.x()))
    tops: list[float] = []
    edge = top
    for label in kept:
        height = lettering.size(label)[1]
        edge = max(edge, label.anchor.y() - height / 2.0)
        tops.append(edge)
        edge += height + GAP_PX
    limit = bottom
    for number in range(len(kept) - 1, -1, -1):
        height = lettering.size(kept[number])[1]
        tops[number] = max(top, min(tops[number], limit - height))
        limit = tops[number] - GAP_PX
    return list(zip(kept, tops, strict=True))


def paint_labels(lettering: Lettering, labels: Iterable[Label], area: QRectF, is_left: bool) -> None:
    """Draw one side's labels inside the area's edge, each with a leader to its anchor."""
    painter, ink = lettering.painter, lettering.ink
    flag = Qt.AlignmentFlag.AlignLeft if is_left else Qt.AlignmentFlag.AlignRight
    mine = [label for label in labels if label.is_left is is_left]
    for label, top in stacked(lettering, mine, area.top(), area.bottom()):
        width, height = lettering.size(label)
        box = QRectF(area.left() if is_left else area.right() - width, top, width, height)
        _paint_leader(painter, label, box, ink)
        _two_lines(lettering, label, box, flag)


def _paint_leader(painter: QPainter, label: Label, box: QRectF, ink: Ink) -> None:
    """Draw the line from a label to its anchor; from above or below where the anchor is over the words."""
    across, up = label.anchor.x(), label.anchor.y()
    if box.left() - 10.0 < across < box.right() + 10.0:
        start = QPointF(
            min(max(across, box.left()), box.right()), box.top() if up < box.top() else box.bottom()
        )
        elbow = start
    else:
        side = 1.0 if across > box.right() else -1.0
        start = QPointF((box.right() if side > 0 else box.left()) + 4.0 * side, box.center().y())
        elbow = start + QPointF(6.0 * side, 0.0)
    thin = pen(ink.quiet, ink.thin_px)
    line(painter, start, elbow, thin)
    line(painter, elbow, label.anchor, thin)
    painter.setPen(NO_PEN)
    painter.setBrush(QColor(ink.text))
    painter.drawEllipse(label.anchor, 1.8, 1.8)


def paint_key(lettering: Lettering, labels: Collection[Label], area: QRectF) -> None:
    """Number the anchors and list the labels in columns: for pictures too narrow for leaders."""
    painter, ink = lettering.painter, lettering.ink
    row = lettering.key_row_px
    columns = lettering.key_columns(labels, area.width())
    for number, label in enumerate(in_reading_order(labels), start=1):
        place, column = divmod(number - 1, columns)
        left = area.left() + column * area.width() / columns
        level = area.top() + place * row + row / 2.0
        _paint_number(lettering, QPointF(left + row / 2.0, level), number)
        _paint_number(lettering, label.anchor, number)
        font = text_font(painter, lettering.small_px)
        bold = text_font(painter, lettering.small_px, bold=True)
        start = left + row + 4.0
        name = f"{label.name} " if label.name else ""
        width = QFontMetricsF(font).horizontalAdvance(name)
        box = QRectF(start, level - row / 2.0, area.width() / columns - row - 4.0, row)
        write(painter, box, name, font, ink.quiet, Qt.AlignmentFlag.AlignLeft)
        write(
            painter,
            box.adjusted(width, 0.0, 0.0, 0.0),
            label.value,
            bold,
            ink.text,
            Qt.AlignmentFlag.AlignLeft,
        )


def in_reading_order(labels: Iterable[Label]) -> list[Label]:
    """Return labels from top to bottom, left to right."""
    return sorted(labels, key=lambda label: (label.anchor.y(), label.anchor.x()))


def _paint_number(lettering: Lettering, centre: QPointF, number: int) -> None:
    painter, ink = lettering.painter, lettering.ink
    radius = lettering.key_row_px * 0.42
    painter.setPen(pen(ink.text, ink.thin_px))
    painter.setBrush(QColor(ink.ground))
    painter.drawEllipse(centre, radius, radius)
    box = QRectF(centre.x() - 12.0, centre.y() - 10.0, 24.0, 20.0)
    font = text_font(painter, lettering.small_px * 0.86)
    write(painter, box, str(number), font, ink.text, Qt.AlignmentFlag.AlignHCenter)


def _two_lines(lettering: Lettering, label: Label, box: QRectF, flag: Qt.AlignmentFlag) -> None:
    painter, ink = lettering.painter, lettering.ink
    name_height = 0.0
    if label.name:
        font = text_font(painter, lettering.small_px)
        name_height = QFontMetricsF(font).height()
        write(
            painter,
            QRectF(box.left(), box.top(), box.width(), name_height),
            label.name,
            font,
            ink.quiet,
            flag,
        )
    font = text_font(painter, ink.text_px, bold=True)
    rest = QRectF(box.left(), box.top() + name_height, box.width(), box.height() - name_height)
    write(painter, rest, label.value, font, ink.text, flag)


def write(
    painter: QPainter, box: QRectF, text: str, font: QFont, colour: str, flag: Qt.AlignmentFlag
) -> None:
    """Write one line of text into a box."""
    kept = painter.font()
    painter.setFont(font)
    painter.setPen(QColor(colour))
    painter.drawText(box, flag | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextSingleLine, text)
    painter.setFont(kept)
