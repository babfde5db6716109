"""`welds compare`: the options of a card; any of them given more than once makes columns."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import product
from pathlib import Path

from welds.advice.equipment import Equipment
from welds.advice.validate import FIELDS
from welds.cli.arguments import Parser, add_common, add_file
from welds.cli.batch import error_json
from welds.cli.card import WritePdf
from welds.cli.output import Destinations, check_writable, destinations, print_json, print_text, write_text
from welds.cli.request_options import add_request, given_fields
from welds.cli.session import Session, open_session
from welds.errors import InputError
from welds.language import mark, tr
from welds.report.comparison import MOST_COLUMNS, Asked, Column, Comparison, compare, differences
from welds.report.comparison_texts import (
    comparison_csv,
    comparison_html,
    comparison_markdown,
    comparison_text,
)

DESCRIPTION = mark(
    "Set-ups side by side: any option given more than once makes columns, as in --joint butt --joint tee."
    " The first column is the base that the others are held against."
)
_FILES = ("csv", "html", "markdown", "pdf")
_UNBOUND = frozenset({"json", "csv"})
"""Forms that a program reads: as many columns as are asked for."""
_MIG_ONLY = ("wire", "transfer")
_TOGETHER = ","
"""Several coatings on one part are written with this between them; given twice, an option makes columns."""


def run(argv: Sequence[str], write_pdf: WritePdf) -> None:
    """Answer every column, then print or write the comparison."""
    options = _parser().read(argv)
    out = destinations(options, _FILES, ("json",))
    fields = given_fields(options)
    benches = list(dict.fromkeys(options.bench))
    options.bench = None
    session = open_session(options)
    equipments = [_equipment(file, session) for file in benches] or [session.equipment]
    asked = _columns(fields, equipments, session)
    _check_number(len(asked), out)
    comparison = _answered(asked, session)
    for form, file in out.files.items():
        if form == "pdf":
            check_writable(file)
            write_pdf(file, comparison, session.units, session.tables.sources)
            print_text(tr("written: {file}", file=file))
        else:
            write_text(file, _rendered(comparison, form, session))
    if out.on_stdout == "json":
        print_json(
            {
                "columns": [_column_json(column) for column in comparison.columns],
                "differences": list(differences(comparison)),
            }
        )
    elif not out.is_silent:
        only = options.only_differences
        print_text(_rendered(comparison, out.on_stdout or "text", session, only_differences=only))


def _parser() -> Parser:
    parser = Parser("welds compare", tr(DESCRIPTION))
    add_request(parser, lists=frozenset(FIELDS))
    group = parser.add_argument_group(tr("how the comparison comes out"))
    group.add_argument(
        "--only-differences", action="store_true", help=tr("leave out what is the same in all")
    )
    add_file(group, "--csv", tr("one line a setting and column, metric"))
    add_file(group, "--html", tr("one page"))
    add_file(group, "--markdown", tr("Markdown tables"))
    add_file(group, "--pdf", tr("one page"), needs_name=True)
    add_common(parser, has_many_benches=True)
    return parser


def _equipment(file: str, session: Session) -> Equipment:
    from welds.bench.load import load_equipment

    return load_equipment(Path(file), session.tables)


def _columns(
    fields: dict[str, object], equipments: Sequence[Equipment], session: Session
) -> tuple[Asked, ...]:
    """Return every combination of what was given more than once, each once, in the order of the options."""
    from welds.advice.validate import request_from_fields

    asked: dict[Asked, None] = {}
    has_tig = "tig" in [str(each).lower() for each in _listed(fields.get("process"))]
    for combination in _combinations(fields):
        if has_tig and len(_listed(fields.get("process"))) > 1 and combination.get("process") == "tig":
            combination = {name: value for name, value in combination.items() if name not in _MIG_ONLY}
        request = request_from_fields(combination, session.tables, session.asked_units)
        asked.update((Asked(request, equipment), None) for equipment in equipments)
    return tuple(asked)


def _combinations(fields: dict[str, object]) -> Iterator[dict[str, object]]:
    names = list(fields)
    for values in product(*(_listed(fields[name]) for name in names)):
        combination = dict(zip(names, values, strict=True))
        if "coating" in combination:
            combination["coating"] = _coatings(str(combination["coating"]))
        yield combination


def _coatings(text: str) -> list[str]:
    words = [word.strip() for word in text.split(_TOGETHER)]
    return [] if words == ["none"] else words


def _listed(value: object) -> list[object]:
    return value if isinstance(value, list) else [value]


def _check_number(count: int, out: Destinations) -> None:
    forms = {*out.files, *([out.on_stdout] if out.on_stdout else [] if out.is_silent else ["text"])}
    if count < 2:
        raise InputError(
            mark("columns"), count, tr("2 or more: give an option twice, as in --joint butt --joint tee")
        )
    if count > MOST_COLUMNS and not forms <= _UNBOUND:
        raise InputError(
            mark("columns"),
            count,
            tr(
                "at most {most} side by side; any number with --json or --csv",
                most=MOST_COLUMNS,
            ),
        )


def _answered(asked: Sequence[Asked], session: Session) -> Comparison:
    """Return the comparison; where no column at all has a card, the first refusal is raised."""
    from welds.advice.advise import advise

    comparison = compare(asked, lambda each: advise(each.request, session.tables, each.equipment))
    if comparison.pinned.error is not None:
        raise comparison.pinned.error
    return replace(comparison, base=comparison.columns.index(comparison.pinned))


def _column_json(column: Column) -> dict[str, object]:
    from welds.report.json_card import card_json, request_json

    if column.card is not None:
        return card_json(column.card)
    assert column.error is not None
    return {
        "request": request_json(column.request),
        "error": error_json(column.error),
        "exit": column.error.exit_code,
    }


def _rendered(comparison: Comparison, form: str, session: Session, *, only_differences: bool = False) -> str:
    if form == "csv":
        return comparison_csv(comparison)
    if form == "html":
        return comparison_html(comparison, session.units)
    if form == "markdown":
        return comparison_markdown(comparison, session.units)
    return comparison_text(comparison, session.units, only_differences=only_differences)
