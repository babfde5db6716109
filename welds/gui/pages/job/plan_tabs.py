"""Sheets, blanks, cards and tack plans of a job as lists to choose from."""

from collections.abc import Iterator, Mapping

from welds.gui.pages.job.list_tab import Shown
from welds.job.blank_drawing import draw_blank
from welds.job.plan import JobPlan
from welds.job.sheet_drawing import draw_sheet
from welds.job.tack_drawing import draw_tacks
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
        pieces = "\n".join(f"\N{BULLET} {each.piece}" for each in sheet.placed)
        key = f"{sheet.stock.id}, {sheet.number}"
        yield Shown(key, f"{sheet.waste:.0%} left over", line, pieces, draw_sheet(sheet))


def blanks_of(plan: JobPlan, units: Units) -> Iterator[Shown]:
    """Yield each folded piece: flat length, what the sheet stands, every method."""
    for key, answer in plan.blanks.items():
        parts = (
            "\n".join(lines)
            for lines in (
                [*flat_lines(answer, units)],
                [*radius_lines(answer, units)],
                [*answer.notes],
                [*method_lines(answer, units)],
            )
            if lines
        )
        flat = cut_length(answer.blank.length_mm, units)
        drawing = draw_blank(key, answer.blank, answer.width_mm, lambda mm: cut_length(mm, units))
        yield Shown(key, f"{flat} flat", blank_title(answer, units), "\n\n".join(parts), drawing)


def cards_of(plan: JobPlan, units: Units, sources: Mapping[str, Source]) -> Iterator[Shown]:
    """Yield each set-up with its joints, their log entries and the whole card."""
    for number, (each, row) in enumerate(
        zip(plan.set_ups, job_words.set_up_rows(plan, units), strict=True), 1
    ):
        _, title, joints, current = row
        said = [
            f"log, {joint.id}: {job_words.logged_words(word, plan.logged.get(word))}"
            for joint in each.joints
            for word in joint.links.log
        ]
        card = text_card(each.card, units, sources) if each.card is not None else each.problem
        text = "\n".join([f"for {joints}", *said, "", card])
        yield Shown(f"{number}  {', '.join(joint.id for joint in each.joints)}", current, title, text)


def tacks_of(plan: JobPlan, units: Units) -> Iterator[Shown]:
    """Yield each seam: where to tack, in which order to weld, what pulls."""
    for key, tacks in plan.tacks.items():
        text = "\n\n".join(tack_lines(tacks, units))
        yield Shown(key, f"{len(tacks.tacks_mm)} tacks", key, text, draw_tacks(key, tacks))
