"""Taking a comparison out of the window: paper, PDF, text files, pictures."""

import re
from collections.abc import Callable, Mapping
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication

from welds.advice.card import Card
from welds.advice.request import Joint
from welds.errors import WeldsError
from welds.gui.page import Page
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.gui.prompts import Prompts
from welds.reference.whole_file import write_whole
from welds.report.comparison import Comparison

Write = Callable[[Path], None]


class CompareOutput(QObject):
    """Prints and saves what is on show; says in the status line what it did."""

    def __init__(
        self, presenter: ComparePresenter, prompts: Prompts, say: Callable[[str], None], parent: QObject
    ) -> None:
        super().__init__(parent)
        self._presenter, self._prompts, self._say = presenter, prompts, say

    @property
    def is_ready(self) -> bool:
        """True where columns are on show."""
        return self._comparison() is not None

    def print_card(self) -> None:
        """Print the comparison on one page."""
        comparison = self._comparison()
        if comparison is not None:
            from welds.gui.comparison_pdf import comparison_page

            self._print(comparison_page(comparison, self._presenter.units))

    def save_pdf(self) -> None:
        """Write the comparison as a PDF, page, Markdown or CSV, as the file's name says."""
        comparison = self._comparison()
        if comparison is None:
            return
        from welds.gui.comparison_pdf import write_comparison_pdf
        from welds.report.comparison_texts import comparison_csv, comparison_html, comparison_markdown

        units = self._presenter.units
        self._save(
            self.tr("Save the comparison"),
            "side-by-side",
            {
                ".pdf": lambda path: write_comparison_pdf(path, comparison, units),
                ".html": lambda path: write_whole(path, comparison_html(comparison, units)),
                ".md": lambda path: write_whole(path, comparison_markdown(comparison, units)),
                ".csv": lambda path: write_whole(path, comparison_csv(comparison)),
            },
        )

    def copy_text(self) -> None:
        """Put the comparison on the clipboard as plain text."""
        comparison = self._comparison()
        if comparison is not None:
            from welds.report.comparison_texts import comparison_text

            QGuiApplication.clipboard().setText(comparison_text(comparison, self._presenter.units))
            self._say(self.tr("The comparison is on the clipboard as text."))

    def print_column(self, place: int) -> None:
        """Print one column's card."""
        card = self._card(place)
        if card is not None:
            from welds.gui.pdf import card_page

            self._print(card_page(card, self._presenter.units, self._presenter.engine.tables.sources))

    def save_column(self, place: int) -> None:
        """Write one column's card as a PDF."""
        card = self._card(place)
        if card is None:
            return
        from welds.gui.pdf import write_card_pdf

        units, sources = self._presenter.units, self._presenter.engine.tables.sources
        request = card.request
        name = f"{request.process} {request.metal} {request.thickness_mm:.2f}mm {request.joint}"
        self._save(
            self.tr("Save this column's card"),
            re.sub(r"[^A-Za-z0-9.]+", "-", name),
            {".pdf": lambda path: write_card_pdf(path, card, units, sources)},
        )

    def save_picture(self, name: str, write: Mapping[str, Write]) -> None:
        """Write the picture on show."""
        self._save(self.tr("Save the picture"), name, write)

    def save_wall_chart(self) -> None:
        """Write the wall chart of the base's metal and process: thickness down, joint across."""
        comparison = self._comparison()
        if comparison is None:
            return
        from welds.gui.pdf import write_chart_pdf
        from welds.quantities.length import parse_length
        from welds.report.chart import THICKNESSES, make_chart

        units, engine = self._presenter.units, self._presenter.engine
        thicknesses = [parse_length(text, field="thickness").mm for text in THICKNESSES[units]]

        def write(path: Path) -> None:
            chart = make_chart(
                comparison.pinned.request, thicknesses, list(Joint), engine.card,
                keeps_rows=False, keeps_columns=False,
            )  # fmt: skip
            write_chart_pdf(path, chart, units)

        request = comparison.pinned.request
        self._save(
            self.tr("Save the wall chart"), f"wall-chart-{request.process}-{request.metal}", {".pdf": write}
        )

    def _save(self, title: str, name: str, write: Mapping[str, Write]) -> None:
        """Ask for a file and write it in the form that its ending names; the first form where it has none."""
        kinds = ";;".join(f"{ending[1:].upper()} (*{ending})" for ending in write)
        first = next(iter(write))
        path = self._prompts.ask_save_path(title, name + first, kinds)
        if path is None:
            return
        path = path if path.suffix else path.with_suffix(first)
        act = write.get(path.suffix.lower())
        if act is None:
            allowed = ", ".join(write)
            self._prompts.tell(
                self.tr("The file was not written"),
                self.tr("{name}: its ending has to be one of {allowed}.").format(
                    name=path.name, allowed=allowed
                ),
            )
            return
        try:
            act(path)
        except WeldsError as error:
            self._prompts.tell(self.tr("The file was not written"), str(error))
        else:
            self._say(self.tr("Saved as {path}.").format(path=path))

    def _print(self, page: Page) -> None:
        printer = self._prompts.ask_printer()
        if printer is None:
            return
        from welds.gui.page import usual_paper
        from welds.gui.pdf import paint_page

        printer.setPageLayout(page.layout(usual_paper()))
        printer.setDocName(page.title)
        paint_page(printer, page)
        self._say(self.tr("The page is on its way to the printer."))

    def _comparison(self) -> Comparison | None:
        shown = self._presenter.shown
        return shown.comparison if shown is not None and shown.groups else None

    def _card(self, place: int) -> Card | None:
        shown = self._presenter.shown
        return shown.comparison.columns[place].card if shown is not None else None
