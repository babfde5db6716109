"""The flat with its bend lines and dimensions, the folded section below it, a ruler to check the print by."""

from collections.abc import Callable, Iterator
from math import cos, dist, sin

from welds.job.blank import Blank
from welds.job.fold import Section, fold, outline
from welds.job.plan_drawing import Layer, PlanDrawing, Point, Stroke, Words, rectangle
from welds.language import tr

RULER_MM = 100.0
_LETTERS = (2.5, 12.0)
_USUAL_WIDTH = 0.4
"""Drawn width over length where the part's own width is not given."""

LengthText = Callable[[float], str]


def draw_blank(name: str, blank: Blank, width_mm: float | None, length_text: LengthText) -> PlanDrawing:
    """Return the drawing at full size, the flat's near corner at the origin."""
    length = blank.length_mm
    width = width_mm or length * _USUAL_WIDTH
    letter = min(_LETTERS[1], max(_LETTERS[0], length / 50.0))
    strokes = [rectangle(0.0, 0.0, length, width, Layer.OUTLINE), *_bend_lines(blank, width)]
    words = list(_bend_words(blank, width, letter, length_text))
    strokes += _dimension(0.0, length, width + 6.0 * letter, letter)
    words.append(Words((length / 2.0, width + 6.5 * letter), length_text(length), letter, Layer.DIMENSION))
    if width_mm:
        words.append(
            Words(
                (length + letter, width / 2.0), length_text(width), letter, Layer.DIMENSION, is_centred=False
            )
        )
    section = _longest_leg_level(fold(blank))
    lowest = -4.0 * letter - max(y for _, y in section)
    shift = -min(x for x, _ in section)
    folded = tuple((x + shift, y + lowest) for x, y in section)
    strokes.append(Stroke(folded, Layer.SECTION, is_closed=True))
    under = min(y for _, y in folded) - 4.0 * letter
    strokes += ruler((0.0, under), letter)
    words.append(ruler_words((0.0, under), letter))
    words.append(Words((0.0, width + 10.0 * letter), name, letter, Layer.NOTE, is_centred=False))
    return PlanDrawing(name, tuple(strokes), tuple(words))


def _longest_leg_level(section: Section) -> list[Point]:
    """Turn the section so that it lies as the part would on the bench."""
    longest = max(section.straights, key=lambda run: dist(run.start, run.end))
    c, s = cos(-longest.heading), sin(-longest.heading)
    return [(x * c - y * s, x * s + y * c) for x, y in outline(section)]


def _bend_lines(blank: Blank, width: float) -> Iterator[Stroke]:
    for line in blank.lines:
        yield Stroke(((line.middle_mm, 0.0), (line.middle_mm, width)), Layer.BEND)
        for edge in (line.start_mm, line.start_mm + line.allowance_mm):
            yield Stroke(((edge, 0.0), (edge, width)), Layer.CURVE)


def _bend_words(blank: Blank, width: float, letter: float, length_text: LengthText) -> Iterator[Words]:
    for line in blank.lines:
        angle, radius = line.bend.angle_deg, length_text(line.bend.radius_mm)
        turn = (
            tr("{angle:g} deg up, r {radius}", angle=angle, radius=radius)
            if line.bend.is_up
            else tr("{angle:g} deg down, r {radius}", angle=angle, radius=radius)
        )
        yield Words((line.middle_mm, width + 3.0 * letter), turn, letter, Layer.BEND)
        yield Words((line.middle_mm, width + letter), length_text(line.middle_mm), letter, Layer.DIMENSION)


def _dimension(left: float, right: float, height: float, letter: float) -> Iterator[Stroke]:
    yield Stroke(((left, height), (right, height)), Layer.DIMENSION)
    for x in (left, right):
        yield Stroke(((x, height - letter / 2.0), (x, height + letter / 2.0)), Layer.DIMENSION)


def ruler(at: Point, letter: float) -> Iterator[Stroke]:
    """Yield a ruler from its left end, its marks downward."""
    left, top = at
    yield Stroke(((left, top), (left + RULER_MM, top)), Layer.RULER)
    for step in range(11):
        tall = letter if step % 5 == 0 else letter / 2.0
        x = left + RULER_MM * step / 10.0
        yield Stroke(((x, top), (x, top - tall)), Layer.RULER)


def ruler_words(at: Point, letter: float) -> Words:
    """Return what stands below the ruler."""
    text = tr("check ruler, {length:g} mm long when printed at full size", length=RULER_MM)
    return Words((at[0], at[1] - 3.0 * letter), text, letter, Layer.RULER, is_centred=False)
