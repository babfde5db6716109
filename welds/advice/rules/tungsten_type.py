"""Which tungsten to put in the torch."""

from welds.advice.case import Case, SoFar
from welds.advice.setting import Choice, Reason, Setting
from welds.language import tr
from welds.reference.names import name_of
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
            tr(
                "{oxide} serves AC and DC alike, starts well and is not radioactive",
                oxide=name_of(chosen.oxide),
            )
            if not chosen.is_radioactive
            else tr(
                "{oxide} is radioactive when ground: keep the dust out of you", oxide=name_of(chosen.oxide)
            ),
            source=chosen.source_id,
        )
    ]
    if chosen is not best:
        reasons.insert(
            0, Reason(tr("on the shelf; {tungsten} would be first choice", tungsten=best.iso_code))
        )
    return Setting(
        "tungsten_type",
        chosen.basis,
        tuple(reasons),
        (chosen.source_id,),
        value=chosen.iso_code,
        text=tr("{colour} band, {code}", colour=chosen.colour, code=chosen.aws_code)
        if chosen.aws_code
        else tr("{colour} band", colour=chosen.colour),
        alternatives=tuple(
            Choice(
                each.iso_code,
                tr("{colour} band", colour=each.colour)
                + (tr(", radioactive dust") if each.is_radioactive else ""),
            )
            for each in fitting
            if each is not chosen and not each.is_radioactive
        )[:3],
    )
