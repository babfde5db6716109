"""What each field of the bench file means, in a few words: comments of the file and labels of the page."""

from collections.abc import Mapping

MACHINE: Mapping[str, str] = {
    "name": "any words; the card shows them",
    "kind": "inverter, corrected-inverter (with power factor correction) or transformer",
    "processes": "tig, mig or both",
    "current_min_a": "lowest current [A]",
    "current_max_a": "highest current [A]",
    "current_step_a": "smallest step of the current [A]",
    "current_a": "the only currents there are, where it has a switch [A]",
    "has_ac": "yes where it can weld aluminium on AC",
    "ac_wave": "square or sine; a sine wave is harder on the tungsten",
    "ac_frequency_min_hz": "lowest AC frequency [Hz]",
    "ac_frequency_max_hz": "highest AC frequency [Hz]",
    "ac_frequency_step_hz": "smallest step [Hz]",
    "ac_frequency_hz": "the fixed frequency, or a list of the only ones [Hz]",
    "electrode_negative_min_percent": "least electrode negative [%]; 30 % positive is 70 % negative",
    "electrode_negative_max_percent": "most electrode negative [%]",
    "electrode_negative_step_percent": "smallest step [%]",
    "electrode_negative_percent": "the fixed balance, or a list of the only ones [%]",
    "has_pulse": "yes or no",
    "has_pedal": "yes or no",
    "has_hot_start": "yes or no",
    "wire_feed_min_m_min": "slowest wire [m/min]",
    "wire_feed_max_m_min": "fastest wire [m/min]",
    "voltage_min_v": "lowest voltage [V]",
    "voltage_max_v": "highest voltage [V]",
    "voltage_v": "the only voltages there are, where it has taps [V]",
    "wire_diameters": "wires that its rolls and gun take",
    "scales": "own dials and switches: what they read and what it means",
    "duty_cycle": "from the rating plate: current and percent of ten minutes",
    "open_circuit_dc_v": "open-circuit voltage on DC, peak [V]",
    "open_circuit_ac_v": "open-circuit voltage on AC, rms [V]",
    "torch": "torch or gun: cooling air or water, rated current on DC and on AC, at what percent",
    "supply_volts": "what the machine may be plugged into [V]",
    "plug": "any words",
    "efficiency": "from the plate, where it says so (0.3 to 1)",
    "power_factor": "from the plate, where it says so (0.3 to 1)",
    "supply": "your circuit: volts, phases, breaker_a, cord_mm2, cord_length_m, cord_rated_a, generator_kva",
}
SHELF: Mapping[str, tuple[str, str]] = {
    "tungstens": ("type by its ISO code, with diameters", "{WLa20: [1.6 mm, 2.4 mm], WCe20: [1.6 mm]}"),
    "fillers": ("rods by class, with diameters", "{ER5356: [2.4 mm], ER4043: [1.6 mm, 2.4 mm]}"),
    "wires": ("spools by class, with diameters", "{ER70S-6: [0.8 mm]}"),
    "gases": (
        "litres left (water volume in litres times bar), or unknown",
        "{argon: 3200, ar-25co2: unknown}",
    ),
    "cups": ("cup numbers", "[5, 6, 7, 8]"),
    "lens_cups": ("cup numbers that go on a gas lens", "[8, 10]"),
    "has_gas_lens": ("yes or no", "yes"),
    "gas_lenses": ("gas lenses, by tungsten diameter", "[2.4 mm]"),
    "collets": ("collets, by tungsten diameter", "[1.6 mm, 2.4 mm]"),
    "backing_bars": ("copper, stainless, aluminium", "[copper]"),
    "helmet_shades": ("shade or range of each helmet", "[9-13]"),
    "brushes": ("metals that have a brush of their own", "[aluminium, steel, stainless]"),
    "wheels": ("metals that have grinding wheels of their own", "[aluminium, steel]"),
}
"""Field -> (what it means, an example)."""

HEAD = """\
# Your bench: the machines and the shelf that every card is fitted to. Edit it by hand or in the window.
# What you leave out counts as "not stated" and limits nothing. `welds bench check` reads it through.
"""
MACHINES_HEAD = "# One entry for each machine. The rating plate knows most of this.\n"
SHELF_HEAD = """\
# What is there. A kind that is listed limits the card to what is listed, the rest goes on a shopping list;
# a kind that is left out limits nothing. Take the # away from the lines you fill in.
"""
