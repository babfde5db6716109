"""Which gas shields the arc."""

from welds.advice.case import Case, SoFar
from welds.advice.gas_choice import choose_gas, suitable_gases
from welds.advice.request import Process, Transfer
from welds.advice.setting import Choice, Reason, Setting
from welds.language import tr


def advise(case: Case, so_far: SoFar) -> Setting:
    """Name the chosen gas by its ISO 14175 code, the others that suit beside it."""
    transfer = Transfer(str(so_far["transfer"].value)) if case.request.process is Process.MIG else None
    gas, why = choose_gas(case, transfer)
    reasons = [Reason(f"{gas.name}: {why}", source=gas.source_id)]
    if case.request.process is Process.TIG:
        reasons.append(Reason(tr("inert gas only: oxygen or carbon dioxide burns the tungsten at once")))
    others = tuple(
        Choice(each.iso_code, each.name) for each in suitable_gases(case, transfer) if each.id != gas.id
    )
    return Setting(
        "shielding_gas",
        gas.basis,
        tuple(reasons),
        (gas.source_id,),
        value=gas.iso_code,
        text=gas.name,
        alternatives=others[:4],
    )
