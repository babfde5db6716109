"""What a request says, field by field, so that columns are named by what sets them apart."""

from collections.abc import Callable, Mapping, Sequence

from welds.advice.request import Joint, Process, Request
from welds.language import mark, tr
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.reference.names import name_of
from welds.report.wording import hand_words, joint_name, process_name

Words = Callable[[Request, Units], str]


def _length(mm: float | None, kind: str, units: Units) -> str:
    return "" if mm is None else str(show(mm, "mm", kind, units))


def _thickness(request: Request, units: Units) -> str:
    words = _length(request.thickness_mm, "thickness", units)
    other = request.other_thickness_mm
    if other is None or other == request.thickness_mm:
        return words
    return tr("{thickness} on {other}", thickness=words, other=_length(other, "thickness", units))


def _metal(request: Request, _units: Units) -> str:
    other = request.other_metal
    if other in (None, request.metal):
        return request.metal
    return tr("{metal} to {other}", metal=request.metal, other=other)


def _plain(value: str | None) -> str:
    return name_of(value or "")


FIELDS: Mapping[str, tuple[Words, str]] = {
    "process": (lambda request, _: process_name(request.process), ""),
    "joint": (lambda request, _: joint_name(request.joint), ""),
    "metal": (_metal, ""),
    "thickness": (_thickness, ""),
    "position": (lambda request, _: tr("position {position}", position=request.position), ""),
    "hand": (lambda request, _: hand_words(request.hand), ""),
    "gap": (
        lambda request, units: tr("gap {length}", length=_length(request.gap_mm, "gap", units)),
        mark("gap 0 mm"),
    ),
    "gas": (lambda request, _: tr("gas {gas}", gas=request.gas) if request.gas else "", mark("usual gas")),
    "wire": (
        lambda request, units: (
            tr("{length} wire", length=_length(request.wire_diameter_mm, "wire_diameter", units))
            if request.wire_diameter_mm
            else ""
        ),
        mark("usual wire"),
    ),
    "transfer": (lambda request, _: _plain(request.transfer), mark("usual transfer")),
    "goal": (
        lambda request, _: tr("goal: {goal}", goal=_plain(request.goal)) if request.goal else "",
        mark("no goal"),
    ),
    "coating": (lambda request, _: ", ".join(_plain(each) for each in request.coatings), mark("bare")),
    "solvent": (
        lambda request, _: (
            tr("wiped with {solvent}", solvent=_plain(request.solvent)) if request.solvent else ""
        ),
        mark("no solvent"),
    ),
    "part": (lambda request, _: _plain(request.part), mark("loose piece")),
    "place": (lambda request, _: _plain(request.place), ""),
    "length": (lambda request, units: _long(request, units), mark("any length")),
}
"""Field -> its words, and what stands for "not stated" in a heading."""

_ALWAYS = ("process", "joint", "metal", "thickness", "position", "hand")


def _long(request: Request, units: Units) -> str:
    return (
        tr("{length} long", length=_length(request.length_mm, "length", units)) if request.length_mm else ""
    )


def varying(requests: Sequence[Request]) -> tuple[str, ...]:
    """Return the fields in which the requests are not all the same."""
    return tuple(field for field in FIELDS if len({_value(field, request) for request in requests}) > 1)


def column_title(request: Request, fields: Sequence[str], units: Units) -> str:
    """Return the words of these fields; those of the whole request where there are none."""
    words = [field_words(request, field, units) for field in fields or _ALWAYS]
    text = ", ".join(each for each in words if each)
    return text[:1].upper() + text[1:]


def shared_words(request: Request, varied: Sequence[str], units: Units) -> str:
    """Return what the columns have in common."""
    words = [
        FIELDS[field][0](request, units)
        for field in FIELDS
        if field not in varied and (field in _ALWAYS or _value(field, request) not in _UNSTATED)
    ]
    return ", ".join(each for each in words if each)


def request_changes(base: Request, other: Request, units: Units) -> tuple[str, ...]:
    """Return what is asked differently: "3.2 mm instead of 2 mm"."""
    return tuple(
        tr(
            "{this} instead of {base}",
            this=field_words(other, field, units),
            base=field_words(base, field, units),
        )
        for field in varying((base, other))
    )


def field_words(request: Request, field: str, units: Units) -> str:
    """Return one field in words, also where it is not stated."""
    words, unstated = FIELDS[field]
    if field in _MIG_ONLY and request.process is not Process.MIG:
        return ""
    return words(request, units) or (tr(unstated) if unstated else "")


_MIG_ONLY = ("wire", "transfer")
_UNSTATED = (None, (), 0.0)


def _value(field: str, request: Request) -> object:
    if field == "metal":
        return request.metal, request.other_metal or request.metal
    if field == "thickness":
        return request.thickness_mm, request.other_thickness_mm or request.thickness_mm
    if field == "joint":
        return Joint(request.joint)
    attribute = {"gap": "gap_mm", "coating": "coatings", "length": "length_mm", "wire": "wire_diameter_mm"}
    return getattr(request, attribute.get(field, field))
