"""Which columns stand side by side: changes to the present card, their order, and which one is the base."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

from welds.advice.equipment import Equipment
from welds.gui.engine import Fields
from welds.report.comparison import Grounds

MOST = 8


@dataclass(frozen=True)
class Change:
    """What one column asks differently from the card on the set-up page; `equipment` None is its own.

    `grounds` None learns from the log as the set-up page does.
    """

    fields: Mapping[str, str] = field(default_factory=dict)
    equipment: Equipment | None = None
    grounds: Grounds | None = None

    def of(self, base: Fields) -> dict[str, str | tuple[str, ...]]:
        """Return the whole request, as typed."""
        return {**base, **self.fields}


@dataclass(frozen=True)
class ColumnSet:
    """Columns in the person's order; every operation returns a new set."""

    changes: tuple[Change, ...] = (Change(),)
    base: int = 0

    @property
    def is_full(self) -> bool:
        """True where no further column fits side by side."""
        return len(self.changes) >= MOST

    def with_change(self, change: Change) -> "ColumnSet":
        """Add a column at the right, unless it is there or there is no room."""
        if self.is_full or change in self.changes:
            return self
        return replace(self, changes=(*self.changes, change))

    def without(self, place: int) -> "ColumnSet":
        """Take a column away; the last one stays."""
        if len(self.changes) == 1:
            return self
        changes = (*self.changes[:place], *self.changes[place + 1 :])
        base = self.base - 1 if place < self.base else self.base
        return ColumnSet(changes, min(base, len(changes) - 1) if place != self.base else 0)

    def moved(self, old: int, new: int) -> "ColumnSet":
        """Put a column in another place; the base stays the same column."""
        new = min(max(new, 0), len(self.changes) - 1)
        order = list(range(len(self.changes)))
        order.insert(new, order.pop(old))
        return ColumnSet(tuple(self.changes[place] for place in order), order.index(self.base))

    def pinned(self, place: int) -> "ColumnSet":
        """Hold the others against this column."""
        return replace(self, base=place)

    @staticmethod
    def of(changes: Sequence[Change], base: Change) -> "ColumnSet":
        """Return these columns, at most eight, held against the base where it is one of them."""
        chosen = tuple(changes[:MOST])
        return ColumnSet(chosen, chosen.index(base) if base in chosen else 0)
