"""Entries in words: a line in a list, a page of one."""

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from welds.language import figure, tr
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.reference.names import id_or_name
from welds.report.wording import joint_name, label, outcome_words, process_name, yes_or_no

if TYPE_CHECKING:
    from welds.logbook.entry import Entry
    from welds.logbook.logbook import Logbook
    from welds.logbook.settings import Kind


def entry_line(entry: "Entry", units: Units) -> str:
    """Return the entry in one line."""
    current = entry.figure("current")
    parts = [
        f"{entry.number:>6}" if entry.number is not None else "      ",
        entry.made_at[:10],
        process_name(entry.process),
        entry.metal,
        _length(entry.thickness_mm, units),
        joint_name(entry.joint),
        entry.position,
        figure(f"{current:g} A") if current is not None else "-",
        outcome_words(entry.outcome),
    ]
    if entry.faults:
        parts.append(f"({', '.join(map(id_or_name, entry.faults))})")
    return "  ".join(parts)


def entry_lines(entry: "Entry", units: Units, kinds: "dict[str, Kind]") -> Iterator[str]:
    """Yield the whole entry."""
    yield entry_line(entry, units).strip()
    yield "  " + tr("uid {uid}, version {version}", uid=entry.uid, version=entry.version)
    if entry.other_metal or entry.other_thickness_mm:
        other = _length(entry.other_thickness_mm or entry.thickness_mm, units)
        yield "  " + tr("to {metal}, {thickness}", metal=entry.other_metal or entry.metal, thickness=other)
    for name, value in entry.settings.items():
        unit = kinds[name].unit if name in kinds else None
        said = _word(value)
        yield f"  {label(name)}: {said}" + (f" {unit}" if unit and unit != "1" else "")
    for name, text in (
        (tr("machine"), entry.machine),
        (tr("welder"), entry.welder),
        (tr("lot"), entry.material_lot),
        (tr("notes"), entry.notes),
    ):
        if text:
            yield f"  {name}: {text}"
    for photo in entry.photos:
        yield "  " + tr("picture: {name}", name=photo.name)


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
        return yes_or_no(value)
    return value if isinstance(value, str) else figure(f"{value:g}")
