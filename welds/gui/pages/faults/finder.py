"""What went wrong with a bead, for the card on the set-up page."""

from PySide6.QtCore import QObject

from welds.advice.card import Card
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.reference.metals import find_metal
from welds.report.fault_lines import FaultLook, RemedyLine, looks_of, remedy_lines


class FaultFinder(QObject):
    """Reads the fault table for the card in front."""

    def __init__(self, setup: SetupPresenter, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._setup = setup

    @property
    def card(self) -> Card:
        """The card that the faults belong to."""
        assert self._setup.card is not None
        return self._setup.card

    def faults(self) -> tuple[FaultLook, ...]:
        """Return the faults that the process and the metal can have."""
        tables, request = self._setup.engine.tables, self.card.request
        return looks_of(tables, request.process.value, find_metal(tables, request.metal).family)

    def remedies(self, fault: str) -> tuple[RemedyLine, ...]:
        """Return every cause of a fault with what answers it."""
        setup = self._setup
        return remedy_lines(setup.engine.tables, fault, self.card, setup.card_after, setup.units)
