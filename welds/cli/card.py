"""`welds card`: one set-up card, or many with --batch."""

import sys
from collections.abc import Callable, Mapping, Sequence

from welds.advice.card import Card
from welds.cli.arguments import Parser, add_common, add_file
from welds.cli.batch import run_batch
from welds.cli.log_evidence import evidence_from
from welds.cli.output import Destinations, check_writable, destinations, print_json, print_text, write_text
from welds.cli.request_options import add_request, given_fields
from welds.cli.session import Session, open_session
from welds.errors import InputError
from welds.language import mark, tr
from welds.quantities.units import Units
from welds.reference.sources import Source

WritePdf = Callable[[str, object, Units, Mapping[str, Source]], None]
"""Writes a card or a chart as PDF; lent by the window's side, because it needs Qt."""

DESCRIPTION = mark("A set-up for one joint, with ranges, reasons and sources. Read the cautions first.")
_FILES = ("html", "markdown", "pdf")


def run(argv: Sequence[str], write_pdf: WritePdf) -> None:
    """Answer the request."""
    options = _parser().read(argv)
    fields = given_fields(options)
    out = destinations(options, _FILES, ("json", "text"))
    if options.batch:
        extra = [*fields, *out.files, *([out.on_stdout] if out.on_stdout not in (None, "json") else [])]
        if extra:
            option = f"--{extra[0].replace('_', '-')}"
            raise InputError("--batch", option, tr("requests on standard input only; leave that option out"))
        run_batch(open_session(options), options.log)
        return
    session = open_session(options)
    card = _card(session, fields, options.log)
    _write_files(card, out, session, write_pdf)
    _print(card, out, session, why=options.why)


def _parser() -> Parser:
    parser = Parser("welds card", tr(DESCRIPTION))
    add_request(parser)
    group = parser.add_argument_group(tr("how the card comes out"))
    group.add_argument("--text", action="store_true", help=tr("print plain text (what happens by itself)"))
    group.add_argument("--why", action="store_true", help=tr("with the chain of reasons below each figure"))
    add_file(group, "--html", tr("write one page to tape to the machine"))
    add_file(group, "--markdown", tr("write Markdown"))
    add_file(group, "--pdf", tr("write one page to tape to the machine"), needs_name=True)
    group.add_argument(
        "--batch",
        action="store_true",
        help=tr("one JSON request a line on standard input, one answer a line out"),
    )
    add_common(parser)
    return parser


def _card(session: Session, fields: dict[str, object], log: str | None) -> Card:
    from welds.advice.advise import advise
    from welds.advice.heat.check import with_heat_check
    from welds.advice.validate import request_from_fields

    request = request_from_fields(fields, session.tables, session.asked_units)
    evidence = evidence_from(log, request, session.tables)
    card = advise(request, session.tables, session.equipment, evidence)
    return with_heat_check(card, session.tables, session.equipment)


def _write_files(card: Card, out: Destinations, session: Session, write_pdf: WritePdf) -> None:
    for form, file in out.files.items():
        if form == "pdf":
            check_writable(file)
            write_pdf(file, card, session.units, session.tables.sources)
            print_text(tr("written: {file}", file=file))
        else:
            write_text(file, _rendered(card, form, session, why=True))


def _print(card: Card, out: Destinations, session: Session, *, why: bool) -> None:
    if out.on_stdout == "json":
        from welds.report.json_card import card_json

        print_json(card_json(card))
    elif not out.is_silent:
        print_text(_rendered(card, out.on_stdout or "text", session, why=why))
    elif card.stops:
        from welds.report.text_card import caution_lines

        for caution in card.stops:
            print("\n".join(caution_lines(caution)), file=sys.stderr)


def _rendered(card: Card, form: str, session: Session, *, why: bool) -> str:
    sources, units = session.tables.sources, session.units
    if form == "html":
        from welds.report.html_card import html_card

        return html_card(card, units, sources)
    if form == "markdown":
        from welds.report.markdown_card import markdown_card

        return markdown_card(card, units, sources)
    from welds.report.text_card import text_card

    return text_card(card, units, sources, why=why)
