"""What to do to the metal before, between and after welding."""

from collections.abc import Collection
from dataclasses import dataclass
from typing import ClassVar

from welds.reference.basis import Basis
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class CleaningStep:
    """One thing to do, in our words; `case` narrows it to a coating or condition, `kind` says when."""

    TABLE: ClassVar[str] = "cleaning"

    row_id: str
    family: str
    case: str | None
    process: str | None
    kind: str
    order: int | None
    step: str
    why: str
    source_id: str
    place: str
    basis: Basis
    note: str


def cleaning_steps(
    tables: Tables, family: str, process: str, cases: Collection[str] = (), kind: str = "step"
) -> tuple[CleaningStep, ...]:
    """Return the steps of one kind in working order; at the same place in the order the case comes first.

    `cases` are those of the table that hold for the part: paint, toxic-coating, zinc, anodised, cast.
    """
    suited = (
        step
        for step in tables.records(CleaningStep)
        if step.kind == kind
        and step.family in (family, "any")
        and step.process in (None, process)
        and (step.case is None or step.case in cases)
    )
    return tuple(sorted(suited, key=lambda step: (step.order or 0, step.case is None)))
