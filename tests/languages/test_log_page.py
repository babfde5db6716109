"""The log page in the made-up language: every widget speaks it, and the log holds what it held in English."""

import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QSettings
from PySide6.QtWidgets import QApplication, QWidget

from tests.gui.log_support import BAIT_TANK, MUDGUARD, Answers
from tests.languages.pseudo import left_over
from tests.languages.walk import said_by
from welds.advice.evidence import Outcome
from welds.errors import LogbookUnavailableError
from welds.gui.engine import Engine, load_engine
from welds.gui.jobs.queue import JobQueue
from welds.gui.pages.log import words
from welds.gui.pages.log.desk import LogDesk
from welds.gui.pages.log.entering import Entering
from welds.gui.pages.log.entry_dialog import EntryDialog
from welds.gui.pages.log.entry_form import EntryForm
from welds.gui.pages.log.files import LogFiles
from welds.gui.pages.log.output import LogOutput
from welds.gui.pages.log.presenter import LogPresenter
from welds.gui.pages.log.view import LogView
from welds.gui.settings import WindowState
from welds.logbook import offers
from welds.logbook.entry import Entry
from welds.logbook.fields import read_entry
from welds.logbook.offers import TRY_AGAIN
from welds.logbook.opening import open_logbook
from welds.quantities.units import Units
from welds.reference.faults import Imperfection

OTHERS = {
    **MUDGUARD, "other_metal": "low-carbon", "other_thickness_mm": 3, "gap_mm": 0.5,
    "material_lot": "lot 12", "settings": {"wire_feed": 5.1, "transfer": "short-circuit", "gas_lens": True},
}  # fmt: skip
TYPED = """bait tank long corner invented trailer mudguard first bench lot low carbon galvanised low
TIG MIG ISO Ctrl csv json yard tig mig AC DCEN DCEP TWI mm min kJ degC cfh ipm in Hz percent"""


class Window(QWidget):
    """The page with all that it is made of, and what it asked and said."""

    def __init__(self, engine: Engine, folder: Path) -> None:
        super().__init__()
        self.said: list[str] = []
        self.prompts = Answers(self)
        self.prompts.show_form = self.prompts.forms.append
        state = WindowState(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat))
        self.desk = LogDesk(JobQueue(self), JobQueue(self), str(folder / "yard.db"), self)
        self.entering = Entering(engine, self.desk, self.prompts, state, self)
        self.files = LogFiles(engine, self.desk, self.prompts, self)
        self.presenter = LogPresenter(engine, self.desk, lambda: None, self)
        output = LogOutput(self.presenter, self.files, self.prompts, self.said.append, self)
        self.view = LogView(self.presenter, self.entering, self.files, output, self.prompts, self)
        for signal in (self.files.said, self.entering.said, self.presenter.said):
            signal.connect(self.said.append)
        self.presenter.has_page = True

    def settle(self) -> None:
        for _ in range(8):
            QApplication.processEvents()
            self.desk.wait()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        QApplication.processEvents()


@pytest.fixture
def spoken(speaking_window: None) -> Engine:
    """Return an engine whose tables were read in the made-up language."""
    return load_engine(None)


@pytest.fixture
def page(qtbot, spoken: Engine, tmp_path: Path) -> Iterator[Window]:
    """Return the page over two welds in the made-up language."""
    with open_logbook(str(tmp_path / "yard.db")) as log:
        for fields in (BAIT_TANK, OTHERS):
            log.add(read_entry(fields, spoken.tables))
    window = Window(spoken, tmp_path)
    window.view.start()
    window.settle()
    yield window
    window.desk.close()
    for form in window.prompts.forms:
        form.finish()
        form.deleteLater()
    window.deleteLater()
    window.settle()


def wrong(widget: QWidget, more: str = "") -> dict[str, list[str]]:
    allowed = re.findall("[A-Za-z]+", f"{TYPED} {more}")
    return {text: left for text in said_by(widget) if (left := left_over(text, allowed))}


def of_tables(engine: Engine) -> str:
    """Return what the catalogue calls metals, and ISO its imperfections."""
    metals = " ".join(f"{metal.text} {' '.join(metal.names)}" for metal in engine.metals())
    return metals + " ".join(each.name for each in engine.tables.records(Imperfection))


def test_table_filters_and_detail_speak(page: Window, spoken: Engine):
    assert page.view.table.entries.rowCount() == 2
    known = of_tables(spoken)
    for row in (0, 1):
        page.view.table.choose(row)
        page.settle()
        assert page.presenter.detail is not None
        assert wrong(page.view, known) == {}
    page.view.filter.fields["thickness_min"].setText("wide")
    page.settle()
    assert wrong(page.view, f"{known} wide thickness") == {}
    assert "2,03 mm" in " ".join(said_by(page.view.detail))


def test_notices_speak(page: Window, tmp_path: Path):
    notices = page.view.notices
    for offer in (offers.RESTORE, offers.OPEN_READ_ONLY, TRY_AGAIN, offers.CHOOSE):
        page.view._show_trouble(LogbookUnavailableError("yard", "", (offer,)))
        assert wrong(notices) == {}
    notices.show_remarks((), is_read_only=True)
    notices.show_drafts({"a": {"texts": {"process": "tig", "joint": "outside-corner"}}, "b": {}})
    page.presenter.remove()
    page.settle()
    assert wrong(notices) == {}
    page.presenter.undo()
    page.settle()
    assert wrong(notices) == {}
    page.presenter.save_filter("thin")
    page.presenter.forget_filter("thin")
    page.prompts.save_path = tmp_path / "a.csv"
    page.files.export()
    page.settle()
    assert len(page.said) >= 3
    assert [said for said in page.said if left_over(said.replace(str(tmp_path), ""), ["thin", "csv"])] == []
    assert re.fullmatch(r"welds-log-\d{4}-\d\d-\d\d\.csv", page.prompts.suggested[0])


def test_preview_of_an_import_speaks(page: Window, tmp_path: Path):
    page.prompts.open_path = tmp_path / "a.json"
    page.prompts.open_path.write_text(
        '[{"process": "tig", "metal": "5052", "thickness_mm": 1.5, "joint": "lap", "outcome": "worked",'
        ' "settings": {"current": 1}}, {"process": "tig", "settings": 3}]',
        encoding="utf-8",
    )
    page.files.look_into()
    page.settle()
    assert page.view.imports is not None
    assert wrong(page.view.imports, "settings current polarity metal thickness joint outcome") == {}


def test_the_form_speaks(page: Window, spoken: Engine):
    page.entering.log_anew(Units.METRIC)
    page.presenter.choose(page.view.table.entries.entry(0))
    page.view._on_change_wanted()
    page.settle()
    anew, change = page.prompts.forms
    assert isinstance(anew, EntryDialog)
    known = of_tables(spoken) + " ".join(map(str, EntryForm(spoken, Units.METRIC, {}).kinds))
    assert wrong(anew, known) == wrong(change, known) == {}
    anew.form.set_text("thickness", "wide")
    anew._on_outcome(Outcome.WORKED)
    assert wrong(anew.refusal, "thickness wide metal") == {}


def test_a_past_weld_is_one_sentence_with_its_day(spoken: Engine):
    entry = read_entry({**BAIT_TANK, "settings": {"current": 87.5}}, spoken.tables).entry
    for today in (date(2026, 5, 1), date(2027, 5, 1)):
        said = words.past_words(entry, today, spoken.tables)
        assert left_over(said) == []
        assert "87,5" in said
        assert ("2026" in said) is (today.year == 2027)


@pytest.mark.parametrize("units", list(Units))
def test_a_weld_is_logged_with_the_same_figures_as_in_english(request: pytest.FixtureRequest, units: Units):
    asked = {"process": "tig", "metal": "5052", "thickness": "0.080 in", "joint": "outside-corner"}

    def logged() -> list[Entry]:
        engine = load_engine(None)
        forms = [EntryForm.from_card(engine, units, engine.card(engine.request(asked)), {})]
        forms.append(EntryForm(engine, units, {**BAIT_TANK, "thickness_mm": 31.75, "gap_mm": 0.125}))
        forms += [EntryForm.of_draft(engine, form.draft()) for form in tuple(forms)]
        for form in forms[1:]:
            form.set_text("other_thickness", "1,5 mm")
            form.set_setting("gas_flow", "8,5 L/min")
        shown = [form.texts[name] for form in forms for name in ("thickness", "gap")]
        shown += [text for form in forms for name, text in form.settings.items() if form.kinds[name].unit]
        assert not [text for text in shown if "," in text.replace("8,5 L/min", "")]
        return [replace(form.reading(Outcome.WORKED).entry, uid="", made_at="2026-03-03") for form in forms]

    english = logged()
    request.getfixturevalue("pseudo_language")
    assert logged() == english
    assert english[1].other_thickness_mm == 1.5
    assert english[1].settings["gas_flow"] == 8.5
