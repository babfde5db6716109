"""What `welds log` takes on its command line, and what its actions share."""

import argparse
from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from welds.cli.arguments import Once, Parser, add_common, add_file
from welds.cli.request_options import add_request
from welds.cli.session import check_common, open_tables
from welds.errors import InputError, LogbookUnavailableError
from welds.logbook.offers import CHOOSE
from welds.quantities.units import Units

if TYPE_CHECKING:
    from welds.logbook.logbook import Logbook
    from welds.logbook.places import Place
    from welds.reference.tables import Tables

OF_REQUEST = (
    "process",
    "metal",
    "thickness",
    "joint",
    "position",
    "other_metal",
    "other_thickness",
    "gap",
    "hand",
)
SIMPLE = {
    "outcome": "worked-well, worked, failed",
    "notes": "what the bead looked like, what you would change",
    "made_at": "when: 2026-03-03 or 2026-03-03T14:05 (now)",
    "machine": "which machine",
    "welder": "who",
    "material_lot": "lot or heat number of the material",
}
FILTERS = {
    "text": "words that have to occur anywhere",
    "process": "tig or mig",
    "family": "aluminium, carbon-steel, stainless, ...",
    "metal": "part of the metal's name",
    "joint": "butt, tee, lap, ...",
    "position": "PA, PB, ...",
    "outcome": "worked-well, worked, failed",
    "fault": "plain name or ISO 6520-1 number",
    "machine": "part of the machine's name",
    "welder": "part of the welder's name",
    "material_lot": "part of the lot",
    "since": "a date, this day included",
    "until": "a date, this day included",
    "thickness_min": "at least so thick",
    "thickness_max": "at most so thick",
    "current_min": "amperes, at least",
    "current_max": "amperes, at most",
    "photos": "yes: with pictures, no: without",
}


@dataclass(frozen=True)
class Context:
    """The options, and what is made of them when it is first needed."""

    options: argparse.Namespace
    write_pdf: Callable[..., None]

    @cached_property
    def tables(self) -> "Tables":
        """The reference tables with the person's own rows."""
        return open_tables()

    @cached_property
    def asked_units(self) -> Units | None:
        """The units asked for."""
        return check_common(self.options)

    @property
    def units(self) -> Units:
        """The units to show."""
        return self.asked_units or Units.METRIC

    @property
    def place(self) -> "Place":
        """The log that is meant."""
        from welds.logbook.places import place_of

        return place_of(self.options.log)

    def open(self, *, to_write: bool = False) -> "Logbook":
        """Open the log; what the person should know goes to standard error.

        A log that was named and is not there is made only when something is to be written into it.
        """
        import sys

        from welds.logbook.opening import open_logbook

        self.asked_units  # noqa: B018  # a wrong --units or --lang is refused before the log is touched
        place = self.place
        if self.options.log is not None and not to_write and place.path and not place.path.exists():
            raise LogbookUnavailableError(place.name, "there is no log here yet", (CHOOSE,))
        log = open_logbook(place, read_only=self.options.read_only)
        for notice in log.notices:
            print(f"welds: {notice}", file=sys.stderr)
        return log


def parser_of(name: str, what: str) -> Parser:
    """Return the parser of one action."""
    parser = Parser(f"welds log {name}", what[0].upper() + what[1:] + ".")
    _OPTIONS.get(name, _nothing)(parser)
    add_common(parser)
    group = parser.add_argument_group("which log")
    group.add_argument("--read-only", action="store_true", help="open it to read, change nothing")
    return parser


def _nothing(parser: Parser) -> None:
    """Add nothing."""


def _weld(parser: Parser) -> None:
    add_request(parser, lists=frozenset(), names=OF_REQUEST)
    group = parser.add_argument_group("what was set and what came of it")
    group.add_argument(
        "--set", action="append", default=[], metavar="NAME=VALUE", help="one setting, as the card names it"
    )
    group.add_argument("--current", action=Once, metavar="A", help="short for --set current=A")
    group.add_argument("--fault", action="append", default=[], metavar="NAME", help="burn-through, 401, ...")
    group.add_argument("--photo", action="append", default=[], metavar="FILE", help="a picture, copied")
    for name, what in SIMPLE.items():
        group.add_argument(f"--{name.replace('_', '-')}", action=Once, metavar=name.upper(), help=what)


def _entry(parser: Parser) -> None:
    parser.add_argument("entry", metavar="NUMBER|UID")


def _entry_and_weld(parser: Parser) -> None:
    _entry(parser)
    _weld(parser)


def _filters(parser: Parser) -> None:
    group = parser.add_argument_group("which welds")
    for name, what in FILTERS.items():
        group.add_argument(f"--{name.replace('_', '-')}", action=Once, metavar=name.upper(), help=what)
    group.add_argument("--sort", action=Once, metavar="FIELD", help="made_at (newest first), current_a, ...")
    group.add_argument("--ascending", action="store_true", help="smallest or oldest first")
    _page(group, "50")
    group.add_argument("--offset", action=Once, metavar="N", help="skip so many (0)")


def _page(group: argparse._ActionsContainer, usual: str) -> None:
    group.add_argument("--limit", action=Once, metavar="N", help=f"at most so many ({usual})")


def _similar(parser: Parser) -> None:
    add_request(parser, lists=frozenset(), names=OF_REQUEST)
    _page(parser, "5")


def _sheet(parser: Parser) -> None:
    _entry(parser)
    add_file(parser, "--html", "write one page")
    add_file(parser, "--pdf", "write one page", needs_name=True)


def _file(parser: Parser) -> None:
    parser.add_argument("file", metavar="FILE")


def _import(parser: Parser) -> None:
    _file(parser)
    parser.add_argument("--accept", action="store_true", help="write it, if no row is bad")


def _undo(parser: Parser) -> None:
    parser.add_argument("token", metavar="TOKEN")


def whole_number(text: str | None, field: str, usual: int, least: int) -> int:
    """Return a count that was typed."""
    if text is None:
        return usual
    if not text.isdecimal() or not least <= int(text) <= 10_000_000:
        raise InputError(field, text, f"a whole number from {least} on")
    return int(text)


_OPTIONS: dict[str, Callable[[Parser], None]] = {
    "add": _weld,
    "list": _filters,
    "show": _entry,
    "edit": _entry_and_weld,
    "remove": _entry,
    "undo": _undo,
    "similar": _similar,
    "sheet": _sheet,
    "export": _file,
    "import": _import,
    "backup": _file,
    "restore": _file,
}
