"""Wire diameter."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence

from welds.advice.case import Case, SoFar
from welds.advice.mig_seams import Bench, build_mig_seams, thickness_of, wire_of
from welds.advice.pooling import BANDWIDTH
from welds.advice.setting import Choice, Reason, Setting
from welds.advice.sizes import holds, nearest_size
from welds.errors import InputError
from welds.language import figure, tr
from welds.quantities.sizes import WIRE
from welds.reference.basis import Basis
from welds.reference.names import all_of, id_or_name
from welds.reference.schedules import MigSchedule
from welds.reference.settings import WireRange
from welds.reference.tables import Tables

LARGEST_MM = 1.6
"""What a bench machine feeds."""

USUAL_LARGEST_MM = {"carbon-steel": 1.2, "stainless": 1.2}
"""Shop practice: thicker steel wire is chosen only where it is asked for."""

SAME_SIZE = 0.06
"""A pinned wire this near a sold size is that size: 0.035 in is sold as 0.9 mm."""


def advise(case: Case, so_far: SoFar) -> Setting:
    """Return the wire on the machine, else the size most schedules of this thickness use."""
    transfer = str(so_far["transfer"].value)
    ranges = [
        each
        for each in case.tables.records(WireRange)
        if (each.family, each.transfer) == (case.family, transfer) and each.wire_mm <= LARGEST_MM
    ]
    sold = sorted({each.wire_mm for each in ranges})
    fits = [size for size in WIRE if sold[0] <= size <= sold[-1]]
    rows: tuple[str, ...] = ()
    basis = Basis.PRACTICE
    pinned = case.request.wire_diameter_mm
    if pinned is not None:
        size = nearest_size(pinned, WIRE)
        if abs(size - pinned) > SAME_SIZE * pinned or size not in fits:
            shown = all_of([figure(f"{each:g}") for each in fits])
            raise InputError(
                "wire",
                figure(f"{pinned:g} mm"),
                tr(
                    "{sizes} mm for {transfer} on {metal}",
                    sizes=shown,
                    transfer=id_or_name(transfer),
                    metal=id_or_name(case.family),
                ),
                figure(f"{nearest_size(pinned, fits):g} mm"),
            )
        reason = Reason(tr("the wire on the machine"))
    else:
        usual = usual_wire_mm(case.tables, Bench(case.family, transfer), case.effective_mm)
        size = nearest_size(usual, sold, _on_hand(case, str(so_far["wire"].value)))
        rated = [each for each in ranges if each.wire_mm == size]
        best = min(rated, key=lambda each: each.basis.rank)
        reason = Reason(
            tr("the size that schedules of about this thickness use most")
            if size == nearest_size(usual, sold)
            else tr(
                "schedules of about this thickness use {usual:g} mm; this one is there",
                usual=nearest_size(usual, sold),
            ),
            source=best.source_id,
        )
        basis, rows = best.basis, tuple(each.row_id for each in rated)
    return Setting(
        "wire_diameter",
        basis,
        (reason,),
        tuple(dict.fromkeys(each.source_id for each in ranges if each.wire_mm == size)),
        rows,
        value=size,
        unit="mm",
        alternatives=tuple(Choice(each) for each in sold if each != size),
    )


def _on_hand(case: Case, metal: str) -> frozenset[float]:
    """Return the spools that the shelf has and the machine feeds; what is not stated rules nothing out."""
    stocked, fed = case.equipment.shelf.wire_sizes(metal), case.equipment.machine.wire_diameters_mm
    if not stocked or not fed:
        return stocked or fed
    return frozenset(each for each in stocked if holds(fed, each)) or fed


def usual_wire_mm(tables: Tables, bench: Bench, thickness_mm: float) -> float:
    """Return the wire with most votes among rows at or below the thickness, so that it never shrinks."""
    steps = tables.derived(_usual_wires)[bench]
    below = [wire for step, wire in steps if step <= thickness_mm * 1.02]
    return below[-1] if below else steps[0][1]


def _usual_wires(tables: Tables) -> Mapping[Bench, tuple[tuple[float, float], ...]]:
    seams = tables.derived(build_mig_seams)
    return {bench: tuple(_wire_steps(bench, rows)) for bench, rows in seams.rows.items()}


def _wire_steps(bench: Bench, rows: Sequence[MigSchedule]) -> Iterator[tuple[float, float]]:
    """Yield each thickness of the rows with the wire that is usual from there on."""
    usual = 0.0
    largest = USUAL_LARGEST_MM.get(bench.family, LARGEST_MM)
    for step in sorted({thickness_of(row) for row in rows}):
        votes = Counter[float]()
        for row in rows:
            wire = wire_of(row)
            distance = abs(thickness_of(row) - step) / step
            if wire is not None and wire <= largest and distance <= BANDWIDTH:
                votes[nearest_size(wire, WIRE)] += 1
        if votes:
            most = max(votes.values())
            usual = max(usual, *(wire for wire, count in votes.items() if count == most))
        yield step, usual or largest
