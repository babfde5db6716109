"""A repair as text, HTML and JSON."""

import textwrap
from collections.abc import Iterator
from html import escape
from pathlib import Path
from typing import Any

from welds.advice.card import NOTICE, Card
from welds.job.hole_drawing import HoleDrawing
from welds.job.plan_drawing import PlanDrawing
from welds.job.repair import Choice, RepairAnswer, RepairReason
from welds.job.repair_drawing import draw_repair
from welds.job.tack_plan import TackPlan
from welds.language import figure, mark, tr
from welds.quantities.units import Units
from welds.report import layout
from welds.report.cut_length import cut_length
from welds.report.html_page import cautions_html, page
from welds.report.json_card import caution_json
from welds.report.text_card import caution_lines
from welds.report.wording import label_inside, machine_name

SCHEMA = "welds.repair/1"
_WIDTH = 90
_GRIDS = {Units.METRIC: 10.0, Units.INCH: 12.7}
"""Squares to count holes by: 10 mm, half an inch."""
CHOICES = {
    Choice.PLUG: mark("Drill and fill the holes"),
    Choice.PATCH: mark("Cut out and let in a patch"),
    Choice.REPLACE: mark("Replace the panel"),
}
_AGAINST = {
    Choice.PLUG: mark("plug"),
    Choice.PATCH: mark("patch"),
    Choice.REPLACE: mark("replace"),
}
_HEADS = {
    "why": (mark("Why"), mark("why")),
    "plugs": (mark("Plugs"), mark("plugs")),
    "patch": (mark("Patch"), mark("patch")),
    "panel": (mark("Panel"), mark("panel")),
    "set-up": (mark("Set-up"), mark("set-up")),
    "checks": (mark("Checks"), mark("checks")),
}
"""Headings as titles and before a line."""


def repair_title(answer: RepairAnswer, units: Units) -> str:
    """Return the choice and what it is for."""
    damage = answer.damage
    region = " x ".join(cut_length(side, units) for side in damage.region_mm)
    sheet = f"{damage.metal.id}, {cut_length(damage.nominal_mm, units)}"
    return tr(
        "{choice}: {sheet}, region {region}", choice=tr(CHOICES[answer.choice]), sheet=sheet, region=region
    )


def repair_lines(answer: RepairAnswer, units: Units) -> Iterator[tuple[str, list[str]]]:
    """Yield the headings, each with its lines."""
    return ((tr(_HEADS[name][0]).upper(), lines) for name, lines in _parts(answer, units))


def repair_notes(answer: RepairAnswer, units: Units) -> Iterator[str]:
    """Yield every line behind its heading, without the checks: a job says them at its end."""
    for name, lines in _parts(answer, units):
        if name != "checks":
            yield from (f"{tr(_HEADS[name][1])}: {line}" for line in lines)


def _parts(answer: RepairAnswer, units: Units) -> Iterator[tuple[str, list[str]]]:
    yield "why", [_reason(each) for each in answer.reasons]
    if answer.choice is Choice.PLUG and answer.plug is not None:
        plug = answer.plug
        yield (
            "plugs",
            [
                tr(
                    "Drill {diameter}, deburr, {count} holes",
                    diameter=cut_length(plug.drill_mm, units),
                    count=plug.count,
                ),
                tr(
                    "About {time:.1f} s of arc each; opposite ends of the region by turns",
                    time=plug.seconds_each,
                ),
            ],
        )
    if answer.choice is Choice.PATCH:
        yield "patch", list(_patch_lines(answer, units))
    if answer.choice is Choice.REPLACE:
        yield "panel", [tr("Cut the new panel by the old one's edges; set up its seams with welds card")]
    if answer.card is not None and answer.choice is not Choice.REPLACE:
        yield "set-up", list(_set_up_lines(answer.card, units))
    yield "checks", list(answer.checks)


def _reason(reason: RepairReason) -> str:
    said = f"{reason.text} ({reason.basis.word}) [{reason.source}]"
    if reason.against is None:
        return said
    return tr("against {choice}: {reason}", choice=tr(_AGAINST[reason.against]), reason=said)


def _set_up_lines(card: Card, units: Units) -> Iterator[str]:
    machine = machine_name(card.machine)
    yield f"{layout.title(card.request)}, {layout.subtitle(card.request, units)}, {machine}"
    yield "; ".join(
        f"{label_inside(line.name)} {line.start_text}" + (f" ({line.range_text})" if line.range_text else "")
        for line in layout.headlines(card, units)
    )
    yield from (check.text for check in card.checks if not check.ok)


def repair_drawing(
    name: str, answer: RepairAnswer, drawing: HoleDrawing | None, folder: Path, units: Units
) -> PlanDrawing:
    """Return the drawing of a repair in the person's units, over its photo where there is one."""
    return draw_repair(name, answer, drawing, folder, _GRIDS[units], lambda mm: cut_length(mm, units))


def _patch_lines(answer: RepairAnswer, units: Units) -> Iterator[str]:
    patch = answer.patch
    cut = " x ".join(cut_length(side, units) for side in patch.cut_mm)
    blank = " x ".join(cut_length(side, units) for side in patch.blank_mm)
    yield tr(
        "Cut out {cut}, corners with {radius} radius",
        cut=cut,
        radius=cut_length(patch.corner_radius_mm, units),
    )
    yield tr("Cut the patch {blank}, corners alike, and grind it to fit", blank=blank)
    if patch.lap_mm:
        yield tr("Lap joint, {overlap} over the edge all round", overlap=cut_length(patch.lap_mm, units))
    else:
        yield tr("Butt joint, gap up to {gap}", gap=cut_length(patch.gap_mm, units))
    yield from tack_lines(patch.tacks, units)


def tack_lines(plan: TackPlan, units: Units) -> Iterator[str]:
    """Yield how to tack and weld one seam."""
    places = ", ".join(cut_length(place, units).split()[0] for place in plan.tacks_mm)
    unit = cut_length(0.0, units).split()[1]
    low, high = plan.tack_length_mm
    where = tr("round the seam") if plan.is_closed else tr("from one end")
    yield (
        tr(
            "{number} tacks, {low:.0f} to {high:.0f} mm long, about {spacing} apart, in this"
            " order (places {where}, {unit}): {places} ({grade})",
            number=len(plan.tacks_mm),
            low=low,
            high=high,
            spacing=cut_length(plan.spacing_mm, units),
            where=where,
            unit=unit,
            places=places,
            grade=plan.basis.word,
        )
    )
    if len(plan.runs) > 1:
        runs = ", ".join(
            tr("{start} to {end}", start=_place(run.start_mm, units), end=_place(run.end_mm, units))
            for run in plan.runs
        )
        yield tr(
            "Weld in {number} runs, in this order and direction ({unit}): {runs}",
            number=len(plan.runs),
            unit=unit,
            runs=runs,
        )
    else:
        yield tr("Weld in one run")
    yield plan.pull
    yield (
        tr(
            "Free shrinkage about {across} mm across and {along} mm along (carbon steel; aluminium"
            " and stainless steel pull more)",
            across=_span(plan.across_mm),
            along=_span(plan.along_mm),
        )
    )


def _place(mm: float, units: Units) -> str:
    return f"{mm:.0f}" if units is Units.METRIC else cut_length(mm, units).split()[0]


def repair_text(answer: RepairAnswer, units: Units) -> str:
    """Return the repair for a terminal."""
    parts = [[repair_title(answer, units)]]
    parts.append([line for caution in answer.cautions for line in caution_lines(caution)])
    for head, lines in repair_lines(answer, units):
        wrapped = (
            textwrap.wrap(line, _WIDTH, initial_indent="  ", subsequent_indent="    ") for line in lines
        )
        parts.append([head, *(line for each in wrapped for line in each)])
    parts.append(textwrap.wrap(tr(NOTICE), _WIDTH))
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def repair_html(answer: RepairAnswer, units: Units) -> str:
    """Return the repair as a page."""
    return page(repair_title(answer, units), repair_body(answer, units))


def repair_body(answer: RepairAnswer, units: Units, name: str = "") -> str:
    """Return the repair's part of a page, escaped."""
    title = repair_title(answer, units)
    parts = [f'<p class="title">{escape(name or title)}</p><p class="subtitle">{escape(title)}</p>']
    parts.append(cautions_html(answer.cautions))
    for key, lines in _parts(answer, units):
        head = escape(tr(_HEADS[key][0]))
        parts.append(f'<p class="head">{head}</p>' + "".join(f"<p>{escape(line)}</p>" for line in lines))
    return "".join(parts) + f"<p><b>{escape(tr(NOTICE))}</b></p>"


def repair_json(answer: RepairAnswer) -> dict[str, Any]:
    """Return the repair as plain dictionaries, always metric."""
    plug, patch = answer.plug, answer.patch
    return {
        "schema": SCHEMA,
        "choice": answer.choice.value,
        "reasons": [
            {
                "text": each.text,
                "against": each.against.value if each.against else None,
                "basis": each.basis.value,
                "source": each.source,
            }
            for each in answer.reasons
        ],
        "plug": None
        if plug is None
        else {
            "hole_mm": round(plug.drill_mm, 3),
            "hole_limit_mm": plug.limit_mm,
            "count": plug.count,
            "pitch_mm": None if plug.pitch_mm is None else round(plug.pitch_mm, 2),
            "least_pitch_mm": round(plug.least_pitch_mm, 2),
            "ligament_mm": None if plug.pitch_mm is None else round(plug.ligament_mm, 2),
            "time_s": round(plug.time_s, 1),
            "heat_kj": round(plug.heat_kj, 3),
        },
        "patch": {
            "cut_out_mm": [round(side, 3) for side in patch.cut_mm],
            "blank_mm": [round(side, 3) for side in patch.blank_mm],
            "corner_radius_mm": round(patch.corner_radius_mm, 3),
            "joint": patch.joint.value,
            "lap_mm": patch.lap_mm,
            "gap_mm": patch.gap_mm,
            "seam_mm": round(patch.seam_mm, 2),
            "tacks": tacks_json(patch.tacks),
            "time_s": round(patch.time_s, 1),
            "heat_kj": None if patch.heat_kj is None else round(patch.heat_kj, 3),
        },
        "checks": list(answer.checks),
        "cautions": [caution_json(caution) for caution in answer.cautions],
        "notice": tr(NOTICE),
    }


def tacks_json(plan: TackPlan) -> dict[str, Any]:
    """Return a tack plan as plain dictionaries."""
    return {
        "places_mm": [round(place, 2) for place in plan.tacks_mm],
        "spacing_mm": round(plan.spacing_mm, 2),
        "length_mm": list(plan.tack_length_mm),
        "runs_mm": [[round(run.start_mm, 2), round(run.end_mm, 2)] for run in plan.runs],
        "pull": plan.pull,
        "shrinkage_across_mm": list(plan.across_mm),
        "shrinkage_along_mm": [round(each, 3) for each in plan.along_mm],
        "basis": plan.basis.value,
        "sources": list(plan.sources),
    }


def _span(span: tuple[float, float]) -> str:
    low, high = (figure(f"{each:.2g}") for each in span)
    return low if low == high else tr("{low} to {high}", low=low, high=high)
