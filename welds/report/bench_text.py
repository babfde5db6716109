"""The bench as plain text: machines with what they give and for how long, then the shelf."""

import textwrap
from collections.abc import Iterable, Iterator

from welds.advice.equipment import Machine, Shelf
from welds.advice.power_checks import FULL_DUTY_PERCENT, duty_of
from welds.advice.supply_checks import Draw, draw_at
from welds.bench.bench import Bench
from welds.language import figure, mark, tr
from welds.physics.supply import feeder_current
from welds.reference.names import name_of
from welds.reference.supply import conductor_factor
from welds.reference.tables import Tables
from welds.report.wording import machine_name, yes_or_no

_WIDTH, _LABEL = 100, 24
MINUTES = 10.0
_PROCESSES = {"mig": mark("mig"), "tig": mark("tig")}
_COOLING = {"air": mark("air-cooled"), "water": mark("water-cooled")}


def bench_lines(bench: Bench, tables: Tables) -> Iterator[str]:
    """Yield the lines that `welds bench show` prints."""
    for machine in bench.machines:
        name = machine_name(machine.name)
        yield tr("{name}  (in use)", name=name) if machine is bench.machine else name
        for label, words in _machine(machine, tables):
            yield _pair(label, words)
        yield ""
    shared = feeder_amps(bench, tables)
    if shared is not None:
        yield _pair(
            tr("all at once"),
            tr(
                "conductors for about {current:.0f} A [NEC_630_2008]; who wires it goes by the local code",
                current=shared,
            ),
        )
        yield ""
    yield tr("On the shelf")
    stock = list(_shelf(bench.shelf))
    yield from (_pair(label, words) for label, words in stock)
    if not stock:
        yield "  " + tr("nothing stated, so nothing is ruled out")


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
    yield tr("processes"), f"{_processes(machine)}, {name_of(machine.kind)}"
    for label, setting, unit in (
        (tr("current"), "current", "A"),
        (tr("AC frequency"), "ac_frequency", "Hz"),
        (tr("electrode negative"), "electrode_negative", "%"),
        (tr("wire feed"), "wire_feed", "m/min"),
        (tr("voltage"), "voltage", "V"),
    ):
        words = _reach(machine, setting, unit)
        if words:
            yield label, words
    has = (
        tr("AC") if machine.has_ac else tr("no AC"),
        tr("pulse") if machine.has_pulse else tr("no pulse"),
        tr("pedal") if machine.has_pedal else tr("no pedal"),
    )
    yield tr("has"), ", ".join(has)
    if machine.wire_diameters_mm:
        yield tr("wires"), _sizes(machine.wire_diameters_mm)
    for amps, percent in machine.duty_cycle:
        yield (
            tr("duty cycle"),
            tr("{minutes:g} minutes in ten at {amps:g} A", minutes=percent / MINUTES, amps=amps),
        )
    torch = machine.torch
    if torch is not None:
        rated = [tr(_COOLING[torch.cooling])]
        if torch.rated_a is not None:
            rated.append(tr("{amps:g} A at {duty:g} %", amps=torch.rated_a, duty=torch.duty_percent))
        if torch.rated_ac_a is not None:
            rated.append(tr("{amps:g} A on AC", amps=torch.rated_ac_a))
        yield tr("torch"), ", ".join(rated)
    draw = _at_most(machine, tables)
    if draw is not None and machine.supply is not None:
        yield (
            tr("supply"),
            tr(
                "up to {drawn:.0f} A from {volts:g} V at {current:g} A ({known})",
                drawn=draw.high_a,
                volts=machine.supply.volts,
                current=machine.current_max_a,
                known=draw.known,
            ),
        )


def _reach(machine: Machine, setting: str, unit: str) -> str:
    low, high = machine.reach(setting)
    control = machine.control(setting)
    if control and control.positions:
        figures = ", ".join(figure(f"{each:g}") for each in control.positions)
        words = tr("{figures} {unit} only", figures=figures, unit=unit)
    elif low is None and high is None:
        return ""
    elif low == high:
        words = tr("{low:g} {unit}, fixed", low=low, unit=unit)
    else:
        ends = ["" if each is None else figure(f"{each:g}") for each in (low, high)]
        words = tr("{low} to {high} {unit}", low=ends[0], high=ends[1], unit=unit).strip()
    if control and control.step:
        words += ", " + tr("in steps of {step:g}", step=control.step)
    if control and control.marks:
        words += f"; {control.scale}: " + ", ".join(
            f"{name} = {figure(f'{amount:g}')}" for name, amount in control.marks
        )
    return words


def _shelf(shelf: Shelf) -> Iterator[tuple[str, str]]:
    for label, pairs in (
        (tr("tungsten"), shelf.tungstens),
        (tr("rods"), shelf.fillers),
        (tr("wires"), shelf.wires),
    ):
        names = sorted({name for name, _ in pairs})
        for name in names:
            yield label, f"{name}: {_sizes(size for each, size in pairs if each == name)}"
    left = dict(shelf.gas_left_l)
    for gas in sorted(shelf.gases | left.keys()):
        yield tr("gas"), tr("{gas}, {litres:g} L left", gas=gas, litres=left[gas]) if gas in left else gas
    plain: tuple[tuple[str, frozenset[int] | frozenset[float] | frozenset[str], str], ...] = (
        (tr("cups"), shelf.cups, ""),
        (tr("cups for a lens"), shelf.lens_cups, ""),
        (tr("gas lenses"), shelf.gas_lens_diameters_mm, " mm"),
        (tr("collets"), shelf.collet_diameters_mm, " mm"),
        (tr("backing bars"), frozenset(map(name_of, shelf.backing_bars)), ""),
        (tr("brushes for"), frozenset(map(name_of, shelf.brushes)), ""),
        (tr("wheels for"), frozenset(map(name_of, shelf.wheels)), ""),
        (tr("tungsten types"), shelf.tungsten_types, ""),
        (tr("tungsten sizes"), shelf.tungsten_diameters_mm, " mm"),
        (tr("filler metals"), shelf.filler_metals, ""),
        (tr("rod sizes"), shelf.filler_diameters_mm, " mm"),
        (tr("wire sizes"), shelf.wire_diameters_mm, " mm"),
    )
    for label, stock, unit in plain:
        if stock:
            yield label, ", ".join(figure(f"{each}{unit}") if unit else f"{each}" for each in sorted(stock))
    if shelf.has_gas_lens is not None:
        yield tr("gas lens"), yes_or_no(shelf.has_gas_lens)
    for low, high in shelf.helmet_shades:
        yield (
            tr("helmet"),
            tr("shade {low}", low=low) if low == high else tr("shades {low} to {high}", low=low, high=high),
        )


def _processes(machine: Machine) -> str:
    first, *second = (tr(_PROCESSES[each]) for each in sorted(machine.processes))
    return tr("{first} and {second}", first=first, second=second[0]) if second else first


def _sizes(sizes: Iterable[float]) -> str:
    return ", ".join(figure(f"{size:g} mm") for size in sorted(sizes))


def _pair(label: str, words: str) -> str:
    lead = f"  {label}".ljust(_LABEL)
    return "\n".join(textwrap.wrap(words, _WIDTH, initial_indent=lead, subsequent_indent=" " * _LABEL))
