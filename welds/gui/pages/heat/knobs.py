"""The sliders of the page: what each one sets, between which ends, and how its figure is read and written."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import exp, log

from welds.advice.card import Card
from welds.advice.heat.bead import HeatSettings
from welds.advice.heat.disagreement import settings_of
from welds.advice.heat.efficiency import USUAL_ELECTRODE_NEGATIVE
from welds.advice.request import Process, Request
from welds.errors import InputError
from welds.language import figure, mark, tr
from welds.physics.arc import MIG_LOAD_LINE_V, TIG_LOAD_LINE_V
from welds.quantities.display import display_unit, show, show_band
from welds.quantities.length import parse_length
from welds.quantities.registry import convert
from welds.quantities.speed import parse_speed
from welds.quantities.typed import read_typed
from welds.quantities.units import Units

CURRENT, TRAVEL, VOLTAGE, THICKNESS = "current", "travel", "voltage", "thickness"
START, FREQUENCY, BALANCE = "start", "frequency", "balance"
STEPS = 1000
USUAL_FREQUENCY_HZ = 60.0
_UNIT_WORDS: Mapping[str, Mapping[str, str]] = {
    "A": {"a": "A", "amp": "A", "amps": "A"},
    "V": {"v": "V", "volt": "V", "volts": "V"},
    "Hz": {"hz": "Hz"},
    "percent": {"%": "percent", "percent": "percent"},
    "degC": {"c": "degC", "degc": "degC", "f": "degF", "degf": "degF"},
}
_EXAMPLES = {
    CURRENT: mark("a current such as 90 A"),
    VOLTAGE: mark("a voltage such as 12.5 V"),
    FREQUENCY: mark("a frequency such as 120 Hz"),
    BALANCE: mark("percent electrode negative, such as 70 %"),
    START: mark("a temperature such as 100 C"),
}


@dataclass(frozen=True, slots=True)
class Knob:
    """One slider in the unit the physics uses; `kind` is what its figure is rounded like.

    `card` is the card's start figure, `band` its band. `is_trend` marks a direction without a published size.
    """

    name: str
    kind: str
    unit: str
    low: float
    high: float
    step: float
    card: float
    value: float
    band: tuple[float, float] | None = None
    is_log: bool = False
    is_trend: bool = False

    def place(self, value: float) -> int:
        """Return where a value stands on the slider, 0 to STEPS; beyond an end it stands at the end."""
        share = (
            (log(max(value, 1e-6)) - log(self.low)) / (log(self.high) - log(self.low))
            if self.is_log
            else (value - self.low) / (self.high - self.low)
        )
        return round(STEPS * min(max(share, 0.0), 1.0))

    def value_at(self, place: int) -> float:
        """Return the value at a place of the slider, on a whole step."""
        share = place / STEPS
        value = (
            exp(log(self.low) + share * (log(self.high) - log(self.low)))
            if self.is_log
            else self.low + share * (self.high - self.low)
        )
        return min(max(round(value / self.step) * self.step, self.low), self.high)

    def text(self, units: Units) -> str:
        """Return the value as it stands in the box."""
        if self.name == CURRENT:
            return f"{self.value:.0f} A"
        if self.name == VOLTAGE:
            return figure(f"{self.value:.1f} V")
        return str(show(self.value, self.unit, self.kind, units))

    def band_text(self, units: Units) -> str:
        """Return the card's band, or its figure where it has none."""
        if self.band is None:
            return str(replace(self, value=self.card).text(units))
        from welds.quantities.band import Band

        shown = show_band(Band(self.band[0], self.card, self.band[1], self.unit), self.kind, units)
        return f"{shown.range_text} {shown.unit_text}"

    def read(self, text: str, units: Units) -> float:
        """Return what was typed in the physics' unit; raises InputError outside what can be meant."""
        if self.name == TRAVEL:
            value = parse_speed(_with_unit(text, units, "mm/min"), field="travel", default=units).mm_s
        elif self.name == THICKNESS:
            value = parse_length(text, field="thickness", default=units).mm
        else:
            value = self._plain(text, units)
        low, high = LIMITS[self.name]
        if not low <= value <= high:
            ends = tuple(replace(self, value=each).text(units) for each in (low, high))
            raise InputError(
                tr(WORD[self.name]), text.strip(), tr("{low} to {high}", low=ends[0], high=ends[1])
            )
        return value

    def _plain(self, text: str, units: Units) -> float:
        typed = read_typed(text, tr(WORD[self.name]), tr(_EXAMPLES[self.name]))
        word = typed.unit.lower().replace(" ", "").removeprefix("°")
        words = _UNIT_WORDS[self.unit]
        if word and word not in words:
            raise InputError(tr(WORD[self.name]), text.strip(), tr(_EXAMPLES[self.name]))
        unit = words[word] if word else display_unit(self.kind, self.unit, units)
        return convert(typed.value, unit, self.unit)


WORD = {
    CURRENT: mark("current"),
    TRAVEL: mark("travel"),
    VOLTAGE: mark("voltage"),
    THICKNESS: mark("thickness"),
    START: mark("metal temperature"),
    FREQUENCY: mark("AC frequency"),
    BALANCE: mark("electrode negative"),
}
LIMITS: Mapping[str, tuple[float, float]] = {
    CURRENT: (1.0, 600.0),
    TRAVEL: (0.2, 200.0),
    VOLTAGE: (5.0, 60.0),
    THICKNESS: (0.2, 80.0),
    START: (-40.0, 400.0),
    FREQUENCY: (20.0, 500.0),
    BALANCE: (40.0, 99.0),
}
"""What the physics takes, wider than the sliders."""


@dataclass(frozen=True, slots=True)
class Knobs:
    """All sliders for one card; the voltage follows the current until it is set by hand."""

    request: Request
    knobs: Mapping[str, Knob]
    slope_v_a: float
    holds_voltage: bool = False

    def with_value(self, name: str, value: float) -> "Knobs":
        """Return the same with one slider moved."""
        knobs = {**self.knobs, name: replace(self.knobs[name], value=value)}
        holds = self.holds_voltage or name == VOLTAGE
        if name == CURRENT and not holds:
            volts = knobs[VOLTAGE]
            follows = volts.card + self.slope_v_a * (value - knobs[CURRENT].card)
            low, high = LIMITS[VOLTAGE]
            knobs[VOLTAGE] = replace(volts, value=min(max(follows, low), high))
        return replace(self, knobs=knobs, holds_voltage=holds)

    @property
    def asked(self) -> tuple[Request, HeatSettings]:
        """The request and settings for the physics.

        Frequency and balance count from the card's own figures: there the model is as it was fitted, beside
        them only a direction is known.
        """
        value = {name: knob.value for name, knob in self.knobs.items()}
        frequency = negative = None
        if FREQUENCY in self.knobs and self.knobs[FREQUENCY].value != self.knobs[FREQUENCY].card:
            ratio = value[FREQUENCY] / self.knobs[FREQUENCY].card
            frequency = min(max(USUAL_FREQUENCY_HZ * ratio, LIMITS[FREQUENCY][0]), LIMITS[FREQUENCY][1])
        if BALANCE in self.knobs and self.knobs[BALANCE].value != self.knobs[BALANCE].card:
            shift = value[BALANCE] - self.knobs[BALANCE].card
            negative = min(max(USUAL_ELECTRODE_NEGATIVE + shift, LIMITS[BALANCE][0]), LIMITS[BALANCE][1])
        request = replace(self.request, thickness_mm=value[THICKNESS])
        return request, HeatSettings(
            value[CURRENT],
            value[TRAVEL],
            value[VOLTAGE],
            value[START],
            frequency_hz=frequency,
            electrode_negative_percent=negative,
        )


def knobs_of(card: Card) -> Knobs | None:
    """Return the sliders at the card's figures; None where the card has no travelling seam."""
    settings = settings_of(card)
    if settings is None or settings.voltage_v is None:
        return None
    current, travel, volts = (
        card.settings[name].figure for name in ("current", "travel_speed", "arc_voltage")
    )
    thickness = card.request.thickness_mm
    preheat = card.settings.get("preheat")
    warm = preheat.band.start if preheat is not None and preheat.band is not None else settings.start_c
    warm_band = (preheat.band.low, preheat.band.high) if preheat is not None and preheat.band else None
    made = [
        Knob(CURRENT, "current", "A", max(3.0, 0.35 * current.low), min(600.0, 2.6 * current.high), 1.0,
             current.start, current.start, (current.low, current.high), is_log=True),
        Knob(TRAVEL, "travel_speed", "mm/s", max(0.2, 0.3 * travel.low), min(200.0, 3.0 * travel.high), 0.05,
             travel.start, travel.start, (travel.low, travel.high), is_log=True),
        Knob(VOLTAGE, "arc_voltage", "V", max(5.0, volts.low - 5.0), min(60.0, volts.high + 8.0), 0.1,
             volts.start, volts.start, (volts.low, volts.high)),
        Knob(THICKNESS, "thickness", "mm", min(0.5, 0.5 * thickness), max(13.0, 1.5 * thickness), 0.01,
             thickness, thickness, is_log=True),
        Knob(START, "preheat", "degC", 0.0, 350.0, 5.0, warm, warm, warm_band),
    ]  # fmt: skip
    if card.request.process is Process.TIG and "ac_frequency" in card.settings:
        hertz, negative = card.settings["ac_frequency"].figure, card.settings["electrode_negative"].figure
        made += [
            Knob(FREQUENCY, "ac_frequency", "Hz", 20.0, 300.0, 5.0,
                 hertz.start, hertz.start, (hertz.low, hertz.high), is_trend=True),
            Knob(BALANCE, "electrode_negative", "percent", 45.0, 95.0, 1.0,
                 negative.start, negative.start, (negative.low, negative.high), is_trend=True),
        ]  # fmt: skip
    slope = (TIG_LOAD_LINE_V if card.request.process is Process.TIG else MIG_LOAD_LINE_V)[1]
    return Knobs(card.request, {knob.name: knob for knob in made}, slope)


def _with_unit(text: str, units: Units, metric: str) -> str:
    """Read a bare speed in the unit that stands in the box."""
    plain = text.strip()
    is_bare = bool(plain) and plain.replace(".", "", 1).replace(",", "", 1).isdigit()
    return f"{plain} {metric}" if is_bare and units is Units.METRIC else plain
