"""What can be said of each kind of entry in a job, with a label, in the order a person thinks of it."""

from dataclasses import dataclass

from welds.advice.request import (
    Coating,
    Goal,
    Hand,
    Joint,
    Part,
    Place,
    Process,
    Solvent,
    Transfer,
)
from welds.job.bend_radius import Grain
from welds.job.blank import Dimensions
from welds.job.damage import Behind
from welds.language import mark

YES_NO = ("yes", "no")
CHOICE_WORDS = {
    "yes": mark("yes"), "no": mark("no"),
    Process.TIG: "tig", Process.MIG: "mig",
    Joint.BUTT: mark("butt"), Joint.TEE: mark("tee"), Joint.LAP: mark("lap"),
    Joint.OUTSIDE_CORNER: mark("outside corner"), Joint.INSIDE_CORNER: mark("inside corner"),
    Joint.EDGE: mark("edge"), Joint.PLUG: mark("plug"),
    Goal.STRENGTH: mark("strength"), Goal.DUCTILITY: mark("ductility"),
    Goal.LEAST_CRACKING: mark("least cracking"), Goal.ANODISED_COLOUR: mark("anodised colour"),
    Goal.WARM_SERVICE: mark("warm service"), Goal.SALT_WATER: mark("salt water"),
    Place.INDOORS: mark("indoors"), Place.OUTDOORS: mark("outdoors"), Place.ENCLOSED: mark("enclosed"),
    Hand.UNHURRIED: mark("unhurried"), Hand.BRISK: mark("brisk"),
    Solvent.ACETONE: mark("acetone"), Solvent.ALCOHOL: mark("alcohol"),
    Solvent.CHLORINATED: mark("chlorinated"), Solvent.UNKNOWN: mark("unknown spray"),
    Part.BRACKET: mark("bracket"), Part.VEHICLE: mark("vehicle"), Part.CLOSED_SECTION: mark("closed section"),
    Part.TANK: mark("tank"), Part.PRESSURE: mark("pressure"),
    Part.STEERING_SUSPENSION: mark("steering suspension"), Part.TOWING: mark("towing"),
    Part.LIFTING: mark("lifting"), Part.ROLLOVER: mark("rollover"), Part.SEALED_ITEM: mark("sealed item"),
    Transfer.SHORT_CIRCUIT: mark("short circuit"), Transfer.GLOBULAR: mark("globular"),
    Transfer.SPRAY: mark("spray"), Transfer.PULSED: mark("pulsed"),
    Dimensions.OUTSIDE: mark("outside"), Dimensions.INSIDE: mark("inside"),
    Dimensions.OVERALL: mark("overall"),
    Grain.ACROSS: mark("across"), Grain.ALONG: mark("along"),
    Behind.SOUND: mark("sound"), Behind.THIN: mark("thin"), Behind.NONE: mark("none"),
}  # fmt: skip
"""What can be chosen, in words; the file keeps the keys."""


@dataclass(frozen=True, slots=True)
class FormField:
    """A field, its label, an example to go by, and what may be chosen where the list is closed."""

    name: str
    label: str
    example: str = ""
    choices: tuple[str, ...] = ()


KINDS = {
    "pieces": mark("piece to cut"),
    "joints": mark("joint to weld"),
    "repairs": mark("repair"),
    "steps": mark("other step"),
    "stock": mark("sheet in stock"),
}
TO_ADD = {
    "pieces": mark("Piece to cut"),
    "joints": mark("Joint to weld"),
    "repairs": mark("Repair"),
    "steps": mark("Other step"),
    "stock": mark("Sheet in stock"),
}
"""The same as a menu of what can be added has it."""
_NAME = FormField("name", mark("What it is"), mark("left mudguard, pinholes"))
_METAL = FormField("metal", mark("Metal"), "5052-H32, low-carbon, 304")
_THICKNESS = FormField("thickness", mark("Thickness"), "2 mm, 0.080 in, 14 ga")
_COUNT = FormField("count", mark("How many alike"), "1")
_SIZE = FormField("size", mark("Size, where it is flat"), "420 x 380 mm")
_PROCESS = FormField("process", mark("Process"), choices=tuple(Process))
_PART = FormField("part", mark("Belongs to"), choices=tuple(Part))
_COATING = FormField("coating", mark("Coatings"), ", ".join(list(Coating)[:2]))
_LINKS = (
    FormField("after", mark("Comes after"), mark("short names: console-front, tank-wrap")),
    FormField("covers", mark("Covers up"), mark("short names of what is then out of reach")),
    FormField("open_for", mark("Needs access before"), mark("short names of what closes it")),
    FormField("can_wait", mark("Can wait"), choices=YES_NO),
    FormField("done", mark("Done"), choices=YES_NO),
    FormField("log", mark("Welds in the log"), mark("names or numbers of log entries")),
)

FORMS: dict[str, tuple[FormField, ...]] = {
    "pieces": (
        _NAME, FormField("stock", mark("Cut from"), mark("short name of a sheet in stock")), _METAL,
        _THICKNESS, _COUNT, _SIZE,
        FormField("legs", mark("Legs, where it is folded"), "25, 420, 25"),
        FormField("angles", mark("Angles turned through"), mark("90, 90; a minus bends down")),
        FormField("radius", mark("Inside radius"), mark("3.2, or one each")),
        FormField("width", mark("Width, not folded"), "380"),
        FormField("dims", mark("Legs are measured"), choices=tuple(Dimensions)),
        FormField("k", mark("K, where you know it"), "0.42"),
        FormField("brake", mark("Brake with a test bend"), mark("its name, as kept")),
        FormField("grain", mark("Bend line to the grain"), choices=tuple(Grain)),
        *_LINKS,
    ),
    "joints": (
        _NAME, FormField("pieces", mark("Pieces it joins"), mark("short names: tank-wrap, tank-end")),
        FormField("joint", mark("Joint"), choices=tuple(Joint)), _PROCESS, _METAL, _THICKNESS,
        FormField("other_metal", mark("Other metal")), FormField("other_thickness", mark("Other thickness")),
        FormField("length", mark("Length of one seam"), "380"), _COUNT,
        FormField("closed", mark("Seam closes on itself"), choices=YES_NO),
        FormField("dry_fit", mark("Dry fit first"), choices=YES_NO),
        FormField("position", mark("Position"), "PA, PB, PF"), FormField("gap", mark("Gap"), "0"),
        FormField("goal", mark("Goal"), choices=tuple(Goal)), _COATING,
        FormField("solvent", mark("Solvent used"), choices=tuple(Solvent)), _PART,
        FormField("place", mark("Place"), choices=tuple(Place)),
        FormField("hand", mark("Hand"), choices=tuple(Hand)),
        FormField("gas", mark("Gas on the machine")), FormField("wire", mark("Wire diameter")),
        FormField("transfer", mark("Transfer"), choices=tuple(Transfer)),
        *_LINKS,
    ),
    "repairs": (
        _NAME, _METAL, FormField("thickness", mark("Thickness when new"), _THICKNESS.example),
        FormField("measured", mark("Measured beside the holes"), "1.0 mm"),
        FormField("holes", mark("Holes"), "4 mm x 9, 7 mm x 2"),
        FormField("region", mark("Region they lie in"), "140 x 90 mm"),
        FormField("behind", mark("Sheet behind"), choices=tuple(Behind)),
        FormField("panel", mark("Whole panel"), "700 x 250 mm"), _PART,
        FormField("load_bearing", mark("Carries load"), choices=YES_NO),
        FormField("water_trap", mark("Water stands there"), choices=YES_NO), _PROCESS, _COATING,
        *_LINKS,
    ),
    "steps": (_NAME, *_LINKS),
    "stock": (_METAL, _THICKNESS, FormField("size", mark("Size"), "2440 x 1220 mm"), _COUNT),
}  # fmt: skip
