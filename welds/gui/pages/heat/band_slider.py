"""A slider that carries the card's band, and the row it stands in with its figure box."""

from PySide6.QtCore import QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QWheelEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QSizePolicy, QSlider, QWidget

from welds.gui.colours import Colours
from welds.gui.widgets.texts import label, set_property, set_text

HEIGHT_PX = 26
KNOB_PX = 8
LONGEST = "1000 mm/min"


class BandSlider(QSlider):
    """Stands anywhere on its track; the card's band is a thick stretch, the card's figure a notch."""

    moved = Signal(int)

    def __init__(self, name: str, steps: int, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self.setAccessibleName(name)
        self.setRange(0, steps)
        self.setSingleStep(max(1, steps // 200))
        self.setPageStep(max(1, steps // 20))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._band: tuple[int, int] | None = None
        self._card = 0
        self._is_dragging = False

    def show_card(self, band: tuple[int, int] | None, card: int) -> None:
        """Mark the card's band and figure on the track."""
        if (band, card) != (self._band, self._card):
            self._band, self._card = band, card
            self.update()

    def show_place(self, place: int) -> None:
        """Stand at a place without reporting a move, unless a hand is on the knob."""
        if not self._is_dragging and place != self.value():
            with QSignalBlocker(self):
                self.setValue(place)
            self.update()

    def sizeHint(self) -> QSize:
        return QSize(240, HEIGHT_PX)

    def minimumSizeHint(self) -> QSize:
        return QSize(120, HEIGHT_PX)

    def x_of(self, place: int) -> float:
        """Return where a place lies on the widget, in pixels."""
        room = max(1.0, self.width() - 2.0 * (KNOB_PX + 4.0))
        return KNOB_PX + 4.0 + room * place / max(1, self.maximum())

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._is_dragging = True
            self._go_to(event.position().x())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._is_dragging:
            self._go_to(event.position().x())

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        self._is_dragging = False

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        before = self.value()
        super().keyPressEvent(event)
        if self.value() != before:
            self.moved.emit(self.value())

    def paintEvent(self, _event: QPaintEvent) -> None:
        colours = Colours.of(self.palette())
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            middle = self.height() / 2.0
            left, right = self.x_of(0), self.x_of(self.maximum())
            painter.setPen(QPen(QColor(colours.edge), 1))
            painter.setBrush(QColor(colours.sheet))
            painter.drawRoundedRect(QRectF(left, middle - 2.5, right - left, 5), 2.5, 2.5)
            if self._band is not None:
                low, high = (self.x_of(each) for each in self._band)
                painter.setPen(QPen(QColor(colours.accent), 1.2))
                painter.setBrush(QColor(colours.accent_paper))
                painter.drawRect(QRectF(low, middle - 6, max(high - low, 2.0), 12))
            notch = self.x_of(self._card)
            painter.setPen(QPen(QColor(colours.ink), 2))
            painter.drawLine(QPointF(notch, middle - 11), QPointF(notch, middle + 11))
            centre = QPointF(self.x_of(self.value()), middle)
            if self.hasFocus():
                painter.setPen(QPen(QColor(colours.accent), 2))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawEllipse(centre, KNOB_PX + 3.0, KNOB_PX + 3.0)
            painter.setPen(QPen(QColor(colours.sheet), 2))
            painter.setBrush(QColor(colours.accent if self.isEnabled() else colours.faded_ink))
            painter.drawEllipse(centre, KNOB_PX, KNOB_PX)
        finally:
            painter.end()

    def _go_to(self, x: float) -> None:
        share = (x - self.x_of(0)) / (self.x_of(self.maximum()) - self.x_of(0))
        place = round(min(max(share, 0.0), 1.0) * self.maximum())
        if abs(self.x_of(self._card) - x) <= 3.0:
            place = self._card
        if place != self.value():
            with QSignalBlocker(self):
                self.setValue(place)
            self.update()
            self.moved.emit(place)


class FigureBox(QLineEdit):
    """Wide enough for the longest figure in any size of text."""

    def sizeHint(self) -> QSize:
        width = self.fontMetrics().horizontalAdvance(LONGEST) + 30
        return QSize(width, super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()


class KnobRow(QWidget):
    """A name, its figure in a box to type in, the slider, what the card says, and what is wrong."""

    moved = Signal(int)
    typed = Signal(str)

    def __init__(self, name: str, steps: int, trend: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        plain = name.replace("&", "")
        self.slider = BandSlider(plain, steps, self)
        self.line = FigureBox(self)
        self.line.setAccessibleName(plain)
        self.line.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.line.editingFinished.connect(lambda: self.typed.emit(self.line.text()))
        self.slider.moved.connect(self.moved)
        self._name = QLabel(name, self)
        self._name.setBuddy(self.line)
        self._note = label(role="small", wrap=True, parent=self)
        self._note.hide()
        self._card = label(role="small", parent=self)
        layout = QGridLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setHorizontalSpacing(6)
        layout.setVerticalSpacing(0)
        layout.addWidget(self._name, 0, 0)
        layout.addWidget(self._card, 1, 0)
        layout.addWidget(self.line, 0, 2, 2, 1)
        layout.addWidget(self.slider, 2, 0, 1, 3)
        layout.addWidget(self._note, 3, 0, 1, 3)
        layout.setColumnStretch(0, 1)
        if trend:
            chip = label(trend, role="chip", tone="warn", parent=self)
            chip.setToolTip(self.tr("Only the direction is known: no document puts a number on it"))
            layout.addWidget(chip, 0, 1, 2, 1, Qt.AlignmentFlag.AlignVCenter)

    def show_value(self, place: int, text: str, card: str) -> None:
        """Show a value on the slider and in the box, and the card's own in small."""
        self.slider.show_place(place)
        self.line.setText(text)
        self._card.setText(card)
        self.slider.setAccessibleDescription(f"{text}; {card}")

    def show_trouble(self, text: str) -> None:
        """Say under the slider why what was typed cannot be used."""
        set_property(self.line, "invalid", bool(text))
        set_property(self._note, "tone", "stop" if text else "")
        set_text(self._note, text)
        self.line.setAccessibleDescription(text)

    def trouble(self) -> str:
        """Return what is wrong, "" when nothing is."""
        return self._note.text()
