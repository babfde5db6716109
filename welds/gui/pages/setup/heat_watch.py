"""Holds the card against the heat picture once it has rested, off the window's thread."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from welds.advice.card import Card
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.setting import Check
from welds.gui.jobs.queue import Jobs
from welds.gui.pages.setup.presenter import SetupPresenter

if TYPE_CHECKING:
    from collections.abc import Callable

    from welds.reference.tables import Tables

REST_MS = 250
"""While the slider moves, the card changes more often than this."""


class HeatWatch(QObject):
    """Adds one check where physics and tables disagree; an answer to an earlier card is dropped."""

    def __init__(
        self,
        setup: SetupPresenter,
        jobs: Jobs,
        parent: QObject | None = None,
        check: "Callable[[Card, Tables, Equipment], Check | None] | None" = None,
    ) -> None:
        super().__init__(parent)
        self._setup, self._jobs = setup, jobs
        self._check = check or _heat_check
        self._known: tuple[tuple[Card, Equipment], tuple[Check, ...]] | None = None
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._ask)
        setup.card_changed.connect(lambda _face: self._on_card_changed())
        if setup.card is not None:
            self._rest.start()

    def stop(self) -> None:
        """Begin nothing more and wait for what is under way: the window closes."""
        self._rest.stop()
        self._jobs.wait()

    def _on_card_changed(self) -> None:
        if self._known is not None and self._known[0] == self._asked():
            self._rest.stop()
            self._setup.add_checks(self._known[1])
        else:
            self._rest.start()

    def _ask(self) -> None:
        asked = self._asked()
        if asked is None or self._setup.is_stale:
            return
        card, equipment = asked
        tables, check = self._setup.engine.tables, self._check

        def done(found: Check | None) -> None:
            if self._asked() == asked:
                self._rest.stop()
                self._known = (asked, (found,) if found is not None else ())
                self._setup.add_checks(self._known[1])

        self._jobs.submit(lambda: check(card, tables, equipment), done, _raise, "heat picture")

    def _asked(self) -> tuple[Card, Equipment] | None:
        bench = self._setup.engine.bench
        card = self._setup.card
        return None if card is None else (card, bench.equipment if bench is not None else GENERIC)


def _heat_check(card: Card, tables: "Tables", equipment: Equipment) -> Check | None:
    from welds.advice.heat.check import heat_check  # brings NumPy, which the first card does without

    return heat_check(card, tables, equipment)


def _raise(error: Exception) -> None:
    raise error
