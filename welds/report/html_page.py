"""What every printed page shares: style, tables, cautions.

The HTML is the subset that Qt's rich text can lay out, so that paper, PDF and browser show the same page.
Every value is escaped: a bare "<" would swallow the rest of its line.
"""

from collections.abc import Iterable, Sequence
from html import escape

from welds.advice.setting import Caution, Severity
from welds.language import code
from welds.report.wording import severity_word

_STYLE = """
body { font-family: sans-serif; font-size: 7.5pt; color: #000000; background-color: #ffffff; }
td { vertical-align: top; }
p { margin: 0px; }
.title { font-size: 15pt; font-weight: bold; }
.subtitle { font-size: 10pt; }
.head { font-weight: bold; text-decoration: underline; }
.stop { font-size: 9.5pt; font-weight: bold; }
.big { font-size: 19pt; font-weight: bold; }
.small { font-size: 6.5pt; }
.foot { font-size: 5.5pt; }
"""
_BLACK = "border-style: solid; border-color: #000000;"
_TICK_BOX = (
    f'<table border="1" cellspacing="0" cellpadding="0" style="{_BLACK}">'
    '<tr><td width="12">&nbsp;</td></tr></table>'
)


def page(name: str, body: str) -> str:
    """Return the body, already escaped, as a complete page; `name` is plain text."""
    return (
        f'<!DOCTYPE html>\n<html lang="{code()}"><head><meta charset="utf-8"><title>{escape(name)}</title>'
        f"<style>{_STYLE}</style></head>\n<body>\n{body}\n</body></html>\n"
    )


def table(rows: Iterable[str], *, border: int = 0, padding: int = 2) -> str:
    """Return a table of full width from ready rows, or nothing without rows."""
    inner = "".join(rows)
    head = f'<table width="100%" border="{border}" cellspacing="0" cellpadding="{padding}"'
    return f'{head} style="border-collapse: collapse; {_BLACK}">{inner}</table>' if inner else ""


def two_columns(blocks: Iterable[tuple[str, int]]) -> str:
    """Set blocks (HTML, lines it takes) in two columns of about the same length, read down each."""
    placed = list(blocks)
    total, left = sum(lines for _, lines in placed), 0
    split = 0
    while split < len(placed) and left + placed[split][1] / 2 <= total / 2:
        left += placed[split][1]
        split += 1
    if not placed:
        return ""
    sides = ("".join(html for html, _ in side) for side in (placed[:split], placed[split:]))
    cells = "".join(f'<td width="50%">{side}</td>' for side in sides)
    return table([f"<tr>{cells}</tr>"])


def cautions_html(cautions: Sequence[Caution]) -> str:
    """Return all cautions: each stop framed with a box to tick, the rest small in two columns."""
    stops = [
        f'<tr><td width="24">{_TICK_BOX}</td><td class="stop">{_words(caution)}</td></tr>'
        for caution in cautions
        if caution.severity is Severity.STOP
    ]
    others = [caution for caution in cautions if caution.severity is not Severity.STOP]
    return table(stops, border=1, padding=3) + two_columns(
        (f'<p class="small">{_words(caution)}</p>', 1 + len(caution.text) // 75) for caution in others
    )


def _words(caution: Caution) -> str:
    source = f' <span class="foot">[{escape(caution.source)}]</span>' if caution.source else ""
    return f"<b>{severity_word(caution.severity)}</b> {escape(caution.text)}{source}"
