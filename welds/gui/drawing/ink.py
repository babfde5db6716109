"""Colours and line weights of the drawings; no Qt, so that contrast can be checked as arithmetic."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Ink:
    """One palette as #rrggbb texts; weights and text height in the painter's own pixels.

    With `is_print` nothing is told by colour: shapes are white with black hatching.
    """

    name: str
    ground: str
    line: str
    text: str
    quiet: str
    first: str
    other: str
    hatch: str
    weld: str
    arc: str
    arc_core: str
    copper: str
    ceramic: str
    tungsten: str
    rod: str
    gas: str
    behind: str
    outline_px: float = 1.6
    thin_px: float = 1.0
    text_px: float = 12.0
    is_print: bool = False


LIGHT = Ink(
    name="light",
    ground="#ffffff",
    line="#2b3238",
    text="#1c2227",
    quiet="#53606a",
    first="#b4bec6",
    other="#98a5b0",
    hatch="#76838e",
    weld="#8a4a16",
    arc="#f0a04b",
    arc_core="#fff3dc",
    copper="#c08457",
    ceramic="#d9dde0",
    tungsten="#4a545d",
    rod="#6f7c87",
    gas="#3f6f87",
    behind="#e4e9ec",
)

DARK = Ink(
    name="dark",
    ground="#1e2427",
    line="#d3dae0",
    text="#eef1f3",
    quiet="#a7b2bb",
    first="#5a6771",
    other="#46525c",
    hatch="#8b98a3",
    weld="#ffb46b",
    arc="#f08a2e",
    arc_core="#ffe9c7",
    copper="#9c6540",
    ceramic="#3a434b",
    tungsten="#b9c3cb",
    rod="#93a0ab",
    gas="#8fc0d8",
    behind="#2b333a",
)

PRINT = Ink(
    name="print",
    ground="#ffffff",
    line="#000000",
    text="#000000",
    quiet="#000000",
    first="#ffffff",
    other="#ffffff",
    hatch="#000000",
    weld="#000000",
    arc="#ffffff",
    arc_core="#ffffff",
    copper="#ffffff",
    ceramic="#ffffff",
    tungsten="#000000",
    rod="#000000",
    gas="#000000",
    behind="#ffffff",
    is_print=True,
)


def contrast(one: str, two: str) -> float:
    """Return the contrast ratio of two #rrggbb colours, 1 to 21 (WCAG 2.1, relative luminance)."""
    light, dark = sorted((_luminance(one), _luminance(two)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    def linear(part: int) -> float:
        share = part / 255.0
        return share / 12.92 if share <= 0.04045 else float(((share + 0.055) / 1.055) ** 2.4)

    red, green, blue = (linear(int(colour[at : at + 2], 16)) for at in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
