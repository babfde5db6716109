"""Whether the torch wants a gas lens."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint, Place
from welds.advice.setting import Choice, Reason, Setting
from welds.advice.sizes import holds
from welds.language import tr
from welds.reference.basis import Basis

COLOUR_FAMILIES = frozenset({"stainless", "titanium"})


def advise(case: Case, so_far: SoFar) -> Setting:
    """Advise a lens where argon runs away from the joint or where the bead's colour shows bad cover."""
    why: list[Reason] = []
    if case.request.joint in (Joint.OUTSIDE_CORNER, Joint.EDGE):
        why.append(
            Reason(
                tr(
                    "the joint falls away from the arc, so argon does not pool: a lens keeps the stream whole"
                ),
                source="COMMON_PRACTICE",
            )
        )
    if case.families & COLOUR_FAMILIES:
        why.append(Reason(tr("this metal colours where cover is thin"), source="COMMON_PRACTICE"))
    if case.request.place is Place.OUTDOORS:
        why.append(Reason(tr("moving air: a lens stands it a little better"), source="COMMON_PRACTICE"))
    wanted = bool(why)
    if not wanted:
        why.append(
            Reason(
                tr("a standard cup serves, the plates hold the argon; a lens does no harm where fitted"),
                source="MATHERS_2002_T6_3",
            )
        )
    shelf = case.equipment.shelf
    tungsten = float(so_far["tungsten_diameter"].start)
    has_size = not shelf.gas_lens_diameters_mm or holds(shelf.gas_lens_diameters_mm, tungsten)
    have = shelf.has_gas_lens if has_size else False
    if wanted and have is False:
        missing = (
            tr("no lens on the shelf")
            if has_size
            else tr("no lens for {tungsten:g} mm tungsten", tungsten=tungsten)
        )
        why.append(
            Reason(
                tr("{missing}: use the largest cup that goes in and shorten the stick-out", missing=missing)
            )
        )
        wanted = False
    return Setting(
        "gas_lens",
        Basis.PRACTICE,
        tuple(why),
        tuple(dict.fromkeys(reason.source for reason in why if reason.source)),
        value=wanted,
        alternatives=(Choice(not wanted),) if have is not False else (),
    )
