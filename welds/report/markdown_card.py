"""The card as Markdown, for notes and job folders."""

import re
from collections.abc import Iterator, Mapping

from welds.advice.card import Card
from welds.advice.setting import Severity
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report import layout
from welds.report.text_card import grade_lines, source_lines
from welds.report.wording import machine_name, severity_word, verdict

_MARKS = re.compile(r"([\\`*_{}\[\]<>#|~])")


def markdown_card(card: Card, units: Units, sources: Mapping[str, Source]) -> str:
    """Return the whole card with its reasons."""
    return "\n".join(_lines(card, units, sources)) + "\n"


def escape_markdown(text: str) -> str:
    """Return the text so that none of its characters is taken for a mark, on one line."""
    return _MARKS.sub(r"\\\1", " ".join(text.split()))


def _lines(card: Card, units: Units, sources: Mapping[str, Source]) -> Iterator[str]:
    yield f"# {escape_markdown(layout.title(card.request))}"
    yield ""
    yield escape_markdown(
        tr(
            "{conditions}. For {machine}.",
            conditions=layout.subtitle(card.request, units),
            machine=machine_name(card.machine),
        )
    )
    if card.cautions:
        yield ""
    for caution in card.cautions:
        box = "[ ] " if caution.severity is Severity.STOP else ""
        yield f"- {box}**{severity_word(caution.severity)}** {_sourced(caution.text, caution.source)}"
    for group in layout.groups(card, units):
        yield from ("", f"## {escape_markdown(group.title)}", "")
        heads = (tr("Setting"), tr("Start"), tr("Range"), tr("Grade"), tr("Why"))
        yield from (f"| {' | '.join(heads)} |", "|---" * len(heads) + "|")
        for line in group.lines:
            yield f"| {' | '.join(escape_markdown(cell) for cell in _cells(line))} |"
    if card.preparation:
        yield from ("", "## " + tr("Do first"), "")
        for number, step in enumerate(card.preparation, 1):
            yield f"{number}. {_sourced(step.text, step.source)}"
    if card.checks:
        yield from ("", "## " + tr("Checked"), "")
        for check in card.checks:
            yield f"- **{verdict(check.ok)}** {escape_markdown(check.text)}"
    yield from ("", "## " + tr("Sources and grades"), "")
    for source in source_lines(card, sources):
        yield f"- {escape_markdown(source)}"
    for line_of_grade in grade_lines(card):
        yield f"- {escape_markdown(line_of_grade)}"
    yield from ("", f"**{escape_markdown(tr(card.notice))}**")


def _cells(line: layout.SettingLine) -> tuple[str, ...]:
    figure = line.start_text + (f" ({line.second})" if line.second else "")
    alternatives = "".join("; " + tr("or {alternative}", alternative=each) for each in line.alternatives)
    return line.label, figure + alternatives, line.range_text, line.basis.word, layout.short_why(line)


def _sourced(text: str, source: str | None) -> str:
    return escape_markdown(f"{text} [{source}]" if source else text)
