"""What goes behind the joint."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint, Process
from welds.advice.setting import Choice, Reason, Setting
from welds.language import mark, tr
from welds.reference.basis import Basis

ROOT_OPEN = frozenset({Joint.BUTT, Joint.OUTSIDE_CORNER, Joint.EDGE})
"""Joints whose root sees air."""

THIN_MM = 3.2
NONE, COPPER, PURGE = mark("none"), mark("copper bar"), mark("argon purge, 5 L/min")
STEEL_BAR = mark("stainless or copper bar, clean and dry")

BARS = {COPPER: frozenset({"copper"}), STEEL_BAR: frozenset({"stainless", "copper"})}
"""What a bar can be made of; any of them will do."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return purge for metals whose root burns in air, a bar for thin sheet, else nothing."""
    joint = case.request.joint
    tig = case.request.process is Process.TIG
    sources: tuple[str, ...] = ("COMMON_PRACTICE",)
    others: tuple[Choice, ...] = ()
    if "titanium" in case.families:
        value, why = PURGE, tr("titanium takes up air on every hot face: purge the back and trail the bead")
    elif joint is Joint.PLUG:
        value, why = COPPER, tr("a copper bar behind the hole holds the pool and takes the heat")
    elif joint not in ROOT_OPEN:
        value, why = NONE, tr("the root is closed by the other plate")
    elif "stainless" in case.families and tig and joint is Joint.BUTT:
        value, why = PURGE, tr("the root of stainless sugars in air")
        others = (Choice(COPPER, tr("thin sheet clamped tight: the bar shields most of the root")),)
    elif case.thin_mm <= THIN_MM and joint is Joint.BUTT:
        aluminium = "aluminium" in case.families
        value = STEEL_BAR if aluminium else COPPER
        why = tr("thin butt: a removable bar stops the root falling out")
        sources, others = (
            ("GAS_HB_2017", "COMMON_PRACTICE"),
            (Choice(NONE, tr("with a tight fit and a light pedal")),),
        )
    else:
        value, why = NONE, tr("thick enough to carry its own root, or nothing can reach behind")
        others = (Choice(COPPER, tr("where the edge drops through")),)
    bars = case.equipment.shelf.backing_bars
    if bars and value in BARS and not bars & BARS[value] and any(each.value == NONE for each in others):
        why += tr("; no {bar} on the shelf, so none", bar=tr(value))
        value, others = NONE, (Choice(value, tr("once it is there")),)
    return Setting(
        "backing",
        Basis.PRACTICE,
        (Reason(why, source=sources[0]),),
        sources,
        value=value,
        alternatives=others,
    )
