"""Current over thickness: a ribbon for each column, schedule rows, own welds, values under the pointer.

pyqtgraph is imported with this module, so the module is imported when the picture is first looked at.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import hypot, isnan

import numpy as np
import pyqtgraph as pg
from pyqtgraph.graphicsItems.LegendItem import ItemSample
from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter
from PySide6.QtWidgets import QWidget

from welds.advice.evidence import Outcome
from welds.gui.colours import Colours
from welds.gui.pages.compare.line_styles import OWN_SHAPES, SHAPES, style_of
from welds.gui.pages.compare.read_out import row_text, value_text, weld_text
from welds.language import figure, tr
from welds.quantities.display import show
from welds.quantities.registry import convert
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.report.current_curve import CurrentCurve, SchedulePoint
from welds.report.own_welds import OwnWeld
from welds.report.wording import outcome_words

RIBBON_ALPHA = (60, 28)
"""How dense a ribbon is: of one or two columns, and of more."""
POINT_PX, OWN_PX = 9, 15
SAMPLE_PX = 48.0
NEAR_PX = 12.0
ZOOM = 0.8
STEP_SHARE = 0.02
ROOM = 1.6
"""At first the picture reaches this many times beyond the base thickness, where most of the work is."""
SLIP = 2.0
"""An own weld at more than so many times the highest band does not shrink the picture until all is shown."""


@dataclass(frozen=True, slots=True)
class ChartWords:
    """Every word in the picture, ready in the person's language."""

    across: str
    up: str
    empty: str


class _WideSample(ItemSample):  # type: ignore[misc]
    """A sample long enough to show the dashes of its line."""

    def __init__(self, item: pg.GraphicsObject) -> None:
        super().__init__(item)
        self.setFixedWidth(SAMPLE_PX)

    def boundingRect(self) -> QRectF:
        return QRectF(0.0, 0.0, SAMPLE_PX, 20.0)

    def paint(self, painter: QPainter, *arguments: object) -> None:
        if isinstance(self.item, pg.PlotCurveItem):
            painter.setPen(self.item.opts["pen"])
            painter.drawLine(QPointF(2.0, 11.0), QPointF(SAMPLE_PX - 2.0, 11.0))
        else:
            painter.translate((SAMPLE_PX - 20.0) / 2.0, 0.0)
            super().paint(painter, *arguments)


class _PlainAxis(pg.AxisItem):  # type: ignore[misc]
    """An axis drawn straight into the painter: a kept picture would be scaled by each paper's own dots."""

    def tickStrings(self, values: Sequence[float], scale: float, spacing: float) -> list[str]:
        """Return the numbers with the decimal sign of the language in use."""
        return [figure(text) for text in super().tickStrings(values, scale, spacing)]

    def paint(self, painter: QPainter, *_arguments: object) -> None:
        specs = self.generateDrawSpecs(painter)
        if specs is not None:
            painter.save()
            self.drawPicture(painter, *specs)
            painter.restore()


class CurveChart(pg.PlotWidget):  # type: ignore[misc]
    """Wheel and drag zoom and pan; arrows move the read-out, plus and minus zoom, 0 shows everything."""

    read_out = Signal(str)

    def __init__(self, words: ChartWords, parent: QWidget | None = None) -> None:
        super().__init__(parent, axisItems={side: _PlainAxis(side) for side in ("bottom", "left")})
        self._words = words
        self._curves: tuple[CurrentCurve, ...] = ()
        self._units = Units.METRIC
        self._colours: Colours | None = None
        self._base_mm = 2.0
        self._read_mm: float | None = None
        self._has_view = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        plot = self.getPlotItem()
        plot.setMenuEnabled(False)
        plot.hideButtons()
        plot.showGrid(x=True, y=True, alpha=0.18)
        self._pointer = pg.InfiniteLine(angle=90, movable=False)
        self._base_line = pg.InfiniteLine(angle=90, movable=False)
        self.scene().sigMouseMoved.connect(self._on_mouse_moved)

    def show_curves(
        self, curves: Sequence[CurrentCurve], units: Units, base_mm: float, colours: Colours
    ) -> None:
        """Draw these curves; where the person has zoomed to stays."""
        self._curves, self._units, self._colours, self._base_mm = tuple(curves), units, colours, base_mm
        self._paint_frame()
        plot = self.getPlotItem()
        plot.clear()
        if plot.legend is not None:
            plot.legend.scene().removeItem(plot.legend)
            plot.legend = None
        plot.addLegend(
            offset=(14, 10), labelTextSize="10pt", labelTextColor=colours.ink,
            brush=QColor(colours.sheet), pen=QColor(colours.line), sampleType=_WideSample,
        )  # fmt: skip
        for place, curve in enumerate(self._curves):
            if not curve.is_empty:
                self._add_curve(curve, place)
        self._add_shapes()
        plot.addItem(self._base_line)
        plot.addItem(self._pointer)
        self._pointer.setVisible(False)
        self.show_base(base_mm)
        if not self._has_view and self._curves:
            self.show_everything(near_base=True)

    def show_base(self, base_mm: float) -> None:
        """Stand the base's line at this thickness."""
        self._base_mm = base_mm
        self._base_line.setValue(self._across(base_mm))

    def show_everything(self, *, near_base: bool = False) -> None:
        """Zoom out to all curves, or to the part around the base."""
        finite = [
            (mm, high)
            for curve in self._curves
            for mm, high in zip(curve.thicknesses_mm, curve.high_a, strict=True)
            if not isnan(high) and (not near_base or mm <= max(4.0, ROOM * self._base_mm))
        ]
        if not finite:
            return
        self._has_view = True
        left, right = (edge(mm for mm, _ in finite) for edge in (min, max))
        top = max(high for _, high in finite)
        own = [
            weld.current_a
            for curve in self._curves
            for weld in curve.own
            if not near_base or (left <= weld.thickness_mm <= right and weld.current_a <= SLIP * top)
        ]
        self.getPlotItem().setXRange(self._across(left), self._across(right), padding=0.03)
        self.getPlotItem().setYRange(0.0, max(top, *own, 0.0), padding=0.04)

    def paint_picture(self, painter: QPainter, area: QRectF) -> None:
        """Draw the chart as it stands into any painter: image, SVG or paper."""
        assert self._colours is not None
        painter.fillRect(area, QColor(self._colours.sheet))
        self._pointer.setVisible(False)
        self.scene().prepareForPaint()
        self.scene().render(painter, area, self.sceneRect(), Qt.AspectRatioMode.KeepAspectRatio)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        box, key = self.getPlotItem().getViewBox(), Qt.Key(event.key())
        left, right = box.viewRange()[0]
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            here = self._across(self._read_mm if self._read_mm is not None else self._base_mm)
            here += (right - left) * STEP_SHARE * (1 if key is Qt.Key.Key_Right else -1)
            self._read_at(min(max(here, left), right), None)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            box.scaleBy((ZOOM, ZOOM))
        elif key is Qt.Key.Key_Minus:
            box.scaleBy((1.0 / ZOOM, 1.0 / ZOOM))
        elif key is Qt.Key.Key_0:
            self.show_everything()
        else:
            super().keyPressEvent(event)

    def _paint_frame(self) -> None:
        colours = self._colours
        assert colours is not None
        self.setBackground(colours.sheet)
        for side, text in (("bottom", self._words.across), ("left", self._words.up)):
            axis = self.getPlotItem().getAxis(side)
            axis.setPen(pg.mkPen(colours.edge))
            axis.setTextPen(pg.mkPen(colours.ink))
            axis.setTickFont(self.font())
            unit = {"bottom": "in" if self._units is Units.INCH else "mm", "left": "A"}[side]
            axis.setLabel(f"{text} [{unit}]", color=colours.ink)
            axis.enableAutoSIPrefix(False)
        self._pointer.setPen(pg.mkPen(colours.edge, width=1))
        self._base_line.setPen(pg.mkPen(colours.ink, width=1, style=Qt.PenStyle.DashLine))

    def _add_curve(self, curve: CurrentCurve, place: int) -> None:
        assert self._colours is not None
        plot, style = self.getPlotItem(), style_of(place)
        fill = style.colour(self._colours)
        fill.setAlpha(RIBBON_ALPHA[len(self._curves) > 2])
        across = np.array([self._across(mm) for mm in curve.thicknesses_mm])
        for part in _runs(curve.start_a):
            low, high = (
                pg.PlotCurveItem(across[part], np.array(figures[part]), pen=None)
                for figures in (curve.low_a, curve.high_a)
            )
            ribbon = pg.FillBetweenItem(low, high, brush=fill)
            ribbon.setZValue(-10)
            plot.addItem(ribbon)
        for number, part in enumerate(_runs(curve.start_a)):
            name = None if number else curve.title
            pen = style.pen(self._colours, 2.4)
            line = pg.PlotCurveItem(
                across[part], np.array(curve.start_a[part]), pen=pen, antialias=True, name=name
            )
            plot.addItem(line)
        for point in curve.points:
            bar = pg.PlotCurveItem(
                np.full(2, self._across(point.thickness_mm)), np.array([point.low_a, point.high_a]),
                pen=pg.mkPen(style.colour(self._colours), width=1),
            )  # fmt: skip
            plot.addItem(bar)
        colour = style.colour(self._colours)
        for basis in Basis:
            spots = [(point.thickness_mm, point.middle_a) for point in curve.points if point.basis is basis]
            plot.addItem(self._scatter(spots, SHAPES[basis], colour))
        for outcome in Outcome:
            spots = [(weld.thickness_mm, weld.current_a) for weld in curve.own if weld.outcome is outcome]
            marks = self._scatter(spots, OWN_SHAPES[outcome], colour, OWN_PX)
            marks.setZValue(10)
            plot.addItem(marks)

    def _add_shapes(self) -> None:
        """Explain in the legend the shape of each grade and of each outcome that occurs."""
        assert self._colours is not None
        legend, ink = self.getPlotItem().legend, QColor(self._colours.ink)
        used = {point.basis for curve in self._curves for point in curve.points}
        for basis in sorted(used, key=lambda grade: grade.rank):
            legend.addItem(
                self._scatter((), SHAPES[basis], ink), tr("schedule row, {grade}", grade=basis.word)
            )
        outcomes = {weld.outcome for curve in self._curves for weld in curve.own}
        for outcome in (each for each in Outcome if each in outcomes):
            sample = self._scatter((), OWN_SHAPES[outcome], ink, OWN_PX)
            legend.addItem(sample, tr("your weld, {outcome}", outcome=outcome_words(outcome)))

    def _scatter(
        self,
        spots: Sequence[tuple[float, float]],
        kind: tuple[str, bool],
        colour: QColor,
        size: int = POINT_PX,
    ) -> pg.ScatterPlotItem:
        """Return marks of a shape, filled or hollow, at places of thickness and current."""
        assert self._colours is not None
        shape, is_filled = kind
        brush = pg.mkBrush(colour if is_filled else QColor(self._colours.sheet))
        return pg.ScatterPlotItem(
            [self._across(thickness_mm) for thickness_mm, _ in spots],
            [current_a for _, current_a in spots],
            symbol=shape,
            size=size,
            pen=pg.mkPen(colour, width=1.6),
            brush=brush,
            useCache=False,
        )

    def _across(self, thickness_mm: float) -> float:
        return thickness_mm if self._units is Units.METRIC else convert(thickness_mm, "mm", "inch")

    def _on_mouse_moved(self, place: QPointF) -> None:
        plot = self.getPlotItem()
        if plot.sceneBoundingRect().contains(place):
            self._read_at(plot.getViewBox().mapSceneToView(place).x(), place)

    def _read_at(self, across: float, place: QPointF | None) -> None:
        """Tell the values at a place on the axis, and the own weld or schedule row under the pointer."""
        mm = across if self._units is Units.METRIC else convert(across, "inch", "mm")
        if mm <= 0.0:
            return
        self._read_mm = mm
        self._pointer.setValue(across)
        self._pointer.setVisible(True)
        thickness = show(mm, "mm", "thickness", self._units)
        texts = [text for curve in self._curves if (text := value_text(curve, mm))]
        row = self._mark_at(place)
        head = f"{thickness}: "
        self.read_out.emit(head + (";  ".join(texts) or self._words.empty) + (f"   |   {row}" if row else ""))

    def _mark_at(self, place: QPointF | None) -> str:
        if place is None:
            return ""
        box = self.getPlotItem().getViewBox()
        found: tuple[float, SchedulePoint | OwnWeld, str] | None = None
        for curve in self._curves:
            marks: tuple[SchedulePoint | OwnWeld, ...] = (*curve.own, *curve.points)
            for mark in marks:
                current_a = mark.current_a if isinstance(mark, OwnWeld) else mark.middle_a
                spot = box.mapViewToScene(QPointF(self._across(mark.thickness_mm), current_a))
                away = hypot(spot.x() - place.x(), spot.y() - place.y())
                if away <= NEAR_PX and (found is None or away < found[0]):
                    found = away, mark, curve.title
        if found is None:
            return ""
        _, mark, title = found
        if isinstance(mark, OwnWeld):
            return weld_text(mark, self._units)
        return row_text(title, mark, self._units)


def _runs(figures: Sequence[float]) -> Iterator[slice]:
    """Yield the stretches without gaps."""
    begin: int | None = None
    for place, current in enumerate((*figures, float("nan"))):
        if not isnan(current) and begin is None:
            begin = place
        elif isnan(current) and begin is not None:
            if place - begin > 1:
                yield slice(begin, place)
            begin = None
