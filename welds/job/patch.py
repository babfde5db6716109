"""Cutting out and letting in a new piece: its size, its seam, its tacks, how long and how hot it gets."""

from dataclasses import dataclass
from math import pi

from welds.advice.card import Card
from welds.advice.request import Joint, Process, Request
from welds.errors import WeldsError
from welds.job.bench_cards import BenchCards
from welds.job.damage import Damage
from welds.job.repair_records import rule
from welds.job.tack_plan import TackPlan, plan_tacks

_THINNEST_BUTT_MM = 0.8
"""Thinner sheet is lapped: a butt edge melts back before it joins."""


@dataclass(frozen=True, slots=True)
class PatchPlan:
    """A patch with round corners; `uncovered` says why there is no card for its seam.

    `heat_kj` is None where there is none, or no heat input on it.
    """

    cut_mm: tuple[float, float]
    blank_mm: tuple[float, float]
    corner_radius_mm: float
    joint: Joint
    lap_mm: float
    gap_mm: float
    seam_mm: float
    tacks: TackPlan
    time_s: float
    heat_kj: float | None
    card: Card | None
    uncovered: str


def plan_patch(bench: BenchCards, damage: Damage) -> PatchPlan:
    """Return the patch for the whole region, cut back to sound metal all round."""
    tables = bench.tables
    thickness = damage.nominal_mm
    margin, over = rule(tables, "patch-margin").value, rule(tables, "grind-allowance").value
    length, width = (side + 2.0 * margin for side in damage.region_mm)
    joint = Joint.BUTT if damage.thickness_mm >= _THINNEST_BUTT_MM else Joint.LAP
    least_lap = max(rule(tables, "least-lap").value, rule(tables, "lap-thicknesses").value * thickness)
    lap = least_lap if joint is Joint.LAP else 0.0
    radius = min(rule(tables, "corner-radius").value, length / 2.0, width / 2.0)
    seam = 2.0 * (length + width) - (8.0 - 2.0 * pi) * radius
    tacks = plan_tacks(tables, damage.metal.family, damage.thickness_mm, joint, seam, is_closed=True)
    card, uncovered = _seam(bench, damage, joint, seam)
    heat, arc_s = _heat(card, seam)
    return PatchPlan(
        (length, width),
        (length + over + 2.0 * lap, width + over + 2.0 * lap),
        radius,
        joint,
        lap,
        min(thickness, rule(tables, "fit-up-gap").value),
        seam,
        tacks,
        rule(tables, "patch-handling").value + arc_s,
        heat,
        card,
        uncovered,
    )


def _seam(bench: BenchCards, damage: Damage, joint: Joint, seam_mm: float) -> tuple[Card | None, str]:
    """Return the card of the seam, or why there is none."""
    usual = (
        (Process.MIG, Process.TIG) if damage.metal.family == "carbon-steel" else (Process.TIG, Process.MIG)
    )
    request = Request(
        damage.process or bench.first_of(usual),
        damage.metal.id,
        damage.thickness_mm,
        joint,
        length_mm=seam_mm,
        coatings=damage.coatings,
        part=damage.part,
    )
    try:
        return bench.card(request), ""
    except WeldsError as error:
        return None, str(error)


def _heat(card: Card | None, seam_mm: float) -> tuple[float | None, float]:
    """Return the arc's energy over the seam in kilojoules and its seconds, where the card says both."""
    if card is None or "heat_input" not in card.settings or "travel_speed" not in card.settings:
        return None, 0.0
    arc_s = seam_mm / card.settings["travel_speed"].figure.start
    return card.settings["heat_input"].figure.start * seam_mm, arc_s
