"""A drawing as PDF at full size, on a sheet as large as it needs."""

from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QRectF, QSizeF
from PySide6.QtGui import QGuiApplication, QPageLayout, QPageSize, QPainter, QPdfWriter

from welds.gui.page import CSS_DPI, MARGIN_MM, PX_PER_MM
from welds.gui.pdf import PDF_DPI
from welds.gui.plan_painter import paint_plan
from welds.job.plan_drawing import PlanDrawing
from welds.reference.whole_file import write_whole


def write_plan_pdf(path: Path | str, drawing: PlanDrawing) -> None:
    """Write the drawing at full size; a printer's poster setting spreads it over several sheets."""
    write_whole(path, plan_pdf(drawing))


def plan_pdf(drawing: PlanDrawing) -> bytes:
    """Return the drawing as the bytes of a PDF."""
    # Fonts need an application; at the command line there is none, and it must live as long as the writer.
    application = QGuiApplication.instance() or QGuiApplication(["welds", "-platform", "offscreen"])
    left, bottom, right, top = drawing.box
    sheet = QSizeF(right - left + 2.0 * MARGIN_MM, top - bottom + 2.0 * MARGIN_MM)
    size = QPageSize(sheet, QPageSize.Unit.Millimeter, "", QPageSize.SizeMatchPolicy.ExactMatch)
    margin = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(PDF_DPI)
    layout = QPageLayout(size, QPageLayout.Orientation.Portrait, margin, QPageLayout.Unit.Millimeter)
    writer.setPageLayout(layout)
    writer.setTitle(drawing.title)
    writer.setCreator("welds")
    painter = QPainter(writer)
    try:
        dots = writer.logicalDpiX() / CSS_DPI
        painter.scale(dots, dots)
        paint_plan(
            painter, QRectF(0.0, 0.0, writer.width() / dots, writer.height() / dots), drawing, PX_PER_MM
        )
    finally:
        painter.end()
    del writer, application
    return bytes(buffer.data().data())
