"""A first start: three questions with the usual answers given, and five interactions to a printed card."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolButton

from tests.gui.fakes import FakePrompts
from welds.bench.templates import USUAL, templates
from welds.gui.engine import load_engine
from welds.gui.main_window import MainWindow
from welds.gui.memory import LastUse, Memory
from welds.gui.outfit import Outfit
from welds.gui.pages.job.view import JobView
from welds.gui.pages.welcome.dialog import WelcomeDialog
from welds.gui.settings import WindowState
from welds.gui.theme import Theme
from welds.quantities.units import Units

MOST_INTERACTIONS = 5


@pytest.fixture
def first_start(qtbot, qapp, settings_file, tmp_path):
    """Return a window that opens for the first time, over a bench file that is not there yet."""
    engine = load_engine(tmp_path / "tables")
    outfit = Outfit(Theme(qapp), Memory(tmp_path), lambda: engine, FakePrompts, welcomes=True)
    window = MainWindow(WindowState(settings_file), lambda: outfit)
    window.resize(1366, 768)
    window.show()
    qtbot.waitUntil(lambda: window.view is not None)
    yield window
    window.close()
    window.deleteLater()


@pytest.fixture
def welcome(first_start) -> WelcomeDialog:
    return first_start.findChild(WelcomeDialog)


def test_enter_begins_with_the_usual_answers(first_start, welcome):
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert not welcome.isVisible()
    assert first_start.presenter.card is not None
    assert first_start.presenter.engine.bench.kept.text == ""


def test_units_and_machines_are_taken_up(first_start, welcome):
    welcome.units.set_value("inch")
    welcome.machines.set_values((USUAL[0],))
    welcome.begin.click()
    assert first_start.presenter.units is Units.INCH
    assert first_start.presenter.engine.bench.equipment.machine.name == USUAL[0]
    assert first_start.presenter.card.machine == USUAL[0]


def test_every_common_kind_is_offered(welcome):
    welcome.machines.set_values(tuple(templates()))
    assert welcome.machines.values() == tuple(templates())


def test_a_bench_that_is_there_is_left_alone(first_start, welcome):
    bench = first_start.presenter.engine.bench
    from welds.bench.templates import starting_bench

    bench.save(starting_bench([USUAL[1]]))
    welcome.machines.set_values((USUAL[0],))
    welcome.begin.click()
    assert bench.equipment.machine.name == USUAL[1]


def test_the_demo_job_opens_from_it(first_start, welcome, qtbot):
    welcome.demo.click()
    page = first_start.pages.stack.currentWidget()
    assert isinstance(page, JobView)
    qtbot.waitUntil(lambda: page.tabs.count() > 3, timeout=10_000)


def test_it_is_asked_once(first_start, welcome, tmp_path):
    welcome.begin.click()
    first_start.save()
    assert not Memory(tmp_path).load().is_first


def test_a_broken_memory_is_no_first_start(tmp_path):
    (tmp_path / "last-use.json").write_text("{")
    assert not Memory(tmp_path).load().is_first
    assert Memory(tmp_path).load().last_use == LastUse()


def test_five_interactions_from_a_fresh_start_to_a_printed_card(first_start, welcome, tmp_path, qtbot):
    """An aluminium outside corner: every click and key is counted, also the one in the print dialog."""
    counted = []

    def click(widget) -> None:
        counted.append(widget)
        QTest.mouseClick(widget, Qt.MouseButton.LeftButton)

    click(welcome.begin)
    view = first_start.view
    corner = next(
        each for each in view.request.joint.findChildren(object) if "utside corner" in _name_of(each)
    )
    click(corner)
    printed = next(
        each
        for each in first_start.findChildren(QToolButton)
        if each.defaultAction() is first_start.commands.print_card
    )
    from PySide6.QtPrintSupport import QPrinter

    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "card.pdf"))
    first_start._prompts.printer = printer
    counted.append("the print dialog's own button")
    click(printed)
    request = first_start.presenter.card.request
    assert (request.metal, request.joint.value) == ("5052", "outside-corner")
    assert (tmp_path / "card.pdf").stat().st_size > 5000
    assert len(counted) <= MOST_INTERACTIONS


def _name_of(thing: object) -> str:
    return thing.accessibleName() if hasattr(thing, "accessibleName") else ""
