"""Colours of what the heat does to the metal, beside the ink of the joint."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class HeatInk:
    """One palette as #rrggbb texts; every zone also has an outline of its own kind."""

    fused: str
    affected: str
    added: str
    edge: str
    isotherm: str
    kept: str
    cold: str
    face: str
    through: str
    out: str


LIGHT_HEAT = HeatInk(
    fused="#ee7f2d",
    affected="#f5d9a8",
    added="#f6b682",
    edge="#8f2f00",
    isotherm="#5d4a2c",
    kept="#1556a8",
    cold="#cfdde6",
    face="#f5d9a8",
    through="#f0a04b",
    out="#c9382a",
)

DARK_HEAT = HeatInk(
    fused="#e07a2c",
    affected="#6e5632",
    added="#9a5a2c",
    edge="#ffd2a0",
    isotherm="#e2cfa6",
    kept="#7db8ff",
    cold="#34454f",
    face="#6e5632",
    through="#b3692a",
    out="#b4332a",
)

PRINT_HEAT = HeatInk(
    fused="#8a8a8a",
    affected="#dcdcdc",
    added="#b9b9b9",
    edge="#000000",
    isotherm="#000000",
    kept="#000000",
    cold="#ffffff",
    face="#e4e4e4",
    through="#bdbdbd",
    out="#6e6e6e",
)
