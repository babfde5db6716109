"""MIG welding current: what the sheet asks for, within what the wire carries."""

from dataclasses import replace
from math import ceil, floor

from welds.advice.alloy import build_alloy_factors
from welds.advice.case import Case, SoFar
from welds.advice.factors import joint_factor, position_factor
from welds.advice.limits import clip, fit
from welds.advice.mig_seams import REFERENCE_WIRE_MM, Bench, build_mig_seams
from welds.advice.plug_rows import between_plug_rows, has_plug_rows
from welds.advice.pooling import PUBLISHED_LIMIT, UNPUBLISHED_LIMIT
from welds.advice.reach import refuse_hopeless
from welds.advice.reading_words import alone, taken_from
from welds.advice.request import Joint, Process
from welds.advice.setting import Reason, Setting
from welds.advice.unlike_thickness import unlike_thickness
from welds.advice.words import both
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.basis import Basis, weakest
from welds.reference.names import all_of, id_or_name, name_of
from welds.reference.settings import PlugRule, WireRange


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the current band; raises NotCoveredError where no schedule reaches."""
    if case.request.joint is Joint.PLUG and has_plug_rows(case.tables, case.family):
        return _printed_plug(case)
    return _seam(case, so_far)


def _seam(case: Case, so_far: SoFar) -> Setting:
    transfer = str(so_far["transfer"].value)
    wire = float(so_far["wire_diameter"].start)
    bench = Bench(case.family, transfer)
    seams = case.tables.derived(build_mig_seams)
    reading = seams.curves[bench].at(case.effective_mm)
    reasons = [
        Reason(
            tr(
                "butt in {metal}, flat, {thickness}, {transfer}, {wire:g} mm wire: {current:.0f} A {where}",
                metal=name_of(case.family),
                thickness=both(case.effective_mm),
                transfer=id_or_name(transfer),
                wire=REFERENCE_WIRE_MM,
                current=reading.middle,
                where=taken_from(reading),
            ),
            source=reading.documents[0],
        )
    ]
    reasons += alone(reading)
    grades = [reading.basis]
    rows = [point.row_id for point in reading.points]
    factor = 1.0
    if wire != REFERENCE_WIRE_MM:
        ratio = (wire / REFERENCE_WIRE_MM) ** seams.wire_exponent[bench]
        reasons.append(
            Reason(
                tr(
                    "{wire:g} mm wire instead of {usual:g} mm",
                    wire=wire,
                    usual=REFERENCE_WIRE_MM,
                ),
                ratio,
            )
        )
        factor *= ratio
    if case.thick_mm > case.thin_mm:
        reasons.append(unlike_thickness(case))
        grades.append(Basis.PRACTICE)
    alloy = case.tables.derived(build_alloy_factors)
    own = [alloy[metal.id] for metal in case.metals if metal.family == case.family]
    if abs(own[0] - 1.0) >= 0.005:
        reasons.append(
            Reason(
                tr(
                    "{alloy} against the family: conductivity, heat capacity and melting range (a third"
                    " of the computed difference)",
                    alloy=case.metals[0].alloy,
                ),
                own[0],
            )
        )
        factor *= own[0]
    if case.request.joint is Joint.PLUG:
        rule = next(
            row
            for row in case.tables.records(PlugRule)
            if row.topic == "current-over-seam" and row.family == case.family
        )
        reasons.append(Reason(rule.note, rule.value, rule.source_id))
        factor *= rule.value
        grades.append(rule.basis)
    else:
        joint = joint_factor(case.tables, Process.MIG, case.family, "any", case.request.joint)
        if joint.value != 1.0 or joint.why:
            reasons.append(
                Reason(f"{id_or_name(case.request.joint)}: {joint.why}", joint.value, joint.sources[0])
            )
            factor *= joint.value
            rows += joint.rows
    place = position_factor(
        case.tables, Process.MIG, case.request.joint, case.position, reading.middle * factor
    )
    if place.value != 1.0:
        reasons.append(
            Reason(
                tr("position {position}: {why}", position=case.position, why=place.why),
                place.value,
                place.sources[0],
            )
        )
        factor *= place.value
        grades.append(place.basis)
    band = Band(reading.low * factor, reading.middle * factor, reading.high * factor, "A")
    band, wire_reasons = within_wire(case, transfer, wire, band)
    band = _whole(band)
    refuse_hopeless(case, band)
    fitted, limits = fit(band, case.equipment.machine, "current", "A")
    return Setting(
        "current",
        weakest(grades),
        (*reasons, *wire_reasons, *limits),
        tuple(dict.fromkeys((*reading.documents, *(r.source for r in reasons if r.source)))),
        tuple(dict.fromkeys(rows)),
        band=fitted,
        wanted=band,
    )


def within_wire(case: Case, transfer: str, wire: float, band: Band) -> tuple[Band, list[Reason]]:
    """Return the band within what the wire carries, and one reason for each limit that bit."""
    ranges = [
        row
        for row in case.tables.records(WireRange)
        if (row.family, row.transfer, row.wire_mm) == (case.family, transfer, wire)
    ]
    highs = [row.current_max_a for row in ranges if row.current_max_a is not None]
    if not ranges:
        return band, []
    lowest = min(row.current_min_a for row in ranges)
    clipped, reasons = clip(band, tr("{wire:g} mm wire", wire=wire), None, max(highs, default=None), "A")
    reasons = [replace(each, source=ranges[0].source_id) for each in reasons]
    if clipped.start < lowest:
        text = tr(
            "{wire:g} mm wire is usual from {lowest:g} A: a thinner one burns steadier here",
            wire=wire,
            lowest=lowest,
        )
        reasons.append(Reason(text, source=ranges[0].source_id))
    return clipped, reasons


def _whole(band: Band) -> Band:
    low, high = ceil(band.low), floor(band.high)
    low, high = min(low, high), max(low, high)
    return Band(low, min(max(round(band.start), low), high), high, "A")


def _printed_plug(case: Case) -> Setting:
    start, used = between_plug_rows(
        case.tables, case.family, case.first_mm, lambda row: (row.current_min_a + row.current_max_a) / 2
    )
    ends = all_of([both(each) for each in dict.fromkeys(row.thickness_mm for row in used)])
    reason = Reason(tr("plug rows for top sheets of {ends}", ends=ends), source=used[0].source_id)
    width = PUBLISHED_LIMIT if used[0].basis.is_published else UNPUBLISHED_LIMIT
    band = _whole(Band(start * (1 - width), start, start * (1 + width), "A"))
    refuse_hopeless(case, band)
    fitted, limits = fit(band, case.equipment.machine, "current", "A")
    return Setting(
        "current",
        used[0].basis,
        (reason, *limits),
        tuple(dict.fromkeys(row.source_id for row in used)),
        tuple(row.row_id for row in used),
        band=fitted,
        wanted=band,
    )
