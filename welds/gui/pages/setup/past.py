"""What the log adds to the card on screen: the nearest past welds, and what was learned from them all."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from welds.advice.card import Card
from welds.advice.learned import Learned
from welds.gui.pages.log import words
from welds.gui.pages.log.desk import LogDesk
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.past_welds import PastWelds
from welds.language import tr
from welds.logbook.entry import Entry
from welds.reference.metals import find_metal

if TYPE_CHECKING:
    from welds.advice.evidence import Evidence
    from welds.advice.request import Request
    from welds.logbook.logbook import Logbook

MOST_SHOWN = 3
SAME_SHEET = 0.02
"""Within 2 % it is the same sheet, by gauge or by millimetres."""


@dataclass(frozen=True, slots=True)
class PastLine:
    """A past weld near the card: what was run and how it came out, and the joint where that is another."""

    words: str
    joint: str
    tone: str


@dataclass(frozen=True, slots=True)
class PastFace:
    """The strip in words. `learned` is None where nothing speaks or learning is off."""

    lines: tuple[PastLine, ...]
    learned: Learned | None
    summary: str
    is_on: bool

    @property
    def is_empty(self) -> bool:
        """True where the log has nothing to say to this card."""
        return not self.lines and self.learned is None and self.is_on


class PastPresenter(QObject):
    """Feeds the cards with evidence and keeps the strip true to the card; starts when it is told to."""

    shown = Signal(object)

    def __init__(
        self, setup: SetupPresenter, desk: LogDesk, past: PastWelds, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._setup, self._desk, self._past = setup, desk, past
        self._is_started = False
        self._nearest: Sequence[Entry] = ()
        desk.changed.connect(self._on_log_changed)
        desk.trouble_changed.connect(lambda _trouble: self._on_log_lost())
        setup.card_changed.connect(lambda _face: self._on_card_changed())

    @property
    def is_on(self) -> bool:
        """True where the cards learn from the log."""
        return self._past.is_on

    def start(self) -> None:
        """Begin to read the log, if there is one."""
        if not self._is_started and self._desk.is_worth_opening:
            self._is_started = True
            self._past.forget()
            self._past.ask = self._ask_evidence
            self._setup.answer_again()

    def set_on(self, is_on: bool) -> None:
        """Let the cards learn from the log, or show the tables' own figures."""
        if is_on != self._past.is_on:
            self._past.is_on = is_on
            self._setup.answer_again()

    def _ask_evidence(self, request: "Request") -> None:
        tables = self._setup.engine.tables

        def work(log: "Logbook") -> "Evidence":
            from welds.logbook.past import evidence_for

            return evidence_for(log, request, tables)

        def done(evidence: "Evidence") -> None:
            self._past.put(request, evidence)
            if evidence.welds:
                self._setup.answer_again()

        self._desk.ask(work, done)

    def _on_card_changed(self) -> None:
        card = self._setup.card
        if card is None or not self._is_started:
            return
        request, tables = card.request, self._setup.engine.tables

        def work(log: "Logbook") -> list[Entry]:
            from welds.logbook.alike import similar

            return [like.entry for like in similar(log, request, tables, MOST_SHOWN)]

        self._desk.ask(work, self._on_nearest, "nearest")
        self._show()

    def _on_nearest(self, found: Sequence[Entry]) -> None:
        self._nearest = found
        self._show()

    def _show(self) -> None:
        card = self._setup.card
        if card is None:
            return
        lines = tuple(self._line(entry, card) for entry in self._nearest)
        self.shown.emit(PastFace(lines, card.learned, _summary(card.learned), self._past.is_on))

    def _line(self, entry: Entry, card: Card) -> PastLine:
        units = self._setup.units
        request, tables = card.request, self._setup.engine.tables
        is_same = (
            find_metal(tables, entry.metal).id == find_metal(tables, request.metal).id
            and (entry.joint, entry.position) == (request.joint, request.position)
            and abs(entry.thickness_mm - request.thickness_mm) < SAME_SHEET * request.thickness_mm
        )
        joint = "" if is_same else words.differing_words(entry, units)
        return PastLine(
            words.past_words(entry, date.today(), tables), joint, words.OUTCOME_TONES[entry.outcome]
        )

    def _on_log_changed(self) -> None:
        self._past.forget()
        if not self._is_started:
            self.start()
        else:
            self._setup.answer_again()

    def _on_log_lost(self) -> None:
        if self._desk.trouble is not None:
            self._past.forget()
            self._nearest = ()
            self._show()


def _summary(learned: Learned | None) -> str:
    """Return how many welds spoke and how sure it is, in one sentence."""
    if learned is None:
        return ""
    spoke = (
        tr("1 past weld speaks")
        if learned.welds == 1
        else tr("{welds} past welds speak", welds=learned.welds)
    )
    change = round(100.0 * (learned.factor - 1.0))
    side = (
        tr("as the tables say")
        if change == 0
        else tr("{percent} % above the tables", percent=change)
        if change > 0
        else tr("{percent} % below the tables", percent=-change)
    )
    band = learned.band
    return tr(
        "{spoke}, {alike} on this kind of joint. This bench runs {side}: {sureness}."
        " Nine in ten that the right start lies between {low:.0f} and {high:.0f} {unit}.",
        spoke=spoke,
        alike=learned.alike,
        side=side,
        sureness=learned.sureness_words,
        low=band.low,
        high=band.high,
        unit=band.unit,
    )
