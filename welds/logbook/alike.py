"""The past welds most like a request, by a distance that can be said in one sentence."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import log

from sqlalchemy import Connection, literal, select, union_all

from welds.advice.request import Joint, Request
from welds.language import mark
from welds.logbook.entry import Entry
from welds.logbook.entry_table import entries_by_number
from welds.logbook.logbook import Logbook
from welds.logbook.rows import kind_of
from welds.logbook.schema import entries
from welds.logbook.values import values_in
from welds.reference.metals import find_metal
from welds.reference.tables import Tables

STATED = mark(
    "distance: 1 for every quarter that one sheet is thicker than the other, 1 for another kind of joint"
    " (half of it among fillets), half for another position, 3 for another family of metal; another process"
    " is never alike"
)
RATIO_STEP = log(1.25)
OTHER_JOINT, OTHER_FILLET, OTHER_POSITION, OTHER_FAMILY = 1.0, 0.5, 0.5, 3.0
FARTHEST = 6.0
"""Beyond this nothing is alike any more."""

AT_ONCE = 24
"""Kinds asked for in one statement."""

_FILLETS = frozenset({Joint.TEE.value, Joint.LAP.value, Joint.INSIDE_CORNER.value})
MOST_KINDS = 5000


@dataclass(frozen=True, slots=True)
class Like:
    """A past weld, and how far it is from what was asked."""

    entry: Entry
    distance: float


def similar(log_: Logbook, request: Request, tables: Tables, limit: int = 5) -> list[Like]:
    """Return the nearest past welds, nearest first, the newest first among equals."""
    metals = [find_metal(tables, name) for name in (request.metal, request.other_metal) if name]
    family = "stainless" if any(each.family == "stainless" for each in metals) else metals[0].family
    own = kind_of(request.process, family, request.joint, request.position)
    wanted = log(request.thickness_mm)

    def work(connection: Connection) -> list[Like]:
        kinds = values_in(connection, "kind", MOST_KINDS)
        apart = {kind: distance for kind in kinds if (distance := kinds_apart(own, kind)) < FARTHEST}
        best: list[tuple[float, int]] = []
        for group in _groups(sorted(apart, key=lambda kind: apart[kind])):
            if len(best) >= limit and best[limit - 1][0] <= apart[group[0]]:
                break
            for kind, number, thickness in _nearest(connection, group, wanted, limit):
                distance = apart[kind] + abs(thickness - wanted) / RATIO_STEP
                if distance < FARTHEST:
                    best.append((distance, number))
            best.sort(key=lambda each: each[0])
        chosen = _newest_first(connection, best, limit)
        found = entries_by_number(connection, [number for _, number in chosen])
        return [Like(entry, round(each[0], 3)) for entry, each in zip(found, chosen, strict=True)]

    return log_.store.read(work)


def kinds_apart(one: str, other: str) -> float:
    """Return the distance between two kinds, thickness left out."""
    process, family, joint, position = one.split("|")
    other_process, other_family, other_joint, other_position = other.split("|")
    if process != other_process:
        return float("inf")
    apart = 0.0
    if joint != other_joint:
        apart += OTHER_FILLET if {joint, other_joint} <= _FILLETS else OTHER_JOINT
    if position != other_position:
        apart += OTHER_POSITION
    return apart + (OTHER_FAMILY if family != other_family else 0.0)


def _groups(kinds: Sequence[str]) -> Iterable[Sequence[str]]:
    """Yield the nearest kind alone, for it often answers already, then the others some at a time."""
    yield from [kinds[:1]] if kinds else []
    for start in range(1, len(kinds), AT_ONCE):
        yield kinds[start : start + AT_ONCE]


def _nearest(
    connection: Connection, kinds: Sequence[str], wanted: float, limit: int
) -> list[tuple[str, int, float]]:
    c = entries.c
    parts = []
    for kind in kinds:
        base = select(literal(kind).label("kind"), c.number, c.log_thickness).where(c.kind == kind)
        thicker = base.where(c.log_thickness >= wanted).order_by(c.log_thickness, c.made_on.desc())
        thinner = base.where(c.log_thickness < wanted).order_by(c.log_thickness.desc(), c.made_on.desc())
        parts += [select(each.limit(limit).subquery()) for each in (thicker, thinner)]
    return [(row[0], row[1], row[2]) for row in connection.execute(union_all(*parts))]


def _newest_first(
    connection: Connection, best: Sequence[tuple[float, int]], limit: int
) -> list[tuple[float, int]]:
    within = best[: max(limit * 4, limit)]
    query = select(entries.c.number, entries.c.made_on).where(
        entries.c.number.in_([number for _, number in within])
    )
    made_on = {row.number: row.made_on for row in connection.execute(query)}
    ordered = sorted(within, key=lambda each: made_on[each[1]], reverse=True)
    return sorted(ordered, key=lambda each: round(each[0], 6))[:limit]
