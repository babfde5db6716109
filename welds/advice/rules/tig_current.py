"""TIG welding current: base figure from the schedules, then joint, position, alloy, hand and machine."""

from dataclasses import replace
from math import ceil, exp, floor, log

from welds.advice.alloy import build_alloy_factors
from welds.advice.case import Case, SoFar
from welds.advice.factors import joint_factor, position_factor
from welds.advice.gas_choice import choose_gas, tig_gas_class
from welds.advice.limits import fit
from welds.advice.pooling import Reading
from welds.advice.reach import refuse_hopeless
from welds.advice.reading_words import alone, taken_from
from welds.advice.request import Hand, Joint, Process
from welds.advice.setting import Reason, Setting
from welds.advice.tig_seams import Series, TigSeams, build_tig_seams
from welds.advice.unlike_thickness import unlike_thickness
from welds.advice.words import both
from welds.errors import NotCoveredError
from welds.language import mark, tr
from welds.quantities.band import Band
from welds.reference.basis import Basis, weakest
from welds.reference.metals import Metal
from welds.reference.names import all_of, id_or_name, name_of

NOTICEABLE = 0.03
"""A factor nearer to one than this cannot lower the grade of the figure."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the current band; raises NotCoveredError where no schedule reaches."""
    band, reasons, basis, rows, sources = demand(case, str(so_far["polarity"].value), case.effective_mm)
    refuse_hopeless(case, band)
    fitted, limits = fit(band, case.equipment.machine, "current", "A")
    return Setting("current", basis, (*reasons, *limits), sources, rows, band=fitted, wanted=band)


def demand(
    case: Case, polarity: str, thickness_mm: float
) -> tuple[Band, list[Reason], Basis, tuple[str, ...], tuple[str, ...]]:
    """Return the current that metal and joint ask for at a thickness, before any machine limit."""
    seams = case.tables.derived(build_tig_seams)
    gas = tig_gas_class(choose_gas(case)[0])
    readings = [_reading(case, seams, metal, polarity, gas, thickness_mm) for metal in case.metals]
    low, start, high = (
        exp(sum(log(value) for value in values) / len(readings))
        for values in zip(*((each.low, each.middle, each.high) for each, _, _ in readings), strict=True)
    )
    reasons: list[Reason] = []
    grades: list[Basis] = []
    rows: list[str] = []
    sources: list[str] = []
    for reading, reason, more in readings:
        reasons += [reason, *more]
        grades.append(reading.basis)
        rows += [point.row_id for point in reading.points]
        sources += reading.documents
    if len(readings) > 1:
        reasons.append(Reason(tr("unlike metals: the middle between the two")))
    if case.thick_mm > case.thin_mm:
        reasons.append(unlike_thickness(case))
        grades.append(Basis.PRACTICE)
    factor = 1.0
    owner = seams.series(case.first, polarity, gas, case.request.hand, case.request.joint)
    hand = owner.hand
    joint = joint_factor(case.tables, Process.TIG, case.family, hand, case.request.joint, gas)
    if owner.joint is not Joint.BUTT:
        own = joint_factor(case.tables, Process.TIG, case.family, hand, owner.joint, gas)
        joint = replace(joint, value=joint.value / own.value)
    if case.request.joint is not owner.joint and (joint.value != 1.0 or joint.why):
        reasons.append(Reason(f"{_joint(case.request.joint)}: {joint.why}", joint.value, joint.sources[0]))
        factor *= joint.value
        rows += joint.rows
        if abs(joint.value - 1.0) >= NOTICEABLE:
            grades.append(joint.basis)
    place = position_factor(case.tables, Process.TIG, case.request.joint, case.position, start * factor)
    if place.value != 1.0:
        reasons.append(
            Reason(
                tr("position {position}: {why}", position=case.position, why=place.why),
                place.value,
                place.sources[0],
            )
        )
        factor *= place.value
        rows += place.rows
        grades.append(place.basis)
    low, start, high = low * factor, start * factor, high * factor
    if hand == "any" and case.request.hand is Hand.BRISK:
        start = (start + high) / 2.0
        reasons.append(
            Reason(tr("brisk hand: start in the upper half of the band"), source="COMMON_PRACTICE")
        )
    band = Band(ceil(low), min(max(round(start), ceil(low)), floor(high)), floor(high), "A")
    return band, reasons, weakest(grades), tuple(dict.fromkeys(rows)), tuple(dict.fromkeys(sources))


def _reading(
    case: Case, seams: TigSeams, metal: Metal, polarity: str, gas: str, thickness_mm: float
) -> tuple[Reading, Reason, list[Reason]]:
    series = seams.series(metal, polarity, gas, case.request.hand, case.request.joint)
    found = seams.reading(series, thickness_mm)
    if found is None:
        raise _not_covered(seams, series, metal, thickness_mm)
    reading, owner = found
    reason = Reason(
        tr(
            "{joint} in {metal}, flat, {thickness}{hand}: {current:.0f} A {where}",
            joint=_joint(owner.joint),
            metal=name_of(metal.family),
            thickness=both(thickness_mm),
            hand=tr(_HAND_WORDS[owner.hand]) if owner.hand in _HAND_WORDS else "",
            current=reading.middle,
            where=taken_from(reading),
        ),
        source=reading.documents[0],
    )
    more: list[Reason] = []
    factor = case.tables.derived(build_alloy_factors)[metal.id]
    if abs(factor - 1.0) >= 0.005:
        more.append(
            Reason(
                tr(
                    "{alloy} against the family: conductivity, heat capacity and melting range (a third"
                    " of the computed difference)",
                    alloy=metal.alloy,
                ),
                factor,
                metal.source_id,
            )
        )
    ratio = seams.hand_ratio(series, owner, thickness_mm)
    if series != owner:
        more.append(
            Reason(
                tr("{hand} hand at the nearest thickness both hands' rows cover", hand=name_of(series.hand)),
                ratio,
            )
        )
    elif series.hand != "any":
        more.append(_hand_reason(seams, series, thickness_mm))
    factor *= ratio
    return reading.scaled(factor), reason, [*alone(reading), *more]


def _hand_reason(seams: TigSeams, series: Series, thickness_mm: float) -> Reason:
    other = Hand.BRISK if series.hand == Hand.UNHURRIED else Hand.UNHURRIED
    twin = replace(series, hand=other.value)
    text = tr("{hand} hand: these rows go with this travel", hand=name_of(series.hand))
    if twin in seams.curves:
        ratio = seams.hand_ratio(twin, series, thickness_mm)
        text += tr(
            "; a {hand} one would take about {ratio:.2f} times the current",
            hand=name_of(twin.hand),
            ratio=ratio,
        )
    return Reason(text)


def _not_covered(seams: TigSeams, series: Series, metal: Metal, thickness_mm: float) -> NotCoveredError:
    words = tr("{polarity} TIG on {metal}", polarity=series.polarity, metal=metal.alloy)
    covered = seams.covered(series)
    if covered is None:
        held = sorted({each.material for each in seams.curves if each.polarity == series.polarity})
        return NotCoveredError(
            words,
            tr("no schedule is held; held are {held}", held=all_of([id_or_name(each) for each in held])),
        )
    thinnest, thickest = covered
    return NotCoveredError(
        f"{words}, {both(thickness_mm)}",
        tr("the schedules cover {thinnest} to {thickest}", thinnest=both(thinnest), thickest=both(thickest)),
        both(thinnest if thickness_mm < thinnest else thickest),
    )


def _joint(joint: str) -> str:
    return tr("T-joint") if joint == Joint.TEE else name_of(joint)


_HAND_WORDS = {"unhurried": mark(", unhurried hand"), "brisk": mark(", brisk hand")}
