"""`welds faults`: what a bead looks like, where that comes from, and what it changes on the card."""

from collections.abc import Sequence

from welds.cli.arguments import Parser, add_common
from welds.cli.log_evidence import evidence_from
from welds.cli.output import print_json, print_text
from welds.cli.request_options import add_request, given_fields
from welds.cli.session import Session, open_session
from welds.errors import InputError
from welds.language import mark, tr

DESCRIPTION = mark(
    "Without a name, the faults that a weld can have and what they look like; with one, causes and remedies,"
    " and what each would change on the card. A crack in what carries load is a qualified welder's."
)


def run(argv: Sequence[str]) -> None:
    """List the faults, or one with its remedies."""
    name = argv[0] if argv and not argv[0].startswith("-") else None
    parser = Parser("welds faults", tr(DESCRIPTION))
    parser.usage = "welds faults [FAULT] --process tig|mig --metal ID --thickness L --joint J ..."
    add_request(parser)
    add_common(parser)
    options = parser.read(argv[1:] if name is not None else argv)
    session = open_session(options)
    _answer(name, given_fields(options), options.log, session, is_json=options.json)


def _answer(
    name: str | None, fields: dict[str, object], log: str | None, session: Session, *, is_json: bool
) -> None:
    from welds.advice.adjustment import Adjustment
    from welds.advice.advise import advise
    from welds.advice.card import Card
    from welds.advice.validate import request_from_fields
    from welds.reference.faults import find_fault
    from welds.reference.metals import find_metal
    from welds.report.fault_lines import fault_json, fault_text, looks_of, looks_text, remedy_lines

    tables = session.tables
    request = request_from_fields(fields, tables, session.asked_units)
    looks = looks_of(tables, request.process.value, find_metal(tables, request.metal).family)
    if name is None:
        if is_json:
            print_json([fault_json(look, ()) for look in looks])
        else:
            print_text(looks_text(looks))
        return
    found = find_fault(tables, name)
    look = next((each for each in looks if found in (each.name, *_numbers(each.standard))), None)
    if look is None:
        allowed = ", ".join(each.name for each in looks)
        raise InputError(
            mark("fault"), name, tr("with {process}: {allowed}", process=request.process, allowed=allowed)
        )
    evidence = evidence_from(log, request, tables)

    def after(*steps: Adjustment) -> Card:
        return advise(request, tables, session.equipment, evidence, steps)

    lines = remedy_lines(tables, look.name, after(), after, session.units)
    if is_json:
        print_json(fault_json(look, lines))
    else:
        print_text(fault_text(look, lines))


def _numbers(standard: str) -> list[str]:
    """Return the numbers of ISO 6520-1 in a fault's line."""
    return [part.split()[0] for part in standard.removeprefix("ISO 6520-1: ").split(", ") if part]
