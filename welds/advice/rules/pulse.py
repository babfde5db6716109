"""Pulsing: where it helps and how."""

from welds.advice.case import Case, SoFar
from welds.advice.setting import Choice, Reason, Setting
from welds.language import mark, tr
from welds.reference.basis import Basis

THIN_MM = 1.3
HEAT_SHY_GROUPS = frozenset({"austenitic", "ferritic"})
STAINLESS_THIN_MM = 2.1
OFF, SLOW = mark("off"), mark("1 to 2 pulses per second, background 30 to 40 %")


def advise(case: Case, so_far: SoFar) -> Setting:
    """Advise a slow pulse on thin sheet and thin stainless, none elsewhere."""
    groups = {metal.group for metal in case.metals}
    helps = case.thin_mm <= THIN_MM or (bool(groups & HEAT_SHY_GROUPS) and case.thin_mm <= STAINLESS_THIN_MM)
    if not helps:
        reason = Reason(tr("thick enough to carry a steady arc"), source="COMMON_PRACTICE")
        others = (Choice(SLOW, tr("to pace the dabbing hand")),)
        return Setting(
            "pulse", Basis.PRACTICE, (reason,), ("COMMON_PRACTICE",), value=OFF, alternatives=others
        )
    why = Reason(tr("thin sheet overheats: a slow pulse lets the pool freeze a little between dabs"))
    if not case.equipment.machine.has_pulse:
        reason = Reason(tr("{name} has no pulse: blip the current by hand", name=case.equipment.machine.name))
        return Setting("pulse", Basis.PRACTICE, (why, reason), ("COMMON_PRACTICE",), value=OFF)
    return Setting(
        "pulse",
        Basis.PRACTICE,
        (why,),
        ("COMMON_PRACTICE",),
        value=SLOW,
        alternatives=(Choice(OFF, tr("with a pedal and a quick hand")),),
    )
