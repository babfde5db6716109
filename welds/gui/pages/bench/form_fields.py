"""The lines of the machine form: how a value of the bench file stands in a line edit, and the way back."""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from welds.bench.write import flow_text
from welds.errors import ReferenceDataError
from welds.gui.pages.bench.own_units import UNITS_OF, size_words
from welds.quantities.units import Units
from welds.reference.strict_yaml import parse_yaml

Raw = dict[str, object]


@dataclass(frozen=True, slots=True)
class FormField:
    """One line; a dotted name is a field inside another. `kind` is text, list, sizes, duty or yaml."""

    name: str
    kind: str = "text"
    options: tuple[str, ...] = ()


YES_NO = ("yes", "no")
GROUPS: Mapping[str, tuple[FormField, ...]] = {
    "machine": (
        FormField("name"),
        FormField("processes", "list"),
        FormField("kind", options=("inverter", "corrected-inverter", "transformer")),
        FormField("has_pedal", options=YES_NO),
        FormField("has_pulse", options=YES_NO),
        FormField("has_hot_start", options=YES_NO),
    ),
    "current": (
        FormField("current_min_a"),
        FormField("current_max_a"),
        FormField("current_step_a"),
        FormField("current_a", "list"),
        FormField("duty_cycle", "duty"),
        FormField("open_circuit_dc_v"),
        FormField("open_circuit_ac_v"),
    ),
    "ac": (
        FormField("has_ac", options=YES_NO),
        FormField("ac_wave", options=("square", "sine")),
        FormField("ac_frequency_min_hz"),
        FormField("ac_frequency_max_hz"),
        FormField("ac_frequency_step_hz"),
        FormField("ac_frequency_hz", "list"),
        FormField("electrode_negative_min_percent"),
        FormField("electrode_negative_max_percent"),
        FormField("electrode_negative_step_percent"),
        FormField("electrode_negative_percent", "list"),
    ),
    "wire": (
        FormField("wire_feed_min_m_min"),
        FormField("wire_feed_max_m_min"),
        FormField("voltage_min_v"),
        FormField("voltage_max_v"),
        FormField("voltage_v", "list"),
        FormField("wire_diameters", "sizes"),
    ),
    "scales": (
        FormField("scales.current", "yaml"),
        FormField("scales.ac_frequency", "yaml"),
        FormField("scales.electrode_negative", "yaml"),
        FormField("scales.wire_feed", "yaml"),
        FormField("scales.voltage", "yaml"),
    ),
    "torch": (
        FormField("torch.cooling", options=("air", "water")),
        FormField("torch.rated_a"),
        FormField("torch.rated_ac_a"),
        FormField("torch.percent"),
    ),
    "supply": (
        FormField("supply.volts"),
        FormField("supply.phases", options=("1", "3")),
        FormField("supply.breaker_a"),
        FormField("supply.cord_rated_a"),
        FormField("supply.cord_mm2"),
        FormField("supply.cord_length_m"),
        FormField("supply.generator_kva"),
        FormField("supply_volts", "list"),
        FormField("plug"),
        FormField("efficiency"),
        FormField("power_factor"),
    ),
}
FIELDS: Mapping[str, FormField] = {field.name: field for group in GROUPS.values() for field in group}
_LISTS = frozenset({"list", "sizes"})
_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")


def text_of(machine: Mapping[str, object], field: FormField, units: Units = Units.METRIC) -> str:
    """Return what the form's line shows; empty where the file does not state it."""
    text = _text_in_file(machine, field)
    if field.kind == "sizes":
        return ", ".join(size_words(size, "wire_diameter", units) for size in text.split(", "))
    return UNITS_OF[field.name].shown(text, units) if field.name in UNITS_OF else text


def _text_in_file(machine: Mapping[str, object], field: FormField) -> str:
    value: object = machine
    for part in field.name.split("."):
        value = value.get(part, "") if isinstance(value, Mapping) else ""
    if field.kind == "duty" and isinstance(value, list):
        return ", ".join(f"{row['current_a']} A at {row['percent']} %" for row in value if _is_row(row))
    if field.kind in _LISTS and isinstance(value, list):
        return ", ".join(str(entry) for entry in value)
    return value if isinstance(value, str) else flow_text(value)


def put_text(machine: Raw, field: FormField, text: str, units: Units = Units.METRIC) -> None:
    """Put a line of the form into the machine; an empty one takes the field away."""
    if field.name in UNITS_OF:
        text = UNITS_OF[field.name].kept(text, units)
    *outer, last = field.name.split(".")
    section = machine
    for part in outer:
        inner = section.setdefault(part, {})
        if not isinstance(inner, dict):
            inner = section[part] = {}
        section = inner
    if text.strip():
        section[last] = _value(field, text.strip())
    else:
        section.pop(last, None)
    if outer and not section:
        machine.pop(outer[0], None)


def _value(field: FormField, text: str) -> object:
    if field.kind in _LISTS:
        return [part.strip() for part in text.split(",") if part.strip()]
    if field.kind == "duty":
        rows = [_NUMBER.findall(part) for part in re.split(r",(?!\d)|;", text)]
        if any(len(row) != 2 for row in rows):
            return text
        return [{"current_a": amps, "percent": percent} for amps, percent in rows]
    if field.kind == "yaml":
        try:
            return parse_yaml(f"x: {text}", field.name)["x"]
        except ReferenceDataError:
            return text
    return text


def _is_row(row: object) -> bool:
    return isinstance(row, Mapping) and row.keys() >= {"current_a", "percent"}
