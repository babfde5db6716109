"""The heads of the columns: each joint's section above what sets the column apart; drag them to reorder."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QRect, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QHeaderView, QWidget

from welds.advice.request import Joint
from welds.gui.colours import Colours
from welds.gui.drawing.ink import DARK, LIGHT
from welds.gui.drawing.joint import paint_joint_tile
from welds.gui.pages.compare.cell_paint import bold_font, small_font

PICTURE_PX = 62
PAD = 6
TITLE_LINES = 3
MOST_PICTURES = 64
_TITLE = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap


_NOTE = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop
_LABEL = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap


@dataclass(frozen=True, slots=True)
class Head:
    """One column's head."""

    title: str
    joint: Joint
    ratio: float
    """Thickness of the second piece over the first: all that the picture shows of them."""
    has_card: bool


class ColumnHeader(QHeaderView):
    """Paints the heads and reports where one was dragged."""

    dragged = Signal(int, int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._heads: Sequence[Head] = ()
        self._base = 0
        self._current: Callable[[], int] = lambda: -1
        self._pictures: dict[tuple[str, float, int, int, str], QPixmap] = {}
        self.setSectionsMovable(True)
        self.setSectionsClickable(True)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.setMinimumSectionSize(96)
        self.setHighlightSections(True)
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.sectionMoved.connect(self._on_section_moved)

    def show_heads(self, heads: Sequence[Head], base: int, current: Callable[[], int]) -> None:
        """Show these heads; `current` says which column has the keyboard."""
        self._current = current
        if (list(heads), base) == (list(self._heads), self._base):
            return
        before = self.sizeHint()
        self._heads, self._base = heads, base
        if self.sizeHint() != before:
            self.updateGeometry()
            self.geometriesChanged.emit()
        self.viewport().update()

    def sizeHint(self) -> QSize:
        line, count = self.fontMetrics().height(), max(1, len(self._heads))
        width = max(40, self.width() // count - 12)
        widest = max((self.fontMetrics().horizontalAdvance(head.title) for head in self._heads), default=0)
        lines = min(TITLE_LINES, 1 + round(1.15 * widest) // width)
        return QSize(120, PICTURE_PX + lines * line + 2 * PAD + 4)

    def paintSection(self, painter: QPainter, rect: QRect, section: int) -> None:
        if section >= len(self._heads):
            return
        colours = Colours.of(self.palette())
        head, is_base = self._heads[section], section == self._base
        painter.save()
        try:
            painter.setClipRect(rect)
            ground = colours.raised if is_base else colours.sheet
            painter.fillRect(rect, QColor(ground))
            picture = QRectF(rect.left() + PAD, rect.top() + PAD, rect.width() - 2 * PAD, PICTURE_PX)
            self._paint_picture(painter, picture, head, ground, colours)
            self._paint_words(painter, rect, head, is_base, colours)
            painter.setPen(QPen(QColor(colours.edge), 1))
            painter.drawLine(rect.topRight(), rect.bottomRight())
            thick = 3 if section == self._current() else 1
            painter.setPen(QPen(QColor(colours.accent if thick == 3 else colours.edge), thick))
            painter.drawLine(
                rect.left(), rect.bottom() - thick // 2, rect.right(), rect.bottom() - thick // 2
            )
        finally:
            painter.restore()

    def _paint_picture(
        self, painter: QPainter, area: QRectF, head: Head, ground: str, colours: Colours
    ) -> None:
        """Draw the section; kept, since it changes with the ratio of the thicknesses alone."""
        size = area.size().toSize()
        key = (head.joint.value, head.ratio, size.width(), size.height(), ground)
        if key not in self._pictures:
            if len(self._pictures) > MOST_PICTURES:
                self._pictures.clear()
            sharp = self.devicePixelRatioF()
            picture = QPixmap(size * sharp)
            picture.setDevicePixelRatio(sharp)
            picture.fill(QColor(ground))
            ink = replace(DARK if colours.is_dark else LIGHT, ground=ground)
            drawing = QPainter(picture)
            try:
                room = QRectF(0.0, 0.0, size.width(), size.height())
                paint_joint_tile(drawing, room, head.joint, 1.0, head.ratio, ink)
            finally:
                drawing.end()
            self._pictures[key] = picture
        painter.setOpacity(1.0 if head.has_card else 0.35)
        painter.drawPixmap(area.topLeft(), self._pictures[key])
        painter.setOpacity(1.0)

    def _paint_words(
        self, painter: QPainter, rect: QRect, head: Head, is_base: bool, colours: Colours
    ) -> None:
        note = self.tr("base") if is_base else "" if head.has_card else self.tr("no card")
        small = small_font(self.font())
        if note:
            painter.setFont(small)
            painter.setPen(QColor(colours.accent if is_base else colours.warn))
            painter.drawText(rect.adjusted(8, 5, -8, 0), _NOTE, note)
        top = rect.top() + PICTURE_PX + PAD + 2
        room = QRect(rect.left() + 4, top, rect.width() - 8, rect.bottom() - top - 3)
        painter.setPen(QColor(colours.ink))
        painter.setFont(bold_font(self.font()))
        if painter.boundingRect(room, _TITLE, head.title).height() > room.height():
            painter.setFont(small)
        title = head.title
        while painter.boundingRect(room, _TITLE, title).height() > room.height() and len(title) > 8:
            title = title[: len(title) - 4].rstrip(" ,…") + "…"
        painter.drawText(room, _TITLE, title)

    def _on_section_moved(self, logical: int, old: int, new: int) -> None:
        """Let the presenter reorder, and put the sections back: the model will come in the new order."""
        if logical != old:
            return
        self.sectionMoved.disconnect(self._on_section_moved)
        self.moveSection(new, old)
        self.sectionMoved.connect(self._on_section_moved)
        QTimer.singleShot(0, self, lambda: self.dragged.emit(old, new))


class RowHeader(QHeaderView):
    """The settings' names at the left; long ones wrap."""

    def __init__(self, width: int, current: Callable[[], int], parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Vertical, parent)
        self._current = current
        self.setFixedWidth(width)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.setSectionsClickable(True)

    def paintSection(self, painter: QPainter, rect: QRect, section: int) -> None:
        colours = Colours.of(self.palette())
        painter.save()
        try:
            painter.setClipRect(rect)
            painter.fillRect(rect, QColor(colours.paper))
            is_current = section == self._current()
            painter.setFont(bold_font(self.font()) if is_current else self.font())
            painter.setPen(QColor(colours.ink))
            text = str(self.model().headerData(section, Qt.Orientation.Vertical) or "")
            painter.drawText(rect.adjusted(8, 2, -6, -2), _LABEL, text)
            painter.setPen(QPen(QColor(colours.line), 1))
            painter.drawLine(rect.bottomLeft(), rect.bottomRight())
            painter.drawLine(rect.topRight(), rect.bottomRight())
            if is_current:
                painter.fillRect(QRect(rect.left(), rect.top(), 3, rect.height()), QColor(colours.accent))
        finally:
            painter.restore()
