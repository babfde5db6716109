"""The heat picture as fast as a slider moves: one field for each piece, every reading taken from it.

The field is proportional to the net power, so that the edges of the model's error are isotherms of the same
field. `bead_of` works out the same figures one by one, slower, once the slider rests.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from welds.advice.case import make_case
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.heat.bead import Bead, HeatSettings, Range, leg_mm, model_of
from welds.advice.heat.calibration import MODEL_ERROR
from welds.advice.heat.cooling import cooling_time_s
from welds.advice.heat.hot_metal import hot_metal
from welds.advice.heat.model import HeatModel
from welds.advice.heat.sharing import members
from welds.advice.heat.softening import affected_c
from welds.advice.request import Joint, Request
from welds.advice.rules.heat_input import PROCESS_FACTOR
from welds.gui.drawing.pool_view import PoolScene
from welds.gui.drawing.zone_scene import PieceZones
from welds.gui.pages.heat.limits import Thresholds, distinct, load_line, thresholds_of
from welds.gui.pages.heat.outlines import Contours
from welds.physics.arc import heat_input
from welds.reference.tables import Tables

Floats = NDArray[np.float64]

ACROSS, DOWN = 64, 40
ALONG, ASIDE = 110, 36
FACE_MM = np.concatenate([[0.0], np.geomspace(0.05, 60.0, 70)])
ARMS_MM = (5.0, 6.5, 8.0, 10.0, 13.0, 16.0, 20.0, 26.0, 32.0, 40.0)
"""How much of the sheets is shown: steps, so that the picture does not breathe under a moving slider."""

SIDES_MM = (4.0, 5.0, 6.5, 8.0, 10.0, 13.0, 16.0, 20.0, 26.0, 32.0, 40.0, 60.0)
BEHIND_MM = (6.0, 8.0, 11.0, 15.0, 20.0, 28.0, 40.0, 60.0, 90.0, 140.0, 260.0)
ROUND_C = (100.0, 200.0, 300.0, 500.0, 800.0, 1100.0)


@dataclass(frozen=True, slots=True)
class Readings:
    """The figures under the picture, of the piece that melts through first."""

    width_mm: Range
    depth_mm: Range
    thickness_mm: float
    root_width_mm: float
    pool_length_mm: float
    melting_c: float
    affected_c: float | None
    affected_width_mm: float | None
    heat_input_kj_mm: float
    cooling_t85_s: float | None
    added_mm2: float | None
    """Section of the added metal where it is known: the wire of a MIG arc."""

    @staticmethod
    def of(bead: Bead) -> "Readings":
        """Return the readings of a bead that was worked out in full."""
        return Readings(
            bead.width_mm,
            bead.depth_mm,
            bead.model.thickness_mm,
            bead.root_width_mm,
            bead.pool_length_mm,
            bead.model.metal.melting_c,
            bead.affected_c,
            bead.heat_affected_width_mm,
            bead.heat_input_kj_mm,
            bead.cooling_t85_s,
            bead.deposited_mm2,
        )


@dataclass(frozen=True)
class Frame:
    """One picture with its readings; `thresholds` are of an earlier setting where there was no time."""

    request: Request
    settings: HeatSettings
    first: PieceZones
    other: PieceZones
    thicknesses_mm: tuple[float, float]
    arm_mm: float
    pool: PoolScene
    readings: Readings
    thresholds: Thresholds
    is_current: bool
    lines: object
    """What the thresholds depend on."""


def frame_of(
    request: Request,
    settings: HeatSettings,
    tables: Tables,
    before: Frame | None = None,
    is_overtaken: Callable[[], bool] = lambda: False,
    equipment: Equipment = GENERIC,
) -> Frame:
    """Return the picture for a setting.

    `before` speeds the search for the thresholds; when `is_overtaken` says that a newer setting waits, its
    thresholds are shown again, but never twice running.
    """
    case = make_case(request, tables, equipment)
    model = model_of(request, settings, tables, equipment)
    pieces = members(request.joint, case.first_mm, case.other_mm)
    first, other = (
        replace(
            model,
            metal=hot_metal(tables, case.first if piece.name == "first" else case.other),
            thickness_mm=piece.thickness_mm,
            share=piece.share,
        )
        for piece in pieces
    )
    thin = min((first, other), key=lambda each: each.thickness_mm)
    limit_c = affected_c(case)
    face = _rises(thin, settings.current_a, FACE_MM, np.zeros(1))[0]
    arm = _arm_mm(thin, face, limit_c, max(case.first_mm, case.other_mm))
    fields = {id(each): _Field.of(each, settings.current_a, arm) for each in distinct(first, other)}
    first_field, other_field = fields[id(first)], fields.get(id(other), fields[id(first)])
    levels = tuple(level for level in (limit_c, *ROUND_C) if level is not None)
    zones = {id(each): each.zones(limit_c, levels) for each in (first_field, other_field)}
    readings = _readings(
        first_field if thin is first else other_field,
        face,
        limit_c,
        heat_input(
            model.arc.volts, settings.current_a, settings.travel_mm_s, PROCESS_FACTOR[request.process]
        ),
        settings.current_a,
    )
    readings = replace(
        readings, cooling_t85_s=cooling_time_s(case, readings.heat_input_kj_mm, settings.start_c)
    )
    lines = tuple(load_line(each) for each in distinct(first, other))
    thresholds, is_current = thresholds_of(first, other, thin, lines, before, is_overtaken)
    return Frame(
        request,
        settings,
        zones[id(first_field)],
        zones[id(other_field)],
        (case.first_mm, case.other_mm),
        arm,
        _pool(thin, settings.current_a, readings, limit_c, request.joint),
        readings,
        thresholds,
        is_current,
        lines,
    )


@dataclass(frozen=True)
class _Field:
    """Peak rises over one piece: rows are depths, columns distances from the weld line."""

    model: HeatModel
    across_mm: Floats
    down_mm: Floats
    rises: Floats
    shares: tuple[float, float]
    """Net power at the cold and at the hot edge of the error, over the net power in the middle."""

    @staticmethod
    def of(model: HeatModel, current_a: float, half_mm: float) -> "_Field":
        across = half_mm * np.linspace(0.0, 1.0, ACROSS) ** 1.4
        down = np.linspace(0.0, model.thickness_mm, DOWN)
        rises = _rises(model, current_a, across, down)
        middle = model.net_power_w(current_a)
        cold, hot = (
            max(model.with_heat(factor).net_power_w(current_a), 0.0) / middle if middle > 0.0 else 0.0
            for factor in (1.0 - MODEL_ERROR, 1.0 + MODEL_ERROR)
        )
        return _Field(model, across, down, rises, (cold, hot))

    def zones(self, limit_c: float | None, levels_c: tuple[float, ...]) -> PieceZones:
        start, melting = self.model.start_c, self.model.melting_rise_k
        contours = Contours(self.across_mm, self.down_mm, self.rises)
        return PieceZones(
            contours.rings(melting),
            contours.rings(limit_c - start) if limit_c is not None and limit_c > start else (),
            contours.lines(melting),
            tuple(each for share in self.shares if share > 0.0 for each in contours.lines(melting / share)),
            tuple(
                (level, contours.lines(level - start))
                for level in levels_c
                if start + 20.0 < level < self.model.metal.melting_c - 40.0
            ),
        )


def _rises(model: HeatModel, current_a: float, across_mm: Floats, down_mm: Floats) -> Floats:
    source = model.source(current_a)
    if source is None:
        return np.zeros((len(down_mm), len(across_mm)))
    return replace(source, reach_mm=max(20.0, min(float(across_mm.max()), 60.0))).peak_section(
        across_mm, down_mm
    )


def _arm_mm(model: HeatModel, face: Floats, limit_c: float | None, thickest_mm: float) -> float:
    level = (limit_c if limit_c is not None else model.metal.melting_c) - model.start_c
    wanted = max(1.25 * _edge(FACE_MM, face, max(level, 1.0)), 2.5 * thickest_mm)
    return next((arm for arm in ARMS_MM if arm >= wanted), max(ARMS_MM[-1], 2.0 * thickest_mm))


def _readings(
    field: _Field, face: Floats, limit_c: float | None, heat_kj_mm: float, current_a: float
) -> Readings:
    model, melting = field.model, field.model.melting_rise_k
    shares = (field.shares[0], 1.0, field.shares[1])
    levels = [melting / share if share > 0.0 else np.inf for share in shares]
    melted = [2.0 * _edge(FACE_MM, face, level) for level in levels]
    widths = [model.over_gap_mm(each) for each in melted]
    depths = [_edge(field.down_mm, field.rises[:, 0], level) for level in levels]
    affected = None
    if limit_c is not None and limit_c > model.start_c and model.source(current_a) is not None:
        affected = _edge(FACE_MM, face, limit_c - model.start_c) - melted[1] / 2.0
    return Readings(
        Range(*widths),
        Range(*depths),
        model.thickness_mm,
        model.over_gap_mm(2.0 * _edge(field.across_mm, field.rises[-1], melting)),
        model.length_mm(current_a, 0.0),
        model.metal.melting_c,
        limit_c,
        affected,
        heat_kj_mm,
        None,
        model.deposited_mm2(current_a) if model.arc.wire is not None else None,
    )


def _edge(places: Floats, rises: Floats, level: float) -> float:
    """Return where falling rises cross the level, 0 where they never reach it."""
    if rises[0] < level:
        return 0.0
    beyond = np.flatnonzero(rises < level)
    if beyond.size == 0:
        return float(places[-1])
    after = int(beyond[0])
    inside, outside = float(rises[after - 1]), float(rises[after])
    share = (inside - level) / (inside - outside)
    return float(places[after - 1] + share * (places[after] - places[after - 1]))


def _pool(
    model: HeatModel, current_a: float, readings: Readings, limit_c: float | None, joint: Joint
) -> PoolScene:
    long, wide = readings.pool_length_mm, readings.width_mm.middle
    zone = wide / 2.0 + (readings.affected_width_mm or 0.0)
    track = max(wide, 2.0**0.5 * (leg_mm(joint, readings.added_mm2) or 0.0))
    side = _step(SIDES_MM, max(0.9 * wide, 0.65 * track, 4.0 * model.spot_mm, min(1.15 * zone, 1.8 * wide)))
    behind = _step(BEHIND_MM, max(1.15 * long, 1.4 * side))
    ahead = side
    along = np.linspace(-behind, ahead, ALONG)
    aside = np.linspace(0.0, side, ASIDE)
    source = model.source(current_a)
    rises = np.zeros((ASIDE, ALONG)) if source is None else source.plan(along, aside, 0.0)
    shared = 0 if model.gap_mm else 1  # without a gap both sides have the weld line in common
    places = aside + model.gap_mm / 2.0
    both = np.concatenate([-places[::-1], places[shared:]])
    mirrored = np.concatenate([rises[::-1], rises[shared:]])
    contours = Contours(along, both, mirrored)
    melting = model.melting_rise_k
    molten = along[rises[0] >= melting]
    ends = (float(molten[-1]) - long, float(molten[-1])) if molten.size and long else None
    affected = contours.rings(limit_c - model.start_c) if limit_c and limit_c > model.start_c else ()
    return PoolScene(
        contours.rings(melting),
        affected,
        contours.lines(melting),
        ends,
        track,
        model.spot_mm,
        (behind, ahead, side),
    )


def _step(steps: tuple[float, ...], wanted: float) -> float:
    return next((step for step in steps if step >= wanted), steps[-1])
