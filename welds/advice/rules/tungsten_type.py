"""Which tungsten to put in the torch."""

from welds.advice.case import Case, SoFar
from welds.advice.setting import Choice, Reason, Setting
from welds.reference.tungsten import tungstens_for


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the best standing type that suits the current type, from the shelf where it is stated."""
    polarity = str(so_far["polarity"].value)
    fitting = tungstens_for(case.tables, polarity)
    best = fitting[0]
    stocked = [each for each in fitting if each.iso_code in case.equipment.shelf.types_of_tungsten]
    chosen = stocked[0] if stocked else best
    reasons = [
        Reason(
            f"{chosen.oxide} serves AC and DC alike, starts well and is not radioactive"
            if not chosen.is_radioactive
            else f"{chosen.oxide} is radioactive when ground: keep the dust out of you",
            source=chosen.source_id,
        )
    ]
    if chosen is not best:
        reasons.insert(0, Reason(f"on the shelf; {best.iso_code} would be first choice"))
    return Setting(
        "tungsten_type",
        chosen.basis,
        tuple(reasons),
        (chosen.source_id,),
        value=chosen.iso_code,
        text=f"{chosen.colour} band, {chosen.aws_code}" if chosen.aws_code else f"{chosen.colour} band",
        alternatives=tuple(
            Choice(
                each.iso_code, f"{each.colour} band" + (", radioactive dust" if each.is_radioactive else "")
            )
            for each in fitting
            if each is not chosen and not each.is_radioactive
        )[:3],
    )
