"""`welds tables`: what the advice rests on."""

import argparse
import sys
import textwrap
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from pathlib import Path

from welds.cli.arguments import Parser, add_common
from welds.cli.output import print_json, print_text, unavailable
from welds.cli.session import check_common, open_session
from welds.errors import NOTHING, InputError, ReferenceDataError, nearest
from welds.language import figure, mark, tr
from welds.quantities.spreadsheet import csv_text
from welds.reference.basis import Basis
from welds.reference.sources import Source
from welds.reference.tables import Row, Table
from welds.reference.uses import Use, uses_of_sources
from welds.report.wording import yes_or_no

DESCRIPTION = mark("The reference tables: list, show NAME, check [DIR], sources [ID].")
_WIDTH, _CELL = 100, 28


def run(argv: Sequence[str]) -> int:
    """Run the named action and return its exit code."""
    parser = Parser("welds tables", tr(DESCRIPTION))
    parser.add_argument("action", nargs="?", help=", ".join(_ACTIONS))
    parser.add_argument("name", nargs="?", help=tr("a table's name, a folder for check, a source's id"))
    parser.add_argument("--csv", action="store_true", help=tr("with show: every column, as CSV"))
    add_common(parser)
    options = parser.read(argv)
    if options.action not in _ACTIONS:
        near = nearest(options.action, _ACTIONS) if options.action else None
        raise InputError("welds tables", options.action or NOTHING, ", ".join(_ACTIONS), near)
    return _ACTIONS[options.action](options) or 0


def _list(options: argparse.Namespace) -> None:
    _no_name(options)
    tables = open_session(options).tables
    rows = [tables.table(name) for name in tables.names]
    if options.json:
        print_json(
            [{"name": table.name, "title": table.sheet.title, "rows": len(table.rows)} for table in rows]
        )
        return
    print_text(
        _columns(
            [[tr("table"), tr("rows"), tr("what")]]
            + [[t.name, str(len(t.rows)), t.sheet.title] for t in rows]
        )
    )


def _show(options: argparse.Namespace) -> None:
    tables = open_session(options).tables
    if not options.name:
        raise InputError(
            "welds tables show", NOTHING, tr("a table's name: {names}", names=", ".join(tables.names))
        )
    table = tables.table(options.name)
    if options.json:
        print_json([_plain(row) for row in table.rows])
    elif options.csv:
        print_text(_csv(table))
    else:
        print_text(f"{table.sheet.title}\n" + "\n".join(textwrap.wrap(table.sheet.about, _WIDTH)))
        names = [
            name for name in table.sheet.columns if any(row[name] not in ("", None, ()) for row in table.rows)
        ]
        cells = [[_short(row[name]) for name in names] for row in table.rows]
        print_text("\n" + _columns([names, *cells]))


def _check(options: argparse.Namespace) -> int:
    from welds.bench.folders import tables_folder
    from welds.reference.check import check_folder, check_shipped

    check_common(options)
    if options.name:
        folder = Path(options.name)
        try:
            list(folder.iterdir())
        except (OSError, ValueError) as error:
            raise unavailable(options.name, error) from error
        faults = check_folder(folder)
    else:
        own = tables_folder()
        faults = check_shipped() + (check_folder(own) if own.is_dir() and any(own.glob("*.csv")) else [])
    if options.json:
        print_json({"faults": faults, "ok": not faults})
    elif faults:
        print("\n".join(faults), file=sys.stderr)
    else:
        print_text(tr("no faults found"))
    return ReferenceDataError.exit_code if faults else 0


def _sources(options: argparse.Namespace) -> None:
    tables = open_session(options).tables
    if options.name and options.name not in tables.sources:
        near = nearest(options.name, tables.sources)
        raise InputError(mark("source"), options.name, tr("an id that `welds tables sources` lists"), near)
    uses = tables.derived(uses_of_sources)
    chosen = [tables.sources[options.name]] if options.name else tables.sources.values()
    if options.json:
        print_json([_source_json(source, uses[source.id]) for source in chosen])
        return
    for source in chosen:
        resting = ", ".join(f"{use.where} ({use.count} {use.basis.word})" for use in uses[source.id])
        parts = {tr("Read"): source.how_read, tr("Caution"): source.caution, tr("Rests on it"): resting}
        said = [f"{name}: {text.rstrip('.')}." for name, text in parts.items() if text]
        lines = textwrap.wrap(" ".join([f"{source.id}: {source.citation}.", *said]), _WIDTH - 4)
        print_text("\n    ".join([*lines, source.url] if source.url else lines))


def _source_json(source: Source, uses: Sequence[Use]) -> dict[str, object]:
    return {**asdict(source), "rests_on_it": [asdict(use) for use in uses]}


def _no_name(options: argparse.Namespace) -> None:
    if options.name:
        raise InputError(f"welds tables {options.action}", options.name, tr("nothing more"))


def _plain(row: Row) -> dict[str, object]:
    return {name: _json_cell(value) for name, value in row.items()}


def _json_cell(value: object) -> object:
    if isinstance(value, tuple):
        return [_json_cell(each) for each in value]
    return value.value if isinstance(value, Basis) else value


def _text_cell(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return f"{value:.10g}"
    if isinstance(value, tuple):
        return "; ".join("=".join(map(str, each)) if isinstance(each, tuple) else str(each) for each in value)
    return str(value)


def _short(value: object) -> str:
    if isinstance(value, bool):
        return yes_or_no(value)
    text = " ".join(_text_cell(value).split())
    if isinstance(value, float):
        return figure(text)
    return text if len(text) <= _CELL else f"{text[: _CELL - 3]}..."


def _csv(table: Table) -> str:
    names = tuple(table.sheet.columns)
    return csv_text([names, *([_text_cell(row[name]) for name in names] for row in table.rows)])


def _columns(rows: Sequence[Sequence[str]]) -> str:
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    lines = (
        "  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip() for row in rows
    )
    return "\n".join(lines)


_ACTIONS: Mapping[str, Callable[[argparse.Namespace], int | None]] = {
    "list": _list,
    "show": _show,
    "check": _check,
    "sources": _sources,
}
