"""A wall chart as text, HTML, Markdown, CSV and JSON."""

import textwrap
from collections.abc import Iterator
from html import escape
from typing import Any

from welds.advice.setting import Setting
from welds.language import tr
from welds.quantities.spreadsheet import csv_text
from welds.quantities.units import Units
from welds.report import layout
from welds.report.chart import CELL_SETTINGS, Cell, Chart, cell_texts, chart_title, limit_text, problems
from welds.report.html_page import cautions_html, page, table
from welds.report.json_card import caution_json, request_json, setting_json
from welds.report.markdown_card import escape_markdown
from welds.report.text_card import caution_lines
from welds.report.wording import joint_name, machine_name, severity_word

SCHEMA = "welds.chart/1"
_WIDTH = 90
_GAP = "  "
_PER_CELL = ("thickness_mm", "joint")


def chart_text(chart: Chart, units: Units) -> str:
    """Return the chart in columns for a terminal."""
    rows = [["", *(joint_name(joint) for joint in chart.joints)], *_text_rows(chart, units)]
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    grid = [
        _GAP.join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip() for row in rows
    ]
    notes = [
        chart.basis_note,
        chart.limit_note,
        *(f"- {problem}" for problem in problems(chart)),
        chart.sources_note,
    ]
    parts = [
        [chart_title(chart), tr("For {machine}", machine=machine_name(chart.machine))],
        [line for caution in chart.cautions for line in caution_lines(caution)],
        grid,
        [line for note in notes if note for line in textwrap.wrap(note, _WIDTH, subsequent_indent="  ")],
        textwrap.wrap(tr(chart.notice), _WIDTH),
    ]
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def _text_rows(chart: Chart, units: Units) -> Iterator[list[str]]:
    for row in chart.rows:
        columns = [
            [_thickness(row, units)],
            *(cell_texts(cell, chart.request.process, units) for cell in row),
        ]
        for line in range(max(len(column) for column in columns)):
            yield [column[line] if line < len(column) else "" for column in columns]
        if row is not chart.rows[-1]:
            yield [""] * len(columns)


def chart_html(chart: Chart, units: Units) -> str:
    """Return a page to hang on the wall; black on white, tables only."""
    head = "".join(f'<td align="center"><b>{escape(joint_name(joint))}</b></td>' for joint in chart.joints)
    rows = [f"<tr><td>&nbsp;</td>{head}</tr>"]
    for row in chart.rows:
        cells = "".join(f'<td align="center">{_html_cell(cell, chart, units)}</td>' for cell in row)
        rows.append(f"<tr><td><b>{escape(_thickness(row, units))}</b></td>{cells}</tr>")
    notes = [
        note for note in (chart.basis_note, chart.limit_note, *problems(chart), chart.sources_note) if note
    ]
    body = (
        f'<p class="title">{escape(chart_title(chart))}</p><p>{escape(machine_name(chart.machine))}</p>'
        + cautions_html(chart.cautions)
        + table(rows, border=1, padding=3)
        + "".join(f'<p class="small">{escape(note)}</p>' for note in notes)
        + f"<p><b>{escape(tr(chart.notice))}</b></p>"
    )
    return page(chart_title(chart), body)


def _html_cell(cell: Cell, chart: Chart, units: Units) -> str:
    main, *rest = cell_texts(cell, chart.request.process, units)
    return f"<b>{escape(main)}</b>" + "".join(
        f'<br><span class="small">{escape(text)}</span>' for text in rest
    )


def chart_markdown(chart: Chart, units: Units) -> str:
    """Return the chart as a Markdown table."""
    lines = [
        f"# {escape_markdown(chart_title(chart))}",
        "",
        escape_markdown(tr("For {machine}.", machine=machine_name(chart.machine))),
        "",
    ]
    lines += [
        f"- **{severity_word(caution.severity)}** {escape_markdown(caution.text)}"
        for caution in chart.cautions
    ]
    lines += ["", "| " + " | ".join([tr("Thickness"), *map(joint_name, chart.joints)]) + " |"]
    lines.append("|---" * (len(chart.joints) + 1) + "|")
    for row in chart.rows:
        cells = (", ".join(cell_texts(cell, chart.request.process, units)) for cell in row)
        lines.append(
            "| " + " | ".join(escape_markdown(text) for text in (_thickness(row, units), *cells)) + " |"
        )
    lines += [
        "",
        *(
            escape_markdown(note)
            for note in (chart.basis_note, chart.limit_note, *problems(chart), chart.sources_note)
            if note
        ),
    ]
    return "\n".join([*lines, "", f"**{escape_markdown(tr(chart.notice))}**"]) + "\n"


def chart_csv(chart: Chart) -> str:
    """Return one line a cell, always metric; the units stand in the column names."""
    names = [*_PER_CELL, *_figure_columns(chart), "basis", "note"]
    lines: list[dict[str, object]] = []
    for cell in chart.cells:
        line: dict[str, object] = {"thickness_mm": f"{cell.thickness_mm:.6g}", "joint": cell.joint.value}
        for name, setting in cell.settings.items():
            line.update(_figures(name, setting))
        note = cell.problem or limit_text(cell, chart.request.process, Units.METRIC)
        lines.append(line | {"basis": cell.basis or "", "note": note})
    return csv_text([names, *([line.get(name) for name in names] for line in lines)])


def chart_json(chart: Chart) -> dict[str, Any]:
    """Return the chart as plain dictionaries, always metric; settings as on a card."""
    request = request_json(chart.request)
    for name in _PER_CELL:
        request.pop(name)
    return {
        "schema": SCHEMA,
        "request": request,
        "thicknesses_mm": list(chart.thicknesses_mm),
        "joints": [joint.value for joint in chart.joints],
        "cells": [
            {
                "thickness_mm": cell.thickness_mm,
                "joint": cell.joint.value,
                "settings": {name: setting_json(setting) for name, setting in cell.settings.items()},
                "problem": cell.problem or None,
            }
            for cell in chart.cells
        ],
        "cautions": [caution_json(caution) for caution in chart.cautions],
        "machine": machine_name(chart.machine),
        "notice": tr(chart.notice),
    }


def _figure_columns(chart: Chart) -> Iterator[str]:
    for name in CELL_SETTINGS[chart.request.process]:
        first = next((cell.settings[name] for cell in chart.cells if name in cell.settings), None)
        if first is not None:
            yield from _figures(name, first)


def _figures(name: str, setting: Setting) -> dict[str, str]:
    """Return column name -> figure; a band takes three columns."""
    if setting.band is None:
        value = setting.value if isinstance(setting.value, str | bool) else f"{setting.value:.6g}"
        return {f"{name}_{_suffix(setting.unit)}" if setting.unit else name: str(value)}
    unit = _suffix(setting.band.unit)
    return {
        f"{name}_{edge}_{unit}": f"{getattr(setting.band, edge):.6g}" for edge in ("low", "start", "high")
    }


def _suffix(unit: str) -> str:
    return unit.lower().replace("/", "_")


def _thickness(row: tuple[Cell, ...], units: Units) -> str:
    return layout.length_text(row[0].thickness_mm, "thickness", units)
