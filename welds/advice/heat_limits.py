"""The preheat and interpass rows that bind a case."""

from welds.advice.case import Case
from welds.reference.heat_limits import HeatLimit


def limits_for(case: Case) -> list[HeatLimit]:
    """Return for each metal the row of its group that holds the thicker piece, where there is one."""
    found = []
    for metal in case.metals:
        found += [
            row
            for row in case.tables.records(HeatLimit)
            if (row.family, row.group) == (metal.family, metal.group)
            and row.thickness_min_mm < case.thick_mm <= row.thickness_max_mm
        ][:1]
    return found
