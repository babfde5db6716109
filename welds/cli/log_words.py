"""Entries in words: a line in a list, a page of one."""

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from welds.quantities.display import show
from welds.quantities.units import Units
from welds.report.wording import JOINT_NAMES, label

if TYPE_CHECKING:
    from welds.logbook.entry import Entry
    from welds.logbook.logbook import Logbook
    from welds.logbook.settings import Kind

OUTCOME_WORDS = {"worked-well": "worked well", "worked": "worked", "failed": "failed"}


def entry_line(entry: "Entry", units: Units) -> str:
    """Return the entry in one line."""
    current = entry.figure("current")
    parts = [
        f"{entry.number:>6}" if entry.number is not None else "      ",
        entry.made_at[:10],
        entry.process.value.upper(),
        entry.metal,
        _length(entry.thickness_mm, units),
        JOINT_NAMES[entry.joint],
        entry.position,
        f"{current:g} A" if current is not None else "-",
        OUTCOME_WORDS[entry.outcome.value],
    ]
    if entry.faults:
        parts.append(f"({', '.join(entry.faults)})")
    return "  ".join(parts)


def entry_lines(entry: "Entry", units: Units, kinds: "dict[str, Kind]") -> Iterator[str]:
    """Yield the whole entry."""
    yield entry_line(entry, units).strip()
    yield f"  uid {entry.uid}, version {entry.version}"
    if entry.other_metal or entry.other_thickness_mm:
        other = _length(entry.other_thickness_mm or entry.thickness_mm, units)
        yield f"  to {entry.other_metal or entry.metal}, {other}"
    for name, value in entry.settings.items():
        unit = kinds[name].unit if name in kinds else None
        figure = _word(value)
        yield f"  {label(name)}: {figure}" + (f" {unit}" if unit and unit != "1" else "")
    for name, text in (
        ("machine", entry.machine),
        ("welder", entry.welder),
        ("lot", entry.material_lot),
        ("notes", entry.notes),
    ):
        if text:
            yield f"  {name}: {text}"
    for photo in entry.photos:
        yield f"  picture: {photo.name}"


def listed_json(log: "Logbook", entry: "Entry") -> dict[str, Any]:
    """Return the entry as `welds log add` takes it, with its number and where its pictures are."""
    from welds.logbook.fields import entry_json

    found = entry_json(entry) | {"number": entry.number}
    for photo, listed in zip(entry.photos, found.get("photos", ()), strict=False):
        file = log.photo_file(photo)
        if file is not None:
            listed["file"] = str(file)
    return found


def _length(mm: float, units: Units) -> str:
    shown = show(mm, "mm", "thickness", units)
    return f"{shown.text} {shown.unit_text}".strip()


def _word(value: str | float | bool) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    return value if isinstance(value, str) else f"{value:g}"
