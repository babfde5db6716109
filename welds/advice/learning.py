"""From past welds to the learned start current of one joint."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from math import exp, log

import numpy as np

from welds.advice.bench_posterior import Cell, Marks, Posterior, posteriors
from welds.advice.evidence import Evidence, Outcome, PastWeld, Says
from welds.advice.learned import Learned
from welds.advice.table_current import TableCurrents
from welds.quantities.band import Band

FARTHEST = log(2.5)
"""A weld at more than 2.5 times or less than 1/2.5 of the tables' current is a slip of the pen: left out."""

WORKED_WEIGHT = 0.5
"""What a weld that merely worked counts against one that worked well."""

MOST_WELDS = 400
"""The newest that speak; more change nothing that a person could set."""

LOWEST_SHARE, HIGHEST_SHARE = 0.05, 0.95
MOST_NAMED = 20


@dataclass(frozen=True, slots=True)
class Context:
    """The joint now asked for: its cell, the tables' band for it, and the tables for the past welds."""

    cell: Cell
    table: Band
    currents: TableCurrents


@dataclass(frozen=True, slots=True)
class _Mark:
    weld: PastWeld
    cell: Cell
    ratio: float
    says: Says


@dataclass(frozen=True, slots=True)
class _Found:
    """The log ratio to the tables: its 90 % range, its scatter, the share that lies above zero."""

    low: float
    middle: float
    high: float
    scatter: float
    above: float


@dataclass(frozen=True, slots=True)
class _Lesson:
    """What all welds say of one kind of joint, with the tables they were held against."""

    currents: TableCurrents
    marks: list[_Mark]
    alike: list[_Mark]
    says: Counter[Says]
    found: _Found | None


def learn(evidence: Evidence, context: Context) -> Learned | None:
    """Return what the bench's own welds add, or None where none of the same process speaks."""
    lesson = evidence.taught.get(context.cell)
    if not isinstance(lesson, _Lesson) or lesson.currents is not context.currents:
        lesson = _lesson(evidence, context)
        evidence.taught[context.cell] = lesson
    found, alike = lesson.found, lesson.alike
    if found is None:
        return None
    factor, factor_low, factor_high = exp(found.middle), exp(found.low), exp(found.high)
    start = context.table.start
    return Learned(
        "current",
        context.table,
        Band(start * factor_low, start * factor, start * factor_high, context.table.unit),
        factor,
        factor_low,
        factor_high,
        len(lesson.marks),
        len(alike),
        lesson.says[Says.CENTRE],
        lesson.says[Says.BELOW],
        lesson.says[Says.ABOVE],
        found.scatter,
        found.above if found.middle >= 0.0 else 1.0 - found.above,
        tuple(mark.weld.id for mark in alike[:MOST_NAMED]),
        min((start * exp(mark.ratio) for mark in alike if mark.says is Says.BELOW), default=None),
        max((start * exp(mark.ratio) for mark in alike if mark.says is Says.ABOVE), default=None),
    )


def _lesson(evidence: Evidence, context: Context) -> _Lesson:
    marks, known = _read(evidence, context.currents)
    alike = [mark for mark in marks if mark.cell == context.cell]
    found = None
    if any(mark.cell[0] == context.cell[0] for mark in marks):
        found = _found(known.get(context.cell) or _posteriors([context.cell], marks)[context.cell])
    return _Lesson(context.currents, marks, alike, Counter(mark.says for mark in marks), found)


def _read(evidence: Evidence, currents: TableCurrents) -> tuple[list[_Mark], dict[Cell, Posterior]]:
    """Return the welds that speak and what they say of every kind of joint among them, read once."""
    kept = evidence.taught.get(_read)
    if isinstance(kept, tuple) and kept[0] is currents:
        return kept[1], kept[2]
    marks = _marks(evidence, currents)
    known = _posteriors([], marks) if marks else {}
    evidence.taught[_read] = (currents, marks, known)
    return marks, known


def _posteriors(more: list[Cell], marks: list[_Mark]) -> dict[Cell, Posterior]:
    cells = list(dict.fromkeys([*more, *(mark.cell for mark in marks)]))
    side = {Says.CENTRE: 0, Says.BELOW: 1, Says.ABOVE: -1}
    numbers = Marks(
        np.array([cells.index(mark.cell) for mark in marks]),
        np.array([mark.ratio for mark in marks]),
        np.array([side[mark.says] for mark in marks]),
        np.array([1.0 if mark.weld.outcome is Outcome.WORKED_WELL else WORKED_WEIGHT for mark in marks]),
    )
    return dict(zip(cells, posteriors(cells, numbers), strict=True))


def _found(found: Posterior) -> _Found:
    low, high = found.quantile(LOWEST_SHARE), found.quantile(HIGHEST_SHARE)
    middle = min(max(found.mean, low), high)
    return _Found(low, middle, high, found.scatter, 1.0 - found.below(0.0))


def _marks(evidence: Evidence, currents: TableCurrents) -> list[_Mark]:
    found: list[_Mark] = []
    for mark in _readable(evidence, currents):
        found.append(mark)
        if len(found) == MOST_WELDS:
            break
    return found


def _readable(evidence: Evidence, currents: TableCurrents) -> Iterator[_Mark]:
    for weld in evidence.welds:
        says = weld.says
        if says is Says.NOTHING:
            continue
        figures = currents.of(weld.request)
        if figures is None:
            continue
        current_a = weld.current_a
        if current_a is None and weld.wire_feed_m_min:
            current_a = figures.current_at_feed(weld.wire_feed_m_min)
        if current_a is None or current_a <= 0.0:
            continue
        ratio = log(current_a / figures.current_a)
        if abs(ratio) <= FARTHEST:
            cell = (weld.request.process.value, figures.family, weld.request.joint.value)
            yield _Mark(weld, cell, ratio, says)
