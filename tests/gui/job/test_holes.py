"""Holes on a photo: scale by two points, marks by mouse and keyboard, kept beside the job file."""

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QDialogButtonBox, QWidget

from tests.gui.fakes import FakePrompts
from welds.gui.engine import Engine
from welds.gui.pages.job.holes_dialog import HolesDialog
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.pages.job.view import JobView
from welds.job.hole_drawing import read_drawing
from welds.job.job_file import load_job
from welds.quantities.units import Units

JOB = """job: x
defaults: {metal: low-carbon, thickness: 1.2 mm}
repairs:
  - {id: left, holes: 4 mm x 2, region: 120 x 90 mm}   # the worse one
  - {id: right, holes: 4 mm x 2, region: 120 x 90 mm}
"""


@pytest.fixture
def bench(qtbot, tmp_path: Path):
    """Return the dialog over a job of two repairs, its prompts, the job file and a 400 by 300 photo."""
    folder = tmp_path / "job"
    folder.mkdir()
    (folder / "job.yaml").write_text(JOB, encoding="utf-8")
    photo = tmp_path / "PHOTO.PNG"
    image = QImage(400, 300, QImage.Format.Format_RGB32)
    image.fill(QColor("#777777"))
    assert image.save(str(photo))
    window = QWidget()
    qtbot.addWidget(window)
    prompts = FakePrompts(window)
    prompts.open_path = photo
    dialog = HolesDialog(folder / "job.yaml", ["left", "right"], Units.METRIC, prompts, window)
    dialog.show()
    return dialog, prompts, folder / "job.yaml", photo


def click(qtbot, dialog, x: float, y: float) -> None:
    at = dialog.canvas.place((x, y)).toPoint()
    qtbot.mouseClick(dialog.canvas, Qt.MouseButton.LeftButton, pos=QPoint(at.x(), at.y()))


def save_of(dialog):
    return dialog.buttons.button(QDialogButtonBox.StandardButton.Save)


def draw(qtbot, dialog) -> None:
    """Set 200 pixels to 100 mm, then mark two holes of 6 mm and one of 10 mm."""
    dialog.load.click()
    click(qtbot, dialog, 100, 280)
    click(qtbot, dialog, 300, 280)
    dialog.set_holes.click()
    click(qtbot, dialog, 100, 100)
    click(qtbot, dialog, 200, 100)
    dialog.diameter.setText("10 mm")
    click(qtbot, dialog, 200, 200)


def test_marks_become_the_repair_s_holes_with_picture_and_points_beside_the_file(qtbot, bench, tables):
    dialog, prompts, file, photo = bench
    assert not save_of(dialog).isEnabled()
    draw(qtbot, dialog)
    assert dialog.canvas.scale.px_per_mm == pytest.approx(2.0, rel=0.02)
    assert "10 mm x 1, 6 mm x 2" in dialog.words.text()
    with qtbot.waitSignal(dialog.saved):
        save_of(dialog).click()
    left, right = load_job(file, tables).repairs
    assert [(each.diameter_mm, each.count) for each in left.damage.holes] == [(10.0, 1), (6.0, 2)]
    assert [(each.diameter_mm, each.count) for each in right.damage.holes] == [(4.0, 2)]
    assert "# the worse one" in file.read_text(encoding="utf-8")
    assert file.with_name("left-holes.png").read_bytes() == photo.read_bytes()
    kept = read_drawing(file.with_name("left-holes.yaml"))
    assert kept.picture == "left-holes.png"
    assert kept.size_mm == pytest.approx((50.0 + 3.0 + 5.0, 50.0 + 3.0 + 5.0), rel=0.02)
    assert prompts.told == []


def test_a_drawing_is_taken_up_again_and_another_repair_begins_unmarked(qtbot, bench):
    dialog, prompts, file, _ = bench
    draw(qtbot, dialog)
    save_of(dialog).click()
    again = HolesDialog(file, ["left", "right"], Units.METRIC, prompts, dialog.parentWidget())
    assert len(again.canvas.holes) == 3
    again.repair.setCurrentText("right")
    assert again.canvas.holes == []
    assert not save_of(again).isEnabled()
    again.repair.setCurrentText("left")
    save_of(again).click()
    assert read_drawing(file.with_name("left-holes.yaml")).holes


def test_a_second_click_takes_a_hole_out(qtbot, bench):
    dialog, *_ = bench
    draw(qtbot, dialog)
    click(qtbot, dialog, 201, 101)
    assert "10 mm x 1, 6 mm x 1" in dialog.words.text()


def test_the_keyboard_marks_too(qtbot, bench):
    dialog, *_ = bench
    dialog.load.click()
    canvas = dialog.canvas
    for key in (Qt.Key.Key_Space, *[Qt.Key.Key_Right] * 10, Qt.Key.Key_Space):
        qtbot.keyClick(canvas, key)
    assert canvas.scale.px_per_mm == pytest.approx(10 * 4.0 / 100.0)
    dialog.set_holes.click()
    for key in (Qt.Key.Key_Up, Qt.Key.Key_Return):
        qtbot.keyClick(canvas, key)
    assert canvas.holes[0].at == pytest.approx((240.0, 146.0))


def test_slips_are_said_and_nothing_is_marked_with_them(qtbot, bench):
    dialog, prompts, file, _ = bench
    draw(qtbot, dialog)
    dialog.diameter.setText("wide")
    assert "diameter" in dialog.words.text()
    assert not save_of(dialog).isEnabled()
    click(qtbot, dialog, 300, 50)
    assert len(dialog.canvas.holes) == 3
    prompts.open_path = file
    dialog.load.click()
    assert prompts.told[-1][0] == "The picture cannot be shown"
    assert len(dialog.canvas.holes) == 3


def test_a_job_that_lost_the_repair_is_told(qtbot, bench):
    dialog, prompts, file, _ = bench
    draw(qtbot, dialog)
    file.write_text("job: x\n", encoding="utf-8")
    save_of(dialog).click()
    assert prompts.told[0][0] == "The holes were not written"
    assert file.read_text(encoding="utf-8") == "job: x\n"


def test_the_page_offers_it_for_an_own_job_with_repairs_and_reads_it_again(qtbot, bench, tables):
    _, prompts, file, _ = bench
    window = QWidget()
    qtbot.addWidget(window)
    presenter = JobPresenter(Engine(tables, None, None), Units.METRIC, window)
    view = JobView(presenter, prompts, window)
    with qtbot.waitSignal(presenter.opened, timeout=10_000):
        presenter.open_demo()
    assert not view.repairs.draw_button.isEnabled()
    with qtbot.waitSignal(presenter.opened, timeout=10_000):
        presenter.open(file)
    forms = []
    prompts.show_form = forms.append
    view.repairs.draw_button.click()
    draw(qtbot, forms[0])
    with qtbot.waitSignal(presenter.opened, timeout=10_000):
        save_of(forms[0]).click()
    assert presenter.shown.plan.job.repairs[0].damage.count == 3
    presenter.jobs.wait()
