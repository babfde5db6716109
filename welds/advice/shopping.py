"""What the shelf lacks for a card: what it cannot be set without, and what was the first choice."""

from collections.abc import Callable, Mapping
from dataclasses import replace

from welds.advice.case import Case, SoFar
from welds.advice.equipment import Shelf
from welds.advice.gas_choice import choose_gas
from welds.advice.request import Process, Transfer
from welds.advice.rules import (
    backing,
    cup,
    filler_diameter,
    filler_metal,
    gas_lens,
    shielding_gas,
    tungsten_diameter,
    tungsten_type,
    wire_diameter,
)
from welds.advice.rules.tungsten_diameter import stands
from welds.advice.setting import Purchase, Setting
from welds.advice.sizes import holds
from welds.language import figure, mark, tr
from welds.quantities.sizes import SOLD_AS

Rule = Callable[[Case, SoFar], Setting | None]

TIG: tuple[Rule, ...] = (
    tungsten_type.advise,
    tungsten_diameter.advise,
    filler_metal.advise,
    filler_diameter.advise,
    shielding_gas.advise,
    gas_lens.advise,
    cup.advise,
    backing.advise,
)
MIG: tuple[Rule, ...] = (filler_metal.advise, wire_diameter.advise, shielding_gas.advise, backing.advise)
"""The rules that look at the shelf, in the order of the card."""

ITEMS = {
    "tungsten_diameter": mark("tungsten {name}, {size:g} mm"),
    "filler_diameter": mark("rod {name}, {size:g} mm"),
    "wire_diameter": mark("wire {name}, {size:g} mm"),
}


def missing_for(case: Case, settings: Mapping[str, Setting]) -> tuple[Purchase, ...]:
    """Return what the card names that the shelf lacks, then what it would name with everything there."""
    shelf = case.equipment.shelf
    if shelf == Shelf():
        return ()
    full = replace(case, equipment=replace(case.equipment, shelf=Shelf()))
    first = dict(settings)
    for rule in TIG if case.request.process is Process.TIG else MIG:
        setting = rule(full, first)
        if setting is not None:
            first[setting.name] = setting
    needed = _lacking(case, settings, shelf)
    better = [each for each in _lacking(full, first, shelf) if each not in needed]
    too_thin = "tungsten_diameter" in settings and not stands(case, settings)
    needed += [each for each in better if too_thin and each[0] == "tungsten_diameter"]
    better = [each for each in better if each not in needed]
    return (
        *(Purchase(item, True, setting) for setting, item in needed),
        *(Purchase(item, False, setting) for setting, item in better),
    )


def _lacking(case: Case, settings: Mapping[str, Setting], shelf: Shelf) -> list[tuple[str, str]]:
    found = _tig(settings, shelf) if case.request.process is Process.TIG else _mig(settings, shelf)
    transfer = None
    if case.request.process is Process.MIG:
        transfer = Transfer(str(settings["transfer"].value))
    gas = choose_gas(case, transfer)[0]
    if shelf.gases and gas.id not in shelf.gases:
        found.append(("shielding_gas", tr("gas: {name}", name=gas.name)))
    bar = str(settings["backing"].value)
    if shelf.backing_bars and bar in backing.BARS and not shelf.backing_bars & backing.BARS[bar]:
        found.append(("backing", tr(bar)))
    return found


def _tig(settings: Mapping[str, Setting], shelf: Shelf) -> list[tuple[str, str]]:
    found: list[tuple[str, str]] = []
    kind, size = str(settings["tungsten_type"].value), float(settings["tungsten_diameter"].start)
    kinds, sizes = shelf.types_of_tungsten, shelf.tungsten_sizes(kind)
    found += _pair("tungsten_diameter", kind, size, kinds, sizes)
    rod, size = str(settings["filler_metal"].value), float(settings["filler_diameter"].start)
    found += _pair("filler_diameter", rod, size, shelf.metals_of_rods, shelf.rod_sizes(rod))
    lens = bool(settings["gas_lens"].value)
    if lens and shelf.has_gas_lens is False:
        found.append(("gas_lens", tr("a gas lens")))
    number = int(float(settings["cup"].start))
    cups = shelf.lens_cups if lens and shelf.lens_cups else shelf.cups
    if cups and number not in cups:
        found.append(("cup", tr("cup {number}", number=number)))
    return found


def _mig(settings: Mapping[str, Setting], shelf: Shelf) -> list[tuple[str, str]]:
    wire, size = str(settings["wire"].value), float(settings["wire_diameter"].start)
    return _pair("wire_diameter", wire, size, shelf.metals_of_wires, shelf.wire_sizes(wire))


def _pair(
    setting: str, name: str, size_mm: float, names: frozenset[str], sizes_mm: frozenset[float]
) -> list[tuple[str, str]]:
    """Return the item where its name, or its size, is stated not to be there."""
    lacks_name = bool(names) and name not in names
    lacks_size = bool(sizes_mm) and not holds(sizes_mm, size_mm)
    if not lacks_name and not lacks_size:
        return []
    inch = SOLD_AS[setting].get(size_mm)
    return [
        (setting, tr(ITEMS[setting], name=name, size=size_mm) + (figure(f" ({inch} in)") if inch else ""))
    ]
