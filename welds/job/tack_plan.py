"""Where to tack, in which order, how the seam is then divided, and what pulls where."""

from dataclasses import dataclass
from heapq import heappop, heappush
from itertools import pairwise
from math import ceil

from welds.advice.request import Joint
from welds.job.repair_records import RunLength, Shrinkage
from welds.language import mark, tr
from welds.reference.basis import Basis, weakest
from welds.reference.heat_limits import Tack
from welds.reference.tables import Tables

_UNTABLED = (20.0, 30.0)
"""Tack spacing in thicknesses where no row has the sheet; shop practice."""
_TACK_LENGTHS = 4.0
_FEWEST_ROUND = 4
"""Tacks on the smallest closed seam: one a side."""
_SHORT = 2
"""A seam of this many runs or fewer is welded in one go, away from the middle of the part."""

PULLS = {
    Joint.BUTT: mark(
        "The gap closes ahead of the torch: wedge it or set it wider at the far end, and lay"
        " weights on both sides of the seam."
    ),
    Joint.TEE: mark(
        "The upright leans towards the first bead: prop it square, tack both sides in turn, weld them"
        " by turns."
    ),
    Joint.LAP: mark("The upper edge lifts between tacks: clamp or weight it down beside each one."),
    Joint.OUTSIDE_CORNER: mark(
        "The bead sits outside and opens the corner: hold it square from inside with a"
        " block until every run is cold."
    ),
    Joint.INSIDE_CORNER: mark(
        "The bead sits inside and closes the corner: hold it square, or a degree open."
    ),
    Joint.EDGE: mark("Both edges bow along the seam: clamp them to something straight."),
    Joint.PLUG: mark("The sheet dishes round each plug: do opposite plugs by turns, and let each cool."),
}
"""What happens to the parts, by joint; shop practice."""
_BUTT_LIKE = (Joint.BUTT, Joint.EDGE, Joint.OUTSIDE_CORNER)


@dataclass(frozen=True, slots=True)
class Run:
    """One stretch of the seam, welded from `start_mm` to `end_mm`."""

    start_mm: float
    end_mm: float


@dataclass(frozen=True, slots=True)
class TackPlan:
    """Tacks in the order they are made, and runs in the order they are welded; places along the seam.

    `across_mm` and `along_mm` estimate the free shrinkage as lowest and highest.
    """

    length_mm: float
    is_closed: bool
    tacks_mm: tuple[float, ...]
    tack_length_mm: tuple[float, float]
    runs: tuple[Run, ...]
    pull: str
    across_mm: tuple[float, float]
    along_mm: tuple[float, float]
    basis: Basis
    sources: tuple[str, ...]

    @property
    def spacing_mm(self) -> float:
        """Distance between neighbouring tacks, middle to middle."""
        gaps = len(self.tacks_mm) if self.is_closed else len(self.tacks_mm) - 1
        return self.length_mm / max(gaps, 1)


def plan_tacks(
    tables: Tables,
    family: str,
    thickness_mm: float,
    joint: Joint,
    length_mm: float,
    *,
    is_closed: bool = False,
) -> TackPlan:
    """Return the plan for one seam; `thickness_mm` is the thinner sheet's, a closed seam has no ends."""
    tack = next(
        (
            row
            for row in tables.records(Tack)
            if row.family == family and row.thickness_min_mm < thickness_mm <= row.thickness_max_mm
        ),
        None,
    )
    widest = tack.spacing_max_mm if tack else _UNTABLED[1] * thickness_mm
    size = (tack.length_min_mm, tack.length_max_mm) if tack else (_TACK_LENGTHS * thickness_mm,) * 2
    gaps = max(1, ceil(length_mm / widest))
    count = max(gaps, _FEWEST_ROUND) if is_closed else gaps + 1
    step = length_mm / (count if is_closed else count - 1)
    places = [n * step for n in _farthest_first(count, is_closed)]
    runs, run_row = _runs(tables, thickness_mm, length_mm, is_closed)
    across, along, shrink_rows = _shrinkage(tables, joint, length_mm)
    rows = [row for row in (tack, run_row, *shrink_rows) if row is not None]
    return TackPlan(
        length_mm,
        is_closed,
        tuple(places),
        size,
        runs,
        tr(PULLS[joint]),
        across,
        along,
        weakest([Basis.PRACTICE, *(row.basis for row in rows)]),
        tuple(dict.fromkeys(row.source_id for row in rows)),
    )


def _farthest_first(count: int, is_closed: bool) -> list[int]:
    """Order equally spaced places, each next one the farthest from all before: ends, middle, halves."""
    last = count if is_closed else count - 1
    order = [0] if is_closed or last == 0 else [0, last]
    gaps = [(-(last // 2), 0, last)]
    while gaps:
        reach, start, end = heappop(gaps)
        if reach == 0:
            continue
        middle = (start + end) // 2
        order.append(middle)
        heappush(gaps, (-((middle - start) // 2), start, middle))
        heappush(gaps, (-((end - middle) // 2), middle, end))
    return order


def _runs(
    tables: Tables, thickness_mm: float, length_mm: float, is_closed: bool
) -> tuple[tuple[Run, ...], RunLength | None]:
    rows = sorted(tables.records(RunLength), key=lambda each: each.thickness_max_mm)
    row = next((each for each in rows if thickness_mm <= each.thickness_max_mm), rows[-1])
    count = max(1, ceil(length_mm / row.run_max_mm))
    if count <= _SHORT and not is_closed:
        return (Run(0.0, length_mm),), None
    edges = [length_mm * n / count for n in range(count + 1)]
    stretches = list(pairwise(edges))
    if is_closed:
        order = (stretches[n] for n in _farthest_first(count, is_closed=True))
        return tuple(Run(end, start) for start, end in order), row
    middle = length_mm / 2.0
    stretches.sort(key=lambda stretch: abs((stretch[0] + stretch[1]) / 2.0 - middle))
    runs = [Run(b, a) if (a + b) / 2.0 >= middle else Run(a, b) for a, b in stretches]
    return tuple(runs), row


def _shrinkage(
    tables: Tables, joint: Joint, length_mm: float
) -> tuple[tuple[float, float], tuple[float, float], list[Shrinkage]]:
    weld = "butt" if joint in _BUTT_LIKE else "fillet"
    rows = [row for row in tables.records(Shrinkage) if row.weld == weld]
    spans = {"across": (0.0, 0.0), "along": (0.0, 0.0)}
    for row in rows:
        share = length_mm / row.over_mm if row.over_mm else 1.0
        spans[row.direction] = (row.shrink_min_mm * share, row.shrink_max_mm * share)
    return spans["across"], spans["along"], rows
