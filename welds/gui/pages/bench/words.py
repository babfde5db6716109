"""The words of the bench page; made where Qt can translate them."""

from collections.abc import Mapping

from PySide6.QtCore import QObject

from welds.gui.pages.bench.own_units import CORD, FEED, LEFT
from welds.quantities.units import Units


class BenchWords(QObject):
    """Labels of the form and of the shelf."""

    def groups(self) -> Mapping[str, str]:
        """Return the headings of the form."""
        return {
            "machine": self.tr("Machine"),
            "current": self.tr("Current and duty cycle"),
            "ac": self.tr("AC: frequency and balance"),
            "wire": self.tr("Wire and voltage"),
            "scales": self.tr("Own dials and switches"),
            "torch": self.tr("Torch or gun"),
            "supply": self.tr("Supply"),
        }

    def fields(self, units: Units) -> Mapping[str, str]:
        """Return the labels of the form's lines."""
        feed, cord = FEED.name(units), CORD.name(units)
        return {
            "name": self.tr("Name"),
            "processes": self.tr("Processes"),
            "kind": self.tr("Kind"),
            "has_pedal": self.tr("Pedal"),
            "has_pulse": self.tr("Pulse"),
            "has_hot_start": self.tr("Hot start"),
            "current_min_a": self.tr("Lowest [A]"),
            "current_max_a": self.tr("Highest [A]"),
            "current_step_a": self.tr("Step [A]"),
            "current_a": self.tr("Only these [A]"),
            "duty_cycle": self.tr("Duty cycle"),
            "open_circuit_dc_v": self.tr("Open, DC [V]"),
            "open_circuit_ac_v": self.tr("Open, AC [V]"),
            "has_ac": self.tr("Welds on AC"),
            "ac_wave": self.tr("Wave"),
            "ac_frequency_min_hz": self.tr("Lowest [Hz]"),
            "ac_frequency_max_hz": self.tr("Highest [Hz]"),
            "ac_frequency_step_hz": self.tr("Step [Hz]"),
            "ac_frequency_hz": self.tr("Only these [Hz]"),
            "electrode_negative_min_percent": self.tr("Least negative [%]"),
            "electrode_negative_max_percent": self.tr("Most negative [%]"),
            "electrode_negative_step_percent": self.tr("Step [%]"),
            "electrode_negative_percent": self.tr("Only these [%]"),
            "wire_feed_min_m_min": self.tr("Feed from [{unit}]").format(unit=feed),
            "wire_feed_max_m_min": self.tr("Feed to [{unit}]").format(unit=feed),
            "voltage_min_v": self.tr("Voltage from [V]"),
            "voltage_max_v": self.tr("Voltage to [V]"),
            "voltage_v": self.tr("Only these [V]"),
            "wire_diameters": self.tr("Wires it takes"),
            "scales.current": self.tr("Current"),
            "scales.ac_frequency": self.tr("AC frequency"),
            "scales.electrode_negative": self.tr("Balance"),
            "scales.wire_feed": self.tr("Wire feed"),
            "scales.voltage": self.tr("Voltage"),
            "torch.cooling": self.tr("Cooling"),
            "torch.rated_a": self.tr("Rated [A]"),
            "torch.rated_ac_a": self.tr("Rated on AC [A]"),
            "torch.percent": self.tr("At duty [%]"),
            "supply.volts": self.tr("Your outlet [V]"),
            "supply.phases": self.tr("Phases"),
            "supply.breaker_a": self.tr("Breaker or fuse [A]"),
            "supply.cord_rated_a": self.tr("Cord rated [A]"),
            "supply.cord_mm2": self.tr("Cord [mm²]"),
            "supply.cord_length_m": self.tr("Cord length [{unit}]").format(unit=cord),
            "supply.generator_kva": self.tr("Generator [kVA]"),
            "supply_volts": self.tr("Made for [V]"),
            "plug": self.tr("Mains plug"),
            "efficiency": self.tr("Efficiency"),
            "power_factor": self.tr("Power factor"),
        }

    def hints(self, units: Units) -> Mapping[str, str]:
        """Return examples for the lines that need one."""
        is_inch = units is Units.INCH
        scale = "{name: dial, marks: {1: 40, 10: 200}}"
        return {
            "processes": "tig, mig",
            "current_a": "40, 60, 85",
            "duty_cycle": "200 A at 25 %, 130 A at 60 %",
            "ac_frequency_hz": "60",
            "electrode_negative_percent": "50, 65, 80",
            "voltage_v": "15, 16.5, 18",
            "wire_diameters": "0.023 in, 0.030 in" if is_inch else "0.6 mm, 0.8 mm",
            "scales.current": scale,
            "scales.ac_frequency": scale,
            "scales.electrode_negative": "{name: '% electrode positive', marks: {50: 50, 10: 90}}",
            "scales.wire_feed": "{name: dial, unit: in/min, marks: {1: 70, 10: 550}}",
            "supply.cord_mm2": self.tr("12 AWG is 3.31") if is_inch else "2.5",
            "scales.voltage": "{name: tap, only_marks: yes, marks: {A: 15, B: 16.5}}",
            "supply_volts": "230, 400",
        }

    def left(self, gas: str, units: Units) -> str:
        """Return the label of what is left of a gas."""
        return self.tr("{gas}, {unit} left").format(gas=gas, unit=LEFT.name(units))

    def left_hint(self, units: Units) -> str:
        """Return how what is left is found."""
        if units is Units.INCH:
            return self.tr("full bottle times psi over full psi")
        return self.tr("water volume times bar")

    def shelf(self) -> Mapping[str, str]:
        """Return the headings of the shelf's kinds."""
        return {
            "tungstens": self.tr("Tungsten"),
            "fillers": self.tr("Filler rods"),
            "wires": self.tr("Wire spools"),
            "gases": self.tr("Gases"),
            "cups": self.tr("Cups"),
            "lens_cups": self.tr("Cups for a gas lens"),
            "gas_lenses": self.tr("Gas lenses, by tungsten"),
            "collets": self.tr("Collets, by tungsten"),
            "backing_bars": self.tr("Backing bars"),
            "brushes": self.tr("Brushes kept for"),
            "wheels": self.tr("Grinding wheels kept for"),
            "helmet_shades": self.tr("Helmet shades"),
            "has_gas_lens": self.tr("Gas lens there"),
        }
