"""Why two pieces of unlike thickness ask for a current between theirs."""

from welds.advice.case import Case
from welds.advice.setting import Reason
from welds.advice.words import both


def unlike_thickness(case: Case) -> Reason:
    """Return the reason that the current of a joint between unlike thicknesses rests on."""
    return Reason(
        f"{both(case.thin_mm)} on {both(case.thick_mm)} draws heat like two pieces of"
        f" {both(case.effective_mm)}; aim at the thicker one",
        source="COMMON_PRACTICE",
    )
