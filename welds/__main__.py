"""The one entry, `welds` and `python -m welds`: lends the command line what needs Qt, imported on use."""

import sys
from typing import TYPE_CHECKING

from welds.cli.main import main as run_command_line
from welds.cli.main import report_fault

if TYPE_CHECKING:
    from collections.abc import Mapping

    from welds.quantities.units import Units
    from welds.reference.sources import Source


def open_window(log: str, lang: str) -> int:
    """Open the window, on another log and in another language where they are named; return its exit code."""
    from welds.gui.app import run

    return run(sys.argv[:1], log, lang)


def write_pdf(path: str, report: object, units: "Units", sources: "Mapping[str, Source]") -> None:
    """Write a card, a chart, a comparison, a plan or a procedure sheet as PDF."""
    from welds.advice.card import Card
    from welds.gui.comparison_pdf import write_comparison_pdf
    from welds.gui.packet_pdf import write_packet_pdf
    from welds.gui.page import Page
    from welds.gui.pdf import write_card_pdf, write_chart_pdf, write_page_pdf
    from welds.gui.plan_pdf import write_plan_pdf
    from welds.job.plan import JobPlan
    from welds.job.plan_drawing import PlanDrawing
    from welds.report.chart import Chart
    from welds.report.comparison import Comparison
    from welds.report.procedure_sheet import ProcedureSheet

    if isinstance(report, Card):
        write_card_pdf(path, report, units, sources)
    elif isinstance(report, Chart):
        write_chart_pdf(path, report, units)
    elif isinstance(report, Comparison):
        write_comparison_pdf(path, report, units)
    elif isinstance(report, JobPlan):
        write_packet_pdf(path, report, units, sources)
    elif isinstance(report, PlanDrawing):
        write_plan_pdf(path, report)
    elif isinstance(report, ProcedureSheet):
        write_page_pdf(path, Page(report.title, report.html))
    else:
        raise TypeError(f"nothing that can be put on paper: {type(report)}")


def main() -> int:
    """Run what the command line asks for."""
    sys.excepthook = report_fault
    return run_command_line(sys.argv[1:], open_window=open_window, write_pdf=write_pdf)


if __name__ == "__main__":
    sys.exit(main())
