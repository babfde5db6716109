"""One card for every set-up: joints that are set up alike share it, judged by the longest seam among them."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from welds.advice.advise import advise
from welds.advice.card import Card
from welds.advice.equipment import Equipment, Machine
from welds.advice.request import Process, Request
from welds.errors import WeldsError
from welds.job.job import JointWork
from welds.job.past import Past
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class SetUp:
    """A card, or why there is none, and the joints it is for."""

    request: Request
    joints: tuple[JointWork, ...]
    card: Card | None
    problem: str
    machine: Machine


def set_ups(
    joints: Sequence[JointWork], tables: Tables, equipment: Equipment, past: Past
) -> tuple[SetUp, ...]:
    """Return the set-ups in the order in which their first joints come."""
    alike: dict[Request, list[JointWork]] = {}
    for joint in joints:
        alike.setdefault(replace(joint.request, length_mm=None), []).append(joint)
    found = []
    for request, members in alike.items():
        longest = max(joint.length_mm for joint in members)
        asked = replace(request, length_mm=longest) if longest else request
        used = for_process(equipment, request.process)
        try:
            card, problem = advise(asked, tables, used, past.of(asked, tables)), ""
        except WeldsError as error:
            card, problem = None, str(error)
        found.append(SetUp(asked, tuple(members), card, problem, used.machine))
    return tuple(found)


def for_process(equipment: Equipment, process: Process) -> Equipment:
    """Return the equipment with a machine in use that does the process, where the bench has one."""
    if process in equipment.machine.processes:
        return equipment
    other = next((each for each in equipment.others if process in each.processes), None)
    return equipment if other is None else replace(equipment, machine=other)
