"""The job page: the demo opens, faults are listed, the packet is written."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QTableWidget, QWidget

from tests.gui.fakes import FakePrompts
from welds.gui.engine import Engine
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.pages.job.view import JobView
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
    order = view.tabs.widget(titles.index("Order"))
    assert isinstance(order, QTableWidget)
    assert order.rowCount() == len(presenter.shown.plan.turns)
    assert "0 of" in view.heading.text()
    view.grab()


def test_units_change_the_words_and_keep_the_tab(qtbot, job_page):
    presenter, view, _ = job_page
    opened(qtbot, presenter, presenter.open_demo)
    view.tabs.setCurrentIndex(3)
    presenter.set_units(Units.INCH)
    assert view.tabs.currentIndex() == 3
    cut = view.tabs.widget(3)
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
