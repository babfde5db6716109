"""What the machine can be set to and what is on the shelf, as the advice needs to know it.

The bench layer fills these from the person's file; `GENERIC_MACHINE` stands in when there is none.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field

from welds.language import mark

SCALE = mark("scale")
"""What a machine's own scale is called where the person gave it no name."""

Pair = tuple[str, float]
"""A type or class and its diameter in millimetres."""


@dataclass(frozen=True, slots=True)
class Control:
    """How one setting is set: in steps, at fixed positions, or against marks of the machine's own scale.

    `scale` is the person's name for that scale; `marks` pair what it reads with the figure it means;
    figures are in the unit of the card.
    """

    setting: str
    step: float | None = None
    positions: tuple[float, ...] = ()
    scale: str = SCALE
    marks: tuple[tuple[str, float], ...] = ()


@dataclass(frozen=True, slots=True)
class Torch:
    """Torch or gun: what it stands, for how much of ten minutes."""

    cooling: str
    rated_a: float | None = None
    rated_ac_a: float | None = None
    duty_percent: float = 100.0


@dataclass(frozen=True, slots=True)
class Supply:
    """The circuit that the machine hangs on; None where it is not stated."""

    volts: float
    phases: int = 1
    breaker_a: float | None = None
    cord_mm2: float | None = None
    cord_length_m: float | None = None
    cord_rated_a: float | None = None
    generator_kva: float | None = None


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

    ac_wave: str = "square"
    has_hot_start: bool | None = None
    wire_feed_min_m_min: float | None = None
    wire_feed_max_m_min: float | None = None
    voltage_min_v: float | None = None
    voltage_max_v: float | None = None
    wire_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    open_circuit_dc_v: float | None = None
    open_circuit_ac_v: float | None = None
    kind: str = "inverter"
    supply_volts: tuple[float, ...] = ()
    plug: str = ""
    efficiency: float | None = None
    power_factor: float | None = None
    supply: Supply | None = None
    torch: Torch | None = None
    controls: tuple[Control, ...] = ()

    def control(self, setting: str) -> Control | None:
        """Return how a setting is set, or None where any figure will do."""
        wanted = "current" if setting == "machine_maximum" else setting
        return next((each for each in self.controls if each.setting == wanted), None)

    def reach(self, setting: str) -> tuple[float | None, float | None]:
        """Return the lowest and highest figure a setting can have, from limits, positions and marks."""
        low, high = {
            "current": (self.current_min_a, self.current_max_a),
            "machine_maximum": (None, self.current_max_a),
            "ac_frequency": (self.ac_frequency_min_hz, self.ac_frequency_max_hz),
            "electrode_negative": (self.electrode_negative_min_percent, self.electrode_negative_max_percent),
            "wire_feed": (self.wire_feed_min_m_min, self.wire_feed_max_m_min),
            "voltage": (self.voltage_min_v, self.voltage_max_v),
        }.get(setting, (None, None))
        control = self.control(setting)
        figures = [*control.positions, *(figure for _, figure in control.marks)] if control else []
        if not figures:
            return low, high
        lowest, highest = min(figures), max(figures)
        return lowest if low is None else max(low, lowest), highest if high is None else min(high, highest)


@dataclass(frozen=True, slots=True)
class Shelf:
    """What is in stock; an empty set means "not stated", so nothing is ruled out.

    Pairs name type and diameter together; the plain sets count for every type.
    """

    tungsten_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    tungsten_types: frozenset[str] = field(default_factory=frozenset)
    filler_metals: frozenset[str] = field(default_factory=frozenset)
    filler_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    wire_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    gases: frozenset[str] = field(default_factory=frozenset)
    cups: frozenset[int] = field(default_factory=frozenset)
    has_gas_lens: bool | None = None

    tungstens: frozenset[Pair] = field(default_factory=frozenset)
    fillers: frozenset[Pair] = field(default_factory=frozenset)
    wires: frozenset[Pair] = field(default_factory=frozenset)
    gas_left_l: tuple[Pair, ...] = ()
    """(gas, litres left at the cup); a gas that is not named was not measured."""

    lens_cups: frozenset[int] = field(default_factory=frozenset)
    gas_lens_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    collet_diameters_mm: frozenset[float] = field(default_factory=frozenset)
    backing_bars: frozenset[str] = field(default_factory=frozenset)
    helmet_shades: tuple[tuple[int, int], ...] = ()
    brushes: frozenset[str] = field(default_factory=frozenset)
    wheels: frozenset[str] = field(default_factory=frozenset)

    @property
    def types_of_tungsten(self) -> frozenset[str]:
        """Every tungsten type in stock."""
        return self.tungsten_types | _names(self.tungstens)

    @property
    def metals_of_rods(self) -> frozenset[str]:
        """Every class of filler rod in stock."""
        return self.filler_metals | _names(self.fillers)

    @property
    def metals_of_wires(self) -> frozenset[str]:
        """Every class of wire in stock; without spools by class, the plain list of filler metals counts."""
        return _names(self.wires) or self.filler_metals

    def tungsten_sizes(self, iso_code: str) -> frozenset[float]:
        """Return the diameters of one type."""
        return self.tungsten_diameters_mm | _sizes(self.tungstens, iso_code)

    def rod_sizes(self, metal: str) -> frozenset[float]:
        """Return the diameters of one filler rod."""
        return self.filler_diameters_mm | _sizes(self.fillers, metal)

    def wire_sizes(self, metal: str) -> frozenset[float]:
        """Return the diameters of one wire."""
        return self.wire_diameters_mm | _sizes(self.wires, metal)

    def litres_left(self, gas: str) -> float | None:
        """Return what is left of a gas, or None where it was not measured."""
        return dict(self.gas_left_l).get(gas)


@dataclass(frozen=True, slots=True)
class Equipment:
    """The machine in use, the shelf and the other machines beside it.

    `trouble` is one line about the person's file where this is not what it now says.
    """

    machine: Machine
    shelf: Shelf = Shelf()
    others: tuple[Machine, ...] = ()
    trouble: str = ""


def _names(pairs: Iterable[Pair]) -> frozenset[str]:
    return frozenset(name for name, _ in pairs)


def _sizes(pairs: Iterable[Pair], wanted: str) -> frozenset[float]:
    return frozenset(size for name, size in pairs if name == wanted)


GENERIC_MACHINE = Machine(name=mark("any machine"), processes=frozenset({"tig", "mig"}))
GENERIC = Equipment(GENERIC_MACHINE)
