"""MIG voltage: the line that schedules draw over current, for the transfer and the gas."""

from welds.advice.case import Case, SoFar
from welds.advice.gas_choice import choose_gas
from welds.advice.limits import fit
from welds.advice.mig_seams import Bench, VoltLine, build_mig_seams
from welds.advice.plug_rows import between_plug_rows, has_plug_rows
from welds.advice.request import Joint, Transfer
from welds.advice.setting import Reason, Setting
from welds.errors import NotCoveredError
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.basis import Basis
from welds.reference.names import id_or_name
from welds.reference.shielding import Gas

LEAST_ROOM_V, SHARE, SCATTER_ROOM = 1.0, 0.06, 1.25
BORROWED_V = 1.0
"""Extra room where the line was drawn under another gas."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return volts at the start current; the band follows the current's ends and the rows' scatter."""
    if case.request.joint is Joint.PLUG and has_plug_rows(case.tables, case.family):
        return _printed_plug(case)
    transfer = Transfer(str(so_far["transfer"].value))
    current = so_far["current"].figure
    gas = choose_gas(case, transfer)[0]
    line, shift, why = _line(case, transfer, gas)
    start = line.at_zero_v + line.slope_v_a * current.start + shift
    room = max(LEAST_ROOM_V, SCATTER_ROOM * line.scatter_v, SHARE * start) + (BORROWED_V if why else 0.0)
    best = min((row.basis for row in line.rows), key=lambda grade: grade.rank)
    sources = tuple(dict.fromkeys(row.source_id for row in line.rows))
    reasons = [
        Reason(
            tr(
                "{volts:.1f} V and {slope:.1f} V per 100 A, a line through {rows} schedule"
                " rows for {transfer} transfer",
                volts=line.at_zero_v,
                slope=line.slope_v_a * 100,
                rows=len(line.rows),
                transfer=id_or_name(transfer),
            ),
            source=sources[0],
        )
    ]
    if why:
        reasons.append(Reason(why, source="COMMON_PRACTICE"))
    reasons.append(
        Reason(tr("set by ear from there: crackle with too little, hiss and undercut with too much"))
    )
    band = Band(round(start - room, 1), round(start, 1), round(start + room, 1), "V")
    fitted, limits = fit(band, case.equipment.machine, "voltage", "V")
    return Setting(
        "voltage",
        Basis.RECALLED if best is Basis.RECALLED else best,
        (*reasons, *limits),
        sources,
        tuple(row.row_id for row in line.rows)[:8],
        band=fitted,
        wanted=band,
    )


def _printed_plug(case: Case) -> Setting:
    volts, used = between_plug_rows(
        case.tables,
        case.family,
        case.first_mm,
        lambda row: ((row.voltage_min_v or 0.0) + (row.voltage_max_v or 0.0)) / 2,
    )
    band = Band(round(volts - LEAST_ROOM_V, 1), round(volts, 1), round(volts + LEAST_ROOM_V, 1), "V")
    fitted, limits = fit(band, case.equipment.machine, "voltage", "V")
    return Setting(
        "voltage",
        used[0].basis,
        (Reason(tr("as printed for plugs"), source=used[0].source_id), *limits),
        tuple(dict.fromkeys(row.source_id for row in used)),
        tuple(row.row_id for row in used),
        band=fitted,
        wanted=band,
    )


OXIDISING_V = {"co2": 1.5, "he-ar-co2": 1.5}
"""Shop practice: volts that carbon dioxide, or helium, wants over an argon-rich mix at one current."""


def _line(case: Case, transfer: Transfer, gas: Gas) -> tuple[VoltLine, float, str]:
    lines = case.tables.derived(build_mig_seams).volt_lines
    bench = Bench(case.family, transfer)
    own = lines.get((bench, gas.id))
    if own is not None:
        return own, 0.0, ""
    candidates = [(name, line) for (each, name), line in lines.items() if each == bench]
    if not candidates:
        raise NotCoveredError(
            tr("{process} on {metal}", process=id_or_name(transfer), metal=id_or_name(case.family)),
            tr("no row prints a voltage"),
        )
    name, line = max(candidates, key=lambda each: len(each[1].rows))
    shift = OXIDISING_V.get(gas.id, 0.0) - OXIDISING_V.get(name, 0.0)
    return (
        line,
        shift,
        tr(
            "rows are for {printed}; {gas} runs about {shift:+.1f} V from there",
            printed=id_or_name(name),
            gas=gas.name,
            shift=shift,
        ),
    )
