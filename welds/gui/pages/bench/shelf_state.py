"""The shelf as texts: what is ticked, by kind, and how ticks change it."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from welds.quantities.sizes import ROD, TUNGSTEN, WIRE
from welds.reference.shielding import Gas
from welds.reference.tables import Tables

Raw = dict[str, object]
PAIRS = ("tungstens", "fillers", "wires")
"""Kinds that name a type or class together with its diameters."""

PLAIN = ("cups", "lens_cups", "gas_lenses", "collets", "backing_bars", "brushes", "wheels")
SOLD_BY: Mapping[str, str] = {
    "tungstens": "tungsten_diameter",
    "fillers": "filler_diameter",
    "wires": "wire_diameter",
    "gas_lenses": "tungsten_diameter",
    "collets": "tungsten_diameter",
}
"""Kind -> the diameters it is sold by."""

CUPS = tuple(str(number) for number in range(3, 17))
METALS = ("aluminium", "steel", "stainless", "copper", "titanium", "magnesium")
UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class Offer:
    """What can be ticked: names by kind of pair, sizes by kind of pair, words by plain kind, gases."""

    names: Mapping[str, tuple[str, ...]]
    sizes: Mapping[str, tuple[str, ...]]
    plain: Mapping[str, tuple[str, ...]]
    gases: tuple[tuple[str, str], ...]


def offer_of(tables: Tables) -> Offer:
    """Return everything that the tables know."""

    def column(table: str, name: str, process: str = "") -> tuple[str, ...]:
        rows = tables.table(table).rows
        return tuple(str(row[name]) for row in rows if not process or row["process"] in ("both", process))

    tungsten_sizes = tuple(f"{size} mm" for size in TUNGSTEN)
    return Offer(
        {
            "tungstens": column("tungstens", "iso_code"),
            "fillers": column("fillers", "id", "tig"),
            "wires": column("fillers", "id", "mig"),
        },
        {
            "tungstens": tungsten_sizes,
            "fillers": tuple(f"{size} mm" for size in ROD),
            "wires": tuple(f"{size} mm" for size in WIRE),
        },
        {
            "cups": CUPS,
            "lens_cups": CUPS,
            "gas_lenses": tungsten_sizes,
            "collets": tungsten_sizes,
            "backing_bars": ("copper", "stainless", "aluminium"),
            "brushes": METALS,
            "wheels": METALS,
        },
        tuple((gas.id, _short_name(gas)) for gas in tables.records(Gas)),
    )


def _short_name(gas: Gas) -> str:
    """Return a pure gas by its name, a mix by its parts."""
    parts = (
        (gas.argon_percent, "Ar"),
        (gas.helium_percent, "He"),
        (gas.co2_percent, "CO\u2082"),
        (gas.o2_percent, "O\u2082"),
    )
    there = [f"{percent:g} % {name}" for percent, name in parts if percent]
    return gas.name if len(there) == 1 else ", ".join(there)


def ticked(shelf: Mapping[str, object], kind: str) -> tuple[str, ...]:
    """Return the entries of a plain kind."""
    value = shelf.get(kind, ())
    return tuple(str(each) for each in value) if isinstance(value, list) else ()


def sizes_of(shelf: Mapping[str, object], kind: str, name: str) -> tuple[str, ...]:
    """Return the diameters of one type or class."""
    value = shelf.get(kind)
    found = value.get(name, ()) if isinstance(value, Mapping) else ()
    return (found,) if isinstance(found, str) else tuple(str(each) for each in found)


def names_there(shelf: Mapping[str, object], kind: str) -> tuple[str, ...]:
    """Return the types or classes that are on the shelf."""
    value = shelf.get(kind)
    return tuple(str(each) for each in value) if isinstance(value, Mapping) else ()


def gases_there(shelf: Mapping[str, object]) -> dict[str, str]:
    """Return the gases with the litres left as text, empty where not measured."""
    value = shelf.get("gases", ())
    if isinstance(value, Mapping):
        return {str(gas): "" if left == UNKNOWN else str(left) for gas, left in value.items()}
    return {str(gas): "" for gas in value} if isinstance(value, list) else {}


def put_plain(shelf: Raw, kind: str, values: Iterable[str]) -> None:
    """Set the entries of a plain kind; none takes the kind away."""
    _put(shelf, kind, list(values))


def put_sizes(shelf: Raw, kind: str, name: str, sizes: Iterable[str]) -> None:
    """Set the diameters of one type or class."""
    value = shelf.get(kind)
    lines: Raw = dict(value) if isinstance(value, Mapping) else {}
    _put(lines, name, list(sizes))
    _put(shelf, kind, lines)


def put_gases(shelf: Raw, gases: Mapping[str, str]) -> None:
    """Set the gases with the litres left."""
    _put(shelf, "gases", {gas: left or UNKNOWN for gas, left in gases.items()})


def _put(section: Raw, name: str, value: list[str] | Raw | dict[str, str]) -> None:
    if value:
        section[name] = value
    else:
        section.pop(name, None)
