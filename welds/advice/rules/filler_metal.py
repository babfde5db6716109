"""Which filler metal, by pair and goal."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Goal, Process
from welds.advice.setting import Choice, Reason, Setting
from welds.language import mark, tr
from welds.reference.fillers import filler_choice, find_filler

CORNER_NOTE = mark(
    "edges of a corner can be tacked without filler but do not always fuse: keep the rod at hand"
)


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the first filler of the pair, or one on the shelf with what that costs."""
    choice = case.filler
    is_rod = case.request.process is Process.TIG
    shelf = case.equipment.shelf.metals_of_rods if is_rod else case.equipment.shelf.metals_of_wires
    reasons = [Reason(choice.why, source=choice.sources[0] if choice.sources else None)]
    chosen = choice.first
    if shelf and chosen not in shelf:
        swap = next((each for each in _spares(case) if each in shelf), None)
        if swap is None:
            reasons.append(
                Reason(tr("{chosen} is not on the shelf, nor is a second choice: buy it", chosen=chosen))
            )
        else:
            cost = _swap_cost(case, chosen, swap)
            reasons.append(
                Reason(
                    tr(
                        "{chosen} is not on the shelf; {swap} will do, but: {cost}",
                        chosen=chosen,
                        swap=swap,
                        cost=cost,
                    )
                )
            )
            chosen = swap
    reasons += [Reason(tr("avoid {filler}", filler=each)) for each in choice.avoid]
    if case.request.joint.value.endswith("corner"):
        reasons.append(Reason(tr(CORNER_NOTE), source="COMMON_PRACTICE"))
    if choice.note:
        reasons.append(Reason(choice.note))
    seconds = [each for each in (choice.first, *choice.seconds) if each != chosen]
    return Setting(
        "filler_metal" if is_rod else "wire",
        choice.basis,
        tuple(reasons),
        choice.sources,
        choice.rows,
        value=chosen,
        text=find_filler(case.tables, chosen).iso,
        alternatives=tuple(Choice(each, _cost(case, each)) for each in seconds),
    )


def _spares(case: Case) -> tuple[str, ...]:
    """Return what else fuses the pair: the row's second choices, then those of the pair without the goal."""
    general = filler_choice(case.tables, case.first, case.other)
    spares = (*case.filler.seconds, general.first, *general.seconds)
    return tuple(each for each in dict.fromkeys(spares) if each not in case.filler.avoid)


def _swap_cost(case: Case, first: str, swap: str) -> str:
    """Return what changes in service: colour when anodised, warmth it stands, else what the swap is for."""
    wanted, got = find_filler(case.tables, first), find_filler(case.tables, swap)
    costs = []
    if got.anodised_colour and got.anodised_colour != wanted.anodised_colour:
        costs.append(
            tr(
                "the bead turns {colour} when anodised ({other_colour} before)",
                colour=got.anodised_colour,
                other_colour=wanted.anodised_colour,
            )
        )
    if got.max_service_c is not None and wanted.max_service_c is None:
        costs.append(tr("not for service above {hottest:g} degC", hottest=got.max_service_c))
    return "; ".join(costs) or tr("it is for {use}", use=got.use)


def _cost(case: Case, name: str) -> str:
    filler = find_filler(case.tables, name)
    if case.request.goal is Goal.ANODISED_COLOUR and filler.anodised_colour:
        return tr("{colour} after anodising", colour=filler.anodised_colour)
    return filler.use
