"""The person's own logged welds that belong to one curve of current over thickness."""

from dataclasses import dataclass

from welds.advice.evidence import Evidence, Outcome
from welds.advice.request import Request
from welds.advice.table_current import build_table_currents
from welds.errors import InputError
from welds.reference.metals import find_metal
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class OwnWeld:
    """One logged weld; `is_from_feed` where its current was worked out from the wire feed."""

    id: str
    request: Request
    current_a: float
    outcome: Outcome
    faults: tuple[str, ...]
    made_on: str
    is_from_feed: bool = False

    @property
    def thickness_mm(self) -> float:
        """The thickness of the first piece."""
        return self.request.thickness_mm


def own_welds(request: Request, evidence: Evidence | None, tables: Tables) -> tuple[OwnWeld, ...]:
    """Return the welds of the request's process, metal and joint, newest first.

    Position and hand may be others than asked. A weld with neither current nor wire feed is left out.
    """
    if evidence is None:
        return ()
    currents = tables.derived(build_table_currents)
    metal = find_metal(tables, request.metal).id
    found = []
    for weld in evidence.welds:
        asked = weld.request
        if (asked.process, asked.joint) != (request.process, request.joint):
            continue
        if _metal_id(tables, asked.metal) != metal:
            continue
        current_a = weld.current_a
        if current_a is None and weld.wire_feed_m_min:
            figures = currents.of(asked)
            current_a = figures.current_at_feed(weld.wire_feed_m_min) if figures is not None else None
        if current_a is not None and current_a > 0.0:
            made_on = weld.made_at[:10]
            is_from_feed = weld.current_a is None
            found.append(OwnWeld(weld.id, asked, current_a, weld.outcome, weld.faults, made_on, is_from_feed))
    return tuple(found)


def _metal_id(tables: Tables, text: str) -> str | None:
    """Return the metal's id, or None where a log names one that these tables do not have."""
    try:
        return find_metal(tables, text).id
    except InputError:
        return None
