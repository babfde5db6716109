"""Temperature beside the bead from which the metal is no longer what it was."""

from welds.advice.case import Case

AGE_HARDENED_C, WORK_HARDENED_C = 250.0, 345.0
"""Aluminium: from here ageing is undone in seconds; from here cold work is annealed out (from memory)."""

STEEL_C = 730.0
"""Where the lattice of a plain steel begins to change: the edge of the zone a macrograph shows."""

SENSITISED_C = 650.0
"""Middle of the range in which austenitic stainless steel loses its chromium to carbides (from memory)."""


def affected_c(case: Case) -> float | None:
    """Return the temperature that bounds the heat-affected zone, None where none is stated."""
    if case.first.heat_softens == "age-hardened":
        return AGE_HARDENED_C
    if case.first.heat_softens == "work-hardened" and case.family == "aluminium":
        return WORK_HARDENED_C
    return {"carbon-steel": STEEL_C, "stainless": SENSITISED_C}.get(case.family)
