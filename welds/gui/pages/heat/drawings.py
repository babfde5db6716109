"""The pictures of the heat page in the colours of the widget they stand on, and all of them on one sheet."""

from dataclasses import replace

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget

from welds.gui.colours import Colours
from welds.gui.drawing.fused_zone import paint_fused_zone
from welds.gui.drawing.heat_gauge import GaugeWords, paint_gauge
from welds.gui.drawing.heat_ink import DARK_HEAT, LIGHT_HEAT, PRINT_HEAT, HeatInk
from welds.gui.drawing.ink import DARK, LIGHT, PRINT, Ink
from welds.gui.drawing.pool_view import PoolWords, paint_pool
from welds.gui.drawing.strokes import text_font
from welds.gui.drawing.zone_key import ZoneWords
from welds.gui.pages.heat.figures import length
from welds.gui.pages.heat.presenter import HeatPresenter
from welds.gui.pages.heat.scenes import Picture
from welds.language import tr
from welds.quantities.display import show

Inks = tuple[Ink, HeatInk]
ON_SCREEN: Inks = (LIGHT, LIGHT_HEAT)
ON_PAPER: Inks = (PRINT, PRINT_HEAT)
SHEET_PX = (1200, 760)
GAUGE_PX = 104.0


class HeatDrawings:
    """Draws whatever the presenter has on show."""

    def __init__(self, presenter: HeatPresenter, owner: QWidget) -> None:
        self._presenter, self._owner = presenter, owner

    def paint_zone(self, painter: QPainter, area: QRectF) -> None:
        """Draw the joint cut across."""
        self._zone(painter, area, self._inks())

    def paint_pool(self, painter: QPainter, area: QRectF) -> None:
        """Draw the pool from above."""
        self._pool(painter, area, self._inks())

    def paint_gauge(self, painter: QPainter, area: QRectF) -> None:
        """Draw the gauge from cold to burning through."""
        self._gauge(painter, area, self._inks())

    def paint_sheet(self, painter: QPainter, area: QRectF, inks: Inks = ON_SCREEN) -> None:
        """Draw all three with title, settings and figures, for a file or a page."""
        picture = self._presenter.picture
        if picture is None:
            return
        ink = inks[0]
        painter.fillRect(area, QColor(ink.ground))
        painter.save()
        painter.setFont(text_font(painter, 15.0, bold=True))
        painter.setPen(QColor(ink.text))
        painter.drawText(
            area.adjusted(14.0, 8.0, -14.0, 0.0), Qt.AlignmentFlag.AlignLeft, self._presenter.title
        )
        painter.setFont(text_font(painter, 12.0))
        painter.drawText(area.adjusted(14.0, 30.0, -14.0, 0.0), Qt.AlignmentFlag.AlignLeft, self._settings())
        verdict = area.adjusted(14.0, 50.0, -14.0, 0.0)
        painter.drawText(verdict, Qt.AlignmentFlag.AlignLeft, picture.verdict.text)
        lines = [
            f"{each.name}: {each.value}" + (f" ({each.error})" if each.error else "")
            for each in picture.figures
        ]
        lines += [
            tr("kept: {figures}", figures="; ".join(f"{e.name} {e.value}" for e in picture.kept_figures))
        ] * bool(picture.kept_figures)
        lines.append(tr("Conduction only, give or take its error: to think with, not a procedure."))
        foot = 16.0 * len(lines) + 8.0
        for number, text in enumerate(lines):
            row = QRectF(area.left() + 14.0, area.bottom() - foot + 16.0 * number, area.width() - 28.0, 16.0)
            painter.drawText(row, Qt.AlignmentFlag.AlignLeft, text)
        painter.restore()
        gauge = QRectF(area.left(), area.top() + 74.0, area.width(), GAUGE_PX)
        self._gauge(painter, gauge, inks)
        self.paint_views(painter, area.adjusted(0.0, 78.0 + GAUGE_PX, 0.0, -foot - 8.0), inks)

    def paint_views(self, painter: QPainter, area: QRectF, inks: Inks = ON_SCREEN) -> None:
        """Draw the section with the pool beside it."""
        across = area.width()
        self._zone(painter, QRectF(area.left(), area.top(), 0.58 * across, area.height()), inks)
        self._pool(
            painter, QRectF(area.left() + 0.59 * across, area.top(), 0.41 * across, area.height()), inks
        )

    def _inks(self) -> Inks:
        colours = Colours.of(self._owner.palette())
        ink, heat = (DARK, DARK_HEAT) if colours.is_dark else (LIGHT, LIGHT_HEAT)
        return replace(ink, ground=colours.sheet), heat

    def _zone(self, painter: QPainter, area: QRectF, inks: Inks) -> None:
        picture = self._presenter.picture
        if picture is not None:
            paint_fused_zone(painter, area, picture.zone, *inks, self._zone_words(picture))

    def _pool(self, painter: QPainter, area: QRectF, inks: Inks) -> None:
        picture = self._presenter.picture
        if picture is None:
            return
        pool = picture.pool
        long = pool.ends_mm[1] - pool.ends_mm[0] if pool.ends_mm else 0.0
        words = PoolWords(
            tr("travel"),
            tr("seen from above; ring: the arc's spot"),
            tr("pool {length}", length=length(long, self._presenter.units)),
            tr("nothing melts"),
        )
        paint_pool(painter, area, pool, *inks, words)

    def _gauge(self, painter: QPainter, area: QRectF, inks: Inks) -> None:
        picture = self._presenter.picture
        if picture is None:
            return
        words = GaugeWords(
            tr("stays cold"),
            tr("melts the face"),
            tr("melts through"),
            tr("burns through"),
            tr("the card's band"),
        )
        paint_gauge(painter, area, picture.gauge, *inks, words)

    def _zone_words(self, picture: Picture) -> ZoneWords:
        limit = self._presenter.affected_c
        affected = ""
        if limit is not None:
            shown = show(limit, "degC", "preheat", self._presenter.units)
            affected = tr("heat-affected, above {limit}", limit=shown)
        return ZoneWords(
            tr(
                "melted, above {melting}",
                melting=show(picture.melting_c, "degC", "preheat", self._presenter.units),
            ),
            affected,
            tr("edge if the heat is {error:.0%} off", error=picture.gauge.error),
            tr("kept"),
            tr("added metal, by the wire feed")
            if picture.zone.knows_added
            else tr("added metal, at a usual size"),
        )

    def _settings(self) -> str:
        return ", ".join(knob.text(self._presenter.units) for knob in self._presenter.knobs)
