"""What the picture rests on: assumptions, fitted constants, sources and grades, in words."""

from welds.advice.heat.bead import Bead
from welds.advice.heat.calibration import AC_SPREAD, FITTED, MODEL_ERROR
from welds.advice.request import Joint
from welds.language import mark, tr
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.reference.tables import Tables

_GRADES = {
    Basis.PRINTED: mark("read in the document itself"),
    Basis.QUOTED: mark("read in another document that cites it"),
    Basis.DERIVED: mark("worked out from printed values"),
    Basis.PRACTICE: mark("shop practice, no document"),
    Basis.RECALLED: mark("from memory, not checked against print"),
}


def grounds_text(bead: Bead, tables: Tables, units: Units) -> str:
    """Return the whole account of one picture."""
    efficiency, metal, model = bead.efficiency, bead.model.metal, bead.model
    melting = show(metal.melting_c, "degC", "preheat", units)
    source = tables.sources.get(efficiency.source)
    citation = source.citation if source is not None else tr("this program's own fit")
    parts = [
        tr("WHAT IS RECKONED"),
        tr(
            "- Arc: {voltage:.1f} V times {current:.0f} A. Of that {middle:.0%} ({low:.0%}"
            " to {high:.0%}) reaches the work ({text}).",
            voltage=bead.voltage_v,
            current=bead.settings.current_a,
            middle=efficiency.middle,
            low=efficiency.low,
            high=efficiency.high,
            text=efficiency.text,
        ),
        tr("  Grade: {grade}. Source: {citation}.", grade=tr(_GRADES[efficiency.basis]), citation=citation),
        tr(
            "- The heat spreads by conduction only, from a round spot that travels steadily over a plate of"
            " finite thickness. Stirring in the pool is left out."
        ),
        tr(
            "- The metal's properties are means from room temperature to melting; the heat of"
            " fusion is spread over that rise. What melts is drawn at the solidus, {melting}:"
            " {conductivity:.0f} W/(m K), {density:.0f} kg/m3.",
            melting=melting,
            conductivity=metal.conductivity_w_mk,
            density=metal.density_kg_m3,
        ),
        tr(
            "- Each piece is seen as a plate of its own that takes a share of the heat by its"
            " ways out and its thickness; here {shares}. The figures below the picture are of"
            " the piece that melts through first.",
            shares=_shares(bead),
        ),
        tr(
            "- Falling out: the sag of the liquid under its own weight over the open root, plus what arc and"
            " drops press in, against a quarter of the thickness (the limit of ISO 5817 level D)."
        ),
        tr(
            "- Added metal: for MIG its section follows from the wire feed that the current melts, and the"
            " heat the wire takes is left out of the plate; for TIG, corner and edge it is drawn at a usual"
            " size."
        ),
        "",
        tr("HOW GOOD IT IS"),
        tr(
            "- Error: {error:.0%} in the heat is typical. Two in three of 108 printed"
            " butts lie this near. The dotted lines and the smeared borders of the gauge show it.",
            error=MODEL_ERROR,
        ),
        tr(
            "- Fitted, once for all metals, on printed single-pass butt rows: AC efficiency"
            " {efficiency:g} (give or take {spread:g}; published values lie lower), spot"
            " {tig_spot:g} mm for TIG and {mig_spot:g} mm for MIG, dent of a MIG arc"
            " {mig_dent:g} mm at 100 A.",
            efficiency=FITTED.ac_efficiency,
            spread=AC_SPREAD,
            tig_spot=FITTED.tig_spot_mm,
            mig_spot=FITTED.mig_spot_mm,
            mig_dent=FITTED.mig_dent_mm,
        ),
        tr(
            "- Fillet, corner and edge joints were not fitted: the error there is not known and may be"
            " larger."
        ),
        *_joint_notes(bead.request.joint),
        "",
        tr("TRENDS ONLY (a direction, no published size)"),
        tr(
            "- AC frequency and balance, counted from the card's own figures: a higher frequency narrows the"
            " arc, more electrode negative leaves less heat in the tungsten and more in the work."
        ),
        tr("- Voltage: until it is moved by hand it follows the current along the load line of IEC 60974-1."),
        "",
        tr("STANDARDS USED"),
        tr(
            "- Heat input: EN 1011-1. Cooling time t8/5 (carbon steel only): EN 1011-2, shape factors from"
            " memory."
        ),
        *_affected(bead, units),
        "",
        tr(
            "To think with, not a procedure. Try it on scrap of the same metal and thickness, cut it"
            " and look."
        ),
    ]
    if model.gap_mm:
        parts.insert(
            5,
            tr(
                "- Gap: the wire fills it, both edges melt back beside it, and the part of the spot that"
                " falls into it heats them over the whole thickness."
            ),
        )
    if model.start_c > 25.0:
        warm = show(model.start_c, "degC", "preheat", units)
        parts.insert(3, tr("- The parts start at {warm}.", warm=warm))
    return "\n".join(parts)


def _shares(bead: Bead) -> str:
    first, other = bead.pieces
    if first.share == other.share and first.thickness_mm == other.thickness_mm:
        return tr("both the same")
    return tr(
        "the first piece ({thickness:.2f} mm) {share:.0%} for each way out, the other"
        " ({other_thickness:.2f} mm) {other_share:.0%}",
        thickness=first.thickness_mm,
        share=first.share / 2.0,
        other_thickness=other.thickness_mm,
        other_share=other.share / 2.0,
    )


def _joint_notes(joint: Joint) -> list[str]:
    if joint in (Joint.OUTSIDE_CORNER, Joint.EDGE):
        return [
            tr(
                "- Corner and edge: a bare edge melts away sooner than this picture, which sees a sheet,"
                " says."
            )
        ]
    if joint is Joint.BUTT:
        return []
    notes = [
        tr(
            "- Fillets: what the arc itself melts is drawn. Liquid metal that flows out from under it fuses a"
            " little further, which is not reckoned."
        )
    ]
    if joint is Joint.LAP:
        notes.append(
            tr("- Lap: the upper edge meets the arc from two sides and melts back sooner than drawn.")
        )
    return notes


def _affected(bead: Bead, units: Units) -> list[str]:
    if bead.affected_c is None:
        return [
            tr("- No temperature is stated from which this metal changes: no heat-affected zone is drawn.")
        ]
    limit = show(bead.affected_c, "degC", "preheat", units)
    return [
        tr(
            "- Heat-affected: above {limit}, the metal is no longer what it was (limits from memory).",
            limit=limit,
        )
    ]
