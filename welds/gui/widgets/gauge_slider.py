"""A thickness slider with named gauge marks under it."""

import math
from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QSlider, QWidget

from welds.gui.colours import Colours

STEPS_PER_MM = 100
SNAP_PX = 5
KNOB_RADIUS = 9
TRACK_TOP = 15

Mark = tuple[float, str]
"""(thickness in mm, name)"""


class GaugeSlider(QSlider):
    """Thickness on a logarithmic track; the knob snaps to near marks, a click on a name goes there.

    Left and right move a little, up and down (or page keys) go to the next mark.
    """

    dragged = Signal(float)
    mark_chosen = Signal(str)

    def __init__(self, name: str, low_mm: float, high_mm: float, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self.setAccessibleName(name)
        self.setRange(round(low_mm * STEPS_PER_MM), round(high_mm * STEPS_PER_MM))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._marks: tuple[Mark, ...] = ()
        self._is_known = False
        self._is_dragging = False

    def set_marks(self, marks: Sequence[Mark]) -> None:
        """Show these named thicknesses; those off the track are left out."""
        low, high = self._limits()
        self._marks = tuple(sorted((mm, name) for mm, name in marks if low <= mm <= high))
        self.update()

    def show_mm(self, thickness_mm: float | None) -> None:
        """Stand at a thickness without reporting a move; None greys the knob."""
        self._is_known = thickness_mm is not None
        if thickness_mm is not None and not self._is_dragging:
            self.setValue(round(thickness_mm * STEPS_PER_MM))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(280, TRACK_TOP + KNOB_RADIUS + 12 + self.fontMetrics().height())

    def minimumSizeHint(self) -> QSize:
        return QSize(160, self.sizeHint().height())

    def mark_x(self, thickness_mm: float) -> float:
        """Return where a thickness stands on the track, in pixels."""
        low, high = (math.log(limit) for limit in self._limits())
        share = (math.log(max(thickness_mm, 1e-3)) - low) / (high - low)
        return self._left() + min(max(share, 0.0), 1.0) * self._track_width()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._is_dragging = True
            self._go_to(
                event.position(), reach=60 if event.position().y() > TRACK_TOP + KNOB_RADIUS else SNAP_PX
            )

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._is_dragging:
            self._go_to(event.position(), reach=SNAP_PX)

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        self._is_dragging = False

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        here = self.value() / STEPS_PER_MM
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            step = (0.05 if here < 2 else 0.1) * (1 if key is Qt.Key.Key_Right else -1)
            self._report(here + step)
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_PageUp):
            self._report_mark(next((mark for mark in self._marks if mark[0] > here + 0.005), None))
        elif key in (Qt.Key.Key_Down, Qt.Key.Key_PageDown):
            self._report_mark(next((mark for mark in reversed(self._marks) if mark[0] < here - 0.005), None))
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            self._report(self._limits()[0 if key is Qt.Key.Key_Home else 1])
        else:
            super().keyPressEvent(event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours = Colours.of(self.palette())
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_track(painter, colours)
            self._paint_marks(painter, colours)
            self._paint_knob(painter, colours)
        finally:
            painter.end()

    def _paint_track(self, painter: QPainter, colours: Colours) -> None:
        track = QRectF(self._left(), TRACK_TOP - 3, self._track_width(), 6)
        painter.setPen(QPen(QColor(colours.edge), 1))
        painter.setBrush(QColor(colours.sheet))
        painter.drawRoundedRect(track, 3, 3)

    def _paint_marks(self, painter: QPainter, colours: Colours) -> None:
        metrics = self.fontMetrics()
        here = self.value() / STEPS_PER_MM
        free_from = -1e9
        chosen = next((name for mm, name in self._marks if self._is_known and abs(mm - here) < 0.006), "")
        taken = self._label_span(chosen)
        for thickness_mm, name in self._marks:
            x = self.mark_x(thickness_mm)
            painter.setPen(
                QPen(QColor(colours.ink if name == chosen else colours.edge), 2 if name == chosen else 1)
            )
            painter.drawLine(QPointF(x, TRACK_TOP + KNOB_RADIUS), QPointF(x, TRACK_TOP + KNOB_RADIUS + 6))
            left, right = self._span(x, metrics.horizontalAdvance(name))
            is_crowded = left < free_from or (
                taken and name != chosen and right > taken[0] and left < taken[1]
            )
            if is_crowded:
                continue
            painter.setPen(QColor(colours.ink if name == chosen else colours.soft_ink))
            top = TRACK_TOP + KNOB_RADIUS + 7
            painter.drawText(
                QRectF(left, top, right - left, metrics.height()), Qt.AlignmentFlag.AlignHCenter, name
            )
            free_from = right + 8

    def _paint_knob(self, painter: QPainter, colours: Colours) -> None:
        centre = QPointF(self.mark_x(self.value() / STEPS_PER_MM), TRACK_TOP)
        if self.hasFocus():
            painter.setPen(QPen(QColor(colours.accent), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(centre, KNOB_RADIUS + 4, KNOB_RADIUS + 4)
        is_plain = self._is_known and self.isEnabled()
        painter.setPen(QPen(QColor(colours.sheet), 2))
        painter.setBrush(QColor(colours.accent if is_plain else colours.faded_ink))
        painter.drawEllipse(centre, KNOB_RADIUS, KNOB_RADIUS)

    def _label_span(self, name: str) -> tuple[float, float] | None:
        for thickness_mm, mark_name in self._marks:
            if name and mark_name == name:
                left, right = self._span(
                    self.mark_x(thickness_mm), self.fontMetrics().horizontalAdvance(name)
                )
                return left - 8, right + 8
        return None

    def _span(self, x: float, width: float) -> tuple[float, float]:
        left = min(max(x - width / 2, 0.0), self.width() - width)
        return left, left + width + 1

    def _limits(self) -> tuple[float, float]:
        return self.minimum() / STEPS_PER_MM, self.maximum() / STEPS_PER_MM

    def _left(self) -> float:
        return KNOB_RADIUS + 5.0

    def _track_width(self) -> float:
        return max(1.0, self.width() - 2 * self._left())

    def _go_to(self, point: QPointF, reach: float) -> None:
        near = min(self._marks, key=lambda mark: abs(self.mark_x(mark[0]) - point.x()), default=None)
        if near is not None and abs(self.mark_x(near[0]) - point.x()) <= reach:
            self._report_mark(near)
            return
        low, high = self._limits()
        share = min(max((point.x() - self._left()) / self._track_width(), 0.0), 1.0)
        self._report(low * (high / low) ** share)

    def _report(self, thickness_mm: float) -> None:
        low, high = self._limits()
        self._is_known = True
        self.setValue(round(min(max(thickness_mm, low), high) * STEPS_PER_MM))
        self.dragged.emit(self.value() / STEPS_PER_MM)

    def _report_mark(self, mark: Mark | None) -> None:
        if mark is None:
            return
        self._is_known = True
        self.setValue(round(mark[0] * STEPS_PER_MM))
        self.update()
        self.mark_chosen.emit(mark[1])
