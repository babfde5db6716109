"""The card's main figures as large as the screen allows, to be read from across the bench."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QDialog, QWidget

from welds.gui.card_face import CardFace, Figure
from welds.gui.colours import Colours

EDGE = 0.02
"""Free room around everything, as a share of the height."""

HEAD, STOPS, FOOT = 0.07, 0.12, 0.035
"""Heights of title, open stop cautions and notice, as shares of the height."""

LARGEST_FIGURE = 0.62
"""A figure's height as a share of its cell: the name stands above, the range below."""


class LargeFigures(QDialog):
    """Shows a card face and nothing to work with; Escape, Enter or a click leaves it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Large figures"))
        self.setWindowFlag(Qt.WindowType.Window)
        self._face: CardFace | None = None
        self._open_stops: tuple[str, ...] = ()
        self._is_stale = False

    def show_face(self, face: CardFace, open_stops: tuple[str, ...], *, is_stale: bool) -> None:
        """Show a card; `open_stops` still wait for their tick, a stale card belongs to an earlier request."""
        self._face, self._open_stops, self._is_stale = face, open_stops, is_stale
        said = [f"{each.label} {each.start} {each.unit}".strip() for each in (face.main, *face.big)]
        self.setAccessibleName(", ".join((face.title, *open_stops, *said)))
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.accept()
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, _event: QMouseEvent) -> None:
        self.accept()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._face is None:
            return
        painter = QPainter(self)
        try:
            self._paint(painter, self._face, Colours.of(self.palette()))
        finally:
            painter.end()

    def _paint(self, painter: QPainter, face: CardFace, colours: Colours) -> None:
        painter.fillRect(self.rect(), QColor(colours.sheet))
        edge, height = EDGE * self.height(), float(self.height())
        room = QRectF(self.rect()).adjusted(edge, edge, -edge, -edge)
        title = QRectF(room.left(), room.top(), room.width(), HEAD * height)
        _write(painter, title, f"{face.title}   {face.subtitle}", colours.ink, bold=True)
        top = title.bottom()
        warning = self._warning()
        if warning:
            bar = QRectF(room.left(), top, room.width(), STOPS * height)
            painter.fillRect(bar, QColor(colours.stop))
            _write(painter, bar.adjusted(edge, edge / 2, -edge, -edge / 2), warning, colours.sheet, bold=True)
            top = bar.bottom() + edge / 2
        foot = QRectF(room.left(), room.bottom() - FOOT * height, room.width(), FOOT * height)
        _write(
            painter, foot, self.tr("Escape goes back.  {notice}").format(notice=face.notice), colours.soft_ink
        )
        self._paint_figures(painter, QRectF(room.left(), top, room.width(), foot.top() - top), face, colours)

    def _warning(self) -> str:
        if self._is_stale:
            return self.tr("OLD CARD: it belongs to the request before this one.")
        if self._open_stops:
            return self.tr("STOP: {cautions}").format(cautions="  ".join(self._open_stops))
        return ""

    def _paint_figures(self, painter: QPainter, room: QRectF, face: CardFace, colours: Colours) -> None:
        """The main figure takes the left third, the others a grid beside it."""
        main = QRectF(room.left(), room.top(), room.width() / 3, room.height())
        _paint_figure(painter, main, face.main, colours)
        columns = 2 if len(face.big) <= 6 else 3
        rows = -(-len(face.big) // columns)
        width, height = (room.width() - main.width()) / columns, room.height() / max(rows, 1)
        for place, figure in enumerate(face.big):
            row, column = divmod(place, columns)
            cell = QRectF(main.right() + column * width, room.top() + row * height, width, height)
            _paint_figure(painter, cell, figure, colours)


def _paint_figure(painter: QPainter, cell: QRectF, figure: Figure, colours: Colours) -> None:
    painter.setPen(QColor(colours.line))
    painter.drawRect(cell)
    inside = cell.adjusted(*(cell.height() * share for share in (0.05, 0.03, -0.05, -0.03)))
    small = (1.0 - LARGEST_FIGURE) / 2 * inside.height()
    name = QRectF(inside.left(), inside.top(), inside.width(), min(small, 0.1 * cell.width()))
    below = QRectF(inside.left(), inside.bottom() - name.height(), inside.width(), name.height())
    middle = QRectF(inside.left(), name.bottom(), inside.width(), below.top() - name.bottom())
    _write(painter, name, figure.label, colours.soft_ink)
    _write(painter, middle, f"{figure.start} {figure.unit}".strip(), colours.ink, bold=True)
    _write(painter, below, figure.range or figure.second, colours.soft_ink)


def _write(painter: QPainter, room: QRectF, text: str, ink: str, *, bold: bool = False) -> None:
    """Write one line as large as the room allows."""
    if not text:
        return
    font = QFont(painter.font())
    font.setBold(bold)
    font.setPixelSize(max(8, int(room.height() * 0.8)))
    wide = QFontMetricsF(font).horizontalAdvance(text)
    if wide > room.width():
        font.setPixelSize(max(8, int(font.pixelSize() * room.width() / wide)))
    painter.setFont(font)
    painter.setPen(QColor(ink))
    painter.drawText(room, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text)
