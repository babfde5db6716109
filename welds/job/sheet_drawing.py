"""A stock sheet with its blanks laid on it."""

from welds.job.nesting import Sheet
from welds.job.plan_drawing import Layer, PlanDrawing, Words, rectangle
from welds.language import figure, tr

_LETTERS = 45.0
"""The sheet is so many letters tall."""


def draw_sheet(sheet: Sheet) -> PlanDrawing:
    """Return the drawing at full size, the sheet's near corner at the origin."""
    length, width = sheet.stock.size_mm
    letter = min(length, width) / _LETTERS
    strokes = [rectangle(0.0, 0.0, length, width, Layer.SECTION)]
    title = tr(
        "{stock}, sheet {number}, {waste:.0%} left over",
        stock=sheet.stock.id,
        number=sheet.number,
        waste=sheet.waste,
    )
    words = [Words((0.0, width + letter), title, letter, Layer.NOTE, is_centred=False)]
    for each in sheet.placed:
        strokes.append(rectangle(each.left_mm, each.bottom_mm, each.width_mm, each.height_mm, Layer.OUTLINE))
        middle = (each.left_mm + each.width_mm / 2.0, each.bottom_mm + each.height_mm / 2.0)
        words.append(Words(middle, each.piece, letter, Layer.NOTE))
        sides = figure(f"{each.width_mm:.1f} x {each.height_mm:.1f}")
        words.append(Words((middle[0], middle[1] - 1.8 * letter), sides, letter, Layer.DIMENSION))
    return PlanDrawing(title, tuple(strokes), tuple(words))
