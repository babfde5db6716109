"""The bench as plain text: machines with what they give and for how long, then the shelf."""

import textwrap
from collections.abc import Iterator

from welds.advice.equipment import Machine, Shelf
from welds.advice.power_checks import FULL_DUTY_PERCENT, duty_of
from welds.advice.supply_checks import Draw, draw_at
from welds.bench.bench import Bench
from welds.physics.supply import feeder_current
from welds.reference.supply import conductor_factor
from welds.reference.tables import Tables

_WIDTH, _LABEL = 100, 24
MINUTES = 10.0


def bench_lines(bench: Bench, tables: Tables) -> Iterator[str]:
    """Yield the lines that `welds bench show` prints."""
    for machine in bench.machines:
        yield f"{machine.name}{'  (in use)' if machine is bench.machine else ''}"
        for label, words in _machine(machine, tables):
            yield _pair(label, words)
        yield ""
    shared = feeder_amps(bench, tables)
    if shared is not None:
        yield _pair(
            "all at once",
            f"conductors for about {shared:.0f} A [NEC_630_2008]; who wires it goes by the local code",
        )
        yield ""
    yield "On the shelf"
    stock = list(_shelf(bench.shelf))
    yield from (_pair(label, words) for label, words in stock)
    if not stock:
        yield "  nothing stated, so nothing is ruled out"


def feeder_amps(bench: Bench, tables: Tables) -> float | None:
    """Return the ampacity for all machines of one supply voltage at full output; None for fewer than two."""
    drawn: dict[tuple[float, int], list[float]] = {}
    for machine in bench.machines:
        draw = _at_most(machine, tables)
        if machine.supply is None or draw is None or machine.current_max_a is None:
            continue
        duty = duty_of(machine, machine.current_max_a) or FULL_DUTY_PERCENT
        drawn.setdefault((machine.supply.volts, machine.supply.phases), []).append(
            draw.high_a * conductor_factor(tables, duty).low
        )
    groups = [currents for currents in drawn.values() if len(currents) > 1]
    return feeder_current(groups[0]) if groups else None


def _at_most(machine: Machine, tables: Tables) -> Draw | None:
    if machine.supply is None or machine.current_max_a is None:
        return None
    process = "tig" if "tig" in machine.processes else "mig"
    output = "AC" if machine.has_ac and process == "tig" else "DC"
    return draw_at(tables, process, machine.current_max_a, output, machine, machine.supply)


def _machine(machine: Machine, tables: Tables) -> Iterator[tuple[str, str]]:
    yield "processes", " and ".join(sorted(machine.processes)) + f", {machine.kind.replace('-', ' ')}"
    for label, setting, unit in (
        ("current", "current", "A"),
        ("AC frequency", "ac_frequency", "Hz"),
        ("electrode negative", "electrode_negative", "%"),
        ("wire feed", "wire_feed", "m/min"),
        ("voltage", "voltage", "V"),
    ):
        words = _reach(machine, setting, unit)
        if words:
            yield label, words
    has = {"AC": machine.has_ac, "pulse": machine.has_pulse, "pedal": machine.has_pedal}
    yield "has", ", ".join(name if there else f"no {name}" for name, there in has.items())
    if machine.wire_diameters_mm:
        yield "wires", ", ".join(f"{each:g} mm" for each in sorted(machine.wire_diameters_mm))
    for amps, percent in machine.duty_cycle:
        yield "duty cycle", f"{percent / MINUTES:g} minutes in ten at {amps:g} A"
    torch = machine.torch
    if torch is not None:
        rated = f", {torch.rated_a:g} A at {torch.duty_percent:g} %" if torch.rated_a is not None else ""
        rated += f", {torch.rated_ac_a:g} A on AC" if torch.rated_ac_a is not None else ""
        yield "torch", f"{torch.cooling}-cooled{rated}"
    draw = _at_most(machine, tables)
    if draw is not None and machine.supply is not None:
        yield (
            "supply",
            f"up to {draw.high_a:.0f} A from {machine.supply.volts:g} V at {machine.current_max_a:g} A"
            f" ({draw.known})",
        )


def _reach(machine: Machine, setting: str, unit: str) -> str:
    low, high = machine.reach(setting)
    control = machine.control(setting)
    if control and control.positions:
        words = f"{', '.join(f'{each:g}' for each in control.positions)} {unit} only"
    elif low is None and high is None:
        return ""
    elif low == high:
        words = f"{low:g} {unit}, fixed"
    else:
        words = f"{'' if low is None else f'{low:g}'} to {'' if high is None else f'{high:g}'} {unit}".strip()
    if control and control.step:
        words += f", in steps of {control.step:g}"
    if control and control.marks:
        words += f"; {control.scale}: " + ", ".join(f"{name} = {figure:g}" for name, figure in control.marks)
    return words


def _shelf(shelf: Shelf) -> Iterator[tuple[str, str]]:
    for label, pairs in (("tungsten", shelf.tungstens), ("rods", shelf.fillers), ("wires", shelf.wires)):
        names = sorted({name for name, _ in pairs})
        for name in names:
            sizes = ", ".join(f"{size:g} mm" for size in sorted(size for each, size in pairs if each == name))
            yield label, f"{name}: {sizes}"
    left = dict(shelf.gas_left_l)
    for gas in sorted(shelf.gases | left.keys()):
        yield "gas", gas + (f", {left[gas]:g} L left" if gas in left else "")
    plain: tuple[tuple[str, frozenset[int] | frozenset[float] | frozenset[str], str], ...] = (
        ("cups", shelf.cups, ""),
        ("cups for a lens", shelf.lens_cups, ""),
        ("gas lenses", shelf.gas_lens_diameters_mm, " mm"),
        ("collets", shelf.collet_diameters_mm, " mm"),
        ("backing bars", shelf.backing_bars, ""),
        ("brushes for", shelf.brushes, ""),
        ("wheels for", shelf.wheels, ""),
        ("tungsten types", shelf.tungsten_types, ""),
        ("tungsten sizes", shelf.tungsten_diameters_mm, " mm"),
        ("filler metals", shelf.filler_metals, ""),
        ("rod sizes", shelf.filler_diameters_mm, " mm"),
        ("wire sizes", shelf.wire_diameters_mm, " mm"),
    )
    for label, stock, unit in plain:
        if stock:
            yield label, ", ".join(f"{each}{unit}" for each in sorted(stock))
    if shelf.has_gas_lens is not None:
        yield "gas lens", "yes" if shelf.has_gas_lens else "no"
    for low, high in shelf.helmet_shades:
        yield "helmet", f"shade {low}" if low == high else f"shades {low} to {high}"


def _pair(label: str, words: str) -> str:
    lead = f"  {label}".ljust(_LABEL)
    return "\n".join(textwrap.wrap(words, _WIDTH, initial_indent=lead, subsequent_indent=" " * _LABEL))
