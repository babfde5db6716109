"""What a hazard rule may ask about a case."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.gas_choice import choose_gas
from welds.advice.request import Process, Transfer
from welds.advice.setting import Setting
from welds.reference.tungsten import TungstenType


def facts_of(case: Case, settings: Mapping[str, Setting]) -> dict[str, set[str]]:
    """Return attribute -> values, named as in data/hazards.yaml."""
    request = case.request
    transfer = Transfer(str(settings["transfer"].value)) if request.process is Process.MIG else None
    facts = {
        "process": {request.process.value},
        "joint": {request.joint.value},
        "place": {request.place.value},
        "coatings": {coating.value for coating in request.coatings},
        "solvent": {request.solvent.value} if request.solvent else set(),
        "part": {request.part.value} if request.part else set(),
        "family": set(case.families),
        "group": {metal.group for metal in case.metals},
        "gas": {choose_gas(case, transfer)[0].id},
    }
    tungsten = settings.get("tungsten_type")
    if tungsten is not None:
        kinds = {each.iso_code: each for each in case.tables.records(TungstenType)}
        facts["tungsten"] = {"radioactive"} if kinds[str(tungsten.value)].is_radioactive else set()
    return facts
