"""Taking the job out of the window: the packet on paper or as PDF, the plan on the clipboard."""

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QGuiApplication

from welds.errors import WeldsError
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.prompts import Prompts
from welds.job.plan import JobPlan


class JobOutput(QObject):
    """Acts on the job in front; `readiness_changed` where there is one now, or none any more."""

    readiness_changed = Signal()

    def __init__(
        self, presenter: JobPresenter, prompts: Prompts, say: Callable[[str], None], parent: QObject
    ) -> None:
        super().__init__(parent)
        self._presenter, self._prompts, self._say = presenter, prompts, say
        presenter.opened.connect(lambda _opened: self.readiness_changed.emit())

    @property
    def is_ready(self) -> bool:
        """True where a job is planned."""
        return self._plan is not None

    @property
    def _plan(self) -> JobPlan | None:
        return self._presenter.shown.plan if self._presenter.shown is not None else None

    def print_card(self) -> None:
        """Print the whole packet."""
        plan = self._plan
        printer = self._prompts.ask_printer() if plan is not None else None
        if plan is None or printer is None:
            return
        from welds.gui.packet_pdf import job_pages, paint_pages
        from welds.gui.page import usual_paper

        paper = usual_paper()
        pages = job_pages(plan, self._presenter.units, self._presenter.engine.tables.sources, paper)
        printer.setDocName(plan.job.name)
        paint_pages(printer, pages, paper)
        self._say(self.tr("Sent to the printer: {count} pages.").format(count=len(pages)))

    def save_pdf(self) -> None:
        """Ask where, and write the packet."""
        shown = self._presenter.shown
        if shown is None or shown.plan is None:
            return
        name = f"{shown.path.stem}.pdf"
        path = self._prompts.ask_save_path(self.tr("Save the packet"), name, self.tr("PDF (*.pdf)"))
        if path is None:
            return
        from welds.gui.packet_pdf import write_packet_pdf

        path = path if path.suffix else path.with_suffix(".pdf")
        try:
            write_packet_pdf(path, shown.plan, self._presenter.units, self._presenter.engine.tables.sources)
        except WeldsError as error:
            self._prompts.tell(self.tr("The packet was not written"), str(error))
        else:
            self._say(self.tr("Saved as {path}.").format(path=path))

    def copy_text(self) -> None:
        """Put the plan on the clipboard as plain text."""
        plan = self._plan
        if plan is None:
            return
        from welds.report.job_texts import job_text

        QGuiApplication.clipboard().setText(job_text(plan, self._presenter.units))
        self._say(self.tr("The plan is on the clipboard."))
