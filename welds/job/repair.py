"""Plug, patch or replace: one damaged region, decided with its reasons and the arithmetic."""

from dataclasses import dataclass
from enum import StrEnum

from welds.advice.card import Card
from welds.advice.setting import Caution
from welds.advice.words import both
from welds.errors import NotCoveredError
from welds.job.bench_cards import BenchCards
from welds.job.bend_radius import MM_PER_INCH
from welds.job.damage import NOT_YOURS, Behind, Damage
from welds.job.patch import PatchPlan, plan_patch
from welds.job.plugs import PlugPlan, plan_plugs
from welds.job.repair_records import rule
from welds.reference.basis import Basis
from welds.reference.tables import Tables


class Choice(StrEnum):
    """What to do with the region."""

    PLUG = "plug"
    PATCH = "patch"
    REPLACE = "replace"


@dataclass(frozen=True, slots=True)
class RepairReason:
    """One step of the decision; `against` names what it speaks against."""

    text: str
    against: Choice | None
    basis: Basis
    source: str


@dataclass(frozen=True, slots=True)
class RepairAnswer:
    """The choice, why, and both ways worked out as far as the tables go."""

    damage: Damage
    choice: Choice
    reasons: tuple[RepairReason, ...]
    plug: PlugPlan | None
    patch: PatchPlan
    checks: tuple[str, ...]

    @property
    def card(self) -> Card | None:
        """The set-up for the choice; a new panel is welded in as a patch is."""
        return self.plug.card if self.choice is Choice.PLUG and self.plug else self.patch.card

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """What can hurt while doing it."""
        return self.card.cautions if self.card is not None else ()


def decide_repair(bench: BenchCards, damage: Damage) -> RepairAnswer:
    """Return what to do; raises NotCoveredError for parts that are not the person's to repair."""
    tables = bench.tables
    _refuse_what_carries(damage)
    if not damage.metal.is_weldable:
        raise NotCoveredError(f"repair in {damage.metal.id}", damage.metal.refusal)
    plug, no_plug = plan_plugs(bench, damage)
    patch = plan_patch(bench, damage)
    reasons = [
        *_sheet_reasons(tables, damage),
        *_patch_reasons(tables, damage, patch),
        *_plug_reasons(tables, damage, plug, no_plug, patch),
    ]
    against = {reason.against for reason in reasons}
    choice = next(each for each in (Choice.PLUG, Choice.PATCH, Choice.REPLACE) if each not in against)
    if choice is Choice.PATCH and patch.uncovered:
        raise NotCoveredError(f"patch in {damage.metal.id}", patch.uncovered)
    return RepairAnswer(damage, choice, tuple(reasons), plug, patch, _checks(damage, choice))


def _refuse_what_carries(damage: Damage) -> None:
    if damage.part in NOT_YOURS or damage.is_load_bearing:
        named = damage.part.value if damage.part in NOT_YOURS and damage.part else "a load-bearing part"
        raise NotCoveredError(
            f"repair of {named}",
            "its failure can hurt someone: the maker's manual, local rules and a qualified welder decide",
            "the same damage in sheet that carries nothing",
        )


def _sheet_reasons(tables: Tables, damage: Damage) -> list[RepairReason]:
    reasons = []
    share, least = rule(tables, "thin-share"), rule(tables, "least-sheet")
    left = damage.thickness_mm
    if left < share.value * damage.nominal_mm:
        text = f"{both(left)} is left of {both(damage.nominal_mm)}, less than {share.value:.0%}:"
        text += " the holes are only where it broke through first"
        reasons.append(RepairReason(text, Choice.PLUG, share.basis, share.source_id))
    if left < least.value:
        text = f"{both(left)} all round burns away beside a weld (least {both(least.value)}):"
        text += " no edge to join a patch to"
        reasons += [
            RepairReason(text, each, least.basis, least.source_id) for each in (Choice.PLUG, Choice.PATCH)
        ]
    if damage.behind is Behind.THIN:
        text = "the sheet behind is thin too: cut out, look, and mend that first, as it gets covered up"
        reasons.append(RepairReason(text, Choice.PLUG, Basis.PRACTICE, "COMMON_PRACTICE"))
    return reasons


def _patch_reasons(tables: Tables, damage: Damage, patch: PatchPlan) -> list[RepairReason]:
    share = rule(tables, "panel-share")
    if damage.panel_mm is None:
        return []
    of_panel = patch.cut_mm[0] * patch.cut_mm[1] / (damage.panel_mm[0] * damage.panel_mm[1])
    text = f"the cut-out takes {of_panel:.0%} of the panel; above {share.value:.0%} a new panel is less work"
    if of_panel <= share.value:
        return [RepairReason(text, None, share.basis, share.source_id)]
    too_much = "what is too much for a patch is too much for plugs"
    return [
        RepairReason(text, Choice.PATCH, share.basis, share.source_id),
        RepairReason(too_much, Choice.PLUG, share.basis, share.source_id),
    ]


def _plug_reasons(
    tables: Tables, damage: Damage, plug: PlugPlan | None, no_plug: str, patch: PatchPlan
) -> list[RepairReason]:
    if plug is None:
        return [RepairReason(no_plug, Choice.PLUG, Basis.PRACTICE, "COMMON_PRACTICE")]
    reasons = []
    fits = plug.drill_mm <= plug.limit_mm + 1e-9
    text = (
        f"the largest hole, {both(damage.largest_mm)}, is drilled to {both(plug.drill_mm)};"
        f" up to {both(plug.limit_mm)} can be filled {plug.onto}"
    )
    reasons.append(RepairReason(text, None if fits else Choice.PLUG, plug.limit_basis, plug.limit_source))
    if plug.pitch_mm is not None:
        is_apart = plug.pitch_mm >= plug.least_pitch_mm
        stand = (
            f"the two nearest of {damage.count} holes, as drawn, stand {_rough(plug.pitch_mm)} apart"
            if plug.is_measured
            else f"{damage.count} holes in the region stand about {_rough(plug.pitch_mm)} apart"
        )
        between = (
            f"leaving {_rough(plug.ligament_mm)} of sheet between"
            if plug.ligament_mm > 0.0
            else "and run into each other when drilled"
        )
        text = f"{stand}, {between}; plugs want {_rough(plug.least_pitch_mm)} between middles"
        verdict = None if is_apart else Choice.PLUG
        reasons.append(RepairReason(text, verdict, plug.pitch_basis, plug.pitch_source))
    if patch.heat_kj is not None:
        hotter = plug.heat_kj > patch.heat_kj
        per_area = plug.heat_kj * 1000.0 / damage.area_mm2
        text = (
            f"{plug.heat_kj:.1f} kJ of arc in the region ({per_area:.1f} J/mm2) for the plugs against"
            f" {patch.heat_kj:.1f} kJ along the edge of a patch: the {'plugs' if hotter else 'patch'}"
            " would warp it more"
        )
        reasons.append(RepairReason(text, Choice.PLUG if hotter else None, Basis.DERIVED, "OWN"))
    slower = plug.time_s > patch.time_s
    text = f"about {plug.time_s / 60.0:.0f} min for the plugs, {patch.time_s / 60.0:.0f} min for a patch"
    reasons.append(RepairReason(text, Choice.PLUG if slower else None, Basis.PRACTICE, "COMMON_PRACTICE"))
    return reasons


def _rough(mm: float) -> str:
    """Return a length that was not measured finer than this, in both units."""
    return f"{mm:.0f} mm ({mm / MM_PER_INCH:.2f} in)"


def _checks(damage: Damage, choice: Choice) -> tuple[str, ...]:
    checks = ["Tap and prick all round before cutting: mark where the metal is bright and full thickness."]
    if choice is not Choice.REPLACE:
        checks.append("Shine a lamp from behind in the dark: light through the seam is a missed spot.")
    if damage.traps_water:
        checks.append("Water stands here: open a drain, and seal and paint the inside, or it comes back.")
    if damage.behind is Behind.NONE and choice is Choice.PLUG:
        checks.append("Nothing behind: hold a copper bar tight against the back while filling.")
    if damage.behind is Behind.SOUND and choice is Choice.PLUG:
        checks.append("Clamp the sheet tight to what is behind: a gap blows the plug out.")
    checks.append("A vehicle's own rules may ask for a seam all round or forbid the repair: read them first.")
    return tuple(checks)
