"""`welds log add`, `edit`, `remove`, `undo`."""

import json
import re
import sys
from typing import TYPE_CHECKING

from welds.cli.batch import read_object
from welds.cli.log_options import OF_REQUEST, SIMPLE, Context
from welds.cli.log_words import entry_line, listed_json
from welds.cli.output import print_json, print_text
from welds.errors import NOTHING, FileUnavailableError, InputError, LogbookUnavailableError
from welds.language import mark, tr

if TYPE_CHECKING:
    from welds.logbook.fields import Reading
    from welds.logbook.logbook import Receipt

LARGEST_BYTES = 20_000_000
_NUMBER = re.compile(r"[0-9]{1,9}([.,][0-9]{1,9})?")


def add(context: Context) -> int:
    """Log the weld that the options or standard input describe; a list on standard input logs all or none."""
    from welds.logbook.fields import read_entry

    given = _from_options(context)
    listed = [given] if given else _from_stdin()
    readings = [read_entry(fields, context.tables, context.asked_units) for fields in listed]
    if len(readings) != 1:
        return _add_many(context, readings)
    try:
        log = context.open(to_write=True)
    except LogbookUnavailableError as error:
        if context.options.read_only:
            raise
        from welds.logbook.outbox import Outbox

        raise Outbox(context.place.waiting).keep(readings[0], error) from error
    with log:
        receipt = log.add(readings[0])
        if context.options.json:
            print_json(listed_json(log, receipt.entry) | {"undo": receipt.undo})
        elif receipt.undo is None:
            print_text(tr("already in the log as number {number}", number=receipt.entry.number))
        else:
            _say(context, mark("logged: {weld}"), receipt)
    return 0


def edit(context: Context) -> int:
    """Change the fields that the options or standard input name."""
    from welds.logbook.fields import changed_entry, entry_json

    changes = _from_options(context)
    if not changes:
        (changes,) = _from_stdin()
    with context.open(to_write=True) as log:
        entry = log.get(context.options.entry)
        if "photos" in changes:
            held = entry_json(entry).get("photos", [])
            changes["photos"] = [*held, *changes["photos"]]  # type: ignore[misc]
        receipt = log.edit(changed_entry(entry, changes, context.tables, context.asked_units))
        if context.options.json:
            print_json(listed_json(log, receipt.entry) | {"undo": receipt.undo})
        else:
            _say(context, mark("changed: {weld}"), receipt)
    return 0


def remove(context: Context) -> int:
    """Take an entry out."""
    with context.open(to_write=True) as log:
        entry = log.get(context.options.entry)
        assert entry.number is not None
        receipt = log.remove(entry.number)
        if context.options.json:
            print_json({"removed": listed_json(log, receipt.entry), "undo": receipt.undo})
        else:
            _say(context, mark("removed: {weld}"), receipt)
    return 0


def undo(context: Context) -> int:
    """Take a change back."""
    with context.open(to_write=True) as log:
        token = log.undo(context.options.token)
    if context.options.json:
        print_json({"undo": token})
    else:
        print_text(tr("taken back; welds log undo {token} brings it again", token=token))
    return 0


def _add_many(context: Context, readings: "list[Reading]") -> int:
    if any(reading.new_photos for reading in readings):
        raise InputError(
            mark("photos"), tr("new pictures"), tr("none in a list: log those entries one by one")
        )
    if not readings:
        raise InputError(mark("standard input"), tr("an empty list"), tr("one entry, or a list of some"))
    with context.open(to_write=True) as log:
        token = log.add_all([reading.entry for reading in readings])
        if context.options.json:
            added = [listed_json(log, log.get(reading.entry.uid)) for reading in readings]
            print_json({"added": added, "undo": token})
        else:
            print_text(
                tr(
                    "logged {number} welds; welds log undo {token} takes them out again",
                    number=len(readings),
                    token=token,
                )
            )
    return 0


def _say(context: Context, what: str, receipt: "Receipt") -> None:
    print_text(tr(what, weld=entry_line(receipt.entry, context.units).strip()))
    print_text(tr("to undo: welds log undo {token}", token=receipt.undo))


def _from_options(context: Context) -> dict[str, object]:
    options = context.options
    names = (*OF_REQUEST, *SIMPLE)
    fields: dict[str, object] = {
        name: value for name in names if (value := getattr(options, name)) is not None
    }
    settings: dict[str, object] = {}
    for text in options.set:
        name, equals, value = text.partition("=")
        if not equals or not name.strip():
            raise InputError("--set", text, tr("NAME=VALUE, as in --set current=112"))
        settings[name.strip()] = _value(value.strip())
    if options.current is not None:
        settings["current"] = _value(options.current.removesuffix("A").strip())
    if settings:
        fields["settings"] = settings
    if options.fault:
        fields["faults"] = options.fault
    if options.photo:
        fields["photos"] = options.photo
    return fields


def _value(text: str) -> object:
    """Return yes and no as such, a plain number as a number, anything else as it is."""
    if _NUMBER.fullmatch(text):
        return float(text.replace(",", "."))
    return {"true": True, "yes": True, "false": False, "no": False}.get(text.lower(), text)


def _from_stdin() -> list[dict[str, object]]:
    if sys.stdin is None or sys.stdin.isatty():
        raise InputError("welds log", NOTHING, tr("options, or JSON on standard input"))
    try:
        text = sys.stdin.buffer.read(LARGEST_BYTES + 1)
    except OSError as error:
        raise FileUnavailableError(tr("standard input"), error.strerror or str(error)) from error
    if len(text) > LARGEST_BYTES:
        raise InputError(
            mark("standard input"),
            tr("more than {size} MB", size=LARGEST_BYTES // 1000000),
            "welds log import",
        )
    if not text.lstrip().startswith(b"["):
        return [read_object(text)]
    try:
        listed = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError(
            mark("standard input"), tr("not JSON ({error})", error=error), tr("one entry, or a list of some")
        ) from error
    return [read_object(json.dumps(each).encode()) for each in listed]
