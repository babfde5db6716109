"""Current over thickness: a ribbon for each column, the schedule rows on it, the values under the pointer.

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

from welds.gui.colours import Colours
from welds.gui.pages.compare.line_styles import SHAPES, style_of
from welds.quantities.display import show
from welds.quantities.registry import convert
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.report.current_curve import CurrentCurve, SchedulePoint

RIBBON_ALPHA = (60, 28)
"""How dense a ribbon is: of one or two columns, and of more."""
POINT_PX = 9
SAMPLE_PX = 48.0
NEAR_PX = 12.0
ZOOM = 0.8
STEP_SHARE = 0.02
ROOM = 1.6
"""At first the picture reaches this many times beyond the base thickness, where most of the work is."""


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
        self._add_grades()
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
        left, right = (self._across(edge(mm for mm, _ in finite)) for edge in (min, max))
        self.getPlotItem().setXRange(left, right, padding=0.03)
        self.getPlotItem().setYRange(0.0, max(high for _, high in finite), padding=0.04)

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
        for basis, points in _by_grade(curve.points):
            plot.addItem(
                self._scatter(
                    [self._across(point.thickness_mm) for point in points],
                    [point.middle_a for point in points],
                    basis,
                    style.colour(self._colours),
                )
            )

    def _add_grades(self) -> None:
        """Explain in the legend the shape of each grade that occurs."""
        assert self._colours is not None
        used = {point.basis for curve in self._curves for point in curve.points}
        for basis in sorted(used, key=lambda grade: grade.rank):
            sample = self._scatter([], [], basis, QColor(self._colours.ink))
            self.getPlotItem().legend.addItem(sample, f"schedule row, {basis.value}")

    def _scatter(
        self, across: Sequence[float], up: Sequence[float], basis: Basis, colour: QColor
    ) -> pg.ScatterPlotItem:
        assert self._colours is not None
        shape, is_filled = SHAPES[basis]
        brush = pg.mkBrush(colour if is_filled else QColor(self._colours.sheet))
        return pg.ScatterPlotItem(
            list(across),
            list(up),
            symbol=shape,
            size=POINT_PX,
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
        """Tell the values at a place on the axis, and the schedule row under the pointer."""
        mm = across if self._units is Units.METRIC else convert(across, "inch", "mm")
        if mm <= 0.0:
            return
        self._read_mm = mm
        self._pointer.setValue(across)
        self._pointer.setVisible(True)
        thickness = show(mm, "mm", "thickness", self._units)
        texts = [text for curve in self._curves if (text := _value_text(curve, mm))]
        row = self._row_at(place)
        head = f"{thickness}: "
        self.read_out.emit(head + (";  ".join(texts) or self._words.empty) + (f"   |   {row}" if row else ""))

    def _row_at(self, place: QPointF | None) -> str:
        if place is None:
            return ""
        box = self.getPlotItem().getViewBox()
        found: tuple[float, SchedulePoint, str] | None = None
        for curve in self._curves:
            for point in curve.points:
                spot = box.mapViewToScene(QPointF(self._across(point.thickness_mm), point.middle_a))
                away = hypot(spot.x() - place.x(), spot.y() - place.y())
                if away <= NEAR_PX and (found is None or away < found[0]):
                    found = away, point, curve.title
        if found is None:
            return ""
        _, point, title = found
        thickness = show(point.thickness_mm, "mm", "thickness", self._units)
        return (
            f"{title}, {thickness}: {point.low_a:.0f} to {point.high_a:.0f} A, {point.basis.value},"
            f" {point.source_id}"
        )


def _value_text(curve: CurrentCurve, thickness_mm: float) -> str:
    """Return title, start and range at a thickness, or nothing where the curve has none."""
    start, low, high = (
        float(np.interp(thickness_mm, curve.thicknesses_mm, figures, left=np.nan, right=np.nan))
        for figures in (curve.start_a, curve.low_a, curve.high_a)
    )
    return "" if isnan(start) else f"{curve.title} {start:.0f} A ({low:.0f} to {high:.0f})"


def _runs(figures: Sequence[float]) -> Iterator[slice]:
    """Yield the stretches without gaps."""
    begin: int | None = None
    for place, figure in enumerate((*figures, float("nan"))):
        if not isnan(figure) and begin is None:
            begin = place
        elif isnan(figure) and begin is not None:
            if place - begin > 1:
                yield slice(begin, place)
            begin = None


def _by_grade(points: Sequence[SchedulePoint]) -> Iterator[tuple[Basis, list[SchedulePoint]]]:
    for basis in Basis:
        found = [point for point in points if point.basis is basis]
        if found:
            yield basis, found
