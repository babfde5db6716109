"""Sizes that are sold: tungsten, filler rod and wire, with the inch name printed on the packet.

These are names, not conversions: a 2.4 mm rod and a 3/32 in rod are the same rod.
"""

from collections.abc import Mapping
from fractions import Fraction

from welds.quantities.registry import convert

TUNGSTEN: Mapping[float, str] = {
    0.5: "0.020", 1.0: "0.040", 1.6: "1/16", 2.0: "5/64", 2.4: "3/32",
    3.2: "1/8", 4.0: "5/32", 4.8: "3/16", 6.4: "1/4",
}  # fmt: skip
ROD: Mapping[float, str] = {
    0.8: "1/32", 0.9: "0.035", 1.0: "0.040", 1.2: "3/64", 1.6: "1/16", 2.0: "5/64", 2.4: "3/32",
    3.2: "1/8", 4.0: "5/32", 4.8: "3/16",
}  # fmt: skip
WIRE: Mapping[float, str] = {
    0.6: "0.023", 0.8: "0.030", 0.9: "0.035", 1.0: "0.040", 1.2: "0.045", 1.6: "1/16",
    2.4: "3/32", 3.2: "1/8",
}  # fmt: skip
SOLD_AS: Mapping[str, Mapping[float, str]] = {
    "tungsten_diameter": TUNGSTEN,
    "filler_diameter": ROD,
    "wire_diameter": WIRE,
}

_SAME_SIZE = 0.02
"""Within 2 % it is the same size (1.59 and 1.6 mm); the closest sold pair is 10 % apart."""


def sold_size(mm: float, kind: str) -> tuple[float, str] | None:
    """Return (millimetres, inch name) of the sold size that `mm` means, or None where none is sold.

    Both names of a size count: 0.030 in wire is 0.762 mm and sold as 0.8 mm.
    """
    sizes = SOLD_AS[kind]
    for size, inch_name in sizes.items():
        if abs(size - mm) <= _SAME_SIZE * size:
            return size, inch_name
    for size, inch_name in sizes.items():
        named_mm = convert(float(Fraction(inch_name)), "inch", "mm")
        if abs(named_mm - mm) <= _SAME_SIZE * named_mm:
            return size, inch_name
    return None
