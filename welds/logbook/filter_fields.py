"""What is typed and chosen to find welds, as a filter of the log; and back, for a filter that was kept."""

from collections.abc import Mapping
from typing import Any

from welds.errors import InputError
from welds.language import tr
from welds.logbook.filters import Filter
from welds.quantities.length import parse_length
from welds.quantities.typed import read_typed
from welds.quantities.units import Units
from welds.reference.positions import find_position
from welds.reference.tables import Tables

_AS_THEY_ARE = (
    *("text", "process", "family", "metal", "joint", "outcome", "fault"),
    *("machine", "welder", "material_lot", "since", "until"),
)
_LENGTHS = ("thickness_min", "thickness_max")
_CURRENTS = ("current_min", "current_max")
FIELDS = (*_AS_THEY_ARE, "position", *_LENGTHS, *_CURRENTS, "photos")


def filter_of(fields: Mapping[str, str], tables: Tables, units: Units | None) -> Filter:
    """Return the filter, or raise InputError for the first field that cannot be used."""
    given = {name: value.strip() for name, value in fields.items() if value.strip()}
    photos = given.get("photos")
    if photos not in (None, "yes", "no"):
        raise InputError("photos", photos, "yes, no")
    words: dict[str, Any] = {name: given.get(name, "") for name in _AS_THEY_ARE}
    lengths = {f"{name}_mm": _length(given.get(name), name, units) for name in _LENGTHS}
    currents = {f"{name}_a": _current(given.get(name), name) for name in _CURRENTS}
    return Filter(
        **{**words, **lengths, **currents},
        position=find_position(tables, given["position"]) if "position" in given else "",
        has_photos=None if photos is None else photos == "yes",
    )


def fields_of(wanted: Filter) -> dict[str, str]:
    """Return the fields that make this filter."""
    fields = {name: getattr(wanted, name) for name in (*_AS_THEY_ARE, "position")}
    for name in _LENGTHS:
        mm = getattr(wanted, f"{name}_mm")
        fields[name] = "" if mm is None else f"{mm:g} mm"
    for name in _CURRENTS:
        amps = getattr(wanted, f"{name}_a")
        fields[name] = "" if amps is None else f"{amps:g}"
    fields["photos"] = {None: "", True: "yes", False: "no"}[wanted.has_photos]
    return fields


def _length(text: str | None, name: str, units: Units | None) -> float | None:
    return None if text is None else parse_length(text, field=name, default=units).mm


def _current(text: str | None, name: str) -> float | None:
    if text is None:
        return None
    allowed = tr("amperes, as in 80")
    typed = read_typed(text, name, allowed)
    if typed.value < 0.0 or typed.unit.upper() not in ("", "A"):
        raise InputError(name, text, allowed)
    return typed.value
