"""The job page in the made-up language: every widget speaks it, the file holds what it held in English."""

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QWidget

from tests.gui.fakes import FakePrompts
from tests.languages.pseudo import left_over
from tests.languages.walk import said_by
from welds.gui.engine import Engine
from welds.gui.pages.job.drawing_files import write_drawing
from welds.gui.pages.job.holes_dialog import HolesDialog
from welds.gui.pages.job.list_tab import ListTab
from welds.gui.pages.job.plan_tabs import blanks_of, sheets_of, tacks_of
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.pages.job.tab_pages import table_page
from welds.gui.pages.job.view import JobView
from welds.job.hole_drawing import DrawnHole, read_drawing
from welds.job.job_file import load_job
from welds.job.job_form import FORMS
from welds.job.sheet_drawing import draw_sheet
from welds.quantities.units import Units
from welds.reference.load import load_tables

JOB = """job: boat
units: metric
defaults: {metal: 5052-H32, thickness: 1.5 mm, process: tig}
stock:
  - {id: sheet-a, size: 1000 x 500 mm}
pieces:
  - {id: box, stock: sheet-a, legs: "25, 120.5, 25", angles: "90, 90", radius: 3.2, width: 80.5}
joints:
  - {id: seam, joint: butt, length: 380.5 mm, pieces: [box]}
repairs:
  - {id: left, metal: low-carbon, holes: 4.5 mm x 2, region: 120.5 x 90 mm}
steps:
  - {id: paint, covers: [left]}
"""
_SOURCE = re.compile(r"\[[A-Z][\w.+ -]*\]")
ALLOWED = """boat box seam left paint sheet tig mig low carbon yaml pdf dxf svg png jpg jpeg webp bmp tif tiff
any machine Ctrl degC mm in deg min max cap lap PA PB PC PD PE PF PG PH PJ"""


@pytest.fixture
def page(qtbot, tables, tmp_path: Path) -> Iterator[Callable[[str], JobView]]:
    """Return a maker of the view of an own job in a folder of its own."""
    presenters = []

    def make(name: str) -> JobView:
        folder = tmp_path / name
        folder.mkdir()
        (folder / "job.yaml").write_text(JOB, encoding="utf-8")
        window = QWidget()
        qtbot.addWidget(window)
        presenter = JobPresenter(Engine(tables, None, None), Units.METRIC, window)
        presenters.append(presenter)
        prompts = FakePrompts(window)
        prompts.confirm = lambda *_: True
        prompts.show_form = lambda form: prompts.shown.append(form)
        view = JobView(presenter, prompts, window)
        with qtbot.waitSignal(presenter.opened, timeout=10_000):
            presenter.open(folder / "job.yaml")
        return view

    yield make
    for presenter in presenters:
        presenter.jobs.wait()


def wrong(widget: QWidget, more: str = "") -> dict[str, list[str]]:
    """Return what a widget and all in it says in plain English."""
    allowed = [*re.findall("[A-Za-z]+", f"{ALLOWED} {more}")]
    return {text: left for text in said_by(widget) if (left := left_over(text, allowed))}


def examples() -> str:
    """Return what stands in the file as it is typed: metals in the list to choose from."""
    return " ".join(field.example for form in FORMS.values() for field in form if field.name == "metal")


def test_buttons_tabs_and_every_form_of_the_page_speak(speaking_window, page):
    view = page("a")
    buttons = view.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)
    assert len(buttons) > 7
    assert {
        text: left for part in buttons if part is not view.tabs for text, left in wrong(part).items()
    } == {}
    titles = [view.tabs.tabText(n) for n in range(view.tabs.count())]
    assert len(titles) == 12
    assert [title for title in titles if left_over(title)] == []
    metals = " ".join(view._presenter.metals)
    for section in FORMS:
        view.edit.begin(section)
        assert wrong(view.edit, f"{metals} {examples()}") == {}
    view.edit.show_entry("joints", "seam")
    assert wrong(view.edit, f"{metals} {examples()}") == {}


def test_every_tab_of_the_demo_speaks(speaking_window, qtbot):
    window = QWidget()
    qtbot.addWidget(window)
    presenter = JobPresenter(Engine(load_tables(), None, None), Units.METRIC, window)
    view = JobView(presenter, FakePrompts(window), window)
    with qtbot.waitSignal(presenter.opened, timeout=10_000):
        presenter.open_demo()
    plan = presenter.shown.plan
    named = " ".join(f"{task.id} {task.name}" for task in plan.job.tasks)
    allowed = re.findall(
        "[A-Za-z]+", f"{ALLOWED} {named} {plan.job.name} dry-fit sheet-steel galvanised kWh EUR"
    )
    for number in range(view.tabs.count()):
        tab = view.tabs.widget(number)
        if isinstance(tab, ListTab) and "(ISO " in tab.text.toPlainText():
            continue  # whole cards: the report's own test looks at these
        said = (_SOURCE.sub("", text) for text in said_by(tab))
        assert {text: left for text in said if (left := left_over(text, allowed))} == {}
    presenter.jobs.wait()


def test_lists_and_drawings_of_a_plan_speak(speaking_window, page, tmp_path: Path):
    view = page("a")
    plan = view._presenter.shown.plan
    lists = [*sheets_of(plan), *blanks_of(plan, Units.METRIC), *tacks_of(plan, Units.METRIC)]
    allowed = ALLOWED.split()
    assert len(lists) >= 3
    assert [each.below for each in lists if left_over(each.below, allowed)] == []
    assert left_over(view.repairs.list.item(0).text(), allowed) == []
    assert wrong(view.repairs.draw_button) == wrong(view.repairs.change_button) == {}
    drawing = draw_sheet(plan.sheets[0])
    for kind in ("pdf", "svg", "dxf"):
        assert write_drawing(tmp_path / f"a.{kind}", drawing).stat().st_size > 1000
    table = table_page(["task"], [], view)
    assert wrong(table) == {}


def test_the_dialogs_speak(speaking_window, page, tmp_path: Path):
    view = page("a")
    view._on_test_bend("box")
    view._on_draw("left")
    bend, holes = view._prompts.shown
    assert isinstance(holes, HolesDialog)
    said = [wrong(bend, "5052"), wrong(holes)]
    for line, text in ((bend.brake, "yard"), (bend.flat, "100"), (bend.first, "51"), (bend.second, "51.5")):
        line.setText(text)
    assert "K = 0," in bend.words.text()
    bend.flat.setText("12")
    said.append(wrong(bend, "yard test-bend"))
    holes.length.setText("wide")
    said.append(wrong(holes, "wide"))
    assert said == [{}] * 4


def test_a_file_with_faults_is_said_to_have_them(speaking_window, qtbot, qapp, page):
    view = page("a")
    path = view._presenter.shown.path
    path.write_text("job: x\nsteps:\n  - {id: a, wood: 1}\n  - {id: A}\n", encoding="utf-8")
    with qtbot.waitSignal(view._presenter.opened, timeout=10_000):
        view._presenter.open_again()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    known = "job x steps wood id name after covers open_for can_wait done log"
    assert wrong(view, f"{known} {examples()} {' '.join(view._presenter.metals)}") == {}


def test_a_changed_joint_and_marked_holes_stand_in_the_file_as_in_english(
    request: pytest.FixtureRequest, qtbot, page, tmp_path: Path, tables
):
    def changed(name: str) -> tuple[str, ...]:
        view = page(name)
        file = view._presenter.shown.path
        view.edit.show_entry("joints", "seam")
        before = view.edit.form.fields()
        view.edit.form._inputs["gap"].setText("0.5 mm")
        view.edit.form._inputs["joint"].set_value("outside-corner")
        with qtbot.waitSignal(view._presenter.opened, timeout=10_000):
            view.edit.save.click()
        view._on_draw("left")
        dialog = view._prompts.shown[-1]
        picture = tmp_path / f"{name}.png"
        image = QImage(200, 100, QImage.Format.Format_RGB32)
        image.fill(QColor("white"))
        image.save(str(picture))
        assert dialog.show_picture(picture)
        dialog.length.setText("62.5 mm")
        dialog.canvas.ends = [(0.0, 0.5), (100.0, 0.5)]
        dialog.canvas.holes = [DrawnHole((10.5, 10.5), 2.5)]
        dialog._on_save()
        joint = load_job(file, tables).joints[0].request
        assert (joint.gap_mm, joint.length_mm) == (0.5, 380.5)
        drawing = file.with_name("left-holes.yaml")
        assert read_drawing(drawing).scale.length_mm == 62.5
        dialog._open_drawing()
        return (
            str(before), file.read_text(encoding="utf-8"), drawing.read_text(encoding="utf-8"),
            dialog.length.text(), str(view._presenter.shown.entries),
        )  # fmt: skip

    english = changed("english")
    request.getfixturevalue("speaking_window")
    assert changed("other") == english
    assert "holes: 2.5 mm x 1" in english[1]
