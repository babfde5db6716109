"""The job page writes jobs: begun, changed, ticked, taken out; nothing that was typed is lost."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from tests.gui.fakes import FakePrompts
from welds.gui.engine import Engine
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.pages.job.view import JobView
from welds.job.job_edit import LISTS, SECTIONS
from welds.job.job_entries import _JOINT, _PIECE, _REPAIR, _STOCK
from welds.job.job_fields import LINK_FIELDS
from welds.job.job_file import load_job
from welds.job.job_form import FORMS, KINDS
from welds.quantities.units import Units

JOB = """job: x
defaults: {metal: low-carbon, thickness: 1.2 mm, process: mig}
repairs:
  - {id: left, holes: 4 mm x 2, region: 120 x 90 mm}   # the worse one
  - {id: tow, holes: 4 mm x 2, region: 120 x 90 mm, part: towing}
steps:
  - {id: paint, covers: [left]}
"""
USUAL = {"process": "tig", "metal": "5052", "thickness": "2 mm"}


@pytest.fixture
def page(qtbot, tables, tmp_path: Path):
    """Return the view of an own job with its presenter, prompts and file."""
    file = tmp_path / "job.yaml"
    file.write_text(JOB, encoding="utf-8")
    window = QWidget()
    qtbot.addWidget(window)
    presenter = JobPresenter(Engine(tables, None, None), Units.METRIC, window, usual=lambda: USUAL)
    prompts = FakePrompts(window)
    prompts.confirm = lambda *_: True
    view = JobView(presenter, prompts, window)
    with opening(qtbot, presenter):
        presenter.open(file)
    yield view, presenter, prompts, file
    presenter.jobs.wait()


def opening(qtbot, presenter):
    return qtbot.waitSignal(presenter.opened, timeout=10_000)


def type_in(view, **fields: str) -> None:
    for name, text in fields.items():
        made = view.edit.form._inputs[name]
        made.set_value(text) if hasattr(made, "set_value") else made.setText(text)


def test_the_forms_hold_every_field_that_a_file_may():
    fields = {
        "pieces": _PIECE,
        "joints": _JOINT,
        "repairs": _REPAIR,
        "stock": _STOCK,
        "steps": ("id", "name"),
    }
    assert set(KINDS) == set(FORMS) == set(SECTIONS) == set(fields)
    for section, names in fields.items():
        links = () if section == "stock" else LINK_FIELDS
        assert {"id", *(each.name for each in FORMS[section])} | {"name"} == {*names, *links} | {"name"}
    assert set(LISTS) <= {each.name for form in FORMS.values() for each in form}


def test_a_repair_is_shown_with_reasons_and_drawing_and_what_is_not_ours_says_so(page):
    view, *_ = page
    view.repairs.choose("left")
    assert "Drill and fill" in view.repairs.title.text()
    text = view.repairs.text.toPlainText()
    for words in ("WHY", "apart", "kJ of arc", "min for the plugs", "SET-UP", "CHECKS"):
        assert words in text
    assert view.repairs.picture.isVisibleTo(view.repairs)
    view.repairs.choose("tow")
    assert "qualified welder" in view.repairs.text.toPlainText()
    assert not view.repairs.picture.isVisibleTo(view.repairs)


def test_values_of_a_repair_are_changed_from_it_and_the_decision_follows(qtbot, page, tables):
    view, presenter, _, file = page
    view.repairs.choose("left")
    view.repairs.change_button.click()
    assert view.tabs.currentWidget() is view.edit
    type_in(view, holes="4 mm x 60", behind="thin")
    with opening(qtbot, presenter):
        view.edit.save.click()
    assert presenter.shown.plan.repairs["left"].choice.value == "patch"
    assert "# the worse one" in file.read_text(encoding="utf-8")
    assert view.tabs.currentWidget() is view.edit
    assert (view.edit.form.key, view.edit.drafts) == ("left", {})


def test_a_slip_is_said_nothing_is_written_and_what_was_typed_stays(page):
    view, _, _, file = page
    view.edit.show_entry("repairs", "left")
    type_in(view, holes="many")
    view.edit.save.click()
    assert "holes: many" in view.edit.trouble.text()
    assert file.read_text(encoding="utf-8") == JOB
    view.edit.show_entry("repairs", "tow")
    assert "not saved" in view.edit.list.item(0).text()
    view.edit.show_entry("repairs", "left")
    assert view.edit.form.fields()["holes"] == "many"


def test_a_task_is_added_ticked_and_taken_out(qtbot, page, tables):
    view, presenter, _, file = page
    view.edit.begin("steps")
    view.edit.form.name.setText("Hang it")
    type_in(view, after="paint", name="hang it up")
    with opening(qtbot, presenter):
        view.edit.save.click()
    assert [step.id for step in load_job(file, tables).steps] == ["paint", "hang-it"]
    assert view.edit.form.key == "hang-it"
    with opening(qtbot, presenter):
        view.order.table.item(0, 0).setCheckState(Qt.CheckState.Checked)
    assert "1 of 4" in view.heading.text()
    view.edit.show_entry("steps", "hang-it")
    with opening(qtbot, presenter):
        view.edit.remove.click()
    assert [step.id for step in load_job(file, tables).steps] == ["paint"]


def test_a_short_name_that_is_taken_writes_nothing_over_it(page):
    view, _, _, file = page
    view.edit.begin("repairs")
    view.edit.form.name.setText("left")
    type_in(view, holes="3 mm x 1", region="50 x 50 mm")
    view.edit.save.click()
    assert "There is a left already" in view.edit.trouble.text()
    assert file.read_text(encoding="utf-8") == JOB


def test_a_circle_made_on_the_page_is_named_and_can_be_undone_there(qtbot, page):
    view, presenter, *_ = page
    view.edit.show_entry("repairs", "left")
    type_in(view, after="paint")
    with opening(qtbot, presenter):
        view.edit.save.click()
    assert view.tabs.tabText(0) == "Faults"
    assert "circle" in view.tabs.widget(0).toPlainText()
    view.edit.show_entry("repairs", "left")
    type_in(view, after="")
    with opening(qtbot, presenter):
        view.edit.save.click()
    assert presenter.shown.plan is not None


def test_a_job_begins_with_the_usual_metal_and_the_demo_is_kept_as_a_copy(qtbot, page, tables, tmp_path):
    view, presenter, prompts, _ = page
    prompts.save_path = tmp_path / "rod-rack"
    with opening(qtbot, presenter):
        view.new.click()
    assert view.tabs.currentWidget() is view.edit
    view.edit.form.name.setText("rail")
    type_in(view, size="600 x 40 mm")
    with opening(qtbot, presenter):
        view.edit.save.click()
    (piece,) = load_job(tmp_path / "rod-rack.yaml", tables).pieces
    assert (piece.metal.id, piece.thickness_mm) == ("5052", 2.0)
    with opening(qtbot, presenter):
        view.open_demo.click()
    assert view.edit is None
    prompts.save_path = tmp_path / "mine.yaml"
    with opening(qtbot, presenter):
        view.copy.click()
    assert (presenter.shown.path, view.edit is not None) == (tmp_path / "mine.yaml", True)
