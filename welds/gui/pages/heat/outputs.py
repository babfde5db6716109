"""Taking the heat picture out of the window: picture files, numbers, paper, clipboard."""

import re
from collections.abc import Callable, Mapping
from html import escape
from pathlib import Path

from PySide6.QtCore import QObject, QRectF
from PySide6.QtGui import QGuiApplication, QPainter

from welds.errors import WeldsError
from welds.gui.drawing.export import write_picture
from welds.gui.page import Page
from welds.gui.pages.heat.drawings import ON_PAPER, SHEET_PX, HeatDrawings
from welds.gui.pages.heat.presenter import HeatPresenter
from welds.gui.prompts import Prompts
from welds.reference.whole_file import write_whole
from welds.report.wording import severity_word

Write = Callable[[Path], None]


class HeatOutput(QObject):
    """Saves, prints and copies what is on show; says in the status line what it did."""

    def __init__(
        self,
        presenter: HeatPresenter,
        drawings: HeatDrawings,
        prompts: Prompts,
        say: Callable[[str], None],
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._presenter, self._drawings = presenter, drawings
        self._prompts, self._say = prompts, say

    def save(self) -> None:
        """Write the picture or its numbers, as the file's ending says."""
        paint = self._drawings.paint_sheet
        self._save(
            self.tr("Save the picture or its numbers"),
            {
                ".png": lambda path: write_picture(path, *SHEET_PX, paint),
                ".svg": lambda path: write_picture(path, *SHEET_PX, paint),
                ".csv": self._write_numbers,
                ".pdf": self._write_pdf,
            },
        )

    def save_pdf(self) -> None:
        """Write a page with picture and figures."""
        self._save(self.tr("Save the preview as PDF"), {".pdf": self._write_pdf})

    @property
    def is_ready(self) -> bool:
        """True where there is a card to preview."""
        return self._presenter.card is not None

    def print_card(self) -> None:
        """Print a page with picture and figures."""
        if self._presenter.picture is None:
            return
        printer = self._prompts.ask_printer()
        if printer is None:
            return
        from welds.gui.page import usual_paper
        from welds.gui.pdf import paint_page

        page = self._page()
        printer.setPageLayout(page.layout(usual_paper()))
        printer.setDocName(page.title)
        paint_page(printer, page)
        self._say(self.tr("The page is on its way to the printer."))

    def copy_text(self) -> None:
        """Put settings and figures on the clipboard as plain text."""
        if self._presenter.picture is not None:
            QGuiApplication.clipboard().setText("\n".join(self._lines()))
            self._say(self.tr("The figures are on the clipboard as text."))

    def _lines(self) -> list[str]:
        picture = self._presenter.picture
        assert picture is not None
        knobs = ", ".join(knob.text(self._presenter.units) for knob in self._presenter.knobs)
        figures = [
            f"{each.name}: {each.value}" + (f" ({each.error})" if each.error else "")
            for each in (*picture.figures, picture.limits)
        ]
        note = self.tr("Conduction only, give or take its error: to think with, not a procedure.")
        return [self._presenter.title, knobs, picture.verdict.text, *figures, note]

    def _page(self) -> Page:
        card = self._presenter.card
        assert card is not None
        cautions = "".join(
            f"<p><b>{escape(severity_word(each.severity))}:</b> {escape(each.text)}</p>"
            for each in card.stops
        )
        picture = self._presenter.picture
        assert picture is not None
        title, settings, said, *_figures, note = self._lines()
        rows = "".join(
            f"<tr><td>{escape(each.name)}&nbsp;&nbsp;</td><td><b>{escape(each.value)}</b>&nbsp;&nbsp;</td>"
            f"<td>{escape(each.error)}</td></tr>"
            for each in (*picture.figures, picture.limits)
        )
        html = (
            f"<h3>{escape(title)}</h3>{cautions}<p>{escape(settings)}<br><b>{escape(said)}</b></p>"
            f"<table>{rows}</table><p>{escape(note)} {escape(card.notice)}</p>"
        )

        def pictures(painter: QPainter, area: QRectF) -> None:
            self._drawings.paint_views(painter, area, ON_PAPER)

        return Page(title, html, pictures)

    def _write_pdf(self, path: Path) -> None:
        from welds.gui.pdf import write_page_pdf

        write_page_pdf(path, self._page(), None)

    def _write_numbers(self, path: Path) -> None:
        write_whole(path, self._presenter.csv())

    def _save(self, title: str, write: Mapping[str, Write]) -> None:
        """Ask for a file and write it in the form its ending names; the first form where it has none."""
        if self._presenter.picture is None:
            return
        name = re.sub(r"[^A-Za-z0-9.]+", "-", f"weld-preview {self._presenter.title}").strip("-")
        kinds = ";;".join(f"{ending[1:].upper()} (*{ending})" for ending in write)
        path = self._prompts.ask_save_path(title, name + next(iter(write)), kinds)
        if path is None:
            return
        path = path if path.suffix else path.with_suffix(next(iter(write)))
        act = write.get(path.suffix.lower())
        failed = self.tr("The file was not written")
        if act is None:
            allowed = self.tr("{name}: its ending has to be one of {allowed}.")
            self._prompts.tell(failed, allowed.format(name=path.name, allowed=", ".join(write)))
            return
        try:
            act(path)
        except WeldsError as error:
            self._prompts.tell(failed, str(error))
        else:
            self._say(self.tr("Saved as {path}.").format(path=path))
