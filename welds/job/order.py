"""What comes first: an order that respects what is covered up, what needs access, what needs a dry fit."""

import heapq
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from graphlib import CycleError, TopologicalSorter

from welds.errors import InputError
from welds.job.job import Job, JointWork, Piece, RepairWork, Step, Task
from welds.language import tr

_DRY_FIT = "dry-fit-"
_RANKS: Mapping[type, int] = {Piece: 0, RepairWork: 1, JointWork: 2, Step: 3}
_LAST = 9


@dataclass(frozen=True, slots=True)
class Need:
    """One thing that has to come first, and why."""

    first: str
    why: str


@dataclass(frozen=True, slots=True)
class Turn:
    """A task in its turn; `level` counts the longest chain before it, `is_now` says it can be begun."""

    id: str
    name: str
    task: Task | None
    needs: tuple[Need, ...]
    level: int
    is_done: bool
    is_now: bool
    can_wait: bool


def ordered(job: Job) -> tuple[Turn, ...]:
    """Return every task in its turn, or raise InputError with the names of a circle."""
    names = {task.id: task.name for task in job.tasks}
    names |= {
        _DRY_FIT + joint.id: tr("fit {name} together dry, mark, take apart", name=joint.name)
        for joint in job.joints
        if joint.needs_dry_fit
    }
    needs = _needs(job, names)
    tasks = {task.id: task for task in job.tasks}
    done = {task.id for task in job.tasks if task.links.is_done}
    done |= {_DRY_FIT + task.id for task in job.joints if task.links.is_done}
    needed = {need.first for key, wanted in needs.items() if key not in done for need in wanted}
    levels: dict[str, int] = {}
    turns = []
    for key in _sorted(needs, names, {each: _rank(tasks.get(each), needed) for each in names}):
        before = [need.first for need in needs[key]]
        levels[key] = 1 + max((levels[each] for each in before), default=-1)
        task = tasks.get(key)
        turns.append(
            Turn(
                key,
                names[key],
                task,
                needs[key],
                levels[key],
                key in done,
                key not in done and all(each in done for each in before),
                task is not None and task.links.can_wait and key not in needed,
            )
        )
    return tuple(turns)


def _needs(job: Job, names: Iterable[str]) -> dict[str, tuple[Need, ...]]:
    found: dict[str, dict[str, Need]] = {key: {} for key in names}

    def note(later: str, first: str, why: str) -> None:
        found[later].setdefault(first, Need(first, why))

    for task in job.tasks:
        for first in task.links.covers:
            note(task.id, first, tr("{task} covers it up", task=task.id))
        for later in task.links.open_for:
            note(later, task.id, tr("{later} closes the access to {task}", later=later, task=task.id))
        for first in task.links.after:
            note(task.id, first, tr("said to come first"))
    for joint in job.joints:
        fit = _DRY_FIT + joint.id if joint.needs_dry_fit else None
        for piece in joint.pieces:
            note(
                fit or joint.id,
                piece,
                tr("has to be cut before it is fitted") if fit else tr("has to be cut"),
            )
        if fit:
            note(joint.id, fit, tr("welded only after a dry fit"))
    return {key: tuple(each.values()) for key, each in found.items()}


def _rank(task: Task | None, needed: Iterable[str]) -> int:
    if task is None:
        return _RANKS[JointWork]
    return _LAST if task.links.can_wait and task.id not in needed else _RANKS[type(task)]


def _sorted(
    needs: Mapping[str, tuple[Need, ...]], names: Iterable[str], ranks: Mapping[str, int]
) -> Iterator[str]:
    """Yield the ids: of what is ready, pieces, repairs, joints, steps; among them as in the file."""
    place = {key: (ranks[key], number) for number, key in enumerate(names)}
    sorter = TopologicalSorter({key: [need.first for need in wanted] for key, wanted in needs.items()})
    try:
        sorter.prepare()
    except CycleError as error:
        circle = [str(each) for each in error.args[1]]
        raise InputError(
            "order", tr(" before ").join(circle), tr("no circle: take one of these links out")
        ) from error
    ready: list[tuple[tuple[int, int], str]] = []
    while sorter.is_active():
        for key in sorter.get_ready():
            heapq.heappush(ready, (place[key], key))
        _, key = heapq.heappop(ready)
        sorter.done(key)
        yield key
