"""The words on every card: labels, headings and what a chosen value means; trade or plain words only.

The constants are English, for the translators; the functions say them in the language in use.
"""

from collections.abc import Mapping

from welds.advice.equipment import GENERIC_MACHINE
from welds.advice.evidence import Outcome
from welds.advice.request import Hand, Joint, Process
from welds.advice.setting import Severity
from welds.advice.words import value_said
from welds.language import figure, mark, tr
from welds.reference.names import name_of

LABELS: Mapping[str, str] = {
    "current": mark("Current"),
    "machine_maximum": mark("Machine maximum (pedal)"),
    "polarity": mark("Polarity"),
    "ac_frequency": mark("AC frequency"),
    "electrode_negative": mark("Balance (electrode negative)"),
    "pulse": mark("Pulse"),
    "wire_feed": mark("Wire feed"),
    "voltage": mark("Voltage"),
    "transfer": mark("Metal transfer"),
    "tungsten_type": mark("Tungsten"),
    "tungsten_diameter": mark("Tungsten diameter"),
    "tip": mark("Tip"),
    "stick_out": mark("Stick-out"),
    "filler_metal": mark("Filler rod"),
    "filler_diameter": mark("Rod diameter"),
    "wire": mark("Wire"),
    "wire_diameter": mark("Wire diameter"),
    "tip_to_work": mark("Contact tip to work"),
    "shielding_gas": mark("Shielding gas"),
    "gas_flow": mark("Gas flow"),
    "cup": mark("Cup number"),
    "gas_lens": mark("Gas lens"),
    "pre_flow": mark("Gas before the arc"),
    "post_flow": mark("Gas after the arc"),
    "backing": mark("Back of the joint"),
    "plug_hole": mark("Hole diameter"),
    "plug_time": mark("Time in each hole"),
    "filter_shade": mark("Filter shade"),
    "preheat": mark("Preheat"),
    "interpass": mark("Between passes at most"),
    "tacks": mark("Tacks"),
    "travel_speed": mark("Travel speed"),
    "passes": mark("Passes"),
    "arc_voltage": mark("Arc voltage"),
    "heat_input": mark("Heat input"),
}

_INSIDE: Mapping[str, str] = {
    "current": mark("current"),
    "machine_maximum": mark("machine maximum (pedal)"),
    "polarity": mark("polarity"),
    "ac_frequency": mark("ac frequency"),
    "electrode_negative": mark("balance (electrode negative)"),
    "wire_feed": mark("wire feed"),
    "voltage": mark("voltage"),
    "transfer": mark("metal transfer"),
    "tungsten_type": mark("tungsten"),
    "tungsten_diameter": mark("tungsten diameter"),
    "filler_metal": mark("filler rod"),
    "filler_diameter": mark("rod diameter"),
    "wire": mark("wire"),
    "wire_diameter": mark("wire diameter"),
    "gas_flow": mark("gas flow"),
    "gas_lens": mark("gas lens"),
    "plug_hole": mark("hole diameter"),
    "plug_time": mark("time in each hole"),
    "travel_speed": mark("travel speed"),
    "arc_voltage": mark("arc voltage"),
}
"""Labels as they stand inside a sentence."""

GROUPS: tuple[tuple[str, tuple[str, ...]], ...] = (
    (mark("Before the arc"), ("filter_shade", "preheat", "tacks")),
    (
        mark("At the machine"),
        (
            *("polarity", "wire_feed", "voltage", "transfer", "current", "machine_maximum"),
            *("ac_frequency", "electrode_negative", "pulse"),
        ),
    ),
    (mark("Tungsten"), ("tungsten_type", "tungsten_diameter", "tip", "stick_out")),
    (mark("Filler"), ("filler_metal", "filler_diameter", "wire", "wire_diameter", "tip_to_work")),
    (mark("Plug"), ("plug_hole", "plug_time")),
    (mark("Gas"), ("shielding_gas", "gas_flow", "cup", "gas_lens", "pre_flow", "post_flow", "backing")),
    (mark("Along the joint"), ("travel_speed", "passes", "interpass", "arc_voltage", "heat_input")),
)
"""Settings in the order a hand meets them, from putting the helmet on to the end of the bead."""

OTHER_GROUP = mark("More")

HEADLINES: Mapping[Process, tuple[str, ...]] = {
    Process.TIG: (
        *("current", "machine_maximum", "polarity", "ac_frequency", "electrode_negative"),
        *("tungsten_diameter", "filler_metal", "filler_diameter", "gas_flow"),
    ),
    Process.MIG: (
        *("wire_feed", "voltage", "current", "polarity", "wire", "wire_diameter", "gas_flow"),
        *("plug_hole", "plug_time"),
    ),
}
"""What has to be read from across the bench."""

WORDS_FIRST = frozenset({"shielding_gas"})
"""Settings whose meaning is read before their code: argon, then I1."""

PROCESS_NAMES: Mapping[Process, str] = {Process.TIG: mark("TIG"), Process.MIG: mark("MIG")}
JOINT_NAMES: Mapping[Joint, str] = {
    Joint.BUTT: mark("butt"),
    Joint.TEE: mark("tee"),
    Joint.LAP: mark("lap"),
    Joint.OUTSIDE_CORNER: mark("outside corner"),
    Joint.INSIDE_CORNER: mark("inside corner"),
    Joint.EDGE: mark("edge"),
    Joint.PLUG: mark("plug"),
}
SEVERITY_WORDS: Mapping[str, str] = {
    Severity.STOP: mark("STOP"),
    Severity.WARN: mark("TAKE CARE"),
    Severity.NOTE: mark("NOTE"),
}

_HANDS: Mapping[Hand, str] = {Hand.UNHURRIED: mark("unhurried hand"), Hand.BRISK: mark("brisk hand")}
_OUTCOMES: Mapping[Outcome, str] = {
    Outcome.WORKED_WELL: mark("worked well"),
    Outcome.WORKED: mark("worked"),
    Outcome.FAILED: mark("failed"),
}
_POLARITY: Mapping[tuple[Process, str], str] = {
    (Process.TIG, "AC"): mark("AC"),
    (Process.TIG, "DCEN"): mark("DC, torch on minus"),
    (Process.TIG, "DCEP"): mark("DC, torch on plus"),
    (Process.MIG, "DCEP"): mark("DC, gun on plus"),
    (Process.MIG, "DCEN"): mark("DC, gun on minus"),
}
_SAID = frozenset({"backing", "preheat", "pulse", "tacks", "tip"})
"""Settings whose value is a text for people."""


def label(name: str) -> str:
    """Return the label of a setting; a name without one is spelled out."""
    return tr(LABELS[name]) if name in LABELS else name.replace("_", " ").capitalize()


def label_inside(name: str) -> str:
    """Return the label of a setting as it stands inside a sentence."""
    return tr(_INSIDE[name]) if name in _INSIDE else label(name)


def process_name(process: Process) -> str:
    """Return the process as it is called in the shop."""
    return tr(PROCESS_NAMES[process])


def joint_name(joint: Joint) -> str:
    """Return the joint's name in words."""
    return tr(JOINT_NAMES[joint])


def hand_words(hand: Hand) -> str:
    """Return how fast the torch travels, in words."""
    return tr(_HANDS[hand])


def outcome_words(outcome: Outcome) -> str:
    """Return what came of a weld."""
    return tr(_OUTCOMES[outcome])


def severity_word(severity: Severity) -> str:
    """Return what stands before a caution."""
    return tr(SEVERITY_WORDS[severity])


def yes_or_no(is_so: bool) -> str:
    """Return yes or no in the language in use."""
    return tr("yes") if is_so else tr("no")


def verdict(is_ok: bool) -> str:
    """Return what stands before a check."""
    return tr("ok") if is_ok else tr("NOT OK")


def machine_name(name: str) -> str:
    """Return what the person calls the machine; the one that stands in for none is said in words."""
    return tr(name) if name == GENERIC_MACHINE.name else name


def value_words(name: str, value: str | float | bool, process: Process) -> str:
    """Return what a chosen value says to the person."""
    if isinstance(value, bool):
        return yes_or_no(value)
    if isinstance(value, float):
        return figure(f"{value:g}")
    if name == "polarity":
        return tr(_POLARITY[process, value]) if (process, value) in _POLARITY else value
    if name == "transfer":
        return name_of(value)
    return value_said(value) if name in _SAID else str(value)
