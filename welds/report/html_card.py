"""The card as one page to tape to the machine: black on white, tables only, the figures large.

The HTML is the subset that Qt's rich text can lay out, so that paper, PDF and browser show the same page.
Every value is escaped: a bare "<" would swallow the rest of its line.
"""

from collections.abc import Iterable, Mapping
from html import escape

from welds.advice.card import Card
from welds.advice.setting import Caution, Severity
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report import layout
from welds.report.text_card import source_lines
from welds.report.wording import SEVERITY_WORDS

_STYLE = """
body { font-family: sans-serif; font-size: 8pt; color: #000000; background-color: #ffffff; }
td { vertical-align: top; }
p { margin: 0px; }
.title { font-size: 16pt; font-weight: bold; }
.subtitle { font-size: 10pt; }
.head { font-size: 8pt; font-weight: bold; text-decoration: underline; }
.stop { font-size: 10pt; font-weight: bold; }
.big { font-size: 19pt; font-weight: bold; }
.small { font-size: 6.5pt; }
"""
_BLACK = "border-style: solid; border-color: #000000;"
_TICK_BOX = (
    f'<table border="1" cellspacing="0" cellpadding="0" style="{_BLACK}">'
    '<tr><td width="12">&nbsp;</td></tr></table>'
)
_BIG_ACROSS = (4, 3)
"""Headlines side by side; the second where it leaves fewer cells empty."""
_SHORT_FIGURE = 9
"""A headline longer than this is set smaller, so that four stand side by side."""


def html_card(card: Card, units: Units, sources: Mapping[str, Source]) -> str:
    """Return a complete HTML page."""
    large = layout.headlines(card, units)
    body = "\n".join(
        part
        for part in (
            _top(card, units),
            _stops(card),
            _warnings(card),
            _headlines(large),
            _settings(layout.groups(card, units), frozenset(line.name for line in large)),
            _steps_and_checks(card),
            _foot(card, sources),
        )
        if part
    )
    name = escape(f"{layout.title(card.request)}, {layout.subtitle(card.request, units)}")
    return page(name, body)


def page(name: str, body: str) -> str:
    """Return the body, already escaped, as a complete page in the card's style."""
    return (
        f'<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"><title>{name}</title>'
        f"<style>{_STYLE}</style></head>\n<body>\n{body}\n</body></html>\n"
    )


def table(rows: Iterable[str], *, border: int = 0, padding: int = 2) -> str:
    """Return a table of full width from ready rows, or nothing without rows."""
    inner = "".join(rows)
    head = f'<table width="100%" border="{border}" cellspacing="0" cellpadding="{padding}"'
    return f'{head} style="border-collapse: collapse; {_BLACK}">{inner}</table>' if inner else ""


def _top(card: Card, units: Units) -> str:
    return table(
        [
            f'<tr><td><p class="title">{escape(layout.title(card.request))}</p>'
            f'<p class="subtitle">{escape(layout.subtitle(card.request, units))}</p></td>'
            f'<td align="right"><p>{escape(card.machine)}</p></td></tr>'
        ]
    )


def _stops(card: Card) -> str:
    return "".join(caution_html(caution) for caution in card.stops)


def _warnings(card: Card) -> str:
    others = [caution for caution in card.cautions if caution.severity is not Severity.STOP]
    return "".join(caution_html(caution) for caution in others)


def caution_html(caution: Caution) -> str:
    """Return one caution: a framed row with a box to tick for a stop, a line for any other."""
    words = _caution_words(caution)
    if caution.severity is not Severity.STOP:
        return f"<p>{words}</p>"
    row = f'<tr><td width="24">{_TICK_BOX}</td><td class="stop">{words}</td></tr>'
    return table([row], border=1, padding=4)


def _caution_words(caution: Caution) -> str:
    source = f' <span class="small">[{escape(caution.source)}]</span>' if caution.source else ""
    return f"<b>{SEVERITY_WORDS[caution.severity.value]}</b> {escape(caution.text)}{source}"


def _headlines(lines: tuple[layout.SettingLine, ...]) -> str:
    across = min(_BIG_ACROSS, key=lambda number: -len(lines) % number)
    width = round(100 / across, 2)
    cells = [f'<td width="{width}%">{_headline(line)}</td>' for line in lines]
    cells += [f'<td width="{width}%">&nbsp;</td>'] * (-len(cells) % across)
    rows = (cells[start : start + across] for start in range(0, len(cells), across))
    return table((f"<tr>{''.join(row)}</tr>" for row in rows), border=1, padding=4)


def _headline(line: layout.SettingLine) -> str:
    size = "big" if len(line.start_text) <= _SHORT_FIGURE else "title"
    below = ", ".join(text for text in (line.range_text, line.second, line.basis.value) if text)
    alternatives = "".join(f'<p class="small">or {escape(each)}</p>' for each in line.alternatives)
    return (
        f'<p>{escape(line.label)}</p><p class="{size}">{escape(line.start_text)}</p>'
        f'<p class="small">{escape(below)}</p>{alternatives}'
    )


def _settings(groups: Iterable[layout.SettingGroup], shown_large: frozenset[str]) -> str:
    """Set the groups in two columns of about the same length; what stands above in large is not repeated."""
    columns: tuple[list[str], list[str]] = ([], [])
    lengths = [0, 0]
    for group in groups:
        lines = tuple(line for line in group.lines if line.name not in shown_large)
        if lines:
            side = 0 if lengths[0] <= lengths[1] else 1
            columns[side].append(_group(group.title, lines))
            lengths[side] += len(lines) + 1
    cells = "".join(f'<td width="50%">{"".join(column)}</td>' for column in columns)
    return table([f"<tr>{cells}</tr>"])


def _group(title: str, lines: tuple[layout.SettingLine, ...]) -> str:
    rows = [f'<tr><td colspan="3" class="head">{escape(title)}</td></tr>']
    for line in lines:
        figure = escape(line.start_text) + (f" ({escape(line.second)})" if line.second else "")
        width = f"<br>{escape(line.range_text)}" if line.range_text else ""
        alternatives = "".join(f"<br>or {escape(each)}" for each in line.alternatives)
        rows.append(
            f'<tr><td width="34%">{escape(line.label)}</td>'
            f'<td width="50%"><b>{figure}</b>{width}{alternatives}</td>'
            f'<td width="16%" class="small">{escape(line.basis.value)}</td></tr>'
        )
    return table(rows, padding=1)


def _steps_and_checks(card: Card) -> str:
    steps = "".join(
        f"<p>{number}. {escape(step.text)}</p>" for number, step in enumerate(card.preparation, 1)
    )
    checks = "".join(
        f"<p><b>{'ok' if check.ok else 'NOT OK'}</b> {escape(check.text)}</p>" for check in card.checks
    )
    cells = [
        f'<td width="50%"><p class="head">{head}</p>{inner}</td>'
        for head, inner in (("Do first", steps), ("Checked", checks))
        if inner
    ]
    return table([f"<tr>{''.join(cells)}</tr>"]) if cells else ""


def _foot(card: Card, sources: Mapping[str, Source]) -> str:
    grades = "; ".join(f"{basis.value}: {basis.meaning}" for basis in layout.grades_used(card))
    cited = "".join(f'<p class="small">{escape(line)}</p>' for line in source_lines(card, sources))
    return f'<p><b>{escape(card.notice)}</b></p><p class="small">{escape(grades)}</p>{cited}'
