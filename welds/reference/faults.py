"""Faults of a bead: what they look like, where they come from, and which setting answers them."""

from dataclasses import dataclass
from typing import ClassVar

from welds.errors import InputError, nearest
from welds.language import either, tr
from welds.reference.basis import Basis
from welds.reference.names import name_of
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class Fault:
    """One change that answers one cause of one fault; no `setting` where hand or work change instead."""

    TABLE: ClassVar[str] = "faults"

    row_id: str
    fault: str
    iso_6520: tuple[str, ...]
    process: str
    family: str
    case: str
    seen_as: str
    cause: str
    remedy: str
    setting: str | None
    direction: str
    source_id: str
    place: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class Imperfection:
    """An imperfection with its number in ISO 6520-1."""

    TABLE: ClassVar[str] = "imperfections"

    number: str
    name: str
    group: str
    source_id: str
    basis: Basis


def fault_names(tables: Tables) -> tuple[str, ...]:
    """Return the plain names, in the table's order."""
    return tuple(dict.fromkeys(row.fault for row in tables.records(Fault)))


def find_fault(tables: Tables, text: str) -> str:
    """Return the plain name of a fault, or the number of an imperfection, as a person wrote it.

    Raises InputError with the nearest name.
    """
    asked = "-".join(text.lower().replace("-", " ").replace("_", " ").split())
    names = fault_names(tables)
    numbers = {each.number for each in tables.records(Imperfection)}
    if asked in names or asked in numbers:
        return asked
    close = nearest(asked, names)
    raise InputError("fault", text, tr("{names}, or a number of ISO 6520-1", names=", ".join(names)), close)


def remedies(tables: Tables, fault: str, process: str, family: str) -> tuple[Fault, ...]:
    """Return the rows for a fault by plain name or ISO 6520-1 number, in the table's order."""
    return tuple(
        row
        for row in tables.records(Fault)
        if (row.fault == fault or fault in row.iso_6520)
        and row.process in (process, "both")
        and row.family in (family, "any")
    )


def imperfection_words(tables: Tables, fault: str) -> str:
    """Return a fault, by plain name or by number, with its name and numbers in ISO 6520-1."""
    by_number = {each.number: each.name for each in tables.records(Imperfection)}
    if fault in by_number:
        return f"{by_number[fault]} ({fault})"
    numbers = next((row.iso_6520 for row in tables.records(Fault) if row.fault == fault), ())
    words = name_of(fault)
    return f"{words} ({either(numbers)})" if numbers else words
