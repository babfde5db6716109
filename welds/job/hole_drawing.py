"""Holes drawn over a picture: their points, the scale, and the words a repair takes from them."""

from collections import Counter
from dataclasses import dataclass
from itertools import combinations
from math import dist, isfinite
from pathlib import Path

from welds.errors import InputError
from welds.language import tr
from welds.reference.strict_yaml import YamlMap, read_yaml

Pixel = tuple[float, float]
_HEAD = "# Holes drawn over a picture. Points are pixels from its top left corner, right and down.\n"


@dataclass(frozen=True, slots=True)
class DrawnHole:
    """A hole by its middle in the picture."""

    at: Pixel
    diameter_mm: float


@dataclass(frozen=True, slots=True)
class Scale:
    """Two points of the picture and how far they are apart in the metal."""

    start: Pixel
    end: Pixel
    length_mm: float

    @property
    def px_per_mm(self) -> float:
        """How many pixels of the picture a millimetre takes."""
        return dist(self.start, self.end) / self.length_mm


@dataclass(frozen=True, slots=True)
class HoleDrawing:
    """A picture by its file name in the drawing's own folder, its scale, its holes."""

    picture: str
    scale: Scale
    holes: tuple[DrawnHole, ...]

    @property
    def size_mm(self) -> tuple[float, float]:
        """Width and height of what the holes take up, rim to rim."""
        scale = self.scale.px_per_mm
        spans = []
        for axis in (0, 1):
            low = min(hole.at[axis] / scale - hole.diameter_mm / 2.0 for hole in self.holes)
            spans.append(max(hole.at[axis] / scale + hole.diameter_mm / 2.0 for hole in self.holes) - low)
        return spans[0], spans[1]

    @property
    def closest_mm(self) -> float | None:
        """Distance between the middles of the two nearest holes; None for a single hole."""
        apart = [dist(a.at, b.at) for a, b in combinations(self.holes, 2)]
        return min(apart) / self.scale.px_per_mm if apart else None


def holes_text(holes: tuple[DrawnHole, ...]) -> str:
    """Return the holes as a repair takes them, largest first: 6 mm x 14, 4 mm x 3."""
    sizes = Counter(hole.diameter_mm for hole in holes)
    return ", ".join(f"{size:g} mm x {count}" for size, count in sorted(sizes.items(), reverse=True))


def drawing_file(job_file: Path, repair: str) -> Path:
    """Return where the drawing of a repair is kept: beside the job file."""
    return job_file.with_name(f"{repair}-holes.yaml")


def drawing_yaml(drawing: HoleDrawing) -> str:
    """Return the drawing as text of its file."""
    scale = drawing.scale
    ends = f"from: {_flow(scale.start)}, to: {_flow(scale.end)}, length_mm: {scale.length_mm:g}"
    name = drawing.picture.replace("\\", "\\\\").replace('"', '\\"')
    holes = [f"  - {{at: {_flow(hole.at)}, diameter_mm: {hole.diameter_mm:g}}}" for hole in drawing.holes]
    return "\n".join([f'{_HEAD}picture: "{name}"', f"scale: {{{ends}}}", "holes:", *holes]) + "\n"


def read_drawing(path: Path) -> HoleDrawing:
    """Return a drawing from its file; InputError or ReferenceDataError where it cannot be read."""
    top = read_yaml(path, str(path))
    scale, listed = top.get("scale"), top.get("holes")
    if not isinstance(scale, YamlMap) or not isinstance(listed, list):
        raise InputError(
            path.name, tr("something else"), tr("picture, scale and holes, as the Job page writes them")
        )
    start, end = (_point(scale.get(name), path) for name in ("from", "to"))
    if start == end:
        raise InputError(path.name, tr("a scale without length"), tr("two points that differ"))
    holes = []
    for each in listed:
        found = each if isinstance(each, YamlMap) else YamlMap()
        holes.append(DrawnHole(_point(found.get("at"), path), _above_zero(found.get("diameter_mm"), path)))
    # Only a name: the picture lies beside the drawing, wherever the folder was moved to.
    picture = Path(str(top.get("picture", ""))).name
    return HoleDrawing(picture, Scale(start, end, _above_zero(scale.get("length_mm"), path)), tuple(holes))


def _flow(point: Pixel) -> str:
    return f"[{point[0]:.1f}, {point[1]:.1f}]"


def _point(value: object, path: Path) -> Pixel:
    if not isinstance(value, list) or len(value) != 2:
        raise InputError(path.name, value, tr("points such as [120.0, 84.5]"))
    return _number(value[0], path), _number(value[1], path)


def _above_zero(value: object, path: Path) -> float:
    number = _number(value, path)
    if number <= 0.0:
        raise InputError(path.name, value, tr("a length above zero"))
    return number


def _number(value: object, path: Path) -> float:
    try:
        number = float(str(value))
    except ValueError:
        number = float("nan")
    if not isfinite(number):
        raise InputError(path.name, value, tr("a number"))
    return number
