"""The page to tape to the machine: one page, black and white, everything on it."""

import os
import re
import shutil
import subprocess
import sys
import unicodedata
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter

from welds.advice.advise import advise
from welds.advice.request import Joint, Process
from welds.advice.setting import Caution, Severity
from welds.advice.validate import request_from_fields
from welds.errors import FileUnavailableError
from welds.gui.page import MARGIN_MM, PICTURE_MM, PX_PER_MM, Page, Paper
from welds.gui.pdf import card_page, chart_page, page_pdf, write_card_pdf, write_chart_pdf, write_page_pdf
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.report import layout
from welds.report.chart import make_chart

pytestmark = pytest.mark.usefixtures("qapp")

CONSOLE_BOX = {"process": "tig", "metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}
FUEL_TANK = {
    "process": "tig", "metal": "5052", "thickness": "3 mm", "joint": "lap", "place": "enclosed",
    "part": "tank", "coating": ("cadmium", "old-paint", "oil"), "solvent": "chlorinated",
}  # fmt: skip
MUDGUARD = {"process": "mig", "metal": "galvanised", "thickness": "1 mm", "joint": "plug"}


def card_for(tables, fields):
    return advise(request_from_fields(fields, tables), tables)


def pages_of(pdf):
    return len(re.findall(rb"/Type\s*/Page\b(?!s)", pdf))


def sheet_of(pdf):
    box = re.search(rb"/MediaBox\s*\[([^\]]*)\]", pdf)
    assert box
    return tuple(round(float(number)) for number in box.group(1).split()[2:])


def plain(text):
    """Words without the line breaks and ligatures a page puts into them."""
    return re.sub(r"\s+", "", unicodedata.normalize("NFKC", text))


def painted(page, width_mm, height_mm):
    """The page in the middle of a larger sheet of one colour, and the rectangle that is its own."""
    edge = 60
    width, height = round(width_mm * PX_PER_MM), round(height_mm * PX_PER_MM)
    image = QImage(width + 2 * edge, height + 2 * edge, QImage.Format.Format_RGB32)
    image.fill("white")
    painter = QPainter(image)
    try:
        painter.translate(edge, edge)
        page.paint(painter, QSizeF(width, height))
    finally:
        painter.end()
    pixels = np.frombuffer(image.constBits(), np.uint32).reshape(image.height(), -1) & 0xFFFFFF
    outside = pixels.copy()
    # A letter's rounding may lean a pixel out of its box; the sheet's margin is forty wide.
    outside[edge - 1 : edge + height + 1, edge - 1 : edge + width + 1] = 0xFFFFFF
    return pixels[edge : edge + height, edge : edge + width], outside


@pytest.mark.parametrize("fields", [CONSOLE_BOX, FUEL_TANK, MUDGUARD], ids=["box", "tank", "mudguard"])
@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize(("paper", "size"), [(Paper.A4, (595, 842)), (Paper.LETTER, (612, 792))])
def test_a_card_is_one_page_of_the_paper_asked_for(tables, fields, units, paper, size):
    pdf = page_pdf(card_page(card_for(tables, fields), units, tables.sources), paper)
    assert pages_of(pdf) == 1
    assert sheet_of(pdf) == size


@pytest.mark.skipif(shutil.which("pdftotext") is None, reason="reads the PDF with poppler's pdftotext")
@pytest.mark.parametrize("fields", [CONSOLE_BOX, FUEL_TANK, MUDGUARD], ids=["box", "tank", "mudguard"])
@pytest.mark.parametrize("units", Units)
def test_everything_the_card_says_is_on_the_page(tables, tmp_path, fields, units):
    card = card_for(tables, fields)
    file = tmp_path / "card.pdf"
    write_card_pdf(file, card, units, tables.sources, Paper.LETTER)
    command = ["pdftotext", "-f", "1", "-l", "1", "-raw", str(file), "-"]
    read = plain(subprocess.run(command, capture_output=True, text=True, check=True).stdout)
    for line in (line for group in layout.groups(card, units) for line in group.lines):
        assert plain(line.label) in read, line.name
        assert plain(line.start_text) in read, line.name
        assert plain(line.range_text) in read, line.name
    for caution in card.cautions:
        assert plain(caution.text) in read
    for step in card.preparation:
        assert plain(step.text) in read
    assert plain(card.notice) in read
    for source in layout.sources_in_order(card):
        assert plain(source) in read
    assert "acrosstheweld" in read  # the joint's picture has its words as text
    assert ("acycle" in read) is (card.request.process is Process.TIG)


@pytest.mark.parametrize("count", [0, 40, 150])
def test_a_long_card_gets_smaller_letters_and_nothing_is_cut_off(tables, count):
    card = card_for(tables, CONSOLE_BOX)
    more = tuple(
        Caution(
            f"made-up-{n}",
            Severity.WARN,
            f"A made-up caution, number {n}: " + "mind it. " * 12,
            Basis.PRACTICE,
        )
        for n in range(count)
    )
    page = card_page(replace(card, cautions=card.cautions + more), Units.METRIC, tables.sources)
    inside, outside = painted(page, 190, 277)
    assert (outside == 0xFFFFFF).all()
    lowest = np.flatnonzero((inside != 0xFFFFFF).any(axis=1)).max()
    assert lowest > inside.shape[0] * 0.75  # and the page is used
    assert pages_of(page_pdf(page, Paper.A4)) == 1


def test_the_page_is_black_and_white(tables):
    inside, _ = painted(card_page(card_for(tables, CONSOLE_BOX), Units.METRIC, tables.sources), 190, 277)
    shades = [QColor(int(pixel)) for pixel in np.unique(inside)]
    assert all(shade.red() == shade.green() == shade.blue() for shade in shades)


def test_pictures_get_the_room_that_is_left_but_no_more_than_they_need():
    rooms = []
    page = Page("short", "<p>one line</p>", lambda _painter, area: rooms.append(QRectF(area)))
    painted(page, 190, 277)
    painted(page, 190, 60)
    assert rooms[0].height() == pytest.approx(PICTURE_MM[0] * PX_PER_MM)
    assert rooms[1].bottom() <= 60 * PX_PER_MM + 0.5
    assert rooms[1].height() >= PICTURE_MM[-1] * PX_PER_MM - 0.5


def test_text_stays_black_whatever_the_window_looks_like(qapp):
    from PySide6.QtGui import QPalette

    kept = qapp.palette()
    dark = QPalette("#202020")
    dark.setColor(QPalette.ColorRole.Text, QColor("#ffffff"))
    try:
        qapp.setPalette(dark)
        inside, _ = painted(Page("t", "<p>plain words</p>"), 60, 20)
    finally:
        qapp.setPalette(kept)
    assert inside.min() < 0x404040


def test_a_chart_is_one_level_page(tables, tmp_path):
    request = request_from_fields(CONSOLE_BOX, tables)
    chart = make_chart(
        request, [1.0, 2.0, 3.0, 5.0], [Joint.BUTT, Joint.TEE, Joint.LAP], lambda asked: advise(asked, tables)
    )
    file = tmp_path / "chart.pdf"
    write_chart_pdf(str(file), chart, Units.METRIC, Paper.A4)
    pdf = file.read_bytes()
    assert pages_of(pdf) == 1
    assert sheet_of(pdf) == (842, 595)
    _, outside = painted(chart_page(chart, Units.INCH), 277, 190)
    assert (outside == 0xFFFFFF).all()


def test_a_file_that_cannot_be_written_is_one_clear_error(tmp_path):
    page = Page("t", "<p>words</p>")
    for path in (tmp_path, tmp_path / "nowhere" / "card.pdf"):
        with pytest.raises(FileUnavailableError) as caught:
            write_page_pdf(path, page, Paper.A4)
        assert caught.value.exit_code == 4
        assert str(path) in str(caught.value)


def test_margins_are_kept_free():
    margins = Page("t", "").layout(Paper.A4).margins()
    assert margins.left() == margins.bottom() == MARGIN_MM


def test_without_window_or_screen_the_command_line_still_writes(tmp_path):
    code = (
        "import sys; from welds.gui.page import Page, Paper; from welds.gui.pdf import write_page_pdf;"
        "[write_page_pdf(sys.argv[1], Page('t', '<p>words</p>'), Paper.A4) for _ in range(2)]"
    )
    bare = {
        name: value
        for name, value in os.environ.items()
        if name not in {"QT_QPA_PLATFORM", "DISPLAY", "WAYLAND_DISPLAY"}
    }
    bare["PYTHONPATH"] = str(Path(__file__).parents[2])
    file = tmp_path / "page.pdf"
    done = subprocess.run(
        [sys.executable, "-c", code, str(file)], env=bare, capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert file.read_bytes().startswith(b"%PDF")
