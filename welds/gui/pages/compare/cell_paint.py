"""How one cell of the comparison is drawn: sign, figure, distance, range and the first reason."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from welds.gui.colours import Colours
from welds.gui.pages.compare.table_model import CELL
from welds.report.comparison_rows import SIGNS, Cell, Mark

PAD_X, PAD_Y = 8, 4
SIGN_PX = 20
REASON_LINES = 2
GAP_PX = 12
MOST_KEPT = 4000
LONGEST_FIGURE, LONGEST_CHANGE = 24, 32
"""Longer starts are sentences; longer changes repeat one, and the base stands beside it anyway."""
ROOMY_FROM_PX = 280
"""A column at least this wide has room for the reason inside the cell."""
_LEFT_TOP = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop
_WRAPPED = _LEFT_TOP | Qt.TextFlag.TextWordWrap


def small_font(font: QFont) -> QFont:
    """Return the size for everything but the figure."""
    small = QFont(font)
    small.setPixelSize(max(11, round(font.pixelSize() * 0.86)))
    return small


def bold_font(font: QFont) -> QFont:
    """Return the weight of a figure that differs."""
    bold = QFont(font)
    bold.setWeight(QFont.Weight.DemiBold)
    return bold


class CellPaint(QStyledItemDelegate):
    """Draws cells; what differs has a sign and words beside its colour."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.base_column = 0
        self._fonts: _Fonts | None = None

    def row_height(self, cells: "tuple[Cell | None, ...]", width: int, font: QFont) -> int:
        """Return the height that the tallest of these cells needs in columns of this width."""
        fonts = self._fonts_for(font)
        return max(self._height(cell, width - 2 * PAD_X, fonts) for cell in cells)

    def label_height(self, label: str, width: int, font: QFont) -> int:
        """Return the height of a row's name at the left of the table, which may be in hand and then bold."""
        return self._fonts_for(font).bold.height(label, width) + PAD_Y

    def sizeHint(self, option: QStyleOptionViewItem, _index: QModelIndex | QPersistentModelIndex) -> QSize:
        return QSize(120, QFontMetrics(option.font).height() + 2 * PAD_Y)

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        colours = Colours.of(option.palette)
        cell = index.data(CELL)
        painter.save()
        try:
            painter.setClipRect(option.rect)
            self._paint_ground(painter, option, cell, index.column() == self.base_column, colours)
            inner = option.rect.adjusted(PAD_X, PAD_Y, -PAD_X, -PAD_Y)
            if isinstance(cell, Cell):
                self._paint_cell(painter, inner, cell, option.font, colours)
            else:
                painter.setFont(small_font(option.font))
                painter.setPen(QColor(colours.ink))
                painter.drawText(inner, _WRAPPED, str(index.data() or ""))
        finally:
            painter.restore()

    def _paint_ground(
        self, painter: QPainter, option: QStyleOptionViewItem, cell: object, is_base: bool, colours: Colours
    ) -> None:
        ground = colours.raised if is_base else colours.sheet
        if isinstance(cell, Cell) and cell.is_different:
            ground = colours.accent_paper
        elif cell is None:
            ground = colours.warn_paper
        painter.fillRect(option.rect, QColor(ground))
        painter.setPen(QPen(QColor(colours.line), 1))
        painter.drawLine(option.rect.topRight(), option.rect.bottomRight())
        painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight())
        if option.state & QStyle.StateFlag.State_Selected:
            painter.setPen(QPen(QColor(colours.accent), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(option.rect).adjusted(1, 1, -2, -2))

    def _paint_cell(self, painter: QPainter, inner: QRect, cell: Cell, font: QFont, colours: Colours) -> None:
        fonts = self._fonts_for(font)
        sign = SIGNS[cell.mark] if cell.is_different else ""
        if sign:
            painter.setPen(QColor(colours.accent))
            _write(painter, inner, sign, fonts.bold)
        head = inner.adjusted(SIGN_PX if sign else 0, 0, 0, 0)
        painter.setPen(QColor(colours.ink if cell.line else colours.soft_ink))
        taken = _write(painter, head, cell.text, fonts.of(cell))
        beside, below = _small_lines(cell, inner.width(), fonts)
        if beside:
            painter.setPen(QColor(colours.soft_ink))
            left = taken.right() + GAP_PX
            drop = fonts.of(cell).metrics.ascent() - fonts.small.metrics.ascent()
            room = QRect(left, taken.top() + drop, inner.right() - left, taken.height())
            _write(painter, room, beside, fonts.small)
        top = taken.bottom() + 2
        painter.setPen(QColor(colours.ink if cell.is_different else colours.soft_ink))
        for text in below:
            room = QRect(inner.left(), top, inner.width(), inner.bottom() - top + 2)
            top += _write(painter, room, fonts.small.shortened(text, inner.width()), fonts.small).height()

    def _fonts_for(self, font: QFont) -> "_Fonts":
        if self._fonts is None or self._fonts.plain.font != font:
            self._fonts = _Fonts(font)
        return self._fonts

    def _height(self, cell: "Cell | None", inner: int, fonts: "_Fonts") -> int:
        if cell is None:
            return 0
        left = SIGN_PX if cell.is_different else 0
        height = fonts.of(cell).height(cell.text, inner - left)
        for text in _small_lines(cell, inner, fonts)[1]:
            height += fonts.small.height(fonts.small.shortened(text, inner), inner)
        return height + 2 * PAD_Y + 3


class _Type:
    """One font with what was measured in it; while a slider moves most texts come again and again."""

    def __init__(self, font: QFont) -> None:
        self.font, self.metrics = font, QFontMetrics(font)
        self._heights: dict[tuple[str, int], int] = {}
        self._widths: dict[str, int] = {}

    def width(self, text: str) -> int:
        """Return the width of a text on one line."""
        if text not in self._widths:
            if len(self._widths) > MOST_KEPT:
                self._widths.clear()
            self._widths[text] = self.metrics.horizontalAdvance(text)
        return self._widths[text]

    def height(self, text: str, width: int) -> int:
        """Return the height of a text that wraps in this width."""
        key = (text, width)
        if key not in self._heights:
            if len(self._heights) > MOST_KEPT:
                self._heights.clear()
            room = QRect(0, 0, width, 1000)
            fits = self.width(text) <= width
            self._heights[key] = (
                self.metrics.height()
                if fits
                else self.metrics.boundingRect(room, int(_WRAPPED), text).height()
            )
        return self._heights[key]

    def shortened(self, text: str, width: int) -> str:
        """Return as much of a reason as fits a few lines; the whole of it stands below the table."""
        if len(text) * self.font.pixelSize() <= width:  # no letter is wider than the font is high
            return text
        return self.metrics.elidedText(
            text, Qt.TextElideMode.ElideRight, round(width * (REASON_LINES - 0.25))
        )


class _Fonts:
    """The three fonts of a cell."""

    def __init__(self, font: QFont) -> None:
        self.plain, self.bold, self.small = _Type(font), _Type(bold_font(font)), _Type(small_font(font))

    def of(self, cell: Cell) -> _Type:
        """Return bold for a figure that differs or is the base, small for a start that is a sentence."""
        if len(cell.text) > LONGEST_FIGURE:
            return self.small
        return self.bold if cell.is_different or cell.mark is Mark.BASE else self.plain


def _write(painter: QPainter, room: QRect, text: str, kind: _Type) -> QRect:
    """Write a text from the top left of the room and return what it takes; most need no wrapping."""
    painter.setFont(kind.font)
    width = kind.width(text)
    if width <= room.width():
        painter.drawText(room.left(), room.top() + kind.metrics.ascent(), text)
        return QRect(room.left(), room.top(), width, kind.metrics.height())
    return painter.drawText(room, int(_WRAPPED), text)


def _small_lines(cell: Cell, width: int, fonts: _Fonts) -> tuple[str, list[str]]:
    """Return what stands beside the figure, where the column is wide, and the lines below it."""
    range_text = cell.line.range_text if cell.line else ""
    change = cell.change if cell.is_different and len(cell.change) <= LONGEST_CHANGE else ""
    both = (range_text, change) if cell.mark is Mark.OTHER else (change, range_text)
    parts = [text for text in both if text]
    if width + 2 * PAD_X < ROOMY_FROM_PX:
        return "", parts
    reason = [cell.why[0]] if cell.is_different and cell.why else []
    if len(cell.text) > LONGEST_FIGURE:
        return "", reason
    room = width - fonts.of(cell).width(cell.text) - GAP_PX - (SIGN_PX if cell.is_different else 0)
    beside = "    ".join(parts)
    if fonts.small.width(beside) <= room:
        return beside, reason
    return parts[0], [*parts[1:], *reason]
