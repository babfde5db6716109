"""The fields of one machine in the bench file, and the machine they make."""

from collections.abc import Mapping

from welds.advice.equipment import SCALE, Control, Machine, Supply, Torch
from welds.bench.readers import (
    Number,
    Place,
    Reader,
    choice,
    each,
    fields,
    flag,
    in_order,
    mapping,
    size,
    text,
)
from welds.bench.scales import SCALED, read_scales
from welds.errors import BenchFileError
from welds.language import mark, tr
from welds.reference.strict_yaml import YamlList, YamlMap

AMPS, HERTZ, PERCENT, VOLTS = Number(1, 1000), Number(1, 1000), Number(1, 100), Number(1, 1000)
FEED, ARC_VOLTS, SHARE = Number(0.1, 60), Number(1, 100), Number(0.3, 1)
ROW = mark("lines such as - {current_a: 200, percent: 30}")


def _duty_cycle(value: object, place: Place) -> tuple[tuple[float, float], ...]:
    if not isinstance(value, YamlList):
        raise place.error(tr("expected {example}", example=tr(ROW)))
    pairs = []
    for entry, line in zip(value, value.lines, strict=True):
        here = place.at(line)
        if not isinstance(entry, YamlMap) or set(entry) != {"current_a", "percent"}:
            raise here.error(tr("expected {example}", example=tr(ROW)))
        pairs.append((AMPS(entry["current_a"], here), PERCENT(entry["percent"], here)))
    return tuple(pairs)


def _positions(read: Reader) -> Reader:
    """Read one fixed figure, or a list of the only ones there are."""
    many = in_order(read)

    def read_either(value: object, place: Place) -> object:
        return (read(value, place),) if isinstance(value, str) else many(value, place)

    return read_either


SUPPLY: Mapping[str, Reader] = {
    "volts": VOLTS,
    "phases": choice("1", "3"),
    "breaker_a": Number(1, 400),
    "cord_mm2": Number(0.5, 95),
    "cord_length_m": Number(0.5, 200),
    "cord_rated_a": Number(1, 400),
    "generator_kva": Number(0.5, 500),
}
TORCH: Mapping[str, Reader] = {
    "cooling": choice("air", "water"),
    "rated_a": AMPS,
    "rated_ac_a": AMPS,
    "percent": PERCENT,
}
MACHINE: Mapping[str, Reader] = {
    "name": text,
    "kind": choice("inverter", "corrected-inverter", "transformer"),
    "processes": each(choice("tig", "mig")),
    "current_min_a": AMPS,
    "current_max_a": AMPS,
    "current_step_a": AMPS,
    "current_a": _positions(AMPS),
    "has_ac": flag,
    "ac_wave": choice("square", "sine"),
    "ac_frequency_min_hz": HERTZ,
    "ac_frequency_max_hz": HERTZ,
    "ac_frequency_step_hz": HERTZ,
    "ac_frequency_hz": _positions(HERTZ),
    "electrode_negative_min_percent": PERCENT,
    "electrode_negative_max_percent": PERCENT,
    "electrode_negative_step_percent": PERCENT,
    "electrode_negative_percent": _positions(PERCENT),
    "has_pulse": flag,
    "has_pedal": flag,
    "has_hot_start": flag,
    "wire_feed_min_m_min": FEED,
    "wire_feed_max_m_min": FEED,
    "voltage_min_v": ARC_VOLTS,
    "voltage_max_v": ARC_VOLTS,
    "voltage_v": _positions(ARC_VOLTS),
    "wire_diameters": each(size("wire_diameter")),
    "scales": read_scales,
    "duty_cycle": _duty_cycle,
    "open_circuit_dc_v": Number(1, 200),
    "open_circuit_ac_v": Number(1, 200),
    "torch": mapping,
    "supply_volts": in_order(VOLTS),
    "plug": text,
    "efficiency": SHARE,
    "power_factor": SHARE,
    "supply": mapping,
}
_ORDERED = (
    ("current_min_a", "current_max_a"),
    ("ac_frequency_min_hz", "ac_frequency_max_hz"),
    ("electrode_negative_min_percent", "electrode_negative_max_percent"),
    ("wire_feed_min_m_min", "wire_feed_max_m_min"),
    ("voltage_min_v", "voltage_max_v"),
)
_STEPS = {
    "current": ("current_step_a", "current_a"),
    "ac_frequency": ("ac_frequency_step_hz", "ac_frequency_hz"),
    "electrode_negative": ("electrode_negative_step_percent", "electrode_negative_percent"),
    "voltage": ("", "voltage_v"),
}
"""Setting -> the fields of its step and of its only positions."""


def read_machine(value: object, place: Place, faults: list[BenchFileError]) -> Machine | None:
    """Return the machine, or None where a mistake leaves none; mistakes go on the list."""
    before = len(faults)
    section = mapping(value, place)
    found = fields(section, place, MACHINE, faults)
    file, line = place.file, place.line
    is_misspelt = len(faults) > before  # then a missing field is most likely there under a wrong name
    if "name" not in section and not is_misspelt:
        words = tr("is missing: a few words, such as 200 A AC/DC TIG, 230 V")
        faults.append(BenchFileError(file, tr("{field}.name {words}", field=place.field, words=words), line))
    if found.get("processes", frozenset()) == frozenset() and not is_misspelt:
        words = tr("missing; allowed: [tig], [mig] or [tig, mig]")
        faults.append(
            BenchFileError(file, tr("{field}.processes is {words}", field=place.field, words=words), line)
        )
    for low, high in _ORDERED:
        first, last = found.get(low), found.get(high)
        if isinstance(first, float) and isinstance(last, float) and first > last:
            faults.append(
                BenchFileError(
                    file,
                    tr(
                        "{field}.{low_field} {low:g} is above {high_field} {high:g}",
                        field=place.field,
                        low_field=low,
                        low=first,
                        high_field=high,
                        high=last,
                    ),
                    section.line_of[low],
                    f"{place.field}.{low}",
                )
            )
    supply, torch = (_part(section, found, name, place, faults) for name in ("supply", "torch"))
    if len(faults) > before:
        return None
    return _made(found, supply, torch)


def _part(
    section: YamlMap,
    found: dict[str, object],
    name: str,
    place: Place,
    faults: list[BenchFileError],
) -> dict[str, object]:
    value = found.pop(name, None)
    if value is None:
        return {}
    here = place.below(name, section.line_of[name])
    readers, needed = (SUPPLY, "volts") if name == "supply" else (TORCH, "cooling")
    part = fields(value, here, readers, faults)
    if isinstance(value, YamlMap) and needed not in value:
        faults.append(here.error(tr("{field} is missing", field=needed)))
    return part


def _made(found: dict[str, object], supply: dict[str, object], torch: dict[str, object]) -> Machine:
    scales = {each.setting: each for each in found.pop("scales", ())}  # type: ignore[attr-defined]
    controls = []
    for setting in SCALED:
        step_field, positions_field = _STEPS.get(setting, ("", ""))
        step, positions = found.pop(step_field, None), found.pop(positions_field, ())
        scale = scales.get(setting)
        if step is None and not positions and scale is None:
            continue
        controls.append(
            Control(
                setting,
                step,  # type: ignore[arg-type]
                tuple(sorted({*positions, *(scale.positions if scale else ())})),  # type: ignore[misc]
                scale.scale if scale else SCALE,
                scale.marks if scale else (),
            )
        )
    if "wire_diameters" in found:
        found["wire_diameters_mm"] = found.pop("wire_diameters")
    if supply:
        supply["phases"] = int(str(supply.get("phases", "1")))
        found["supply"] = Supply(**supply)  # type: ignore[arg-type]
    if torch:
        torch["duty_percent"] = torch.pop("percent", 100.0)
        found["torch"] = Torch(**torch)  # type: ignore[arg-type]
    return Machine(**found, controls=tuple(controls))  # type: ignore[arg-type]
