"""Finding a request close by that the tables can answer."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from welds.advice.request import Joint, Process
from welds.errors import InputError, NotCoveredError, WeldsError
from welds.gui.engine import Engine, Fields
from welds.quantities.units import Units
from welds.report.wording import joint_name, process_name

STEP_RATIO = 1.12
STEPS = 24
_MILLIMETRES = re.compile(r"([\d.,]+) mm\b")


@dataclass(frozen=True, slots=True)
class Nearest:
    """A small change that leads to an answer: what to call it, and the fields to set."""

    words: str
    changes: Mapping[str, str]


def nearest_covered(engine: Engine, fields: Fields, units: Units, hint: str | None) -> Nearest | None:
    """Return a small change that was tried and is answered, or None.

    The refusal's own `hint` comes first where it names a thickness, then other thicknesses, nearest first;
    where it names none, thickness is not what is wrong, so position, joint and process are tried at once.
    """
    candidates = _candidates(engine, fields, units, hint or "")
    return next((change for change in candidates if _is_answered(engine, fields, change)), None)


def nearest_word(engine: Engine, fields: Fields, error: InputError) -> Nearest | None:
    """Return the right word for a slip, the other process for a joint that does not suit it, or None."""
    candidates: list[Nearest] = []
    if error.nearest is not None and error.field in fields:
        candidates.append(Nearest(error.nearest, {error.field: error.nearest}))
    if error.field == "joint":
        candidates += _other_processes(fields)
    return next((change for change in candidates if _is_answered(engine, fields, change)), None)


def _candidates(engine: Engine, fields: Fields, units: Units, hint: str) -> Iterator[Nearest]:
    hinted = _MILLIMETRES.match(hint)
    thickness_mm = _thickness_mm(engine, fields)
    if hinted and thickness_mm is not None:
        yield _thickness(engine, float(hinted[1].replace(",", ".")), units)
        for step in range(1, STEPS):
            for ratio in (STEP_RATIO**step, STEP_RATIO**-step):
                yield _thickness(engine, thickness_mm * ratio, units)
    if fields.get("position") != "PA":
        yield Nearest("PA", {"position": "PA"})
    for joint in Joint:
        if joint != fields.get("joint"):
            yield Nearest(joint_name(joint), {"joint": joint})
    yield from _other_processes(fields)


def _other_processes(fields: Fields) -> Iterator[Nearest]:
    for process in Process:
        if process != fields.get("process"):
            yield Nearest(process_name(process), {"process": process})


def _thickness(engine: Engine, thickness_mm: float, units: Units) -> Nearest:
    text = engine.length_text(thickness_mm, units)
    return Nearest(text, {"thickness": text})


def _thickness_mm(engine: Engine, fields: Fields) -> float | None:
    try:
        return engine.request(fields).thickness_mm
    except WeldsError:
        return None


def _is_answered(engine: Engine, fields: Fields, change: Nearest) -> bool:
    try:
        engine.card(engine.request({**fields, **change.changes}))
    except (InputError, NotCoveredError):
        return False
    return True
