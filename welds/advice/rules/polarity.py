"""Current type: which side the heat goes to, and whether the oxide is lifted."""

from welds.advice.case import Case, SoFar
from welds.advice.gas_choice import choose_gas, tig_gas_class
from welds.advice.request import Process
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.reference.basis import Basis

OXIDE_FAMILIES = frozenset({"aluminium", "magnesium"})
"""Metals whose oxide melts far above the metal and has to be lifted by electrode-positive time."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """AC for aluminium and magnesium under argon; electrode negative for the rest; MIG electrode positive."""
    if case.request.process is Process.MIG:
        reason = Reason(tr("solid wire under gas runs electrode positive: steady arc, deep melting"))
        return Setting("polarity", Basis.PRACTICE, (reason,), ("COMMON_PRACTICE",), value="DCEP")
    if not case.families & OXIDE_FAMILIES:
        reason = Reason(
            tr("electrode negative puts most of the heat into the work and keeps the tungsten sharp"),
            source="FAA_AC43_13_1B_T4_12",
        )
        return Setting("polarity", Basis.PRINTED, (reason,), ("FAA_AC43_13_1B_T4_12",), value="DCEN")
    if tig_gas_class(choose_gas(case)[0]) == "helium":
        reason = Reason(
            tr(
                "helium is hot enough to melt through the oxide on electrode negative; it lifts none of it,"
                " so the joint must be freshly brushed"
            ),
            source="MATHERS_2002_T6_5",
        )
        return Setting("polarity", Basis.PRINTED, (reason,), ("MATHERS_2002_T6_5",), value="DCEN")
    reason = Reason(
        tr("AC: the electrode-positive half lifts the oxide, the electrode-negative half melts the metal"),
        source="FAA_AC43_13_1B_T4_12",
    )
    return Setting("polarity", Basis.PRINTED, (reason,), ("FAA_AC43_13_1B_T4_12",), value="AC")
