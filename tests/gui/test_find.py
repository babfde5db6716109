"""One line that leads anywhere: what answers it, going there by keyboard, and what is remembered."""

import pytest
from PySide6.QtCore import Qt

from welds.gui.engine import load_engine
from welds.gui.memory import LastUse, Memory
from welds.gui.pages.faults.dialog import FaultDialog
from welds.gui.pages.find.dialog import FindDialog
from welds.gui.recent import MOST


@pytest.fixture(scope="module")
def real():
    return load_engine(None)


@pytest.fixture
def opened(make_window, real, qtbot):
    window = make_window(lambda: real)
    qtbot.waitUntil(lambda: window.view is not None)
    return window


@pytest.fixture
def ask(opened, qtbot):
    """Open the line, type, and return the dialog."""

    def ask(line: str) -> FindDialog:
        opened.commands.find.trigger()
        dialog = opened.findChildren(FindDialog)[-1]
        qtbot.keyClicks(dialog.line, line)
        return dialog

    return ask


def listed(dialog) -> list[str]:
    return [dialog.list.item(row).text() for row in range(dialog.list.count())]


def test_a_joint_in_a_few_words_is_there_on_enter(opened, ask, qtbot):
    opened.pages.show(2)
    dialog = ask("5052 corner 0.080 in")
    assert listed(dialog)[0] == "Set up:  TIG, outside corner, 5052 0.080 in"
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert opened.pages.front == 0
    fields = opened.presenter.fields
    assert (fields["metal"], fields["joint"], fields["thickness"]) == ("5052", "outside-corner", "0.080 in")
    assert opened.presenter.card is not None
    assert not dialog.isVisible()


def test_pages_commands_faults_and_metals_answer(ask):
    for line, wanted in (
        ("bench", "Page:  Bench"),
        ("larger", "Command:  Larger text"),
        ("undercut", "Fault:  Undercut: groove melted along the bead edge"),
        ("galvan", "Metal:  galvanised"),
    ):
        assert any(text.startswith(wanted) for text in listed(ask(line))), line


def test_arrows_choose_and_enter_goes(opened, ask, qtbot):
    dialog = ask("")
    pages = [text for text in listed(dialog) if text.startswith("Page:")]
    assert len(pages) == 6
    for _ in range(2):
        qtbot.keyClick(dialog.line, Qt.Key.Key_Down)
    chosen = dialog.list.currentItem().text()
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert opened.pages.buttons[opened.pages.front].text() == chosen.removeprefix("Page:  ")


def test_a_fault_opens_at_its_remedies(opened, ask, qtbot):
    dialog = ask("undercut")
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    shown = opened.view.findChild(FaultDialog)
    assert shown.faults.currentItem().text().startswith("Undercut")
    shown.reject()


def test_nothing_is_said_and_enter_does_nothing(opened, ask, qtbot):
    before = opened.presenter.fields
    dialog = ask("zzzz")
    assert dialog.nothing.isVisible()
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert dialog.isVisible()
    assert opened.presenter.fields == before
    dialog.reject()


def test_requests_that_stood_come_back_newest_first_and_once(opened, ask, qtbot):
    setup = opened.presenter
    for joint in ("butt", "tee", "butt"):
        setup.set_field("joint", joint)
        opened.recent.note()
    found = [text for text in listed(ask("")) if text.startswith("Recent:")]
    assert [text.split(", ")[1] for text in found][:2] == ["butt", "tee"]
    for millimetres in range(1, 3 * MOST):
        setup.set_field("thickness", f"{1 + millimetres / 10:g} mm")
        opened.recent.note()
    assert len(opened.recent.requests) == MOST


def test_a_request_without_a_card_is_not_remembered(opened):
    opened.recent.requests.clear()
    opened.presenter.set_field("thickness", "999 mm")
    opened.recent.note()
    assert opened.recent.requests == []


def test_recent_requests_outlive_the_window(tmp_path):
    memory = Memory(tmp_path)
    kept = LastUse({"metal": "304"}, "inch", ({"metal": "5052", "coating": ("paint",)}, {"metal": "304"}))
    assert memory.save(kept) == ""
    assert memory.load().last_use == kept


@pytest.mark.parametrize("broken", ['{"recent": 3}', '{"recent": [3]}', '{"recent": [{"metal": 5}]}'])
def test_a_broken_memory_is_set_aside(tmp_path, broken):
    (tmp_path / "last-use.json").write_text(broken.replace("{", '{"schema": "welds.last-use/1", ', 1))
    loaded = Memory(tmp_path).load()
    assert loaded.last_use == LastUse()
    assert "Kept as" in loaded.trouble
