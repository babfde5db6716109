"""Cautions as data: what can hurt, and which answers of a request bring it up."""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from welds.errors import ReferenceDataError, nearest
from welds.language import tr
from welds.reference.basis import Basis
from welds.reference.cells import one_of, read_grade
from welds.reference.paths import data_root
from welds.reference.strict_yaml import YamlMap, read_yaml
from welds.reference.tables import Tables

HAZARDS_FILE = "hazards.yaml"
ALWAYS = "always"
ATTRIBUTES = (
    "process", "joint", "coatings", "solvent", "part", "place", "family", "group", "gas", "tungsten",
)  # fmt: skip
"""What a case may ask about: answers of the request, and what was found out about metal, gas and tungsten."""

Severity = Literal["stop", "warn", "note"]
_RANK: dict[Severity, int] = {"stop": 0, "warn": 1, "note": 2}
_FIELDS = ("severity", "when", "text", "source", "place", "basis", "note")


@dataclass(frozen=True, slots=True)
class Hazard:
    """One caution: it applies when any case holds, and a case when each attribute has one of its values.

    `text` is English: `tr` says it.
    """

    id: str
    severity: Severity
    text: str
    basis: Basis
    source: str
    place: str
    cases: tuple[Mapping[str, frozenset[str]], ...]
    note: str = ""

    @property
    def is_standing(self) -> bool:
        """True where it applies to every request: its one case asks for nothing."""
        return self.cases == ({},)

    def applies(self, facts: Mapping[str, Collection[str]]) -> bool:
        """Say whether the facts (attribute -> values present) bring this caution up."""
        for case in self.cases:
            for attribute, wanted in case.items():
                if wanted.isdisjoint(facts.get(attribute, ())):
                    break
            else:
                return True
        return False


def matching(hazards: Iterable[Hazard], facts: Mapping[str, Collection[str]]) -> list[Hazard]:
    """Return the hazards that apply: stop, then warn, then note; as in the file inside each."""
    return sorted(
        (hazard for hazard in hazards if hazard.applies(facts)), key=lambda each: _RANK[each.severity]
    )


def load_hazards(tables: Tables) -> tuple[Hazard, ...]:
    """Return the shipped cautions; `tables.derived(load_hazards)` reads them once.

    Raises ReferenceDataError for the first fault.
    """
    faults: list[ReferenceDataError] = []
    path = data_root() / HAZARDS_FILE
    hazards = read_hazards(path, f"data/{HAZARDS_FILE}", tables.sources, faults)
    if faults:
        raise faults[0]
    return hazards


def read_hazards(
    path: Path, shown: str, source_ids: Collection[str], faults: list[ReferenceDataError]
) -> tuple[Hazard, ...]:
    """Return the sound cautions of a file; what is wrong goes to `faults`."""
    try:
        found = read_yaml(path, shown)
    except ReferenceDataError as error:
        faults.append(error)
        return ()
    hazards = []
    for name, entry in found.items():
        try:
            hazards.append(_hazard(name, entry, source_ids))
        except ValueError as error:
            faults.append(ReferenceDataError(shown, f"{name}: {error}", found.line_of[name]))
    return tuple(hazards)


def _hazard(name: str, entry: object, source_ids: Collection[str]) -> Hazard:
    if not isinstance(entry, YamlMap):
        raise ValueError(tr("expected {fields}", fields=", ".join(_FIELDS)))
    for key in entry:
        if key not in _FIELDS:
            raise ValueError(tr("unknown entry {unknown}", unknown=_unknown(key, _FIELDS)))
    texts: dict[str, str] = {}
    for key in ("severity", "text", "source", "place", "basis", "note"):
        value = entry.get(key, "")
        if not isinstance(value, str):
            raise ValueError(tr("{key!r} must be one text", key=key))
        if not value and key != "note":
            raise ValueError(tr("{key!r} is missing or empty", key=key))
        texts[key] = value
    severity = next((known for known in _RANK if known == texts["severity"]), None)
    if severity is None:
        raise ValueError(one_of(texts["severity"], tuple(_RANK)))
    if texts["source"] not in source_ids:
        raise ValueError(tr("source {source_id!r} is not in sources.yaml", source_id=texts["source"]))
    return Hazard(
        id=name,
        severity=severity,
        text=texts["text"],
        basis=read_grade(texts["basis"]),
        source=texts["source"],
        place=texts["place"],
        cases=_cases(entry.get("when")),
        note=texts["note"],
    )


def _cases(when: object) -> tuple[Mapping[str, frozenset[str]], ...]:
    if when == ALWAYS:
        return ({},)
    if not isinstance(when, list) or not when:
        raise ValueError(tr("'when' is {always!r} or a list of cases", always=ALWAYS))
    return tuple(_case(case) for case in when)


def _case(case: object) -> Mapping[str, frozenset[str]]:
    if not isinstance(case, dict) or not case:
        raise ValueError(tr("a case is {attribute: [values]}"))
    for attribute, values in case.items():
        if attribute not in ATTRIBUTES:
            raise ValueError(
                tr("nothing in a request is called {unknown}", unknown=_unknown(attribute, ATTRIBUTES))
            )
        if not isinstance(values, list) or not values or not all(isinstance(value, str) for value in values):
            raise ValueError(tr("{attribute!r} needs a list of words", attribute=attribute))
    return {attribute: frozenset(values) for attribute, values in case.items()}


def _unknown(given: str, allowed: tuple[str, ...]) -> str:
    hint = nearest(given, allowed)
    return tr("{given!r}; allowed: {allowed}", given=given, allowed=", ".join(allowed)) + (
        tr("; nearest: {hint}", hint=hint) if hint else ""
    )
