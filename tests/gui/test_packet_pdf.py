"""The packet holds what it lists: its text is read back with a PDF reader."""

import shutil
import subprocess
import unicodedata

import pytest

from welds.gui.packet_pdf import write_packet_pdf
from welds.gui.page import Paper
from welds.job.demo import demo_file
from welds.job.hole_drawing import DrawnHole, HoleDrawing, Scale, drawing_yaml
from welds.job.job_file import load_job
from welds.job.plan import JobPlan, plan_job
from welds.quantities.units import Units
from welds.report import layout
from welds.report.packet import packet_pages

pytestmark = pytest.mark.skipif(
    shutil.which("pdftotext") is None, reason="needs pdftotext (Debian: poppler-utils)"
)


@pytest.fixture(scope="module")
def plan(tables) -> JobPlan:
    return plan_job(load_job(demo_file(), tables), tables)


def squashed(text: str) -> str:
    """Return the text without blanks, line breaks and ligatures: lines break where the layout says."""
    return "".join(unicodedata.normalize("NFKC", text).split())


@pytest.fixture(scope="module")
def pages(plan, tables, qapp, tmp_path_factory) -> list[str]:
    path = tmp_path_factory.mktemp("packet") / "packet.pdf"
    write_packet_pdf(path, plan, Units.METRIC, tables.sources, Paper.A4)
    done = subprocess.run(["pdftotext", "-raw", path, "-"], capture_output=True, text=True, check=True)
    return [squashed(page) for page in done.stdout.split("\f")[:-1]]


def test_one_page_for_each_that_is_listed(plan, tables, pages: list[str]):
    assert len(pages) == len(list(packet_pages(plan, Units.METRIC, tables.sources)))


def test_every_task_blank_and_joint_is_there(plan, pages: list[str]):
    (order,) = [page for page in pages if page.startswith("Orderofwork")]
    for turn in plan.turns:
        assert squashed(f"{turn.id}: {turn.name}") in order
    for key, answer in plan.blanks.items():
        (page,) = [each for each in pages if each.startswith(squashed(f"Blank: {key}"))]
        assert squashed(f"Flat length {answer.blank.length_mm:.1f} mm") in page
        assert "checkruler" in page
    assert sum(page.count("Tacksforcard") for page in pages) == len(plan.tacks)


def test_every_repair_has_its_reasons_its_drawing_and_its_card(plan, pages: list[str]):
    for key, answer in plan.repairs.items():
        (place,) = (n for n, page in enumerate(pages) if page.startswith(squashed(f"Repair: {key}")))
        words, drawing, card = pages[place : place + 3]
        assert all(squashed(reason.text) in words for reason in answer.reasons)
        assert drawing.startswith(squashed(f"Holes and cuts: {key}"))
        assert squashed("region ") in drawing
        assert card.startswith(squashed(layout.title(answer.card.request)))
    (left,) = (page for page in pages if page.startswith(squashed("Holes and cuts: mudguard-left")))
    assert squashed("cut out 160.0 mm x 110.0 mm, corners 12.0 mm") in left
    tacks = plan.repairs["mudguard-left"].patch.tacks.tacks_mm
    assert all(str(number) in left for number in range(1, len(tacks) + 1))


def test_the_photo_of_a_repair_is_in_the_packet(tables, qapp, tmp_path):
    """The same job with and without its photo: the one with it holds the picture's bytes."""
    from PySide6.QtGui import QColor, QImage

    job = tmp_path / "job.yaml"
    repair = "{id: left, metal: low-carbon, thickness: 1.2 mm, holes: 3 mm x 2, region: 60 x 20}"
    job.write_text(f"job: x\nunits: metric\nrepairs: [{repair}]\n", encoding="utf-8")
    holes = DrawnHole((100.0, 100.0), 3.0), DrawnHole((300.0, 100.0), 3.0)
    drawing = HoleDrawing("left-holes.png", Scale((0.0, 0.0), (500.0, 0.0), 100.0), holes)
    (tmp_path / "left-holes.yaml").write_text(drawing_yaml(drawing), encoding="utf-8")
    images = []
    for name in ("missing", "there"):
        if name == "there":
            photo = QImage(400, 300, QImage.Format.Format_RGB32)
            photo.fill(QColor("#8a6a55"))
            assert photo.save(str(tmp_path / "left-holes.png"))
        plan = plan_job(load_job(job, tables), tables)
        assert [("left-holes.png" in each) for each in plan.problems] == ([True] if name == "missing" else [])
        path = tmp_path / f"{name}.pdf"
        write_packet_pdf(path, plan, Units.METRIC, tables.sources, Paper.A4)
        images.append(path.read_bytes().count(b"/Subtype /Image"))
    assert images[1] > images[0]


def test_all_cautions_stand_on_the_first_page(plan, pages: list[str]):
    assert len(plan.cautions) > 5
    for caution in plan.cautions:
        assert squashed(caution.text) in pages[0]


def test_every_card_is_printed_whole(plan, pages: list[str]):
    for each in plan.set_ups:
        title = squashed(layout.title(each.request))
        current = layout.setting_line(each.card.settings["current"], each.request.process, Units.METRIC)
        assert any(page.startswith(title) and squashed(current.start_text) in page for page in pages)


def test_materials_and_checks_close_the_packet(pages: list[str]):
    assert "ER5356" in pages[-2]
    assert "lightthroughaseamisamissedspot" in pages[-1]


def test_an_empty_job_has_a_packet_too(tables, qapp, tmp_path):
    (tmp_path / "empty.yaml").write_text("job: nothing yet\n", encoding="utf-8")
    plan = plan_job(load_job(tmp_path / "empty.yaml", tables), tables)
    write_packet_pdf(tmp_path / "empty.pdf", plan, Units.INCH, tables.sources)
    assert (tmp_path / "empty.pdf").read_bytes().startswith(b"%PDF")
