"""All that has to do with the log, put together for the window: desk, forms, strip beside the card, page."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer
from PySide6.QtGui import QKeySequence, QShortcut

from welds.gui.jobs.queue import JobQueue
from welds.gui.pages.log.desk import LogDesk
from welds.gui.pages.log.entering import Entering
from welds.gui.pages.log.files import LogFiles
from welds.gui.pages.log.presenter import LogPresenter
from welds.gui.pages.setup.past import PastPresenter

if TYPE_CHECKING:
    from collections.abc import Callable

    from welds.advice.request import Request
    from welds.gui.engine import Engine
    from welds.gui.main_window import MainWindow
    from welds.gui.page_switch import PageSwitch
    from welds.gui.pages.log.view import LogView
    from welds.gui.pages.setup.presenter import SetupPresenter
    from welds.gui.pages.setup.view import SetupView
    from welds.gui.prompts import Prompts
    from welds.gui.settings import WindowState
    from welds.logbook.entry import Entry
    from welds.logbook.logbook import Receipt

REST_MS = 150
"""The card stands and takes input before the log is opened behind it."""

IDLE_MS = 1500
OFF = "off"
SETUP_PAGE = 0


class LogParts(QObject):
    """Made when the set-up page is there; opens the log a moment later, makes the page when it is shown."""

    def __init__(
        self,
        engine: "Engine",
        setup: "SetupPresenter",
        setup_view: "SetupView",
        prompts: "Prompts",
        state: "WindowState",
        address: str,
        say: "Callable[[str], object]",
        window: "MainWindow",
    ) -> None:
        super().__init__(window)
        self._setup, self._prompts, self._state, self._window = setup, prompts, state, window
        self.desk = LogDesk(JobQueue(self), JobQueue(self), address, self)
        self.entering = Entering(engine, self.desk, prompts, state, self)
        self.files = LogFiles(engine, self.desk, prompts, self)
        self.presenter = LogPresenter(engine, self.desk, self._request_now, self)
        self.view: LogView | None = None
        self._pages: PageSwitch | None = None
        self._place = -1
        self.files.units = setup.units
        self.presenter.set_units(setup.units)
        setup.units_changed.connect(self._on_units_changed)
        self.files.said.connect(say)
        self.files.imported.connect(lambda words, token: self.presenter.offer_undo(words, token or None))
        self.files.address_chosen.connect(lambda address: state.write("log", address))
        self.presenter.said.connect(say)
        self.presenter.refused.connect(prompts.tell)
        self.entering.said.connect(say)
        self.entering.logged.connect(self._on_logged)
        self._say = say
        strip = setup_view.card.past
        self.past: PastPresenter | None = None
        if engine.past is not None:
            engine.past.is_on = state.word_of("learning") != OFF
            self.past = PastPresenter(setup, self.desk, engine.past, self)
            self.past.shown.connect(strip.show_past)
            strip.learning_toggled.connect(self._on_learning_toggled)
        strip.log_wanted.connect(self._on_log_wanted)
        setup_view.card.log_wanted.connect(self.log_this_weld)
        shortcut = QShortcut(QKeySequence("Ctrl+L"), window)
        shortcut.activated.connect(window.log_what_is_shown)
        if window.commands is not None:
            shown = shortcut.key().toString(QKeySequence.SequenceFormat.NativeText)
            window.commands.shortcuts.append((shown, self.tr("Log this weld")))
        self._timers = [
            QTimer(self, singleShot=True, interval=REST_MS),
            QTimer(self, singleShot=True, interval=IDLE_MS),
        ]
        for timer, work in zip(self._timers, (self.start, self._prepare_page), strict=True):
            timer.timeout.connect(work)
            timer.start()

    def stand_at(self, pages: "PageSwitch", place: int) -> None:
        """Say which of the window's pages is the log's."""
        self._pages, self._place = pages, place
        pages.turned.connect(self._on_page_turned)

    def make_page(self) -> "LogView":
        """Return the page; made when it is first shown, or before that where there is time."""
        if self.view is not None:
            return self.view
        from welds.gui.pages.log.output import LogOutput
        from welds.gui.pages.log.view import LogView

        output = LogOutput(self.presenter, self.files, self._prompts, self._say, self)
        output.readiness_changed.connect(self._window.show_readiness)
        self.view = LogView(self.presenter, self.entering, self.files, output, self._prompts, self._window)
        self.view.card_wanted.connect(self._on_card_wanted)
        self.entering.look_for_drafts()
        self.view.notices.show_undo(self.presenter.undo_offer)
        return self.view

    def close(self) -> None:
        """Finish what was begun and let go of the log."""
        for timer in self._timers:
            timer.stop()
        self.desk.close()

    def _on_page_turned(self, place: int) -> None:
        if place == self._place and self.view is not None:
            self.view.start()

    def show_page(self) -> None:
        """Bring the page of the log to the front."""
        self._turn_to(self._place)

    def start(self) -> None:
        """Begin to read the log; called by itself a moment after the card stands."""
        if self.past is not None:
            self.past.start()
        self.desk.prepare(_import_page)

    def _prepare_page(self) -> None:
        """Make the page of a log that is in use while the person reads the card, so that it opens at once."""
        if self.desk.is_worth_opening and self.view is None:
            self.make_page()
            self.presenter.show()

    def _turn_to(self, place: int) -> None:
        if self._pages is not None:
            self._pages.show(place)

    def _request_now(self) -> "Request | None":
        return self._setup.card.request if self._setup.card is not None else None

    def _on_units_changed(self, units: object) -> None:
        self.files.units = self._setup.units
        self.presenter.set_units(self._setup.units)

    def _on_learning_toggled(self, on: bool) -> None:
        self._state.write("learning", "on" if on else OFF)
        if self.past is not None:
            self.past.set_on(on)

    def log_this_weld(self) -> None:
        """Write down a weld made by the card on the set-up page, where that is up to date."""
        if self._setup.card is not None and not self._setup.is_stale:
            self.entering.log_card(self._setup.card, self._setup.units)

    def _on_logged(self, words: str, receipt: "Receipt") -> None:
        self.presenter.offer_undo(words, receipt.undo)
        self._say(words)

    def _on_log_wanted(self) -> None:
        self.presenter.show_nearest(True)
        self.show_page()

    def _on_card_wanted(self, entry: "Entry") -> None:
        """Ask the set-up page for this weld's joint."""
        setup = self._setup
        length = setup.engine.length_text
        given = {
            "process": entry.process.value,
            "metal": entry.metal,
            "thickness": length(entry.thickness_mm, setup.units),
            "joint": entry.joint.value,
            "position": entry.position,
            "other_metal": entry.other_metal or "",
            "other_thickness": length(entry.other_thickness_mm, setup.units)
            if entry.other_thickness_mm
            else "",
            "gap": length(entry.gap_mm, setup.units) if entry.gap_mm else "",
            "hand": entry.hand.value if entry.hand else "",
        }
        setup.restore({name: value for name, value in given.items() if value}, setup.units)
        self._turn_to(SETUP_PAGE)


def _import_page() -> None:
    """Have the page's modules at hand when its button is pressed."""
    import welds.gui.pages.log.entry_dialog
    import welds.gui.pages.log.view  # noqa: F401
