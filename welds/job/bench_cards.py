"""Cards for the person's own bench: by the machine that does the process, moved by the welds made on it."""

from collections.abc import Callable
from dataclasses import dataclass, replace

from welds.advice.advise import advise
from welds.advice.card import Card
from welds.advice.equipment import GENERIC, Equipment
from welds.advice.evidence import Evidence
from welds.advice.request import Process, Request
from welds.reference.tables import Tables

PastOf = Callable[[Request, Tables], Evidence | None]


def nothing_past(_request: Request, _tables: Tables) -> None:
    """Stand for a log that is not there."""


@dataclass(frozen=True, slots=True)
class BenchCards:
    """What cards are made from, whatever they are for."""

    tables: Tables
    equipment: Equipment = GENERIC
    past: PastOf = nothing_past

    def card(self, request: Request) -> Card:
        """Return the card, or raise WeldsError as `advise` does."""
        past = self.past(request, self.tables)
        return advise(request, self.tables, for_process(self.equipment, request.process), past)

    def first_of(self, processes: tuple[Process, ...]) -> Process:
        """Return the first of the processes that a machine on the bench does, or simply the first."""
        return next((each for each in processes if self.does(each)), processes[0])

    def does(self, process: Process) -> bool:
        """Say whether a machine on the bench does the process."""
        machines = (self.equipment.machine, *self.equipment.others)
        return any(process in machine.processes for machine in machines)


def for_process(equipment: Equipment, process: Process) -> Equipment:
    """Return the equipment with a machine in use that does the process, where the bench has one."""
    if process in equipment.machine.processes:
        return equipment
    other = next((each for each in equipment.others if process in each.processes), None)
    return equipment if other is None else replace(equipment, machine=other)
