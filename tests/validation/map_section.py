"""The coverage map and the grades of its cards, as Markdown."""

from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import groupby

from tests.validation.coverage_map import SHEETS_MM, Asked
from tests.validation.groups import table
from welds.advice.request import Joint, Process
from welds.reference.basis import Basis

GRADES = """\
Share of the cards of the map below, by the grade that the card shows. On practice or memory alone, always:
"""
MAP = """\
{all} requests in flat position: every metal, joint and process at {sheets} thicknesses from {thinnest:g} to
{thickest:g} mm. {answered} were answered, {refused} refused with a reason, none passed over in silence
(`tests/validation/test_coverage_map.py`, which also follows each refusal to the case it names). A cell has
the thinnest and the thickest of these sheets that are answered, in mm, and for how many of them the current
is published rather than practice or memory.
"""


def settings_section(asked: Iterable[Asked]) -> str:
    counts: dict[str, Counter[Basis]] = {}
    for each in asked:
        for name, grade in each.grades.items():
            counts.setdefault(name, Counter())[grade] += 1
    unpublished = [
        name for name, grades in sorted(counts.items()) if not any(grade.is_published for grade in grades)
    ]
    rows = [
        (name, sum(grades.values()), *(_share(grades[grade], sum(grades.values())) for grade in Basis))
        for name, grades in sorted(counts.items())
    ]
    return "\n".join(
        [
            "## What settings rest on",
            "",
            f"{GRADES}{', '.join(unpublished)}.",
            "",
            table(("setting", ":cards", *(f":{grade}" for grade in Basis)), rows),
            "",
        ]
    )


def _share(part: int, whole: int) -> str:
    return f"{part / whole:.0%}" if part else ""


def coverage_section(asked: Sequence[Asked]) -> str:
    answered = [each for each in asked if each.refusal is None]
    parts = [
        "## Coverage map",
        "",
        MAP.format(
            all=len(asked),
            sheets=len(SHEETS_MM),
            thinnest=min(SHEETS_MM),
            thickest=max(SHEETS_MM),
            answered=len(answered),
            refused=len(asked) - len(answered),
        ),
    ]
    for process in Process:
        lines: dict[tuple[str, ...], list[str]] = {}
        for metal, line in groupby(
            (each for each in asked if each.request.process is process), key=lambda each: each.request.metal
        ):
            cells = {joint: _cell(list(each)) for joint, each in groupby(line, key=lambda e: e.request.joint)}
            lines.setdefault(tuple(cells[joint] for joint in Joint), []).append(metal)
        rows = [(", ".join(metals), *cells) for cells, metals in lines.items()]
        parts += [f"### {process.upper()}", "", table(("metal", *Joint), rows), ""]
    reasons = Counter(each.reason for each in asked if each.refusal is not None)
    rows = [(words, count) for words, count in sorted(reasons.items(), key=lambda item: (-item[1], item[0]))]
    return "\n".join([*parts, "### Why requests were refused", "", table(("reason", ":requests"), rows), ""])


def _cell(line: Sequence[Asked]) -> str:
    answered = [each for each in line if each.refusal is None]
    if not answered:
        return "refused"
    sheets = [each.request.thickness_mm for each in answered]
    published_ones = sum(each.grades["current"].is_published for each in answered)
    return f"{min(sheets):g} to {max(sheets):g}, {published_ones} of {len(answered)}"
