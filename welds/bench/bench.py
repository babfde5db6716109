"""All machines and the shelf of one person; one machine is in use."""

from dataclasses import dataclass, field

from welds.advice.equipment import Equipment, Machine, Shelf


@dataclass(frozen=True, slots=True)
class Bench:
    """What the bench file says, as it was read."""

    machines: tuple[Machine, ...]
    shelf: Shelf = field(default_factory=Shelf)
    in_use: str = ""
    """Name of the machine in use; empty: the first."""

    @property
    def machine(self) -> Machine:
        """The machine in use."""
        return next((each for each in self.machines if each.name == self.in_use), self.machines[0])

    def equipment(self, trouble: str = "") -> Equipment:
        """Return what the advice is given."""
        chosen = self.machine
        others = tuple(each for each in self.machines if each is not chosen)
        return Equipment(chosen, self.shelf, others, trouble)
