"""Which settings an entry may hold, and which values: the same names and units as the card."""

import json
import math
from collections.abc import Mapping
from dataclasses import dataclass

from welds.errors import InputError, nearest
from welds.language import tr
from welds.logbook.entry import Value
from welds.logbook.texts import read_text
from welds.reference.paths import data_root
from welds.reference.tables import Tables

LARGEST: Mapping[str | None, float] = {
    "A": 2000.0,
    "V": 200.0,
    "Hz": 5000.0,
    "percent": 100.0,
    "mm": 1000.0,
    "L/min": 200.0,
    "s": 3600.0,
    "m/min": 100.0,
    "mm/s": 500.0,
    "kJ/mm": 100.0,
    "degC": 1500.0,
    None: 1e5,
}
"""Beyond what any bench sets by hand, so a slip: 9400 for 94. By judgement."""

MOST_CHARACTERS = 200


@dataclass(frozen=True, slots=True)
class Kind:
    """What a setting may be: a number where it has a unit, one of `choices` where there are some."""

    unit: str | None
    choices: tuple[str, ...]


def build_kinds(tables: Tables) -> Mapping[str, Kind]:
    """Return the kinds by name, read from the card's schema."""
    schema = json.loads((data_root() / "schema" / "card.json").read_text(encoding="utf-8"))
    return {
        name: Kind(
            rule.get("properties", {}).get("unit", {}).get("const"),
            tuple(rule.get("properties", {}).get("value", {}).get("enum", ())),
        )
        for name, rule in schema["properties"]["settings"]["properties"].items()
    }


def read_settings(given: object, tables: Tables) -> dict[str, Value]:
    """Return the settings by name; a whole setting of a card stands for its start figure."""
    if not isinstance(given, Mapping):
        raise InputError("settings", given, tr('names and values, as in {"current": 112, "polarity": "AC"}'))
    kinds = tables.derived(build_kinds)
    found: dict[str, Value] = {}
    for name, value in given.items():
        if name not in kinds:
            raise InputError("setting", name, ", ".join(kinds), nearest(str(name), kinds))
        if isinstance(value, Mapping):
            value = value.get("start", value.get("value"))
        if value is None or value == "":
            continue
        found[name] = _value(name, value, kinds[name])
    return found


def whole(number: float) -> float:
    """Return 112 for 112.0, so that a number has one spelling."""
    return int(number) if float(number).is_integer() else float(number)


def _value(name: str, value: object, kind: Kind) -> Value:
    field = f"settings.{name}"
    if isinstance(value, bool):
        if kind.unit is not None or kind.choices:
            raise InputError(field, value, _allowed(kind))
        return value
    if isinstance(value, str) and kind.unit is not None:
        try:
            value = float(value.strip().replace(",", "."))
        except ValueError as error:
            raise InputError(field, value, _allowed(kind)) from error
    if isinstance(value, int | float):
        if kind.choices or not math.isfinite(value) or not 0.0 <= value <= LARGEST[kind.unit]:
            raise InputError(field, value, _allowed(kind))
        return whole(value)
    text = read_text(value, field, MOST_CHARACTERS)
    if kind.choices:
        match = next((each for each in kind.choices if each.lower() == text.lower()), None)
        if match is None:
            raise InputError(field, text, _allowed(kind), nearest(text, kind.choices))
        return match
    return text


def _allowed(kind: Kind) -> str:
    if kind.choices:
        return ", ".join(kind.choices)
    largest = LARGEST[kind.unit]
    if kind.unit:
        return tr("a number from 0 to {largest:g}, in {unit}", largest=largest, unit=kind.unit)
    return tr("a number from 0 to {largest:g}", largest=largest)
