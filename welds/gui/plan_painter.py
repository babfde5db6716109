"""A drawing of lines and words on paper or screen."""

from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QImage,
    QImageIOHandler,
    QImageReader,
    QPainter,
    QPen,
    QPolygonF,
)

from welds.job.plan_drawing import Layer, Picture, PlanDrawing, Words

_PENS = {
    Layer.OUTLINE: (1.4, Qt.PenStyle.SolidLine),
    Layer.SECTION: (1.2, Qt.PenStyle.SolidLine),
    Layer.BEND: (0.8, Qt.PenStyle.DashDotLine),
    Layer.CURVE: (0.3, Qt.PenStyle.DotLine),
}
_THIN = (0.5, Qt.PenStyle.SolidLine)
_INK = QColor("black")
_GRID = QColor(0xC8, 0xC8, 0xC8)
_FADED = 0.5
"""A photograph is paled so that black lines stand out on it."""
_MOST_PIXELS = 1600
_LEAST_LETTER = 7.0
"""Letters are never painted smaller than this many pixels of 1/96 inch, however far the drawing is shrunk."""


def paint_plan(painter: QPainter, area: QRectF, drawing: PlanDrawing, scale: float | None = None) -> None:
    """Paint the drawing into the area, as large as fits or at `scale` pixels a millimetre."""
    left, bottom, right, top = drawing.box
    width, height = max(right - left, 1.0), max(top - bottom, 1.0)
    factor = scale or min(area.width() / width, area.height() / height)

    def place(point: tuple[float, float]) -> QPointF:
        return QPointF(area.left() + (point[0] - left) * factor, area.top() + (top - point[1]) * factor)

    painter.save()
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if drawing.picture is not None:
            sheet = QRectF(area.topLeft(), area.topLeft() + QPointF(width * factor, height * factor))
            _paint_picture(painter, drawing.picture, sheet, place((0.0, 0.0)), factor)
        for stroke in drawing.strokes:
            weight, style = _PENS.get(stroke.layer, _THIN)
            painter.setPen(QPen(_GRID if stroke.layer is Layer.GRID else _INK, weight, style))
            line = QPolygonF([place(point) for point in stroke.points])
            painter.drawPolygon(line) if stroke.is_closed else painter.drawPolyline(line)
        painter.setPen(QPen(Qt.GlobalColor.black))
        for words in drawing.words:
            _paint_words(painter, words, place(words.at), words.height_mm * factor)
    finally:
        painter.restore()


def _paint_picture(
    painter: QPainter, picture: Picture, sheet: QRectF, corner: QPointF, factor: float
) -> None:
    try:
        changed = picture.path.stat().st_mtime_ns
    except OSError:
        return
    image, width_px = _photo(str(picture.path), changed)
    if image.isNull():
        return
    width = width_px / picture.px_per_mm * factor
    painter.save()
    painter.setClipRect(sheet)
    painter.setOpacity(_FADED)
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
    painter.drawImage(QRectF(corner.x(), corner.y(), width, width * image.height() / image.width()), image)
    painter.restore()


@lru_cache(maxsize=4)
def _photo(path: str, _changed: int) -> tuple[QImage, int]:
    """Return a photo upright, no larger than paper shows, and the width it has in full."""
    reader = QImageReader(path)
    reader.setAutoTransform(True)
    size = reader.size()
    is_turned = bool(reader.transformation() & QImageIOHandler.Transformation.TransformationRotate90)
    width = size.height() if is_turned else size.width()
    if max(size.width(), size.height()) > _MOST_PIXELS:
        reader.setScaledSize(size.scaled(_MOST_PIXELS, _MOST_PIXELS, Qt.AspectRatioMode.KeepAspectRatio))
    return reader.read(), width


def _paint_words(painter: QPainter, words: Words, at: QPointF, height: float) -> None:
    font = QFont(painter.font())
    font.setPixelSize(max(1, round(max(height * 1.35, _LEAST_LETTER))))
    painter.setFont(font)
    width = QFontMetricsF(font).horizontalAdvance(words.text)
    painter.drawText(QPointF(at.x() - (width / 2.0 if words.is_centred else 0.0), at.y()), words.text)
