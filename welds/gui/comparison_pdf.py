"""A comparison as a PDF of one black-and-white page, the long side level."""

from pathlib import Path

from welds.gui.page import Page, Paper
from welds.gui.pdf import write_page_pdf
from welds.quantities.units import Units
from welds.report.comparison import Comparison
from welds.report.comparison_texts import comparison_html, comparison_title


def comparison_page(comparison: Comparison, units: Units) -> Page:
    """Return the comparison as a page."""
    return Page(comparison_title(comparison, units), comparison_html(comparison, units), is_landscape=True)


def write_comparison_pdf(
    path: Path | str, comparison: Comparison, units: Units, paper: Paper | None = None
) -> None:
    """Write the comparison as a PDF of one page."""
    write_page_pdf(path, comparison_page(comparison, units), paper)
