"""The options that describe what is to be welded, shared by every command that asks the advice."""

import argparse
from collections.abc import Iterable

from welds.advice.validate import FIELDS
from welds.cli.arguments import Once, Parser

_HELP = {
    "process": "tig or mig",
    "metal": "catalogue id, with or without temper: 5052, 6061-T6, low-carbon, 304",
    "thickness": "2 mm, 0.080 in, 1/8 in, 14 ga",
    "other_metal": "metal of the second piece, where it differs",
    "other_thickness": "thickness of the second piece, where it differs",
    "joint": "butt, tee, lap, outside-corner, inside-corner, edge, plug",
    "position": "PA, 1G, flat, ... (default PA)",
    "gap": "gap between the pieces",
    "goal": "what the filler should favour: strength, ductility, least-cracking, ...",
    "coating": "what is on the metal: galvanised, paint, oil, ...; may be given more than once",
    "solvent": "what it was or will be wiped with: acetone, alcohol, chlorinated, unknown-spray",
    "part": "what the joint belongs to: bracket, tank, towing, ...",
    "place": "indoors, outdoors, enclosed (default indoors)",
    "length": "length of the weld",
    "hand": "unhurried or brisk (default unhurried)",
    "gas": "the gas on the machine",
    "wire": "the MIG wire on the machine",
    "transfer": "short-circuit, spray, globular, pulsed",
}
_LISTS = frozenset({"coating"})


def add_request(parser: Parser, *, lists: frozenset[str] = _LISTS, names: Iterable[str] = FIELDS) -> None:
    """Add one option for each field of a request; those in `lists` may be repeated."""
    group = parser.add_argument_group("what is to be welded")
    for name in names:
        option = f"--{name.replace('_', '-')}"
        if name in lists:
            group.add_argument(option, action="append", default=[], metavar=name.upper(), help=_HELP[name])
        else:
            group.add_argument(option, action=Once, metavar=name.upper(), help=_HELP[name])


def given_fields(options: argparse.Namespace) -> dict[str, object]:
    """Return the fields that were given, by name."""
    values = {name: getattr(options, name, None) for name in FIELDS}
    return {name: value for name, value in values.items() if value is not None and value != []}
