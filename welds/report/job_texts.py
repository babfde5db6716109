"""A job plan as text, HTML and JSON; its materials also as CSV."""

import textwrap
from collections.abc import Iterable, Iterator, Sequence
from html import escape
from typing import Any

from welds.advice.card import NOTICE
from welds.job.materials import Materials
from welds.job.plan import JobPlan, flat_size
from welds.job.repair import RepairAnswer
from welds.language import mark, tr
from welds.logbook.entry import Entry
from welds.quantities.band import Band
from welds.quantities.spreadsheet import csv_text
from welds.quantities.units import Units
from welds.report import job_words
from welds.report.html_page import cautions_html, page, table
from welds.report.json_card import card_json, caution_json, request_json
from welds.report.repair_texts import repair_json, repair_notes, repair_title, tack_lines, tacks_json
from welds.report.text_card import caution_lines
from welds.report.wording import machine_name

SCHEMA = "welds.job/1"
_WIDTH = 100
_WIDEST = 44
"""Letters of the widest column."""
ORDER_HEAD = ("", "", mark("task"), mark("when"), mark("why"))
CUT_HEAD = (mark("piece"), mark("number"), mark("sheet"), mark("flat"), "", mark("from"))
SET_UP_HEAD = (mark("card"), mark("set-up"), mark("joints"), mark("current"))
MATERIAL_HEAD = (mark("what"), mark("usual"), mark("range"), mark("shelf"))
"""Heads of the tables; `tr` says them."""


def job_text(plan: JobPlan, units: Units) -> str:
    """Return the plan for a terminal."""
    done = _progress(plan) if plan.done else ""
    parts = [
        [
            plan.job.name,
            *textwrap.wrap(plan.job.about, _WIDTH),
            tr("For {machine}", machine=machine_name(plan.machine)),
            *filter(None, [done]),
        ],
        [line for caution in plan.cautions for line in caution_lines(caution)],
        [tr("Not answered").upper(), *_wrapped(plan.problems)] if plan.problems else [],
        [tr("Order").upper(), *_columns(ORDER_HEAD, job_words.order_rows(plan))],
        [
            tr("Cut list").upper(),
            *_columns(CUT_HEAD, job_words.cut_rows(plan, units)),
            *_wrapped(job_words.sheet_lines(plan)),
        ]
        if plan.job.pieces
        else [],
        *(_repair_part(key, each, units) for key, each in plan.repairs.items()),
        [tr("Cards").upper(), *_columns(SET_UP_HEAD, job_words.set_up_rows(plan, units))]
        if plan.set_ups
        else [],
        *(
            [tr("Tacks").upper() + f": {key}", *_wrapped(tack_lines(each, units))]
            for key, each in plan.tacks.items()
        ),
        [tr("Pauses").upper(), *_wrapped(job_words.pause_lines(plan, units))] if plan.set_ups else [],
        _material_part(plan.materials),
        [tr("Checks").upper(), *_wrapped(job_words.check_lines(plan))],
        textwrap.wrap(tr(NOTICE), _WIDTH),
    ]
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def materials_text(materials: Materials) -> str:
    """Return the sums alone."""
    return "\n".join(_material_part(materials)) + "\n"


def materials_csv(materials: Materials) -> str:
    """Return the sums as a shopping list for a spreadsheet."""
    return csv_text([map(tr, MATERIAL_HEAD), *job_words.material_rows(materials)])


def job_html(plan: JobPlan, units: Units) -> str:
    """Return the plan as one page, without the cards."""
    parts = [
        overview_html(plan),
        cautions_html(plan.cautions),
        _head_html(tr("Order")) + rows_html(ORDER_HEAD, job_words.order_rows(plan)),
        _head_html(tr("Cut list")) + rows_html(CUT_HEAD, job_words.cut_rows(plan, units)),
        lines_html(tr("Sheets"), job_words.sheet_lines(plan)),
        *(_repair_html(key, each, units) for key, each in plan.repairs.items()),
        _head_html(tr("Cards")) + rows_html(SET_UP_HEAD, job_words.set_up_rows(plan, units)),
        *(
            lines_html(tr("Tacks: {key}", key=key), tack_lines(each, units))
            for key, each in plan.tacks.items()
        ),
        lines_html(tr("Pauses"), job_words.pause_lines(plan, units)),
        _head_html(tr("Materials")) + rows_html(MATERIAL_HEAD, job_words.material_rows(plan.materials)),
        lines_html("", job_words.material_notes(plan.materials)),
        lines_html(tr("Checks"), job_words.check_lines(plan)),
        f"<p><b>{escape(tr(NOTICE))}</b></p>",
    ]
    return page(plan.job.name, "\n".join(parts))


def _repair_part(key: str, answer: RepairAnswer, units: Units) -> list[str]:
    return [
        tr("Repair").upper() + f": {key}",
        *_wrapped([repair_title(answer, units)]),
        *_wrapped(repair_notes(answer, units)),
    ]


def _progress(plan: JobPlan) -> str:
    return tr("{done} of {number} tasks done", done=plan.done, number=len(plan.turns))


def _repair_html(key: str, answer: RepairAnswer, units: Units) -> str:
    return lines_html(tr("Repair: {key}", key=key), _repair_part(key, answer, units)[1:])


def overview_html(plan: JobPlan) -> str:
    """Return the head of the job: name, what it is about, what has no answer."""
    problems = "".join(f"<p class='stop'>{escape(problem)}</p>" for problem in plan.problems)
    progress = escape(f"{_progress(plan)}, {machine_name(plan.machine)}")
    return (
        f"<p class='title'>{escape(plan.job.name)}</p><p class='subtitle'>{escape(plan.job.about)}</p>"
        f"<p>{progress}</p>{problems}"
    )


def rows_html(head: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    """Return a ruled table of words; `head` in English."""
    top = "".join(f"<td><b>{escape(tr(cell))}</b></td>" for cell in head)
    body = ("".join(f"<td>{escape(cell)}</td>" for cell in row) for row in rows)
    return table([f"<tr>{top}</tr>", *(f"<tr>{row}</tr>" for row in body)], border=1, padding=2)


def lines_html(head: str, lines: Iterable[str]) -> str:
    """Return lines under a heading."""
    return (_head_html(head) if head else "") + "".join(f"<p>{escape(line)}</p>" for line in lines)


def _head_html(head: str) -> str:
    return f"<p class='head'>{escape(head)}</p>"


def job_json(plan: JobPlan) -> dict[str, Any]:
    """Return the plan as plain dictionaries, always metric."""
    return {
        "schema": SCHEMA,
        "job": plan.job.name,
        "machine": machine_name(plan.machine),
        "order": [
            {
                "id": turn.id,
                "name": turn.name,
                "kind": job_words.turn_kind(turn),
                "state": job_words.turn_state(turn),
                "level": turn.level,
                "log": list(turn.task.links.log) if turn.task is not None else [],
                "needs": [{"first": need.first, "why": need.why} for need in turn.needs],
            }
            for turn in plan.turns
        ],
        "pieces": [
            {
                "id": piece.id,
                "count": piece.count,
                "metal": piece.metal.id,
                "thickness_mm": piece.thickness_mm,
                "flat_mm": _rounded(flat_size(piece, plan.blanks)),
                "stock": piece.stock,
            }
            for piece in plan.job.pieces
        ],
        "sheets": [
            {
                "stock": sheet.stock.id,
                "number": sheet.number,
                "waste": round(sheet.waste, 4),
                "placed": [
                    {"piece": each.piece, "at_mm": _rounded((each.left_mm, each.bottom_mm)),
                     "size_mm": _rounded((each.width_mm, each.height_mm))}
                    for each in sheet.placed
                ],
            }
            for sheet in plan.sheets
        ],
        "cards": [
            {
                "joints": [joint.id for joint in each.joints],
                "request": request_json(each.request),
                "card": card_json(each.card) if each.card is not None else None,
                "problem": each.problem or None,
            }
            for each in plan.set_ups
        ],
        "tacks": {key: tacks_json(each) for key, each in plan.tacks.items()},
        "repairs": {key: repair_json(each) for key, each in plan.repairs.items()},
        "materials": materials_json(plan.materials),
        "logged": {word: _logged_json(entry) for word, entry in plan.logged.items()},
        "cautions": [caution_json(caution) for caution in plan.cautions],
        "problems": list(plan.problems),
        "notice": tr(NOTICE),
    }  # fmt: skip


def _logged_json(entry: Entry | None) -> dict[str, object] | None:
    if entry is None:
        return None
    return {
        "uid": entry.uid,
        "made_at": entry.made_at,
        "current_a": entry.figure("current"),
        "outcome": entry.outcome.value,
        "faults": list(entry.faults),
    }


def materials_json(materials: Materials) -> dict[str, Any]:
    """Return the sums as plain dictionaries."""
    return {
        "fillers": [
            {
                "filler": each.filler,
                "diameter_mm": each.diameter_mm,
                "mass": band_json(each.kg),
                "length": band_json(each.length_m),
                "on_shelf": each.is_on_shelf,
            }
            for each in materials.fillers
        ],
        "gases": [
            {
                "gas": each.gas,
                "volume": band_json(each.litres),
                "left_l": each.left_l,
                "buy_l": round(each.buy_l, 1),
            }
            for each in materials.gases
        ],
        "discs": band_json(materials.discs),
        "seam_m": round(materials.seam_m, 4),
        "arc_time": band_json(materials.arc_s),
        "bench_time": band_json(materials.bench_s),
        "energy": band_json(materials.energy_kwh),
        "costs": [{"what": line.what, "cost": band_json(line.cost)} for line in materials.costs],
        "cost": band_json(materials.cost),
        "unpriced": list(materials.unpriced),
        "buy": [{"item": each.item, "needed": each.is_needed} for each in materials.to_buy],
        "troubles": list(materials.troubles),
    }


def band_json(band: Band | None) -> dict[str, object] | None:
    """Return a band as on a card."""
    if band is None:
        return None
    edges = {name: float(f"{getattr(band, name):.6g}") for name in ("low", "start", "high")}
    return {**edges, "unit": band.unit}


def _material_part(materials: Materials) -> list[str]:
    rows = list(_columns(MATERIAL_HEAD, job_words.material_rows(materials)))
    return [tr("Materials").upper(), *rows, *_wrapped(job_words.material_notes(materials))]


def _columns(head: Sequence[str], rows: Iterable[Sequence[str]]) -> Iterator[str]:
    """Yield rows in columns; words that are too long for theirs go on below."""
    lines = [list(map(tr, head)), *(list(row) for row in rows)]
    widths = [max(1, min(_WIDEST, max(len(line[column]) for line in lines))) for column in range(len(head))]
    for line in lines:
        cells = [textwrap.wrap(cell, width) or [""] for cell, width in zip(line, widths, strict=True)]
        for part in range(max(map(len, cells))):
            words = (cell[part] if part < len(cell) else "" for cell in cells)
            yield (
                "  "
                + "  ".join(word.ljust(width) for word, width in zip(words, widths, strict=True)).rstrip()
            )


def _wrapped(lines: Iterable[str]) -> Iterator[str]:
    for line in lines:
        yield from textwrap.wrap(line, _WIDTH, initial_indent="  ", subsequent_indent="    ")


def _rounded(pair: tuple[float, float] | None) -> list[float] | None:
    return None if pair is None else [round(each, 4) for each in pair]
