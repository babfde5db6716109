"""The MIG schedule rows that speak for a case."""

from welds.advice.case import Case
from welds.advice.mig_seams import Bench, build_mig_seams
from welds.reference.schedules import MigSchedule


def rows_of_transfer(case: Case, transfer: str) -> tuple[MigSchedule, ...]:
    """Return pooled seam rows of the case's ruling family and transfer."""
    return case.tables.derived(build_mig_seams).rows.get(Bench(case.family, transfer), ())
