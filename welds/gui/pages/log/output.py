"""Taking the weld in hand out of the window as its preliminary procedure sheet: paper, PDF, clipboard."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QGuiApplication

from welds.errors import WeldsError
from welds.gui.pages.log.files import LogFiles
from welds.gui.pages.log.presenter import LogPresenter
from welds.gui.prompts import Prompts

if TYPE_CHECKING:
    from welds.gui.page import Page
    from welds.report.procedure_sheet import ProcedureSheet


class LogOutput(QObject):
    """Prints, saves and copies the sheet; `readiness_changed` says whether there is a weld to make one of."""

    readiness_changed = Signal()

    def __init__(
        self,
        presenter: LogPresenter,
        files: LogFiles,
        prompts: Prompts,
        say: Callable[[str], object],
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._presenter, self._files, self._prompts, self._say = presenter, files, prompts, say
        presenter.detail_changed.connect(lambda _detail: self.readiness_changed.emit())
        files.preview_changed.connect(lambda _shown: self.readiness_changed.emit())

    @property
    def is_ready(self) -> bool:
        """True where a weld is in hand and in sight."""
        return self._presenter.detail is not None and not self._files.is_previewing

    def print_card(self) -> None:
        """Print the sheet on one page."""
        sheet = self._sheet()
        printer = None if sheet is None else self._prompts.ask_printer()
        if sheet is None or printer is None:
            return
        from welds.gui.page import usual_paper
        from welds.gui.pdf import paint_page

        page = _page(sheet)
        printer.setPageLayout(page.layout(usual_paper()))
        printer.setDocName(page.title)
        paint_page(printer, page)
        self._say(self.tr("The procedure sheet is on its way to the printer."))

    def save_pdf(self) -> None:
        """Write the sheet as a PDF where the person says."""
        sheet = self._sheet()
        if sheet is None:
            return
        file = self._prompts.ask_save_path(
            self.tr("Preliminary procedure sheet"), f"{sheet.name}.pdf", self.tr("PDF (*.pdf)")
        )
        if file is None:
            return
        from welds.gui.pdf import write_page_pdf

        file = file if file.suffix else file.with_suffix(".pdf")
        try:
            write_page_pdf(file, _page(sheet))
        except WeldsError as error:
            self._prompts.tell(self.tr("The sheet was not written"), str(error))
        else:
            self._say(self.tr("Saved as {path}.").format(path=file))

    def copy_text(self) -> None:
        """Put the sheet on the clipboard as plain text."""
        sheet = self._sheet()
        if sheet is not None:
            QGuiApplication.clipboard().setText(sheet.text)
            self._say(self.tr("The procedure sheet is on the clipboard as text."))

    def _sheet(self) -> "ProcedureSheet | None":
        detail = self._presenter.detail
        if detail is None or not self.is_ready:
            return None
        from welds.report.procedure_sheet import procedure_sheet

        return procedure_sheet(detail.entry, self._presenter.engine.tables, self._presenter.units)


def _page(sheet: "ProcedureSheet") -> "Page":
    from welds.gui.page import Page

    return Page(sheet.title, sheet.html)
