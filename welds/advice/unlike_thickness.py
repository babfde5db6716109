"""Why two pieces of unlike thickness ask for a current between theirs."""

from welds.advice.case import Case
from welds.advice.setting import Reason
from welds.advice.words import both
from welds.language import tr


def unlike_thickness(case: Case) -> Reason:
    """Return the reason that the current of a joint between unlike thicknesses rests on."""
    return Reason(
        tr(
            "{thin} on {thick} draws heat like two pieces of {equal}; aim at the thicker one",
            thin=both(case.thin_mm),
            thick=both(case.thick_mm),
            equal=both(case.effective_mm),
        ),
        source="COMMON_PRACTICE",
    )
