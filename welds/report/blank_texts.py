"""A blank as text, HTML and JSON."""

import textwrap
from collections.abc import Iterator, Mapping
from html import escape
from typing import Any

from welds.job.blank import Dimensions
from welds.job.blank_answer import BlankAnswer
from welds.language import mark, tr
from welds.quantities.units import Units
from welds.reference.sources import Source
from welds.report.cut_length import both_lengths, cut_length
from welds.report.html_page import page, table
from welds.report.wording import verdict

SCHEMA = "welds.blank/1"
_WIDTH = 90
_DOCUMENTS = {
    "standard": mark("association's table"),
    "inch-table": mark("design handbook, inches"),
    "shop": mark("shop practice"),
}
_MEASURED = {
    Dimensions.OUTSIDE: mark("outside"),
    Dimensions.INSIDE: mark("inside"),
    Dimensions.OVERALL: mark("overall"),
}


def blank_title(answer: BlankAnswer, units: Units) -> str:
    """Return what the blank is for: "Blank, 5052-H32, 2.0 mm (0.080 in), 3 legs"."""
    part = answer.blank.part
    temper = f"-{answer.metal.temper}" if answer.metal.temper else ""
    legs = tr("{number} legs", number=len(part.legs_mm)) if part.bends else tr("flat")
    return tr(
        "Blank, {metal}, {thickness}, {legs}",
        metal=answer.metal.id + temper,
        thickness=both_lengths(part.thickness_mm, units),
        legs=legs,
    )


def blank_text(answer: BlankAnswer, units: Units, sources: Mapping[str, Source]) -> str:
    """Return the blank for a terminal."""
    parts = [
        [
            blank_title(answer, units),
            tr("legs measured {where}", where=tr(_MEASURED[answer.blank.part.dimensions])),
        ],
        [line for each in flat_lines(answer, units) for line in _wrapped(each)],
        [line for each in radius_lines(answer, units) for line in _wrapped(each)],
        [line for note in answer.notes for line in _wrapped(f"- {note}")],
        [tr("Other methods").upper(), *(f"  {line}" for line in method_lines(answer, units))]
        if answer.methods
        else [],
        [
            tr("Sources").upper(),
            *(line for each in source_lines(answer, sources) for line in _wrapped(f"  {each}")),
        ],
    ]
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def flat_lines(answer: BlankAnswer, units: Units) -> Iterator[str]:
    """Yield the flat length and each bend line, one a line."""
    blank = answer.blank
    yield tr("Flat length {length}", length=both_lengths(blank.length_mm, units))
    if answer.high_mm - answer.low_mm >= 0.05:
        yield (
            tr(
                "  between {low} and {high} by the methods in use; one test bend on your brake narrows that",
                low=cut_length(answer.low_mm, units),
                high=cut_length(answer.high_mm, units),
            )
        )
    if answer.width_mm is not None:
        yield tr("Width {length}", length=both_lengths(answer.width_mm, units))
    for number, (line, k) in enumerate(zip(blank.lines, answer.ks, strict=True), 1):
        way = tr("up") if line.bend.is_up else tr("down")
        yield (
            tr(
                "Bend {number}: {angle:g} deg {way}, line at {line}, inside radius {radius},"
                " allowance {allowance}, deduction {deduction}, K {k:.3f} ({method}, {grade})",
                number=number,
                angle=line.bend.angle_deg,
                way=way,
                line=cut_length(line.middle_mm, units),
                radius=cut_length(line.bend.radius_mm, units),
                allowance=cut_length(line.allowance_mm, units),
                deduction=cut_length(line.deduction_mm, units),
                k=k.k,
                method=k.method,
                grade=k.basis.word,
            )
        )


def radius_lines(answer: BlankAnswer, units: Units) -> Iterator[str]:
    """Yield the verdict on the radius and what each document asks."""
    if answer.tightest_mm is None or not answer.radii:
        return
    asked = tr(
        "Least inside radius, {verdict}: {radius} asked",
        verdict=verdict(bool(answer.is_wide_enough)),
        radius=cut_length(answer.tightest_mm, units),
    )
    yield asked + ", " + tr("bend line along the rolling direction") if answer.is_along_grain else asked
    for reading in answer.radii:
        wants = (
            tr("advises against it") if reading.radius_mm is None else cut_length(reading.radius_mm, units)
        )
        note = f"; {reading.note}" if reading.note else ""
        document = tr(_DOCUMENTS[reading.document])
        yield f"  {document}: {wants} ({reading.basis.word}{note}) [{reading.source}]"


def method_lines(answer: BlankAnswer, units: Units) -> Iterator[str]:
    """Yield the flat length by each method."""
    for each in answer.methods:
        yield f"{each.method}: {cut_length(each.length_mm, units)} ({each.basis.word}) [{each.source}]"


def source_lines(answer: BlankAnswer, sources: Mapping[str, Source]) -> Iterator[str]:
    """Yield one line for each source."""
    ids = [k.source for k in answer.ks]
    ids += [each.source for each in answer.methods] + [each.source for each in answer.radii]
    for key in dict.fromkeys(ids):
        yield f"{key}: {sources[key].citation if key in sources else tr('no citation')}"


def blank_html(answer: BlankAnswer, units: Units, sources: Mapping[str, Source]) -> str:
    """Return the blank as a page."""
    return page(blank_title(answer, units), blank_body(answer, units, sources))


def blank_body(answer: BlankAnswer, units: Units, sources: Mapping[str, Source], name: str = "") -> str:
    """Return the blank's part of a page, escaped."""
    title = blank_title(answer, units)
    figures = [f"<tr><td>{escape(line)}</td></tr>" for line in flat_lines(answer, units)]
    says = [*radius_lines(answer, units), *answer.notes, *method_lines(answer, units)]
    cited, head = "; ".join(source_lines(answer, sources)), escape(tr("Sources"))
    return (
        f'<p class="title">{escape(name or title)}</p><p class="subtitle">{escape(title)}</p>'
        + table(figures, border=1, padding=3)
        + "".join(f"<p>{escape(line)}</p>" for line in says)
        + f'<p class="foot"><b>{head}</b> {escape(cited)}</p>'
    )


def blank_json(answer: BlankAnswer) -> dict[str, Any]:
    """Return the blank as plain dictionaries, always metric."""
    blank, part = answer.blank, answer.blank.part
    least = answer.minimum_radius_mm
    return {
        "schema": SCHEMA,
        "metal": answer.metal.id + (f"-{answer.metal.temper}" if answer.metal.temper else ""),
        "thickness_mm": part.thickness_mm,
        "legs_mm": list(part.legs_mm),
        "dims": part.dimensions.value,
        "flat_length_mm": round(blank.length_mm, 6),
        "flat_length_low_mm": round(answer.low_mm, 6),
        "flat_length_high_mm": round(answer.high_mm, 6),
        "width_mm": answer.width_mm,
        "bends": [
            {
                "angle_deg": line.bend.angle_deg if line.bend.is_up else -line.bend.angle_deg,
                "radius_mm": line.bend.radius_mm,
                "allowance_mm": round(line.allowance_mm, 6),
                "deduction_mm": round(line.deduction_mm, 6),
                "k": round(line.k, 6),
                "line_mm": round(line.middle_mm, 6),
                "method": k.method,
                "basis": k.basis.value,
                "source": k.source,
            }
            for line, k in zip(blank.lines, answer.ks, strict=True)
        ],
        "minimum_radius_mm": None if least is None else round(least, 4),
        "ok": answer.is_wide_enough,
        "radii": [
            {
                "document": each.document,
                "radius_mm": None if each.radius_mm is None else round(each.radius_mm, 4),
                "row": each.row,
                "source": each.source,
                "basis": each.basis.value,
            }
            for each in answer.radii
        ],
        "methods": [
            {
                "method": each.method,
                "flat_length_mm": round(each.length_mm, 4),
                "basis": each.basis.value,
                "source": each.source,
            }
            for each in answer.methods
        ],
        "relief_hole_mm": answer.relief_mm,
        "notes": list(answer.notes),
    }


def _wrapped(text: str) -> list[str]:
    return textwrap.wrap(text, _WIDTH, subsequent_indent="    ")
