"""Clipping a band to what the machine can be set to, and saying so."""

from welds.advice.setting import Reason
from welds.quantities.band import Band


def clip(
    band: Band, name: str, lowest: float | None, highest: float | None, unit: str
) -> tuple[Band, list[Reason]]:
    """Return the band within the limits and one reason per limit that bit; None is no limit."""
    reasons = []
    if lowest is not None and lowest == highest:
        if not band.low == band.high == lowest:
            reasons.append(Reason(f"clipped: {name} has {lowest:g} {unit} and no other"))
    else:
        if highest is not None and band.high > highest:
            reasons.append(Reason(f"clipped: {name} stops at {highest:g} {unit}"))
        if lowest is not None and band.low < lowest:
            reasons.append(Reason(f"clipped: {name} starts at {lowest:g} {unit}"))
    return band.clipped(lowest, highest), reasons
