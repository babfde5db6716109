"""Sheets, blanks, cards and tack plans of a job as lists to choose from."""

from collections.abc import Iterator, Mapping
from functools import partial

from welds.gui.pages.job.list_tab import Shown
from welds.job.blank_answer import BlankAnswer
from welds.job.blank_drawing import draw_blank
from welds.job.nesting import Sheet
from welds.job.plan import JobPlan
from welds.job.plan_drawing import PlanDrawing
from welds.job.setups import SetUp
from welds.job.sheet_drawing import draw_sheet
from welds.job.tack_drawing import draw_tacks
from welds.job.tack_plan import TackPlan
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report import job_words
from welds.report.blank_texts import blank_title, flat_lines, method_lines, radius_lines
from welds.report.cut_length import cut_length
from welds.report.repair_texts import tack_lines
from welds.report.text_card import text_card


def sheets_of(plan: JobPlan) -> Iterator[Shown]:
    """Yield each stock sheet with its blanks on it."""
    for sheet, line in zip(plan.sheets, job_words.sheet_lines(plan), strict=True):
        below = tr("{waste:.0%} left over", waste=sheet.waste)
        key = f"{sheet.stock.id}, {sheet.number}"
        yield Shown(key, below, line, partial(_sheet_words, sheet), partial(draw_sheet, sheet))


def blanks_of(plan: JobPlan, units: Units) -> Iterator[Shown]:
    """Yield each folded piece: flat length, what the sheet stands, every method."""
    for key, answer in plan.blanks.items():
        yield Shown(
            key,
            tr("{length} flat", length=cut_length(answer.blank.length_mm, units)),
            blank_title(answer, units),
            partial(_blank_words, answer, units),
            partial(_blank_drawing, key, answer, units),
        )


def cards_of(plan: JobPlan, units: Units, sources: Mapping[str, Source]) -> Iterator[Shown]:
    """Yield each set-up with its joints, their log entries and the whole card."""
    rows = job_words.set_up_rows(plan, units)
    for each, (number, title, joints, current) in zip(plan.set_ups, rows, strict=True):
        key = f"{number}  {', '.join(joint.id for joint in each.joints)}"
        yield Shown(key, current, title, partial(_card_words, plan, each, joints, units, sources))


def tacks_of(plan: JobPlan, units: Units) -> Iterator[Shown]:
    """Yield each seam: where to tack, in which order to weld, what pulls."""
    for key, tacks in plan.tacks.items():
        words = partial(_tack_words, tacks, units)
        yield Shown(
            key, tr("{count} tacks", count=len(tacks.tacks_mm)), key, words, partial(draw_tacks, key, tacks)
        )


def _sheet_words(sheet: Sheet) -> str:
    return "\n".join(f"\N{BULLET} {each.piece}" for each in sheet.placed)


def _blank_words(answer: BlankAnswer, units: Units) -> str:
    parts = (
        [*flat_lines(answer, units)],
        [*radius_lines(answer, units)],
        [*answer.notes],
        [*method_lines(answer, units)],
    )
    return "\n\n".join("\n".join(lines) for lines in parts if lines)


def _blank_drawing(key: str, answer: BlankAnswer, units: Units) -> PlanDrawing:
    return draw_blank(key, answer.blank, answer.width_mm, lambda mm: cut_length(mm, units))


def _card_words(plan: JobPlan, each: SetUp, joints: str, units: Units, sources: Mapping[str, Source]) -> str:
    said = [
        tr(
            "log, {joint}: {words}",
            joint=joint.id,
            words=job_words.logged_words(word, plan.logged.get(word)),
        )
        for joint in each.joints
        for word in joint.links.log
    ]
    card = text_card(each.card, units, sources) if each.card is not None else each.problem
    return "\n".join([tr("for {joints}", joints=joints), *said, "", card])


def _tack_words(tacks: TackPlan, units: Units) -> str:
    return "\n\n".join(tack_lines(tacks, units))
