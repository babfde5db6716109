"""Faults by their looks, causes and remedies, and what each would change on a card."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from welds.advice.adjustment import Adjustment, adjustment_of
from welds.advice.card import Card
from welds.errors import WeldsError
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.reference.faults import Fault, Imperfection, fault_names, remedies
from welds.reference.metals import find_metal
from welds.reference.names import name_of
from welds.reference.tables import Tables
from welds.report.layout import setting_line

ARROW = "\u2192"
After = Callable[[Adjustment], Card]
"""Gives the card after one more change, or raises what the advice raises."""


@dataclass(frozen=True, slots=True)
class FaultLook:
    """One fault to pick: its plain name, what it looks like, and what the standard calls it."""

    name: str
    words: str
    seen_as: str
    standard: str


@dataclass(frozen=True, slots=True)
class RemedyLine:
    """One cause with what answers it; `change` says what the card would do, empty where a person must."""

    cause: str
    remedy: str
    basis: Basis
    source: str
    change: str = ""
    adjustment: Adjustment | None = None


def looks_of(tables: Tables, process: str, family: str) -> tuple[FaultLook, ...]:
    """Return the faults that a process and a metal can have, in the table's order."""
    standard = {each.number: each.name for each in tables.records(Imperfection)}
    found = []
    for name in fault_names(tables):
        rows = remedies(tables, name, process, family)
        if rows:
            numbers = [f"{number} {standard[number]}" for number in rows[0].iso_6520]
            words = name_of(name)
            meant = f"ISO 6520-1: {', '.join(numbers)}" if numbers else ""
            found.append(FaultLook(name, words[0].upper() + words[1:], rows[0].seen_as, meant))
    return tuple(found)


def remedy_lines(
    tables: Tables, fault: str, card: Card, after: After, units: Units
) -> tuple[RemedyLine, ...]:
    """Return every cause of a fault: first those that the card can answer by itself."""
    family = find_metal(tables, card.request.metal).family
    rows = remedies(tables, fault, card.request.process.value, family)
    lines = [_line(tables, row, card, after, units) for row in rows]
    return tuple(sorted(lines, key=lambda line: line.adjustment is None))


def fault_text(look: FaultLook, lines: tuple[RemedyLine, ...]) -> str:
    """Return a fault with its remedies as plain text."""
    return "\n".join(_text_lines(look, lines))


def looks_text(looks: tuple[FaultLook, ...]) -> str:
    """Return the list of faults as plain text."""
    width = max(len(look.name) for look in looks) + 2
    return "\n".join(f"{look.name:<{width}}{look.seen_as}" for look in looks)


def fault_json(look: FaultLook, lines: tuple[RemedyLine, ...]) -> dict[str, object]:
    """Return a fault with its remedies as JSON data."""
    return {
        "fault": look.name,
        "seen_as": look.seen_as,
        "standard": look.standard,
        "remedies": [
            {
                "cause": line.cause,
                "remedy": line.remedy,
                "basis": line.basis.value,
                "source": line.source,
                "setting": line.adjustment.setting if line.adjustment else None,
                "direction": line.adjustment.direction if line.adjustment else None,
                "change": line.change,
            }
            for line in lines
        ],
    }


def _text_lines(look: FaultLook, lines: tuple[RemedyLine, ...]) -> Iterator[str]:
    yield f"{look.words}: {look.seen_as}"
    if look.standard:
        yield look.standard
    for line in lines:
        yield ""
        yield line.cause
        yield f"  {line.remedy}" + (f"  [{line.change}]" if line.change else "")
        yield f"  {line.basis.word}: {line.source}"


def _line(tables: Tables, row: Fault, card: Card, after: After, units: Units) -> RemedyLine:
    source = tables.sources.get(row.source_id)
    change, adjustment = _change(row, card, after, units)
    return RemedyLine(
        row.cause + (f" ({row.case})" if row.case else ""),
        row.remedy,
        row.basis,
        source.citation if source is not None else row.source_id,
        change,
        adjustment,
    )


def _change(row: Fault, card: Card, after: After, units: Units) -> tuple[str, Adjustment | None]:
    """Return what the card would show instead, where it can move at all."""
    adjustment = adjustment_of(row)
    if adjustment is None or adjustment.setting not in card.settings:
        return "", None
    try:
        moved = after(adjustment)
    except WeldsError:
        return "", None
    old, new = (
        setting_line(each.settings[adjustment.setting], card.request.process, units) for each in (card, moved)
    )
    if old.start_text == new.start_text:
        return "", None
    return f"{new.label}: {old.start_text} {ARROW} {new.start_text}", adjustment
