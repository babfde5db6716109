"""The arc over one piece of a joint: heat at a current, and when the pool goes through or falls out."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import erf, exp, log, sqrt

from welds.advice.heat.calibration import FITTED, Fitted
from welds.advice.heat.hot_metal import HotMetal
from welds.physics.deposition import deposited_area
from welds.physics.fused_zone import fused_depth, fused_width, pool_length
from welds.physics.moving_source import MovingSource
from welds.physics.pool_support import arc_dent, arc_force, pool_sag
from welds.physics.surface_loss import radiation_coefficient
from welds.physics.wire import wire_feed

LARGEST_SAG = 0.25
"""Sag, as a share of the sheet, at which the pool counts as falling out: the limit of ISO 5817 level D."""

DEEPEST = 0.5
"""Deepest heat, as a share of the thickness: beyond it the source would be a line through the plate."""

ARC_SPREAD = 4.0
"""How much wider the current is on the plate, some 2 mm in radius, than at a tungsten's tip, some 0.5 mm."""

STEEL_TENSION_N_M = 1.4
LEAST_CURRENT_A, LARGEST_CURRENT_A = 1.0, 3000.0
STRIDE, CLOSE_ENOUGH, FLAT = 0.35, 1e-3, 0.02
"""First steps of the search for a current and where it stops, as logarithms; share below which all is one."""


@dataclass(frozen=True, slots=True)
class WireHeat:
    """The wire of a MIG arc: it takes heat to melt that the plate does not get."""

    diameter_mm: float
    extension_mm: float
    arc_mm3_as: float
    resistance_mm4_a2s: float


@dataclass(frozen=True, slots=True)
class ArcHeat:
    """One arc: efficiency, voltage over current, spot and push; `wire` only for MIG."""

    efficiency: float
    volts: float
    at_current_a: float
    volts_per_ampere: float
    wire: WireHeat | None
    spot_factor: float = 1.0

    def voltage(self, current_a: float) -> float:
        """Return the voltage that goes with another current, along the process's load line."""
        return max(self.volts + self.volts_per_ampere * (current_a - self.at_current_a), 1.0)


@dataclass(frozen=True, slots=True)
class HeatModel:
    """An arc that travels over one piece of a joint."""

    arc: ArcHeat
    metal: HotMetal
    thickness_mm: float
    share: float
    speed_mm_s: float
    start_c: float
    bar_w_m2k: float = 0.0
    gap_mm: float = 0.0
    """Root gap of a butt. By symmetry each side is half of a plate whose middle is its own edge; the wire,
    whose heat of melting is taken off already, fills what is between."""
    fitted: Fitted = FITTED

    @property
    def spot_mm(self) -> float:
        """Standard deviation of the heat on the plate."""
        fitted = self.fitted
        return (fitted.tig_spot_mm if self.arc.wire is None else fitted.mig_spot_mm) * self.arc.spot_factor

    @property
    def loss_w_m2k(self) -> float:
        """What both faces lose per area: radiation, and what a bar behind the joint draws off."""
        free_faces = 1.0 if self.bar_w_m2k else 2.0
        each = radiation_coefficient(self.metal.emissivity, self.metal.melting_c, self.start_c)
        return free_faces * each + self.bar_w_m2k

    @property
    def melting_rise_k(self) -> float:
        """From start to the fusion line."""
        return self.metal.melting_c - self.start_c

    def with_heat(self, factor: float) -> "HeatModel":
        """Return the same with the arc more or less efficient: the edge of the error band."""
        return replace(self, arc=replace(self.arc, efficiency=self.arc.efficiency * factor))

    def net_power_w(self, current_a: float) -> float:
        """Return what the whole joint takes up, less what melts the wire; may be zero or below."""
        arc, metal = self.arc, self.metal
        taken = arc.efficiency * arc.voltage(current_a) * current_a
        each = metal.specific_heat_j_kgk * self.melting_rise_k + metal.latent_heat_j_kg
        wire_mm3_s = self.deposited_mm2(current_a) * self.speed_mm_s
        return taken - wire_mm3_s * 1e-9 * metal.density_kg_m3 * each

    def deposited_mm2(self, current_a: float) -> float:
        """Return the section of the metal that the wire leaves behind; none where a hand feeds the rod."""
        wire = self.arc.wire
        if wire is None:
            return 0.0
        feed = wire_feed(
            current_a, wire.diameter_mm, wire.extension_mm, wire.arc_mm3_as, wire.resistance_mm4_a2s
        )
        return deposited_area(feed, wire.diameter_mm, self.speed_mm_s)

    def dent_mm(self, current_a: float) -> float:
        """Return how deep arc and drops press the pool in."""
        tension = self.metal.surface_tension_n_m
        if self.arc.wire is None:
            return arc_dent(arc_force(current_a, ARC_SPREAD), tension)
        return self.fitted.mig_dent_mm * (current_a / 100.0) ** 2 * STEEL_TENSION_N_M / tension

    def heat_depth_mm(self, current_a: float) -> float:
        """Return how deep the heat lands, as a standard deviation.

        On the dent; the share of the spot that falls into the gap lands on the edges, evenly over the
        thickness, and what is even over t has a mean square depth of t^2 / 3.
        """
        into_gap = erf(self.gap_mm / (8.0**0.5 * self.spot_mm))
        dent = min(self.dent_mm(current_a), DEEPEST * self.thickness_mm)
        return sqrt((1.0 - into_gap) * dent**2 + into_gap * self.thickness_mm**2 / 3.0)

    def source(self, current_a: float) -> MovingSource | None:
        """Return the source over this piece, or None where the wire takes all the heat."""
        power = self.net_power_w(current_a) * self.share
        if power <= 0.0:
            return None
        return MovingSource(
            power,
            self.speed_mm_s,
            self.metal.conductivity_w_mk,
            self.metal.volumetric_heat(self.start_c),
            self.thickness_mm,
            self.spot_mm,
            self.heat_depth_mm(current_a),
            self.loss_w_m2k,
        )

    def width_mm(self, current_a: float, below_mm: float) -> float:
        """Return the fused width at a depth, a gap that was filled counted."""
        source = self.source(current_a)
        return self.over_gap_mm(fused_width(source, self.melting_rise_k, below_mm)) if source else 0.0

    def over_gap_mm(self, melted_mm: float) -> float:
        """Return the width of the weld where both edges together melted back so far."""
        return melted_mm + self.gap_mm if melted_mm > 0.0 else 0.0

    def length_mm(self, current_a: float, below_mm: float) -> float:
        """Return the length of the pool at a depth."""
        source = self.source(current_a)
        return pool_length(source, self.melting_rise_k, below_mm) if source else 0.0

    def depth_mm(self, current_a: float) -> float:
        """Return the fused depth."""
        source = self.source(current_a)
        return fused_depth(source, self.melting_rise_k) if source else 0.0

    def collapse(self, current_a: float) -> float:
        """Return how near the pool is to falling out: 0 not through, 1 at the limit, more beyond.

        Sag under its own weight over the opening in the root face, against the largest sag, plus the arc's
        dent against the thickness.
        """
        source = self.source(current_a)
        if source is None:
            return 0.0
        width = self.over_gap_mm(fused_width(source, self.melting_rise_k, self.thickness_mm))
        if width == 0.0:
            return 0.0
        length = pool_length(source, self.melting_rise_k, self.thickness_mm)
        sag = pool_sag(width, length, self.metal.capillary_length_mm) / LARGEST_SAG
        return sag + self.dent_mm(current_a) / self.thickness_mm

    def surface_current_a(self) -> float:
        """Return the current that just melts the face."""
        return _current_for(lambda current: self._melting_share(current, 0.0), self.arc.at_current_a)

    def through_current_a(self) -> float:
        """Return the current that just melts through."""
        root = self.thickness_mm
        return _current_for(lambda current: self._melting_share(current, root), self.arc.at_current_a)

    def collapse_current_a(self, least_a: float = 0.0) -> float:
        """Return the current at which the pool falls out, searched above one that is known to hold."""
        return _current_for(self.collapse, max(self.arc.at_current_a, 1.2 * least_a))

    def _melting_share(self, current_a: float, below_mm: float) -> float:
        source = self.source(current_a)
        return source.peak_rise(below_mm) / self.melting_rise_k if source else 0.0


def _current_for(share_of_limit: Callable[[float], float], guess_a: float) -> float:
    """Return the current at which a quantity that grows with it reaches one, within the currents searched.

    Stepped from the guess until the answer is enclosed, then by straight lines between logarithms.
    """

    def height(place: float) -> float:
        return log(max(share_of_limit(exp(place)), FLAT))

    low = high = (log(guess_a), height(log(guess_a)))
    while high[1] < 0.0:
        low, place = high, high[0] + STRIDE
        if place > log(LARGEST_CURRENT_A):
            return LARGEST_CURRENT_A
        high = (place, height(place))
    while low[1] >= 0.0:
        high, place = low, low[0] - STRIDE
        if place < log(LEAST_CURRENT_A):
            return LEAST_CURRENT_A
        low = (place, height(place))
    while high[0] - low[0] > CLOSE_ENOUGH and high[1] - low[1] > CLOSE_ENOUGH:
        share = min(max(low[1] / (low[1] - high[1]), 0.05), 0.95)
        place = low[0] + share * (high[0] - low[0])
        found = (place, height(place))
        if abs(found[1]) < CLOSE_ENOUGH:
            return exp(place)
        low, high = (found, high) if found[1] < 0.0 else (low, found)
    return exp((low[0] + high[0]) / 2.0)
