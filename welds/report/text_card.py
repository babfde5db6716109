"""The card as plain text, for a terminal and for "copy as text": cautions first, then figures in columns."""

import textwrap
from collections.abc import Iterator, Mapping

from welds.advice.card import Card
from welds.advice.setting import Caution, Severity
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report import layout
from welds.report.wording import machine_name, severity_word, verdict

_WIDTH = 90
_LABEL, _FIGURE, _RANGE = 32, 26, 22
_TICK_BOX = "[ ] "


def text_card(card: Card, units: Units, sources: Mapping[str, Source], *, why: bool = False) -> str:
    """Return the whole card; `why` adds the chain of reasons below each setting."""
    parts = [
        [
            layout.title(card.request),
            layout.subtitle(card.request, units),
            tr("For {machine}", machine=machine_name(card.machine)),
        ],
        [line for caution in card.cautions for line in caution_lines(caution)],
        *([group.title.upper(), *_group(group, why)] for group in layout.groups(card, units)),
        _numbered(
            tr("Do first").upper(), [_with_source(step.text, step.source) for step in card.preparation]
        ),
        _headed(tr("Checked").upper(), [f"{verdict(check.ok)}: {check.text}" for check in card.checks]),
        _headed(tr("Sources").upper(), list(source_lines(card, sources))),
        _headed(tr("Grades").upper(), list(grade_lines(card))),
        textwrap.wrap(tr(card.notice), _WIDTH),
    ]
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def source_lines(card: Card, sources: Mapping[str, Source]) -> Iterator[str]:
    """Yield one line for each source of the card: id, citation, and the grades of what was taken from it."""
    grades = layout.grades_by_source(card)
    for source_id in layout.sources_in_order(card):
        source = sources.get(source_id)
        taken = ", ".join(basis.word for basis in grades.get(source_id, ()))
        citation = source.citation if source else tr("no citation")
        cited = f"{source_id}: {citation}"
        yield f"{cited} ({taken})" if taken else cited


def grade_lines(card: Card) -> Iterator[str]:
    """Yield what each grade on the card means."""
    return (f"{basis.word}: {basis.meaning}" for basis in layout.grades_used(card))


def caution_lines(caution: Caution) -> list[str]:
    """Return one caution, wrapped; a stop has a box to tick."""
    head = f"{severity_word(caution.severity)}: "
    if caution.severity is Severity.STOP:
        head = _TICK_BOX + head
    return textwrap.wrap(head + _with_source(caution.text, caution.source), _WIDTH, subsequent_indent="    ")


def _group(group: layout.SettingGroup, why: bool) -> Iterator[str]:
    for line in group.lines:
        yield from _setting(line)
        for alternative in line.alternatives:
            yield from _indented(tr("or {alternative}", alternative=alternative))
        if why:
            for reason in line.reasons:
                factor = layout.factor_text(reason)
                text = _with_source(reason.text + (f" ({factor})" if factor else ""), reason.source)
                yield from _indented(f"- {text}")


def _setting(line: layout.SettingLine) -> Iterator[str]:
    figure = line.start_text + (f" ({line.second})" if line.second else "")
    label = f"  {line.label}".ljust(_LABEL)
    if len(figure) < _FIGURE:
        yield f"{label}{figure.ljust(_FIGURE)}{line.range_text.ljust(_RANGE)}{line.basis.word}"
        return
    room = _FIGURE + _RANGE
    words = textwrap.wrap(f"{figure}; {line.range_text}" if line.range_text else figure, room - 2)
    yield f"{label}{words[0].ljust(room)}{line.basis.word}"
    for rest in words[1:]:
        yield " " * _LABEL + rest


def _indented(text: str) -> list[str]:
    return textwrap.wrap(text, _WIDTH, initial_indent="      ", subsequent_indent="        ")


def _headed(head: str, items: list[str]) -> list[str]:
    wrapped = (textwrap.wrap(item, _WIDTH, initial_indent="  ", subsequent_indent="    ") for item in items)
    return [head, *(line for lines in wrapped for line in lines)] if items else []


def _numbered(head: str, items: list[str]) -> list[str]:
    return _headed(head, [f"{number}. {item}" for number, item in enumerate(items, 1)])


def _with_source(text: str, source: str | None) -> str:
    return f"{text} [{source}]" if source else text
