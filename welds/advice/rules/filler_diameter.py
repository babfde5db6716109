"""Filler rod diameter."""

from welds.advice.case import Case, SoFar
from welds.advice.nearby import pair_of, read_nearby
from welds.advice.setting import Choice, Reason, Setting
from welds.advice.sizes import nearest_size
from welds.advice.tig_rows import rows_of_family
from welds.language import tr
from welds.quantities.sizes import ROD
from welds.reference.basis import Basis

OF_THICKNESS = 0.75
"""Shop rule where no row prints a rod: a little thinner than the sheet."""

SOLD_TIG_MM = tuple(size for size in ROD if size >= 1.0)
USUAL_MM = (1.0, 1.2, 1.6, 2.4, 3.2, 4.0, 4.8)
"""What most shops keep; the sizes between are offered as alternatives."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the sold rod nearest to what rows of about this thickness print."""
    rows = rows_of_family(case, so_far)
    found = read_nearby(rows, case.effective_mm, lambda row: pair_of(row.filler_min_mm, row.filler_max_mm))
    wanted = found.start if found else OF_THICKNESS * case.effective_mm
    metal = str(so_far["filler_metal"].value)
    shelf = case.equipment.shelf.rod_sizes(metal)
    free = nearest_size(wanted, USUAL_MM)
    size = nearest_size(wanted, SOLD_TIG_MM, shelf) if shelf else free
    reasons = []
    if found:
        reasons.append(
            Reason(
                tr("rods printed for sheet of about this thickness, nearest sold size"),
                source=found.sources[0],
            )
        )
    else:
        reasons.append(Reason(tr("about three quarters of the sheet"), OF_THICKNESS, "COMMON_PRACTICE"))
    if size != free:
        reasons.append(
            Reason(
                tr(
                    "the shelf has no {free:g} mm {metal} rod: feed {pace}",
                    free=free,
                    metal=metal,
                    pace=_pace(size, free),
                )
            )
        )
    place = SOLD_TIG_MM.index(free)
    neighbours = SOLD_TIG_MM[max(0, place - 1) : place + 2]
    return Setting(
        "filler_diameter",
        found.basis if found else Basis.PRACTICE,
        tuple(reasons),
        found.sources if found else ("COMMON_PRACTICE",),
        found.rows if found else (),
        value=size,
        unit="mm",
        alternatives=tuple(Choice(each) for each in neighbours if each != size),
    )


def _pace(size_mm: float, wanted_mm: float) -> str:
    return (
        tr("a thinner one faster")
        if size_mm < wanted_mm
        else tr("a thicker one slower, it cools the pool more")
    )
