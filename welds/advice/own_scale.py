"""A figure as the machine's own scale reads it: a dial, percent electrode positive, a cleaning switch."""

from collections.abc import Mapping
from dataclasses import replace
from itertools import pairwise

from welds.advice.equipment import SCALE, Control, Machine
from welds.advice.setting import Reason, Setting
from welds.language import figure as written
from welds.language import tr

SAME = 1e-6


def with_readings(settings: Mapping[str, Setting], machine: Machine) -> dict[str, Setting]:
    """Return the settings, those with a scale of their own on this machine with its reading beside them."""
    shown = dict(settings)
    for control in machine.controls:
        setting = settings.get(control.setting)
        if setting is None or setting.band is None or not control.marks:
            continue
        words = in_words(control, setting.band.start)
        ends = [in_words(control, each) for each in (setting.band.low, setting.band.high)]
        span = "" if ends[0] == ends[1] else tr("; the range is {low} to {high}", low=ends[0], high=ends[1])
        reason = Reason(tr("set {reading}{span}", reading=words, span=span))
        shown[control.setting] = replace(setting, own_scale=words, reasons=(*setting.reasons, reason))
    return shown


def in_words(control: Control, figure: float) -> str:
    """Return the reading with the name of its scale: "4 on this machine's dial"."""
    read = reading(control, figure)
    if control.scale.startswith("%"):
        return f"{read} {control.scale}"
    return tr(
        "{read} on this machine's {scale}",
        read=read,
        scale=tr(SCALE) if control.scale == SCALE else control.scale,
    )


def reading(control: Control, figure: float) -> str:
    """Return what the scale reads at a figure: a mark, or between two numbered marks in proportion.

    Outside the marks and between named ones it is the nearest mark.
    """
    for name, at in control.marks:
        if abs(at - figure) <= SAME:
            return name
    numbered = _numbered(control)
    if numbered:
        by_figure = sorted(numbered, key=lambda mark: mark[1])
        for (first, low), (second, high) in pairwise(by_figure):
            if low <= figure <= high:
                return written(f"{round(first + (second - first) * (figure - low) / (high - low), 1):g}")
    return min(control.marks, key=lambda mark: abs(mark[1] - figure))[0]


def _numbered(control: Control) -> list[tuple[float, float]]:
    try:
        return [(float(name.replace(",", ".")), at) for name, at in control.marks]
    except ValueError:
        return []
