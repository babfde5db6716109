"""What a fault of the last bead asks for: one setting moved within its own band, never out of it."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from welds import language
from welds.advice.case import Case
from welds.advice.limits import fit
from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.faults import Fault
from welds.reference.names import name_of

STEP = 0.5
"""Shop practice: go half way to the end of the band, try again, then half of what is left."""

LEADS = {"wire_feed": "current"}
"""Setting -> the one that it follows on the card: with wire, feed and current are one knob."""

MOVABLE = frozenset(
    {
        *("current", "voltage", "ac_frequency", "electrode_negative", "pulse", "travel_speed"),
        *("gas_flow", "post_flow", "tip_to_work", "cup", "gas_lens", "backing"),
    }
)
"""What a card can take by itself; the rest (metal, filler, tungsten, polarity) is a person's to change."""

NOT_USED = ("off", "none")


@dataclass(frozen=True, slots=True)
class Adjustment:
    """One step of one setting up or down, and the row of the fault table that asks for it."""

    setting: str
    direction: str
    fault: str
    remedy: str
    source: str


def adjustment_of(row: Fault) -> Adjustment | None:
    """Return the step that a remedy asks for, or None where no setting of the card moves."""
    if row.setting is None or row.direction not in ("up", "down"):
        return None
    name = LEADS.get(row.setting, row.setting)
    if name not in MOVABLE:
        return None
    return Adjustment(name, row.direction, row.fault, row.remedy, row.source_id)


def adjusted(case: Case, setting: Setting, adjustments: Iterable[Adjustment]) -> Setting:
    """Return the setting after the steps meant for it; a choice moves to its neighbour on the card."""
    for step in adjustments:
        if step.setting == setting.name:
            setting = _stepped(case, setting, step)
    return setting


def _stepped(case: Case, setting: Setting, step: Adjustment) -> Setting:
    if setting.band is None:
        return _next_choice(setting, step)
    band = _moved(setting.band, step.direction)
    band, limits = fit(band, case.equipment.machine, setting.name, band.unit)
    if band.start == setting.band.start:
        return setting
    reason = Reason(_words(step), band.start / setting.band.start, step.source)
    wanted = _moved(setting.wanted, step.direction) if setting.wanted is not None else None
    return replace(setting, band=band, wanted=wanted, reasons=(*setting.reasons, reason, *limits))


def _moved(band: Band, direction: str) -> Band:
    end = band.high if direction == "up" else band.low
    start = band.start + STEP * (end - band.start)
    if band.unit == "A":
        start = min(max(float(round(start)), band.low), band.high)
    return replace(band, start=start)


def _next_choice(setting: Setting, step: Adjustment) -> Setting:
    """Return the next larger or smaller of the card's own alternatives; something to switch on goes on."""
    value = setting.value
    if isinstance(value, bool):
        chosen: float | str | bool | None = True if step.direction == "up" and not value else None
    elif isinstance(value, float | int):
        beyond = [
            each.value
            for each in setting.alternatives
            if isinstance(each.value, float | int)
            and (each.value > value if step.direction == "up" else each.value < value)
        ]
        chosen = min(beyond, key=lambda each: abs(each - value)) if beyond else None
    elif value in NOT_USED and step.direction == "up" and setting.alternatives:
        chosen = setting.alternatives[0].value
    else:
        chosen = None
    if chosen is None:
        return setting
    text = next((each.text for each in setting.alternatives if each.value == chosen), "")
    reasons = (*setting.reasons, Reason(_words(step), source=step.source))
    return replace(setting, value=chosen, text=text, alternatives=(), reasons=reasons)


def _words(step: Adjustment) -> str:
    remedy = step.remedy.rstrip(".")
    if language.code() == language.ENGLISH:  # elsewhere a small letter may be a mistake
        remedy = remedy[0].lower() + remedy[1:]
    return tr("{fault} seen: {remedy}", fault=name_of(step.fault), remedy=remedy)
