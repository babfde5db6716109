"""Every metal by every joint and process over sheet as sold: answered from what, refused with which words."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import product

from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.errors import InputError, NotCoveredError
from welds.reference.basis import Basis
from welds.reference.metals import Metal
from welds.reference.tables import Tables

SHEETS_MM = (
    *(0.3, 0.5, 0.6, 0.8, 1.0, 1.2, 1.5, 1.6, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0),
    25.0,
)
_MILLIMETRES = re.compile(r"([\d.]+) mm\b")


@dataclass(frozen=True)
class Asked:
    """One request of the map: the grade of each setting of its card, or the refusal."""

    request: Request
    grades: Mapping[str, Basis]
    refusal: NotCoveredError | InputError | None = None

    @property
    def reason(self) -> str:
        """The words of the refusal that do not depend on the thickness asked."""
        if isinstance(self.refusal, InputError):
            return f"{self.refusal.field}: {self.refusal.given} does not go together"
        return self.refusal.reason if self.refusal else ""


def coverage_map(tables: Tables) -> tuple[Asked, ...]:
    """Ask for the whole map; an error that is no refusal goes through. `tables.derived(coverage_map)`."""
    metals = [metal.id for metal in tables.records(Metal)]
    cases = product(metals, Process, Joint, SHEETS_MM)
    return tuple(ask(Request(process, metal, mm, joint), tables) for metal, process, joint, mm in cases)


def ask(request: Request, tables: Tables) -> Asked:
    """Return how one request is answered."""
    try:
        card = advise(request, tables)
    except (NotCoveredError, InputError) as refusal:
        return Asked(request, {}, refusal)
    return Asked(request, {name: setting.basis for name, setting in card.settings.items()})


def named_by(asked: Asked, tables: Tables) -> Iterator[Request]:
    """Yield the requests that a refusal points to; where an alloy is never welded, those in other alloys."""
    refusal = asked.refusal
    assert refusal is not None
    if refusal.nearest is None:
        metals = {metal.id for metal in tables.records(Metal)} - {asked.request.metal}
        for word in re.findall(r"\w[\w-]*", asked.reason):
            if word in metals:
                yield replace(asked.request, metal=word)
        return
    for hint in refusal.nearest.split(", or "):
        changes: dict[str, object] = {}
        if thickness := _MILLIMETRES.match(hint):
            changes["thickness_mm"] = float(thickness[1])
        for name, kind in (("process", Process), ("joint", Joint)):
            for each in kind:
                if re.search(rf"\b{each}\b", hint, re.IGNORECASE):
                    changes[name] = each
        yield replace(asked.request, **changes)  # type: ignore[arg-type]


def ends(asked: Asked, tables: Tables, steps: int) -> bool:
    """Say whether everything a refusal names leads to an answer within so many steps."""
    if asked.refusal is None:
        return True
    named = list(named_by(asked, tables)) if steps else []
    return bool(named) and all(ends(ask(each, tables), tables, steps - 1) for each in named)
