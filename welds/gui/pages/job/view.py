"""The job page: file buttons on top, below them tabs from the order of work to editing the job."""

from collections.abc import Mapping

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QTabWidget, QVBoxLayout, QWidget

from welds.errors import WeldsError
from welds.gui.pages.job.edit_tab import EditTab
from welds.gui.pages.job.list_tab import ListTab, Shown
from welds.gui.pages.job.order_tab import OrderTab
from welds.gui.pages.job.output import JobOutput
from welds.gui.pages.job.plan_tabs import blanks_of, cards_of, sheets_of, tacks_of
from welds.gui.pages.job.presenter import JobPresenter, Opened
from welds.gui.pages.job.repairs_tab import RepairsTab
from welds.gui.pages.job.tab_pages import pictures_page, stacked, table_page, text_page
from welds.gui.prompts import Prompts
from welds.gui.widgets.texts import label
from welds.job.order_drawing import draw_order
from welds.job.plan import JobPlan
from welds.job.plan_drawing import PlanDrawing
from welds.report import job_words
from welds.report.job_texts import CUT_HEAD, MATERIAL_HEAD
from welds.report.text_card import caution_lines


class JobView(QWidget):
    """Builds the page and connects it; what it shows comes from the plan in words."""

    def __init__(self, presenter: JobPresenter, prompts: Prompts, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._presenter, self._prompts = presenter, prompts
        self.output = JobOutput(presenter, prompts, self._say, self)
        self.new = QPushButton(self.tr("&New job…"), self)
        self.open_file = QPushButton(self.tr("&Open a job file…"), self)
        self.open_demo = QPushButton(self.tr("Open the &demo (invented)"), self)
        self.open_again = QPushButton(self.tr("&Read it again"), self)
        self.undo = QPushButton(self.tr("&Undo"), self)
        self.undo.setToolTip(self.tr("Take the last change of this file back (Ctrl+Z)"))
        self.copy = QPushButton(self.tr("&Keep a copy…"), self)
        self.packet = QPushButton(self.tr("&Packet as PDF…"), self)
        self.heading = label(role="value", wrap=True, parent=self)
        self.tabs = QTabWidget(self)
        self.tabs.setAccessibleName(self.tr("The job"))
        self.tabs.tabBar().setAccessibleName(self.tr("Parts of the job"))
        self._shown_path: object = None
        self.order: OrderTab | None = None
        self.repairs: RepairsTab | None = None
        self.edit: EditTab | None = None
        bar = QHBoxLayout()
        for button in (
            *(self.new, self.open_file, self.open_demo, self.open_again),
            *(self.undo, self.copy, self.packet),
        ):
            bar.addWidget(button)
        bar.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(10, 8, 10, 8)
        layout.addLayout(bar)
        layout.addWidget(self.heading)
        layout.addWidget(self.tabs, 1)
        layout.addStretch(0)
        self.tabs.hide()
        self.heading.setText(
            self.tr("No job is open. Begin a new one, or open the demo to see what a job can hold.")
        )
        self.new.clicked.connect(self._on_new_clicked)
        self.open_file.clicked.connect(self._on_open_clicked)
        self.open_demo.clicked.connect(presenter.open_demo)
        self.open_again.clicked.connect(presenter.open_again)
        self.copy.clicked.connect(self._on_copy_clicked)
        self.undo.clicked.connect(self._on_undo)
        keys = QShortcut(QKeySequence(QKeySequence.StandardKey.Undo), self)
        keys.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        keys.activated.connect(self._on_undo)
        self.packet.clicked.connect(self.output.save_pdf)
        presenter.opened.connect(self._on_opened)
        presenter.units_changed.connect(self._on_units_changed)
        presenter.busy_changed.connect(self._on_busy_changed)
        self._set_ready(has_file=False, has_plan=False)

    def _on_opened(self, opened: Opened) -> None:
        """Show it; where the same file was read again, in the same place."""
        is_same = opened.path == self._shown_path
        self._shown_path = opened.path
        tab = self.tabs.tabText(self.tabs.currentIndex()) if is_same else ""
        repair = self.repairs.key if is_same and self.repairs is not None else ""
        form = self.edit.form if is_same and self.edit is not None else None
        drafts: Mapping[tuple[str, str], Mapping[str, str]] = {}
        if is_same and self.edit is not None:
            self.edit.keep_draft()
            drafts = self.edit.drafts
        self._show(opened, drafts)
        if self.repairs is not None:
            self.repairs.choose(repair)
        if self.edit is not None and form is not None:
            self.edit.show_entry(form.section, form.entry_key())
        for number in range(self.tabs.count()):
            if self.tabs.tabText(number) == tab:
                self.tabs.setCurrentIndex(number)

    def _show(self, opened: Opened, drafts: Mapping[tuple[str, str], Mapping[str, str]]) -> None:
        self._set_ready(has_file=True, has_plan=opened.plan is not None)
        self.order = self.repairs = self.edit = None
        self.tabs.show()
        while self.tabs.count():
            page = self.tabs.widget(0)
            self.tabs.removeTab(0)
            if page is not None:
                page.deleteLater()
        if opened.plan is None:
            self.heading.setText(self.tr("{name} has faults:").format(name=opened.path.name))
            self.tabs.addTab(text_page(opened.faults, self), self.tr("Faults"))
        else:
            plan = opened.plan
            words = self.tr("{name}: {done} of {all} tasks done, for {machine}")
            self.heading.setText(
                words.format(name=plan.job.name, done=plan.done, all=len(plan.turns), machine=plan.machine)
            )
            for title, page in self._pages(plan, is_own=not opened.is_demo):
                if page is not None:
                    self.tabs.addTab(page, title)
        if opened.entries and not opened.is_demo:
            self.edit = EditTab(opened.entries, self._presenter.metals, drafts, self)
            self.edit.saved.connect(self._on_saved)
            self.edit.removed.connect(self._on_removed)
            self.tabs.addTab(self.edit, self.tr("Edit"))
            if opened.plan is not None and not opened.plan.turns:
                self.tabs.setCurrentWidget(self.edit)

    def _pages(self, plan: JobPlan, *, is_own: bool) -> list[tuple[str, QWidget | None]]:
        units = self._presenter.units
        cautions = [line for caution in plan.cautions for line in caution_lines(caution)]
        checks = [*job_words.check_lines(plan), *job_words.pause_lines(plan, units)]
        self.order = OrderTab(plan, can_tick=is_own, parent=self)
        self.order.ticked.connect(self._on_ticked)
        materials = table_page(MATERIAL_HEAD, job_words.material_rows(plan.materials), self)
        notes = text_page(job_words.material_notes(plan.materials), self)
        sources = self._presenter.engine.tables.sources
        return [
            (self.tr("Cautions"), text_page([*plan.problems, *cautions], self)),
            (self.tr("Order"), self.order),
            (self.tr("What waits"), pictures_page([draw_order(plan.turns)] if plan.turns else [], self)),
            (self.tr("Repairs"), self._repairs(plan, is_own=is_own)),
            (self.tr("Cut list"), table_page(CUT_HEAD, job_words.cut_rows(plan, units), self)),
            (self.tr("Sheets"), self._list(self.tr("Sheets"), [*sheets_of(plan)])),
            (self.tr("Blanks"), self._blanks(plan, is_own=is_own)),
            (
                self.tr("Cards"),
                self._list(self.tr("Cards"), [*cards_of(plan, units, sources)], is_in_columns=True),
            ),
            (self.tr("Tacks"), self._list(self.tr("Tacks"), [*tacks_of(plan, units)])),
            (self.tr("Materials"), stacked(materials, notes, self)),
            (self.tr("Checks"), text_page(checks, self)),
        ]

    def _blanks(self, plan: JobPlan, *, is_own: bool) -> ListTab | None:
        tab = self._list(self.tr("Blanks"), [*blanks_of(plan, self._presenter.units)])
        if tab is not None:
            test_bend = QPushButton(self.tr("&Test bend…"), tab)
            test_bend.setEnabled(is_own)
            test_bend.clicked.connect(lambda: self._on_test_bend(tab.key))
            tab.buttons.insertWidget(0, test_bend)
        return tab

    def _list(self, name: str, shown: list[Shown], *, is_in_columns: bool = False) -> ListTab | None:
        if not shown:
            return None
        tab = ListTab(name, shown, self, is_in_columns=is_in_columns)
        tab.save.connect(self._on_save_drawing)
        return tab

    def _repairs(self, plan: JobPlan, *, is_own: bool) -> RepairsTab | None:
        if not plan.job.repairs:
            return None
        self.repairs = RepairsTab(plan, self._presenter.units, is_own=is_own, parent=self)
        self.repairs.draw.connect(self._on_draw)
        self.repairs.change.connect(self._on_change)
        self.repairs.save.connect(self._on_save_drawing)
        return self.repairs

    def _on_save_drawing(self, drawing: PlanDrawing) -> None:
        kinds = self.tr("PDF at full size (*.pdf);;DXF for a cutter (*.dxf);;SVG (*.svg)")
        path = self._prompts.ask_save_path(self.tr("Save the drawing"), f"{drawing.title}.pdf", kinds)
        if path is None:
            return
        from welds.gui.pages.job.drawing_files import write_drawing

        try:
            path = write_drawing(path, drawing)
        except WeldsError as error:
            self._prompts.tell(self.tr("The drawing was not written"), str(error))
        else:
            self.heading.setText(self.tr("Saved as {path}.").format(path=path))

    def _on_ticked(self, section: str, key: str, is_done: bool) -> None:
        shown = self._presenter.shown
        fields = dict(shown.entries.get(section, {}).get(key, {})) if shown is not None else {}
        fields["done"] = "yes" if is_done else ""
        self._tell(self._presenter.save_entry(section, key, fields))

    def _on_saved(self, section: str, key: str, fields: Mapping[str, str]) -> None:
        if self.edit is None or self.edit.form is None:
            return
        is_new = not self.edit.form.key
        trouble = self._presenter.save_entry(section, key, fields, is_new=is_new)
        self.edit.show_trouble(trouble)
        if not trouble:
            self.edit.forget(section, key)

    def _on_removed(self, section: str, key: str) -> None:
        question = self.tr("{key} and what was typed for it goes out of the job file.").format(key=key)
        if self._prompts.confirm(self.tr("Take it out"), question, self.tr("Take it out")):
            trouble = self._presenter.take_out(section, key)
            if self.edit is not None:
                self.edit.show_trouble(trouble)

    def _on_draw(self, repair: str) -> None:
        shown = self._presenter.shown
        if shown is None or shown.plan is None:
            return
        from welds.gui.pages.job.holes_dialog import HolesDialog

        repairs = [work.id for work in shown.plan.job.repairs]
        dialog = HolesDialog(shown.path, repairs, self._presenter.units, self._prompts, self)
        dialog.repair.setCurrentText(repair)
        dialog.saved.connect(self._presenter.open_again)
        self._prompts.show_form(dialog)

    def _on_test_bend(self, piece: str) -> None:
        shown = self._presenter.shown
        if shown is None or shown.plan is None:
            return
        from welds.gui.pages.job.test_bend_dialog import TestBendDialog

        fields = shown.entries["pieces"][piece]
        answer, units = shown.plan.blanks[piece], self._presenter.units
        dialog = TestBendDialog(answer, fields.get("brake", ""), units, self._prompts, self)
        dialog.kept.connect(
            lambda brake: self._tell(
                self._presenter.save_entry("pieces", piece, {**fields, "k": "", "brake": brake})
            )
        )
        self._prompts.show_form(dialog)

    def _on_change(self, repair: str) -> None:
        if self.edit is not None:
            self.edit.show_entry("repairs", repair)
            self.tabs.setCurrentWidget(self.edit)

    def _on_new_clicked(self) -> None:
        path = self._prompts.ask_save_path(self.tr("Begin a job"), "job.yaml", self._kinds())
        if path is not None:
            path = path if path.suffix else path.with_suffix(".yaml")
            self._tell(self._presenter.begin(path))

    def _on_open_clicked(self) -> None:
        path = self._prompts.ask_open_path(self.tr("Open a job"), self._kinds())
        if path is not None:
            self._presenter.open(path)

    def _on_copy_clicked(self) -> None:
        shown = self._presenter.shown
        if shown is None:
            return
        path = self._prompts.ask_save_path(self.tr("Keep a copy"), shown.path.name, self._kinds())
        if path is not None:
            self._tell(self._presenter.keep_copy(path if path.suffix else path.with_suffix(".yaml")))

    def _kinds(self) -> str:
        return self.tr("Job files (*.yaml *.yml)")

    def _tell(self, trouble: str) -> None:
        if trouble:
            self._prompts.tell(self.tr("Nothing was written"), trouble)

    def _on_undo(self) -> None:
        self._tell(self._presenter.undo())

    def _say(self, words: str) -> None:
        self.heading.setText(words)

    def _on_units_changed(self) -> None:
        assert self._presenter.shown is not None
        self._on_opened(self._presenter.shown)

    def _on_busy_changed(self, is_busy: bool) -> None:
        if is_busy:
            self.heading.setText(self.tr("Planning…"))

    def _set_ready(self, *, has_file: bool, has_plan: bool) -> None:
        self.open_again.setEnabled(has_file)
        self.copy.setEnabled(has_file)
        self.undo.setEnabled(self._presenter.can_undo)
        self.packet.setEnabled(has_plan)
