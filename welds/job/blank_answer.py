"""All there is to say about one folded part: its flat, how sure it is, whether the sheet stands the bends."""

from dataclasses import dataclass, replace

from welds.advice.words import both
from welds.errors import InputError
from welds.job.bend_radius import RadiusReading, anneal_for, radius_readings, relief_hole
from welds.job.bend_records import Anneal
from welds.job.blank import Bend, Blank, Dimensions, FoldedPart, make_blank
from welds.job.brake_book import in_temper
from welds.job.neutral_line import MIDDLE, KReading, k_given, k_readings
from welds.language import figure, tr
from welds.physics.bending import shop_deduction
from welds.reference.basis import Basis
from welds.reference.metals import Metal
from welds.reference.tables import Tables

LEAST_K, MOST_K = 0.2, 0.6
"""What a neutral line can be; a test bend outside was measured wrongly."""


@dataclass(frozen=True, slots=True)
class MethodLength:
    """The flat length by one method."""

    method: str
    length_mm: float
    basis: Basis
    source: str


@dataclass(frozen=True, slots=True)
class BlankAnswer:
    """A blank with its reasons.

    `radii` holds what each document asks, the deciding one first.
    `low_mm` and `high_mm` span what the methods in use leave open; `width_mm` is the side that is not folded.
    """

    metal: Metal
    blank: Blank
    width_mm: float | None
    ks: tuple[KReading, ...]
    low_mm: float
    high_mm: float
    methods: tuple[MethodLength, ...]
    radii: tuple[RadiusReading, ...]
    is_along_grain: bool
    anneal: Anneal | None
    relief_mm: float | None
    notes: tuple[str, ...]

    @property
    def tightest_mm(self) -> float | None:
        """The smallest inside radius of the part."""
        return min((bend.radius_mm for bend in self.blank.part.bends), default=None)

    @property
    def minimum_radius_mm(self) -> float | None:
        """The least radius by the document that decides, or None."""
        return self.radii[0].radius_mm if self.radii else None

    @property
    def is_wide_enough(self) -> bool | None:
        """Say whether every bend keeps to the least radius; None where no table says what it is."""
        if self.tightest_mm is None:
            return True
        if not self.radii:
            return None
        least = self.radii[0].radius_mm
        return least is not None and self.tightest_mm >= least - 0.005


def answer_blank(
    tables: Tables,
    metal: Metal,
    part: FoldedPart,
    *,
    width_mm: float | None = None,
    known_k: float | None = None,
    k_from: str = "",
    is_along_grain: bool = False,
) -> BlankAnswer:
    """Return the flat of a part and what speaks for and against bending it."""
    if known_k is not None and not LEAST_K <= known_k <= MOST_K:
        raise InputError(
            "k",
            figure(f"{known_k:.3f}"),
            tr("{least} to {most}, from the inside face", least=LEAST_K, most=MOST_K),
        )
    thickness = part.thickness_mm

    readings = [_readings(tables, metal, bend, thickness, known_k, k_from) for bend in part.bends]
    ks = tuple(each[0] for each in readings)
    blank = make_blank(part, [reading.k for reading in ks])
    spans = [_span(each) for each in readings]
    low_mm, high_mm = (make_blank(part, [span[end] for span in spans]).length_mm for end in (0, 1))
    radii = radius_readings(tables, metal, thickness, is_along_grain=is_along_grain)
    tightest = min((bend.radius_mm for bend in part.bends), default=0.0)
    relief = relief_hole(tables, metal, thickness, tightest) if part.bends else None
    answer = BlankAnswer(
        metal,
        blank,
        width_mm,
        ks,
        low_mm,
        high_mm,
        tuple(_methods(tables, metal, part)),
        radii if part.bends else (),
        is_along_grain,
        anneal_for(tables, metal),
        relief[0] if relief else None,
        (),
    )
    return _with_notes(answer)


def _readings(
    tables: Tables, metal: Metal, bend: Bend, thickness_mm: float, known_k: float | None, k_from: str
) -> tuple[KReading, ...]:
    if known_k is not None:
        return (k_given(known_k, k_from),)
    return k_readings(tables, metal, bend.radius_mm, thickness_mm)


def _span(readings: tuple[KReading, ...]) -> tuple[float, float]:
    """Leave the middle of the sheet out: it is a shortcut for sums on paper, not a claim about metal."""
    trusted = [reading for reading in readings if reading.id != MIDDLE]
    return min(reading.low for reading in trusted), max(reading.high for reading in trusted)


def _methods(tables: Tables, metal: Metal, part: FoldedPart) -> list[MethodLength]:
    """Return the flat length by each method that covers every bend."""
    thickness = part.thickness_mm
    by_bend = [
        {each.id: each for each in k_readings(tables, metal, bend.radius_mm, thickness)}
        for bend in part.bends
    ]
    lengths = []
    for method in dict.fromkeys(method for readings in by_bend for method in readings):
        used = [readings[method] for readings in by_bend if method in readings]
        if len(used) == len(by_bend):
            length = make_blank(part, [reading.k for reading in used]).length_mm
            lengths.append(MethodLength(used[0].method, length, used[0].basis, used[0].source))
    is_square = all(bend.angle_deg == 90.0 for bend in part.bends)
    if part.bends and is_square and part.dimensions is Dimensions.OUTSIDE:
        taken = sum(shop_deduction(bend.radius_mm, thickness) for bend in part.bends)
        lengths.append(
            MethodLength(tr("drawing school's rule"), sum(part.legs_mm) - taken, Basis.PRINTED, "WESTERMANN")
        )
    return lengths


def _with_notes(answer: BlankAnswer) -> BlankAnswer:
    return replace(answer, notes=tuple(_notes(answer)))


def _notes(answer: BlankAnswer) -> list[str]:
    notes = []
    part = answer.blank.part
    if part.bends and not answer.radii:
        named = in_temper(answer.metal)
        notes.append(
            tr(
                "No table has a least radius for {metal} this thick: bend a test strip and look for cracks.",
                metal=named,
            )
        )
    wants = [reading.radius_mm for reading in answer.radii if reading.radius_mm is not None]
    tightest = answer.tightest_mm
    if tightest is not None and answer.radii and answer.radii[0].radius_mm is None:
        notes.append(
            tr("The table advises against a cold bend in this thickness: have it formed, or weld the corner.")
        )
    if tightest is not None and wants and answer.is_wide_enough and tightest < max(wants) - 0.005:
        notes.append(
            tr(
                "Another document asks for {radius}: bend a test strip first and look at the bend's outside.",
                radius=both(max(wants)),
            )
        )
    if answer.is_wide_enough is False and answer.anneal is not None:
        row = answer.anneal
        how = tr(
            "{temperature:.0f} degC, {hold}, cooled {cooling}",
            temperature=row.temperature_c,
            hold=row.hold,
            cooling=row.cooling,
        )
        notes.append(
            tr(
                "Annealed first ({how}) it bends tighter, at a cost: yield strength falls from about"
                " {before:.0f} to {after:.0f} MPa ({temper} to O, {grade}). A larger radius keeps the"
                " strength.",
                how=how,
                before=row.yield_mpa,
                after=row.annealed_yield_mpa,
                temper=row.temper,
                grade=tr(row.basis.value),
            )
        )
    if part.bends and answer.relief_mm is not None:
        notes.append(
            tr(
                "Where two bend lines cross, drill {hole} through the crossing before bending.",
                hole=both(answer.relief_mm),
            )
        )
    if part.bends and not answer.is_along_grain:
        notes.append(
            tr(
                "Bend lines across the rolling direction; along it the sheet cracks sooner and wants half as"
                " much radius again."
            )
        )
    return notes
