"""The window: it paints itself first, has the tables loaded in a thread, and makes the first page meanwhile.

Imported before the first paint, so everything it can do without until then is imported later.
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QLabel, QMainWindow

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QCloseEvent, QPaintEvent
    from PySide6.QtWidgets import QWidget

    from welds.advice.card import Card
    from welds.gui.actions import Actions
    from welds.gui.engine import Engine, Fields
    from welds.gui.jobs.runner import JobRunner
    from welds.gui.memory import LastUse
    from welds.gui.outfit import Outfit
    from welds.gui.page_commands import PageCommands
    from welds.gui.page_switch import PageSwitch
    from welds.gui.pages.compare.presenter import ComparePresenter
    from welds.gui.pages.compare.view import CompareView
    from welds.gui.pages.heat.view import HeatView
    from welds.gui.pages.log.page import LogParts
    from welds.gui.pages.setup.heat_watch import HeatWatch
    from welds.gui.pages.setup.presenter import SetupPresenter
    from welds.gui.pages.setup.view import SetupView
    from welds.gui.prompts import Prompts
    from welds.gui.recent import Recent
    from welds.gui.settings import WindowState
    from welds.gui.theme import Theme
    from welds.quantities.units import Units
    from welds.reference.tables import Tables

FIRST_SIZE_PX = (1366, 768)
SETUP, COMPARE, JOB, LOG = 0, 1, 3, 4
"""The pages in the order of their buttons."""

BREATH_MS = 20
"""The card is painted and takes input before what the window has besides is made."""


class _FirstWords(QLabel):
    """What stands in the window until the page is there; says when it was first painted."""

    painted = Signal()

    def paintEvent(self, event: "QPaintEvent") -> None:
        super().paintEvent(event)
        self.painted.emit()


class MainWindow(QMainWindow):
    """Makes the page's presenter and view and hands them what they need; `furnished` when all is there."""

    furnished = Signal()

    def __init__(self, state: "WindowState", make_outfit: "Callable[[], Outfit]") -> None:
        super().__init__()
        self._state, self._make_outfit = state, make_outfit
        self._outfit: Outfit | None = None
        self._jobs: JobRunner | None = None
        self._prompts: Prompts | None = None
        self._page_commands: PageCommands | None = None
        self._last_use: LastUse | None = None
        self._is_first = False
        self.commands: Actions | None = None
        self.presenter: SetupPresenter | None = None
        self.view: SetupView | None = None
        self._waiting_view: SetupView | None = None
        self.pages: PageSwitch | None = None
        self.comparing: ComparePresenter | None = None
        self.compare_view: CompareView | None = None
        self.log: LogParts | None = None
        self._heat_watch: HeatWatch | None = None
        self.recent: Recent | None = None
        self.setWindowTitle(self.tr("Welds"))
        self.resize(*FIRST_SIZE_PX)
        geometry = state.bytes_of("geometry")
        if geometry is not None:
            self.restoreGeometry(geometry)
        self._words = _FirstWords(self._waiting_words(), self)
        self._words.setMargin(40)
        self._words.painted.connect(self._on_painted)
        self.setCentralWidget(self._words)

    def closeEvent(self, event: "QCloseEvent") -> None:
        self.save()
        self._state.write("geometry", self.saveGeometry())
        if self.view is not None:
            self._state.write("splitter", self.view.splitter.saveState())
        if self._jobs is not None:
            self._jobs.wait()
        if self.compare_view is not None:
            self.compare_view.curves.wait()
        if self._heat_watch is not None:
            self._heat_watch.stop()
        if self.log is not None:
            self.log.close()
        super().closeEvent(event)

    def save(self) -> None:
        """Remember the request and the tastes; a disk that refuses is named in the status line."""
        if self._outfit is None:
            return
        self._state.write("theme", self._outfit.theme.choice.value)
        self._state.write("text_step", str(self._outfit.theme.text_step))
        if self.presenter is None:
            return
        from welds.gui.memory import LastUse

        recent = tuple(self.recent.requests) if self.recent is not None else ()
        last = LastUse(self.presenter.fields, self.presenter.units.value, recent)
        trouble = self._outfit.memory.save(last)
        if trouble:
            self.statusBar().showMessage(trouble)

    def show_crash(self, report: str) -> None:
        """Show a mistake of the program with everything a developer needs."""
        from welds.gui.prompts import Prompts

        introduction = self.tr(
            "This is a mistake in the program, not yours. Your request is kept and the window stays open."
            " Please copy the text below into a report."
        )
        prompts = self._prompts or Prompts(self)
        prompts.show_text(self.tr("Something went wrong in the program"), introduction, report)

    def _on_painted(self) -> None:
        self._words.painted.disconnect(self._on_painted)
        QTimer.singleShot(0, self, self._furnish)

    def _tables(self) -> "Tables | None":
        return self.presenter.engine.tables if self.presenter is not None else None

    def _waiting_words(self) -> str:
        return self.tr("Getting the tables ready…")

    def _furnish(self) -> None:
        """Start loading; put on colours and menus and make the first page while that goes on."""
        from pathlib import Path

        from PySide6.QtGui import QIcon

        from welds.gui.helping import Helping
        from welds.gui.jobs.runner import JobRunner

        self._outfit = self._make_outfit()
        self._jobs = JobRunner(self)
        self._jobs.finished.connect(self._on_loaded)
        self._jobs.failed.connect(self._on_load_failed)
        self._jobs.submit(self._outfit.load)

        self.setWindowIcon(QIcon(str(Path(__file__).with_name("welds.svg"))))
        theme = self._outfit.theme
        self._prompts = self._outfit.prompts(self)
        theme.choose(theme.choice_named(self._state.word_of("theme")))
        theme.set_text_step(theme.step_named(self._state.word_of("text_step")))
        self.commands = self._make_commands(theme)
        Helping(self.commands, self._prompts, self._tables, self)
        loaded = self._outfit.memory.load()
        self._last_use = loaded.last_use
        self._is_first = loaded.is_first
        self.statusBar().showMessage(loaded.trouble)
        QTimer.singleShot(0, self, self._first_page)

    def _first_page(self) -> "SetupView":
        """Return the set-up page, made when first asked for: mostly before the tables are there."""
        if self._waiting_view is not None:
            return self._waiting_view
        from welds.gui.page_switch import PageSwitch
        from welds.gui.pages.setup.view import SetupView

        view = SetupView(self)
        view.show_waiting(self._waiting_words())
        view.restore_splitter(self._state.bytes_of("splitter"))
        self.pages = PageSwitch(self)
        self.pages.add(self.tr("Set-up"), lambda: view)
        self.pages.show(SETUP)
        self.setCentralWidget(self.pages.area)
        self._waiting_view = view
        return view

    def _make_commands(self, theme: "Theme") -> "Actions":
        from welds.gui.actions import Actions

        commands = Actions(self)
        commands.set_page_actions(has_page=False)
        commands.themes[theme.choice].setChecked(True)
        commands.theme_chosen.connect(theme.choose)
        remembered = self._state.word_of("language")
        commands.languages[remembered if remembered in commands.languages else ""].setChecked(True)
        commands.language_chosen.connect(self._choose_language)
        commands.larger.triggered.connect(lambda: theme.change_text_size(1))
        commands.smaller.triggered.connect(lambda: theme.change_text_size(-1))
        commands.usual.triggered.connect(lambda: theme.change_text_size(0))
        commands.quit.triggered.connect(self.close)
        return commands

    def _choose_language(self, code: str) -> None:
        """Remember the language, and say in its own words when it is taken up."""
        from welds.gui.translation import said_later

        self._state.write("language", code)
        self.statusBar().showMessage(said_later(code))

    def _on_loaded(self, engine: "Engine") -> None:
        """Have the first page answer; what else there is follows when the card has been painted."""
        from welds.gui.card_output import CardOutput
        from welds.gui.page_commands import PageCommands
        from welds.gui.pages.setup.presenter import SetupPresenter
        from welds.quantities.units import Units

        assert self._prompts is not None
        assert self._last_use is not None
        assert self.commands is not None
        view = self._first_page()
        assert self.pages is not None
        self.presenter = SetupPresenter(engine, self)
        view.join(self.presenter, engine)
        output = CardOutput(self.presenter, self._prompts, self.statusBar().showMessage, self)
        self.presenter.units_changed.connect(self._on_units_changed)
        self.presenter.readiness_changed.connect(lambda _presenter: self.show_readiness())
        self.presenter.restore(self._last_use.fields, Units(self._last_use.units))
        self.pages.add(self.tr("Side by side"), self._make_compare_page)
        self.pages.add(self.tr("Bench"), self._make_bench_page)
        self.pages.add(self.tr("Job"), lambda: self._make_job_page(view))
        self.pages.add(self.tr("Log"), lambda: self._log_parts(view).make_page())
        self.pages.add(self.tr("Weld preview"), self._make_heat_page)
        self.commands.show_pages(self.pages.row)
        self.pages.turned.connect(self._on_page_turned)
        page_commands = PageCommands(self.commands, self.pages, view, output, self)
        page_commands.connect_setup(self.presenter)
        self.commands.find.triggered.connect(self._find)
        self.commands.open_demo.triggered.connect(self._open_demo)
        self._page_commands = page_commands
        self.show_readiness()
        QTimer.singleShot(0, view, view.request.focus_metal)
        QTimer.singleShot(BREATH_MS, self, lambda: self._furnish_rest(view))

    def _furnish_rest(self, view: "SetupView") -> None:
        """Make what watches the card: the log and the heat picture."""
        from welds.gui.jobs.queue import JobQueue
        from welds.gui.pages.setup.heat_watch import HeatWatch
        from welds.gui.recent import Recent

        assert self.presenter is not None
        self._log_parts(view)
        self.recent = Recent(self.presenter, self._last_use.recent if self._last_use else (), self)
        self._heat_watch = HeatWatch(self.presenter, JobQueue(self), self)
        self.view = view
        self._welcome()
        self.furnished.emit()

    def _welcome(self) -> None:
        """Ask what a first start asks, where nothing is remembered."""
        assert self.presenter is not None
        if self._outfit is None or not self._outfit.welcomes or not self._is_first:
            return
        from welds.gui.pages.welcome.opening import open_welcome

        open_welcome(
            self, self.presenter, self._open_demo, self._choose_language, self.statusBar().showMessage
        )

    def _log_parts(self, view: "SetupView") -> "LogParts":
        """Return what the log needs, made when first asked for."""
        if self.log is not None:
            return self.log
        from welds.gui.pages.log.page import LogParts

        assert self.presenter is not None
        assert self.pages is not None
        assert self._prompts is not None
        assert self._outfit is not None
        setup, say = self.presenter, self.statusBar().showMessage
        address = self._outfit.log or self._state.word_of("log")
        self.log = LogParts(setup.engine, setup, view, self._prompts, self._state, address, say, self)
        self.log.stand_at(self.pages, LOG)
        return self.log

    def _find(self) -> None:
        from welds.gui.pages.find.opening import open_find

        assert self.presenter is not None
        assert self.pages is not None
        assert self.view is not None
        assert self.commands is not None
        recent = self.recent.requests if self.recent is not None else ()
        open_find(self, self.presenter, self.pages, self.commands, recent, self.view.find_fault)

    def _show_page(self, place: int) -> None:
        if self.pages is not None and self.pages.front != place:
            self.pages.show(place)

    def _open_demo(self) -> None:
        from welds.gui.pages.job.view import JobView

        self._show_page(JOB)
        page = self.pages.stack.currentWidget() if self.pages is not None else None
        if isinstance(page, JobView):
            page.open_demo.click()

    def _make_compare_page(self) -> "CompareView":
        from welds.gui.pages.compare.page import make_compare_page

        assert self.presenter is not None
        assert self._prompts is not None
        view = make_compare_page(self.presenter, self._prompts, self.statusBar().showMessage, self)
        self.compare_view, self.comparing = view, view.presenter
        self.comparing.shown_changed.connect(lambda _shown: self.show_readiness())
        view.card_opened.connect(self._on_card_opened)
        view.log_wanted.connect(self._on_log_wanted)
        self.presenter.card_changed.connect(lambda _face: self._on_answered_again())
        return view

    def _make_bench_page(self) -> "QWidget":
        from welds.gui.pages.bench.page import make_bench_page

        assert self.presenter is not None
        return make_bench_page(self.presenter.engine, self.presenter, self)

    def _make_job_page(self, view: "SetupView") -> "QWidget":
        from welds.gui.pages.job.page import make_job_page

        assert self.presenter is not None
        assert self._prompts is not None
        desk = self._log_parts(view).desk
        page = make_job_page(self.presenter.engine, self.presenter, self._prompts, desk, self)
        page.output.readiness_changed.connect(self.show_readiness)
        return page

    def _make_heat_page(self) -> "HeatView":
        from welds.gui.pages.heat.page import make_heat_page

        assert self.presenter is not None
        assert self._prompts is not None
        say = self.statusBar().showMessage
        return make_heat_page(self.presenter.engine, self.presenter, self._prompts, say, self)

    def _on_page_turned(self, place: int) -> None:
        assert self.presenter is not None
        assert self.commands is not None
        if place == COMPARE and self.comparing is not None:
            self.comparing.take_card(self.presenter.fields, self.presenter.units)
        self.show_readiness()

    def _on_card_opened(self, fields: "Fields") -> None:
        """Show a column's request on the set-up page."""
        assert self.presenter is not None
        self.presenter.restore(fields, self.presenter.units)
        self._show_page(SETUP)

    def log_what_is_shown(self) -> None:
        """Write down a weld made by the chosen column, where columns are in front, or the set-up's card."""
        if self.pages is not None and self.pages.front == COMPARE and self.compare_view is not None:
            self.compare_view.log_column()
        elif self.log is not None:
            self.log.log_this_weld()

    def _on_log_wanted(self, card: "Card") -> None:
        """Write down a weld made by a column's card."""
        if self.log is not None and self.comparing is not None:
            self.log.entering.log_card(card, self.comparing.units)

    def _on_answered_again(self) -> None:
        """Let the columns follow when the log has spoken behind the page."""
        if self.pages is not None and self.pages.front == COMPARE and self.comparing is not None:
            self.comparing.answer_again()

    def _on_load_failed(self, error: Exception) -> None:
        from welds.errors import WeldsError

        self._first_page()
        reason = str(error) if isinstance(error, WeldsError) else self.tr("a mistake in the program")
        words = QLabel(self.tr("The tables cannot be used:\n\n{reason}").format(reason=reason), self)
        words.setMargin(40)
        words.setWordWrap(True)
        self.setCentralWidget(words)
        self.furnished.emit()
        if not isinstance(error, WeldsError):
            raise error

    def show_readiness(self) -> None:
        """Allow printing and saving where the page in front has something to print, or grey it."""
        if self._page_commands is not None:
            self._page_commands.show_readiness()

    def _on_units_changed(self, units: "Units") -> None:
        assert self.commands is not None
        self.commands.show_units(self.tr("inch") if units.value == "inch" else self.tr("metric"))
