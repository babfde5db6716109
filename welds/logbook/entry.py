"""One weld that was made, as the log keeps it."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from welds.advice.evidence import Outcome, PastWeld
from welds.advice.request import Hand, Joint, Process, Request, Transfer

Value = str | float | bool
"""What a setting was: a number in the card's unit, or a choice."""


@dataclass(frozen=True, slots=True)
class Photo:
    """A picture in the log: the name it came with, and the SHA-256 of its bytes, by which it is kept."""

    name: str
    sha256: str


@dataclass(frozen=True, slots=True)
class Entry:
    """One weld: what was joined, what was set, what came of it.

    `uid` names it for ever and everywhere, `number` only in its log (None until it is written), `version` is
    raised by every change. `made_at` is an ISO 8601 date, or date and time with offset. `family` follows from
    the metals.
    """

    uid: str
    process: Process
    metal: str
    family: str
    thickness_mm: float
    joint: Joint
    outcome: Outcome
    made_at: str
    settings: Mapping[str, Value] = field(default_factory=dict)
    position: str = "PA"
    other_metal: str | None = None
    other_thickness_mm: float | None = None
    gap_mm: float | None = None
    hand: Hand | None = None
    faults: tuple[str, ...] = ()
    notes: str = ""
    machine: str = ""
    welder: str = ""
    material_lot: str = ""
    photos: tuple[Photo, ...] = ()
    number: int | None = None
    version: int = 1

    def figure(self, name: str) -> float | None:
        """Return a setting that is a number, or None."""
        value = self.settings.get(name)
        return float(value) if isinstance(value, int | float) and not isinstance(value, bool) else None

    @property
    def request(self) -> Request:
        """What was to be welded, with what stood on the machine pinned, so that the tables can be asked."""
        transfer = self.settings.get("transfer")
        is_mig = self.process is Process.MIG
        return Request(
            self.process,
            self.metal,
            self.thickness_mm,
            self.joint,
            self.position,
            self.other_metal,
            self.other_thickness_mm,
            gap_mm=self.gap_mm or 0.0,
            hand=self.hand or Hand.UNHURRIED,
            wire_diameter_mm=self.figure("wire_diameter") if is_mig else None,
            transfer=Transfer(str(transfer)) if is_mig and transfer in [*Transfer] else None,
        )

    @property
    def past_weld(self) -> PastWeld:
        """The entry as the advice learns from it."""
        return PastWeld(
            self.uid,
            self.request,
            self.outcome,
            self.figure("current"),
            self.figure("wire_feed"),
            self.faults,
            self.made_at,
        )
