"""The drawings of holes that lie beside a job file, held against what the file says."""

from collections import Counter
from collections.abc import Iterator

from welds.errors import WeldsError
from welds.job.damage import Damage
from welds.job.hole_drawing import HoleDrawing, drawing_file, holes_text, read_drawing
from welds.job.job import Job
from welds.language import figure, tr

_NEAR_MM = 1.0
"""A region measured by hand may be so much smaller than what was drawn."""


def read_drawings(job: Job, problems: list[str]) -> dict[str, HoleDrawing]:
    """Return the drawings by repair; what cannot be read or is of other damage is added to the problems."""
    drawings = {}
    for work in job.repairs:
        path = drawing_file(job.file, work.id)
        if not path.is_file():
            continue
        try:
            drawings[work.id] = read_drawing(path)
        except WeldsError as error:
            problems.append(tr("{task}: its drawing cannot be read: {problem}", task=work.id, problem=error))
            continue
        photo = path.with_name(drawings[work.id].picture)
        if not photo.is_file():
            problems.append(
                tr(
                    "{task}: the photo of its drawing, {name}, is not beside the job file",
                    task=work.id,
                    name=photo.name,
                )
            )
        problems += (f"{work.id}: {each}" for each in _differences(drawings[work.id], work.damage))
    return drawings


def _differences(drawing: HoleDrawing, damage: Damage) -> Iterator[str]:
    drawn = Counter(round(hole.diameter_mm, 1) for hole in drawing.holes)
    written = Counter[float]()
    for holes in damage.holes:
        written[round(holes.diameter_mm, 1)] += holes.count
    if drawn != written:
        yield tr(
            "the drawing has {holes}, the job file other holes; the file counts",
            holes=figure(holes_text(drawing.holes)),
        )
    taken, region = sorted(drawing.size_mm), sorted(damage.region_mm)
    if any(side > room + _NEAR_MM for side, room in zip(taken, region, strict=True)):
        size = " x ".join(f"{side:.0f}" for side in drawing.size_mm)
        yield tr("the drawn holes take up {size} mm, more than the region in the job file", size=size)
