"""The order as a picture: what has to come first stands further left, with a line to what waits for it."""

from collections.abc import Sequence

from welds.job.order import Turn
from welds.job.plan_drawing import Layer, PlanDrawing, Stroke, Words, rectangle
from welds.language import tr

_BOX = (56.0, 7.0)
_GAP = (14.0, 3.0)
_LETTER = 2.6
_MOST_LETTERS = 30


def draw_order(turns: Sequence[Turn]) -> PlanDrawing:
    """Return the drawing; boxes carry the number in the order and the id."""
    rows: dict[int, int] = {}
    corners = {}
    strokes, words = [], []
    for number, turn in enumerate(turns, 1):
        row = rows.get(turn.level, 0)
        rows[turn.level] = row + 1
        left, bottom = turn.level * (_BOX[0] + _GAP[0]), -row * (_BOX[1] + _GAP[1])
        corners[turn.id] = (left, bottom + _BOX[1] / 2.0)
        strokes.append(rectangle(left, bottom, *_BOX, Layer.OUTLINE))
        text = f"{number} {turn.id}"[:_MOST_LETTERS] + (tr(" (done)") if turn.is_done else "")
        words.append(Words((left + 1.5, bottom + 2.4), text, _LETTER, Layer.NOTE, is_centred=False))
        for need in turn.needs:
            start = corners[need.first]
            line = ((start[0] + _BOX[0], start[1]), corners[turn.id])
            strokes.append(Stroke(line, Layer.DIMENSION))
    return PlanDrawing(tr("What waits for what"), tuple(strokes), tuple(words))
