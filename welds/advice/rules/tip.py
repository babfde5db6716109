"""How to grind the tungsten."""

from welds.advice.case import Case, SoFar
from welds.advice.setting import Reason, Setting
from welds.advice.words import Phrase
from welds.language import mark, tr
from welds.reference.basis import Basis
from welds.reference.tungsten import TungstenTip

BLUNT, LONG = mark("30 to 45 deg cone, small flat"), mark("20 to 30 deg cone, small flat")
CONE = mark("{angle:.0f} deg cone, {flat:g} mm flat")


def advise(case: Case, so_far: SoFar) -> Setting:
    """AC: a cone with a small flat that rounds over; DC: the cone the current asks for."""
    if so_far["polarity"].value == "AC":
        reason = Reason(
            tr(
                "a blunted point keeps its shape on a square wave; a large ball wanders and is for"
                " pure tungsten"
            ),
            source="TWI_FAQ_POWER",
        )
        flat = Reason(
            tr("flat of about a third of the diameter, ground lengthwise"), source="COMMON_PRACTICE"
        )
        return Setting(
            "tip",
            Basis.PRACTICE,
            (reason, flat),
            ("TWI_FAQ_POWER", "COMMON_PRACTICE"),
            value=BLUNT,
        )
    current = so_far["current"].figure
    diameter = float(so_far["tungsten_diameter"].start)
    tips = [each for each in case.tables.records(TungstenTip) if abs(each.diameter_mm - diameter) < 0.05]
    able = [each for each in tips if each.current_max_a >= current.start] or tips[-1:]
    if not able:
        reason = Reason(tr("about two and a half diameters long"), source="COMMON_PRACTICE")
        return Setting("tip", Basis.PRACTICE, (reason,), ("COMMON_PRACTICE",), value=LONG)
    tip = able[0]
    reason = Reason(
        tr(
            "this cone is rated {low:.0f} to {high:.0f} A; a sharper one is"
            " softer on thin edges, a blunter one lasts",
            low=tip.current_min_a,
            high=tip.current_max_a,
        ),
        source=tip.source_id,
    )
    return Setting(
        "tip",
        tip.basis,
        (reason,),
        (tip.source_id,),
        (tip.row_id,),
        value=Phrase(CONE, angle=tip.tip_angle_deg, flat=tip.tip_diameter_mm),
    )
