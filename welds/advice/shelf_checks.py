"""Is everything there: gas for the weld, fitting torch parts, helmet, brush, and what must be bought."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.gas_choice import choose_gas
from welds.advice.power_checks import arc_minutes
from welds.advice.request import Process, Transfer
from welds.advice.setting import Check, Purchase, Setting
from welds.advice.sizes import holds
from welds.language import mark, tr
from welds.reference.names import all_of, name_of

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
    for kind, stock in ((mark("brush"), shelf.brushes), (mark("wheel"), shelf.wheels)):
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
    text = tr(
        "{left:.0f} L of {name} left: {minutes:.0f} minutes at {flow:g} L/min",
        left=left,
        name=gas.name,
        minutes=minutes,
        flow=flow,
    )
    needed = arc_minutes(case, settings)
    if needed is not None and needed > minutes:
        return Check(
            mark("gas left"),
            False,
            tr("{text}, this weld takes {needed:.0f}: refill first", text=text, needed=needed),
        )
    if minutes < REFILL_MINUTES:
        return Check(mark("gas left"), False, tr("{text}: get it refilled", text=text))
    return Check(mark("gas left"), True, text)


def _collet(case: Case, settings: Mapping[str, Setting]) -> Check:
    tungsten = float(settings["tungsten_diameter"].start)
    ok = holds(case.equipment.shelf.collet_diameters_mm, tungsten)
    return Check(
        mark("torch parts"),
        ok,
        tr("a collet for {tungsten:g} mm tungsten", tungsten=tungsten)
        if ok
        else tr("no collet for {tungsten:g} mm tungsten", tungsten=tungsten),
    )


def _helmet(case: Case, settings: Mapping[str, Setting]) -> Check:
    shade = settings["filter_shade"].figure
    shades = case.equipment.shelf.helmet_shades
    there = {each for lightest, darkest in shades for each in range(lightest, darkest + 1)}
    allowed = [each for each in there if each >= shade.low]
    if not allowed:
        text = tr("no helmet is as dark as shade {low:.0f}: do not strike this arc", low=shade.low)
        return Check(mark("helmet"), False, text)
    nearest = min(allowed, key=lambda each: (abs(each - shade.start), -each))
    if nearest == shade.start:
        return Check(mark("helmet"), True, tr("a helmet has shade {start:.0f}", start=shade.start))
    text = tr(
        "no helmet has shade {start:.0f}: use {nearest}, never lighter than {low:.0f}",
        start=shade.start,
        nearest=nearest,
        low=shade.low,
    )
    return Check(mark("helmet"), True, text)


def _kept_for(case: Case, kind: str, stock: frozenset[str]) -> Check:
    missing = [brush_word(family) for family in sorted(case.families) if brush_word(family) not in stock]
    if missing:
        text = tr(
            "no {kind} kept for {metals}: one used on another metal dirties the joint",
            kind=tr(kind),
            metals=all_of([name_of(each) for each in missing]),
        )
        return Check(kind, False, text)
    metals = all_of([name_of(brush_word(family)) for family in sorted(case.families)])
    return Check(kind, True, tr("a {kind} kept for {metals} is there", kind=tr(kind), metals=metals))


def _missing(shopping: tuple[Purchase, ...]) -> Check:
    needed = [each.item for each in shopping if each.is_needed]
    better = [each.item for each in shopping if not each.is_needed]
    parts = [tr("not on the shelf: {items}", items=", ".join(needed))] if needed else [tr("the shelf serves")]
    parts += [tr("better, when you buy: {items}", items=", ".join(better))] if better else []
    return Check(mark("shelf"), not needed, "; ".join(parts))
