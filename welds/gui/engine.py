"""What the pages ask of the layers below; loaded in a thread after the window's first paint.

Nothing here imports Qt, and the layers that are slow to import are reached only through `load_engine`.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from welds.errors import InputError
from welds.gui.metal_option import MetalOption
from welds.language import figure

if TYPE_CHECKING:
    from welds.advice.adjustment import Adjustment
    from welds.advice.card import Card
    from welds.advice.request import Request
    from welds.gui.bench_in_use import BenchInUse
    from welds.gui.card_face import CardFace
    from welds.gui.past_welds import PastWelds
    from welds.quantities.units import Units
    from welds.reference.tables import Tables

Fields = Mapping[str, str | tuple[str, ...]]
GAUGE_WORD = "ga"
WARM_UP: Mapping[str, str] = {"process": "tig", "metal": "5052", "thickness": "2 mm", "joint": "butt"}
LOW_MM, HIGH_MM = 0.5, 13.0
PLATES_MM = tuple((float(mm), f"{mm:g} mm") for mm in (0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12))
PLATES_IN = tuple(
    (inches * 25.4, f"{name} in")
    for inches, name in (
        (0.02, "0.02"),
        (1 / 16, "1/16"),
        (1 / 8, "1/8"),
        (3 / 16, "3/16"),
        (1 / 4, "1/4"),
        (3 / 8, "3/8"),
        (1 / 2, "1/2"),
    )
)


class Answer(Protocol):
    """From a request, and from what faults of the last bead asked for, to the card."""

    def __call__(self, request: "Request", adjustments: "tuple[Adjustment, ...]" = (), /) -> "Card": ...


@dataclass(frozen=True, slots=True)
class Engine:
    """Tables and advice behind plain calls, so that a page can be tried with others in their place."""

    tables: "Tables"
    request: "Callable[[Fields], Request]"
    card: "Answer"
    bench: "BenchInUse | None" = None
    past: "PastWelds | None" = None

    def face(self, card: "Card", units: "Units") -> "CardFace":
        """Return the card in words."""
        from welds.gui.card_words import face_of
        from welds.reference.settings import setting_notes

        notes = setting_notes(self.tables, card.request.process.value)
        return face_of(card, units, self.tables.sources, notes)

    def card_text(self, card: "Card", units: "Units") -> str:
        """Return the card as plain text for the clipboard."""
        from welds.report.text_card import text_card

        return text_card(card, units, self.tables.sources)

    def understood(self, thickness_mm: float, units: "Units") -> str:
        """Return a thickness in both systems."""
        from welds.quantities.display import show

        shown = show(thickness_mm, "mm", "thickness", units)
        return f"{shown} = {shown.second_text}"

    def length_text(self, thickness_mm: float, units: "Units") -> str:
        """Return a thickness as the person would type it."""
        from welds.quantities.registry import convert
        from welds.quantities.units import Units

        if units is Units.INCH:
            return f"{convert(thickness_mm, 'mm', 'inch'):.3f} in"
        return figure(f"{round(thickness_mm, 2):g} mm")

    def metals(self) -> tuple[MetalOption, ...]:
        """Return every metal, those of a family together."""
        from welds.reference.metals import Metal

        metals = self.tables.records(Metal)
        families = list(dict.fromkeys(metal.family for metal in metals))
        return tuple(
            MetalOption(
                metal.id,
                _metal_text(metal.id, metal.name),
                _family_words(family),
                (metal.id, *metal.aliases, *(f"{metal.id}-{temper}" for temper in metal.tempers)),
                f"{metal.name} {family} {metal.group}",
            )
            for family in families
            for metal in metals
            if metal.family == family
        )

    def thickness_marks(self, metal: str, units: "Units") -> tuple[tuple[float, str], ...]:
        """Return the metal's own gauges and, beyond them, the plates that are sold; by thickness."""
        gauges = self._gauges(metal)
        thickest = max((thickness_mm for thickness_mm, _name in gauges), default=0.0)
        plates = PLATES_IN if units.value == "inch" else PLATES_MM
        return (*sorted(gauges), *((mm, name) for mm, name in plates if mm > thickest * 1.05))

    def _gauges(self, metal: str) -> tuple[tuple[float, str], ...]:
        from welds.reference.gauges import gauges_of
        from welds.reference.metals import find_metal

        try:
            system = find_metal(self.tables, metal).gauge_system
        except InputError:
            return ()
        gauges = gauges_of(self.tables, system) if system else ()
        return tuple(
            (gauge.thickness_mm, f"{gauge.gauge} {GAUGE_WORD}")
            for gauge in gauges
            if LOW_MM <= gauge.thickness_mm <= HIGH_MM
        )

    def gases(self) -> tuple[tuple[str, str], ...]:
        """Return (id, words) of every gas."""
        return tuple(
            (str(row["id"]), f"{row['name']} ({row['iso_code']})") for row in self.tables.table("gases").rows
        )


def _family_words(family: str) -> str:
    from welds.reference.names import name_of

    words = name_of(family)
    return words[:1].upper() + words[1:]


def _metal_text(metal: str, name: str) -> str:
    """Return the id first, as it is looked for, then the name without repeating it."""
    head, comma, tail = name.partition(",")
    rest = head.removeprefix(f"{metal} ").removesuffix(metal).strip() + comma + tail
    return metal if rest in ("", metal.replace("-", " ")) else f"{metal}   {rest}"


def load_engine(user_folder: Path | None) -> Engine:
    """Load the tables and everything slow, and answer one request so that the first real one is quick."""
    from welds.advice.advise import advise
    from welds.advice.validate import request_from_fields
    from welds.bench.keep import FILE_NAME
    from welds.gui.bench_in_use import BenchInUse
    from welds.gui.past_welds import PastWelds
    from welds.quantities.units import Units
    from welds.reference.load import load_tables

    tables = load_tables(user_folder)
    bench = BenchInUse(tables, None if user_folder is None else user_folder.parent / FILE_NAME)
    past = PastWelds(tables)

    def card(request: "Request", adjustments: "tuple[Adjustment, ...]" = ()) -> "Card":
        return advise(request, tables, bench.equipment, past.of(request), adjustments)

    engine = Engine(
        tables,
        lambda fields: request_from_fields(fields, tables),
        card,
        bench,
        past,
    )
    engine.face(engine.card(engine.request(WARM_UP)), Units.METRIC)
    return engine
