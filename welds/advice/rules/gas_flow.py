"""Gas flow at the cup or nozzle."""

from welds.advice.case import Case, SoFar
from welds.advice.gas_choice import choose_gas
from welds.advice.mig_rows import rows_of_transfer
from welds.advice.nearby import Nearby, pair_of, read_nearby
from welds.advice.request import Joint, Place, Process
from welds.advice.setting import Reason, Setting
from welds.advice.tig_rows import rows_of_family
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.basis import Basis

OPEN_JOINT, OUTDOORS = 1.15, 1.2
"""Shop practice: a little more where the joint does not hold the gas, or the air moves."""

HELIUM_FLOW = 1.8
"""Helium rises: shop practice for mixes of half helium or more on an argon reading."""

USUAL = {Process.TIG: (5.0, 7.5, 10.0), Process.MIG: (12.0, 14.0, 18.0)}
"""Where no near row prints a flow. L/min."""

ROUGH_L_MIN = {Process.TIG: 15.0, Process.MIG: 25.0}
"""Shop practice: above this an ordinary cup or nozzle turns the stream rough."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the flow that rows of this thickness print, adjusted for joint, place and gas."""
    found = _printed(case, so_far)
    low, start, high = (found.low, found.start, found.high) if found else USUAL[case.request.process]
    reasons = [
        Reason(
            tr(
                "{rows} rows of about this thickness; documents differ by up to a factor of two",
                rows=len(found.rows),
            ),
            source=found.sources[0],
        )
        if found
        else Reason(tr("usual flow for this process"), source="COMMON_PRACTICE")
    ]
    factor = 1.0
    if case.request.joint in (Joint.OUTSIDE_CORNER, Joint.EDGE):
        factor *= OPEN_JOINT
        reasons.append(Reason(tr("open joint: nothing holds the gas"), OPEN_JOINT, "COMMON_PRACTICE"))
    if case.request.place is Place.OUTDOORS:
        factor *= OUTDOORS
        reasons.append(
            Reason(
                tr("outdoors; screen the joint first, flow alone does not help"), OUTDOORS, "COMMON_PRACTICE"
            )
        )
    if case.request.process is Process.TIG and choose_gas(case)[0].helium_percent >= 50.0:
        factor *= HELIUM_FLOW
        reasons.append(
            Reason(tr("helium is light: more flow for the same cover"), HELIUM_FLOW, "COMMON_PRACTICE")
        )
    ceiling = max(ROUGH_L_MIN[case.request.process], low)
    reasons.append(Reason(tr("more is not better: above the band the stream turns rough and pulls air in")))
    values = [min(round(value * factor * 2) / 2, ceiling) for value in (low, start, high)]
    return Setting(
        "gas_flow",
        found.basis if found and factor == 1.0 else Basis.PRACTICE,
        tuple(reasons),
        found.sources if found else ("COMMON_PRACTICE",),
        found.rows if found else (),
        band=Band(values[0], values[1], values[2], "L/min"),
    )


def _printed(case: Case, so_far: SoFar) -> Nearby | None:
    if case.request.process is Process.TIG:
        return read_nearby(
            rows_of_family(case, so_far),
            case.effective_mm,
            lambda row: pair_of(row.flow_min_l_min, row.flow_max_l_min),
        )
    return read_nearby(
        rows_of_transfer(case, str(so_far["transfer"].value)),
        case.effective_mm,
        lambda row: pair_of(row.flow_min_l_min, row.flow_max_l_min),
    )
