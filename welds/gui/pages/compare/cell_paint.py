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
LONGEST_FIGURE, LONGEST_CHANGE = 24, 32
"""Longer starts are sentences; longer changes repeat one, and the base stands beside it anyway."""
ROOMY_FROM_PX = 300
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

    def row_height(self, cells: "tuple[Cell | None, ...]", width: int, font: QFont) -> int:
        """Return the height that the tallest of these cells needs in columns of this width."""
        return max(self._height(cell, width, font) for cell in cells)

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
        sign = SIGNS[cell.mark] if cell.is_different else ""
        if sign:
            painter.setFont(bold_font(font))
            painter.setPen(QColor(colours.accent))
            painter.drawText(inner, _LEFT_TOP, sign)
        head = inner.adjusted(SIGN_PX if sign else 0, 0, 0, 0)
        painter.setFont(_figure_font(cell, font))
        painter.setPen(QColor(colours.ink if cell.line else colours.soft_ink))
        painter.drawText(head, _WRAPPED, cell.text)
        taken = painter.boundingRect(head, _WRAPPED, cell.text)
        small = small_font(font)
        beside, below = _small_lines(cell, inner.width())
        painter.setFont(small)
        if beside:
            painter.setPen(QColor(colours.soft_ink))
            room = QRect(
                taken.right() + GAP_PX, taken.top(), inner.right() - taken.right() - GAP_PX, taken.height()
            )
            painter.drawText(room, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, beside)
        top = taken.bottom() + 2
        for text in below:
            painter.setPen(QColor(colours.soft_ink if not cell.is_different else colours.ink))
            room = QRect(inner.left(), top, inner.width(), inner.bottom() - top + 2)
            painter.drawText(room, _WRAPPED, _shortened(text, inner.width(), small))
            top += painter.boundingRect(room, _WRAPPED, _shortened(text, inner.width(), small)).height()

    def _height(self, cell: "Cell | None", width: int, font: QFont) -> int:
        if cell is None:
            return 0
        inner = width - 2 * PAD_X
        left = SIGN_PX if cell.is_different else 0
        height = _wrapped_height(QFontMetrics(_figure_font(cell, font)), cell.text, inner - left)
        small = small_font(font)
        metrics = QFontMetrics(small)
        for text in _small_lines(cell, inner)[1]:
            height += _wrapped_height(metrics, _shortened(text, inner, small), inner)
        return height + 2 * PAD_Y + 3


def _figure_font(cell: Cell, font: QFont) -> QFont:
    """Return bold for a figure that differs or is the base, small for a start that is a sentence."""
    if len(cell.text) > LONGEST_FIGURE:
        return small_font(font)
    return bold_font(font) if cell.is_different or cell.mark is Mark.BASE else font


def _small_lines(cell: Cell, width: int) -> tuple[str, list[str]]:
    """Return what stands beside the figure, where the column is wide, and the lines below it."""
    range_text = cell.line.range_text if cell.line else ""
    change = cell.change if cell.is_different and len(cell.change) <= LONGEST_CHANGE else ""
    if width + 2 * PAD_X < ROOMY_FROM_PX:
        return "", [text for text in (change, range_text) if text]
    beside = "    ".join(text for text in (change, range_text) if text)
    reason = [cell.why[0]] if cell.is_different and cell.why else []
    if len(cell.text) > LONGEST_FIGURE:
        return "", reason
    return beside, reason


def _wrapped_height(metrics: QFontMetrics, text: str, width: int) -> int:
    """Return the height of a text in this width; most are one line, which is quick to see."""
    if metrics.horizontalAdvance(text) <= width:
        return metrics.height()
    return metrics.boundingRect(QRect(0, 0, width, 1000), int(_WRAPPED), text).height()


def _shortened(text: str, width: int, font: QFont) -> str:
    """Return as much of a reason as fits a few lines; the whole of it stands below the table."""
    metrics = QFontMetrics(font)
    return metrics.elidedText(text, Qt.TextElideMode.ElideRight, round(width * (REASON_LINES - 0.25)))
