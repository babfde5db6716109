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
from welds.language import mark, tr
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
    "outcome": mark("worked-well, worked, failed"),
    "notes": mark("what the bead looked like, what you would change"),
    "made_at": mark("when: 2026-03-03 or 2026-03-03T14:05 (now)"),
    "machine": mark("which machine"),
    "welder": mark("who"),
    "material_lot": mark("lot or heat number of the material"),
}
FILTERS = {
    "text": mark("words that have to occur anywhere"),
    "process": mark("tig or mig"),
    "family": mark("aluminium, carbon-steel, stainless, ..."),
    "metal": mark("part of the metal's name"),
    "joint": mark("butt, tee, lap, ..."),
    "position": mark("PA, PB, ..."),
    "outcome": mark("worked-well, worked, failed"),
    "fault": mark("plain name or ISO 6520-1 number"),
    "machine": mark("part of the machine's name"),
    "welder": mark("part of the welder's name"),
    "material_lot": mark("part of the lot"),
    "since": mark("a date, this day included"),
    "until": mark("a date, this day included"),
    "thickness_min": mark("at least so thick"),
    "thickness_max": mark("at most so thick"),
    "current_min": mark("amperes, at least"),
    "current_max": mark("amperes, at most"),
    "photos": mark("yes: with pictures, no: without"),
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
            raise LogbookUnavailableError(place.name, tr("there is no log here yet"), (tr(CHOOSE),))
        log = open_logbook(place, read_only=self.options.read_only)
        for notice in log.notices:
            print(f"welds: {notice}", file=sys.stderr)
        return log


def parser_of(name: str, what: str) -> Parser:
    """Return the parser of one action."""
    parser = Parser(f"welds log {name}", what[0].upper() + what[1:] + ".")
    _OPTIONS.get(name, _nothing)(parser)
    add_common(parser)
    group = parser.add_argument_group(tr("which log"))
    group.add_argument("--read-only", action="store_true", help=tr("open it to read, change nothing"))
    return parser


def _nothing(parser: Parser) -> None:
    """Add nothing."""


def _weld(parser: Parser) -> None:
    add_request(parser, lists=frozenset(), names=OF_REQUEST)
    group = parser.add_argument_group(tr("what was set and what came of it"))
    group.add_argument(
        "--set",
        action="append",
        default=[],
        metavar="NAME=VALUE",
        help=tr("one setting, as the card names it"),
    )
    group.add_argument("--current", action=Once, metavar="A", help=tr("short for --set current=A"))
    group.add_argument(
        "--fault", action="append", default=[], metavar="NAME", help=tr("burn-through, 401, ...")
    )
    group.add_argument("--photo", action="append", default=[], metavar="FILE", help=tr("a picture, copied"))
    for name, what in SIMPLE.items():
        group.add_argument(f"--{name.replace('_', '-')}", action=Once, metavar=name.upper(), help=tr(what))


def _entry(parser: Parser) -> None:
    parser.add_argument("entry", metavar="NUMBER|UID")


def _entry_and_weld(parser: Parser) -> None:
    _entry(parser)
    _weld(parser)


def _filters(parser: Parser) -> None:
    group = parser.add_argument_group(tr("which welds"))
    for name, what in FILTERS.items():
        group.add_argument(f"--{name.replace('_', '-')}", action=Once, metavar=name.upper(), help=tr(what))
    group.add_argument(
        "--sort", action=Once, metavar="FIELD", help=tr("made_at (newest first), current_a, ...")
    )
    group.add_argument("--ascending", action="store_true", help=tr("smallest or oldest first"))
    _page(group, "50")
    group.add_argument("--offset", action=Once, metavar="N", help=tr("skip so many (0)"))


def _page(group: argparse._ActionsContainer, usual: str) -> None:
    group.add_argument("--limit", action=Once, metavar="N", help=tr("at most so many ({usual})", usual=usual))


def _similar(parser: Parser) -> None:
    add_request(parser, lists=frozenset(), names=OF_REQUEST)
    _page(parser, "5")


def _sheet(parser: Parser) -> None:
    _entry(parser)
    add_file(parser, "--html", tr("write one page"))
    add_file(parser, "--pdf", tr("write one page"), needs_name=True)


def _file(parser: Parser) -> None:
    parser.add_argument("file", metavar="FILE")


def _import(parser: Parser) -> None:
    _file(parser)
    parser.add_argument("--accept", action="store_true", help=tr("write it, if no row is bad"))


def _undo(parser: Parser) -> None:
    parser.add_argument("token", metavar="TOKEN")


def whole_number(text: str | None, field: str, usual: int, least: int) -> int:
    """Return a count that was typed."""
    if text is None:
        return usual
    if not text.isdecimal() or not least <= int(text) <= 10_000_000:
        raise InputError(field, text, tr("a whole number from {least} on", least=least))
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
