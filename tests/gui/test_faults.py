"""From the looks of a bead to a changed card: what is offered, what it does, how it is taken back."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton

from welds.gui.engine import load_engine
from welds.gui.pages.faults.dialog import FaultDialog
from welds.gui.pages.faults.finder import FaultFinder
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.quantities.units import Units

CORNER = {"process": "tig", "metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}


@pytest.fixture(scope="module")
def real():
    return load_engine(None)


@pytest.fixture
def setup(real, qapp):
    made = SetupPresenter(real)
    made.restore(CORNER, Units.METRIC)
    return made


@pytest.fixture
def finder(setup):
    return FaultFinder(setup)


def current(setup) -> float:
    return setup.card.settings["current"].figure.start


def test_only_faults_of_the_process_are_offered(finder, setup):
    tig = {look.name for look in finder.faults()}
    assert {"tungsten-inclusion", "undercut", "burn-through"} <= tig
    assert "wire-feed-trouble" not in tig
    setup.restore({**CORNER, "process": "mig", "thickness": "3 mm"}, Units.METRIC)
    mig = {look.name for look in finder.faults()}
    assert "wire-feed-trouble" in mig
    assert "tungsten-inclusion" not in mig


def test_a_remedy_says_what_the_card_would_show(finder, setup):
    before = current(setup)
    line = finder.remedies("undercut")[0]
    after = setup.card_after(line.adjustment).settings["current"].figure.start
    assert after < before
    by_fives = [5 * round(amps / 5) for amps in (before, after)]  # as the trade rounds currents
    assert line.change == f"Current: {by_fives[0]} A \u2192 {by_fives[1]} A"


def test_what_the_card_cannot_do_comes_last_and_has_no_button(finder):
    lines = finder.remedies("porosity")
    has_step = [line.adjustment is not None for line in lines]
    assert has_step == sorted(has_step, reverse=True)
    assert any("rust" in line.cause and not line.change for line in lines)


def test_a_change_holds_until_the_request_changes(setup, finder):
    before = current(setup)
    setup.adjust(finder.remedies("undercut")[0].adjustment)
    less = current(setup)
    assert less < before
    setup.switch_units()
    assert current(setup) == less
    setup.take_back()
    assert current(setup) == before
    setup.adjust(finder.remedies("undercut")[0].adjustment)
    setup.set_field("joint", "butt")
    setup.set_field("joint", "outside-corner")
    assert current(setup) == before


def test_the_end_of_the_band_is_not_offered(setup, finder):
    for _ in range(8):
        line = next(
            (each for each in finder.remedies("undercut") if each.adjustment and "Current" in each.change),
            None,
        )
        if line is None:
            break
        setup.adjust(line.adjustment)
    else:
        pytest.fail("the current is offered to move for ever")
    assert current(setup) == pytest.approx(setup.card.settings["current"].figure.low, abs=5)


def test_inches_where_inches_are_in_use(setup, finder):
    setup.set_units(Units.INCH)
    assert any("in/min" in line.change for line in finder.remedies("burn-through"))


def test_one_click_in_the_dialog_chooses(qtbot, finder):
    dialog = FaultDialog(finder, "TIG, outside corner")
    qtbot.addWidget(dialog)
    dialog.show()
    row = [look.name for look in finder.faults()].index("burn-through")
    dialog.faults.setCurrentRow(row)
    assert dialog.applies
    assert all(button.accessibleName() for button in dialog.applies)
    with qtbot.waitSignal(dialog.chosen) as heard:
        qtbot.mouseClick(dialog.applies[0], Qt.MouseButton.LeftButton)
    assert heard.args[0].fault == "burn-through"
    assert not dialog.isVisible()


def test_every_fault_can_be_looked_at(qtbot, finder):
    dialog = FaultDialog(finder, "TIG, outside corner")
    qtbot.addWidget(dialog)
    for row, look in enumerate(finder.faults()):
        dialog.faults.setCurrentRow(row)
        shown = [each.text() for each in dialog.findChildren(QLabel) if not each.isHidden()]
        assert any(look.seen_as in text for text in shown)


def test_from_the_window_and_back(qtbot, make_window, real):
    window = make_window(lambda: real)
    qtbot.waitUntil(lambda: window.view is not None)
    window.presenter.restore(CORNER, Units.METRIC)
    before = current(window.presenter)
    window.commands.find_fault.trigger()
    dialog = window.view.findChild(FaultDialog)
    names = [look.name for look in FaultFinder(window.presenter).faults()]
    dialog.faults.setCurrentRow(names.index("undercut"))
    qtbot.mouseClick(dialog.applies[0], Qt.MouseButton.LeftButton)
    notice = window.view.card.adjusted
    assert current(window.presenter) < before
    assert "Changed for undercut: current now" in notice.words()
    qtbot.mouseClick(notice.findChild(QPushButton), Qt.MouseButton.LeftButton)
    assert current(window.presenter) == before
    assert notice.words() == ""
