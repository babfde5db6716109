"""What a person looks for in the log, as a value that can be kept under a name."""

from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any

from welds.errors import InputError, nearest
from welds.logbook.times import read_time


@dataclass(frozen=True, slots=True)
class Filter:
    """Every field that is set has to fit; `text` is words, all of which have to occur somewhere.

    `machine`, `welder`, `material_lot` and `metal` fit when they are contained, whatever the case.
    """

    text: str = ""
    process: str = ""
    family: str = ""
    metal: str = ""
    joint: str = ""
    position: str = ""
    outcome: str = ""
    fault: str = ""
    machine: str = ""
    welder: str = ""
    material_lot: str = ""
    since: str = ""
    until: str = ""
    thickness_min_mm: float | None = None
    thickness_max_mm: float | None = None
    current_min_a: float | None = None
    current_max_a: float | None = None
    has_photos: bool | None = None

    def __post_init__(self) -> None:
        for name in ("since", "until"):
            if getattr(self, name):
                read_time(getattr(self, name), name)

    def as_json(self) -> dict[str, Any]:
        """Return the fields that are set."""
        values = {each.name: getattr(self, each.name) for each in fields(self)}
        return {name: value for name, value in values.items() if value not in ("", None)}


def filter_from_json(given: Mapping[str, Any]) -> Filter:
    """Return the filter that `as_json` gave, or raise InputError for a field there is none of."""
    names = [each.name for each in fields(Filter)]
    for name in given:
        if name not in names:
            raise InputError("filter", name, ", ".join(names), nearest(name, names))
    return Filter(**given)
