"""Printed conditions for butts welded from one side in one run, beside those of the schedules.

Five tables of reference that stand in operating instructions of arc welding power sources, read in their
text:

A  CO2 welding conditions, solid wire, square groove, without and with copper backing: instructions of a 400 A
   source, WMD078TE0PAA07, sec. 13.1, p. 143
B  MAG welding conditions, 80 % argon and 20 % carbon dioxide, square groove: instructions of a 350 A source,
   appendix, p. 52
C  MAG short arc, butt joint, and MIG on aluminium, butt without preparation: instructions of a 350 A source,
   materials for setting welding conditions, 10.3.2.2 and 10.3.2.3, p. 148; which of the two aluminium
   tables is the butt's was taken from the order of their captions
D  CO2, butt without preparation or backing, one layer: instructions of a 500 A source, ch. 10, p. 10-8
E  TIG welding conditions, stainless steel, direct current, butt, downward: instructions of a 300 A torch
   and source, OMCTT5621E18, sec. 14.1, p. 54

Taken because they print current, travel and, for MIG, gap and voltage; every butt row of each, but for those
welded from both sides and 12 mm in E, which no single run goes through. They carry no advice: the heat
model's constants are fitted to them and to the schedules' rows together.

Thickness mm, gap mm, wire mm (0 for TIG; the thinnest where several are printed), amperes, volts, travel
cm/min.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import count

from tests.published.heat_rows import HeatRow, make_row
from welds.advice.heat.bead import HeatSettings
from welds.advice.request import Joint, Process, Request, Transfer
from welds.reference.tables import Tables

Ends = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Printed:
    """One row as printed."""

    thickness_mm: float
    gap_mm: Ends
    wire_mm: float
    current_a: Ends
    voltage_v: Ends | None
    travel_cm_min: Ends


@dataclass(frozen=True, slots=True)
class Sheet:
    """One table: what its rows have in common."""

    document: str
    metal: str
    gas: str
    transfer: Transfer | None
    has_bar: bool
    rows: tuple[Printed, ...]


TIGHT = (0.0, 0.0)
CO2_OPEN = Sheet(
    "A", "low-carbon", "co2", Transfer.SHORT_CIRCUIT, False,
    (
        Printed(0.8, TIGHT, 0.8, (60, 70), (16, 16.5), (50, 60)),
        Printed(1.0, TIGHT, 0.8, (75, 85), (17, 17.5), (50, 60)),
        Printed(1.2, TIGHT, 0.8, (80, 90), (17, 18), (50, 60)),
        Printed(1.6, TIGHT, 0.8, (95, 105), (18, 19), (45, 50)),
        Printed(2.0, (0, 0.5), 1.0, (110, 120), (19, 19.5), (45, 50)),
        Printed(2.3, (0.5, 1.0), 1.0, (120, 130), (19.5, 20), (45, 50)),
        Printed(3.2, (1.0, 1.2), 1.0, (140, 150), (20, 21), (45, 50)),
        Printed(4.5, (1.0, 1.2), 1.0, (170, 185), (22, 23), (40, 50)),
    ),
)  # fmt: skip
CO2_ON_COPPER = Sheet(
    "A", "low-carbon", "co2", Transfer.SHORT_CIRCUIT, True,
    (
        Printed(0.6, TIGHT, 0.6, (40, 40), (16, 16), (60, 60)),
        Printed(0.8, TIGHT, 0.6, (40, 40), (16.5, 16.5), (45, 45)),
        Printed(0.8, TIGHT, 0.8, (80, 90), (18, 19), (45, 50)),
        Printed(1.0, TIGHT, 0.9, (50, 50), (18, 18), (45, 45)),
        Printed(1.2, TIGHT, 0.8, (60, 60), (18, 18), (45, 45)),
        Printed(1.2, (0, 0.5), 0.9, (90, 120), (19, 20), (40, 50)),
        Printed(1.6, TIGHT, 0.9, (95, 105), (18, 19), (45, 50)),
        Printed(1.6, (0, 0.5), 1.2, (120, 140), (19, 20), (40, 50)),
        Printed(2.3, (0, 0.8), 0.9, (100, 140), (19, 21), (35, 45)),
        Printed(2.3, (0, 1.2), 1.2, (130, 150), (19, 21), (35, 45)),
        Printed(3.2, (0, 1.5), 1.2, (130, 180), (20, 23), (30, 35)),
        Printed(4.5, (1, 2), 1.2, (150, 200), (21, 24), (40, 45)),
        Printed(6.0, (0, 0.8), 1.2, (280, 330), (28, 36), (35, 45)),
    ),
)  # fmt: skip
MIXED = Sheet(
    "B", "low-carbon", "ar-18co2", Transfer.SHORT_CIRCUIT, False,
    (
        Printed(0.4, TIGHT, 0.4, (20, 20), (15, 15), (40, 40)),
        Printed(0.6, TIGHT, 0.6, (25, 25), (15, 15), (30, 30)),
        Printed(0.8, TIGHT, 0.6, (30, 40), (15, 15), (40, 55)),
        Printed(1.2, TIGHT, 0.8, (60, 70), (15, 16), (30, 50)),
        Printed(1.6, TIGHT, 0.8, (100, 110), (16, 17), (40, 60)),
        Printed(3.2, (1.0, 1.5), 0.8, (120, 140), (16, 17), (25, 30)),
        Printed(4.0, (1.5, 2.0), 1.0, (150, 160), (17, 18), (20, 30)),
    ),
)  # fmt: skip
MIXED_AGAIN = Sheet(
    "C", "low-carbon", "ar-18co2", Transfer.SHORT_CIRCUIT, False,
    (
        Printed(1.0, TIGHT, 0.8, (50, 55), (13, 15), (40, 55)),
        Printed(1.2, TIGHT, 0.8, (60, 70), (14, 16), (30, 50)),
        Printed(1.6, TIGHT, 0.8, (100, 110), (16, 17), (40, 60)),
        Printed(2.3, (0, 1.0), 0.9, (110, 120), (17, 18), (30, 40)),
        Printed(3.2, (1.0, 1.5), 0.9, (120, 140), (17, 19), (25, 30)),
        Printed(4.0, (1.5, 2.0), 0.9, (150, 170), (18, 21), (25, 40)),
    ),
)  # fmt: skip
ALUMINIUM = Sheet(
    "C", "5052", "argon", Transfer.SPRAY, False,
    (
        Printed(3.0, TIGHT, 1.2, (120, 140), (20, 22), (60, 80)),
        Printed(4.0, TIGHT, 1.2, (150, 170), (22, 24), (60, 80)),
        Printed(6.0, TIGHT, 1.6, (180, 210), (23, 25), (40, 60)),
    ),
)  # fmt: skip
CO2_OPEN_AGAIN = Sheet(
    "D", "low-carbon", "co2", Transfer.SHORT_CIRCUIT, False,
    (
        Printed(1.2, TIGHT, 0.9, (70, 80), (17, 18), (45, 55)),
        Printed(1.6, TIGHT, 0.9, (80, 100), (18, 19), (45, 55)),
        Printed(2.0, (0, 0.5), 0.9, (100, 110), (19, 20), (50, 55)),
        Printed(2.3, (0.5, 1.0), 0.9, (110, 130), (19, 20), (50, 55)),
        Printed(3.2, (1.0, 1.2), 0.9, (130, 150), (19, 21), (40, 50)),
        Printed(4.5, (1.2, 1.5), 1.2, (150, 170), (21, 23), (40, 50)),
    ),
)  # fmt: skip
STAINLESS = Sheet(
    "E", "304", "", None, False,
    (
        Printed(0.5, TIGHT, 0, (10, 15), None, (40, 40)),
        Printed(1.0, TIGHT, 0, (30, 40), None, (15, 40)),
        Printed(1.5, TIGHT, 0, (60, 100), None, (15, 30)),
        Printed(2.5, TIGHT, 0, (100, 120), None, (20, 30)),
        Printed(3.0, TIGHT, 0, (120, 140), None, (30, 30)),
        Printed(4.5, TIGHT, 0, (200, 250), None, (25, 25)),
        Printed(6.0, TIGHT, 0, (275, 350), None, (25, 25)),
    ),
)  # fmt: skip
SHEETS = (CO2_OPEN, CO2_ON_COPPER, MIXED, MIXED_AGAIN, ALUMINIUM, CO2_OPEN_AGAIN, STAINLESS)


def condition_rows(tables: Tables) -> Iterator[HeatRow]:
    """Yield every row as a case for the model, ranges by their middles."""
    number = count(1)
    for sheet in SHEETS:
        for row in sheet.rows:
            request = Request(
                Process.TIG if sheet.transfer is None else Process.MIG,
                sheet.metal,
                row.thickness_mm,
                Joint.BUTT,
                gap_mm=_middle(row.gap_mm),
                gas=sheet.gas or None,
                wire_diameter_mm=row.wire_mm or None,
                transfer=sheet.transfer,
            )
            settings = HeatSettings(
                _middle(row.current_a),
                _middle(row.travel_cm_min) / 6.0,
                None if row.voltage_v is None else _middle(row.voltage_v),
                has_bar=sheet.has_bar,
            )
            yield make_row(
                tables, f"{sheet.document}-{next(number)}", f"conditions {sheet.document}", request, settings
            )


def _middle(ends: Ends) -> float:
    return (ends[0] + ends[1]) / 2.0
