"""`welds blank`: the flat of a folded part, its bend lines, and whether the sheet stands the radius."""

import argparse
import re
from collections.abc import Sequence

from welds.advice.validate import enum_value
from welds.cli.arguments import Once, Parser, add_common, add_file
from welds.cli.card import WritePdf
from welds.cli.output import check_writable, destinations, print_json, print_text, write_text
from welds.cli.session import Session, open_session
from welds.errors import NOTHING, InputError
from welds.job.bend_radius import Grain
from welds.job.blank import Bend, Dimensions, FoldedPart
from welds.job.blank_answer import BlankAnswer, answer_blank
from welds.job.blank_drawing import draw_blank
from welds.job.plan_drawing import PlanDrawing
from welds.language import mark, tr
from welds.quantities.units import Units
from welds.reference.metals import Metal

DESCRIPTION = mark(
    "Flat length of any sequence of bends, with bend lines, allowances and the least radius. Angles are"
    " turned through: 90 is a square bend, a minus bends the other way."
)
_FILES = ("html", "dxf", "svg", "pdf")
_NEEDED = ("metal", "thickness", "legs")


def run(argv: Sequence[str], write_pdf: WritePdf) -> None:
    """Lay the part out flat, then print or write it."""
    options = _parser().read(_with_negative_angles(argv))
    out = destinations(options, _FILES, ("json",))
    session = open_session(options)
    answer = _answer(options, session)
    for form, file in out.files.items():
        if form == "pdf":
            check_writable(file)
            write_pdf(file, _drawing(answer, session), session.units, session.tables.sources)
            print_text(tr("written: {file}", file=file))
        else:
            write_text(file, _rendered(answer, form, session))
    if out.on_stdout == "json":
        from welds.report.blank_texts import blank_json

        print_json(blank_json(answer))
    elif not out.is_silent:
        print_text(_rendered(answer, out.on_stdout or "text", session))


def _parser() -> Parser:
    parser = Parser("welds blank", tr(DESCRIPTION))
    group = parser.add_argument_group(tr("the part"))
    for name, what in (
        ("--metal", tr("catalogue id with its temper: 5052-H32, 6061-T6, low-carbon, 304")),
        ("--thickness", tr("2 mm, 0.080 in, 14 ga")),
        ("--radius", tr("inside radius, one for all bends or one each: 3 mm or 3,3,5 mm")),
        ("--legs", tr("lengths in order: 30,300,30 mm")),
        ("--angles", tr("angles in order: 90,90; a minus bends the other way")),
        ("--dims", tr("what the legs are measured to: outside, inside, overall (default outside)")),
        ("--width", tr("the side that is not folded, for the drawing")),
        ("--grain", tr("bend line to the rolling direction: across or along (default across)")),
        ("--k", tr("K, where you know it")),
        (
            "--test-bend",
            tr("one bend measured on your brake: flat=100 mm; legs=52 x 51.5 mm; angle=90; radius=2 mm"),
        ),
        ("--brake", tr("a name for your brake: keeps the K of --test-bend, or uses the one kept")),
    ):
        group.add_argument(name, action=Once, metavar=name.removeprefix("--").upper(), help=what)
    files = parser.add_argument_group(tr("how the blank comes out"))
    add_file(files, "--html", tr("a page with every figure"))
    add_file(files, "--dxf", tr("drawing at full size for a cutter"))
    add_file(files, "--svg", tr("drawing at full size, with a ruler to check the print by"))
    add_file(files, "--pdf", tr("the same on one sheet as large as it needs"), needs_name=True)
    add_common(parser)
    return parser


def _with_negative_angles(argv: Sequence[str]) -> list[str]:
    """Join --angles and a list that begins with a minus, which argparse would take for an option."""
    joined: list[str] = []
    for word in argv:
        if joined and joined[-1] == "--angles" and re.match(r"-\d", word):
            joined[-1] = f"--angles={word}"
        else:
            joined.append(word)
    return joined


def _answer(options: argparse.Namespace, session: Session) -> BlankAnswer:
    from welds.job.lengths import read_length, read_lengths, read_thickness, units_of
    from welds.reference.metals import find_metal

    missing = [name for name in _NEEDED if getattr(options, name) is None]
    if missing:
        raise InputError(
            f"--{missing[0]}", NOTHING, tr("metal, thickness, legs; and angles and radius for a bend")
        )
    metal = find_metal(session.tables, options.metal)
    thickness = read_thickness(options.thickness, metal, session.tables, session.asked_units)
    units = session.asked_units or units_of(thickness)
    dimensions = enum_value(Dimensions, options.dims or "outside", "--dims")
    legs = read_lengths(options.legs, "legs", units)
    bends = _bends(options, len(legs), units)
    part = FoldedPart(thickness.mm, legs, bends, dimensions)
    known_k, k_from = _known_k(options, metal, thickness.mm, units)
    return answer_blank(
        session.tables,
        metal,
        part,
        width_mm=read_length(options.width, "width", units) if options.width is not None else None,
        known_k=known_k,
        k_from=k_from,
        is_along_grain=enum_value(Grain, options.grain or "across", "--grain") is Grain.ALONG,
    )


def _bends(options: argparse.Namespace, legs: int, units: Units | None) -> tuple[Bend, ...]:
    from welds.job.calibration import read_angle
    from welds.job.lengths import read_lengths

    if options.angles is None:
        if legs == 1:
            return ()
        raise InputError(
            "--angles", NOTHING, tr("{angles} for {legs} legs, such as 90", angles=legs - 1, legs=legs)
        )
    angles = [read_angle(each, "angles") for each in re.split(r"[,;]", options.angles)]
    if options.radius is None:
        raise InputError("--radius", NOTHING, tr("the inside radius of the bends, such as 3 mm"))
    radii = read_lengths(options.radius, "radius", units)
    if len(radii) == 1:
        radii = radii * len(angles)
    if len(radii) != len(angles):
        raise InputError(
            "--radius",
            tr("{number} radii", number=len(radii)),
            tr("one for all, or one for each of {number} bends", number=len(angles)),
        )
    return tuple(Bend(abs(angle), radius, angle > 0.0) for angle, radius in zip(angles, radii, strict=True))


def _known_k(
    options: argparse.Namespace, metal: Metal, thickness_mm: float, units: Units | None
) -> tuple[float | None, str]:
    from welds.job.brake_book import BrakeK, book_file, in_temper, k_of_brake, keep
    from welds.job.calibration import read_test_bend

    if options.k is not None:
        if options.test_bend is not None or options.brake is not None:
            raise InputError("--k", options.k, tr("K, or a test bend or brake, not both"))
        try:
            return float(options.k), tr("given")
        except ValueError:
            raise InputError("--k", options.k, tr("a number such as 0.42")) from None
    named = in_temper(metal)
    if options.test_bend is not None:
        test = read_test_bend(options.test_bend, units)
        k = test.k(thickness_mm)
        if options.brake is not None:
            keep(book_file(), BrakeK(options.brake, named, thickness_mm, test.radius_mm, round(k, 4)))
        return k, tr("test bend")
    if options.brake is not None:
        return k_of_brake(book_file(), options.brake, named, thickness_mm).k, tr(
            "test bend on {brake}", brake=options.brake
        )
    return None, ""


def _drawing(answer: BlankAnswer, session: Session) -> PlanDrawing:
    from welds.report.blank_texts import blank_title
    from welds.report.cut_length import cut_length

    units = session.units
    title = blank_title(answer, units)
    return draw_blank(title, answer.blank, answer.width_mm, lambda mm: cut_length(mm, units))


def _rendered(answer: BlankAnswer, form: str, session: Session) -> str:
    from welds.report.blank_texts import blank_html, blank_text
    from welds.report.plan_files import dxf_text, svg_text

    if form == "dxf":
        return dxf_text(_drawing(answer, session))
    if form == "svg":
        return svg_text(_drawing(answer, session))
    render = blank_html if form == "html" else blank_text
    return render(answer, session.units, session.tables.sources)
