"""Share of the arc's power that reaches the work: the published spread, or the fitted value for AC TIG."""

from dataclasses import dataclass, replace

from welds.advice.case import Case
from welds.advice.gas_choice import choose_gas, tig_gas_class
from welds.advice.heat.calibration import AC_SPREAD, FITTED
from welds.advice.request import Process
from welds.advice.rules.polarity import advise as choose_polarity
from welds.language import tr
from welds.reference.basis import Basis
from welds.reference.heat import EfficiencyRow
from welds.reference.names import name_of

USUAL_ELECTRODE_NEGATIVE = 68.0
"""Percent of the AC cycle the fitted efficiency is held to belong to."""


@dataclass(frozen=True, slots=True)
class Efficiency:
    """Thermal efficiency with its spread and source; `is_trend` marks a direction without a number."""

    low: float
    middle: float
    high: float
    basis: Basis
    source: str
    text: str
    is_trend: bool = False


def thermal_efficiency(case: Case, electrode_negative_percent: float | None = None) -> Efficiency:
    """Return the efficiency for process, current type, gas and family."""
    rows = [row for row in case.tables.records(EfficiencyRow) if row.use == "heat"]

    def published(polarity: str, gas: str, family: str) -> Efficiency:
        process = case.request.process.value
        row = next(
            row
            for row in rows
            if (row.process, row.polarity, row.gas, row.family) == (process, polarity, gas, family)
        )
        middle = (row.efficiency_min + row.efficiency_max) / 2.0
        text = tr("{polarity} under {gas} gas", polarity=polarity, gas=name_of(gas))
        return Efficiency(row.efficiency_min, middle, row.efficiency_max, row.basis, row.source_id, text)

    if case.request.process is Process.MIG:
        if case.family == "aluminium":
            return published("DCEP", "argon", "aluminium")
        spread, measured = published("DCEP", "active", "steel"), published("DCEP", "any", "steel")
        return replace(measured, low=spread.low, high=spread.high)
    if tig_gas_class(choose_gas(case)[0]) == "helium":
        return published("DCEN", "helium", "aluminium")
    straight = published("DCEN", "argon", "any")
    if str(choose_polarity(case, {}).value) != "AC":
        return straight
    return _alternating(straight, electrode_negative_percent)


def _alternating(straight: Efficiency, electrode_negative_percent: float | None) -> Efficiency:
    middle = FITTED.ac_efficiency
    low, high = middle - AC_SPREAD, middle + AC_SPREAD
    text = tr("AC under argon, fitted to sheet schedules; published 22 to 48 %")
    if electrode_negative_percent is None:
        return Efficiency(low, middle, high, Basis.DERIVED, "OWN", text)
    # The electrode-negative share as efficient as a direct current, the rest what then explains the fit.
    usual, share = USUAL_ELECTRODE_NEGATIVE / 100.0, electrode_negative_percent / 100.0
    positive = (middle - usual * straight.middle) / (1.0 - usual)
    lean = (share * straight.middle + (1.0 - share) * positive) / middle
    text += tr("; its change with balance is a trend only")
    return Efficiency(low * lean, middle * lean, high * lean, Basis.PRACTICE, "OWN", text, is_trend=True)
