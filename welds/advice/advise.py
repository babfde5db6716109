"""Request in, card out: the rules in order, then what can hurt, what was checked, what to do first."""

from collections.abc import Callable, Sequence

from welds.advice.adjustment import Adjustment, adjusted
from welds.advice.card import Card
from welds.advice.case import Case, SoFar, make_case
from welds.advice.checks import checks_of
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.evidence import Evidence
from welds.advice.facts import facts_of
from welds.advice.learned_current import learned_current
from welds.advice.own_scale import with_readings
from welds.advice.preparation import preparation_of
from welds.advice.request import Process, Request
from welds.advice.rules import (
    ac_frequency,
    arc_voltage,
    backing,
    cup,
    electrode_negative,
    filler_diameter,
    filler_metal,
    filter_shade,
    gas_flow,
    gas_lens,
    heat_input,
    interpass,
    machine_maximum,
    mig_current,
    passes,
    plug_hole,
    plug_time,
    polarity,
    post_flow,
    pre_flow,
    preheat,
    pulse,
    shielding_gas,
    stick_out,
    tacks,
    tig_current,
    tip,
    tip_to_work,
    transfer,
    travel_speed,
    tungsten_diameter,
    tungsten_type,
    voltage,
    wire_diameter,
    wire_feed,
)
from welds.advice.setting import Caution, Setting, Severity
from welds.advice.shopping import missing_for
from welds.language import tr
from welds.reference.hazards import load_hazards, matching
from welds.reference.tables import Tables

Rule = Callable[[Case, SoFar], Setting | None]

TIG: tuple[Rule, ...] = (
    polarity.advise,
    tig_current.advise,
    machine_maximum.advise,
    ac_frequency.advise,
    electrode_negative.advise,
    pulse.advise,
    tungsten_type.advise,
    tungsten_diameter.advise,
    tip.advise,
    filler_metal.advise,
    filler_diameter.advise,
    shielding_gas.advise,
    gas_flow.advise,
    gas_lens.advise,
    cup.advise,
    stick_out.advise,
    pre_flow.advise,
    post_flow.advise,
)
MIG: tuple[Rule, ...] = (
    transfer.advise,
    polarity.advise,
    filler_metal.advise,
    wire_diameter.advise,
    mig_current.advise,
    voltage.advise,
    wire_feed.advise,
    shielding_gas.advise,
    gas_flow.advise,
    tip_to_work.advise,
    plug_hole.advise,
    plug_time.advise,
)
BOTH: tuple[Rule, ...] = (
    backing.advise,
    arc_voltage.advise,
    travel_speed.advise,
    heat_input.advise,
    passes.advise,
    filter_shade.advise,
    preheat.advise,
    interpass.advise,
    tacks.advise,
)
"""One decision each; a rule may read what earlier ones decided."""


def advise(
    request: Request,
    tables: Tables,
    equipment: Equipment = GENERIC,
    evidence: Evidence | None = None,
    adjustments: Sequence[Adjustment] = (),
) -> Card:
    """Return the card for a request; with evidence, the current and all that follows from it is learned.

    `adjustments` are what a fault of the last bead asked for; what follows from a moved setting moves too.

    Raises InputError for a request that cannot be meant and NotCoveredError, with the nearest case that can
    be answered, where the tables end.
    """
    case = make_case(request, tables, equipment)
    settings: dict[str, Setting] = {}
    learned = None
    for rule in (*(TIG if request.process is Process.TIG else MIG), *BOTH):
        setting = rule(case, settings)
        if setting is None:
            continue
        if setting.name == "current" and evidence is not None:
            setting, learned = learned_current(case, settings, setting, rule, evidence)
        settings[setting.name] = adjusted(case, setting, adjustments)
    settings = with_readings(settings, equipment.machine)
    shopping = missing_for(case, settings)
    return Card(
        request,
        settings,
        checks_of(case, settings, shopping),
        preparation_of(case),
        _cautions(case, settings),
        equipment.machine.name,
        shopping=shopping,
        learned=learned,
        adjustments=tuple(adjustments),
    )


def _cautions(case: Case, settings: SoFar) -> tuple[Caution, ...]:
    return tuple(
        Caution(hazard.id, Severity(hazard.severity), tr(hazard.text), hazard.basis, hazard.source)
        for hazard in matching(case.tables.derived(load_hazards), facts_of(case, settings))
    )
