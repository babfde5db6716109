"""Entries as rows of the database and back."""

import hashlib
import json
from collections.abc import Iterable, Mapping
from math import log
from typing import Any

from welds.advice.evidence import Outcome
from welds.advice.request import Hand, Joint, Process
from welds.logbook.entry import Entry, Photo
from welds.logbook.fields import entry_json
from welds.logbook.settings import whole
from welds.logbook.times import sortable


def kind_of(process: str, family: str, joint: str, position: str) -> str:
    """Return process, family, joint and position in one word, by which like welds are found."""
    return f"{process}|{family}|{joint}|{position}"


def fingerprint(entry: Entry) -> str:
    """Return a hash of everything a person put into the entry."""
    content = entry_json(entry)
    del content["uid"]
    text = json.dumps(content, sort_keys=True, separators=(",", ":"))
    return hashlib.sha256(text.encode()).hexdigest()[:40]


def row_of(entry: Entry) -> dict[str, Any]:
    """Return the columns of an entry, but for its number."""
    said = (
        *(entry.metal, entry.other_metal or "", entry.process, entry.family, entry.joint, entry.position),
        *(entry.outcome, *entry.faults, entry.machine, entry.welder, entry.material_lot),
        *(str(value) for value in entry.settings.values() if isinstance(value, str)),
        entry.notes,
    )
    return {
        "uid": entry.uid,
        "version": entry.version,
        "process": entry.process.value,
        "metal": entry.metal,
        "family": entry.family,
        "thickness_mm": float(entry.thickness_mm),
        "joint": entry.joint.value,
        "position": entry.position,
        "other_metal": entry.other_metal,
        "other_thickness_mm": entry.other_thickness_mm,
        "gap_mm": entry.gap_mm,
        "hand": entry.hand.value if entry.hand else None,
        "settings": json.dumps(dict(entry.settings), separators=(",", ":")),
        "outcome": entry.outcome.value,
        "faults": json.dumps(list(entry.faults), separators=(",", ":")),
        "notes": entry.notes,
        "made_at": entry.made_at,
        "machine": entry.machine,
        "welder": entry.welder,
        "material_lot": entry.material_lot,
        "made_on": sortable(entry.made_at),
        "current_a": entry.figure("current"),
        "kind": kind_of(entry.process.value, entry.family, entry.joint.value, entry.position),
        "log_thickness": log(entry.thickness_mm),
        "search": " ".join(said).casefold(),
        "fingerprint": fingerprint(entry),
    }


def entry_of(row: Mapping[str, Any], photos: Iterable[Photo] = ()) -> Entry:
    """Return the entry that a row holds."""
    return Entry(
        uid=row["uid"],
        process=Process(row["process"]),
        metal=row["metal"],
        family=row["family"],
        thickness_mm=whole(row["thickness_mm"]),
        joint=Joint(row["joint"]),
        outcome=Outcome(row["outcome"]),
        made_at=row["made_at"],
        settings=json.loads(row["settings"]),
        position=row["position"],
        other_metal=row["other_metal"],
        other_thickness_mm=_whole_or_none(row["other_thickness_mm"]),
        gap_mm=_whole_or_none(row["gap_mm"]),
        hand=Hand(row["hand"]) if row["hand"] else None,
        faults=tuple(json.loads(row["faults"])),
        notes=row["notes"],
        machine=row["machine"],
        welder=row["welder"],
        material_lot=row["material_lot"],
        photos=tuple(photos),
        number=row["number"],
        version=row["version"],
    )


def _whole_or_none(number: float | None) -> float | None:
    return None if number is None else whole(number)
