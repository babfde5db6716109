"""The page of columns: what varies on top, the table or a picture below, reasons and actions at the foot."""

from PySide6.QtCore import QEvent, QTimer, Signal
from PySide6.QtWidgets import QPushButton, QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from welds.gui.card_face import CautionLine
from welds.gui.drawing.export import write_picture
from welds.gui.pages.compare.outputs import CompareOutput
from welds.gui.pages.compare.pictures import CurvePage, WavePage
from welds.gui.pages.compare.presenter import ComparePresenter, Shown
from welds.gui.pages.compare.table_view import ComparisonTable
from welds.gui.pages.compare.vary_bar import VaryBar
from welds.gui.pages.compare.why_panel import WhyPanel
from welds.gui.prompts import Prompts
from welds.gui.widgets.caution_strip import CautionStrip
from welds.gui.widgets.choices import ChoiceRow
from welds.gui.widgets.head_bar import HeadBar
from welds.gui.widgets.refusal_bar import RefusalBar
from welds.gui.widgets.texts import label
from welds.reference.whole_file import write_whole
from welds.report.comparison import cautions
from welds.report.current_curve import curves_csv

SETTINGS, CURVES, WAVES = "settings", "curves", "waves"
PICTURE_PX = (1200, 760)


class CompareView(QWidget):
    """Builds the page and connects it; everything about welding is the presenter's."""

    card_opened = Signal(object)
    log_wanted = Signal(object)

    def __init__(
        self,
        presenter: ComparePresenter,
        output: CompareOutput,
        prompts: Prompts,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.presenter = presenter
        self.output, self._prompts = output, prompts
        self.vary = VaryBar(presenter.vary.kinds(), presenter.engine.metals(), self)
        self.cautions = CautionStrip(self)
        self.refusal = RefusalBar(self)
        self.table = ComparisonTable(self)
        self.curves = CurvePage(presenter, self)
        self.waves = WavePage(presenter, self)
        self.why = WhyPanel(self)
        self.equal_rows = QPushButton(self)
        self.equal_rows.setCheckable(True)
        self.which = ChoiceRow(
            self.tr("Show as"),
            (
                (SETTINGS, self.tr("Settings")),
                (CURVES, self.tr("Current over thickness")),
                (WAVES, self.tr("AC waves")),
            ),
            self,
        )
        self._heading = label(role="value", wrap=True, parent=self)
        self._heading.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._stack = QStackedWidget(self)
        for page in (self._settings_page(), self.curves, self.waves):
            self._stack.addWidget(page)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(10, 8, 10, 8)
        layout.setSpacing(6)
        layout.addWidget(self.vary)
        layout.addWidget(self.refusal)
        layout.addWidget(self.cautions)
        layout.addWidget(self._bar())
        layout.addWidget(self._stack, 1)
        self._connect()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            # Qt walks through the items of the picture while it restyles them: none may go meanwhile.
            QTimer.singleShot(0, self.curves, self.curves.redraw)

    def show_page(self, which: str) -> None:
        """Show the table or one of the pictures."""
        self.which.set_value(which)
        self._on_page_chosen(which)

    def _settings_page(self) -> QWidget:
        page = QWidget(self)
        layout = QVBoxLayout(page)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.why)
        return page

    def _bar(self) -> HeadBar:
        self.save = QPushButton(self.tr("Save this &view…"), self)
        self.wall_chart = QPushButton(self.tr("&Wall chart…"), self)
        self.wall_chart.setToolTip(self.tr("Thickness down, joint across, for the base's metal and process"))
        return HeadBar(self._heading, (self.equal_rows, self.which, self.save, self.wall_chart), parent=self)

    def _connect(self) -> None:
        presenter, vary, table, why = self.presenter, self.vary, self.table, self.why
        vary.kind_chosen.connect(presenter.choose_kind)
        vary.values_ticked.connect(presenter.tick)
        vary.value_added.connect(self._on_value_added)
        vary.machine_wanted.connect(self._on_machine_wanted)
        vary.keep_toggled.connect(presenter.keep_columns)
        vary.thickness_dragged.connect(presenter.set_thickness_mm)
        vary.thickness_typed.connect(presenter.set_thickness)
        table.column_moved.connect(presenter.move)
        table.cell_chosen.connect(self._on_cell_chosen)
        why.pinned.connect(lambda: presenter.pin(self._column()))
        why.moved.connect(self._on_moved)
        why.removed.connect(lambda: presenter.remove(self._column()))
        why.opened.connect(lambda: self.card_opened.emit(presenter.fields_of(self._column())))
        why.log_wanted.connect(self.log_column)
        why.printed.connect(lambda: self.output.print_column(self._column()))
        why.saved.connect(lambda: self.output.save_column(self._column()))
        self.equal_rows.toggled.connect(self._on_equal_rows_toggled)
        self.which.chosen.connect(self._on_page_chosen)
        self.save.clicked.connect(self._on_save_clicked)
        self.wall_chart.clicked.connect(self.output.save_wall_chart)
        presenter.values_changed.connect(self._show_values)
        presenter.shown_changed.connect(self._on_shown_changed)
        presenter.base_changed.connect(self._on_base_changed)
        presenter.curves_outdated.connect(self.curves.outdate)
        presenter.refused.connect(self._on_refused)

    def _column(self) -> int:
        return max(0, self.table.current_cell()[1])

    def _show_values(self) -> None:
        presenter = self.presenter
        kind = presenter.kind
        values = presenter.vary.values(kind, presenter.base_fields, presenter.units)
        self.vary.offer(kind, values)
        self.vary.slider.set_marks(presenter.thickness_marks())
        self._tick_values()

    def _tick_values(self) -> None:
        self.vary.tick(self.presenter.ticked(), is_full=self.presenter.columns.is_full)

    def _on_shown_changed(self, shown: Shown) -> None:
        self._heading.setText(shown.heading)
        self._heading.setToolTip(shown.heading)
        self.table.show_comparison(shown)
        found = cautions(shown.comparison, self.presenter.units)
        self.cautions.show_cautions(
            [(each.severity, CautionLine(each.rule, each.text, each.source or "")) for each in found]
        )
        self._count_equal_rows()
        self._tick_values()
        if self._stack.currentWidget() is self.waves:
            self.waves.redraw()

    def _on_base_changed(self, thickness_mm: float, words: str) -> None:
        self.vary.show_thickness(thickness_mm, words)
        self.curves.show_base(thickness_mm)

    def _on_refused(self, reason: str) -> None:
        if reason:
            self.refusal.show_reason(reason, "", "")
        else:
            self.refusal.hide()

    def _on_cell_chosen(self, row: int, column: int) -> None:
        shown = self.table.comparison.shown
        rows = self.table.comparison.rows
        if shown is not None and 0 <= row < len(rows) and 0 <= column < len(shown.titles):
            self.why.show_row(shown, rows[row], column)
        else:
            self.why.clear()

    def _on_moved(self, step: int) -> None:
        column = self._column()
        self.presenter.move(column, column + step)
        self.table.choose_column(column + step)

    def log_column(self) -> None:
        """Ask to write down a weld made by the chosen column's card."""
        shown = self.presenter.shown
        card = shown.comparison.columns[self._column()].card if shown is not None else None
        if card is not None:
            self.log_wanted.emit(card)

    def _on_value_added(self, text: str) -> None:
        if self.presenter.add_value(text):
            self.vary.thickness_line.clear()

    def _on_machine_wanted(self) -> None:
        path = self._prompts.ask_open_path(
            self.tr("Your machine and shelf"), self.tr("Machine (*.yaml *.yml)")
        )
        if path is not None:
            self.presenter.add_machine_file(path)

    def _on_equal_rows_toggled(self, on: bool) -> None:
        self.table.fold(not on)
        self._count_equal_rows()

    def _count_equal_rows(self) -> None:
        """Say on the button how many rows it shows or folds away, and which."""
        rows = self.table.comparison.equal_rows
        words = (
            self.tr("Fold {count} equal rows")
            if self.equal_rows.isChecked()
            else self.tr("Show {count} equal rows")
        )
        self.equal_rows.setText(words.format(count=len(rows)))
        self.equal_rows.setAccessibleName(self.equal_rows.text())
        self.equal_rows.setToolTip("; ".join(row.label for row in rows))
        self.equal_rows.setEnabled(bool(rows))

    def _on_page_chosen(self, which: str) -> None:
        place = {SETTINGS: 0, CURVES: 1, WAVES: 2}[which]
        self._stack.setCurrentIndex(place)
        self.equal_rows.setVisible(which == SETTINGS)
        if which == CURVES:
            self.curves.bring_up_to_date()
        elif which == WAVES:
            self.waves.redraw()

    def _on_save_clicked(self) -> None:
        page = self._stack.currentWidget()
        if page is self.curves and self.curves.chart is not None:
            chart, curves = self.curves.chart, self.curves.curves
            size = chart.width(), chart.height()
            self.output.save_picture(
                "current-over-thickness",
                {
                    ".png": lambda path: write_picture(path, *size, chart.paint_picture),
                    ".svg": lambda path: write_picture(path, *size, chart.paint_picture),
                    ".csv": lambda path: write_whole(path, curves_csv(curves)),
                },
            )
        elif page is self.waves:
            paint = self.waves.paint_picture
            self.output.save_picture(
                "ac-waves",
                {
                    ".png": lambda path: write_picture(path, *PICTURE_PX, paint),
                    ".svg": lambda path: write_picture(path, *PICTURE_PX, paint),
                },
            )
        else:
            self.output.save_pdf()
