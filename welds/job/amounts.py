"""What one joint uses up, as ranges: filler, gas, arc time, bench time, energy."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import pi
from typing import ClassVar

from welds.advice.card import Card
from welds.advice.equipment import Machine
from welds.advice.request import Joint, Process
from welds.job.job import JointWork
from welds.job.weld_section import plug_volume, weld_section
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.basis import Basis
from welds.reference.fillers import Filler
from welds.reference.tables import Tables

_STEEL_KG_M3 = 7850.0
_LITRE = "L"
JOULES_PER_KWH = 3.6e6


@dataclass(frozen=True, slots=True)
class Use:
    """One share or distance of the consumption table."""

    TABLE: ClassVar[str] = "consumption"

    row_id: str
    topic: str
    process: str
    low: float
    start: float
    high: float
    unit: str
    source_id: str
    basis: Basis


@dataclass(frozen=True, slots=True)
class Amounts:
    """What all seams of a joint use; `trouble` says what could not be worked out."""

    volume_mm3: float
    filler: str
    filler_mm: float | None
    filler_kg: Band
    gas: str
    gas_l: Band
    arc_s: Band
    bench_s: Band
    energy_kwh: Band
    seam_mm: float
    trouble: str


def use(tables: Tables, topic: str, process: Process) -> Use:
    """Return the row of a topic for a process."""
    rows = [row for row in tables.records(Use) if row.topic == topic]
    return next(row for row in rows if row.process in (process.value, "both"))


def joint_amounts(tables: Tables, machine: Machine, work: JointWork, card: Card, starts: int) -> Amounts:
    """Return what the joint uses; `starts` is how often the arc is struck on one seam."""
    request, settings = work.request, card.settings
    process = request.process
    thin = min(request.thickness_mm, request.other_thickness_mm or request.thickness_mm)
    times = float(work.count)
    seam = work.length_mm * times
    arc, trouble = _arc_time(work, card)
    if request.joint is Joint.PLUG:
        hole = settings["plug_hole"].figure.start if "plug_hole" in settings else 0.0
        volume = plug_volume(hole, request.thickness_mm) * times
    else:
        volume = weld_section(request.joint, thin, request.gap_mm) * seam
    filler, size = _filler(card)
    record = next((row for row in tables.records(Filler) if row.id == filler), None)
    density = record.density_kg_m3 if record else _STEEL_KG_M3
    mass = volume * density * 1e-9
    cap, kept = use(tables, "cap-over-section", process), use(tables, "filler-in-the-weld", process)
    bought = Band(mass * cap.low / kept.high, mass * cap.start / kept.start, mass * cap.high / kept.low, "kg")
    share = use(tables, "arc-share", process)
    bench = Band(arc.low / share.high, arc.start / share.start, arc.high / share.low, "s")
    gas = settings["shielding_gas"].start if "shielding_gas" in settings else ""
    return Amounts(
        volume,
        filler,
        size,
        bought,
        str(gas),
        _gas(card, arc, times * starts),
        arc,
        bench,
        _energy(tables, machine, card, arc),
        seam,
        trouble,
    )


def total(bands: Sequence[Band], unit: str) -> Band:
    """Return the sum: lows, starts and highs each by themselves, so that the range is on the safe side."""
    return Band(
        sum(band.low for band in bands),
        sum(band.start for band in bands),
        sum(band.high for band in bands),
        unit,
    )


def rod_length_m(mass_kg: float, diameter_mm: float, density_kg_m3: float) -> float:
    """Return how long a rod or wire of that mass is."""
    return mass_kg / (density_kg_m3 * pi * (diameter_mm / 1000.0) ** 2 / 4.0)


def _arc_time(work: JointWork, card: Card) -> tuple[Band, str]:
    settings = card.settings
    if work.request.joint is Joint.PLUG:
        if "plug_time" in settings:
            return settings["plug_time"].figure.scaled(work.count), ""
        return Band(0.0, 0.0, 0.0, "s"), tr("no plug time in the tables: time, gas and power are without it")
    if "travel_speed" not in settings:
        return Band(0.0, 0.0, 0.0, "s"), tr(
            "no travel speed in the tables: time, gas and power are without it"
        )
    speed = settings["travel_speed"].figure
    passes = settings["passes"].start if "passes" in settings else 1
    seam = work.length_mm * work.count * float(passes)
    return Band(seam / speed.high, seam / speed.start, seam / speed.low, "s"), ""


def _filler(card: Card) -> tuple[str, float | None]:
    """Return the class of rod or wire and its diameter."""
    is_tig = card.request.process is Process.TIG
    metal, size = ("filler_metal", "filler_diameter") if is_tig else ("wire", "wire_diameter")
    name = card.settings[metal].start if metal in card.settings else ""
    diameter = card.settings[size].start if size in card.settings else None
    is_number = isinstance(diameter, float | int) and not isinstance(diameter, bool)
    return str(name), float(diameter) if is_number and diameter is not None else None


def _gas(card: Card, arc: Band, strikes: float) -> Band:
    if "gas_flow" not in card.settings:
        return Band(0.0, 0.0, 0.0, _LITRE)
    flow = card.settings["gas_flow"].figure
    extra = [0.0, 0.0, 0.0]
    for name in ("pre_flow", "post_flow"):
        if name in card.settings:
            band = card.settings[name].figure
            extra = [sum(pair) for pair in zip(extra, (band.low, band.start, band.high), strict=True)]
    low, start, high = (seconds * strikes for seconds in extra)
    return Band(
        flow.low * (arc.low + low) / 60.0,
        flow.start * (arc.start + start) / 60.0,
        flow.high * (arc.high + high) / 60.0,
        _LITRE,
    )


def _energy(tables: Tables, machine: Machine, card: Card, arc: Band) -> Band:
    """Return what the arc takes from the mains; idle draw is small beside it and left out."""
    if "current" not in card.settings or "arc_voltage" not in card.settings:
        return Band(0.0, 0.0, 0.0, "kWh")
    amps, volts = card.settings["current"].figure, card.settings["arc_voltage"].figure
    worst, best = _efficiency(tables, machine)
    return Band(
        amps.low * volts.low * arc.low / best / JOULES_PER_KWH,
        amps.start * volts.start * arc.start / ((worst + best) / 2.0) / JOULES_PER_KWH,
        amps.high * volts.high * arc.high / worst / JOULES_PER_KWH,
        "kWh",
    )


def _efficiency(tables: Tables, machine: Machine) -> tuple[float, float]:
    if machine.efficiency is not None:
        return machine.efficiency, machine.efficiency
    rows = [row for row in tables.table("supply").rows if row["topic"] == "efficiency"]
    own = [row for row in rows if row["kind"] == machine.kind] or rows
    return min(float(str(row["low"])) for row in own), max(float(str(row["high"])) for row in own)
