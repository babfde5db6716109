"""The TIG schedule rows that speak for a case's lesser figures."""

from welds.advice.case import Case, SoFar
from welds.advice.gas_choice import choose_gas, tig_gas_class
from welds.advice.tig_seams import build_tig_seams
from welds.reference.schedules import TigSchedule


def rows_of_family(case: Case, so_far: SoFar) -> tuple[TigSchedule, ...]:
    """Return pooled rows of the case's material, current type and gas, whatever the hand."""
    seams = case.tables.derived(build_tig_seams)
    polarity = str(so_far["polarity"].value)
    ruling = next(metal for metal in case.metals if metal.family == case.family)
    wanted = seams.series(ruling, polarity, tig_gas_class(choose_gas(case)[0]), case.request.hand)
    return seams.rows.get((wanted.material, wanted.polarity, wanted.gas), ())


def rows_of_hand(case: Case, so_far: SoFar, hand: str) -> tuple[TigSchedule, ...]:
    """Return those of the rows that go with one hand, or with any."""
    return tuple(row for row in rows_of_family(case, so_far) if row.hand in (hand, "any"))
