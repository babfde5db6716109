"""Which filler goes with which pair of base metals, and what each filler is."""

from dataclasses import dataclass
from typing import ClassVar

from welds.errors import InputError, NotCoveredError, nearest
from welds.language import tr
from welds.reference.basis import Basis
from welds.reference.metals import Metal
from welds.reference.names import id_or_name
from welds.reference.tables import Tables

GENERAL = "general"


@dataclass(frozen=True, slots=True)
class Filler:
    """One filler metal; `max_service_c` is set where it limits the finished weld."""

    TABLE: ClassVar[str] = "fillers"

    id: str
    number: str
    process: str
    iso: str
    family: str
    density_kg_m3: float
    magnesium_percent: float | None
    silicon_percent: float | None
    anodised_colour: str
    max_service_c: float | None
    use: str
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class FillerPair:
    """One row of the choice: two sides, each an alloy, a group or a family; no `first` means refused."""

    TABLE: ClassVar[str] = "filler_pairs"

    row_id: str
    base_a: str
    base_b: str
    goal: str
    first: str
    second: tuple[str, ...]
    avoid: tuple[str, ...]
    why: str
    source_id: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class FillerChoice:
    """The filler for a pair and a goal; `note` says where the answer is not quite the question's."""

    first: str
    seconds: tuple[str, ...]
    avoid: tuple[str, ...]
    why: str
    rows: tuple[str, ...]
    sources: tuple[str, ...]
    basis: Basis
    note: str = ""


def filler_choice(tables: Tables, metal_a: Metal, metal_b: Metal, goal: str | None = None) -> FillerChoice:
    """Return the filler of the most specific row; without a row for the goal, the general one and a note.

    Raises NotCoveredError for a pair that cannot be fused, or cannot serve the goal, with the reason.
    """
    pair = (
        metal_a.id
        if metal_a.id == metal_b.id
        else tr("{first} to {other}", first=metal_a.id, other=metal_b.id)
    )
    for metal in (metal_a, metal_b):
        if not metal.is_weldable:
            raise NotCoveredError(pair, metal.refusal)
    wanted = goal or GENERAL
    general = _closest(tables, metal_a, metal_b, GENERAL)
    if general is None:
        raise NotCoveredError(pair, tr("the tables hold no filler for this pair"))
    if not general.first:
        raise NotCoveredError(pair, general.why)
    row = _closest(tables, metal_a, metal_b, wanted)
    if row is not None and not row.first:
        raise NotCoveredError(
            tr("{pair} for {goal}", pair=pair, goal=id_or_name(wanted)),
            row.why,
            tr("the same joint without this goal"),
        )
    chosen = row or general
    note = (
        chosen.note
        if row
        else tr("no row answers {goal} for this pair; this is the general choice", goal=id_or_name(wanted))
    )
    return FillerChoice(
        first=chosen.first,
        seconds=chosen.second,
        avoid=chosen.avoid,
        why=chosen.why,
        rows=(chosen.row_id,),
        sources=(chosen.source_id,),
        basis=chosen.basis,
        note=note,
    )


def find_filler(tables: Tables, text: str) -> Filler:
    """Return the filler named by class or bare number ("ER5356", "5356", "R5356", "70s-6")."""
    fillers = tables.records(Filler)
    asked = text.strip().upper()
    for filler in fillers:
        if asked in (filler.id.upper(), filler.number.upper(), f"R{filler.number}".upper()):
            return filler
    ids = [filler.id for filler in fillers]
    close = nearest(asked, [*ids, *(filler.number for filler in fillers)])
    raise InputError("filler", text, ", ".join(ids), find_filler(tables, close).id if close else None)


def _closest(tables: Tables, metal_a: Metal, metal_b: Metal, goal: str) -> FillerPair | None:
    """Return the row that names the pair most closely; among equals a refusal wins, then the better grade."""
    index = tables.derived(_rows_by_pair)
    found = [
        (near_a + near_b, not row.first, -row.basis.rank, row)
        for near_a, side_a in _names(metal_a)
        for near_b, side_b in _names(metal_b)
        if (row := index.get((goal, *sorted((side_a, side_b)))))
    ]
    return max(found, key=lambda each: each[:3])[3] if found else None


def _names(metal: Metal) -> tuple[tuple[int, str], ...]:
    """Return what a row may call the metal, with how close each name is."""
    return (3, metal.id), (2, metal.group), (1, metal.family)


def _rows_by_pair(tables: Tables) -> dict[tuple[str, ...], FillerPair]:
    """Index by goal and sides; of two rows for the same, the later (the person's own) counts."""
    return {(row.goal, *sorted((row.base_a, row.base_b))): row for row in tables.records(FillerPair)}
