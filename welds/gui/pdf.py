"""Card and chart as a PDF of one black-and-white page; also without a window, for the command line."""

from collections.abc import Mapping
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QRectF, QSizeF
from PySide6.QtGui import QGuiApplication, QPagedPaintDevice, QPainter, QPdfWriter

from welds.advice.card import Card
from welds.gui.drawing.ink import PRINT
from welds.gui.drawing.joint import paint_joint
from welds.gui.drawing.scene import scene_from_card
from welds.gui.drawing.wave import paint_wave
from welds.gui.page import CSS_DPI, Page, Paper, usual_paper
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.reference.whole_file import write_whole
from welds.report import layout
from welds.report.chart import Chart, chart_title
from welds.report.chart_texts import chart_html
from welds.report.html_card import html_card

PDF_DPI = 1200
WAVE_SHARE = 0.34
PICTURE_SCALE = 0.72
"""Words in the pictures as small as the card's small print, so that the drawing gets the room."""


def card_page(card: Card, units: Units, sources: Mapping[str, Source]) -> Page:
    """Return the card as a page, its joint and its wave drawn at the foot."""

    def pictures(painter: QPainter, area: QRectF) -> None:
        wave = _wave(card)
        painter.save()
        try:
            painter.translate(area.topLeft())
            painter.scale(PICTURE_SCALE, PICTURE_SCALE)
            width, height = area.width() / PICTURE_SCALE, area.height() / PICTURE_SCALE
            joint_width = width * (1.0 - WAVE_SHARE) if wave else width
            paint_joint(painter, QRectF(0.0, 0.0, joint_width, height), scene_from_card(card, units), PRINT)
            if wave:
                paint_wave(painter, QRectF(joint_width, 0.0, width - joint_width, height), *wave, PRINT)
        finally:
            painter.restore()

    return Page(layout.title(card.request), html_card(card, units, sources), pictures)


def chart_page(chart: Chart, units: Units) -> Page:
    """Return the wall chart as a page, the long side level."""
    return Page(chart_title(chart), chart_html(chart, units), is_landscape=True)


def write_card_pdf(
    path: Path | str,
    card: Card,
    units: Units,
    sources: Mapping[str, Source],
    paper: Paper | None = None,
) -> None:
    """Write the card as a PDF of one page."""
    write_page_pdf(path, card_page(card, units, sources), paper)


def write_chart_pdf(path: Path | str, chart: Chart, units: Units, paper: Paper | None = None) -> None:
    """Write the wall chart as a PDF of one page."""
    write_page_pdf(path, chart_page(chart, units), paper)


def write_page_pdf(path: Path | str, page: Page, paper: Paper | None = None) -> None:
    """Write any page; on the paper usual here unless one is named.

    Raises
    ------
    FileUnavailableError
        If the file cannot be written.
    """
    write_whole(path, page_pdf(page, paper or usual_paper()))


def page_pdf(page: Page, paper: Paper) -> bytes:
    """Return the page as the bytes of a PDF."""
    # Fonts need an application; at the command line there is none, and it must live as long as the writer.
    application = QGuiApplication.instance() or QGuiApplication(["welds", "-platform", "offscreen"])
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(PDF_DPI)
    writer.setPageLayout(page.layout(paper))
    writer.setTitle(page.title)
    writer.setCreator("welds")
    paint_page(writer, page)
    del writer, application
    return bytes(buffer.data().data())


def paint_page(device: QPagedPaintDevice, page: Page) -> None:
    """Draw the page on a printer or PDF whose page layout is already set."""
    painter = QPainter(device)
    try:
        scale = device.logicalDpiX() / CSS_DPI
        painter.scale(scale, scale)
        page.paint(painter, QSizeF(device.width() / scale, device.height() / scale))
    finally:
        painter.end()


def _wave(card: Card) -> tuple[float, float, float] | None:
    """Frequency, percent electrode negative and current; nothing for a card without AC."""
    starts = [
        card.settings[name].start if name in card.settings else None
        for name in ("ac_frequency", "electrode_negative", "current")
    ]
    numbers = [start for start in starts if isinstance(start, float | int) and not isinstance(start, bool)]
    return (numbers[0], numbers[1], numbers[2]) if len(numbers) == len(starts) else None
