"""What to do before the arc, in order."""

from welds.advice.case import Case
from welds.advice.request import Coating, Joint
from welds.advice.setting import Step
from welds.language import mark, tr
from welds.reference.basis import Basis
from welds.reference.cleaning import cleaning_steps

CASE_OF_COATING = {
    Coating.GALVANISED: "zinc",
    Coating.ZINC_PLATED: "zinc",
    Coating.ZINC_PRIMER: "zinc",
    Coating.PAINT: "paint",
    Coating.POWDER_COAT: "paint",
    Coating.OLD_PAINT: "toxic-coating",
    Coating.ANODISED: "anodised",
}
LOOK_BEHIND = mark(
    "Look behind: plug only where the sheet behind is sound. Step-drill to round, take the burr off behind."
)
FIT = mark("Deburr, fit tight and clamp; return clamp on bare metal beside the joint.")
COPPER = mark("Back it with copper, clamped tight.")
TEST_BEAD = mark("Run a test bead on scrap of the same sheet.")
BACKED_MM = 2.0


def preparation_of(case: Case) -> tuple[Step, ...]:
    """Return the cleaning steps for the metals and what is on them, then the joint's own steps."""
    cases = {CASE_OF_COATING[each] for each in case.request.coatings if each in CASE_OF_COATING}
    for metal in case.metals:
        if metal.group == "cast":
            cases.add("cast")
        if metal.group == "galvanised":
            cases.add("zinc")
    steps = [
        Step(row.step, row.basis, row.source_id)
        for kind in ("step", "filler")
        for family in sorted(case.families)
        for row in cleaning_steps(case.tables, family, case.request.process, cases, kind)
    ]

    def practice(text: str) -> Step:
        return Step(tr(text), Basis.PRACTICE, "COMMON_PRACTICE")

    if case.request.joint is Joint.PLUG:
        steps.append(practice(LOOK_BEHIND))
    steps.append(practice(FIT))
    if case.thin_mm <= BACKED_MM and case.request.joint in (Joint.BUTT, Joint.PLUG):
        steps.append(practice(COPPER))
    steps.append(practice(TEST_BEAD))
    return tuple(dict.fromkeys(steps))
