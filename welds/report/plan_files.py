"""A drawing as DXF or SVG, at full size in millimetres, through the library that knows both formats."""

import io
from typing import TYPE_CHECKING

from welds.job.plan_drawing import Layer, PlanDrawing

if TYPE_CHECKING:
    from ezdxf.document import Drawing

_MARGIN_MM = 10.0
_COLOURS = {
    Layer.OUTLINE: 7,
    Layer.BEND: 1,
    Layer.CURVE: 8,
    Layer.SECTION: 5,
    Layer.DIMENSION: 3,
    Layer.RULER: 6,
    Layer.NOTE: 7,
    Layer.GRID: 9,
}
"""Colour numbers of the format; 7 is black on white paper."""
_DASHED = (Layer.BEND, Layer.CURVE)


def dxf_text(drawing: PlanDrawing) -> str:
    """Return the drawing as DXF, one layer for each kind of line: cut by `outline`, scribe by `bend`."""
    out = io.StringIO()
    _document(drawing).write(out)
    return out.getvalue()


def svg_text(drawing: PlanDrawing) -> str:
    """Return the drawing as SVG whose size is in millimetres, so that it prints at full size."""
    from ezdxf.addons.drawing.config import BackgroundPolicy, ColorPolicy, Configuration
    from ezdxf.addons.drawing.frontend import Frontend
    from ezdxf.addons.drawing.layout import Margins, Page, Settings, Units
    from ezdxf.addons.drawing.properties import RenderContext
    from ezdxf.addons.drawing.svg import SVGBackend

    document = _document(drawing)
    backend = SVGBackend()
    black_on_white = Configuration(background_policy=BackgroundPolicy.WHITE, color_policy=ColorPolicy.BLACK)
    Frontend(RenderContext(document), backend, config=black_on_white).draw_layout(document.modelspace())
    paper = Page(0, 0, Units.mm, Margins.all(_MARGIN_MM))
    return backend.get_string(paper, settings=Settings(fit_page=False, scale=1.0))


def _document(drawing: PlanDrawing) -> "Drawing":
    from ezdxf.enums import TextEntityAlignment
    from ezdxf.filemanagement import new
    from ezdxf.units import MM

    document = new("R2010", setup=["linetypes"], units=MM)
    for layer in Layer:
        style = "DASHED" if layer in _DASHED else "CONTINUOUS"
        document.layers.add(layer.value, color=_COLOURS[layer], linetype=style)
    space = document.modelspace()
    for stroke in drawing.strokes:
        space.add_lwpolyline(stroke.points, close=stroke.is_closed, dxfattribs={"layer": stroke.layer.value})
    for words in drawing.words:
        text = space.add_text(words.text, height=words.height_mm, dxfattribs={"layer": words.layer.value})
        middle = TextEntityAlignment.CENTER if words.is_centred else TextEntityAlignment.LEFT
        text.set_placement(words.at, align=middle)
    return document
