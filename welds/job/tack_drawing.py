"""A seam drawn out straight: tacks numbered as they are made, runs as numbered arrows."""

from collections.abc import Iterator

from welds.job.plan_drawing import Layer, PlanDrawing, Stroke, Words, rectangle
from welds.job.tack_plan import TackPlan
from welds.language import tr

_WIDTH = 170.0
_SHEET = 14.0
_LETTER = 2.8
_ARROW = 1.6
_STEP = 4.0


def draw_tacks(name: str, plan: TackPlan) -> PlanDrawing:
    """Return the drawing; the length is to scale along the seam only."""
    scale = _WIDTH / plan.length_mm
    strokes = [
        rectangle(0.0, 0.0, _WIDTH, _SHEET, Layer.OUTLINE),
        rectangle(0.0, -_SHEET, _WIDTH, _SHEET, Layer.OUTLINE),
    ]
    words = [Words((0.0, _SHEET + 5.0), name, _LETTER, Layer.NOTE, is_centred=False)]
    for number, place in enumerate(plan.tacks_mm, 1):
        x = place * scale
        strokes.append(Stroke(((x, -1.5), (x, 1.5)), Layer.SECTION))
        words.append(Words((x, 3.0 + _STEP * ((number - 1) % 2)), str(number), _LETTER, Layer.SECTION))
    if len(plan.runs) > 1:
        for number, run in enumerate(plan.runs, 1):
            start, end = run.start_mm * scale, run.end_mm * scale
            strokes += _arrow(start, end, -_SHEET / 2.0)
            words.append(Words(((start + end) / 2.0, -_SHEET + 1.5), str(number), _LETTER, Layer.BEND))
    far_end = tr("back at the start") if plan.is_closed else f"{plan.length_mm:.0f} mm"
    words += [
        Words((0.0, -_SHEET - 4.5), "0", _LETTER, Layer.DIMENSION),
        Words((_WIDTH, -_SHEET - 4.5), far_end, _LETTER, Layer.DIMENSION),
    ]
    return PlanDrawing(name, tuple(strokes), tuple(words))


def _arrow(start: float, end: float, height: float) -> Iterator[Stroke]:
    back = _ARROW if end < start else -_ARROW
    yield Stroke(((start, height), (end, height)), Layer.DIMENSION)
    yield Stroke(
        ((end + back, height + _ARROW / 2.0), (end, height), (end + back, height - _ARROW / 2.0)),
        Layer.DIMENSION,
    )
