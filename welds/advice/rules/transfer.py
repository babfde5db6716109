"""How metal crosses the MIG arc."""

from welds.advice.case import Case, SoFar
from welds.advice.mig_seams import Bench, build_mig_seams
from welds.advice.request import Joint, Transfer
from welds.advice.setting import Choice, Reason, Setting
from welds.advice.words import both
from welds.errors import NotCoveredError
from welds.language import mark, tr
from welds.reference.basis import Basis
from welds.reference.names import all_of, id_or_name, name_of

SPRAY_FROM_MM = 6.5
"""Shop practice: steel up to here by short circuit, above by spray where the pool can lie flat."""

FLAT = frozenset({"PA", "PB"})
WORDS = {
    Transfer.SHORT_CIRCUIT: mark(
        "the wire touches and melts off many times a second: little heat, all positions"
    ),
    Transfer.GLOBULAR: mark("large drops: hot and spattery"),
    Transfer.SPRAY: mark("a fine spray of drops: hot, smooth"),
    Transfer.PULSED: mark("one drop a pulse"),
}


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the pinned transfer if rows cover it, else the usual one for metal, thickness and position."""
    seams = case.tables.derived(build_mig_seams)
    covering = [
        transfer
        for transfer in Transfer
        if (curve := seams.curves.get(Bench(case.family, transfer))) and curve.covers(case.effective_mm)
    ]
    wanted = case.request.transfer
    if wanted is not None:
        if wanted not in covering:
            raise _not_covered(case, wanted)
        chosen, why = wanted, tr("as asked")
    else:
        chosen, why = _usual(case, covering)
    reasons = (
        Reason(why, source="COMMON_PRACTICE"),
        Reason(tr(WORDS[chosen])),
    )
    return Setting(
        "transfer",
        Basis.PRACTICE,
        reasons,
        ("COMMON_PRACTICE",),
        value=chosen.value,
        alternatives=tuple(Choice(each.value, tr(WORDS[each])) for each in covering if each is not chosen),
    )


def _usual(case: Case, covering: list[Transfer]) -> tuple[Transfer, str]:
    if case.family == "aluminium":
        if case.request.joint is Joint.PLUG or Transfer.SPRAY in covering:
            return Transfer.SPRAY, tr("aluminium: short circuit stays cold on it, so spray")
        raise _not_covered(case, Transfer.SPRAY)
    thick = case.effective_mm > SPRAY_FROM_MM and case.position in FLAT
    if thick and Transfer.SPRAY in covering:
        return Transfer.SPRAY, tr(
            "above {thickness} and flat: spray melts in deeper", thickness=both(SPRAY_FROM_MM)
        )
    if Transfer.SHORT_CIRCUIT in covering:
        return Transfer.SHORT_CIRCUIT, tr("sheet and out-of-position work: short circuit")
    if Transfer.SPRAY in covering:
        return Transfer.SPRAY, tr("thicker than the short-circuit schedules reach")
    raise _not_covered(case, None)


def _not_covered(case: Case, transfer: Transfer | None) -> NotCoveredError:
    seams = case.tables.derived(build_mig_seams)
    held = {bench.transfer: curve for bench, curve in seams.curves.items() if bench.family == case.family}
    asked = tr(
        "MIG on {metal}, {thickness}",
        metal=name_of(case.family),
        thickness=both(case.effective_mm),
    ) + (tr(", {transfer} transfer", transfer=id_or_name(transfer)) if transfer else "")
    by_tig = tr("TIG, as a lap") if case.request.joint is Joint.PLUG else "TIG"
    if not held:
        return NotCoveredError(asked, tr("no schedule is held for this metal"), by_tig)
    if transfer is not None and transfer not in held:
        names = [id_or_name(each) for each in sorted(held)]
        return NotCoveredError(
            asked, tr("schedules are held for {transfers}", transfers=all_of(names)), names[0]
        )
    if transfer is not None:
        held = {transfer: held[transfer]}
    ends = [(curve.thinnest_mm, curve.thickest_mm) for curve in held.values()]
    thinnest, thickest = min(low for low, _ in ends), max(high for _, high in ends)
    nearest = thinnest if case.effective_mm < thinnest else thickest
    hint = both(nearest) + (tr(" by MIG, or {other}", other=by_tig) if case.effective_mm < thinnest else "")
    return NotCoveredError(
        asked,
        tr("the schedules cover {thinnest} to {thickest}", thinnest=both(thinnest), thickest=both(thickest)),
        hint,
    )
