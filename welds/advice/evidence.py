"""Past welds as the advice needs to know them; the log hands them in, nothing here reads a file."""

from dataclasses import dataclass, field
from enum import StrEnum

from welds.advice.request import Request


class Outcome(StrEnum):
    """How a weld came out."""

    WORKED_WELL = "worked-well"
    WORKED = "worked"
    FAILED = "failed"


class Says(StrEnum):
    """What one weld says about the current that would have suited it."""

    CENTRE = "centre"
    BELOW = "below"
    ABOVE = "above"
    NOTHING = "nothing"


TOO_HOT = frozenset({"burn-through", "510", "509", "excess-penetration", "504"})
TOO_COLD = frozenset(
    {"lack-of-fusion", "401", "4011", "4012", "4013", "506", "incomplete-penetration", "402", "4021"}
)
"""Faults, by plain name or ISO 6520-1 number, whose first cause is the current. Undercut, pores, cracks and
distortion have other causes as often and bound nothing."""


@dataclass(frozen=True, slots=True)
class PastWeld:
    """One weld that was made: what was asked, what was used, what came of it.

    `id` is the log's name for it. `wire_feed_m_min` stands in for a current that was not read off.
    """

    id: str
    request: Request
    outcome: Outcome
    current_a: float | None = None
    wire_feed_m_min: float | None = None
    faults: tuple[str, ...] = ()
    made_at: str = ""

    @property
    def says(self) -> Says:
        """What the outcome says: a good weld marks the centre, a burnt or cold one bounds it from one side.

        Burnt and cold at once, or failed for another reason, says nothing about the current.
        """
        hot, cold = not TOO_HOT.isdisjoint(self.faults), not TOO_COLD.isdisjoint(self.faults)
        if self.outcome is Outcome.WORKED_WELL:
            return Says.CENTRE
        if hot != cold:
            return Says.BELOW if hot else Says.ABOVE
        return Says.CENTRE if self.outcome is Outcome.WORKED and not hot else Says.NOTHING


@dataclass(frozen=True, slots=True)
class Evidence:
    """The welds that may speak, newest first.

    `taught` keeps what they were worked out to teach, by kind of joint: the same for every thickness.
    """

    welds: tuple[PastWeld, ...]
    taught: dict[object, object] = field(default_factory=dict, compare=False, repr=False)
