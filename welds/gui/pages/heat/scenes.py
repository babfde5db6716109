"""Everything on show that follows the sliders, made of a frame, its readings and what is kept."""

from dataclasses import dataclass, replace

from welds.advice.heat.calibration import MODEL_ERROR
from welds.advice.request import Joint
from welds.gui.drawing.heat_gauge import GaugeScene
from welds.gui.drawing.pool_view import PoolScene
from welds.gui.drawing.zone_scene import ZoneScene
from welds.gui.pages.heat.figures import FigureLine, Verdict, figure_lines, limits_line, verdict
from welds.gui.pages.heat.knobs import CURRENT, Knobs
from welds.gui.pages.heat.live import Frame, Readings
from welds.quantities.units import Units


@dataclass(frozen=True)
class Picture:
    """Everything on show that follows the sliders."""

    zone: ZoneScene
    pool: PoolScene
    gauge: GaugeScene
    melting_c: float
    figures: tuple[FigureLine, ...]
    kept_figures: tuple[FigureLine, ...]
    limits: FigureLine
    verdict: Verdict


@dataclass(frozen=True)
class Kept:
    """A setting that is kept to compare with."""

    knobs: Knobs
    frame: Frame


def make_picture(
    frame: Frame, readings: Readings, knobs: Knobs, kept: Kept | None, units: Units, *, wants_through: bool
) -> Picture:
    """Return what is on show; a kept setting is drawn to the same scale."""
    zone, pool = zone_scene(frame, units), replace(frame.pool, units=units)
    kept_figures: tuple[FigureLine, ...] = ()
    if kept is not None:
        other = kept.frame
        arm = max(zone.arm_mm, other.arm_mm)
        zone = replace(zone, kept=replace(zone_scene(other, units), arm_mm=arm), arm_mm=arm)
        (behind, ahead, side), kept_box = pool.box_mm, other.pool.box_mm
        box = (max(behind, kept_box[0]), max(ahead, kept_box[1]), max(side, kept_box[2]))
        pool = replace(pool, kept=other.pool.outline, box_mm=box)
        kept_figures = figure_lines(other.readings, other.request, units)
    return Picture(
        zone,
        pool,
        _gauge(frame, knobs, kept),
        readings.melting_c,
        figure_lines(readings, frame.request, units),
        kept_figures,
        limits_line(frame.thresholds, knobs.knobs[CURRENT].band),
        verdict(readings, frame.thresholds, frame.settings.current_a, wants_through=wants_through),
    )


def _gauge(frame: Frame, knobs: Knobs, kept: Kept | None) -> GaugeScene:
    knob, limits = knobs.knobs[CURRENT], frame.thresholds
    assert knob.band is not None
    low = min(0.55 * limits.melts_a, 0.7 * knob.band[0], knob.value)
    high = max(1.35 * min(limits.falls_a, 800.0), 1.3 * knob.band[1], knob.value)
    return GaugeScene(
        limits.melts_a,
        limits.through_a,
        limits.falls_a,
        frame.settings.current_a,
        knob.band,
        (low, high),
        MODEL_ERROR,
        kept.knobs.knobs[CURRENT].value if kept is not None else None,
    )


def zone_scene(frame: Frame, units: Units) -> ZoneScene:
    """Return the section of one setting."""
    first_mm, other_mm = frame.thicknesses_mm
    joint, gap_mm = frame.request.joint, frame.request.gap_mm
    return ZoneScene(
        joint,
        first_mm,
        other_mm,
        gap_mm if joint is Joint.BUTT else min(gap_mm, first_mm),
        frame.arm_mm,
        frame.first,
        frame.other,
        frame.readings.width_mm.middle,
        frame.readings.root_width_mm,
        frame.readings.added_mm2,
        units,
    )
