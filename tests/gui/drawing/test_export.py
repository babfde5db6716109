"""Pictures as files: the same drawing at more dots, and as vectors that a reader of SVG shows alike."""

from xml.etree import ElementTree as ET

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from welds.errors import FileUnavailableError, InputError
from welds.gui.drawing.export import png, svg, write_picture
from welds.gui.drawing.ink import LIGHT, PRINT
from welds.gui.drawing.joint import paint_joint
from welds.gui.drawing.scene import JointScene
from welds.gui.drawing.wave import paint_wave

pytestmark = pytest.mark.usefixtures("qapp")
SCENE = JointScene(filler_mm=2.4, has_gas_lens=True, has_bar=True)


def joint(painter, rect):
    paint_joint(painter, rect, SCENE, LIGHT)


def grey(image):
    image = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : image.width()].astype(int)


def test_png_has_the_dots_asked_for_and_says_how_large_it_is_on_paper():
    image = QImage.fromData(png(480, 240, joint, dpi=192))
    assert (image.width(), image.height()) == (960, 480)
    assert image.dotsPerMeterX() == pytest.approx(192 / 0.0254, abs=1)


def test_svg_is_a_document_of_the_right_size_with_words_in_it():
    root = ET.fromstring(svg(480, 240, joint))
    assert root.attrib["viewBox"] == "0 0 480 240"
    words = "".join(root.itertext())
    assert "stick-out" in words
    assert "nan" not in words.lower()


@pytest.mark.parametrize(
    "paint", [joint, lambda painter, rect: paint_wave(painter, rect, 120.0, 70.0, 125.0, PRINT)]
)
def test_svg_shows_what_the_painter_shows(paint):
    direct = QImage.fromData(png(480, 240, paint, dpi=96))
    image = QImage(480, 240, QImage.Format.Format_RGB32)
    image.fill("white")
    painter = QPainter(image)
    try:
        QSvgRenderer(svg(480, 240, paint)).render(painter, QRectF(0, 0, 480, 240))
    finally:
        painter.end()
    # Edges and letters are smoothed a little differently; shapes that were lost or moved would be far more.
    changed = np.abs(grey(direct) - grey(image)) > 96
    assert changed.mean() < 0.02


def test_the_ending_decides_and_anything_else_is_refused(tmp_path):
    write_picture(tmp_path / "joint.svg", 300, 200, joint)
    write_picture(tmp_path / "joint.PNG", 300, 200, joint)
    assert (tmp_path / "joint.svg").read_bytes().startswith(b"<?xml")
    assert (tmp_path / "joint.PNG").read_bytes().startswith(b"\x89PNG")
    with pytest.raises(InputError, match=r"joint\.bmp"):
        write_picture(tmp_path / "joint.bmp", 300, 200, joint)


def test_a_folder_that_is_not_there_is_named(tmp_path):
    with pytest.raises(FileUnavailableError, match="nowhere"):
        write_picture(tmp_path / "nowhere" / "joint.png", 300, 200, joint)
