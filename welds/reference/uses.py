"""What rests on a document: rows of the tables and cautions."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass

from welds.reference.basis import Basis
from welds.reference.hazards import load_hazards
from welds.reference.tables import Tables

CAUTIONS = "cautions"


@dataclass(frozen=True, slots=True)
class Use:
    """How many rows of a table, or how many cautions, name a document as their source with one grade."""

    where: str
    basis: Basis
    count: int


def uses_of_sources(tables: Tables) -> Mapping[str, tuple[Use, ...]]:
    """Return what rests on each document, best grade first; `tables.derived(uses_of_sources)` counts once."""
    counts: dict[str, Counter[tuple[str, Basis]]] = {source: Counter() for source in tables.sources}
    for name in tables.names:
        for row in tables.table(name).rows:
            counts[str(row["source_id"])][name, Basis(str(row["basis"]))] += 1
    for hazard in tables.derived(load_hazards):
        counts[hazard.source][CAUTIONS, hazard.basis] += 1
    return {
        source: tuple(
            Use(where, basis, count)
            for (where, basis), count in sorted(found.items(), key=lambda item: (item[0][1].rank, item[0][0]))
        )
        for source, found in counts.items()
    }
