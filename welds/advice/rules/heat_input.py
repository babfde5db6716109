"""Heat input per length, for steels that mind it and for comparing set-ups."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Process
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.physics.arc import heat_input
from welds.quantities.band import Band
from welds.reference.basis import Basis, weakest

PROCESS_FACTOR = {Process.TIG: 0.6, Process.MIG: 0.8}


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return EN 1011-1 heat input at the start figures; the ends pair low current with quick travel."""
    if "travel_speed" not in so_far:
        return None
    volts, amps, travel = (so_far[name].figure for name in ("arc_voltage", "current", "travel_speed"))
    factor = PROCESS_FACTOR[case.request.process]
    low, start, high = (
        round(heat_input(*each, factor), 4)
        for each in (
            (volts.low, amps.low, max(travel.high, 0.05)),
            (volts.start, amps.start, max(travel.start, 0.05)),
            (volts.high, amps.high, max(travel.low, 0.05)),
        )
    )
    reason = Reason(
        tr("process factor times volts times amperes over travel"), factor=factor, source="EN1011-2-Q"
    )
    basis = weakest(
        (Basis.DERIVED, *(so_far[name].basis for name in ("arc_voltage", "current", "travel_speed")))
    )
    return Setting("heat_input", basis, (reason,), ("EN1011-2-Q",), band=Band(low, start, high, "kJ/mm"))
