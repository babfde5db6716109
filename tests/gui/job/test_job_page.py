"""The job page: the demo opens, faults are listed, the packet is written."""

from datetime import date
from pathlib import Path

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QWidget

from tests.gui.fakes import FakePrompts
from tests.logbook.conftest import BAIT_TANK
from welds.gui.engine import Engine
from welds.gui.jobs.queue import JobQueue
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.pages.job.view import JobView
from welds.gui.pages.log.desk import LogDesk
from welds.gui.past_welds import PastWelds
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.logbook.places import place_of
from welds.quantities.units import Units


@pytest.fixture
def job_page(qtbot, tables):
    """Return presenter, view and prompts of one page over the real tables."""
    window = QWidget()
    qtbot.addWidget(window)
    presenter = JobPresenter(Engine(tables, None, None), Units.METRIC, window)
    prompts = FakePrompts(window)
    yield presenter, JobView(presenter, prompts, window), prompts
    presenter.jobs.wait()


def opened(qtbot, presenter, act) -> None:
    with qtbot.waitSignal(presenter.opened, timeout=10_000):
        act()


def test_the_demo_opens_with_everything_in_tabs(qtbot, job_page):
    presenter, view, _ = job_page
    assert not view.packet.isEnabled()
    opened(qtbot, presenter, view.open_demo.click)
    titles = [view.tabs.tabText(n) for n in range(view.tabs.count())]
    assert titles[:2] == ["Cautions", "Order"]
    assert {"Cut list", "Sheets", "Blanks", "Cards", "Tacks", "Materials", "Checks"} <= set(titles)
    order = view.order.table
    assert order.rowCount() == len(presenter.shown.plan.turns)
    assert "0 of" in view.heading.text()
    view.grab()


def test_a_card_is_read_whole_and_a_blank_saved_in_three_forms(qtbot, job_page, tmp_path: Path):
    presenter, view, prompts = job_page
    opened(qtbot, presenter, presenter.open_demo)
    titles = [view.tabs.tabText(n) for n in range(view.tabs.count())]
    cards, blanks, tacks = (view.tabs.widget(titles.index(each)) for each in ("Cards", "Blanks", "Tacks"))
    assert "DO FIRST" in cards.text.toPlainText()
    assert not cards.save_drawing.isVisibleTo(cards)
    assert "Least inside radius" in blanks.text.toPlainText()
    assert "clamp or weight" in tacks.text.toPlainText()
    for name, begins in (("a", b"%PDF"), ("a.dxf", b"  0\nSECTION"), ("a.svg", b"<?xml")):
        prompts.save_path = tmp_path / name
        blanks.save_drawing.click()
        path = tmp_path / (name if "." in name else f"{name}.pdf")
        assert path.read_bytes().replace(b"\r\n", b"\n").startswith(begins), name
    prompts.save_path = tmp_path / "a.doc"
    blanks.save_drawing.click()
    assert "a.doc" in prompts.told[0][1]


def test_units_change_the_words_and_keep_the_tab(qtbot, job_page):
    presenter, view, _ = job_page
    opened(qtbot, presenter, presenter.open_demo)
    view.tabs.setCurrentIndex(4)
    presenter.set_units(Units.INCH)
    assert view.tabs.currentIndex() == 4
    cut = view.tabs.widget(4)
    assert " in x " in cut.item(0, 3).text()


def test_faults_are_listed_and_mended_ones_read_again(qtbot, job_page, tmp_path: Path):
    presenter, view, prompts = job_page
    path = tmp_path / "bad.yaml"
    path.write_text("job: x\nsteps: [{id: a, afte: [b]}]\n", encoding="utf-8")
    prompts.open_path = path
    opened(qtbot, presenter, view.open_file.click)
    assert "bad.yaml, line 2: steps.a.afte" in view.tabs.widget(0).toPlainText()
    assert not view.packet.isEnabled()
    path.write_text("job: x\nsteps: [{id: a}]\n", encoding="utf-8")
    opened(qtbot, presenter, view.open_again.click)
    assert view.packet.isEnabled()


def test_the_packet_is_written_or_the_refusal_told(qtbot, job_page, tmp_path: Path):
    presenter, view, prompts = job_page
    opened(qtbot, presenter, presenter.open_demo)
    prompts.save_path = tmp_path / "packet"
    view.packet.click()
    assert (tmp_path / "packet.pdf").read_bytes().startswith(b"%PDF")
    prompts.save_path = tmp_path / "missing" / "packet.pdf"
    view.packet.click()
    assert prompts.told[0][0] == "The packet was not written"


def test_a_change_is_taken_back_byte_for_byte_unless_another_hand_came_between(
    qtbot, job_page, tmp_path: Path
):
    presenter, view, prompts = job_page
    path = tmp_path / "own.yaml"
    first = "job: x  # mine\nsteps:\n  - {id: a, name: cut}\n"
    path.write_text(first, encoding="utf-8")
    prompts.open_path = path
    opened(qtbot, presenter, view.open_file.click)
    assert not view.undo.isEnabled()
    for key in ("b", "c"):
        opened(
            qtbot,
            presenter,
            lambda key=key: presenter.save_entry("steps", key, {"name": "fold"}, is_new=True),
        )
    assert view.undo.isEnabled()
    opened(qtbot, presenter, view.undo.click)
    opened(qtbot, presenter, view.undo.click)
    assert path.read_text(encoding="utf-8") == first
    assert not view.undo.isEnabled()
    opened(qtbot, presenter, lambda: presenter.save_entry("steps", "d", {"name": "x"}, is_new=True))
    path.write_text(path.read_text(encoding="utf-8") + "# by another hand\n", encoding="utf-8")
    view.undo.click()
    assert "another program" in prompts.told[-1][1]
    assert "another hand" in path.read_text(encoding="utf-8")


def test_print_and_copy_act_on_the_job(qtbot, job_page, tmp_path: Path):
    presenter, view, prompts = job_page
    assert not view.output.is_ready
    view.output.print_card()
    view.output.copy_text()
    opened(qtbot, presenter, presenter.open_demo)
    assert view.output.is_ready
    prompts.printer = QPrinter()
    prompts.printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    prompts.printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    view.output.print_card()
    assert (tmp_path / "printed.pdf").read_bytes().count(b"/Type /Page\n") > 10
    view.output.copy_text()
    assert "MATERIALS" in QGuiApplication.clipboard().text().upper()


LOGGED = """job: x
joints: [{id: a, process: tig, metal: 5052-H32, thickness: 2.03 mm, joint: tee, length: 90 mm, log: [1]}]
"""


@pytest.fixture
def job_over_log(qtbot, tables, tmp_path: Path):
    """Return presenter, view, switch of learning and a job file, over the person's own log with one weld."""
    with open_logbook(place_of()) as log:
        log.add(read_entry(BAIT_TANK | {"made_at": date.today().isoformat()}, tables))
    path = tmp_path / "job.yaml"
    path.write_text(LOGGED, encoding="utf-8")
    window = QWidget()
    qtbot.addWidget(window)
    past = PastWelds(tables)
    desk = LogDesk(JobQueue(window), JobQueue(window), "", window)
    presenter = JobPresenter(Engine(tables, None, None, None, past), Units.METRIC, window, desk)
    yield presenter, JobView(presenter, FakePrompts(window), window), past, path
    presenter.jobs.wait()
    desk.close()


def test_the_page_shows_what_the_log_says_and_does_not_learn_where_it_may_not(qtbot, job_over_log):
    presenter, view, past, path = job_over_log
    opened(qtbot, presenter, lambda: presenter.open(path))
    titles = [view.tabs.tabText(n) for n in range(view.tabs.count())]
    assert "112 A, worked well" in view.order.table.item(0, 2).text()
    assert "learned from 1 past weld" in view.tabs.widget(titles.index("Cards")).list.item(0).text()
    past.is_on = False
    opened(qtbot, presenter, presenter.open_again)
    assert presenter.shown.plan.set_ups[0].card.learned is None
    assert "112 A, worked well" in view.order.table.item(0, 2).text()


def test_faults_of_a_file_are_listed_with_a_log_too(qtbot, job_over_log):
    presenter, view, _, path = job_over_log
    path.write_text("job: x\nsteps: [{id: a, afte: [b]}]\n", encoding="utf-8")
    opened(qtbot, presenter, lambda: presenter.open(path))
    assert "line 2: steps.a.afte" in view.tabs.widget(0).toPlainText()
