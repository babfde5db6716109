"""A job as written down: pieces, joints, repairs and steps, and how they hang together."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from welds.advice.request import Request
from welds.job.blank import FoldedPart
from welds.job.damage import Damage
from welds.quantities.units import Units
from welds.reference.metals import Metal


@dataclass(frozen=True, slots=True)
class Links:
    """What comes before and after one task; each entry is another task's id.

    `after` simply comes first; what is in `covers` gets covered up by this task; `open_for` needs access that
    the tasks named there would close. `can_wait` puts it last unless something needs it.
    """

    after: tuple[str, ...] = ()
    covers: tuple[str, ...] = ()
    open_for: tuple[str, ...] = ()
    can_wait: bool = False
    is_done: bool = False
    log: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Stock:
    """Sheets of one kind to cut from."""

    id: str
    metal: Metal
    thickness_mm: float
    size_mm: tuple[float, float]
    count: int


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece to cut, folded or flat; a flat one has a size and no part."""

    id: str
    name: str
    metal: Metal
    thickness_mm: float
    count: int
    stock: str | None
    part: FoldedPart | None
    width_mm: float | None
    size_mm: tuple[float, float] | None
    known_k: float | None
    brake: str
    is_along_grain: bool
    links: Links


@dataclass(frozen=True, slots=True)
class JointWork:
    """A joint to weld, once or several times alike; `request` holds its length."""

    id: str
    name: str
    request: Request
    pieces: tuple[str, ...]
    count: int
    is_closed: bool
    needs_dry_fit: bool
    links: Links

    @property
    def length_mm(self) -> float:
        """Length of one seam; a plug has none."""
        return self.request.length_mm or 0.0


@dataclass(frozen=True, slots=True)
class RepairWork:
    """A damaged region to mend."""

    id: str
    name: str
    damage: Damage
    links: Links


@dataclass(frozen=True, slots=True)
class Step:
    """Anything else that has its place in the order: bolt, paint, drill a drain."""

    id: str
    name: str
    links: Links


Task = Piece | JointWork | RepairWork | Step


@dataclass(frozen=True, slots=True)
class Prices:
    """What the person pays; a price that is not stated is left out of the cost."""

    currency: str = ""
    filler_kg: Mapping[str, float] = field(default_factory=dict)
    gas_m3: Mapping[str, float] = field(default_factory=dict)
    disc: float | None = None
    power_kwh: float | None = None
    labour_h: float | None = None


@dataclass(frozen=True, slots=True)
class Job:
    """The whole job."""

    name: str
    about: str
    stock: tuple[Stock, ...]
    pieces: tuple[Piece, ...]
    joints: tuple[JointWork, ...]
    repairs: tuple[RepairWork, ...]
    steps: tuple[Step, ...]
    prices: Prices
    file: Path
    units: Units | None

    @property
    def tasks(self) -> Iterator[Task]:
        """Every task in the order of the file."""
        yield from self.pieces
        yield from self.joints
        yield from self.repairs
        yield from self.steps
