"""One page of paper: a document of text with pictures beneath, made to fit; the same for printer and PDF."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QLocale, QMarginsF, QRectF, QSizeF
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPalette,
    QTextDocument,
)

CSS_DPI = 96.0
MARGIN_MM = 10.0
PX_PER_MM = CSS_DPI / 25.4
GAP_MM = 3.0
PICTURE_MM = (72.0, 62.0, 52.0, 44.0)
"""Heights tried for the pictures, the preferred one first."""
SCALES = (1.0, 0.95, 0.9, 0.85, 0.8)
"""Sizes tried for the text at each height of the pictures."""
LARGE_SCALES = (1.5, 1.4, 1.3, 1.2, 1.1)
"""Tried first where no picture wants the room: a wall chart is read from afar."""
SHRINK = 0.95
"""When all of that is too large, the text is made smaller by this again and again: nothing is cut off."""

Paint = Callable[[QPainter, QRectF], None]


class Paper(StrEnum):
    """The two sheets that printers hold."""

    A4 = "a4"
    LETTER = "letter"


@dataclass(frozen=True, slots=True)
class Page:
    """What stands on one page: HTML in the subset Qt lays out, and a painter of pictures for the foot."""

    title: str
    html: str
    pictures: Paint | None = None
    is_landscape: bool = False

    def layout(self, paper: Paper) -> QPageLayout:
        """Return size, direction and margins of the sheet."""
        size = QPageSize(QPageSize.PageSizeId.A4 if paper is Paper.A4 else QPageSize.PageSizeId.Letter)
        turn = QPageLayout.Orientation.Landscape if self.is_landscape else QPageLayout.Orientation.Portrait
        margin = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
        return QPageLayout(size, turn, margin, QPageLayout.Unit.Millimeter)

    def paint(self, painter: QPainter, room: QSizeF) -> None:
        """Draw the page into the room, given in pixels of 1/96 inch, from the painter's origin."""
        ruler = QImage(1, 1, QImage.Format.Format_Mono)
        ruler.setDotsPerMeterX(round(PX_PER_MM * 1000.0))
        ruler.setDotsPerMeterY(round(PX_PER_MM * 1000.0))
        document = QTextDocument()
        document.documentLayout().setPaintDevice(ruler)
        document.setDocumentMargin(0.0)
        document.setHtml(self.html)
        for scale, picture_mm in _sizes(self.pictures is not None):
            below = (picture_mm + GAP_MM) * PX_PER_MM if picture_mm else 0.0
            document.setTextWidth(room.width() / scale)
            taken = document.size().height() * scale
            if taken + below <= room.height() and document.idealWidth() * scale <= room.width() + 1.0:
                break
        _paint_document(painter, document, scale)
        if self.pictures is not None:
            top = taken + GAP_MM * PX_PER_MM
            height = min(room.height() - top, PICTURE_MM[0] * PX_PER_MM)
            self.pictures(painter, QRectF(0.0, top, room.width(), height))


def usual_paper() -> Paper:
    """Return the sheet that is usual where the computer says it stands."""
    is_us = QLocale.system().measurementSystem() is QLocale.MeasurementSystem.ImperialUSSystem
    return Paper.LETTER if is_us else Paper.A4


def _sizes(has_pictures: bool) -> Iterator[tuple[float, float]]:
    """Yield (text scale, picture height in mm) from the most comfortable downwards, without end."""
    heights = PICTURE_MM if has_pictures else (0.0,)
    for height in heights:
        for scale in SCALES if has_pictures else LARGE_SCALES + SCALES:
            yield scale, height
    scale = SCALES[-1]
    while True:
        scale *= SHRINK
        yield scale, heights[-1]


def _paint_document(painter: QPainter, document: QTextDocument, scale: float) -> None:
    painter.save()
    try:
        painter.scale(scale, scale)
        context = QAbstractTextDocumentLayout.PaintContext()
        # Without a colour of its own, text takes the window's: light letters on white paper in a dark theme.
        palette = QPalette("white")
        palette.setColor(QPalette.ColorRole.Text, "black")
        context.palette = palette
        document.documentLayout().draw(painter, context)
    finally:
        painter.restore()
