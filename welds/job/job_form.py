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

YES_NO = ("yes", "no")


@dataclass(frozen=True, slots=True)
class FormField:
    """A field, its label, an example to go by, and what may be chosen where the list is closed."""

    name: str
    label: str
    example: str = ""
    choices: tuple[str, ...] = ()


KINDS = {
    "pieces": "piece to cut",
    "joints": "joint to weld",
    "repairs": "repair",
    "steps": "other step",
    "stock": "sheet in stock",
}
_NAME = FormField("name", "What it is", "left mudguard, pinholes")
_METAL = FormField("metal", "Metal", "5052-H32, low-carbon, 304")
_THICKNESS = FormField("thickness", "Thickness", "2 mm, 0.080 in, 14 ga")
_COUNT = FormField("count", "How many alike", "1")
_SIZE = FormField("size", "Size, where it is flat", "420 x 380 mm")
_PROCESS = FormField("process", "Process", choices=tuple(Process))
_PART = FormField("part", "Belongs to", choices=tuple(Part))
_COATING = FormField("coating", "Coatings", ", ".join(list(Coating)[:2]))
_LINKS = (
    FormField("after", "Comes after", "short names: console-front, tank-wrap"),
    FormField("covers", "Covers up", "short names of what is then out of reach"),
    FormField("open_for", "Needs access before", "short names of what closes it"),
    FormField("can_wait", "Can wait", choices=YES_NO),
    FormField("done", "Done", choices=YES_NO),
    FormField("log", "Welds in the log", "names or numbers of log entries"),
)

FORMS: dict[str, tuple[FormField, ...]] = {
    "pieces": (
        _NAME, FormField("stock", "Cut from", "short name of a sheet in stock"), _METAL, _THICKNESS, _COUNT,
        _SIZE,
        FormField("legs", "Legs, where it is folded", "25, 420, 25"),
        FormField("angles", "Angles turned through", "90, 90; a minus bends down"),
        FormField("radius", "Inside radius", "3.2, or one each"),
        FormField("width", "Width, not folded", "380"),
        FormField("dims", "Legs are measured", choices=tuple(Dimensions)),
        FormField("k", "K, where you know it", "0.42"),
        FormField("brake", "Brake with a test bend", "its name, as kept"),
        FormField("grain", "Bend line to the grain", choices=tuple(Grain)),
        *_LINKS,
    ),
    "joints": (
        _NAME, FormField("pieces", "Pieces it joins", "short names: tank-wrap, tank-end"),
        FormField("joint", "Joint", choices=tuple(Joint)), _PROCESS, _METAL, _THICKNESS,
        FormField("other_metal", "Other metal"), FormField("other_thickness", "Other thickness"),
        FormField("length", "Length of one seam", "380"), _COUNT,
        FormField("closed", "Seam closes on itself", choices=YES_NO),
        FormField("dry_fit", "Dry fit first", choices=YES_NO),
        FormField("position", "Position", "PA, PB, PF"), FormField("gap", "Gap", "0"),
        FormField("goal", "Goal", choices=tuple(Goal)), _COATING,
        FormField("solvent", "Solvent used", choices=tuple(Solvent)), _PART,
        FormField("place", "Place", choices=tuple(Place)), FormField("hand", "Hand", choices=tuple(Hand)),
        FormField("gas", "Gas on the machine"), FormField("wire", "Wire diameter"),
        FormField("transfer", "Transfer", choices=tuple(Transfer)),
        *_LINKS,
    ),
    "repairs": (
        _NAME, _METAL, FormField("thickness", "Thickness when new", _THICKNESS.example),
        FormField("measured", "Measured beside the holes", "1.0 mm"),
        FormField("holes", "Holes", "4 mm x 9, 7 mm x 2"),
        FormField("region", "Region they lie in", "140 x 90 mm"),
        FormField("behind", "Sheet behind", choices=tuple(Behind)),
        FormField("panel", "Whole panel", "700 x 250 mm"), _PART,
        FormField("load_bearing", "Carries load", choices=YES_NO),
        FormField("water_trap", "Water stands there", choices=YES_NO), _PROCESS, _COATING,
        *_LINKS,
    ),
    "steps": (_NAME, *_LINKS),
    "stock": (_METAL, _THICKNESS, FormField("size", "Size", "2440 x 1220 mm"), _COUNT),
}  # fmt: skip
