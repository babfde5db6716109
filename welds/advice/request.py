"""What is to be welded, as a frozen value: the whole input of the advice."""

from dataclasses import dataclass
from enum import StrEnum


class Process(StrEnum):
    """ISO 4063: 141 (TIG) and 131 or 135 by gas (MIG, MAG)."""

    TIG = "tig"
    MIG = "mig"


class Joint(StrEnum):
    """The joint types that can be asked for."""

    BUTT = "butt"
    TEE = "tee"
    LAP = "lap"
    OUTSIDE_CORNER = "outside-corner"
    INSIDE_CORNER = "inside-corner"
    EDGE = "edge"
    PLUG = "plug"


class Goal(StrEnum):
    """What the filler should favour."""

    STRENGTH = "strength"
    DUCTILITY = "ductility"
    LEAST_CRACKING = "least-cracking"
    ANODISED_COLOUR = "anodised-colour"
    WARM_SERVICE = "warm-service"
    SALT_WATER = "salt-water"


class Place(StrEnum):
    """Where the arc is struck."""

    INDOORS = "indoors"
    OUTDOORS = "outdoors"
    ENCLOSED = "enclosed"


class Hand(StrEnum):
    """How fast the person's torch travels; decides how much current the same sheet wants."""

    UNHURRIED = "unhurried"
    BRISK = "brisk"


class Coating(StrEnum):
    """What is on the metal."""

    GALVANISED = "galvanised"
    ZINC_PLATED = "zinc-plated"
    ZINC_PRIMER = "zinc-primer"
    CADMIUM = "cadmium"
    CHROME = "chrome"
    PAINT = "paint"
    OLD_PAINT = "old-paint"
    POWDER_COAT = "powder-coat"
    SEALER = "sealer"
    OIL = "oil"
    ANODISED = "anodised"
    MILL_SCALE = "mill-scale"
    RUST = "rust"
    UNKNOWN = "unknown"


class Solvent(StrEnum):
    """What the part was or will be wiped with."""

    ACETONE = "acetone"
    ALCOHOL = "alcohol"
    CHLORINATED = "chlorinated"
    UNKNOWN = "unknown-spray"


class Part(StrEnum):
    """What the joint belongs to, where that changes the danger."""

    BRACKET = "bracket"
    VEHICLE = "vehicle"
    CLOSED_SECTION = "closed-section"
    TANK = "tank"
    PRESSURE = "pressure"
    STEERING_SUSPENSION = "steering-suspension"
    TOWING = "towing"
    LIFTING = "lifting"
    ROLLOVER = "rollover"
    SEALED_ITEM = "sealed-item"


class Transfer(StrEnum):
    """How metal crosses a MIG arc."""

    SHORT_CIRCUIT = "short-circuit"
    GLOBULAR = "globular"
    SPRAY = "spray"
    PULSED = "pulsed"


@dataclass(frozen=True, slots=True)
class Request:
    """One joint to be set up; lengths in millimetres.

    `metal` and `other_metal` are catalogue ids, alloy with optional temper. `gas`, `wire_diameter_mm`
    and `transfer` pin what is already on the machine; left out, the advice chooses.
    """

    process: Process
    metal: str
    thickness_mm: float
    joint: Joint
    position: str = "PA"
    other_metal: str | None = None
    other_thickness_mm: float | None = None
    gap_mm: float = 0.0
    goal: Goal | None = None
    coatings: tuple[Coating, ...] = ()
    solvent: Solvent | None = None
    part: Part | None = None
    place: Place = Place.INDOORS
    length_mm: float | None = None
    hand: Hand = Hand.UNHURRIED
    gas: str | None = None
    wire_diameter_mm: float | None = None
    transfer: Transfer | None = None
