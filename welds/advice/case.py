"""A request with everything the rules need to know about it, looked up once."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from welds.advice.equipment import Equipment
from welds.advice.heat_share import LARGEST_RATIO, effective_thickness_mm
from welds.advice.request import Joint, Process, Request
from welds.advice.setting import Setting
from welds.advice.words import both, span
from welds.errors import InputError, NotCoveredError
from welds.language import figure, mark, tr
from welds.reference.fillers import FillerChoice, filler_choice
from welds.reference.metals import Metal, find_metal
from welds.reference.positions import find_position
from welds.reference.schedules import MigSchedule
from welds.reference.tables import Tables

THINNEST_MM, THICKEST_MM = 0.2, 80.0
"""What can be meant by the thickness of a piece to weld; beyond it the input is a slip."""

SoFar = Mapping[str, Setting]


@dataclass(frozen=True)
class Case:
    """One request, resolved.

    `first` ends at the joint (web of a T, top of a lap); `other` is the piece it meets.
    """

    request: Request
    tables: Tables
    equipment: Equipment
    first: Metal
    other: Metal
    other_mm: float
    position: str

    @property
    def first_mm(self) -> float:
        """Thickness of the first piece."""
        return self.request.thickness_mm

    @property
    def thin_mm(self) -> float:
        """The thinner of the two."""
        return min(self.first_mm, self.other_mm)

    @property
    def thick_mm(self) -> float:
        """The thicker of the two."""
        return max(self.first_mm, self.other_mm)

    @cached_property
    def effective_mm(self) -> float:
        """Thickness of two equal sheets that would draw the same heat."""
        return effective_thickness_mm(self.request.joint, self.first_mm, self.other_mm)

    @cached_property
    def metals(self) -> tuple[Metal, ...]:
        """The one metal, or both where they differ."""
        return (self.first,) if self.first.id == self.other.id else (self.first, self.other)

    @cached_property
    def families(self) -> frozenset[str]:
        """Families present."""
        return frozenset(metal.family for metal in self.metals)

    @cached_property
    def family(self) -> str:
        """The family that rules gas, tungsten and cleaning: stainless before carbon steel."""
        return "stainless" if "stainless" in self.families else self.first.family

    @cached_property
    def filler(self) -> FillerChoice:
        """Filler for the pair and goal; raises NotCoveredError where no fusion weld is advised."""
        return filler_choice(self.tables, self.first, self.other, self.request.goal)


def make_case(request: Request, tables: Tables, equipment: Equipment) -> Case:
    """Look everything up and refuse what cannot be answered.

    Raises InputError for what cannot be meant and NotCoveredError for what the tables do not answer.
    """
    first = find_metal(tables, request.metal)
    other = find_metal(tables, request.other_metal) if request.other_metal else first
    other_mm = request.thickness_mm if request.other_thickness_mm is None else request.other_thickness_mm
    for field, value in (("thickness", request.thickness_mm), (mark("other thickness"), other_mm)):
        if not THINNEST_MM <= value <= THICKEST_MM:
            raise InputError(field, figure(f"{value:g} mm"), span(THINNEST_MM, THICKEST_MM, "mm"))
    if not 0.0 <= request.gap_mm <= THICKEST_MM:
        raise InputError("gap", figure(f"{request.gap_mm:g} mm"), span(0.0, THICKEST_MM, "mm"))
    if request.length_mm is not None and not 0.0 < request.length_mm <= 1e6:
        raise InputError("length", figure(f"{request.length_mm:g} mm"), tr("above 0 to 1000 m"))
    if request.process is Process.TIG and request.joint is Joint.PLUG:
        fits = ", ".join(joint for joint in Joint if joint is not Joint.PLUG)
        has_mig = any(row.family == first.family for row in tables.records(MigSchedule))
        allowed, near = (
            (tr("{joints}; plug with mig", joints=fits), tr("plug with mig")) if has_mig else (fits, "lap")
        )
        raise InputError("joint", tr("plug with tig"), allowed, near)
    for metal in (first, other):
        if not metal.is_weldable:
            raise NotCoveredError(metal.name, metal.refusal)
    thin, thick = sorted((request.thickness_mm, other_mm))
    if thick / thin > LARGEST_RATIO:
        raise NotCoveredError(
            tr("{thin} on {thick}", thin=both(thin), thick=both(thick)),
            tr(
                "the thin edge melts away before the thick piece does (more than {ratio:g}"
                " to 1); thin the thick edge down or fasten another way",
                ratio=LARGEST_RATIO,
            ),
            tr("{thin} on {thick}", thin=both(thick / LARGEST_RATIO), thick=both(thick)),
        )
    position = find_position(tables, request.position)
    case = Case(request, tables, equipment, first, other, other_mm, position)
    if case.filler.first == "":
        raise NotCoveredError(tr("{first} to {other}", first=first.name, other=other.name), case.filler.why)
    return case
