"""A machine's own scales in the bench file: what a dial, a switch or a tap reads, and what it means.

Example::

    scales:
      wire_feed: {name: dial, unit: in/min, marks: {1: 60, 5: 280, 10: 600}}
      electrode_negative: {name: cleaning switch, only_marks: yes, marks: {low: 80, middle: 70, high: 60}}
"""

from collections.abc import Mapping
from itertools import pairwise

from welds.advice.equipment import SCALE, Control
from welds.bench.readers import Number, Place, choice, flag, mapping, not_usable, text
from welds.language import mark, tr
from welds.quantities.registry import convert
from welds.reference.strict_yaml import YamlMap

SCALED: Mapping[str, tuple[str, float, float]] = {
    "current": ("A", 1, 1000),
    "ac_frequency": ("Hz", 1, 1000),
    "electrode_negative": ("percent", 0, 100),
    "wire_feed": ("m/min", 0.1, 60),
    "voltage": ("V", 1, 100),
}
"""Setting -> its unit on the card, lowest and highest figure that can be meant."""

UNITS = {"in/min": "ipm", "m/min": "m/min"}
FIELDS = ("name", "unit", "only_marks", "marks")
EXAMPLE = mark("such as {name: dial, marks: {1: 1.5, 10: 12}}")


def read_scales(value: object, place: Place) -> tuple[Control, ...]:
    """Return one control for each scale."""
    found = mapping(value, place)
    return tuple(_scale(name, found[name], place.below(name, found.line_of[name])) for name in found)


def _scale(setting: str, value: object, place: Place) -> Control:
    if setting not in SCALED:
        raise place.error(not_usable(setting, SCALED))
    found = mapping(value, place, EXAMPLE)
    for field in found:
        if field not in FIELDS:
            raise place.below(field, found.line_of[field]).error(not_usable(field, FIELDS))
    if "marks" not in found:
        raise place.error(tr("marks are missing, {example}", example=tr(EXAMPLE)))
    marks = _marks(setting, found, place)
    only = "only_marks" in found and flag(
        found["only_marks"], place.below("only_marks", found.line_of["only_marks"])
    )
    name = text(found["name"], place.below("name", found.line_of["name"])) if "name" in found else SCALE
    return Control(setting, None, tuple(figure for _, figure in marks) if only else (), name, marks)


def _marks(setting: str, found: YamlMap, place: Place) -> tuple[tuple[str, float], ...]:
    here = place.below("marks", found.line_of["marks"])
    lines = mapping(found["marks"], here, EXAMPLE)
    unit, lowest, highest = SCALED[setting]
    given = unit
    if "unit" in found:
        at = place.below("unit", found.line_of["unit"])
        if setting != "wire_feed":
            raise at.error(tr("only wire_feed has a choice of units"))
        given = UNITS[choice(*UNITS)(found["unit"], at)]
    read = Number(0, 10_000) if given != unit else Number(lowest, highest)
    marks = []
    for read_as in lines:
        at = here.below(read_as, lines.line_of[read_as])
        figure = convert(read(lines[read_as], at), given, unit)
        if not lowest <= figure <= highest:
            raise at.error(
                tr(
                    "{value} is not usable; allowed: {lowest:g} to {highest:g} {unit}",
                    value=lines[read_as],
                    lowest=lowest,
                    highest=highest,
                    unit=unit,
                )
            )
        marks.append((read_as, round(figure, 3)))
    if len(marks) < 2:
        raise here.error(tr("at least two marks, so that what lies between can be read"))
    _check_order(marks, here)
    return tuple(marks)


def _check_order(marks: list[tuple[str, float]], place: Place) -> None:
    """Numbered marks have to go one way, or a figure would have two readings."""
    try:
        numbered = sorted((float(name.replace(",", ".")), figure) for name, figure in marks)
    except ValueError:
        if len({figure for _, figure in marks}) < len(marks):
            raise place.error(tr("two marks mean the same figure")) from None
        return
    steps = [second - first for (_, first), (_, second) in pairwise(numbered)]
    if not (all(step > 0 for step in steps) or all(step < 0 for step in steps)):
        raise place.error(tr("figures must rise or fall all the way along a numbered scale"))
