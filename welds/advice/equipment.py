"""What the machine can be set to and what is on the shelf, as the advice needs to know it.

The bench layer fills these from the person's file; `GENERIC_MACHINE` stands in when there is none.
"""

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Machine:
    """Limits of one power source: amperes, hertz, balance as percent electrode negative.

    None means "not stated": the advice then does not clip.
    """

    name: str
    processes: frozenset[str]
    current_min_a: float | None = None
    current_max_a: float | None = None
    has_ac: bool = True
    ac_frequency_min_hz: float | None = None
    ac_frequency_max_hz: float | None = None
    electrode_negative_min_percent: float | None = None
    electrode_negative_max_percent: float | None = None
    has_pulse: bool = True
    has_pedal: bool = True
    duty_cycle: tuple[tuple[float, float], ...] = ()
    """(current_a, percent) pairs from the rating plate."""


@dataclass(frozen=True, slots=True)
class Shelf:
    """What is in stock; an empty set means "not stated", so nothing is ruled out."""

    tungsten_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    tungsten_types: frozenset[str] = field(default_factory=frozenset)
    filler_metals: frozenset[str] = field(default_factory=frozenset)
    filler_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    wire_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    gases: frozenset[str] = field(default_factory=frozenset)
    cups: frozenset[int] = field(default_factory=frozenset)
    has_gas_lens: bool | None = None


@dataclass(frozen=True, slots=True)
class Equipment:
    """The machine in use and the shelf beside it."""

    machine: Machine
    shelf: Shelf = Shelf()


GENERIC_MACHINE = Machine(name="any machine", processes=frozenset({"tig", "mig"}))
GENERIC = Equipment(GENERIC_MACHINE)
