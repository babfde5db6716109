"""Beside the card's figures: the nearest past welds, and the learned band under the tables' own."""

from PySide6.QtCore import QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from welds.advice.learned import Learned
from welds.gui.colours import Colours
from welds.gui.pages.setup.past import PastFace
from welds.gui.widgets.texts import clear_layout, label, set_text
from welds.gui.widgets.tick_box import TickBox
from welds.language import tr
from welds.quantities.band import Band

BAR_PX = 10
GAP_PX, BAND_PX = 10, 120
MARKS = {"good": "\u2713", "": "\u25cb", "stop": "\u2717"}
"""By tone: worked well, worked, failed; the words beside it say the same."""


class BandPair(QWidget):
    """Two ranges of current on one scale, the start of each marked, with the figures beside them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._learned: Learned | None = None
        self._names = (self.tr("Tables"), self.tr("Your welds"))
        self.setMinimumHeight(2 * self._line_px())

    def show_learned(self, learned: Learned) -> None:
        """Show what was learned beside the tables' band."""
        self._learned = learned
        self.setMinimumSize(QSize(sum(self._beside()) + BAND_PX, 2 * self._line_px()))
        said = self.tr("Tables {table}; learned from your welds {learned}")
        self.setAccessibleName(said.format(table=_figures(learned.table), learned=_figures(learned.band)))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._learned is None:
            return
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            colours = Colours.of(self.palette())
            bands = (self._learned.table, self._learned.band)
            low = min(band.low for band in bands) * 0.96
            high = max(band.high for band in bands) * 1.04
            left, right = self._beside()
            room = QRectF(left, 0.0, self.width() - left - right, self.height())
            for place, (name, band) in enumerate(zip(self._names, bands, strict=True)):
                self._paint_band(painter, colours, place, name, band, (low, high, room))
        finally:
            painter.end()

    def _paint_band(
        self,
        painter: QPainter,
        colours: Colours,
        place: int,
        name: str,
        band: Band,
        scale: tuple[float, float, QRectF],
    ) -> None:
        low, high, room = scale
        line = self.height() / 2.0
        middle = line * (place + 0.5)

        def x(value: float) -> float:
            return room.left() + (value - low) / (high - low) * room.width()

        is_learned = place == 1
        painter.setPen(QColor(colours.ink if is_learned else colours.soft_ink))
        vertical = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(
            QRectF(0, line * place, room.left(), line), vertical | Qt.AlignmentFlag.AlignLeft, name
        )
        painter.drawText(
            QRectF(room.right() + GAP_PX, line * place, self.width() - room.right() - GAP_PX, line),
            vertical | Qt.AlignmentFlag.AlignLeft,
            _figures(band),
        )
        ink = QColor(colours.accent if is_learned else colours.edge)
        bar = QRectF(x(band.low), middle - BAR_PX / 2, x(band.high) - x(band.low), BAR_PX)
        painter.setPen(QPen(ink, 1))
        painter.setBrush(QColor(colours.accent_paper if is_learned else colours.raised))
        painter.drawRoundedRect(bar, 3, 3)
        painter.setPen(QPen(ink, 3))
        painter.drawLine(
            QRectF(x(band.start), bar.top() - 3, 0, 0).topLeft(),
            QRectF(x(band.start), bar.bottom() + 3, 0, 0).topLeft(),
        )

    def _beside(self) -> tuple[int, int]:
        """The room that the words to the left and the figures to the right take."""
        if self._learned is None:
            return 0, 0
        wide = self.fontMetrics().horizontalAdvance
        figures = (_figures(self._learned.table), _figures(self._learned.band))
        return max(map(wide, self._names)) + GAP_PX, max(map(wide, figures)) + GAP_PX

    def _line_px(self) -> int:
        return self.fontMetrics().height() + 8


class PastStrip(QFrame):
    """Hidden while the log has nothing to say; reports the switch of learning."""

    learning_toggled = Signal(bool)
    log_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        self.setAccessibleName(self.tr("From your log"))
        self.bands = BandPair(self)
        self._summary = label(role="small", wrap=True, parent=self)
        self.learning = TickBox(self.tr("Learn from my welds"), self)
        self.learning.setToolTip(self.tr("Untick it to see the tables' own figures."))
        self.learning.toggled.connect(self.learning_toggled)
        self.more = QPushButton(self.tr("More…"), self)
        self.more.setAccessibleName(self.tr("The welds nearest to this card in the log"))
        self.more.clicked.connect(self.log_wanted)
        self._lines = QGridLayout()
        self._lines.setVerticalSpacing(2)
        self._lines.setHorizontalSpacing(10)
        self._lines.setColumnStretch(1, 1)
        left = QVBoxLayout()
        left.setSpacing(2)
        head = QHBoxLayout()
        head.addWidget(label(self.tr("Nearest welds in your log"), "heading", parent=self), 1)
        head.addWidget(self.more)
        left.addLayout(head)
        left.addLayout(self._lines)
        left.addStretch(1)
        right = QVBoxLayout()
        right.setSpacing(2)
        top = QHBoxLayout()
        top.addWidget(label(self.tr("Current, learned"), "heading", parent=self), 1)
        top.addWidget(self.learning)
        right.addLayout(top)
        right.addWidget(self.bands)
        right.addWidget(self._summary)
        right.addStretch(1)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 6, 12, 8)
        layout.setSpacing(18)
        layout.addLayout(left, 11)
        layout.addLayout(right, 9)
        self.hide()

    def show_past(self, face: PastFace) -> None:
        """Show what the log says to the card."""
        clear_layout(self._lines)
        for row, line in enumerate(face.lines):
            mark = label(MARKS[line.tone], "value", tone=line.tone, parent=self)
            self._lines.addWidget(mark, 2 * row, 0, Qt.AlignmentFlag.AlignTop)
            self._lines.addWidget(label(line.words, wrap=True, parent=self), 2 * row, 1)
            if line.joint:
                self._lines.addWidget(label(line.joint, "small", wrap=True, parent=self), 2 * row + 1, 1)
        if not face.lines:
            self._lines.addWidget(label(self.tr("None near this joint."), "soft", parent=self), 0, 0, 1, 2)
        with QSignalBlocker(self.learning):
            self.learning.setChecked(face.is_on)
        self.bands.setVisible(face.learned is not None)
        if face.learned is not None:
            self.bands.show_learned(face.learned)
        off = self.tr("Off: the card shows the tables' own figures.")
        silent = self.tr("No past weld says anything about this current yet.")
        set_text(self._summary, face.summary or (silent if face.is_on else off))
        self.setVisible(not face.is_empty)


def _figures(band: Band) -> str:
    return tr(
        "{start:.0f} {unit} ({low:.0f} to {high:.0f})",
        start=band.start,
        unit=band.unit,
        low=band.low,
        high=band.high,
    )
