"""Arc voltage, for the heat input; on TIG the machine finds it by itself."""

from welds.advice.case import Case, SoFar
from welds.advice.gas_choice import choose_gas
from welds.advice.request import Process
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.physics.arc import conventional_load_voltage_tig
from welds.quantities.band import Band
from welds.reference.basis import Basis

HELIUM_V = 4.0
"""Shop practice: what helium adds at the same arc length."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the conventional load line for TIG (plus helium), the set voltage for MIG."""
    if case.request.process is Process.MIG:
        set_voltage = so_far["voltage"]
        reason = Reason(tr("as set, less what the leads take"))
        return Setting(
            "arc_voltage", set_voltage.basis, (reason,), set_voltage.sources, band=set_voltage.band
        )
    current = so_far["current"].figure
    volts = conventional_load_voltage_tig(min(current.start, 600.0))
    reasons = [Reason(tr("conventional load line 10 V + 0.04 V/A"), source="IEC_60974_1_MEM")]
    basis = Basis.RECALLED
    if choose_gas(case)[0].helium_percent >= 50.0:
        volts += HELIUM_V
        reasons.append(Reason(tr("helium adds about {volts:g} V", volts=HELIUM_V), source="COMMON_PRACTICE"))
    reasons.append(
        Reason(tr("not set on the machine: it follows the arc length, about one tungsten diameter"))
    )
    band = Band(round(volts - 2.0, 1), round(volts, 1), round(volts + 2.0, 1), "V")
    return Setting("arc_voltage", basis, tuple(reasons), ("IEC_60974_1_MEM",), band=band)
