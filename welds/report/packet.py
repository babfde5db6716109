"""The packet: every page of a job in the order it is used, as HTML with a drawing below."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from html import escape

from welds.advice.card import NOTICE, Card
from welds.job.blank_drawing import draw_blank
from welds.job.order_drawing import draw_order
from welds.job.plan import JobPlan
from welds.job.plan_drawing import PlanDrawing
from welds.job.repair import Choice
from welds.job.sheet_drawing import draw_sheet
from welds.job.tack_drawing import draw_tacks
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report import job_words
from welds.report.blank_texts import blank_body
from welds.report.cut_length import cut_length
from welds.report.html_page import cautions_html, page
from welds.report.job_texts import (
    CUT_HEAD,
    MATERIAL_HEAD,
    ORDER_HEAD,
    SET_UP_HEAD,
    lines_html,
    overview_html,
    rows_html,
)
from welds.report.repair_texts import repair_body, repair_drawing, tack_lines

_ROWS = 40
"""Rows of a table on one page."""
_SEAMS = 3
"""Tack plans on one page."""
_SHEETS = 2
"""Stock sheets on one page."""


@dataclass(frozen=True, slots=True)
class PacketPage:
    """One page: a card, or HTML with drawings below it."""

    title: str
    html: str = ""
    drawings: tuple[PlanDrawing, ...] = ()
    is_landscape: bool = False
    card: Card | None = None


def packet_pages(plan: JobPlan, units: Units, sources: Mapping[str, Source]) -> Iterator[PacketPage]:
    """Yield overview, order, cut list, blanks, repairs, cards with their tack plans, materials and checks."""
    yield _page(
        tr("Overview"), overview_html(plan), cautions_html(plan.cautions), lines_html("", [tr(NOTICE)])
    )
    yield from _order(plan)
    yield from _cutting(plan, units, sources)
    yield from _mending(plan, units)
    yield from _welding(plan, units)
    yield from _tables(tr("Materials"), MATERIAL_HEAD, list(job_words.material_rows(plan.materials)))
    notes = lines_html(
        tr("What the sums leave out, and what to buy"), job_words.material_notes(plan.materials)
    )
    pauses = lines_html(tr("Pauses"), job_words.pause_lines(plan, units))
    yield _page(tr("Checks"), lines_html(tr("Checks"), job_words.check_lines(plan)), pauses, notes)


def _order(plan: JobPlan) -> Iterator[PacketPage]:
    yield from _tables(tr("Order of work"), ORDER_HEAD, list(job_words.order_rows(plan)))
    if 0 < len(plan.turns) <= _ROWS:
        heading, title = _heading(tr("What waits for what")), tr("Order")
        yield PacketPage(title, page(title, heading), (draw_order(plan.turns),), is_landscape=True)


def _cutting(plan: JobPlan, units: Units, sources: Mapping[str, Source]) -> Iterator[PacketPage]:
    yield from _tables(tr("Cut list"), CUT_HEAD, list(job_words.cut_rows(plan, units)))
    drawings = [draw_sheet(sheet) for sheet in plan.sheets]
    for start in range(0, len(drawings), _SHEETS):
        heading = _heading(tr("Blanks on their sheets"))
        yield _page(tr("Sheets"), heading, drawings=tuple(drawings[start : start + _SHEETS]))
    for key, answer in plan.blanks.items():
        drawing = draw_blank(key, answer.blank, answer.width_mm, lambda mm: cut_length(mm, units))
        body = blank_body(answer, units, sources, tr("Blank: {key}", key=key))
        yield _page(tr("Blank: {key}", key=key), body, drawings=(drawing,))


def _mending(plan: JobPlan, units: Units) -> Iterator[PacketPage]:
    for key, answer in plan.repairs.items():
        title = tr("Repair: {key}", key=key)
        yield _page(title, repair_body(answer, units, title))
        drawing = repair_drawing(key, answer, plan.drawings.get(key), plan.job.file.parent, units)
        heading = _heading(tr("Holes and cuts: {key}", key=key))
        yield PacketPage(title, page(title, heading), (drawing,), is_landscape=True)
        if answer.card is not None and answer.choice is not Choice.REPLACE:
            yield PacketPage(tr("Card for repair: {key}", key=key), card=answer.card)


def _welding(plan: JobPlan, units: Units) -> Iterator[PacketPage]:
    yield from _tables(tr("Cards and their joints"), SET_UP_HEAD, list(job_words.set_up_rows(plan, units)))
    for number, each in enumerate(plan.set_ups, 1):
        if each.card is None:
            continue
        yield PacketPage(tr("Card {number}", number=number), card=each.card)
        joints = [joint for joint in each.joints if joint.id in plan.tacks]
        for start in range(0, len(joints), _SEAMS):
            group = joints[start : start + _SEAMS]
            bodies = [
                lines_html(
                    tr(
                        "Tacks for card {number}: {joint}, {count} alike",
                        number=number,
                        joint=joint.id,
                        count=joint.count,
                    ),
                    tack_lines(plan.tacks[joint.id], units),
                )
                for joint in group
            ]
            drawings = tuple(draw_tacks(joint.id, plan.tacks[joint.id]) for joint in group)
            yield _page(tr("Tacks for card {number}", number=number), *bodies, drawings=drawings)


def _tables(title: str, head: Sequence[str], rows: list[job_words.Row]) -> Iterator[PacketPage]:
    for start in range(0, len(rows), _ROWS):
        yield _page(title, _heading(title), rows_html(head, rows[start : start + _ROWS]))


def _heading(title: str) -> str:
    return f"<p class='title'>{escape(title)}</p>"


def _page(title: str, *parts: str, drawings: tuple[PlanDrawing, ...] = ()) -> PacketPage:
    return PacketPage(title, page(title, "\n".join(parts)), drawings)
