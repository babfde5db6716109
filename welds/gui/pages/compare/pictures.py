"""The two pictures of the page, each made when it is first looked at."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from welds.gui.colours import Colours
from welds.gui.jobs.runner import JobRunner
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.gui.pages.compare.wave_overlay import WaveWords, paint_waves, wave_lines
from welds.gui.widgets.drawing_view import DrawingView
from welds.gui.widgets.texts import label

if TYPE_CHECKING:
    from welds.gui.pages.compare.curve_chart import CurveChart
    from welds.report.current_curve import CurrentCurve


class CurvePage(QWidget):
    """Current over thickness; the curves are worked out on another thread."""

    def __init__(self, presenter: ComparePresenter, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._presenter = presenter
        self._jobs = JobRunner(self)
        self._jobs.finished.connect(self._on_finished)
        self._jobs.failed.connect(self._on_failed)
        self._is_outdated = True
        self.chart: CurveChart | None = None
        self.curves: tuple[CurrentCurve, ...] = ()
        self._value = label(
            self.tr("Point at the picture, or use the arrow keys in it, to read values."),
            wrap=True,
            parent=self,
        )
        self._value.setMinimumHeight(2 * self.fontMetrics().height() + 4)
        whole = QPushButton(self.tr("&Show everything"), self)
        whole.clicked.connect(self._show_everything)
        near = QPushButton(self.tr("&Around the base"), self)
        near.clicked.connect(lambda: self._show_everything(near_base=True))
        foot = QHBoxLayout()
        foot.setContentsMargins(6, 0, 0, 0)
        foot.addWidget(self._value, 1)
        foot.addWidget(near)
        foot.addWidget(whole)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(6)
        self._layout.addLayout(foot)

    def outdate(self) -> None:
        """Note that the curves on show are no longer right, and draw them again if anyone is looking."""
        self._is_outdated = True
        if self.isVisible():
            self.bring_up_to_date()

    def bring_up_to_date(self) -> None:
        """Work the curves out again where they are outdated."""
        if self.chart is None:
            self._make_chart()
        if self._is_outdated and self._presenter.shown is not None:
            self._is_outdated = False
            self._jobs.submit(self._presenter.curve_work())
        else:
            self.redraw()

    def show_base(self, thickness_mm: float) -> None:
        """Move the line that marks the base."""
        if self.chart is not None:
            self.chart.show_base(thickness_mm)

    def redraw(self) -> None:
        """Draw the curves in the colours and units of the moment."""
        if self.chart is not None:
            base_mm = self._presenter.base_thickness_mm
            self.chart.show_curves(self.curves, self._presenter.units, base_mm, Colours.of(self.palette()))

    def wait(self) -> bool:
        """Wait for the thread; False when time ran out."""
        return self._jobs.wait()

    def value(self) -> str:
        """Return the values that are on show under the picture."""
        return self._value.text()

    def _make_chart(self) -> None:
        from welds.gui.pages.compare.curve_chart import ChartWords, CurveChart

        words = ChartWords(
            self.tr("Thickness"), self.tr("Current"), self.tr("no answer in the tables at this thickness")
        )
        self.chart = CurveChart(words, self)
        self.chart.setAccessibleName(self.tr("Current over thickness, a band for each column"))
        self.chart.read_out.connect(self._value.setText)
        self._layout.insertWidget(0, self.chart, 1)

    def _show_everything(self, *, near_base: bool = False) -> None:
        if self.chart is not None:
            self.chart.show_everything(near_base=near_base)

    def _on_finished(self, curves: "tuple[CurrentCurve, ...]") -> None:
        self.curves = curves
        self.redraw()

    def _on_failed(self, error: Exception) -> None:
        raise error


class WavePage(DrawingView):
    """The AC waves of all columns over one another."""

    def __init__(self, presenter: ComparePresenter, parent: QWidget | None = None) -> None:
        super().__init__(presenter.tr("AC waves of all columns"), QSize(400, 300), parent)
        self._presenter = presenter
        self._words = WaveWords(
            self.tr("None of the columns uses AC."),
            self.tr("milliseconds; electrode positive above the line, negative below"),
            self.tr("wider arc"),
            self.tr("narrower arc"),
            self.tr("A trend: no published figure ties the arc's width to hertz."),
        )

    def redraw(self) -> None:
        """Draw the waves of the columns on show."""
        shown = self._presenter.shown
        if shown is None:
            return
        lines = wave_lines(shown.titles, [column.card for column in shown.comparison.columns])
        words = "; ".join(f"{line.title} {line.frequency_hz:.0f} Hz" for line in lines)
        self.show_drawing(self.paint_picture, words or self._words.none)

    def paint_picture(self, painter: QPainter, area: QRectF) -> None:
        """Draw the waves into any painter."""
        shown = self._presenter.shown
        if shown is not None:
            lines = wave_lines(shown.titles, [column.card for column in shown.comparison.columns])
            paint_waves(painter, area, lines, Colours.of(self.palette()), self.font(), self._words)
