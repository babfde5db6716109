"""A picture to mark holes on: a grid to read sizes by, a line that sets the scale, circles for the holes."""

from enum import Enum, auto
from math import dist

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QImage, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from welds.job.hole_drawing import DrawnHole, Pixel, Scale

_STEP = 0.01
"""What an arrow key moves the cross by, in widths of the picture; a tenth of it with Shift."""
_MOST_LINES = 400
_KEYS = {
    Qt.Key.Key_Left: (-1.0, 0.0),
    Qt.Key.Key_Right: (1.0, 0.0),
    Qt.Key.Key_Up: (0.0, -1.0),
    Qt.Key.Key_Down: (0.0, 1.0),
}
_ENTER = (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter)


class Doing(Enum):
    """What a click means."""

    SCALE = auto()
    HOLES = auto()


class HoleCanvas(QWidget):
    """Keeps points in pixels of the picture; `changed` follows every click that did something."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.image = QImage()
        self.doing = Doing.SCALE
        self.ends: list[Pixel] = []
        self.holes: list[DrawnHole] = []
        self.length_mm = 0.0
        self.diameter_mm = 0.0
        self.grid_mm = 0.0
        self._cross: Pixel = (0.0, 0.0)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Picture with holes"))
        self.setAccessibleDescription(
            self.tr("Arrow keys move the cross, Shift makes small steps, Space marks.")
        )

    @property
    def scale(self) -> Scale | None:
        """The scale, once both points and the length are there."""
        if len(self.ends) < 2 or self.length_mm <= 0.0:
            return None
        return Scale(self.ends[0], self.ends[1], self.length_mm)

    def show_image(self, image: QImage) -> None:
        """Show another picture; what was marked on the last one goes."""
        self.image = image
        self.ends, self.holes = [], []
        self._cross = (image.width() / 2.0, image.height() / 2.0)
        self._tell()

    def mark(self, at: Pixel) -> None:
        """Do what a click at a point of the picture does: an end of the scale, a hole, or one hole less."""
        if not (0.0 <= at[0] <= self.image.width() and 0.0 <= at[1] <= self.image.height()):
            return
        if self.doing is Doing.SCALE:
            if at not in self.ends:
                self.ends = [at] if len(self.ends) == 2 else [*self.ends, at]
        elif self.scale is None or self.diameter_mm <= 0.0:
            return
        else:
            hit = self._hole_at(at, self.scale)
            if hit is None:
                self.holes.append(DrawnHole(at, self.diameter_mm))
            else:
                self.holes.remove(hit)
        self._tell()

    def sizeHint(self) -> QSize:
        return QSize(720, 480)

    def place(self, at: Pixel) -> QPointF:
        """Return where a point of the picture is painted."""
        area = self._area()
        factor = area.width() / max(self.image.width(), 1)
        return QPointF(area.left() + at[0] * factor, area.top() + at[1] * factor)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        area = self._area()
        if event.button() is Qt.MouseButton.LeftButton and not self.image.isNull() and area.width() > 0.0:
            factor = self.image.width() / area.width()
            at = event.position() - area.topLeft()
            self._cross = (at.x() * factor, at.y() * factor)
            self.mark(self._cross)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in _KEYS and not self.image.isNull():
            is_small = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
            step = self.image.width() * _STEP * (0.1 if is_small else 1.0)
            x, y = (old + step * way for old, way in zip(self._cross, _KEYS[key], strict=True))
            self._cross = (min(max(x, 0.0), self.image.width()), min(max(y, 0.0), self.image.height()))
            self.update()
        elif key in _ENTER and not self.image.isNull():
            self.mark(self._cross)
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.fillRect(self.rect(), self.palette().base())
            if self.image.isNull():
                painter.setPen(self.palette().text().color())
                painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.tr("No picture yet"))
                return
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            painter.drawImage(self._area(), self.image)
            self._paint_grid(painter)
            self._paint_marks(painter)
        finally:
            painter.end()

    def _paint_grid(self, painter: QPainter) -> None:
        scale = self.scale
        step = self.grid_mm * scale.px_per_mm if scale is not None else 0.0
        width, height = self.image.width(), self.image.height()
        if step <= 0.0 or max(width, height) / step > _MOST_LINES:
            return
        painter.setPen(QPen(QColor(255, 255, 255, 120), 1.0))
        for n in range(int(width / step) + 1):
            painter.drawLine(self.place((n * step, 0.0)), self.place((n * step, height)))
        for n in range(int(height / step) + 1):
            painter.drawLine(self.place((0.0, n * step)), self.place((width, n * step)))

    def _paint_marks(self, painter: QPainter) -> None:
        # Dark under light, so that a mark is seen on bright and on dark metal.
        factor = self._area().width() / self.image.width()
        scale = self.scale
        for colour, weight in ((QColor("black"), 4.0), (QColor("#ffd33d"), 1.8)):
            painter.setPen(QPen(colour, weight))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            points = [self.place(end) for end in self.ends]
            if len(points) == 2:
                painter.drawLine(points[0], points[1])
            for point in points:
                painter.drawEllipse(point, 4.0, 4.0)
            for hole in self.holes if scale is not None else ():
                radius = hole.diameter_mm / 2.0 * scale.px_per_mm * factor if scale is not None else 0.0
                painter.drawEllipse(self.place(hole.at), radius, radius)
            if self.hasFocus():
                at = self.place(self._cross)
                painter.drawLine(at - QPointF(9.0, 0.0), at + QPointF(9.0, 0.0))
                painter.drawLine(at - QPointF(0.0, 9.0), at + QPointF(0.0, 9.0))

    def _area(self) -> QRectF:
        size = self.image.size().scaled(self.size(), Qt.AspectRatioMode.KeepAspectRatio)
        area = QRectF(0.0, 0.0, size.width(), size.height())
        area.moveCenter(QRectF(self.rect()).center())
        return area

    def _hole_at(self, at: Pixel, scale: Scale) -> DrawnHole | None:
        near = (hole for hole in self.holes if dist(hole.at, at) <= hole.diameter_mm / 2.0 * scale.px_per_mm)
        return min(near, key=lambda hole: dist(hole.at, at), default=None)

    def _tell(self) -> None:
        self.update()
        self.changed.emit()
