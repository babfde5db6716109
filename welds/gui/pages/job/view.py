"""The job page: file buttons on top, below them tabs with order, pictures, cut list, cards and materials."""

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QScrollArea,
    QTableWidget,
    QTableWidgetItem,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from welds.errors import WeldsError
from welds.gui.pages.job.plan_view import PlanView
from welds.gui.pages.job.presenter import JobPresenter, Opened
from welds.gui.prompts import Prompts
from welds.gui.widgets.texts import label
from welds.job.blank_drawing import draw_blank
from welds.job.order_drawing import draw_order
from welds.job.plan import JobPlan
from welds.job.plan_drawing import PlanDrawing
from welds.job.sheet_drawing import draw_sheet
from welds.job.tack_drawing import draw_tacks
from welds.report import job_words
from welds.report.cut_length import cut_length
from welds.report.job_texts import CUT_HEAD, MATERIAL_HEAD, ORDER_HEAD, SET_UP_HEAD
from welds.report.text_card import caution_lines

_PICTURE_PX = 420
_WIDEST_PX = 420


class JobView(QWidget):
    """Builds the page and connects it; what it shows comes from the plan in words."""

    def __init__(self, presenter: JobPresenter, prompts: Prompts, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._presenter, self._prompts = presenter, prompts
        self.open_file = QPushButton(self.tr("&Open a job file\N{HORIZONTAL ELLIPSIS}"), self)
        self.open_demo = QPushButton(self.tr("Open the &demo (invented)"), self)
        self.open_again = QPushButton(self.tr("&Read it again"), self)
        self.packet = QPushButton(self.tr("&Packet as PDF\N{HORIZONTAL ELLIPSIS}"), self)
        self.holes = QPushButton(self.tr("&Holes on a photo\N{HORIZONTAL ELLIPSIS}"), self)
        self.heading = label(role="value", wrap=True, parent=self)
        self.tabs = QTabWidget(self)
        self.tabs.setAccessibleName(self.tr("The job"))
        self.tabs.tabBar().setAccessibleName(self.tr("Parts of the job"))
        bar = QHBoxLayout()
        for button in (self.open_file, self.open_demo, self.open_again, self.holes, self.packet):
            bar.addWidget(button)
        bar.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(10, 8, 10, 8)
        layout.addLayout(bar)
        layout.addWidget(self.heading)
        layout.addWidget(self.tabs, 1)
        self.heading.setText(
            self.tr("No job is open. A job is a text file; the demo shows how one is written.")
        )
        self.open_file.clicked.connect(self._on_open_clicked)
        self.open_demo.clicked.connect(presenter.open_demo)
        self.open_again.clicked.connect(presenter.open_again)
        self.holes.clicked.connect(self._on_holes_clicked)
        self.packet.clicked.connect(self._on_packet_clicked)
        presenter.opened.connect(self._show)
        presenter.units_changed.connect(self._on_units_changed)
        presenter.busy_changed.connect(self._on_busy_changed)
        self._set_ready(has_file=False, plan=None)

    def _show(self, opened: Opened) -> None:
        self._set_ready(has_file=True, plan=opened.plan, is_own=not opened.is_demo)
        while self.tabs.count():
            page = self.tabs.widget(0)
            self.tabs.removeTab(0)
            if page is not None:
                page.deleteLater()
        if opened.plan is None:
            self.heading.setText(self.tr("{name} has faults:").format(name=opened.path.name))
            self.tabs.addTab(self._text(opened.faults), self.tr("Faults"))
            return
        plan = opened.plan
        words = self.tr("{name}: {done} of {all} tasks done, for {machine}")
        self.heading.setText(
            words.format(name=plan.job.name, done=plan.done, all=len(plan.turns), machine=plan.machine)
        )
        for title, page in self._pages(plan):
            self.tabs.addTab(page, title)

    def _pages(self, plan: JobPlan) -> list[tuple[str, QWidget]]:
        units = self._presenter.units
        cautions = [line for caution in plan.cautions for line in caution_lines(caution)]
        checks = [*job_words.check_lines(plan), *job_words.pause_lines(plan, units)]
        materials = [*job_words.material_notes(plan.materials)]
        pages = [
            (self.tr("Cautions"), self._text([*plan.problems, *cautions])),
            (self.tr("Order"), self._table(ORDER_HEAD, job_words.order_rows(plan))),
            (self.tr("What waits"), self._pictures([draw_order(plan.turns)] if plan.turns else [])),
            (self.tr("Cut list"), self._table(CUT_HEAD, job_words.cut_rows(plan, units))),
            (self.tr("Sheets"), self._pictures([draw_sheet(sheet) for sheet in plan.sheets])),
            (self.tr("Blanks"), self._pictures(self._blanks(plan))),
            (self.tr("Cards"), self._table(SET_UP_HEAD, job_words.set_up_rows(plan, units))),
            (self.tr("Tacks"), self._pictures([draw_tacks(key, each) for key, each in plan.tacks.items()])),
            (self.tr("Materials"), self._table(MATERIAL_HEAD, job_words.material_rows(plan.materials))),
            (self.tr("Checks"), self._text([*checks, *materials])),
        ]
        return [(title, page) for title, page in pages if page is not None]

    def _blanks(self, plan: JobPlan) -> list[PlanDrawing]:
        units = self._presenter.units
        return [
            draw_blank(key, answer.blank, answer.width_mm, lambda mm: cut_length(mm, units))
            for key, answer in plan.blanks.items()
        ]

    def _text(self, lines: Iterable[str]) -> QWidget:
        text = QPlainTextEdit("\n".join(lines), self)
        text.setReadOnly(True)
        text.setTabChangesFocus(True)
        text.setAccessibleName(self.tr("Text"))
        return text

    def _table(self, head: Sequence[str], rows: Iterable[Sequence[str]]) -> QWidget:
        listed = list(rows)
        table = QTableWidget(len(listed), len(head), self)
        table.setHorizontalHeaderLabels([title.capitalize() for title in head])
        table.verticalHeader().hide()
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setTabKeyNavigation(False)
        table.setWordWrap(True)
        table.setAccessibleName(self.tr("List"))
        for row, cells in enumerate(listed):
            for column, cell in enumerate(cells):
                item = QTableWidgetItem(cell)
                item.setTextAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
                table.setItem(row, column, item)
        table.resizeColumnsToContents()
        for column in range(len(head)):
            table.setColumnWidth(column, min(table.columnWidth(column), _WIDEST_PX))
        table.horizontalHeader().setStretchLastSection(True)
        table.resizeRowsToContents()
        return table

    def _pictures(self, drawings: Sequence[PlanDrawing]) -> QWidget | None:
        if not drawings:
            return None
        inside = QWidget(self)
        layout = QVBoxLayout(inside)
        for drawing in drawings:
            picture = PlanView(drawing, inside)
            picture.setMinimumHeight(_PICTURE_PX)
            layout.addWidget(picture)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setWidget(inside)
        area.setAccessibleName(self.tr("Drawings"))
        return area

    def _on_open_clicked(self) -> None:
        path = self._prompts.ask_open_path(self.tr("Open a job"), self.tr("Job files (*.yaml *.yml)"))
        if path is not None:
            self._presenter.open(path)

    def _on_holes_clicked(self) -> None:
        shown = self._presenter.shown
        if shown is None or shown.plan is None:
            return
        from welds.gui.pages.job.holes_dialog import HolesDialog

        repairs = [work.id for work in shown.plan.job.repairs]
        dialog = HolesDialog(shown.path, repairs, self._presenter.units, self._prompts, self)
        dialog.saved.connect(self._presenter.open_again)
        self._prompts.show_form(dialog)

    def _on_packet_clicked(self) -> None:
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
            self.heading.setText(self.tr("Saved as {path}.").format(path=path))

    def _on_units_changed(self) -> None:
        place = self.tabs.currentIndex()
        assert self._presenter.shown is not None
        self._show(self._presenter.shown)
        self.tabs.setCurrentIndex(place)

    def _on_busy_changed(self, is_busy: bool) -> None:
        if is_busy:
            self.heading.setText(self.tr("Planning\N{HORIZONTAL ELLIPSIS}"))

    def _set_ready(self, *, has_file: bool, plan: JobPlan | None, is_own: bool = False) -> None:
        self.open_again.setEnabled(has_file)
        self.packet.setEnabled(plan is not None)
        self.holes.setEnabled(is_own and plan is not None and bool(plan.job.repairs))
