"""The words on every card: labels, headings and what a chosen value means; trade or plain words only."""

from collections.abc import Mapping

from welds.advice.request import Joint, Process

LABELS: Mapping[str, str] = {
    "current": "Current",
    "machine_maximum": "Machine maximum (pedal)",
    "polarity": "Polarity",
    "ac_frequency": "AC frequency",
    "electrode_negative": "Balance (electrode negative)",
    "pulse": "Pulse",
    "wire_feed": "Wire feed",
    "voltage": "Voltage",
    "transfer": "Metal transfer",
    "tungsten_type": "Tungsten",
    "tungsten_diameter": "Tungsten diameter",
    "tip": "Tip",
    "stick_out": "Stick-out",
    "filler_metal": "Filler rod",
    "filler_diameter": "Rod diameter",
    "wire": "Wire",
    "wire_diameter": "Wire diameter",
    "tip_to_work": "Contact tip to work",
    "shielding_gas": "Shielding gas",
    "gas_flow": "Gas flow",
    "cup": "Cup number",
    "gas_lens": "Gas lens",
    "pre_flow": "Gas before the arc",
    "post_flow": "Gas after the arc",
    "backing": "Back of the joint",
    "plug_hole": "Hole diameter",
    "plug_time": "Time in each hole",
    "filter_shade": "Filter shade",
    "preheat": "Preheat",
    "interpass": "Between passes at most",
    "tacks": "Tacks",
    "travel_speed": "Travel speed",
    "passes": "Passes",
    "arc_voltage": "Arc voltage",
    "heat_input": "Heat input",
}

GROUPS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("Before the arc", ("filter_shade", "preheat", "tacks")),
    (
        "At the machine",
        (
            *("polarity", "wire_feed", "voltage", "transfer", "current", "machine_maximum"),
            *("ac_frequency", "electrode_negative", "pulse"),
        ),
    ),
    ("Tungsten", ("tungsten_type", "tungsten_diameter", "tip", "stick_out")),
    ("Filler", ("filler_metal", "filler_diameter", "wire", "wire_diameter", "tip_to_work")),
    ("Plug", ("plug_hole", "plug_time")),
    ("Gas", ("shielding_gas", "gas_flow", "cup", "gas_lens", "pre_flow", "post_flow", "backing")),
    ("Along the joint", ("travel_speed", "passes", "interpass", "arc_voltage", "heat_input")),
)
"""Settings in the order a hand meets them, from putting the helmet on to the end of the bead."""

OTHER_GROUP = "More"

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

PROCESS_NAMES: Mapping[Process, str] = {Process.TIG: "TIG", Process.MIG: "MIG"}
JOINT_NAMES: Mapping[Joint, str] = {
    Joint.BUTT: "butt",
    Joint.TEE: "tee",
    Joint.LAP: "lap",
    Joint.OUTSIDE_CORNER: "outside corner",
    Joint.INSIDE_CORNER: "inside corner",
    Joint.EDGE: "edge",
    Joint.PLUG: "plug",
}
SEVERITY_WORDS: Mapping[str, str] = {"stop": "STOP", "warn": "TAKE CARE", "note": "NOTE"}

_POLARITY: Mapping[tuple[Process, str], str] = {
    (Process.TIG, "AC"): "AC",
    (Process.TIG, "DCEN"): "DC, torch on minus",
    (Process.TIG, "DCEP"): "DC, torch on plus",
    (Process.MIG, "DCEP"): "DC, gun on plus",
    (Process.MIG, "DCEN"): "DC, gun on minus",
}
_TRANSFER: Mapping[str, str] = {
    "short-circuit": "short circuit",
    "spray": "spray",
    "globular": "globular",
    "pulsed": "pulsed",
}


def label(name: str) -> str:
    """Return the label of a setting; a name without one is spelled out."""
    return LABELS.get(name) or name.replace("_", " ").capitalize()


def value_words(name: str, value: str | float | bool, process: Process) -> str:
    """Return what a chosen value says to the person."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if name == "polarity":
        return _POLARITY.get((process, str(value)), str(value))
    if name == "transfer":
        return _TRANSFER.get(str(value), str(value))
    if isinstance(value, float):
        return f"{value:g}"
    return str(value)
