"""A blank prints at full size: sheet and ruler measure what they say."""

import re

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from welds.gui.page import MARGIN_MM
from welds.gui.plan_painter import paint_plan
from welds.gui.plan_pdf import plan_pdf
from welds.job.blank import Bend, FoldedPart, make_blank
from welds.job.blank_drawing import RULER_MM, draw_blank
from welds.job.plan_drawing import Layer, PlanDrawing, rectangle

POINTS_PER_MM = 72.0 / 25.4


@pytest.fixture(scope="module")
def drawing() -> PlanDrawing:
    part = FoldedPart(2.0, (40.0, 200.0, 40.0), (Bend(90.0, 3.0), Bend(90.0, 3.0)))
    return draw_blank("tray", make_blank(part, [0.42, 0.42]), 120.0, lambda mm: f"{mm:.1f} mm")


def test_the_ruler_is_as_long_as_it_says(drawing):
    xs = [x for stroke in drawing.strokes if stroke.layer is Layer.RULER for x, _ in stroke.points]
    assert max(xs) - min(xs) == RULER_MM
    assert any(f"{RULER_MM:g} mm" in words.text for words in drawing.words)


def test_the_sheet_is_the_drawing_and_its_margins(drawing, qapp):
    left, bottom, right, top = drawing.box
    found = re.search(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", plan_pdf(drawing))
    assert found is not None
    width, height = (float(each) / POINTS_PER_MM for each in found.groups())
    assert width == pytest.approx(right - left + 2.0 * MARGIN_MM, abs=0.6)
    assert height == pytest.approx(top - bottom + 2.0 * MARGIN_MM, abs=0.6)


def test_lines_stand_where_the_scale_puts_them(qapp):
    """A square of 50 mm at 4 pixels a millimetre: edges 200 pixels apart."""
    image = QImage(240, 240, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFF)
    painter = QPainter(image)
    square = PlanDrawing("", (rectangle(0.0, 0.0, 50.0, 50.0, Layer.OUTLINE),), ())
    paint_plan(painter, QRectF(20.0, 20.0, 10.0, 10.0), square, 4.0)
    painter.end()
    dark = [x for x in range(240) if image.pixelColor(x, 120).lightness() < 128]
    assert abs(min(dark) - 20) <= 1
    assert abs(max(dark) - 220) <= 1
