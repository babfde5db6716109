"""The catalogue of base metals: properties, risks and what they are called."""

import re
from dataclasses import dataclass, replace
from typing import ClassVar

from welds.errors import InputError, nearest
from welds.language import tr
from welds.reference.basis import Basis, GradedCells
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class Metal(GradedCells):
    """One base metal; properties near 20 degC, in the units their names end in.

    `temper` is the one asked for, or the usual one. `heat_softens` says what the arc takes away beside the
    bead: nothing, cold work or age hardening. `refusal` is set where an arc weld must not be advised.
    """

    TABLE: ClassVar[str] = "metals"

    id: str
    alloy: str
    temper: str
    tempers: tuple[str, ...]
    name: str
    family: str
    group: str
    gauge_system: str | None
    density_kg_m3: float
    conductivity_w_mk: float
    specific_heat_j_kgk: float
    solidus_c: float
    liquidus_c: float
    latent_heat_j_kg: float
    expansion_per_k: float
    magnesium_percent: float | None
    silicon_percent: float | None
    carbon_percent: float | None
    carbon_equivalent: float | None
    heat_softens: str
    weldability: str
    risks: tuple[str, ...]
    refusal: str
    advice: str
    aliases: tuple[str, ...]
    source_id: str
    basis: Basis
    cell_bases: tuple[tuple[str, Basis], ...]
    note: str

    @property
    def is_weldable(self) -> bool:
        """False where the answer is a refusal."""
        return self.weldability != "X"


_PREFIX = re.compile(r"^(en-?aw-?|alloy-?|aisi-?|aa-?|sae-?|type-?)(?=\d)")
_JOINED_TEMPER = re.compile(r"^(\d{4})([hotf]\d{0,4})$")


def find_metal(tables: Tables, text: str) -> Metal:
    """Return the metal named by a catalogue id, an alias, or an alloy with a temper ("6061-T6")."""
    by_name = tables.derived(_by_name)
    asked = re.sub(r"[\s_-]+", "-", text.strip().lower())
    asked = _JOINED_TEMPER.sub(r"\1-\2", _PREFIX.sub("", asked))
    if asked in by_name:
        return by_name[asked]
    base, _, temper = asked.rpartition("-")
    if base in by_name and by_name[base].tempers:
        known = tables.derived(_tempered)
        if asked not in known:
            known[asked] = _in_temper(by_name[base], temper, text)
        return known[asked]
    ids = [metal.id for metal in tables.records(Metal)]
    close = nearest(asked, by_name)
    raise InputError("metal", text, ", ".join(ids), by_name[close.lower()].id if close else None)


def _by_name(tables: Tables) -> dict[str, Metal]:
    metals = tables.records(Metal)
    return {name.lower(): metal for metal in metals for name in (metal.id, *metal.aliases)}


def _tempered(_tables: Tables) -> dict[str, Metal]:
    """Return the keeper of alloys in a temper of their own, filled as they are asked for."""
    return {}


def _in_temper(metal: Metal, temper: str, text: str) -> Metal:
    by_lower = {known.lower(): known for known in metal.tempers}
    if temper not in by_lower:
        allowed = tr("{alloy} in temper {tempers}", alloy=metal.alloy, tempers=", ".join(metal.tempers))
        close = nearest(temper, metal.tempers)
        raise InputError("metal", text, allowed, f"{metal.alloy}-{close or metal.temper}")
    softens = "none" if temper == "o" else metal.heat_softens
    return replace(metal, temper=by_lower[temper], heat_softens=softens)
