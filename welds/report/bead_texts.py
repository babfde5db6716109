"""A bead in words for people and as JSON for programs."""

from welds.advice.heat.bead import Bead, Range
from welds.advice.heat.picture import picture_json
from welds.language import figure, tr
from welds.quantities.display import show
from welds.quantities.units import Units

SCHEMA = "welds.bead/1"


def bead_json(bead: Bead) -> dict[str, object]:
    """Return the bead as the contract has it, always metric, with the bands the model's error makes."""
    efficiency = bead.efficiency
    found: dict[str, object] = {
        "schema": SCHEMA,
        "fused_width_mm": round(bead.fused_width_mm, 2),
        "fused_depth_mm": round(bead.fused_depth_mm, 2),
        "root_width_mm": round(bead.root_width_mm, 2),
        "pool_length_mm": round(bead.pool_length_mm, 1),
        "full_penetration": bead.full_penetration,
        "burn_through_margin": round(bead.burn_through_margin, 3),
        "heat_input_kj_mm": round(bead.heat_input_kj_mm, 4),
        "error": bead.error,
        "bands": {
            "fused_width_mm": _band(bead.width_mm),
            "fused_depth_mm": _band(bead.depth_mm),
            "efficiency": [round(each, 3) for each in (efficiency.low, efficiency.middle, efficiency.high)],
            "current_a": {
                "melts": round(bead.surface_current_a, 1),
                "melts_through": round(bead.through_current_a, 1),
                "falls_out": round(bead.collapse_current_a, 1),
            },
        },
        "arc_voltage_v": round(bead.voltage_v, 1),
        "trends": list(bead.trends),
        "picture": picture_json(bead),
    }
    if bead.cooling_t85_s is not None:
        found["cooling_t85_s"] = round(bead.cooling_t85_s, 2)
    if bead.deposited_mm2 is not None:
        found["deposited_mm2"] = round(bead.deposited_mm2, 1)
    if bead.fillet_leg_mm is not None:
        found["fillet_leg_mm"] = round(bead.fillet_leg_mm, 1)
    if bead.heat_affected_width_mm is not None:
        found["heat_affected_width_mm"] = round(bead.heat_affected_width_mm, 2)
    return found


def bead_text(bead: Bead, units: Units) -> str:
    """Return the bead as a few lines."""
    depth = _length(bead.depth_mm, units)
    if bead.full_penetration:
        depth = tr("melts right through ({width} wide at the root)", width=_one(bead.root_width_mm, units))
    lines = [
        tr("Fused width    {length}", length=_length(bead.width_mm, units)),
        tr("Fused depth    {depth}", depth=depth),
        tr("Burn-through   {margin}", margin=_margin(bead)),
        tr(
            "Current        {through:.0f} A just melts through, {collapse:.0f} A falls out",
            through=bead.through_current_a,
            collapse=bead.collapse_current_a,
        ),
        tr("Pool           {length} long", length=_one(bead.pool_length_mm, units)),
        tr(
            "Heat input     {heat} (EN 1011-1)",
            heat=_shown(bead.heat_input_kj_mm, "kJ/mm", "heat_input", units),
        ),
    ]
    if bead.deposited_mm2 is not None:
        added = tr("Added metal    {area} by the wire feed", area=_area(bead.deposited_mm2, units))
        if bead.fillet_leg_mm is not None:
            added += ", " + tr("a fillet of {length} leg", length=_one(bead.fillet_leg_mm, units))
        lines.append(added)
    if bead.cooling_t85_s is not None:
        lines.append(
            tr(
                "Cooling        {time:.1f} s from 800 to 500 degC (EN 1011-2)",
                time=bead.cooling_t85_s,
            )
        )
    if bead.heat_affected_width_mm is not None and bead.affected_c is not None:
        wide = _one(bead.heat_affected_width_mm, units)
        limit = _shown(bead.affected_c, "degC", "preheat", units)
        lines.append(tr("Heat-affected  {wide} beside the bead, above {limit}", wide=wide, limit=limit))
    efficiency = bead.efficiency
    lines += [
        tr(
            "Reckoned with  {voltage:.1f} V, of which {middle:.0%} reach the work ({low:.0%}"
            " to {high:.0%}): {text}",
            voltage=bead.voltage_v,
            middle=efficiency.middle,
            low=efficiency.low,
            high=efficiency.high,
            text=efficiency.text,
        ),
        tr(
            "Conduction only, give or take {error:.0%} in the heat: to think with, not a procedure.",
            error=bead.error,
        ),
        *(tr("Trend only: {text}", text=text) for text in bead.trends),
    ]
    return "\n".join(lines)


def _band(found: Range) -> list[float]:
    return [round(value, 2) for value in (found.low, found.middle, found.high)]


def _margin(bead: Bead) -> str:
    margin = bead.burn_through_margin
    if margin < 0.0:
        return tr("falls out: {share:.0%} less current would hold it", share=-margin)
    return tr("{margin:.0%} more current before it falls out", margin=margin)


def _length(found: Range, units: Units) -> str:
    middle, low, high = (_one(value, units) for value in (found.middle, found.low, found.high))
    return tr("{middle} ({low} to {high})", middle=middle, low=low, high=high)


def _one(value_mm: float, units: Units) -> str:
    return figure(f"{value_mm:.1f} mm" if units is Units.METRIC else f"{value_mm / 25.4:.3f} in")


def _area(value_mm2: float, units: Units) -> str:
    return figure(f"{value_mm2:.1f} mm2" if units is Units.METRIC else f"{value_mm2 / 25.4**2:.4f} in2")


def _shown(value: float, unit: str, kind: str, units: Units) -> str:
    shown = show(value, unit, kind, units)
    return f"{shown.text} {shown.unit_text}"
