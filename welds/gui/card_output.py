"""Taking the card out of the window: paper, PDF, clipboard."""

import re
from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication

from welds.advice.card import Card
from welds.errors import WeldsError
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.prompts import Prompts


class CardOutput(QObject):
    """Prints, saves and copies the card on screen; says in the status line what it did."""

    def __init__(
        self, presenter: SetupPresenter, prompts: Prompts, say: Callable[[str], None], parent: QObject
    ) -> None:
        super().__init__(parent)
        self._presenter, self._prompts, self._say = presenter, prompts, say

    @property
    def is_ready(self) -> bool:
        """True where the card is there and up to date."""
        return self._card() is not None

    def print_card(self) -> None:
        """Print the card on one page."""
        card = self._card()
        if card is None:
            return
        printer = self._prompts.ask_printer()
        if printer is None:
            return
        from welds.gui.page import usual_paper
        from welds.gui.pdf import card_page, paint_page

        page = card_page(card, self._presenter.units, self._presenter.engine.tables.sources)
        wanted = page.layout(usual_paper())  # the sheet itself is the printer's choice
        printer.setPageOrientation(wanted.orientation())
        printer.setPageMargins(wanted.margins(), wanted.units())
        printer.setDocName(page.title)
        paint_page(printer, page)
        self._say(self._with_stops(self.tr("The card is on its way to the printer.")))

    def save_pdf(self) -> None:
        """Write the card as a PDF where the person says; a file that cannot be written is told, not lost."""
        card = self._card()
        if card is None:
            return
        path = self._prompts.ask_save_path(
            self.tr("Save the card as PDF"), suggested_name(card), self.tr("PDF (*.pdf)")
        )
        if path is None:
            return
        from welds.gui.pdf import write_card_pdf

        path = path if path.suffix else path.with_suffix(".pdf")
        sources = self._presenter.engine.tables.sources
        try:
            write_card_pdf(path, card, self._presenter.units, sources)
        except WeldsError as error:
            self._prompts.tell(self.tr("The PDF was not written"), str(error))
        else:
            self._say(self._with_stops(self.tr("Saved as {path}.").format(path=path)))

    def copy_text(self) -> None:
        """Put the card on the clipboard as plain text."""
        card = self._card()
        if card is not None:
            text = self._presenter.engine.card_text(card, self._presenter.units)
            QGuiApplication.clipboard().setText(text)
            self._say(self._with_stops(self.tr("The card is on the clipboard as text.")))

    def _card(self) -> Card | None:
        return None if self._presenter.is_stale else self._presenter.card

    def _with_stops(self, words: str) -> str:
        if self._presenter.open_stops:
            words += " " + self.tr("Its stop cautions are not ticked yet: the boxes stand open on it.")
        return words


def suggested_name(card: Card) -> str:
    """Return a file name made of what the card is for."""
    request = card.request
    words = f"{request.process} {request.metal} {request.thickness_mm:.2f}mm {request.joint}"
    return re.sub(r"[^A-Za-z0-9.]+", "-", words) + ".pdf"
