"""From past welds to the learned start current of one joint."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import exp, log

import numpy as np

from welds.advice.bench_posterior import Cell, Marks, Posterior, posterior
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
class _Lesson:
    """What all welds say of one kind of joint, with the tables they were held against."""

    currents: TableCurrents
    marks: list[_Mark]
    found: Posterior | None


def learn(evidence: Evidence, context: Context) -> Learned | None:
    """Return what the bench's own welds add, or None where none of the same process speaks."""
    lesson = evidence.taught.get(context.cell)
    if not isinstance(lesson, _Lesson) or lesson.currents is not context.currents:
        lesson = _Lesson(context.currents, *_taught(evidence, context))
        evidence.taught[context.cell] = lesson
    marks, found = lesson.marks, lesson.found
    if found is None:
        return None
    low, high = found.quantile(LOWEST_SHARE), found.quantile(HIGHEST_SHARE)
    middle = min(max(found.mean, low), high)
    factor, factor_low, factor_high = exp(middle), exp(low), exp(high)
    above = 1.0 - found.below(0.0)
    alike = [mark for mark in marks if mark.cell == context.cell]
    start = context.table.start
    return Learned(
        "current",
        context.table,
        Band(start * factor_low, start * factor, start * factor_high, context.table.unit),
        factor,
        factor_low,
        factor_high,
        len(marks),
        len(alike),
        sum(mark.says is Says.CENTRE for mark in marks),
        sum(mark.says is Says.BELOW for mark in marks),
        sum(mark.says is Says.ABOVE for mark in marks),
        found.scatter,
        above if middle >= 0.0 else 1.0 - above,
        tuple(mark.weld.id for mark in alike[:MOST_NAMED]),
        min((start * exp(mark.ratio) for mark in alike if mark.says is Says.BELOW), default=None),
        max((start * exp(mark.ratio) for mark in alike if mark.says is Says.ABOVE), default=None),
    )


def _taught(evidence: Evidence, context: Context) -> tuple[list[_Mark], Posterior | None]:
    marks = _marks(evidence, context)
    if not any(mark.cell[0] == context.cell[0] for mark in marks):
        return marks, None
    cells = list(dict.fromkeys([context.cell, *(mark.cell for mark in marks)]))
    side = {Says.CENTRE: 0, Says.BELOW: 1, Says.ABOVE: -1}
    return marks, posterior(
        cells,
        Marks(
            np.array([cells.index(mark.cell) for mark in marks]),
            np.array([mark.ratio for mark in marks]),
            np.array([side[mark.says] for mark in marks]),
            np.array([1.0 if mark.weld.outcome is Outcome.WORKED_WELL else WORKED_WEIGHT for mark in marks]),
        ),
        target=0,
    )


def _marks(evidence: Evidence, context: Context) -> list[_Mark]:
    found: list[_Mark] = []
    for mark in _readable(evidence, context.currents):
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
