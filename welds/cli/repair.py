"""`welds repair`: plug, patch or replace one damaged region of sheet."""

import argparse
from collections.abc import Sequence
from pathlib import Path

from welds.advice.request import Coating, Part, Process
from welds.advice.validate import enum_value
from welds.cli.arguments import Once, Parser, add_common, add_file
from welds.cli.log_evidence import past_welds
from welds.cli.output import destinations, print_json, print_text, write_text
from welds.cli.session import Session, open_session
from welds.errors import NOTHING, InputError
from welds.job.bench_cards import BenchCards
from welds.job.damage import HOLES_FORM, Behind, Damage, read_holes
from welds.job.repair import RepairAnswer, decide_repair
from welds.language import mark, tr

DESCRIPTION = mark(
    "Fill the holes, let in a patch or replace the panel: decided with its reasons and the arithmetic. Parts"
    " that carry load or whose failure can hurt someone are refused."
)
_NEEDED = ("metal", "thickness", "holes", "region")


def run(argv: Sequence[str]) -> None:
    """Decide, then print or write it."""
    options = _parser().read(argv)
    out = destinations(options, ("html", "dxf", "svg"), ("json",))
    session = open_session(options)
    with past_welds(options.log) as past:
        bench = BenchCards(session.tables, session.equipment, past)
        answer = decide_repair(bench, _damage(options, session))
    for form, file in out.files.items():
        write_text(file, _rendered(answer, form, session))
    if out.on_stdout == "json":
        from welds.report.repair_texts import repair_json

        print_json(repair_json(answer))
    elif not out.is_silent:
        print_text(_rendered(answer, out.on_stdout or "text", session))


def _parser() -> Parser:
    parser = Parser("welds repair", tr(DESCRIPTION))
    group = parser.add_argument_group(tr("what is wrong"))
    for name, what in (
        ("--metal", tr("catalogue id: low-carbon, galvanised, 5052, 304")),
        ("--thickness", tr("what the sheet was: 1.2 mm, 0.048 in, 18 ga")),
        ("--measured", tr("what is left of it beside the holes, by micrometer or ultrasound")),
        ("--holes", tr(HOLES_FORM)),
        ("--region", tr("what the holes lie in: 120 x 80 mm")),
        ("--behind", tr("sheet behind the holes: sound, thin, none (default none)")),
        ("--panel", tr("the whole panel's size, to weigh a patch against a new one")),
        ("--part", tr("what it belongs to: bracket, tank, towing, ...")),
        ("--process", tr("process for the seam of a patch: tig or mig")),
    ):
        group.add_argument(name, action=Once, metavar=name.removeprefix("--").upper(), help=what)
    coating = tr("what is on the metal: galvanised, old-paint, sealer, ...; may be given more than once")
    group.add_argument("--coating", action="append", default=[], metavar="COATING", help=coating)
    group.add_argument("--load-bearing", action="store_true", help=tr("it carries load"))
    group.add_argument("--water-trap", action="store_true", help=tr("water stands in or behind it"))
    files = parser.add_argument_group(tr("how the answer comes out"))
    add_file(files, "--html", tr("a page for the bench"))
    add_file(files, "--dxf", tr("the cut-out at full size, for a cutter"))
    add_file(files, "--svg", tr("holes, cut-out and tacks at full size, with a ruler to check the print by"))
    add_common(parser)
    return parser


def _damage(options: argparse.Namespace, session: Session) -> Damage:
    from welds.job.lengths import read_length, read_size, read_thickness, units_of
    from welds.reference.metals import find_metal

    missing = [name for name in _NEEDED if getattr(options, name) is None]
    if missing:
        raise InputError(f"--{missing[0]}", NOTHING, tr("metal, thickness, holes and region"))
    metal = find_metal(session.tables, options.metal)
    thickness = read_thickness(options.thickness, metal, session.tables, session.asked_units)
    units = session.asked_units or units_of(thickness)
    measured = options.measured
    return Damage(
        metal,
        thickness.mm,
        read_holes(options.holes, units),
        read_size(options.region, "region", units),
        enum_value(Behind, options.behind or "none", "--behind"),
        None if measured is None else read_length(measured, "measured", units),
        None if options.panel is None else read_size(options.panel, "panel", units),
        None if options.part is None else enum_value(Part, options.part, "--part"),
        options.load_bearing,
        options.water_trap,
        None if options.process is None else enum_value(Process, options.process, "--process"),
        tuple(enum_value(Coating, each, "--coating") for each in options.coating),
    )


def _rendered(answer: RepairAnswer, form: str, session: Session) -> str:
    from welds.report.plan_files import dxf_text, svg_text
    from welds.report.repair_texts import repair_drawing, repair_html, repair_text, repair_title

    if form in ("dxf", "svg"):
        title = repair_title(answer, session.units)
        drawing = repair_drawing(title, answer, None, Path(), session.units)
        return (dxf_text if form == "dxf" else svg_text)(drawing)
    return (repair_html if form == "html" else repair_text)(answer, session.units)
