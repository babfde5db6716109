"""One recommended figure and the whole of its reasoning."""

from dataclasses import dataclass
from enum import StrEnum

from welds.quantities.band import Band
from welds.reference.basis import Basis


@dataclass(frozen=True, slots=True)
class Reason:
    """One link in the chain: a sentence, the factor it applied (if any), the source it came from (if any).

    `is_clip` marks the one that says a limit was met, `is_aside` one that moves no figure: it shows how far
    documents lie apart.
    """

    text: str
    factor: float | None = None
    source: str | None = None
    is_clip: bool = False
    is_aside: bool = False


@dataclass(frozen=True, slots=True)
class Choice:
    """A value that could be chosen instead, and what that would change."""

    value: str | float | bool
    text: str = ""


@dataclass(frozen=True, slots=True)
class Setting:
    """One line of the card: either a band or a chosen value with alternatives.

    A value in words is English, as JSON and the log keep it: `welds.advice.words.value_said` says it.

    `rows` are the ids of the table rows the figure came from; `sources` the ids in data/sources.yaml;
    `text` says in words what a coded value means ("argon" for I1). `wanted` is the band before the machine's
    limits; `own_scale` is the start as the machine's own scale reads it ("4 on this machine's dial").
    """

    name: str
    basis: Basis
    reasons: tuple[Reason, ...]
    sources: tuple[str, ...] = ()
    rows: tuple[str, ...] = ()
    band: Band | None = None
    value: str | float | bool | None = None
    unit: str | None = None
    text: str = ""
    alternatives: tuple[Choice, ...] = ()
    wanted: Band | None = None
    own_scale: str = ""

    def __post_init__(self) -> None:
        if (self.band is None) == (self.value is None):
            raise ValueError(f"{self.name}: exactly one of band and value")
        if not self.reasons:
            raise ValueError(f"{self.name}: a figure without a reason")

    @property
    def figure(self) -> Band:
        """The band of a setting that is known to have one."""
        if self.band is None:
            raise TypeError(f"{self.name} is a choice, not a band")
        return self.band

    @property
    def start(self) -> float | str | bool:
        """The figure to begin with, whichever kind the setting is."""
        if self.band is not None:
            return self.band.start
        assert self.value is not None
        return self.value


class Severity(StrEnum):
    """How a caution binds: stop must be acknowledged, warn must be seen, note may be read."""

    STOP = "stop"
    WARN = "warn"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Caution:
    """What can hurt, in words; `rule` is its id in data/hazards.yaml."""

    rule: str
    severity: Severity
    text: str
    basis: Basis
    source: str | None = None


@dataclass(frozen=True, slots=True)
class Check:
    """Something the program worked out about the set-up, passed or not; its name is for `tr` to say."""

    name: str
    ok: bool
    text: str


@dataclass(frozen=True, slots=True)
class Purchase:
    """Something the shelf lacks: needed to set the card at all, or only better than what is there."""

    item: str
    is_needed: bool
    setting: str


@dataclass(frozen=True, slots=True)
class Step:
    """One preparation step, in order."""

    text: str
    basis: Basis
    source: str | None = None
