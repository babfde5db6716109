"""A drawing into a file of the kind that its name says."""

from pathlib import Path

from welds.errors import InputError
from welds.gui.plan_pdf import write_plan_pdf
from welds.job.plan_drawing import PlanDrawing
from welds.language import tr
from welds.reference.whole_file import write_whole
from welds.report.plan_files import dxf_text, svg_text

_KINDS = (".pdf", ".dxf", ".svg")


def write_drawing(path: Path, drawing: PlanDrawing) -> Path:
    """Write the drawing at full size and return where: as PDF where the name has no ending."""
    path = path if path.suffix else path.with_suffix(".pdf")
    kind = path.suffix.lower()
    if kind not in _KINDS:
        raise InputError("file", path.name, tr("a name ending in {kinds}", kinds=", ".join(_KINDS)))
    if kind == ".pdf":
        write_plan_pdf(path, drawing)
        return path
    write_whole(path, dxf_text(drawing) if kind == ".dxf" else svg_text(drawing))
    return path
