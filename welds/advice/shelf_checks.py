"""Is everything there: gas for the weld, fitting torch parts, helmet, brush, and what must be bought."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.gas_choice import choose_gas
from welds.advice.power_checks import arc_minutes
from welds.advice.request import Process, Transfer
from welds.advice.setting import Check, Purchase, Setting
from welds.advice.sizes import holds
from welds.advice.words import joined

REFILL_MINUTES = 20.0
"""Shop practice: less than this is not enough to begin a day with."""

BRUSH_FAMILIES = {"carbon-steel": "steel"}
"""Families whose brush has a plainer name on the shelf."""


def shelf_checks(case: Case, settings: Mapping[str, Setting], shopping: tuple[Purchase, ...]) -> list[Check]:
    """Return the checks that the person's entries allow."""
    shelf = case.equipment.shelf
    found = [_gas(case, settings)]
    if case.request.process is Process.TIG and shelf.collet_diameters_mm:
        found.append(_collet(case, settings))
    if shelf.helmet_shades:
        found.append(_helmet(case, settings))
    for kind, stock in (("brush", shelf.brushes), ("wheel", shelf.wheels)):
        if stock:
            found.append(_kept_for(case, kind, stock))
    if shopping:
        found.append(_missing(shopping))
    return [each for each in found if each is not None]


def brush_word(family: str) -> str:
    """Return how a shelf names the brush or wheel kept for a family."""
    return BRUSH_FAMILIES.get(family, family)


def _gas(case: Case, settings: Mapping[str, Setting]) -> Check | None:
    is_mig = case.request.process is Process.MIG
    gas = choose_gas(case, Transfer(str(settings["transfer"].value)) if is_mig else None)[0]
    left = case.equipment.shelf.litres_left(gas.id)
    if left is None:
        return None
    flow = settings["gas_flow"].figure.start
    minutes = left / flow
    text = f"{left:.0f} L of {gas.name} left: {minutes:.0f} minutes at {flow:g} L/min"
    needed = arc_minutes(case, settings)
    if needed is not None and needed > minutes:
        return Check("gas left", False, f"{text}, this weld takes {needed:.0f}: refill first")
    if minutes < REFILL_MINUTES:
        return Check("gas left", False, f"{text}: get it refilled")
    return Check("gas left", True, text)


def _collet(case: Case, settings: Mapping[str, Setting]) -> Check:
    tungsten = float(settings["tungsten_diameter"].start)
    ok = holds(case.equipment.shelf.collet_diameters_mm, tungsten)
    return Check("torch parts", ok, f"{'a' if ok else 'no'} collet for {tungsten:g} mm tungsten")


def _helmet(case: Case, settings: Mapping[str, Setting]) -> Check:
    shade = settings["filter_shade"].figure
    shades = case.equipment.shelf.helmet_shades
    there = {each for lightest, darkest in shades for each in range(lightest, darkest + 1)}
    allowed = [each for each in there if each >= shade.low]
    if not allowed:
        text = f"no helmet is as dark as shade {shade.low:.0f}: do not strike this arc"
        return Check("helmet", False, text)
    nearest = min(allowed, key=lambda each: (abs(each - shade.start), -each))
    if nearest == shade.start:
        return Check("helmet", True, f"a helmet has shade {shade.start:.0f}")
    text = f"no helmet has shade {shade.start:.0f}: use {nearest}, never lighter than {shade.low:.0f}"
    return Check("helmet", True, text)


def _kept_for(case: Case, kind: str, stock: frozenset[str]) -> Check:
    missing = [brush_word(family) for family in sorted(case.families) if brush_word(family) not in stock]
    if missing:
        text = f"no {kind} kept for {joined(missing)}: one used on another metal dirties the joint"
        return Check(kind, False, text)
    names = joined([brush_word(family) for family in sorted(case.families)])
    return Check(kind, True, f"a {kind} kept for {names} is there")


def _missing(shopping: tuple[Purchase, ...]) -> Check:
    needed = [each.item for each in shopping if each.is_needed]
    better = [each.item for each in shopping if not each.is_needed]
    parts = [f"not on the shelf: {', '.join(needed)}"] if needed else ["the shelf serves"]
    parts += [f"better, when you buy: {', '.join(better)}"] if better else []
    return Check("shelf", not needed, "; ".join(parts))
