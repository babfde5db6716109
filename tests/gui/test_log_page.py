"""The log in the window, over a real log in the test's own folder: what a person does and gets."""

import json
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QSettings, Qt
from PySide6.QtGui import QAccessible, QGuiApplication
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLineEdit, QPlainTextEdit

from tests.gui.log_support import BAIT_TANK, MUDGUARD, Answers, settle
from welds.gui.engine import load_engine
from welds.gui.main_window import MainWindow
from welds.gui.memory import LastUse, Memory
from welds.gui.outfit import Outfit
from welds.gui.settings import WindowState
from welds.gui.theme import Theme
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook

BOX = {"metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}


@pytest.fixture(scope="module")
def engine():
    return load_engine(None)


@pytest.fixture
def file(tmp_path) -> Path:
    return tmp_path / "yard.db"


@pytest.fixture
def put(file, tables):
    """Return a function that logs welds as another bench would."""

    def write(*given):
        with open_logbook(str(file)) as log:
            return [log.add(read_entry(fields, tables)).entry for fields in given]

    return write


@pytest.fixture
def make(qtbot, qapp, engine, tmp_path, file):
    made = []

    def window() -> MainWindow:
        memory = Memory(tmp_path)
        memory.save(LastUse(BOX))
        state = WindowState(QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat))
        state.write("log", str(file))
        opened = MainWindow(state, lambda: Outfit(Theme(qapp), memory, lambda: engine, Answers))
        opened.resize(1366, 768)
        opened.show()
        made.append(opened)
        qtbot.waitUntil(lambda: opened.view is not None)
        opened.log.start()
        settle(opened, qapp)
        return opened

    yield window
    for opened in made:
        dialog = opened.log.entering.dialog
        if dialog is not None:
            dialog.close()
        opened.close()
        opened.deleteLater()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    engine.past.forget()
    engine.past.ask, engine.past.is_on = None, True


@pytest.fixture
def at_log(make, qapp):
    """Return a maker of windows with the page of the log in front."""

    def window():
        opened = make()
        opened.log.show_page()
        settle(opened, qapp)
        return opened

    return window


def rows(window) -> list[str]:
    entries = window.log.view.table.entries
    return [entries.entry(row).notes for row in range(entries.rowCount())]


def click(qtbot, button):
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


# ----------------------------------------------------------------------------------------- what is in front


def test_print_pdf_and_copy_take_out_the_weld_in_hand(at_log, put, tmp_path):
    put(BAIT_TANK, MUDGUARD)
    window = at_log()
    commands, prompts = window.commands, window._prompts
    window.log.view.table.choose(0)  # the newest first: the mudguard
    prompts.save_path = tmp_path / "out"
    commands.save_pdf.trigger()
    assert prompts.suggested == ["procedure-sheet-log-2.pdf"]
    assert (tmp_path / "out.pdf").read_bytes().startswith(b"%PDF")
    commands.copy_text.trigger()
    copied = QGuiApplication.clipboard().text()
    assert "log entry 2" in copied
    assert "Preliminary: what was done once" in copied.splitlines()[1]
    assert "Thickness: 1.5 mm" in copied
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    prompts.printer = printer
    commands.print_card.trigger()
    assert (tmp_path / "printed.pdf").stat().st_size > 5000
    window.pages.show(0)
    commands.copy_text.trigger()
    assert "log entry" not in QGuiApplication.clipboard().text()


def test_printing_is_grey_while_no_weld_is_in_hand(at_log, put, qapp):
    put(BAIT_TANK)
    window = at_log()
    assert window.commands.print_card.isEnabled()
    window.log.presenter.remove()
    settle(window, qapp)
    assert not window.commands.print_card.isEnabled()
    window.pages.show(0)
    assert window.commands.print_card.isEnabled()


# ---------------------------------------------------------------------------------------------- from the card


def test_two_clicks_log_the_weld_of_the_card(make, qtbot, qapp, file):
    window = make()
    assert not file.exists()  # nothing is made before something is logged
    shown = window.view.card.main.start.text()
    click(qtbot, window.view.card.log_weld)
    click(qtbot, window.log.entering.dialog.outcomes["worked-well"])
    settle(window, qapp)
    with open_logbook(str(file)) as log:
        entry = log.get(1)
    assert (entry.metal, entry.joint, entry.outcome) == ("5052", "outside-corner", "worked-well")
    assert f"{entry.settings['current']:g}" == shown
    assert "Logged as number 1" in window.statusBar().currentMessage()
    assert window.log.entering.dialog is None
    assert window.log.desk.trouble is None


def test_the_form_takes_what_was_changed_the_faults_and_a_picture(make, qtbot, qapp, file, tmp_path):
    from PIL import Image

    picture = tmp_path / "bead.png"
    Image.new("RGB", (40, 30), "grey").save(picture)
    window = make()
    click(qtbot, window.view.card.log_weld)
    dialog = window.log.entering.dialog
    dialog.settings.fields["current"].selectAll()
    qtbot.keyClicks(dialog.settings.fields["current"], "118")
    click(qtbot, dialog.faults.chips["burn-through"])
    dialog.faults.others.chosen.emit("5012")
    dialog.notes.setPlainText("console box, first try (invented)")
    window._prompts.open_paths = [picture]
    click(qtbot, dialog.add_pictures)
    dialog._fields["welder"].setText("first bench")
    dialog._fields["welder"].textEdited.emit("first bench")
    click(qtbot, dialog.outcomes["failed"])
    settle(window, qapp)
    with open_logbook(str(file)) as log:
        entry = log.get(1)
        assert log.photo_file(entry.photos[0]).read_bytes() == picture.read_bytes()
    assert entry.settings["current"] == 118
    assert entry.faults == ("burn-through", "5012")
    click(qtbot, window.view.card.log_weld)
    assert window.log.entering.dialog.form.texts["welder"] == "first bench"  # remembered


def test_a_wrong_figure_is_told_and_nothing_is_lost(make, qtbot, qapp, file):
    window = make()
    click(qtbot, window.view.card.log_weld)
    dialog = window.log.entering.dialog
    dialog.form.set_text("thickness", "thick")
    click(qtbot, dialog.outcomes["worked"])
    settle(window, qapp)
    assert "thick" in dialog.refusal.reason()
    assert dialog.isVisible()
    assert not file.exists()


def test_enter_in_a_field_logs_nothing(make, qtbot, qapp, file):
    window = make()
    click(qtbot, window.view.card.log_weld)
    field = window.log.entering.dialog.settings.fields["current"]
    field.setFocus()
    qtbot.keyClick(field, Qt.Key.Key_Return)
    settle(window, qapp)
    assert window.log.entering.dialog is not None
    assert not file.exists()


def test_a_draft_survives_the_loss_of_the_window(make, at_log, qtbot, qapp):
    first = make()
    click(qtbot, first.view.card.log_weld)
    first.log.entering.dialog.form.set_text("notes", "half a sentence")
    first.log.entering.dialog.draft_due.emit(first.log.entering.dialog.form)  # the rest after typing
    settle(first, qapp)
    second = at_log()  # the first was never closed in good order
    assert "5052" in second.log.view.notices.draft.words()
    click(qtbot, second.log.view.notices.draft.buttons["go-on"])
    settle(second, qapp)
    assert second.log.entering.dialog.notes.toPlainText() == "half a sentence"
    click(qtbot, second.log.entering.dialog.outcomes["worked"])
    settle(second, qapp)
    assert rows(second) == ["half a sentence"]
    assert second.log.view.notices.draft.words() == ""


def test_a_form_that_nobody_touched_leaves_no_draft(make, qtbot, qapp):
    window = make()
    click(qtbot, window.view.card.log_weld)
    window.log.entering.dialog.reject()
    settle(window, qapp)
    assert not list(window.log.desk.place.drafts.glob("*.json"))


# ------------------------------------------------------------------------------------------ beside the card


def test_past_welds_stand_beside_the_card_and_move_its_current(make, put, qtbot, qapp):
    put(*[{**BAIT_TANK, "made_at": f"2026-03-{day:02}"} for day in range(1, 11)])
    window = make()
    strip = window.view.card.past
    assert strip.isVisible()
    learned = window.presenter.card.learned
    assert learned.welds == 10
    assert learned.band.start > learned.table.start  # 112 A were used where the tables say less
    words = " ".join(each.text() for each in strip.findChildren(type(strip._summary)))
    assert "You ran this at 112 A" in words
    assert "10 past welds speak" in words
    click(qtbot, strip.learning)
    assert window.presenter.card.learned is None
    assert strip.isVisible()
    window.close()
    again = make()
    assert again.presenter.card.learned is None  # the choice is remembered
    click(qtbot, again.view.card.past.learning)
    settle(again, qapp)
    assert again.presenter.card.learned is not None


def test_a_removed_weld_leaves_the_learning_at_once(at_log, put, qapp):
    put(BAIT_TANK)
    window = at_log()
    assert window.presenter.card.learned is not None
    window.log.presenter.remove()
    settle(window, qapp)
    assert window.presenter.card.learned is None
    window.log.presenter.undo()
    settle(window, qapp)
    assert window.presenter.card.learned is not None


def test_without_a_log_nothing_is_opened_and_nothing_stands_there(make, file):
    window = make()
    assert not window.view.card.past.isVisible()
    assert not file.exists()


# ------------------------------------------------------------------------------------------------ the page


def test_the_page_lists_filters_searches_and_sorts(at_log, put, qtbot, qapp):
    put(BAIT_TANK, MUDGUARD)
    window = at_log()
    view = window.log.view
    assert rows(window) == [MUDGUARD["notes"], BAIT_TANK["notes"]]  # newest first
    view.filter.text.setText("bait 5052")
    settle(window, qapp)
    assert rows(window) == [BAIT_TANK["notes"]]
    click(qtbot, view.filter.clear)
    settle(window, qapp)
    assert len(rows(window)) == 2
    assert view.filter.text.text() == ""
    view.table.horizontalHeader().setSortIndicator(3, Qt.SortOrder.DescendingOrder)  # thickness
    settle(window, qapp)
    assert rows(window) == [BAIT_TANK["notes"], MUDGUARD["notes"]]
    view.filter.fields["fault"].chosen.emit("burn-through")
    settle(window, qapp)
    assert rows(window) == [MUDGUARD["notes"]]
    view.filter.fields["since"].setText("next week")
    settle(window, qapp)
    assert view.filter.fields["since"].property("invalid")
    assert rows(window) == [MUDGUARD["notes"]]  # what stood there stays


def test_a_filter_is_kept_used_and_forgotten(at_log, put, qapp):
    put(BAIT_TANK, MUDGUARD)
    window = at_log()
    view, prompts = window.log.view, window._prompts
    view.filter.text.setText("mudguard")
    prompts.text = "trailer"
    view.filter.save_wanted.emit()
    settle(window, qapp)
    view.filter.clear.click()
    settle(window, qapp)
    window.log.presenter.use_filter("trailer")
    settle(window, qapp)
    assert view.filter.text.text() == "mudguard"
    assert rows(window) == [MUDGUARD["notes"]]
    prompts.choice = "trailer"
    view.filter.forget_wanted.emit()
    settle(window, qapp)
    assert "trailer" not in [view.filter.saved.itemText(place) for place in range(view.filter.saved.count())]


def test_the_first_welds_are_there_before_all_are_counted(at_log, file, tables, qapp):
    from tests.logbook.many import fill

    with open_logbook(str(file)) as log:
        fill(log, tables, 250)
    window = at_log()
    view, shown = window.log.view, []
    window.log.presenter.listing_changed.connect(lambda it: shown.append((it.count, it.is_counted)))
    view.filter.text.setText("invented for")
    settle(window, qapp)
    assert shown == [(100, False), (250, True)]
    assert view.count.text().startswith("250 welds fit in yard.db")
    view.table.sort_wanted.emit("current_a", True)  # the same welds are not counted again
    settle(window, qapp)
    assert shown[2:] == [(250, True)]
    window.log.presenter.remove()
    settle(window, qapp)
    assert shown[-1] == (249, True)


def test_the_nearest_to_the_card(at_log, put, qtbot, qapp):
    put(BAIT_TANK, MUDGUARD)
    window = at_log()
    click(qtbot, window.log.view.filter.nearest)
    settle(window, qapp)
    assert rows(window) == [BAIT_TANK["notes"]]  # another process is never alike


def test_change_remove_and_undo(at_log, put, qtbot, qapp):
    put(BAIT_TANK, MUDGUARD)
    window = at_log()
    view = window.log.view
    view.table.choose(1)
    click(qtbot, view.detail.change)
    settle(window, qapp)
    dialog = window.log.entering.dialog
    dialog.notes.setPlainText("bait tank, corrected (invented)")
    click(qtbot, dialog.outcomes["worked"])
    settle(window, qapp)
    assert rows(window)[1] == "bait tank, corrected (invented)"
    click(qtbot, view.notices.undo.buttons["undo"])
    settle(window, qapp)
    assert rows(window)[1] == BAIT_TANK["notes"]
    view.table.setFocus()
    qtbot.keyClick(view.table, Qt.Key.Key_Delete)
    settle(window, qapp)
    assert len(rows(window)) == 1
    click(qtbot, view.notices.undo.buttons["undo"])
    settle(window, qapp)
    assert len(rows(window)) == 2
    click(qtbot, view.notices.undo.buttons["undo"])  # now: do it again
    settle(window, qapp)
    assert len(rows(window)) == 1


def test_a_weld_goes_back_to_the_set_up_page(at_log, put, qtbot, qapp):
    put(MUDGUARD)
    window = at_log()
    click(qtbot, window.log.view.detail.card)
    settle(window, qapp)
    assert window.pages.front == 0
    assert window.presenter.fields["metal"] == "galvanised"
    assert window.presenter.card.request.thickness_mm == 1.5


def test_out_and_in_again_with_a_look_first(at_log, put, qtbot, qapp, tmp_path):
    put(BAIT_TANK, MUDGUARD)
    window = at_log()
    view, prompts = window.log.view, window._prompts
    prompts.save_path = tmp_path / "out.json"
    click(qtbot, view.export)
    settle(window, qapp)
    listed = json.loads((tmp_path / "out.json").read_text())
    listed = listed["entries"] if isinstance(listed, dict) else listed
    assert len(listed) == 2
    del listed[0]["uid"]
    listed[0]["notes"] = "another one (invented)"
    (tmp_path / "in.json").write_text(json.dumps(listed))
    prompts.open_path = tmp_path / "in.json"
    click(qtbot, view.bring_in)
    settle(window, qapp)
    assert "1 new, 1 known already, 0 bad" in view.imports.words()
    assert len(rows(window)) == 2  # nothing is written before it is accepted
    click(qtbot, view.imports.accept)
    settle(window, qapp)
    assert len(rows(window)) == 3
    click(qtbot, view.notices.undo.buttons["undo"])
    settle(window, qapp)
    assert len(rows(window)) == 2


def test_bad_rows_cannot_be_accepted(at_log, put, qtbot, qapp, tmp_path):
    put(BAIT_TANK)
    window = at_log()
    view = window.log.view
    file = tmp_path / "in.csv"
    file.write_text(
        "process,metal,thickness_mm,joint,outcome,settings.current\ntig,unobtanium,2,butt,worked,90\n"
    )
    window._prompts.open_path = file
    click(qtbot, view.bring_in)
    settle(window, qapp)
    assert "1 bad" in view.imports.words()
    assert not view.imports.accept.isVisible()
    click(qtbot, view.imports.drop)
    settle(window, qapp)
    assert rows(window) == [BAIT_TANK["notes"]]


def test_backup_restore_and_sheet(at_log, put, qtbot, qapp, tmp_path):
    put(BAIT_TANK, MUDGUARD)
    window = at_log()
    view, prompts = window.log.view, window._prompts
    prompts.save_path = tmp_path / "log.zip"
    click(qtbot, view.back_up)
    settle(window, qapp)
    window.log.presenter.remove()
    settle(window, qapp)
    prompts.open_path = tmp_path / "log.zip"
    prompts.agrees = False
    click(qtbot, view.restore)
    settle(window, qapp)
    assert len(rows(window)) == 1
    prompts.agrees = True
    click(qtbot, view.restore)
    settle(window, qapp)
    assert len(rows(window)) == 2
    prompts.save_path = tmp_path / "sheet"
    click(qtbot, view.detail.sheet)
    assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF")


# ------------------------------------------------------------------------------------------------- trouble


def test_a_file_that_is_no_log_is_said_with_its_ways_out(make, at_log, file, qtbot, qapp, tmp_path, put):
    file.write_text("this is a shopping list, not a log")
    window = at_log()
    bar = window.log.view.notices.trouble
    assert "not a log" in bar.words()
    assert window.presenter.card is not None  # the card does not suffer
    assert not window.view.card.past.isVisible()
    file.unlink()
    put(BAIT_TANK)
    window.log.files.go("again")
    settle(window, qapp)
    assert bar.words() == ""
    assert rows(window) == [BAIT_TANK["notes"]]


def test_a_damaged_log_is_restored_from_its_backup_in_one_click(at_log, file, put, qtbot, qapp):
    put(BAIT_TANK)
    put(MUDGUARD)  # a second opening makes the day's backup first
    whole = file.read_bytes()
    file.write_bytes(whole[: len(whole) // 2])
    window = at_log()
    bar = window.log.view.notices.trouble
    assert bar.words()
    assert "newest" in bar.buttons
    click(qtbot, bar.buttons["newest"])
    settle(window, qapp)
    assert bar.words() == ""
    assert BAIT_TANK["notes"] in rows(window)


def test_a_weld_that_cannot_be_written_waits_on_this_computer(make, file, qtbot, qapp):
    file.mkdir()
    window = make()
    click(qtbot, window.view.card.log_weld)
    click(qtbot, window.log.entering.dialog.outcomes["worked-well"])
    settle(window, qapp)
    title, text = window._prompts.told[-1]
    assert "waits on this computer" in title
    assert "goes in when the log can be written again" in text
    assert len(list(window.log.desk.place.waiting.glob("*.json"))) == 1


# ------------------------------------------------------------------------------------------- for every hand


def test_every_input_has_a_name_and_is_reached_by_the_keyboard(at_log, put, qtbot, qapp):
    put(BAIT_TANK)
    window = at_log()
    click(qtbot, window.log.view.detail.change)
    settle(window, qapp)
    for top in (window.log.view, window.log.entering.dialog):
        inputs = [
            each
            for kind in (QLineEdit, QComboBox, QPlainTextEdit, QAbstractButton)
            for each in top.findChildren(kind)
            if each.isVisible() and each.objectName() != "qt_toolbar_ext_button"
        ]
        inputs = [each for each in inputs if not isinstance(each.parent(), QLineEdit)]
        assert len(inputs) > 10
        for each in inputs:
            if each.metaObject().className() == "QTableCornerButton":
                continue
            interface = QAccessible.queryAccessibleInterface(each)
            assert interface.text(QAccessible.Text.Name), each
            if each.isEnabled():
                assert each.focusPolicy() & Qt.FocusPolicy.TabFocus, each
