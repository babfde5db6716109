"""Where to set the machine when a pedal takes the current down from there."""

from welds.advice.case import Case, SoFar
from welds.advice.limits import fit
from welds.advice.rules.tig_current import demand
from welds.advice.setting import Reason, Setting
from welds.advice.words import both
from welds.errors import NotCoveredError
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.basis import Basis, weakest

NOMINAL_MM = (0.8, 1.2, 1.6, 3.2, 4.8, 6.4, 9.5, 12.7)
"""Sheets a set-up is remembered for; the pedal's top is set as for the next one up."""

LEAST_ROOM, MOST_ROOM = 1.25, 1.6
"""Pedal room over the working current that is enough to start a cold edge and still fine to control."""


def advise(case: Case, so_far: SoFar) -> Setting | None:
    """Return the pedal's top: the current of the next nominal sheet, within sensible room."""
    machine = case.equipment.machine
    current = so_far["current"].figure
    if not machine.has_pedal:
        return None
    working = current.start
    next_mm = next((each for each in NOMINAL_MM if each > case.effective_mm * 1.1), None)
    top, reasons, basis = working * (LEAST_ROOM + MOST_ROOM) / 2, [], Basis.PRACTICE
    if next_mm is not None:
        try:
            band, _, grade, _, _ = demand(case, str(so_far["polarity"].value), next_mm)
        except NotCoveredError:
            pass
        else:
            top = band.start
            basis = weakest((Basis.PRACTICE, grade))
            reasons.append(
                Reason(
                    tr(
                        "set the machine as for about {thickness} and let the pedal take it down",
                        thickness=both(next_mm),
                    ),
                    top / working,
                    "COMMON_PRACTICE",
                )
            )
    held = min(max(top, working * LEAST_ROOM), working * MOST_ROOM)
    if held != top or not reasons:
        reasons.append(
            Reason(
                tr(
                    "kept between {least:g} and {most:g} times the working current, or the"
                    " pedal gets too coarse",
                    least=LEAST_ROOM,
                    most=MOST_ROOM,
                ),
                source="COMMON_PRACTICE",
            )
        )
    low = max(round(working * 1.1), round(working))
    band = Band(min(low, round(held)), round(held), max(round(working * MOST_ROOM), round(held)), "A")
    fitted, limits = fit(band, machine, "machine_maximum", "A")
    return Setting(
        "machine_maximum",
        basis,
        (*reasons, *limits),
        ("COMMON_PRACTICE", *so_far["current"].sources),
        band=fitted,
        wanted=band,
    )
