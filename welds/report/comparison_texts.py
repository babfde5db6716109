"""A comparison as text, HTML, Markdown and CSV."""

import textwrap
from collections.abc import Iterator, Sequence
from html import escape

from welds.advice.setting import Setting
from welds.language import mark, tr
from welds.quantities.spreadsheet import csv_text
from welds.quantities.units import Units
from welds.report.comparison import Comparison, cautions, differences, heading, notes, titles
from welds.report.comparison_rows import SIGNS, Cell, Row, row_groups
from welds.report.html_page import cautions_html, page, table, two_columns
from welds.report.markdown_card import escape_markdown
from welds.report.text_card import caution_lines
from welds.report.wording import severity_word

NO_CARD = mark("no card")
SAME = mark("All columns agree.")
_WIDTH = 90
_CELL, _LABEL = 20, 24
_HALF_PAGE = 110
"""About how many letters of small print half a page takes in one line."""
_PLAIN_SIGNS = {"\N{BLACK UP-POINTING TRIANGLE}": "^", "\N{BLACK DOWN-POINTING TRIANGLE}": "v"}
_COLUMN_NAMES = (
    *("column", "title", "process", "metal", "thickness_mm", "joint", "position", "machine"),
    *("setting", "low", "start", "high", "unit", "value", "basis", "differs", "why", "note"),
)


def comparison_title(comparison: Comparison, units: Units) -> str:
    """Return what is compared: "Outside corner, tee"."""
    return tr("Side by side: {columns}", columns="; ".join(titles(comparison, units)))


def comparison_text(comparison: Comparison, units: Units, *, only_differences: bool = False) -> str:
    """Return the comparison in columns for a terminal, the reasons below."""
    groups = row_groups(comparison, units)
    rows = [row for group in groups for row in group.rows if row.is_different or not only_differences]
    parts = [
        [heading(comparison, units)],
        [line for caution in cautions(comparison, units) for line in caution_lines(caution)],
        list(_text_table(comparison, rows, units)),
        list(_text_reasons(comparison, rows, units)),
        [line for note in notes(comparison) for line in textwrap.wrap(note, _WIDTH, subsequent_indent="  ")],
        textwrap.wrap(tr(comparison.notice), _WIDTH),
    ]
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def _text_table(comparison: Comparison, rows: Sequence[Row], units: Units) -> Iterator[str]:
    heads = [_boxed(title) for title in titles(comparison, units)]
    pinned = comparison.columns.index(comparison.pinned)
    heads[pinned].append(tr("(base)"))
    yield from _text_row("", heads)
    yield "-" * (_LABEL + (_CELL + 2) * len(heads))
    for row in rows:
        yield from _text_row(row.label, [_text_cell(cell) for cell in row.cells])


def _text_row(head: str, cells: Sequence[list[str]]) -> Iterator[str]:
    columns = [textwrap.wrap(head, _LABEL - 2), *cells]
    widths = [_LABEL, *(_CELL + 2 for _ in cells)]
    for line in range(max(len(column) for column in columns)):
        texts = (column[line] if line < len(column) else "" for column in columns)
        yield "".join(text.ljust(width) for text, width in zip(texts, widths, strict=True)).rstrip()


def _text_cell(cell: Cell | None) -> list[str]:
    if cell is None:
        return [tr(NO_CARD)]
    sign = SIGNS[cell.mark] if cell.is_different else ""
    figure = f"{_PLAIN_SIGNS.get(sign, '!' if sign else '')} {cell.text}".strip()
    return [*_boxed(figure), *(_boxed(cell.change) if cell.change else ())]


def _boxed(text: str) -> list[str]:
    return textwrap.wrap(text, _CELL) or [""]


def _text_reasons(comparison: Comparison, rows: Sequence[Row], units: Units) -> Iterator[str]:
    found = [*_problems(comparison, units), *_reasons(comparison, rows, units)]
    if not found:
        yield tr(SAME)
        return
    yield tr("Why").upper()
    for head, words in found:
        yield from textwrap.wrap(f"{head}: {words}", _WIDTH, initial_indent="  ", subsequent_indent="    ")


def _problems(comparison: Comparison, units: Units) -> Iterator[tuple[str, str]]:
    for column, title in zip(comparison.columns, titles(comparison, units), strict=True):
        if column.problem:
            yield title, column.problem


def _reasons(comparison: Comparison, rows: Sequence[Row], units: Units) -> Iterator[tuple[str, str]]:
    """Yield (settings and columns, reasons); settings and columns that share their reasons stand together."""
    named = titles(comparison, units)
    by_row: dict[tuple[str, tuple[str, ...]], list[str]] = {}
    for row in rows:
        found: dict[str, list[str]] = {}
        for title, cell in zip(named, row.cells, strict=True):
            if cell is not None and cell.is_different and cell.why:
                found.setdefault("; ".join(cell.why), []).append(title)
        for words, where in found.items():
            by_row.setdefault((words, tuple(where)), []).append(row.label)
    for (words, columns), labels in by_row.items():
        yield f"{', '.join(labels)} ({'; '.join(columns)})", words


def comparison_html(comparison: Comparison, units: Units) -> str:
    """Return a page, black on white: cautions, what differs in one table, what does not, the reasons."""
    rows = [row for group in row_groups(comparison, units) for row in group.rows]
    title = comparison_title(comparison, units)
    body = (
        f'<p class="title">{escape(title)}</p><p class="subtitle">{escape(heading(comparison, units))}</p>'
        + cautions_html(cautions(comparison, units))
        + table(_html_rows(comparison, [row for row in rows if row.is_different], units), border=1)
        + _html_same([row for row in rows if not row.is_different])
        + _html_reasons([*_problems(comparison, units), *_reasons(comparison, rows, units)])
        + "".join(f'<p class="small">{escape(note)}</p>' for note in notes(comparison))
        + f"<p><b>{escape(tr(comparison.notice))}</b></p>"
    )
    return page(title, body)


def _html_rows(comparison: Comparison, rows: Sequence[Row], units: Units) -> Iterator[str]:
    pinned = comparison.columns.index(comparison.pinned)
    below = f"<br>{escape(tr('(base)'))}"
    heads = (
        f'<td align="center"><b>{escape(title)}</b>{below if place == pinned else ""}</td>'
        for place, title in enumerate(titles(comparison, units))
    )
    yield f"<tr><td>&nbsp;</td>{''.join(heads)}</tr>"
    for row in rows:
        cells = "".join(f'<td align="center">{_html_cell(cell)}</td>' for cell in row.cells)
        yield f"<tr><td>{escape(row.label)}</td>{cells}</tr>"


def _html_cell(cell: Cell | None) -> str:
    if cell is None:
        return tr(NO_CARD)
    figure = escape(cell.text)
    if cell.is_different:
        figure = f"<b>{SIGNS[cell.mark]} {figure}</b>"
    small = [text for text in (cell.line.range_text if cell.line else "", cell.change) if text]
    return figure + (f'<br><span class="small">{escape("; ".join(small))}</span>' if small else "")


def _html_same(rows: Sequence[Row]) -> str:
    said = [f"{row.label}: {cell.text}" for row in rows if (cell := next(filter(None, row.cells), None))]
    head = escape(tr("The same in all"))
    return f'<p><span class="head">{head}</span> {escape("; ".join(said))}</p>' if said else ""


def _html_reasons(found: Sequence[tuple[str, str]]) -> str:
    said = found or [(tr("Nothing"), tr(SAME))]
    blocks = (
        (f'<p class="small"><b>{escape(head)}</b>: {escape(words)}</p>', 1 + len(head + words) // _HALF_PAGE)
        for head, words in said
    )
    return f'<p class="head">{escape(tr("Why"))}</p>{two_columns(blocks)}'


def comparison_markdown(comparison: Comparison, units: Units) -> str:
    """Return the comparison as a Markdown table with its reasons."""
    named = titles(comparison, units)
    pinned = comparison.columns.index(comparison.pinned)
    heads = [
        tr("{title} (base)", title=title) if place == pinned else title for place, title in enumerate(named)
    ]
    lines = [f"# {escape_markdown(comparison_title(comparison, units))}", ""]
    lines += [escape_markdown(heading(comparison, units)), ""]
    for caution in cautions(comparison, units):
        lines.append(f"- **{severity_word(caution.severity)}** {escape_markdown(caution.text)}")
    lines += ["", "| " + " | ".join(escape_markdown(head) for head in (tr("Setting"), *heads)) + " |"]
    lines.append("|---" * (len(heads) + 1) + "|")
    groups = row_groups(comparison, units)
    for row in (row for group in groups for row in group.rows):
        cells = " | ".join(_markdown_cell(cell) for cell in row.cells)
        lines.append(f"| {escape_markdown(row.label)} | {cells} |")
    lines += ["", "## " + tr("Why"), ""]
    rows = [row for group in groups for row in group.rows]
    reasons = [*_problems(comparison, units), *_reasons(comparison, rows, units)]
    lines += [f"- **{escape_markdown(head)}**: {escape_markdown(words)}" for head, words in reasons] or [
        tr(SAME)
    ]
    lines += ["", *(f"{escape_markdown(note)}  " for note in notes(comparison))]
    return "\n".join([*lines, "", f"**{escape_markdown(tr(comparison.notice))}**"]) + "\n"


def _markdown_cell(cell: Cell | None) -> str:
    if cell is None:
        return tr(NO_CARD)
    parts = [cell.text, cell.line.range_text if cell.line else "", cell.change]
    text = escape_markdown("; ".join(part for part in parts if part))
    return f"**{SIGNS[cell.mark]} {text}**" if cell.is_different else text


def comparison_csv(comparison: Comparison) -> str:
    """Return one line a setting and column, always metric."""
    lines: list[dict[str, object]] = []
    differing = frozenset(differences(comparison))
    groups = row_groups(comparison, Units.METRIC)
    why = {
        (row.name, place): "; ".join(cell.why)
        for group in groups
        for row in group.rows
        for place, cell in enumerate(row.cells)
        if cell is not None
    }
    for place, (column, title) in enumerate(
        zip(comparison.columns, titles(comparison, Units.METRIC), strict=True)
    ):
        request = column.request
        head: dict[str, object] = {
            "column": place + 1,
            "title": title,
            "process": request.process.value,
            "metal": request.metal,
            "thickness_mm": f"{request.thickness_mm:.6g}",
            "joint": request.joint.value,
            "position": request.position,
            "machine": column.machine,
        }
        if column.card is None:
            lines.append(head | {"note": column.problem})
            continue
        for name, setting in column.card.settings.items():
            line = {"setting": name, "differs": "yes" if name in differing else "no"}
            lines.append(head | line | _figures(setting) | {"why": why.get((name, place), "")})
    return csv_text([_COLUMN_NAMES, *([line.get(name) for name in _COLUMN_NAMES] for line in lines)])


def _figures(setting: Setting) -> dict[str, object]:
    if setting.band is None:
        value = setting.value
        text = f"{value:.6g}" if isinstance(value, float) else value
        return {"value": text, "unit": setting.unit or "", "basis": setting.basis.value}
    band = setting.band
    edges = {edge: f"{getattr(band, edge):.6g}" for edge in ("low", "start", "high")}
    return {**edges, "unit": band.unit, "basis": setting.basis.value}
