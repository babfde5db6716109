"""`welds bead`: what given settings melt in a joint."""

import argparse
from collections.abc import Sequence

from welds.cli.arguments import Once, Parser, add_common
from welds.cli.output import print_json, print_text
from welds.cli.request_options import add_request, given_fields
from welds.cli.session import Session, open_session
from welds.errors import NOTHING, InputError, nearest
from welds.language import mark, tr
from welds.quantities.registry import convert
from welds.quantities.speed import parse_speed
from welds.quantities.typed import read_typed

DESCRIPTION = mark(
    "How wide and deep given settings melt in a joint, how near they are to burning through, and how fast the"
    " weld cools. Conduction only, with its error."
)
REQUEST = (
    *("process", "metal", "thickness", "other_metal", "other_thickness"),
    *("joint", "gap", "gas", "wire", "transfer"),
)
_BACKINGS = ("none", "bar")
_NUMBERS = {
    "current": ("A", {"a": "A", "amp": "A", "amps": "A"}, mark("a current such as 90 A")),
    "voltage": ("V", {"v": "V", "volt": "V", "volts": "V"}, mark("a voltage such as 12.5 V")),
    "preheat": (
        "degC",
        {"c": "degC", "degc": "degC", "f": "degF", "degf": "degF"},
        mark("a temperature such as 100 C"),
    ),
    "frequency": ("Hz", {"hz": "Hz"}, mark("a frequency such as 120 Hz")),
    "balance": (
        "percent",
        {"%": "percent", "percent": "percent"},
        mark("percent electrode negative, such as 70 %"),
    ),
}
"""Unit a bare number is in, unit words, and what is asked for."""


def run(argv: Sequence[str]) -> None:
    """Answer the request."""
    options = _parser().read(argv)
    session = open_session(options)
    fields = given_fields(options)

    from welds.advice.heat.bead import HeatSettings, bead_of
    from welds.advice.validate import request_from_fields
    from welds.report.bead_texts import bead_json, bead_text

    request = request_from_fields(fields, session.tables, session.asked_units)
    current, preheat = _number(options, "current"), _number(options, "preheat")
    if current is None:
        raise InputError("--current", NOTHING, tr(_NUMBERS["current"][2]))
    settings = HeatSettings(
        current_a=current,
        travel_mm_s=_travel(options, session),
        voltage_v=_number(options, "voltage"),
        has_bar=_has_bar(options),
        frequency_hz=_number(options, "frequency"),
        electrode_negative_percent=_number(options, "balance"),
        **({} if preheat is None else {"start_c": preheat}),
    )
    bead = bead_of(request, settings, session.tables, session.equipment)
    if options.json:
        print_json(bead_json(bead))
    else:
        print_text(bead_text(bead, session.units))


def _parser() -> Parser:
    parser = Parser("welds bead", tr(DESCRIPTION))
    add_request(parser, names=REQUEST)
    group = parser.add_argument_group(tr("settings"))
    for name, what in (
        ("current", tr("amperes")),
        ("travel", tr("travel speed: 5 mm/s, 12 ipm, 300 mm/min")),
        ("voltage", tr("arc voltage (left out: the process's conventional load line)")),
        ("preheat", tr("temperature of the parts, in degrees C unless F is said (default 20 C)")),
        ("backing", tr("none, or bar: a metal bar clamped behind the joint; a trend only")),
        ("frequency", tr("AC frequency, hertz; a trend only")),
        ("balance", tr("AC balance, percent electrode negative; a trend only")),
    ):
        group.add_argument(f"--{name}", action=Once, metavar=name.upper(), help=what)
    add_common(parser)
    return parser


def _travel(options: argparse.Namespace, session: Session) -> float:
    if options.travel is None:
        raise InputError("--travel", NOTHING, tr("a travel speed such as 5 mm/s, 12 ipm, 300 mm/min"))
    return parse_speed(options.travel, field="travel", default=session.asked_units).mm_s


def _has_bar(options: argparse.Namespace) -> bool:
    given = options.backing or _BACKINGS[0]
    if given not in _BACKINGS:
        raise InputError("--backing", given, ", ".join(_BACKINGS), nearest(given, _BACKINGS))
    return given == "bar"


def _number(options: argparse.Namespace, name: str) -> float | None:
    given = getattr(options, name)
    if given is None:
        return None
    own, words, wanted = _NUMBERS[name]
    allowed = tr(wanted)
    typed = read_typed(given, name, allowed)
    word = typed.unit.lower().replace(" ", "").removeprefix("°")
    if word and word not in words:
        raise InputError(name, given, allowed)
    return convert(typed.value, words[word], own) if word else typed.value
