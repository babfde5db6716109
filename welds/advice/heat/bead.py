"""A request and its settings made into a bead: width, depth, nearness to falling out, cooling."""

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from welds.advice.case import Case, make_case
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.gas_choice import choose_gas
from welds.advice.heat.calibration import MODEL_ERROR
from welds.advice.heat.cooling import cooling_time_s
from welds.advice.heat.efficiency import Efficiency, thermal_efficiency
from welds.advice.heat.hot_metal import hot_metal
from welds.advice.heat.model import ArcHeat, HeatModel, WireHeat
from welds.advice.heat.sharing import Member, members
from welds.advice.heat.softening import affected_c
from welds.advice.mig_seams import EXTENSION_MM, Bench, build_mig_seams
from welds.advice.request import Joint, Process, Request, Transfer
from welds.advice.rules.arc_voltage import HELIUM_V
from welds.advice.rules.heat_input import PROCESS_FACTOR
from welds.advice.rules.passes import FILLETS
from welds.advice.rules.transfer import advise as choose_transfer
from welds.advice.rules.wire_diameter import usual_wire_mm
from welds.advice.words import span
from welds.errors import InputError, NotCoveredError
from welds.language import figure, mark, tr
from welds.physics.arc import (
    LOAD_LINE_LIMIT_A,
    MIG_LOAD_LINE_V,
    TIG_LOAD_LINE_V,
    heat_input,
)
from welds.physics.deposition import fillet_leg
from welds.physics.fused_zone import fused_width
from welds.physics.moving_source import MovingSource
from welds.reference.names import id_or_name
from welds.reference.tables import Tables

Floats = NDArray[np.float64]

ROOM_C = 20.0
HOTTEST_START_C = 400.0
SLOWEST_MM_S, QUICKEST_MM_S = 0.2, 200.0
WIDEST_GAP = 2.0
"""Gap, in thicknesses, beyond which no bead closes: printed rows go to 1.5, and that on backing."""

BAR_W_M2K = 2000.0
"""What a clamped metal bar behind the joint draws off, per area: a trend only, bars vary tenfold."""

USUAL_FREQUENCY_HZ, NARROWING = 60.0, -0.1
"""AC frequency the spot is held to belong to, and the power with which it narrows above: a trend only."""


@dataclass(frozen=True, slots=True)
class HeatSettings:
    """What is set, or dragged: only current and travel have to be known."""

    current_a: float
    travel_mm_s: float
    voltage_v: float | None = None
    start_c: float = ROOM_C
    has_bar: bool = False
    frequency_hz: float | None = None
    electrode_negative_percent: float | None = None


@dataclass(frozen=True, slots=True)
class Range:
    """A figure with what the model's error makes of it."""

    low: float
    middle: float
    high: float


@dataclass(frozen=True, slots=True)
class Bead:
    """What the arc leaves behind, in the piece that melts through first.

    `burn_through_margin` is the current at which the pool falls out over the current set, less one.
    `through_current_a` just melts through, `surface_current_a` just melts the face of the piece that takes
    most.
    `error` is the model's typical error, a share of the heat; the ranges carry it. `trends` says in words
    which inputs only show a direction.
    """

    request: Request
    settings: HeatSettings
    voltage_v: float
    efficiency: Efficiency
    model: HeatModel
    pieces: tuple[Member, Member]
    width_mm: Range
    depth_mm: Range
    root_width_mm: float
    pool_length_mm: float
    burn_through_margin: float
    surface_current_a: float
    through_current_a: float
    collapse_current_a: float
    heat_input_kj_mm: float
    cooling_t85_s: float | None
    affected_c: float | None
    heat_affected_width_mm: float | None
    error: float
    trends: tuple[str, ...]

    @property
    def fused_width_mm(self) -> float:
        """Fused width on the face."""
        return self.width_mm.middle

    @property
    def fused_depth_mm(self) -> float:
        """Fused depth; the thickness where it melts through."""
        return self.depth_mm.middle

    @property
    def full_penetration(self) -> bool:
        """Whether the piece melts right through."""
        return self.root_width_mm > 0.0

    @property
    def deposited_mm2(self) -> float | None:
        """Section of the metal that the wire adds; None where a hand feeds the rod."""
        return self.model.deposited_mm2(self.settings.current_a) if self.model.arc.wire is not None else None

    @property
    def fillet_leg_mm(self) -> float | None:
        """Leg of the fillet which that metal makes; None for other joints."""
        return leg_mm(self.request.joint, self.deposited_mm2)

    @property
    def source(self) -> MovingSource | None:
        """The source over the piece the figures are for."""
        return self.model.source(self.settings.current_a)


def leg_mm(joint: Joint, deposited_mm2: float | None) -> float | None:
    """Return the leg of the fillet that added metal makes, None where it is not known or makes none."""
    return fillet_leg(deposited_mm2) if deposited_mm2 is not None and joint in FILLETS else None


def bead_of(request: Request, settings: HeatSettings, tables: Tables, equipment: Equipment = GENERIC) -> Bead:
    """Return the bead that settings leave in a joint.

    Raises InputError for settings that cannot be meant, and what `make_case` raises for the request.
    """
    case = make_case(request, tables, equipment)
    _check(case, settings)
    arc, efficiency = _arc(case, settings)
    pieces = members(request.joint, case.first_mm, case.other_mm)
    both = [_model(case, settings, arc, piece) for piece in pieces]
    model, other = sorted(both, key=lambda each: each.thickness_mm)
    current = settings.current_a
    cold, hot = model.with_heat(1.0 - MODEL_ERROR), model.with_heat(1.0 + MODEL_ERROR)
    width = Range(*(each.width_mm(current, 0.0) for each in (cold, model, hot)))
    through = model.through_current_a()
    falls = model.collapse_current_a(through)
    q = heat_input(arc.volts, current, settings.travel_mm_s, PROCESS_FACTOR[request.process])
    softens = affected_c(case)
    return Bead(
        request,
        settings,
        arc.volts,
        efficiency,
        model,
        pieces,
        width,
        Range(*(each.depth_mm(current) for each in (cold, model, hot))),
        model.width_mm(current, model.thickness_mm),
        model.length_mm(current, 0.0),
        falls / current - 1.0,
        max(each.surface_current_a() for each in {model, other}),
        through,
        falls,
        q,
        cooling_time_s(case, q, settings.start_c),
        softens,
        _affected_width_mm(model, current, softens),
        MODEL_ERROR,
        _trends(case, settings),
    )


def model_of(
    request: Request, settings: HeatSettings, tables: Tables, equipment: Equipment = GENERIC
) -> HeatModel:
    """Return the model of the piece that melts through first."""
    case = make_case(request, tables, equipment)
    _check(case, settings)
    arc, _efficiency = _arc(case, settings)
    pieces = members(request.joint, case.first_mm, case.other_mm)
    return _model(case, settings, arc, min(pieces, key=lambda piece: piece.thickness_mm))


def _model(case: Case, settings: HeatSettings, arc: ArcHeat, piece: Member) -> HeatModel:
    metal = case.first if piece.name == "first" else case.other
    return HeatModel(
        arc,
        hot_metal(case.tables, metal),
        piece.thickness_mm,
        piece.share,
        settings.travel_mm_s,
        settings.start_c,
        BAR_W_M2K if settings.has_bar else 0.0,
        case.request.gap_mm if case.request.joint is Joint.BUTT else 0.0,
    )


def _arc(case: Case, settings: HeatSettings) -> tuple[ArcHeat, Efficiency]:
    efficiency = thermal_efficiency(case, settings.electrode_negative_percent)
    is_tig = case.request.process is Process.TIG
    at_zero, slope = TIG_LOAD_LINE_V if is_tig else MIG_LOAD_LINE_V
    volts = settings.voltage_v
    if volts is None:
        volts = at_zero + slope * settings.current_a
        if is_tig and choose_gas(case)[0].helium_percent >= 50.0:
            volts += HELIUM_V
    wire = None if is_tig else _wire(case)
    spot = 1.0
    if settings.frequency_hz is not None:
        spot = (settings.frequency_hz / USUAL_FREQUENCY_HZ) ** NARROWING
    return ArcHeat(efficiency.middle, volts, settings.current_a, slope, wire, spot), efficiency


def _wire(case: Case) -> WireHeat:
    transfer = case.request.transfer or Transfer(str(choose_transfer(case, {}).value))
    seams = case.tables.derived(build_mig_seams)
    kin = [
        bench
        for each in (transfer, Transfer.SPRAY, Transfer.SHORT_CIRCUIT)
        if (bench := Bench(case.family, each)) in seams.melt_laws
    ]
    if not kin:
        raise NotCoveredError(
            tr("{process} on {metal}", process=id_or_name(transfer), metal=id_or_name(case.family)),
            tr("too few rows print a wire feed"),
        )
    law = seams.melt_laws[kin[0]]
    diameter = case.request.wire_diameter_mm or usual_wire_mm(case.tables, kin[0], case.effective_mm)
    return WireHeat(diameter, EXTENSION_MM[transfer], law.arc_mm3_as, law.resistance_mm4_a2s)


def _affected_width_mm(model: HeatModel, current_a: float, softens_c: float | None) -> float | None:
    source = model.source(current_a)
    if softens_c is None or source is None:
        return None
    if softens_c <= model.start_c:
        return None
    fused = fused_width(source, model.melting_rise_k, 0.0)
    wide = fused_width(replace(source, reach_mm=60.0), softens_c - model.start_c, 0.0)
    return (wide - fused) / 2.0


def _trends(case: Case, settings: HeatSettings) -> tuple[str, ...]:
    said = []
    if settings.frequency_hz is not None:
        said.append(tr("AC frequency: a higher one narrows the arc; no document puts a number on it"))
    if settings.electrode_negative_percent is not None:
        said.append(tr("AC balance: more electrode negative heats the work more; the size is not published"))
    if settings.has_bar:
        said.append(tr("backing bar: it draws heat off, how much depends on the clamping"))
    if case.request.joint in (Joint.OUTSIDE_CORNER, Joint.EDGE):
        said.append(
            tr("corner and edge: the bare edge melts away sooner than the model, which sees a sheet, says")
        )
    return tuple(said)


def _check(case: Case, settings: HeatSettings) -> None:
    if case.request.joint is Joint.PLUG:
        raise NotCoveredError(
            tr("plug"), tr("a plug weld does not travel, and the heat picture is of a seam"), tr("lap")
        )
    widest = WIDEST_GAP * case.thin_mm
    limits = (
        ("gap", case.request.gap_mm, 0.0, widest, "mm"),
        (mark("current"), settings.current_a, 1.0, LOAD_LINE_LIMIT_A, "A"),
        (mark("travel"), settings.travel_mm_s, SLOWEST_MM_S, QUICKEST_MM_S, "mm/s"),
        (mark("voltage"), settings.voltage_v, 5.0, 60.0, "V"),
        (mark("preheat"), settings.start_c, -40.0, HOTTEST_START_C, "degC"),
        (mark("frequency"), settings.frequency_hz, 20.0, 500.0, "Hz"),
        (mark("electrode negative"), settings.electrode_negative_percent, 40.0, 99.0, "percent"),
    )
    for field, value, low, high, unit in limits:
        if value is not None and not low <= value <= high:
            raise InputError(field, figure(f"{value:g} {unit}"), span(low, high, unit))
    is_ac = case.request.process is Process.TIG and case.families & {"aluminium", "magnesium"}
    for field, given in (
        (mark("frequency"), settings.frequency_hz),
        (mark("electrode negative"), settings.electrode_negative_percent),
    ):
        if given is not None and not is_ac:
            raise InputError(
                field, figure(f"{given:g}"), tr("only with TIG on aluminium or magnesium, which runs on AC")
            )
