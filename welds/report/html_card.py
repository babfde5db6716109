"""The card as one page to tape to the machine: black on white, the figures large."""

from collections.abc import Iterator, Mapping
from html import escape

from welds.advice.card import Card
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report import layout
from welds.report.html_page import cautions_html, page, table, two_columns
from welds.report.text_card import grade_lines, source_lines
from welds.report.wording import machine_name, verdict

_BIG_ACROSS = (4, 3)
"""Headlines side by side; the second where it leaves fewer cells empty."""
_SHORT_FIGURE = 9
"""A headline longer than this is set smaller, so that four stand side by side."""
_LETTERS_A_LINE = 42
"""About what half a page takes in one line, to balance the columns."""


def html_card(card: Card, units: Units, sources: Mapping[str, Source]) -> str:
    """Return a complete HTML page."""
    large = layout.headlines(card, units)
    body = "\n".join(
        (
            _top(card, units),
            cautions_html(card.cautions),
            _headlines(large),
            two_columns(_blocks(card, units, frozenset(line.name for line in large))),
            _foot(card, sources),
        )
    )
    return page(f"{layout.title(card.request)}, {layout.subtitle(card.request, units)}", body)


def _top(card: Card, units: Units) -> str:
    return table(
        [
            f'<tr><td><p class="title">{escape(layout.title(card.request))}</p>'
            f'<p class="subtitle">{escape(layout.subtitle(card.request, units))}</p></td>'
            f'<td align="right"><p>{escape(machine_name(card.machine))}</p></td></tr>'
        ]
    )


def _headlines(lines: tuple[layout.SettingLine, ...]) -> str:
    across = min(_BIG_ACROSS, key=lambda number: -len(lines) % number)
    width = round(100 / across, 2)
    cells = [f'<td width="{width}%">{_headline(line)}</td>' for line in lines]
    cells += [f'<td width="{width}%">&nbsp;</td>'] * (-len(cells) % across)
    rows = (cells[start : start + across] for start in range(0, len(cells), across))
    return table((f"<tr>{''.join(row)}</tr>" for row in rows), border=1, padding=3)


def _headline(line: layout.SettingLine) -> str:
    size = "big" if len(line.start_text) <= _SHORT_FIGURE else "title"
    below = [line.range_text, line.second, line.basis.word]
    return (
        f'<p>{escape(line.label)}</p><p class="{size}">{escape(line.start_text)}</p>'
        f'<p class="small">{escape(", ".join(filter(None, below)))}{_alternatives(line)}</p>'
    )


def _blocks(card: Card, units: Units, shown_large: frozenset[str]) -> Iterator[tuple[str, int]]:
    """Yield what stands below the headlines, each with the lines it takes; nothing large is repeated."""
    for group in layout.groups(card, units):
        lines = tuple(line for line in group.lines if line.name not in shown_large)
        if lines:
            yield _group(group.title, lines), 1 + sum(_length(line) for line in lines)
    steps = [f"{number}. {escape(step.text)}" for number, step in enumerate(card.preparation, 1)]
    checks = [f"<b>{verdict(each.ok)}</b> {escape(each.text)}" for each in card.checks]
    for head, items in ((tr("Do first"), steps), (tr("Checked"), checks)):
        if items:
            html = f'<p class="head">{escape(head)}</p>' + "".join(f"<p>{item}</p>" for item in items)
            yield html, 1 + sum(1 + len(item) // (_LETTERS_A_LINE + 10) for item in items)


def _group(title: str, lines: tuple[layout.SettingLine, ...]) -> str:
    rows = [f'<tr><td colspan="3" class="head">{escape(title)}</td></tr>']
    for line in lines:
        figure = escape(line.start_text) + (f" ({escape(line.second)})" if line.second else "")
        span = f", {escape(line.range_text)}" if line.range_text else ""
        rows.append(
            f'<tr><td width="29%">{escape(line.label)}</td>'
            f'<td width="58%"><b>{figure}</b>{span}'
            f'<span class="small">{_alternatives(line)}</span></td>'
            f'<td width="13%" class="small">{escape(line.basis.word)}</td></tr>'
        )
    return table(rows, padding=1)


def _alternatives(line: layout.SettingLine) -> str:
    return "".join(f"<br>{escape(tr('or {alternative}', alternative=each))}" for each in line.alternatives)


def _length(line: layout.SettingLine) -> int:
    figure = f"{line.start_text} ({line.second}) {line.range_text}"
    return 1 + len(figure) // _LETTERS_A_LINE + len(line.alternatives)


def _foot(card: Card, sources: Mapping[str, Source]) -> str:
    grades = "; ".join(grade_lines(card))
    cited, head = "; ".join(source_lines(card, sources)), escape(tr("Sources"))
    return (
        f'<p><b>{escape(tr(card.notice))}</b></p><p class="foot">{escape(grades)}</p>'
        f'<p class="foot"><b>{head}</b> {escape(cited)}</p>'
    )
