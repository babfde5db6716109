"""Filling holes one by one: what to drill, how close they stand, how long and how hot it gets."""

from dataclasses import dataclass
from math import sqrt

from welds.advice.card import Card
from welds.advice.request import Joint, Process, Request
from welds.errors import WeldsError
from welds.job.bench_cards import BenchCards
from welds.job.damage import Behind, Damage
from welds.job.repair_records import rule
from welds.language import tr
from welds.reference.basis import Basis
from welds.reference.settings import PlugHole, PlugRule
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class PlugPlan:
    """Holes drilled to bright metal and filled.

    `pitch_mm` is None for a single hole; `is_measured` where it comes from the two nearest of a drawing.
    """

    drill_mm: float
    limit_mm: float
    limit_basis: Basis
    limit_source: str
    onto: str
    count: int
    pitch_mm: float | None
    is_measured: bool
    least_pitch_mm: float
    pitch_basis: Basis
    pitch_source: str
    seconds_each: float
    time_s: float
    heat_kj: float
    card: Card

    @property
    def ligament_mm(self) -> float:
        """Sheet left between neighbouring drilled holes."""
        return (self.pitch_mm or 0.0) - self.drill_mm


def plan_plugs(bench: BenchCards, damage: Damage) -> tuple[PlugPlan | None, str]:
    """Return the plan, or None and why there is no plug for this sheet on this bench."""
    tables = bench.tables
    if not bench.does(Process.MIG):
        return None, tr("holes are filled by MIG, and no machine on the bench does that")
    thickness = damage.thickness_mm
    coatings, part = damage.coatings, damage.part
    request = Request(Process.MIG, damage.metal.id, thickness, Joint.PLUG, coatings=coatings, part=part)
    try:
        card = bench.card(request)
    except WeldsError as error:
        return None, tr("no figures for filling a hole in this sheet: {problem}", problem=error)
    settings = card.settings
    amps, volts, seconds = (settings[name].figure.start for name in ("current", "voltage", "plug_time"))
    clean, filled = rule(tables, "clean-metal"), rule(tables, "filled-hole-limit")
    drill = damage.largest_mm + clean.value
    limit, basis, source, onto = filled.value, filled.basis, filled.source_id, tr("with a bar behind")
    hole = _sheet_hole(tables, damage.metal.family, thickness)
    if damage.behind is Behind.SOUND and hole is not None:
        assert hole.hole_min_mm is not None
        drill = max(drill, hole.hole_min_mm)
        limit = max(limit, hole.hole_max_mm or hole.hole_min_mm)
        if limit > filled.value:
            basis, source = hole.basis, hole.source_id
        onto = tr("onto the sheet behind")
    spacing = next(row for row in tables.records(PlugRule) if row.topic == "spacing")
    fill = seconds * (drill / settings["plug_hole"].figure.start) ** 2
    count = damage.count
    time = count * (fill + rule(tables, "plug-handling").value)
    return PlugPlan(
        drill,
        limit,
        basis,
        source,
        onto,
        count,
        damage.closest_mm or (sqrt(damage.area_mm2 / count) if count > 1 else None),
        damage.closest_mm is not None,
        spacing.value * drill,
        spacing.basis,
        spacing.source_id,
        fill,
        time,
        count * amps * volts * fill / 1000.0,
        card,
    ), ""


def _sheet_hole(tables: Tables, family: str, thickness_mm: float) -> PlugHole | None:
    for row in tables.records(PlugHole):
        is_sheet = row.family == family and row.purpose == "sheet" and row.hole_min_mm is not None
        if is_sheet and row.thickness_min_mm <= thickness_mm <= row.thickness_max_mm:
            return row
    return None
