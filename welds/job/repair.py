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
from welds.language import figure, tr
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
        raise NotCoveredError(tr("repair in {metal}", metal=damage.metal.id), damage.metal.refusal)
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
        raise NotCoveredError(tr("patch in {metal}", metal=damage.metal.id), patch.uncovered)
    return RepairAnswer(damage, choice, tuple(reasons), plug, patch, _checks(damage, choice))


def _refuse_what_carries(damage: Damage) -> None:
    if damage.part in NOT_YOURS or damage.is_load_bearing:
        named = tr(NOT_YOURS[damage.part]) if damage.part in NOT_YOURS else tr("a load-bearing part")
        raise NotCoveredError(
            tr("repair of {part}", part=named),
            tr("its failure can hurt someone: the maker's manual, local rules and a qualified welder decide"),
            tr("the same damage in sheet that carries nothing"),
        )


def _sheet_reasons(tables: Tables, damage: Damage) -> list[RepairReason]:
    reasons = []
    share, least = rule(tables, "thin-share"), rule(tables, "least-sheet")
    left = damage.thickness_mm
    if left < share.value * damage.nominal_mm:
        text = tr(
            "{left} is left of {nominal}, less than {share:.0%}:"
            " the holes are only where it broke through first",
            left=both(left),
            nominal=both(damage.nominal_mm),
            share=share.value,
        )
        reasons.append(RepairReason(text, Choice.PLUG, share.basis, share.source_id))
    if left < least.value:
        text = tr(
            "{left} all round burns away beside a weld (least {least}): no edge to join a patch to",
            left=both(left),
            least=both(least.value),
        )
        reasons += [
            RepairReason(text, each, least.basis, least.source_id) for each in (Choice.PLUG, Choice.PATCH)
        ]
    if damage.behind is Behind.THIN:
        text = tr("the sheet behind is thin too: cut out, look, and mend that first, as it gets covered up")
        reasons.append(RepairReason(text, Choice.PLUG, Basis.PRACTICE, "COMMON_PRACTICE"))
    return reasons


def _patch_reasons(tables: Tables, damage: Damage, patch: PatchPlan) -> list[RepairReason]:
    share = rule(tables, "panel-share")
    if damage.panel_mm is None:
        return []
    of_panel = patch.cut_mm[0] * patch.cut_mm[1] / (damage.panel_mm[0] * damage.panel_mm[1])
    text = tr(
        "the cut-out takes {part:.0%} of the panel; above {most:.0%} a new panel is less work",
        part=of_panel,
        most=share.value,
    )
    if of_panel <= share.value:
        return [RepairReason(text, None, share.basis, share.source_id)]
    too_much = tr("what is too much for a patch is too much for plugs")
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
    text = tr(
        "the largest hole, {largest}, is drilled to {drilled}; up to {limit} can be filled {onto}",
        largest=both(damage.largest_mm),
        drilled=both(plug.drill_mm),
        limit=both(plug.limit_mm),
        onto=plug.onto,
    )
    reasons.append(RepairReason(text, None if fits else Choice.PLUG, plug.limit_basis, plug.limit_source))
    if plug.pitch_mm is not None:
        is_apart = plug.pitch_mm >= plug.least_pitch_mm
        stand = (
            tr(
                "the two nearest of {count} holes, as drawn, stand {distance} apart",
                count=damage.count,
                distance=_rough(plug.pitch_mm),
            )
            if plug.is_measured
            else tr(
                "{count} holes in the region stand about {distance} apart",
                count=damage.count,
                distance=_rough(plug.pitch_mm),
            )
        )
        between = (
            tr("leaving {width} of sheet between", width=_rough(plug.ligament_mm))
            if plug.ligament_mm > 0.0
            else tr("and run into each other when drilled")
        )
        text = tr(
            "{stand}, {between}; plugs want {distance} between middles",
            stand=stand,
            between=between,
            distance=_rough(plug.least_pitch_mm),
        )
        verdict = None if is_apart else Choice.PLUG
        reasons.append(RepairReason(text, verdict, plug.pitch_basis, plug.pitch_source))
    if patch.heat_kj is not None:
        hotter = plug.heat_kj > patch.heat_kj
        per_area = plug.heat_kj * 1000.0 / damage.area_mm2
        heats = {"plugs": plug.heat_kj, "per_area": per_area, "patch": patch.heat_kj}
        text = (
            tr(
                "{plugs:.1f} kJ of arc in the region ({per_area:.1f} J/mm2) for the plugs against"
                " {patch:.1f} kJ along the edge of a patch: the plugs would warp it more",
                **heats,
            )
            if hotter
            else tr(
                "{plugs:.1f} kJ of arc in the region ({per_area:.1f} J/mm2) for the plugs against"
                " {patch:.1f} kJ along the edge of a patch: the patch would warp it more",
                **heats,
            )
        )
        reasons.append(RepairReason(text, Choice.PLUG if hotter else None, Basis.DERIVED, "OWN"))
    slower = plug.time_s > patch.time_s
    text = tr(
        "about {plugs:.0f} min for the plugs, {patch:.0f} min for a patch",
        plugs=plug.time_s / 60.0,
        patch=patch.time_s / 60.0,
    )
    reasons.append(RepairReason(text, Choice.PLUG if slower else None, Basis.PRACTICE, "COMMON_PRACTICE"))
    return reasons


def _rough(mm: float) -> str:
    """Return a length that was not measured finer than this, in both units."""
    return figure(f"{mm:.0f} mm ({mm / MM_PER_INCH:.2f} in)")


def _checks(damage: Damage, choice: Choice) -> tuple[str, ...]:
    checks = [
        tr("Tap and prick all round before cutting: mark where the metal is bright and full thickness.")
    ]
    if choice is not Choice.REPLACE:
        checks.append(tr("Shine a lamp from behind in the dark: light through the seam is a missed spot."))
    if damage.traps_water:
        checks.append(tr("Water stands here: open a drain, and seal and paint the inside, or it comes back."))
    if damage.behind is Behind.NONE and choice is Choice.PLUG:
        checks.append(tr("Nothing behind: hold a copper bar tight against the back while filling."))
    if damage.behind is Behind.SOUND and choice is Choice.PLUG:
        checks.append(tr("Clamp the sheet tight to what is behind: a gap blows the plug out."))
    checks.append(
        tr("A vehicle's own rules may ask for a seam all round or forbid the repair: read them first.")
    )
    return tuple(checks)
