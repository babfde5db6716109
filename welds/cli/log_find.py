"""`welds log list`, `show`, `similar`."""

from welds.cli.log_options import FILTERS, OF_REQUEST, Context, whole_number
from welds.cli.log_words import entry_line, entry_lines, listed_json
from welds.cli.output import print_json, print_text
from welds.errors import InputError, nearest
from welds.language import figure, mark, tr


def show_list(context: Context) -> int:
    """Print the entries that fit."""
    from welds.logbook.browse import count, page
    from welds.logbook.filter_fields import filter_of

    options = context.options
    given = {name: value for name in FILTERS if (value := getattr(options, name)) is not None}
    wanted = filter_of(_checked(context, given), context.tables, context.asked_units)
    limit = whole_number(options.limit, "--limit", 50, 1)
    offset = whole_number(options.offset, "--offset", 0, 0)
    with context.open() as log:
        found = page(
            log,
            wanted,
            sort=options.sort or "made_at",
            is_descending=not options.ascending,
            offset=offset,
            limit=limit,
        )
        if context.options.json:
            print_json([listed_json(log, entry) for entry in found.entries])
            return 0
        total = count(log, wanted)
    for entry in found.entries:
        print_text(entry_line(entry, context.units))
    last = offset + len(found.entries)
    if found.entries:
        print_text(tr("{first} to {last} of {total}", first=offset + 1, last=last, total=total))
    else:
        print_text(tr("none of {total}", total=total))
    return 0


def show(context: Context) -> int:
    """Print one entry."""
    from welds.logbook.settings import build_kinds

    with context.open() as log:
        entry = log.get(context.options.entry)
        if context.options.json:
            print_json(listed_json(log, entry))
            return 0
    kinds = dict(context.tables.derived(build_kinds))
    print_text("\n".join(entry_lines(entry, context.units, kinds)))
    return 0


def similar(context: Context) -> int:
    """Print the past welds most like the request, nearest first."""
    from welds.advice.validate import request_from_fields
    from welds.logbook.alike import STATED
    from welds.logbook.alike import similar as find_similar

    options = context.options
    given = {name: value for name in OF_REQUEST if (value := getattr(options, name)) is not None}
    request = request_from_fields(given, context.tables, context.asked_units)
    limit = whole_number(options.limit, "--limit", 5, 1)
    with context.open() as log:
        found = find_similar(log, request, context.tables, limit)
        if options.json:
            print_json([listed_json(log, each.entry) | {"distance": each.distance} for each in found])
            return 0
    for each in found:
        distance = figure(f"{each.distance:.2f}")
        print_text(f"{entry_line(each.entry, context.units)}  [{distance}]")
    print_text(tr(STATED) if found else tr("nothing alike in the log; {stated}", stated=tr(STATED)))
    return 0


def _checked(context: Context, given: dict[str, str]) -> dict[str, str]:
    """Return the filter's words as the log keeps them; a word it can never hold is a slip."""
    from welds.advice.evidence import Outcome
    from welds.advice.request import Joint, Process
    from welds.advice.validate import enum_value
    from welds.logbook.words import read_fault
    from welds.reference.metals import Metal

    found = dict(given)
    for name, allowed in (("process", Process), ("joint", Joint), ("outcome", Outcome)):
        if name in found:
            found[name] = enum_value(allowed, found[name], name).value
    if "fault" in found:
        found["fault"] = read_fault(context.tables, found["fault"])
    if "family" in found:
        families = sorted({metal.family for metal in context.tables.records(Metal)})
        if found["family"] not in families:
            raise InputError(
                mark("family"), found["family"], ", ".join(families), nearest(found["family"], families)
            )
    return found
