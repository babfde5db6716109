"""The card as Markdown, for notes and job folders."""

import re
from collections.abc import Iterator, Mapping

from welds.advice.card import Card
from welds.advice.setting import Severity
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report import layout
from welds.report.text_card import source_lines
from welds.report.wording import SEVERITY_WORDS

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
    yield escape_markdown(f"{layout.subtitle(card.request, units)}. For {card.machine}.")
    if card.cautions:
        yield ""
    for caution in card.cautions:
        box = "[ ] " if caution.severity is Severity.STOP else ""
        yield f"- {box}**{SEVERITY_WORDS[caution.severity.value]}** {_sourced(caution.text, caution.source)}"
    for group in layout.groups(card, units):
        yield from ("", f"## {escape_markdown(group.title)}", "")
        yield from ("| Setting | Start | Range | Grade | Why |", "|---|---|---|---|---|")
        for line in group.lines:
            yield f"| {' | '.join(escape_markdown(cell) for cell in _cells(line))} |"
    if card.preparation:
        yield from ("", "## Do first", "")
        for number, step in enumerate(card.preparation, 1):
            yield f"{number}. {_sourced(step.text, step.source)}"
    if card.checks:
        yield from ("", "## Checked", "")
        for check in card.checks:
            yield f"- **{'ok' if check.ok else 'NOT OK'}** {escape_markdown(check.text)}"
    yield from ("", "## Sources and grades", "")
    for source in source_lines(card, sources):
        yield f"- {escape_markdown(source)}"
    for basis in layout.grades_used(card):
        yield f"- {basis.value}: {escape_markdown(basis.meaning)}"
    yield from ("", f"**{escape_markdown(card.notice)}**")


def _cells(line: layout.SettingLine) -> tuple[str, ...]:
    figure = line.start_text + (f" ({line.second})" if line.second else "")
    alternatives = "".join(f"; or {each}" for each in line.alternatives)
    return line.label, figure + alternatives, line.range_text, line.basis.value, layout.short_why(line)


def _sourced(text: str, source: str | None) -> str:
    return escape_markdown(f"{text} [{source}]" if source else text)
