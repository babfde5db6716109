"""What went wrong with a bead, without widgets: looks, causes, and what each would change on the card."""

from dataclasses import dataclass

from PySide6.QtCore import QObject

from welds.advice.adjustment import Adjustment, adjustment_of
from welds.advice.card import Card
from welds.errors import WeldsError
from welds.gui.card_words import GRADE_WORDS
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.reference.faults import Fault, Imperfection, fault_names, remedies
from welds.reference.metals import find_metal
from welds.report.layout import setting_line


@dataclass(frozen=True, slots=True)
class FaultLook:
    """One fault to pick: its plain name, what it looks like, and what the standard calls it."""

    name: str
    words: str
    seen_as: str
    standard: str


@dataclass(frozen=True, slots=True)
class RemedyLine:
    """One cause with what answers it; `change` says what the card would do, empty where a person must."""

    cause: str
    remedy: str
    grade: str
    is_published: bool
    source: str
    change: str = ""
    adjustment: Adjustment | None = None


class FaultFinder(QObject):
    """Reads the fault table for the card on the set-up page."""

    def __init__(self, setup: SetupPresenter, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._setup = setup
        tables = setup.engine.tables
        self._standard = {each.number: each.name for each in tables.records(Imperfection)}

    @property
    def card(self) -> Card:
        """The card that the faults belong to."""
        assert self._setup.card is not None
        return self._setup.card

    def faults(self) -> tuple[FaultLook, ...]:
        """Return the faults that the process and the metal can have, in the table's order."""
        found = []
        for name in fault_names(self._setup.engine.tables):
            rows = self._rows(name)
            if rows:
                numbers = [f"{number} {self._standard[number]}" for number in rows[0].iso_6520]
                standard = f"ISO 6520-1: {', '.join(numbers)}" if numbers else ""
                words = name.replace("-", " ")
                found.append(FaultLook(name, words[0].upper() + words[1:], rows[0].seen_as, standard))
        return tuple(found)

    def remedies(self, fault: str) -> tuple[RemedyLine, ...]:
        """Return every cause of a fault: first those that the card can answer by itself."""
        lines = [self._line(row) for row in self._rows(fault)]
        return tuple(sorted(lines, key=lambda line: line.adjustment is None))

    def _rows(self, fault: str) -> tuple[Fault, ...]:
        request = self.card.request
        tables = self._setup.engine.tables
        family = find_metal(tables, request.metal).family
        return remedies(tables, fault, request.process.value, family)

    def _line(self, row: Fault) -> RemedyLine:
        source = self._setup.engine.tables.sources.get(row.source_id)
        case = f" ({row.case})" if row.case else ""
        change, adjustment = self._change(row)
        return RemedyLine(
            row.cause + case,
            row.remedy,
            GRADE_WORDS[row.basis],
            row.basis.is_published,
            source.citation if source is not None else row.source_id,
            change,
            adjustment,
        )

    def _change(self, row: Fault) -> tuple[str, Adjustment | None]:
        """Return what the card would show instead, where it can move at all."""
        adjustment = adjustment_of(row)
        if adjustment is None or adjustment.setting not in self.card.settings:
            return "", None
        try:
            after = self._setup.card_after(adjustment)
        except WeldsError:
            return "", None
        process, units = self.card.request.process, self._setup.units
        old, new = (
            setting_line(card.settings[adjustment.setting], process, units) for card in (self.card, after)
        )
        if old.start_text == new.start_text:
            return "", None
        return self.tr("{setting}: {old} \u2192 {new}").format(
            setting=new.label, old=old.start_text, new=new.start_text
        ), adjustment
