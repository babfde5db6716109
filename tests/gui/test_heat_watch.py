"""The heat picture on the set-up card: after a rest, off the window's thread, never for an old card."""

import threading
from dataclasses import replace

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel

from welds.advice.advise import advise
from welds.advice.heat.check import heat_check
from welds.advice.setting import Check
from welds.gui.engine import Engine
from welds.gui.jobs.queue import JobQueue
from welds.gui.pages.setup.heat_watch import REST_MS, HeatWatch
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.pages.setup.view import SetupView
from welds.quantities.band import Band
from welds.quantities.units import Units

SAID = Check("heat picture", False, "The heat picture disagrees, says the test.")


class Watched:
    """A set-up page with a watch over it; `check` is what the watch asks."""

    def __init__(self, qtbot, engine, check):
        self.setup = SetupPresenter(engine)
        self.view = SetupView()
        self.view.join(self.setup, engine)
        qtbot.addWidget(self.view)
        self.view.resize(1366, 768)
        self.view.show()
        self.watch = HeatWatch(self.setup, JobQueue(self.setup), self.setup, check)
        self.setup.restore({}, Units.METRIC)

    @property
    def lines(self):
        return [each.text() for each in self.view.card.checks.findChildren(QLabel)]

    @property
    def names(self):
        return [check.name for check in self.setup.card.checks]


@pytest.fixture
def watch_over(qtbot, engine):
    made = []

    def make(check, over=engine):
        made.append(Watched(qtbot, over, check))
        return made[-1]

    yield make
    for each in made:
        each.watch.stop()


def test_a_real_card_far_off_the_physics_says_so(watch_over, engine, qtbot):
    current = Band(300.0, 320.0, 340.0, "A")

    def hot(request, _adjustments=()):
        card = advise(request, engine.tables)
        settings = {**card.settings, "current": replace(card.settings["current"], band=current)}
        return replace(card, settings=settings)

    page = watch_over(None, Engine(engine.tables, engine.request, hot))
    assert not any("fall through" in line for line in page.lines)
    qtbot.waitUntil(lambda: any("fall through" in line for line in page.lines), timeout=20_000)
    assert page.setup.card.checks[-1] == heat_check(hot(page.setup.card.request), engine.tables)
    assert "300 to 340 A fall through" in " ".join(engine.card_text(page.setup.card, Units.METRIC).split())


def test_a_card_that_the_physics_shares_stays_as_it_was(watch_over, engine, qtbot):
    asked = []

    def check(card, tables, equipment):
        asked.append(heat_check(card, tables, equipment))
        return asked[-1]

    real = Engine(engine.tables, engine.request, lambda request, _steps=(): advise(request, engine.tables))
    page = watch_over(check, real)
    before = page.setup.card
    qtbot.waitUntil(lambda: bool(asked), timeout=20_000)
    page.watch.stop()
    QApplication.processEvents()
    assert asked == [None]
    assert page.setup.card is before


def test_a_moving_slider_asks_nothing_and_the_last_card_is_asked_once(watch_over, qtbot):
    asked = []

    def check(card, _tables, _equipment):
        asked.append((card.request.thickness_mm, threading.current_thread() is threading.main_thread()))
        return SAID

    page = watch_over(check)
    for step in range(20):
        page.setup.set_thickness_mm(2.0 + step / 10)
        qtbot.wait(REST_MS // 10)
    assert asked == []
    qtbot.waitUntil(lambda: SAID.text in page.lines)
    assert asked == [(3.9, False)]
    page.view.request.show_fields(page.setup.fields)
    qtbot.wait(2 * REST_MS)
    assert len(asked) == 1


def test_an_answer_to_an_earlier_card_is_dropped(watch_over, qtbot):
    begun, go_on = threading.Event(), threading.Event()

    def check(card, _tables, _equipment):
        if card.request.thickness_mm == 2.0:
            begun.set()
            go_on.wait(10)
            return SAID
        return None

    page = watch_over(check)
    qtbot.waitUntil(begun.is_set)
    page.setup.set_field("thickness", "3 mm")
    go_on.set()
    page.watch.stop()
    QApplication.processEvents()
    assert page.setup.card.request.thickness_mm == 3.0
    assert "heat picture" not in page.names


def held_up(watch_over, qtbot):
    """Return a page whose check has begun and waits, and the event that lets it answer."""
    begun, go_on = threading.Event(), threading.Event()

    def check(_card, _tables, _equipment):
        begun.set()
        go_on.wait(10)
        return SAID

    page = watch_over(check)
    qtbot.waitUntil(begun.is_set)
    return page, go_on


def test_a_refusal_meanwhile_keeps_the_old_card_grey(watch_over, qtbot):
    page, go_on = held_up(watch_over, qtbot)
    page.setup.set_field("thickness", "nonsense")
    go_on.set()
    page.watch.stop()
    QApplication.processEvents()
    assert not page.view.card.body.isEnabled()
    assert SAID.text not in page.lines
    page.setup.set_field("thickness", "2 mm")
    assert page.view.card.body.isEnabled()
    assert page.names.count("heat picture") == 1, "the answer is known and comes with the card"


def test_other_units_while_it_is_worked_out_bring_one_line_not_two(watch_over, qtbot):
    page, go_on = held_up(watch_over, qtbot)
    page.setup.switch_units()
    go_on.set()
    qtbot.waitUntil(lambda: SAID.text in page.lines)
    qtbot.wait(2 * REST_MS)
    page.setup.switch_units()
    assert page.names.count("heat picture") == 1


def test_the_window_copies_and_prints_the_line(make_window, qtbot, engine, tmp_path, monkeypatch):
    monkeypatch.setattr("welds.advice.heat.check.heat_check", lambda *_asked: SAID)
    printed = []
    monkeypatch.setattr(
        "welds.gui.pdf.write_card_pdf", lambda _path, card, *_rest: printed.append(card.checks[-1])
    )
    window = make_window()
    window.presenter.set_field("thickness", "3 mm")
    qtbot.waitUntil(lambda: window.presenter.card.checks[-1] == SAID)
    window.commands.copy_text.trigger()
    assert f"NOT OK: {SAID.text}" in " ".join(QGuiApplication.clipboard().text().split())
    window._prompts.save_path = tmp_path / "card.pdf"
    window.commands.save_pdf.trigger()
    assert printed == [SAID]
