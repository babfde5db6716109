"""From fields, as options, a form, JSON or CSV give them, to an entry; and back to JSON."""

import uuid
from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from welds.advice.evidence import Outcome
from welds.advice.request import Request
from welds.advice.validate import enum_value, request_from_fields
from welds.errors import NOTHING, InputError, nearest
from welds.language import tr
from welds.logbook.entry import Entry, Photo
from welds.logbook.settings import read_settings, whole
from welds.logbook.texts import read_text
from welds.logbook.times import now, read_time
from welds.logbook.words import read_fault
from welds.quantities.units import Units
from welds.reference.metals import find_metal
from welds.reference.tables import Tables

_OF_REQUEST = (
    *("process", "metal", "thickness", "thickness_mm", "joint", "position"),
    *("other_metal", "other_thickness", "other_thickness_mm", "gap", "gap_mm", "hand"),
)
_TEXTS = {"notes": 20_000, "machine": 200, "welder": 200, "material_lot": 200}
_OWN = ("uid", "settings", "outcome", "faults", "made_at", "photos")
_IGNORED = ("number", "version", "family")
"""What a listed entry carries beyond what can be given."""
FIELDS = (*_OF_REQUEST, *_OWN, *_TEXTS)


@dataclass(frozen=True, slots=True)
class NewPhoto:
    """A picture still to be copied into the log; `name` is what to call it, else the file's own."""

    path: Path
    name: str = ""


@dataclass(frozen=True, slots=True)
class Reading:
    """An entry, and the pictures that have to be copied beside it."""

    entry: Entry
    new_photos: tuple[NewPhoto, ...] = ()


def read_entry(fields: Mapping[str, object], tables: Tables, default_units: Units | None = None) -> Reading:
    """Return the entry that the fields describe, or raise InputError for the first that cannot be used.

    Only process, metal, thickness, joint, settings and outcome are needed.
    """
    given = _given(fields)
    for field in ("settings", "outcome"):
        if field not in given:
            raise InputError(field, NOTHING, tr("settings and outcome (worked-well, worked, failed)"))
    asked = {name: given[name] for name in _OF_REQUEST if name in given}
    request = request_from_fields(asked, tables, default_units)
    kept, new = _photos(given.get("photos", ()))
    has_gap = any(name in given for name in ("gap", "gap_mm"))
    entry = Entry(
        uid=_uid(given.get("uid")),
        process=request.process,
        metal=request.metal,
        family=_family(request, tables),
        thickness_mm=whole(request.thickness_mm),
        joint=request.joint,
        outcome=enum_value(Outcome, given["outcome"], "outcome"),
        made_at=read_time(given["made_at"]) if "made_at" in given else now(),
        settings=read_settings(given["settings"], tables),
        position=request.position,
        other_metal=request.other_metal,
        other_thickness_mm=None if request.other_thickness_mm is None else whole(request.other_thickness_mm),
        gap_mm=whole(request.gap_mm) if has_gap else None,
        hand=request.hand if "hand" in given else None,
        faults=_faults(given.get("faults", ()), tables),
        photos=kept,
        notes=_text(given, "notes"),
        machine=_text(given, "machine"),
        welder=_text(given, "welder"),
        material_lot=_text(given, "material_lot"),
    )
    return Reading(entry, new)


def changed_entry(
    entry: Entry, changes: Mapping[str, object], tables: Tables, default_units: Units | None = None
) -> Reading:
    """Return the entry with some fields given anew; None or an empty value takes a field away.

    Settings are changed one by one: those not named stay.
    """
    fields = entry_json(entry)
    for name, value in changes.items():
        if name == "uid" and value != entry.uid:
            raise InputError("uid", value, tr("unchanged: it names the entry for ever"))
        for twin in (f"{name}_mm", name.removesuffix("_mm")):
            if twin != name:
                fields.pop(twin, None)
        if name == "settings" and isinstance(value, Mapping):
            value = {**entry.settings, **value}
        fields[name] = value
    reading = read_entry(fields, tables, default_units)
    made_at = reading.entry.made_at if fields.get("made_at") else entry.made_at
    return replace(
        reading,
        entry=replace(reading.entry, number=entry.number, version=entry.version, made_at=made_at),
    )


def entry_json(entry: Entry) -> dict[str, Any]:
    """Return the entry as an object that `read_entry` takes; what was not given is left out."""
    always: dict[str, Any] = {
        "uid": entry.uid,
        "process": entry.process.value,
        "metal": entry.metal,
        "thickness_mm": entry.thickness_mm,
        "joint": entry.joint.value,
        "position": entry.position,
        "settings": dict(entry.settings),
        "outcome": entry.outcome.value,
        "made_at": entry.made_at,
    }
    where_given: dict[str, Any] = {
        "other_metal": entry.other_metal,
        "other_thickness_mm": entry.other_thickness_mm,
        "gap_mm": entry.gap_mm,
        "hand": entry.hand.value if entry.hand else None,
        "faults": list(entry.faults),
        "notes": entry.notes,
        "machine": entry.machine,
        "welder": entry.welder,
        "material_lot": entry.material_lot,
        "photos": [{"name": photo.name, "sha256": photo.sha256} for photo in entry.photos],
    }
    return always | {name: value for name, value in where_given.items() if value not in (None, "", [])}


def _given(fields: Mapping[str, object]) -> dict[str, object]:
    given: dict[str, object] = {}
    for name, value in fields.items():
        if name in _IGNORED:
            continue
        if name not in FIELDS:
            raise InputError("field", name, ", ".join(FIELDS), nearest(str(name), FIELDS))
        if value is not None and value not in ("", [], ()):
            given[name] = value
    return given


def _text(given: Mapping[str, object], name: str) -> str:
    return read_text(given.get(name, ""), name, _TEXTS[name])


def _family(request: Request, tables: Tables) -> str:
    metals = [find_metal(tables, name) for name in (request.metal, request.other_metal) if name]
    families = [metal.family for metal in metals]
    return "stainless" if "stainless" in families else families[0]


def _uid(value: object) -> str:
    if value is None:
        return str(uuid.uuid4())
    try:
        return str(uuid.UUID(str(value)))
    except ValueError as error:
        raise InputError("uid", value, tr("a UUID, or nothing for a new entry")) from error


def _faults(value: object, tables: Tables) -> tuple[str, ...]:
    listed = value if isinstance(value, list | tuple) else (value,)
    return tuple(dict.fromkeys(read_fault(tables, each) for each in listed))


def _photos(value: object) -> tuple[tuple[Photo, ...], tuple[NewPhoto, ...]]:
    kept: list[Photo] = []
    new: list[NewPhoto] = []
    for each in value if isinstance(value, list | tuple) else (value,):
        if isinstance(each, Mapping) and isinstance(each.get("sha256"), str):
            sha256 = each["sha256"].lower()
            if len(sha256) != 64 or set(sha256) - set("0123456789abcdef"):
                raise InputError("photos", sha256, tr("the SHA-256 of a picture: 64 hexadecimal digits"))
            name = read_text(each.get("name", ""), "photo name", 255)
            file = each.get("file")
            if isinstance(file, str) and Path(file).is_file():
                new.append(NewPhoto(Path(file), name))
            else:
                kept.append(Photo(name, sha256))
        elif isinstance(each, str | Path):
            new.append(NewPhoto(Path(each)))
        else:
            raise InputError("photos", each, tr('names of picture files, or {"name": ..., "sha256": ...}'))
    return tuple(dict.fromkeys(kept)), tuple(new)
