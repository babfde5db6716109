"""The figures under the picture in words, with the model's error, and as rows of a file."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from welds.advice.heat.bead import Range, leg_mm
from welds.advice.heat.calibration import MODEL_ERROR
from welds.advice.request import Joint, Request
from welds.gui.pages.heat.knobs import Knobs
from welds.gui.pages.heat.limits import Thresholds
from welds.gui.pages.heat.live import Readings
from welds.language import figure, tr
from welds.quantities.display import show
from welds.quantities.spreadsheet import csv_text
from welds.quantities.units import Units

EVEN = 0.25
"""A band that leans further than this to one side is given by its ends, not as give or take."""


@dataclass(frozen=True, slots=True)
class FigureLine:
    """One figure: what it is, the figure, what the error makes of it."""

    name: str
    value: str
    error: str = ""


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the picture says in one sentence; `tone` is good, warn or stop."""

    text: str
    tone: str


def figure_lines(readings: Readings, request: Request, units: Units) -> tuple[FigureLine, ...]:
    """Return the figures in reading order, named after what they are in this joint.

    A sheet that ends at the joint melts to one side only, so that there half the width is told.
    """
    lines = [_depth(readings, request.joint, units), _width(readings, request, units)]
    lines.append(
        FigureLine(
            tr("Pool"),
            tr("{length} long", length=length(readings.pool_length_mm, units)),
            tr("real pools trail longer"),
        )
    )
    if readings.affected_width_mm is not None and readings.affected_c is not None:
        limit = show(readings.affected_c, "degC", "preheat", units)
        lines.append(
            FigureLine(
                tr("Heat-affected"),
                tr("{length} to each side", length=length(readings.affected_width_mm, units)),
                tr("beside the melted metal, above {limit}", limit=limit),
            )
        )
    heat = show(readings.heat_input_kj_mm, "kJ/mm", "heat_input", units)
    lines.append(FigureLine(tr("Heat input"), str(heat), tr("EN 1011-1, arc energy times process factor")))
    if readings.cooling_t85_s is not None:
        lines.append(
            FigureLine(
                tr("Cooling t8/5"),
                figure(f"{readings.cooling_t85_s:.1f} s"),
                tr("from 800 to 500 °C, EN 1011-2"),
            )
        )
    return tuple(lines)


def limits_line(thresholds: Thresholds, card: tuple[float, float] | None) -> FigureLine:
    """Return the currents that the gauge shows, for text without a gauge."""
    value = tr(
        "melts from {melts_a:.0f} A, falls out from {falls_a:.0f} A",
        melts_a=thresholds.melts_a,
        falls_a=thresholds.falls_a,
    )
    through = tr("melts through from {through_a:.0f} A", through_a=thresholds.through_a)
    band = (
        ""
        if card is None
        else tr("; the card's band is {low:.0f} to {high:.0f} A", low=card[0], high=card[1])
    )
    return FigureLine(tr("Current"), value, through + band)


def verdict(readings: Readings, thresholds: Thresholds, current_a: float, *, wants_through: bool) -> Verdict:
    """Return what a welder would say of it; within the model's error of a limit it says so."""
    if current_a > thresholds.falls_a:
        share = 1.0 - thresholds.falls_a / current_a
        said = (
            tr("Burns through: the pool falls out. {share:.0%} less current would hold it.", share=share)
            if current_a * (1.0 - MODEL_ERROR) > thresholds.falls_a
            else tr(
                "Likely burns through: the pool falls out. {share:.0%} less current would hold it.",
                share=share,
            )
        )
        return Verdict(said, "stop")
    if current_a < thresholds.melts_a:
        return Verdict(tr("Stays cold: at least one piece does not melt."), "stop")
    if current_a * (1.0 + MODEL_ERROR) > thresholds.falls_a:
        near = thresholds.falls_a / current_a - 1.0
        return Verdict(
            tr("Near burning through: {near:.0%} more current and the pool falls out.", near=near), "warn"
        )
    is_through = readings.root_width_mm > 0.0
    if wants_through and not is_through:
        return Verdict(tr("Melts, but not through to the root."), "warn")
    if current_a * (1.0 - MODEL_ERROR) < (thresholds.through_a if wants_through else thresholds.melts_a):
        said = (
            tr("Just melts through: within the model's error it may stay cold.")
            if wants_through
            else tr("Just melts both pieces: within the model's error it may stay cold.")
        )
        return Verdict(said, "warn")
    room = thresholds.falls_a / current_a - 1.0
    said = (
        tr("Melts right through and holds: {room:.0%} more current before the pool falls out.", room=room)
        if is_through
        else tr("Melts and holds: {room:.0%} more current before the pool falls out.", room=room)
    )
    return Verdict(said, "good")


def give_or_take(found: Range, units: Units, most_mm: float = float("inf")) -> str:
    """Return the error in words: a share where the band is even, its ends where it leans."""
    below, above = found.middle - found.low, found.high - found.middle
    if found.middle <= 0.0:
        return (
            tr("up to {length} at the hot end of the error", length=length(found.high, units))
            if found.high > 0.0
            else ""
        )
    if found.high >= most_mm - 1e-6:
        return tr("{length} to right through", length=length(found.low, units))
    if found.low > 0.0 and abs(above - below) <= 2.0 * EVEN * found.middle:
        share = (found.high - found.low) / (2.0 * found.middle)
        return tr("give or take {share:.0%}", share=share)
    return tr("{low} to {high}", low=length(found.low, units), high=length(found.high, units))


def length(value_mm: float, units: Units) -> str:
    """Return a length of the picture, to a tenth of a millimetre or five thousandths of an inch."""
    if units is Units.METRIC:
        return figure(f"{value_mm:.1f} mm")
    return figure(f"{round(value_mm / 25.4 / 0.005) * 0.005:.3f} in")


def numbers_csv(shown: Sequence[tuple[str, Knobs, Readings, Thresholds]], facts: Mapping[str, str]) -> str:
    """Return settings and figures as rows, always metric: one block of columns for each setting on show."""
    names = [name for name, *_rest in shown]
    rows: list[list[object]] = [["item", "unit", *names]]

    def add(item: str, unit: str, values: Sequence[float | None]) -> None:
        if any(value is not None for value in values):
            rows.append([item, unit, *("" if value is None else f"{value:.4g}" for value in values)])

    for name in dict.fromkeys(name for _title, knobs, *_rest in shown for name in knobs.knobs):
        values = [knobs.knobs[name].value if name in knobs.knobs else None for _t, knobs, *_r in shown]
        unit = next(knobs.knobs[name].unit for _t, knobs, *_r in shown if name in knobs.knobs)
        add(f"set {name}", unit, values)
    readings = [each for _title, _knobs, each, _thresholds in shown]
    for item, ranges in (
        ("fused width", [each.width_mm for each in readings]),
        ("fused depth", [each.depth_mm for each in readings]),
    ):
        add(item, "mm", [each.middle for each in ranges])
        add(f"{item}, cold end of the error", "mm", [each.low for each in ranges])
        add(f"{item}, hot end of the error", "mm", [each.high for each in ranges])
    add("root width", "mm", [each.root_width_mm for each in readings])
    add("pool length", "mm", [each.pool_length_mm for each in readings])
    add("added metal, by the wire feed", "mm2", [each.added_mm2 for each in readings])
    add("heat-affected width to each side", "mm", [each.affected_width_mm for each in readings])
    add("heat-affected above", "degC", [each.affected_c for each in readings])
    add("heat input", "kJ/mm", [each.heat_input_kj_mm for each in readings])
    add("cooling time t8/5", "s", [each.cooling_t85_s for each in readings])
    limits = [each for *_rest, each in shown]
    add("melts from", "A", [each.melts_a for each in limits])
    add("melts through from", "A", [each.through_a for each in limits])
    add("falls out from", "A", [each.falls_a for each in limits])
    add("error of the heat, give or take", "percent", [100.0 * MODEL_ERROR] * len(shown))
    rows += [[item, "", text] for item, text in facts.items()]
    return csv_text(rows)


def _depth(readings: Readings, joint: Joint, units: Units) -> FigureLine:
    deep, root = readings.depth_mm, readings.root_width_mm
    name = tr("Depth") if joint is Joint.BUTT else tr("Depth into the sheet")
    if root <= 0.0:
        return FigureLine(name, _deep(deep, units), give_or_take(deep, units, readings.thickness_mm))
    if joint is Joint.BUTT:
        value = tr("right through, {length} at the root", length=length(root, units))
    else:
        value = tr("right through, {length} on the back", length=length(root / 2.0, units))
    if deep.low < readings.thickness_mm - 1e-6:
        return FigureLine(
            name, value, tr("at the cold end of the error only {length} deep", length=length(deep.low, units))
        )
    return FigureLine(name, value, tr("over the whole of the error"))


def _width(readings: Readings, request: Request, units: Units) -> FigureLine:
    wide = readings.width_mm
    if request.joint is Joint.BUTT:
        return FigureLine(tr("Width on the face"), length(wide.middle, units), give_or_take(wide, units))
    half = Range(wide.low / 2.0, wide.middle / 2.0, wide.high / 2.0)
    name = tr("From the edge") if request.joint in (Joint.OUTSIDE_CORNER, Joint.EDGE) else tr("From the root")
    value, error = tr("{length} along the face", length=length(half.middle, units)), give_or_take(half, units)
    leg = leg_mm(request.joint, readings.added_mm2)
    if leg is not None:
        value = tr("{melted} melted, {leg} leg", melted=length(half.middle, units), leg=length(leg, units))
        error += tr("; the leg is the wire's metal, which fuses more beneath it")
    return FigureLine(name, value, error)


def _deep(found: Range, units: Units) -> str:
    return (
        tr("{length} deep", length=length(found.middle, units)) if found.middle > 0.0 else tr("nothing melts")
    )
