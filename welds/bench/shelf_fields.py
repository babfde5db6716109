"""The fields of the shelf in the bench file, and the shelf they make."""

from collections.abc import Mapping

from welds.advice.equipment import Shelf
from welds.bench.readers import (
    Number,
    Place,
    Reader,
    by_name,
    choice,
    each,
    fields,
    flag,
    in_order,
    known,
    mapping,
    size,
    whole,
)
from welds.errors import BenchFileError
from welds.language import mark, tr
from welds.reference.strict_yaml import YamlMap
from welds.reference.tables import Tables

UNKNOWN = "unknown"
KEPT_FOR = ("aluminium", "steel", "stainless", "copper", "titanium", "magnesium")
BARS = ("copper", "stainless", "aluminium")
LIGHTEST, DARKEST = 3, 15
_CUP = whole(3, 24, mark("cup number"))
_SHADE = whole(LIGHTEST, DARKEST, mark("shade"))
_LITRES = Number(0, 100_000)


def shelf_readers(tables: Tables) -> Mapping[str, Reader]:
    """Return the reader of each field."""
    tungsten, filler = known(tables, "tungstens", "iso_code"), known(tables, "fillers", "id")
    rod, wire, electrode = size("filler_diameter"), size("wire_diameter"), size("tungsten_diameter")
    return {
        "tungstens": by_name(tungsten, electrode),
        "fillers": by_name(filler, rod),
        "wires": by_name(filler, wire),
        "gases": _gases(tables),
        "cups": each(_CUP),
        "lens_cups": each(_CUP),
        "has_gas_lens": flag,
        "gas_lenses": each(electrode),
        "collets": each(electrode),
        "backing_bars": each(choice(*BARS)),
        "helmet_shades": in_order(_shades),
        "brushes": each(choice(*KEPT_FOR)),
        "wheels": each(choice(*KEPT_FOR)),
        "tungsten_types": each(tungsten),
        "tungsten_diameters": each(electrode),
        "filler_metals": each(filler),
        "filler_diameters": each(rod),
        "wire_diameters": each(wire),
    }


_NAMES = {
    "tungsten_diameters": "tungsten_diameters_mm",
    "filler_diameters": "filler_diameters_mm",
    "wire_diameters": "wire_diameters_mm",
    "gas_lenses": "gas_lens_diameters_mm",
    "collets": "collet_diameters_mm",
}


def read_shelf(value: object, place: Place, tables: Tables, faults: list[BenchFileError]) -> Shelf:
    """Return the shelf; mistakes go on the list."""
    found = fields(value, place, shelf_readers(tables), faults)
    if "gases" in found:
        gases: dict[str, float | None] = found.pop("gases")  # type: ignore[assignment]
        found["gases"] = frozenset(gas for gas, left in gases.items() if left != 0.0)
        found["gas_left_l"] = tuple((gas, left) for gas, left in gases.items() if left is not None)
    if found.get("gas_lenses"):
        found.setdefault("has_gas_lens", True)
    return Shelf(**{_NAMES.get(name, name): each for name, each in found.items()})  # type: ignore[arg-type]


def _gases(tables: Tables) -> Reader:
    read_gas = known(tables, "gases", "id")
    plain = in_order(read_gas)

    def read(value: object, place: Place) -> dict[str, float | None]:
        if not isinstance(value, YamlMap):
            return {str(gas): None for gas in plain(value, place)}
        found: dict[str, float | None] = {}
        for name, left in mapping(value, place).items():
            here = place.below(name, value.line_of[name])
            found[read_gas(name, here)] = None if left == UNKNOWN else _LITRES(_bare(left), here)
        return found

    return read


def _bare(value: object) -> object:
    """Take "3200 L" as 3200."""
    return value.removesuffix("L").strip() if isinstance(value, str) else value


def _shades(value: object, place: Place) -> tuple[int, int]:
    parts = [part.strip() for part in str(value).split("-")] if isinstance(value, str) else []
    if len(parts) not in (1, 2):
        raise place.error(
            tr(
                "{value!s:.40} is not usable; allowed: a shade such as 10, or a range such as 9-13",
                value=value,
            )
        )
    first, last = _SHADE(parts[0], place), _SHADE(parts[-1], place)
    if first > last:
        raise place.error(tr("{value} runs backwards", value=value))
    return first, last
