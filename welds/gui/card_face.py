"""A card ready to be shown: words and figures only, nothing left to decide for a widget."""

import re
from dataclasses import dataclass

from welds.advice.card import Card

LONG_LINE, SHORT_LINE = 54, 25
"""A caution in short is cut at the last pause between these lengths, in characters, else at the next one."""
_LATE_PAUSE = re.compile(r"[,;] | \(")  # what follows a colon is the point of it


@dataclass(frozen=True, slots=True)
class ReasonLine:
    """One link of a setting's chain; `factor` like "x 1.08" and `source` may be empty."""

    text: str
    factor: str = ""
    source: str = ""


@dataclass(frozen=True, slots=True)
class Figure:
    """One setting in words. `range` and `second` (the other unit, or the standard's code) may be empty."""

    name: str
    label: str
    start: str
    unit: str
    second: str
    range: str
    grade: str
    grade_meaning: str
    is_published: bool
    reasons: tuple[ReasonLine, ...]
    alternatives: tuple[str, ...] = ()
    more_sources: tuple[str, ...] = ()
    does: str = ""
    too_little: str = ""
    too_much: str = ""


@dataclass(frozen=True, slots=True)
class FigureGroup:
    """Settings that belong together on the machine or at the bench."""

    title: str
    figures: tuple[Figure, ...]


@dataclass(frozen=True, slots=True)
class CautionLine:
    """What can hurt, with where that is written."""

    rule: str
    text: str
    source: str = ""

    @property
    def first_words(self) -> str:
        """The first sentence, cut at a pause where it is long, for a line that folds."""
        head, stop, _rest = self.text.partition(". ")
        if len(head) <= LONG_LINE:
            return head + stop.strip()
        pauses = [pause.start() for pause in re.finditer(r"[,:;] | \(", head[: LONG_LINE - 4])]
        if pauses and pauses[-1] >= SHORT_LINE:
            return f"{head[: pauses[-1]]}\u2026"
        later = _LATE_PAUSE.search(head, LONG_LINE - 5)
        return f"{head[: later.start()]}\u2026" if later else head + stop.strip()


@dataclass(frozen=True, slots=True)
class StepLine:
    """One preparation step with its source."""

    text: str
    source: str = ""


@dataclass(frozen=True, slots=True)
class CheckLine:
    """Something the program worked out, passed or not."""

    name: str
    text: str
    ok: bool


@dataclass(frozen=True, slots=True)
class CardFace:
    """Everything the card side of the page shows, in reading order."""

    card: Card
    title: str
    subtitle: str
    stops: tuple[CautionLine, ...]
    warnings: tuple[CautionLine, ...]
    notes: tuple[CautionLine, ...]
    main: Figure
    big: tuple[Figure, ...]
    groups: tuple[FigureGroup, ...]
    figure_count: int
    weak_count: int
    checks: tuple[CheckLine, ...]
    steps: tuple[StepLine, ...]
    machine: str
    notice: str
    has_wave: bool
    adjusted: str = ""
    """What faults of the last bead changed, in one sentence."""
