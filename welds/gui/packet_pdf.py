"""The packet of a job as one PDF."""

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QRectF
from PySide6.QtGui import QGuiApplication, QPagedPaintDevice, QPageLayout, QPainter, QPdfWriter

from welds.gui.page import CSS_DPI, PX_PER_MM, Page, Paint, Paper, usual_paper
from welds.gui.pdf import PDF_DPI, card_page
from welds.gui.plan_painter import paint_plan
from welds.job.plan import JobPlan
from welds.job.plan_drawing import PlanDrawing
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.reference.whole_file import write_whole
from welds.report.packet import PacketPage, packet_pages

_BETWEEN = 12.0
"""Pixels of 1/96 inch between drawings on one page."""
_TALLEST = 1.2
"""A drawing is not made taller than this many page widths."""


def write_packet_pdf(
    path: Path | str, plan: JobPlan, units: Units, sources: Mapping[str, Source], paper: Paper | None = None
) -> None:
    """Write every page of the job into one PDF."""
    sheet = paper or usual_paper()
    write_whole(path, pages_pdf(plan.job.name, job_pages(plan, units, sources, sheet), sheet))


def job_pages(plan: JobPlan, units: Units, sources: Mapping[str, Source], paper: Paper) -> list[Page]:
    """Return every page of the job's packet."""
    return [_page(each, units, sources, paper) for each in packet_pages(plan, units, sources)]


def pages_pdf(title: str, pages: list[Page], paper: Paper) -> bytes:
    """Return several pages as the bytes of one PDF."""
    # Fonts need an application; at the command line there is none, and it must live as long as the writer.
    application = QGuiApplication.instance() or QGuiApplication(["welds", "-platform", "offscreen"])
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(PDF_DPI)
    writer.setTitle(title)
    writer.setCreator("welds")
    paint_pages(writer, pages, paper)
    del writer, application
    return bytes(buffer.data().data())


def paint_pages(device: QPagedPaintDevice, pages: list[Page], paper: Paper) -> None:
    """Paint pages onto a PDF or a printer, each in its own layout."""
    device.setPageLayout(pages[0].layout(paper))
    painter = QPainter(device)
    try:
        for number, page in enumerate(pages):
            if number:
                device.setPageLayout(page.layout(paper))
                device.newPage()
            dots = device.logicalDpiX() / CSS_DPI
            painter.save()
            painter.scale(dots, dots)
            page.paint(painter, QRectF(0.0, 0.0, device.width() / dots, device.height() / dots).size())
            painter.restore()
    finally:
        painter.end()


def _page(each: PacketPage, units: Units, sources: Mapping[str, Source], paper: Paper) -> Page:
    if each.card is not None:
        return card_page(each.card, units, sources)
    if not each.drawings:
        return Page(each.title, each.html)
    bare = Page(each.title, each.html, is_landscape=each.is_landscape)
    sheet = bare.layout(paper).paintRect(QPageLayout.Unit.Millimeter)
    return replace(bare, pictures=_pictures(each.drawings, sheet.height() * PX_PER_MM))


def _pictures(drawings: tuple[PlanDrawing, ...], page_height: float) -> Paint:
    """Return a painter that gives the drawings all the room below the text, more than a card's get."""

    def paint(painter: QPainter, area: QRectF) -> None:
        room = page_height - area.top() - _BETWEEN * (len(drawings) - 1)
        height = min(room / len(drawings), _TALLEST * area.width())
        for number, drawing in enumerate(drawings):
            top = area.top() + number * (height + _BETWEEN)
            paint_plan(painter, QRectF(area.left(), top, area.width(), height), drawing)

    return paint
