"""Cup size."""

from welds.advice.case import Case, SoFar
from welds.advice.request import Joint
from welds.advice.setting import Choice, Reason, Setting
from welds.language import tr
from welds.reference.basis import Basis
from welds.reference.shielding import Cup, GasFlow, ShieldingRule

TIGHT = frozenset({Joint.TEE, Joint.INSIDE_CORNER, Joint.LAP})


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the cup whose bore suits current and tungsten: smaller into a corner, larger with a lens."""
    current = so_far["current"].figure
    tungsten = float(so_far["tungsten_diameter"].start)
    rule = next(row for row in case.tables.records(ShieldingRule) if row.topic == "cup-rule")
    assert rule.value_min is not None
    least = rule.value_min * tungsten
    reasons = [
        Reason(
            tr("bore at least {least:g} tungsten diameters", least=rule.value_min),
            source=rule.source_id,
        )
    ]
    row = _by_current(case, str(so_far["polarity"].value), current.start)
    bore, basis = least, Basis.PRACTICE
    sources = ["COMMON_PRACTICE"]
    rows: tuple[str, ...] = ()
    if row is not None and row.cup_bore_min_mm is not None and row.cup_bore_max_mm is not None:
        bore = max(bore, (row.cup_bore_min_mm + row.cup_bore_max_mm) / 2)
        basis, rows = row.basis, (row.row_id,)
        sources.append(row.source_id)
        reasons.append(
            Reason(
                tr(
                    "{low:g} to {high:g} mm bore printed for this current",
                    low=row.cup_bore_min_mm,
                    high=row.cup_bore_max_mm,
                ),
                source=row.source_id,
            )
        )
    cups = sorted(case.tables.records(Cup), key=lambda cup: cup.number)
    shelf, has_lens = case.equipment.shelf, bool(so_far["gas_lens"].value)
    in_stock = shelf.lens_cups if has_lens and shelf.lens_cups else shelf.cups
    stocked = [cup for cup in cups if cup.number in in_stock]
    usable = stocked or cups
    place = min(range(len(usable)), key=lambda index: abs(usable[index].bore_mm - bore))
    if has_lens:
        place = min(place + 2, len(usable) - 1)
        reasons.append(
            Reason(tr("with the lens two sizes larger: more cover, same flow"), source="COMMON_PRACTICE")
        )
    elif case.request.joint in TIGHT and place > 0 and usable[place - 1].bore_mm >= least:
        place -= 1
        reasons.append(Reason(tr("one size smaller reaches into the joint"), source="COMMON_PRACTICE"))
    chosen = usable[place]
    near = [cup for cup in usable if abs(cup.number - chosen.number) == 1]
    return Setting(
        "cup",
        basis,
        tuple(reasons),
        tuple(sources),
        rows,
        value=chosen.number,
        text=tr("{bore:.1f} mm bore", bore=chosen.bore_mm),
        alternatives=tuple(Choice(cup.number, tr("{bore:.1f} mm bore", bore=cup.bore_mm)) for cup in near),
    )


def _by_current(case: Case, polarity: str, current_a: float) -> GasFlow | None:
    return next(
        (
            row
            for row in case.tables.records(GasFlow)
            if row.polarity == polarity
            and row.current_min_a is not None
            and row.current_max_a is not None
            and row.cup_bore_min_mm is not None
            and row.current_min_a <= current_a <= row.current_max_a + 1
        ),
        None,
    )
