"""A drawing in millimetres as plain lines and words, for paper, screen, DXF and SVG alike."""

from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

Point = tuple[float, float]


class Layer(StrEnum):
    """What a line or word is for; upward is plus, as on a drawing board."""

    OUTLINE = "outline"
    BEND = "bend"
    CURVE = "curve-begins"
    SECTION = "section"
    DIMENSION = "dimension"
    RULER = "ruler"
    NOTE = "note"
    GRID = "grid"


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line through its points."""

    points: tuple[Point, ...]
    layer: Layer
    is_closed: bool = False


@dataclass(frozen=True, slots=True)
class Words:
    """Text whose foot's middle (or left end) stands at a point."""

    at: Point
    text: str
    height_mm: float
    layer: Layer
    is_centred: bool = True


@dataclass(frozen=True, slots=True)
class Picture:
    """A photograph below the lines, its top left corner at the origin; shown as far as they reach."""

    path: Path
    px_per_mm: float


@dataclass(frozen=True, slots=True)
class PlanDrawing:
    """A finished drawing."""

    title: str
    strokes: tuple[Stroke, ...]
    words: tuple[Words, ...]
    picture: Picture | None = None

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Left, bottom, right and top of everything, words by a rough width."""
        xs = [x for stroke in self.strokes for x, _ in stroke.points]
        ys = [y for stroke in self.strokes for _, y in stroke.points]
        for words in self.words:
            width = 0.7 * words.height_mm * len(words.text)
            left = words.at[0] - (width / 2.0 if words.is_centred else 0.0)
            xs += [left, left + width]
            ys += [words.at[1], words.at[1] + words.height_mm]
        return min(xs), min(ys), max(xs), max(ys)


def rectangle(left: float, bottom: float, width: float, height: float, layer: Layer) -> Stroke:
    """Return a closed rectangle."""
    right, top = left + width, bottom + height
    return Stroke(((left, bottom), (right, bottom), (right, top), (left, top)), layer, is_closed=True)
