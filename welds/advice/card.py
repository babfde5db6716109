"""The whole answer to one request."""

from collections.abc import Mapping
from dataclasses import dataclass

from welds.advice.adjustment import Adjustment
from welds.advice.learned import Learned
from welds.advice.request import Request
from welds.advice.setting import Caution, Check, Purchase, Setting, Severity, Step
from welds.language import mark

NOTICE = mark(
    "Advice, not a procedure: local codes, the equipment's and the vehicle's own manuals and your own test"
    " pieces come first. Anything whose failure can hurt someone belongs to a qualified welder."
)


@dataclass(frozen=True, slots=True)
class Card:
    """Settings in reading order, with what was checked, what to do first and what can hurt.

    `learned` is there where past welds moved the current, `adjustments` where a fault of the last bead asked
    for a change; the settings already follow both.
    """

    request: Request
    settings: Mapping[str, Setting]
    checks: tuple[Check, ...]
    preparation: tuple[Step, ...]
    cautions: tuple[Caution, ...]
    machine: str
    notice: str = NOTICE
    shopping: tuple[Purchase, ...] = ()
    learned: Learned | None = None
    adjustments: tuple[Adjustment, ...] = ()

    @property
    def stops(self) -> tuple[Caution, ...]:
        """The cautions that must be acknowledged before the card is ready."""
        return tuple(caution for caution in self.cautions if caution.severity is Severity.STOP)
