"""A picture of its own as a PNG or SVG file."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QRect, QRectF, QSize
from PySide6.QtGui import QImage, QImageWriter, QPainter
from PySide6.QtSvg import QSvgGenerator

from welds.errors import InputError
from welds.language import mark, tr
from welds.reference.whole_file import write_whole

CSS_DPI = 96
LARGEST_PX = 20_000

Paint = Callable[[QPainter, QRectF], None]


def write_picture(path: Path | str, width: int, height: int, paint: Paint, dpi: int = 300) -> None:
    """Write what `paint` draws into a rectangle of this size, in pixels of 1/96 inch, by the file's ending.

    Raises
    ------
    InputError
        If the ending is neither .png nor .svg.
    FileUnavailableError
        If the file cannot be written.
    """
    file = Path(path)
    makers: dict[str, Callable[[], bytes]] = {
        ".png": lambda: png(width, height, paint, dpi),
        ".svg": lambda: svg(width, height, paint),
    }
    maker = makers.get(file.suffix.lower())
    if maker is None:
        raise InputError(mark("picture file"), file.name, tr("a name that ends in .png or .svg"))
    write_whole(file, maker())


def png(width: int, height: int, paint: Paint, dpi: int = 300) -> bytes:
    """Return the picture as the bytes of a PNG, sharper with more dots per inch but no larger on paper."""
    scale = min(dpi / CSS_DPI, LARGEST_PX / max(width, height))
    image = QImage(round(width * scale), round(height * scale), QImage.Format.Format_RGB32)
    image.fill("white")
    image.setDotsPerMeterX(round(scale * CSS_DPI / 0.0254))
    image.setDotsPerMeterY(round(scale * CSS_DPI / 0.0254))
    painter = QPainter(image)
    try:
        painter.scale(scale, scale)
        paint(painter, QRectF(0.0, 0.0, width, height))
    finally:
        painter.end()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, b"png").write(image)
    return bytes(buffer.data().data())


def svg(width: int, height: int, paint: Paint) -> bytes:
    """Return the picture as the bytes of an SVG 1.1 document."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator(QSvgGenerator.SvgVersion.Svg11)
    generator.setOutputDevice(buffer)
    generator.setResolution(CSS_DPI)
    generator.setSize(QSize(width, height))
    generator.setViewBox(QRect(0, 0, width, height))
    painter = QPainter(generator)
    try:
        paint(painter, QRectF(0.0, 0.0, width, height))
    finally:
        painter.end()
    return bytes(buffer.data().data())
