"""The options that describe what is to be welded, shared by every command that asks the advice."""

import argparse
from collections.abc import Iterable

from welds.advice.validate import FIELDS
from welds.cli.arguments import Once, Parser
from welds.language import mark, tr

_HELP = {
    "process": mark("tig or mig"),
    "metal": mark("catalogue id, with or without temper: 5052, 6061-T6, low-carbon, 304"),
    "thickness": mark("2 mm, 0.080 in, 1/8 in, 14 ga"),
    "other_metal": mark("metal of the second piece, where it differs"),
    "other_thickness": mark("thickness of the second piece, where it differs"),
    "joint": mark("butt, tee, lap, outside-corner, inside-corner, edge, plug"),
    "position": mark("PA, 1G, flat, ... (default PA)"),
    "gap": mark("gap between the pieces"),
    "goal": mark("what the filler should favour: strength, ductility, least-cracking, ..."),
    "coating": mark("what is on the metal: galvanised, paint, oil, ...; may be given more than once"),
    "solvent": mark("what it was or will be wiped with: acetone, alcohol, chlorinated, unknown-spray"),
    "part": mark("what the joint belongs to: bracket, tank, towing, ..."),
    "place": mark("indoors, outdoors, enclosed (default indoors)"),
    "length": mark("length of the weld"),
    "hand": mark("unhurried or brisk (default unhurried)"),
    "gas": mark("the gas on the machine"),
    "wire": mark("the MIG wire on the machine"),
    "transfer": mark("short-circuit, spray, globular, pulsed"),
}
_LISTS = frozenset({"coating"})


def add_request(parser: Parser, *, lists: frozenset[str] = _LISTS, names: Iterable[str] = FIELDS) -> None:
    """Add one option for each field of a request; those in `lists` may be repeated."""
    group = parser.add_argument_group(tr("what is to be welded"))
    for name in names:
        option = f"--{name.replace('_', '-')}"
        if name in lists:
            group.add_argument(
                option, action="append", default=[], metavar=name.upper(), help=tr(_HELP[name])
            )
        else:
            group.add_argument(option, action=Once, metavar=name.upper(), help=tr(_HELP[name]))


def given_fields(options: argparse.Namespace) -> dict[str, object]:
    """Return the fields that were given, by name."""
    values = {name: getattr(options, name, None) for name in FIELDS}
    return {name: value for name, value in values.items() if value is not None and value != []}
