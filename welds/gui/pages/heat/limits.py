"""Currents at which a joint melts, melts through and falls out, found from those of the last setting."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import exp, log
from typing import Protocol

from welds.advice.heat.model import HeatModel

NEAR_ENOUGH = 0.004
STEPS = 7


@dataclass(frozen=True, slots=True)
class Thresholds:
    """Currents at which the face melts, the piece melts through, the pool falls out."""

    melts_a: float
    through_a: float
    falls_a: float


class Known(Protocol):
    """What is remembered of the last setting."""

    @property
    def thresholds(self) -> Thresholds:
        """Its currents."""

    @property
    def is_current(self) -> bool:
        """True where they are its own."""

    @property
    def lines(self) -> object:
        """What they depend on."""


def distinct(first: HeatModel, other: HeatModel) -> tuple[HeatModel, ...]:
    """Return both models, or one where they are the same."""
    return (first,) if first == other else (first, other)


def load_line(model: HeatModel) -> object:
    """Return what the thresholds of a piece depend on: all but the current on its load line."""
    arc = model.arc
    at_zero = round(arc.volts - arc.volts_per_ampere * arc.at_current_a, 6)
    return replace(model, arc=replace(arc, volts=at_zero, at_current_a=0.0))


def thresholds_of(
    first: HeatModel,
    other: HeatModel,
    thin: HeatModel,
    lines: object,
    before: Known | None,
    is_overtaken: Callable[[], bool],
) -> tuple[Thresholds, bool]:
    """Return the thresholds and whether they are of this setting; `before` are those of the last one."""
    if before is not None and before.is_current and before.lines == lines:
        return before.thresholds, True
    if before is not None and before.is_current and is_overtaken():
        return before.thresholds, False
    guess = before.thresholds if before is not None else Thresholds(0.0, 0.0, 0.0)
    melts = max(
        _near(lambda a, each=each: _share(each, a, 0.0), guess.melts_a) or each.surface_current_a()  # type: ignore[misc]
        for each in distinct(first, other)
    )
    through = _near(lambda a: _share(thin, a, thin.thickness_mm), guess.through_a) or thin.through_current_a()
    falls = _near(thin.collapse, guess.falls_a) or thin.collapse_current_a()
    return Thresholds(melts, through, max(falls, through)), True


def _share(model: HeatModel, current_a: float, below_mm: float) -> float:
    source = model.source(current_a)
    return source.peak_rise(below_mm) / model.melting_rise_k if source else 0.0


def _near(share_of_limit: Callable[[float], float], guess_a: float) -> float | None:
    """Return the current at which a share reaches one, by secants from a guess; None where that fails."""
    if guess_a <= 0.0:
        return None
    place, share = log(guess_a), share_of_limit(guess_a)
    slope = 1.0
    for _step in range(STEPS):
        if share <= 0.0:
            return None
        if abs(log(share)) < NEAR_ENOUGH * slope:
            return exp(place)
        ahead = place - log(share) / slope
        ahead_share = share_of_limit(exp(ahead))
        if ahead_share <= 0.0:
            return None
        slope = min(max((log(ahead_share) - log(share)) / (ahead - place), 0.3), 8.0)
        place, share = ahead, ahead_share
    return None
