"""Fitting a band to what the machine can be set to, and saying so."""

from math import ceil, floor

from welds.advice.equipment import Control, Machine
from welds.advice.setting import Reason
from welds.language import figure, tr
from welds.quantities.band import Band

DUST = 1e-6
"""What binary arithmetic leaves on a step."""

MOST_NAMED = 8
"""So many positions are named in a reason; a longer list is told by its ends."""


def fit(band: Band, machine: Machine, setting: str, unit: str) -> tuple[Band, list[Reason]]:
    """Return the band inside the machine's limits and on its steps, with a reason for each that bit.

    Lowest and highest move inward, start moves to the nearest, so that each of the three can be set.
    """
    lowest, highest = machine.reach(setting)
    band, reasons = clip(band, machine.name, lowest, highest, unit)
    control = machine.control(setting)
    if control is None or (control.step is None and not control.positions):
        return band, reasons
    snapped = _snapped(band, control, lowest, highest)
    if snapped != band:
        reasons.append(
            Reason(
                tr(
                    "snapped to {start:g} {unit}: {ways}",
                    start=snapped.start,
                    unit=tr(unit),
                    ways=_ways(machine, control, unit),
                )
            )
        )
    return snapped, reasons


def clip(
    band: Band, name: str, lowest: float | None, highest: float | None, unit: str
) -> tuple[Band, list[Reason]]:
    """Return the band within the limits and one reason per limit that bit; None is no limit."""
    reasons = []
    if lowest is not None and lowest == highest:
        if not band.low == band.high == lowest:
            reasons.append(
                Reason(
                    tr(
                        "clipped: {name} has {lowest:g} {unit} and no other",
                        name=name,
                        lowest=lowest,
                        unit=tr(unit),
                    ),
                    is_clip=True,
                )
            )
    else:
        if highest is not None and band.high > highest:
            reasons.append(
                Reason(
                    tr(
                        "clipped: {name} stops at {highest:g} {unit}",
                        name=name,
                        highest=highest,
                        unit=tr(unit),
                    ),
                    is_clip=True,
                )
            )
        if lowest is not None and band.low < lowest:
            reasons.append(
                Reason(
                    tr(
                        "clipped: {name} starts at {lowest:g} {unit}", name=name, lowest=lowest, unit=tr(unit)
                    ),
                    is_clip=True,
                )
            )
    return band.clipped(lowest, highest), reasons


def _snapped(band: Band, control: Control, lowest: float | None, highest: float | None) -> Band:
    if control.positions:
        real = control.positions
    else:
        assert control.step is not None
        origin = lowest or 0.0
        first, last = ((edge - origin) / control.step for edge in (band.low, band.high))
        real = tuple(
            round(origin + count * control.step, 6) for count in range(floor(first), ceil(last + DUST) + 1)
        )
        real = tuple(
            each for each in real if each >= origin - DUST and (highest is None or each <= highest + DUST)
        )
    start = min(real, key=lambda each: (abs(each - band.start), each))
    inside = [each for each in real if band.low <= each <= band.high]
    return Band(min([start, *inside]), start, max([start, *inside]), band.unit)


def _ways(machine: Machine, control: Control, unit: str) -> str:
    if not control.positions:
        return tr(
            "{name} goes in steps of {step:g} {unit}", name=machine.name, step=control.step, unit=tr(unit)
        )
    named = sorted(set(control.positions))
    if len(named) > MOST_NAMED:
        return tr(
            "{name} has {number} positions from {lowest:g} to {highest:g} {unit}",
            name=machine.name,
            number=len(named),
            lowest=named[0],
            highest=named[-1],
            unit=tr(unit),
        )
    return tr(
        "{name} has {positions} {unit} only",
        name=machine.name,
        positions=", ".join(figure(f"{each:g}") for each in named),
        unit=tr(unit),
    )
