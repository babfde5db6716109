"""Blanks laid on stock sheets by a packing library, and what is wasted."""

from collections.abc import Sequence
from dataclasses import dataclass

from welds.job.job import Stock

KERF_MM = 3.0
"""Left between blanks for the cut and the burr."""


@dataclass(frozen=True, slots=True)
class Flat:
    """A blank to lay: its piece's id and both sides."""

    piece: str
    size_mm: tuple[float, float]


@dataclass(frozen=True, slots=True)
class Placed:
    """A blank in its place on a sheet, near corner and sides as they lie."""

    piece: str
    left_mm: float
    bottom_mm: float
    width_mm: float
    height_mm: float


@dataclass(frozen=True, slots=True)
class Sheet:
    """One stock sheet with what is cut from it."""

    stock: Stock
    number: int
    placed: tuple[Placed, ...]

    @property
    def waste(self) -> float:
        """The share of the sheet that no blank takes."""
        used = sum(each.width_mm * each.height_mm for each in self.placed)
        return 1.0 - used / (self.stock.size_mm[0] * self.stock.size_mm[1])


def nest(stock: Stock, flats: Sequence[Flat]) -> tuple[tuple[Sheet, ...], tuple[str, ...]]:
    """Return the sheets used and the pieces that found no room; blanks may be turned by a right angle."""
    from rectpack import PackingMode, newPacker

    packer = newPacker(mode=PackingMode.Offline, rotation=True)
    for number, flat in enumerate(flats):
        length, width = flat.size_mm
        packer.add_rect(_micrometres(length + KERF_MM), _micrometres(width + KERF_MM), number)
    room = [_micrometres(side + KERF_MM) for side in stock.size_mm]
    packer.add_bin(*room, count=stock.count)
    packer.pack()
    sheets: dict[int, list[Placed]] = {}
    laid = set()
    for sheet, left, bottom, width, height, number in packer.rect_list():
        sides = (each / 1000.0 - KERF_MM for each in (width, height))
        sheets.setdefault(sheet, []).append(
            Placed(flats[number].piece, left / 1000.0, bottom / 1000.0, *sides)
        )
        laid.add(number)
    left_over = tuple(flat.piece for number, flat in enumerate(flats) if number not in laid)
    used = tuple(
        Sheet(stock, number, tuple(placed)) for number, (_, placed) in enumerate(sorted(sheets.items()), 1)
    )
    return used, left_over


def _micrometres(mm: float) -> int:
    """Return a whole number: the packer would otherwise compare fractions of its own making."""
    return round(mm * 1000.0)
