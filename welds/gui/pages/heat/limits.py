"""Currents at which a joint melts, melts through and falls out, found from those of the last setting."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from math import exp, log
from typing import Protocol

from welds.advice.heat.model import HeatModel

NEAR_ENOUGH = 0.004
A_STEP = 0.025
"""Share off its limit, as a logarithm, up to which one step along a known slope is as good as a search: the
slope hardly bends over it."""

STEPS = 7


@dataclass(frozen=True, slots=True)
class Thresholds:
    """Currents at which the face melts, the piece melts through, the pool falls out.

    `slopes` say how fast, both as logarithms, the share of each limit grows with the current there; 0 where
    that is not known.
    """

    melts_a: float
    through_a: float
    falls_a: float
    slopes: tuple[float, float, float] = (0.0, 0.0, 0.0)


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
        _near(partial(_share, each, 0.0), guess.melts_a, guess.slopes[0]) or (each.surface_current_a(), 0.0)
        for each in distinct(first, other)
    )
    root = partial(_share, thin, thin.thickness_mm)
    through = _near(root, guess.through_a, guess.slopes[1]) or (thin.through_current_a(), 0.0)
    falls = _near(thin.collapse, guess.falls_a, guess.slopes[2]) or (thin.collapse_current_a(), 0.0)
    slopes = (melts[1], through[1], falls[1])
    return Thresholds(melts[0], through[0], max(falls[0], through[0]), slopes), True


def _share(model: HeatModel, below_mm: float, current_a: float) -> float:
    source = model.source(current_a)
    return source.peak_rise(below_mm) / model.melting_rise_k if source else 0.0


def _near(
    share_of_limit: Callable[[float], float], guess_a: float, known_slope: float
) -> tuple[float, float] | None:
    """Return the current at which a share reaches one, and the slope there; None where that fails.

    By secants from a guess; one step where the slope is known and the guess is near.
    """
    if guess_a <= 0.0:
        return None
    place, share = log(guess_a), share_of_limit(guess_a)
    slope = known_slope or 1.0
    for _step in range(STEPS):
        if share <= 0.0:
            return None
        off = log(share)
        if known_slope and abs(off) < A_STEP:
            return exp(place - off / known_slope), known_slope
        if abs(off) < NEAR_ENOUGH * slope:
            return exp(place), slope
        ahead = place - off / slope
        ahead_share = share_of_limit(exp(ahead))
        if ahead_share <= 0.0:
            return None
        known_slope = slope = min(max((log(ahead_share) - off) / (ahead - place), 0.3), 8.0)
        place, share = ahead, ahead_share
    return None
