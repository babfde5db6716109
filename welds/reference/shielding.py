"""Cups, gas flows, gases and the single figures a torch is set up by."""

from dataclasses import dataclass
from typing import ClassVar

from welds.errors import InputError, nearest
from welds.reference.basis import Basis
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class Cup:
    """A cup number and its bore: the number counts sixteenths of an inch."""

    TABLE: ClassVar[str] = "cups"

    number: int
    bore_mm: float
    bore_in: float
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class GasFlow:
    """One flow, or one cup for an electrode, as a document gives it; None or empty where it is silent."""

    TABLE: ClassVar[str] = "gas_flows"

    row_id: str
    topic: str
    process: str
    family: str | None
    gas: str | None
    transfers: tuple[str, ...]
    thickness_min_mm: float | None
    thickness_max_mm: float | None
    current_min_a: float | None
    current_max_a: float | None
    polarity: str | None
    electrode_diameter_mm: float | None
    cup_bore_min_mm: float | None
    cup_bore_max_mm: float | None
    flow_min_l_min: float | None
    flow_max_l_min: float | None
    source_id: str
    place: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class ShieldingRule:
    """One figure for torch or gas, in `unit`; a rule without figures says that the thing is wanted."""

    TABLE: ClassVar[str] = "shielding_rules"

    row_id: str
    topic: str
    process: str | None
    family: str | None
    joint: str | None
    case: str
    value_min: float | None
    value_max: float | None
    unit: str | None
    source_id: str
    place: str
    basis: Basis
    note: str


@dataclass(frozen=True, slots=True)
class Gas:
    """A gas or mix in percent of volume, with its group in ISO 14175:2008."""

    TABLE: ClassVar[str] = "gases"

    id: str
    name: str
    iso_code: str
    argon_percent: float
    helium_percent: float
    co2_percent: float
    o2_percent: float
    is_inert: bool
    processes: tuple[str, ...]
    families: tuple[str, ...]
    transfers: tuple[str, ...]
    source_id: str
    basis: Basis
    cell_bases: tuple[tuple[str, Basis], ...]
    note: str


@dataclass(frozen=True, slots=True)
class GasUse:
    """One gas with one process on one family; `standing` is our order of preference, 1 first."""

    TABLE: ClassVar[str] = "gas_uses"

    gas: str
    process: str
    family: str
    transfers: tuple[str, ...]
    standing: int
    source_id: str
    place: str
    basis: Basis
    note: str


def find_gas(tables: Tables, text: str) -> Gas:
    """Return the gas of that id, or raise InputError with the nearest id."""
    by_id = {gas.id: gas for gas in tables.records(Gas)}
    asked = text.strip().lower()
    if asked not in by_id:
        raise InputError("gas", text, ", ".join(by_id), nearest(asked, by_id))
    return by_id[asked]


def gas_uses(tables: Tables, process: str, family: str, transfer: str | None = None) -> tuple[GasUse, ...]:
    """Return what goes with a process on a family (and in a transfer, when one is given), preferred first."""
    suited = (
        use
        for use in tables.records(GasUse)
        if use.process == process and use.family == family and (transfer is None or transfer in use.transfers)
    )
    return tuple(sorted(suited, key=lambda use: use.standing))


def shielding_rules(
    tables: Tables, topic: str, *, process: str, family: str, joint: str | None = None
) -> tuple[ShieldingRule, ...]:
    """Return the rules on a topic that hold for process, family and joint, the more particular first.

    A rule for one joint only comes along when that joint is asked for.
    """

    def particular(rule: ShieldingRule) -> int:
        return (rule.joint is not None) * 2 + (rule.family is not None)

    suited = (
        rule
        for rule in tables.records(ShieldingRule)
        if rule.topic == topic
        and rule.process in (None, process)
        and rule.family in (None, family)
        and rule.joint in (None, joint)
    )
    return tuple(sorted(suited, key=particular, reverse=True))
