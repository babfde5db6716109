"""Every page and dialog of the window in the made-up language: nothing left in English, nothing cut off."""

import re
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QDialog, QLabel, QSizePolicy, QWidget

from tests.gui.fakes import FakePrompts
from tests.languages.pseudo import Pseudo, left_over
from tests.languages.walk import said_by
from welds import language
from welds.gui import about, guide
from welds.gui.engine import Engine, load_engine
from welds.gui.main_window import MainWindow
from welds.gui.memory import LastUse, Memory
from welds.gui.outfit import Outfit
from welds.gui.pages.bench.words import BenchWords
from welds.gui.pages.welcome.dialog import LANGUAGE, WelcomeDialog
from welds.gui.prompts import TextDialog
from welds.gui.settings import WindowState
from welds.gui.theme import Theme
from welds.gui.translation import Words
from welds.quantities.units import Units

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)

REQUEST = {
    "process": "tig", "metal": "5052", "thickness": "0.080 in", "joint": "outside-corner",
    "coating": ("paint", "cadmium"), "part": "vehicle",
}  # fmt: skip
SETUP, COMPARE, BENCH, HEAT = 0, 1, 2, 5
SMALL_LAPTOP_PX = (1366, 768)
CODES = {"iso", "almg", "ar", "he", "cfh", "min", "kj", "hz", "tig", "mig", "ercu", "ercusi", "ctrl", "welds"}
"""Units, grades of wire, what stands on keys."""
ARROW_PX = 40
_WITH_FIGURE = re.compile(r"\S*\d\S*")


@pytest.fixture(autouse=True)
def _in_the_made_up_language(pseudo_language):
    """Let every test go on in the language that the window was made in."""


@pytest.fixture(scope="module")
def engine(qapp, tmp_path_factory) -> Iterator[Engine]:
    """Return real tables, loaded while everything is said in the made-up language."""
    translator = Words(qapp)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(language, "_words", Pseudo())
        patch.setattr(language, "_code", "xx")
        qapp.installTranslator(translator)
        yield load_engine(tmp_path_factory.mktemp("bench") / "tables")
        qapp.removeTranslator(translator)


@pytest.fixture(scope="module")
def window(qapp, engine, tmp_path_factory) -> Iterator[MainWindow]:
    """Return the window with a request that has much to say."""
    folder = tmp_path_factory.mktemp("window")
    memory = Memory(folder)
    memory.save(LastUse(REQUEST, "metric"))
    state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
    window = MainWindow(state, lambda: Outfit(Theme(qapp), memory, lambda: engine, FakePrompts))
    window.resize(*SMALL_LAPTOP_PX)
    window.show()
    while window.view is None:
        qapp.processEvents()
    yield window
    window.close()
    window.deleteLater()


@pytest.fixture(scope="module")
def no_words(engine) -> tuple[str, ...]:
    """Return what no translator is given: where figures come from, and samples of a file."""
    samples = BenchWords().hints(Units.METRIC).values()
    sources = (source.citation for source in engine.tables.sources.values())
    return tuple(sorted((*samples, *sources, LANGUAGE, *language.NAMES.values()), key=len, reverse=True))


def english_in(root: QWidget, no_words: tuple[str, ...]) -> list[str]:
    """Return every text that is still in English."""
    found = []
    for text in said_by(root):
        rest = text
        for each in no_words:
            rest = rest.replace(each, "")
        if left_over(_WITH_FIGURE.sub("", rest), CODES):
            found.append(text)
    return found


def cut_off_in(root: QWidget) -> list[str]:
    """Return every visible text that has no room, but for those that tell the whole to the pointer."""
    return [
        words for part in (root, *root.findChildren(QWidget)) if part.isVisible() for words in _cut_off(part)
    ]


def _cut_off(part: QWidget) -> Iterator[str]:
    if isinstance(part, QLabel) and part.text() and part.wordWrap():
        widest = max(part.fontMetrics().horizontalAdvance(word) for word in part.text().split() or [""])
        if part.heightForWidth(part.width()) > part.height() + 1 or widest > part.width() + 1:
            yield part.text()
    elif isinstance(part, QLabel | QAbstractButton) and part.text():
        is_told = part.sizePolicy().horizontalPolicy() is QSizePolicy.Policy.Ignored and part.toolTip()
        if part.sizeHint().width() > part.width() + 1 and not is_told:
            yield part.text()
    elif isinstance(part, QComboBox) and not part.isEditable():
        needed = part.fontMetrics().horizontalAdvance(part.currentText()) + ARROW_PX
        if needed > part.width() and part.toolTip() != part.currentText():
            yield part.currentText()


def settle(milliseconds: int = 100) -> None:
    QTest.qWait(milliseconds)


@pytest.mark.parametrize("place", [SETUP, COMPARE, BENCH, HEAT])
def test_a_page_says_everything_in_the_language_and_has_room_for_it(window, no_words, place):
    window.pages.show(place)
    settle(1500 if place == HEAT else 300)
    page = window.pages.stack.currentWidget()
    assert english_in(page, no_words) == []
    assert cut_off_in(page) == []
    assert (window.width(), window.height()) == SMALL_LAPTOP_PX


def test_menus_and_buttons_above_the_page(window, no_words):
    bar = window.menuWidget()
    assert english_in(bar, no_words) == []
    assert cut_off_in(bar) == []


def test_a_first_start(window, engine, no_words):
    dialog = WelcomeDialog(("200 A TIG",), window)
    dialog.show()
    settle()
    assert english_in(dialog, no_words) == []
    assert cut_off_in(dialog) == []
    dialog.close()


def test_what_help_says(window, engine, no_words):
    texts = (
        guide.guide_text(),
        guide.method_text(),
        about.about_text(engine.tables),
        about.shortcuts_text(window.commands.shortcuts),
    )
    for text in texts:
        dialog = TextDialog(window.tr("Guide"), window.tr("The everyday uses, step by step."), text, window)
        assert english_in(dialog, no_words) == []


def test_faults_and_finding(window, no_words):
    window.pages.show(SETUP)
    for opened in (window.view.find_fault, window._find):
        opened()
        settle()
        dialog = next(each for each in _dialogs() if each.isVisible())
        assert english_in(dialog, no_words) == []
        assert cut_off_in(dialog) == []
        dialog.close()
        settle()


def _dialogs() -> list[QDialog]:
    return [each for each in QApplication.topLevelWidgets() if isinstance(each, QDialog)]


def test_what_the_heat_picture_rests_on(window, engine, no_words):
    window.pages.show(HEAT)
    heat = window.pages.stack.currentWidget()
    QTest.qWaitFor(lambda: bool(heat.presenter.grounds()), 10_000) if hasattr(QTest, "qWaitFor") else settle(
        2000
    )
    dialog = TextDialog("", "", heat.presenter.grounds(), window)
    assert dialog.text.toPlainText()
    assert english_in(dialog, no_words) == []


def test_a_language_is_chosen_in_the_menu_and_remembered(window, monkeypatch):
    monkeypatch.setattr(language, "said_in", lambda code, text: f"{code}: {text}")
    window.commands.languages["de"].trigger()
    assert window._state.word_of("language") == "de"
    assert window.statusBar().currentMessage().startswith("de: ")
    window.commands.languages[""].trigger()
    assert window._state.word_of("language") == ""


def test_decimal_comma_in_what_is_typed_and_shown(window):
    window.presenter.set_field("thickness", "2,5 mm")
    assert window.presenter.card.request.thickness_mm == pytest.approx(2.5)
    assert "2,5 mm" in window.view.card.title + " ".join(said_by(window.view.card))
