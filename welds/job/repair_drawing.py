"""A repair as a picture: the holes over their photograph or a grid, the cut, tacks and runs by number."""

from collections.abc import Iterator, Sequence
from math import ceil, cos, pi, sin, sqrt
from pathlib import Path

from welds.job.blank_drawing import LengthText, ruler, ruler_words
from welds.job.damage import Damage
from welds.job.hole_drawing import HoleDrawing
from welds.job.patch import PatchPlan
from welds.job.plan_drawing import Layer, Picture, PlanDrawing, Point, Stroke, Words, rectangle
from welds.job.repair import Choice, RepairAnswer
from welds.language import tr

_LETTERS = 42.0
"""The longer side is so many letters long."""
_ROUND = 24
_PER_RUN = 16
_MOST_LINES = 60

Hole = tuple[Point, float]


def draw_repair(
    name: str,
    answer: RepairAnswer,
    drawing: HoleDrawing | None,
    folder: Path | None,
    grid_mm: float,
    length_text: LengthText,
) -> PlanDrawing:
    """Return the drawing at full size; the middle of the holes is the middle of the region.

    Without a drawing the holes are spread evenly over the region, and it says so.
    """
    damage, patch = answer.damage, answer.patch
    holes = _drawn(drawing) if drawing is not None else _spread(damage)
    middle = _middle(holes) if drawing is not None else (0.0, 0.0)
    outer = patch.blank_mm if answer.choice is Choice.PATCH else damage.region_mm
    letter = max(outer) / _LETTERS
    reach = tuple(side / 2.0 + 5.0 * letter for side in outer)
    strokes = [*_grid(middle, reach, grid_mm)] if drawing is None else []
    strokes += [_circle(at, diameter / 2.0, Layer.SECTION) for at, diameter in holes]
    strokes.append(_around(middle, damage.region_mm, Layer.CURVE))
    notes = [tr("region {size} (dotted)", size=_size(damage.region_mm, length_text))]
    words: list[Words] = []
    if answer.choice is Choice.PATCH:
        seam = _Seam(middle, patch)
        strokes += [*seam.strokes(), *seam.ticks(letter), *seam.arrows(letter)]
        words += [*seam.numbers(letter)]
        notes += _patch_notes(patch, length_text)
    elif answer.choice is Choice.PLUG and answer.plug is not None:
        drill = answer.plug.drill_mm
        strokes += [_circle(at, drill / 2.0, Layer.OUTLINE) for at, _ in holes]
        notes.append(tr("drill each hole to {diameter}", diameter=length_text(drill)))
        if drawing is not None:
            words += _turns(holes, damage, drill, letter)
            notes.append(tr("fill them in the order of the numbers"))
    if drawing is None:
        notes.append(tr("holes spread evenly: their places were not drawn"))
    foot = middle[1] - reach[1]
    words += [
        Words((middle[0] - reach[0], foot - 2.0 * letter * row), line, letter, Layer.NOTE, is_centred=False)
        for row, line in enumerate(notes, 1)
    ]
    under = (middle[0] - reach[0], foot - 2.0 * letter * (len(notes) + 1))
    strokes += ruler(under, letter)
    words.append(ruler_words(under, letter))
    head = (middle[0] - reach[0], middle[1] + reach[1] + letter)
    words.append(Words(head, name, letter, Layer.NOTE, is_centred=False))
    return PlanDrawing(name, tuple(strokes), tuple(words), _picture(drawing, folder))


class _Seam:
    """The edge of the cut-out, gone round clockwise from the left end of its upper side."""

    def __init__(self, middle: Point, patch: PatchPlan) -> None:
        self._middle, self._patch = middle, patch
        self._radius = patch.corner_radius_mm
        self._half = (patch.cut_mm[0] / 2.0 - self._radius, patch.cut_mm[1] / 2.0 - self._radius)

    def at(self, place_mm: float, outward: float = 0.0) -> Point:
        """Return the point so far along the edge, moved outward."""
        left = place_mm % self._patch.seam_mm
        corner = pi * self._radius / 2.0
        for number in range(4):
            heading = pi / 2.0 - number * pi / 2.0
            straight = 2.0 * self._half[number % 2]
            across, along = (cos(heading), sin(heading)), (sin(heading), -cos(heading))
            far = self._half[1 - number % 2]
            if left <= straight:
                out, on = far + self._radius + outward, left - straight / 2.0
                return self._place(across[0] * out + along[0] * on, across[1] * out + along[1] * on)
            left -= straight
            if left <= corner or number == 3:
                angle = heading - left / self._radius
                x = across[0] * far + along[0] * straight / 2.0
                y = across[1] * far + along[1] * straight / 2.0
                reach = self._radius + outward
                return self._place(x + cos(angle) * reach, y + sin(angle) * reach)
            left -= corner
        raise AssertionError("the edge has four sides")

    def _place(self, x: float, y: float) -> Point:
        return self._middle[0] + x, self._middle[1] + y

    def strokes(self) -> Iterator[Stroke]:
        """Yield the edge of the hole to cut, and of a lapped patch over it."""
        yield self._round(0.0, Layer.OUTLINE)
        if self._patch.lap_mm:
            yield self._round(self._patch.lap_mm, Layer.BEND)

    def _round(self, outward: float, layer: Layer) -> Stroke:
        steps = 8 * _ROUND
        points = (self.at(self._patch.seam_mm * n / steps, outward) for n in range(steps))
        return Stroke(tuple(points), layer, is_closed=True)

    def ticks(self, letter: float) -> Iterator[Stroke]:
        """Yield a short line across the edge at every tack."""
        for place in self._patch.tacks.tacks_mm:
            yield Stroke((self.at(place, -0.6 * letter), self.at(place, 0.6 * letter)), Layer.SECTION)

    def arrows(self, letter: float) -> Iterator[Stroke]:
        """Yield the runs inside the edge, each with its head."""
        for run in self._patch.tacks.runs if len(self._patch.tacks.runs) > 1 else ():
            way = 1.0 if run.end_mm > run.start_mm else -1.0
            start, end = run.start_mm + way * letter / 2.0, run.end_mm - way * letter / 2.0
            steps = (start + (end - start) * n / _PER_RUN for n in range(_PER_RUN + 1))
            yield Stroke(tuple(self.at(step, -1.5 * letter) for step in steps), Layer.DIMENSION)
            back = end - way * 0.8 * letter
            head = (self.at(back, -1.1 * letter), self.at(end, -1.5 * letter), self.at(back, -1.9 * letter))
            yield Stroke(head, Layer.DIMENSION)

    def numbers(self, letter: float) -> Iterator[Words]:
        """Yield the order of the tacks outside the edge and of the runs inside."""
        tacks = self._patch.tacks
        for number, place in enumerate(tacks.tacks_mm, 1):
            yield _number(self.at(place, self._patch.lap_mm + 1.4 * letter), number, letter, Layer.SECTION)
        for number, run in enumerate(tacks.runs if len(tacks.runs) > 1 else (), 1):
            middle = (run.start_mm + run.end_mm) / 2.0
            yield _number(self.at(middle, -2.8 * letter), number, letter, Layer.BEND)


def _number(at: Point, number: int, letter: float, layer: Layer) -> Words:
    return Words((at[0], at[1] - letter / 2.0), str(number), letter, layer)


def _turns(holes: Sequence[Hole], damage: Damage, drill: float, letter: float) -> Iterator[Words]:
    """Number the plugs from the ends of the region by turns, so that the heat spreads."""
    axis = 0 if damage.region_mm[0] >= damage.region_mm[1] else 1
    waiting = sorted((at for at, _ in holes), key=lambda at: at[axis])
    for number in range(1, len(holes) + 1):
        x, y = waiting.pop(0 if number % 2 else -1)
        yield Words((x, y + drill / 2.0 + 0.4 * letter), str(number), letter, Layer.SECTION)


def _patch_notes(patch: PatchPlan, length_text: LengthText) -> Iterator[str]:
    yield tr(
        "cut out {size}, corners {radius}",
        size=_size(patch.cut_mm, length_text),
        radius=length_text(patch.corner_radius_mm),
    )
    lap = (
        tr("{lap} over the edge (dashed)", lap=length_text(patch.lap_mm))
        if patch.lap_mm
        else tr("ground to fit")
    )
    yield tr("patch {size}, {lap}", size=_size(patch.blank_mm, length_text), lap=lap)
    yield tr("tacks outside, runs inside, by number in their order")


def _size(sides: tuple[float, float], length_text: LengthText) -> str:
    return " x ".join(length_text(side) for side in sides)


def _drawn(drawing: HoleDrawing) -> list[Hole]:
    scale = drawing.scale.px_per_mm
    return [((hole.at[0] / scale, -hole.at[1] / scale), hole.diameter_mm) for hole in drawing.holes]


def _spread(damage: Damage) -> list[Hole]:
    length, width = damage.region_mm
    sizes = sorted((each.diameter_mm for each in damage.holes for _ in range(each.count)), reverse=True)
    columns = min(len(sizes), max(1, ceil(sqrt(len(sizes) * length / width))))
    rows = ceil(len(sizes) / columns)
    return [
        (
            (
                ((n % columns) + 0.5) / columns * length - length / 2.0,
                width / 2.0 - (n // columns + 0.5) / rows * width,
            ),
            size,
        )
        for n, size in enumerate(sizes)
    ]


def _middle(holes: Sequence[Hole]) -> Point:
    ends = [
        (min(at[axis] - size / 2.0 for at, size in holes), max(at[axis] + size / 2.0 for at, size in holes))
        for axis in (0, 1)
    ]
    return sum(ends[0]) / 2.0, sum(ends[1]) / 2.0


def _around(middle: Point, size: tuple[float, float], layer: Layer) -> Stroke:
    return rectangle(middle[0] - size[0] / 2.0, middle[1] - size[1] / 2.0, *size, layer)


def _circle(at: Point, radius: float, layer: Layer) -> Stroke:
    angles = (2.0 * pi * n / _ROUND for n in range(_ROUND))
    points = tuple((at[0] + radius * cos(angle), at[1] + radius * sin(angle)) for angle in angles)
    return Stroke(points, layer, is_closed=True)


def _grid(middle: Point, reach: Sequence[float], step: float) -> Iterator[Stroke]:
    if max(reach) / step > _MOST_LINES:
        return
    left, right = middle[0] - reach[0], middle[0] + reach[0]
    bottom, top = middle[1] - reach[1], middle[1] + reach[1]
    for n in range(-int(reach[0] / step), int(reach[0] / step) + 1):
        x = middle[0] + n * step
        yield Stroke(((x, bottom), (x, top)), Layer.GRID)
    for n in range(-int(reach[1] / step), int(reach[1] / step) + 1):
        y = middle[1] + n * step
        yield Stroke(((left, y), (right, y)), Layer.GRID)


def _picture(drawing: HoleDrawing | None, folder: Path | None) -> Picture | None:
    if drawing is None or folder is None:
        return None
    return Picture(folder / drawing.picture, drawing.scale.px_per_mm)
