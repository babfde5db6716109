"""How close the advice comes to each schedule row, with all documents and with the row's own left out."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from statistics import median, quantiles

from welds.advice.advise import advise
from welds.advice.factors import joint_factor, position_factor
from welds.advice.mig_seams import REFERENCE_WIRE_MM, Bench, fit_mig_seams, thickness_of, wire_of
from welds.advice.pooling import REACH
from welds.advice.request import Hand, Joint, Process, Request, Transfer
from welds.advice.sizes import nearest_size
from welds.advice.tig_seams import Series, base_joint, fit_tig_seams, material_of
from welds.errors import InputError, NotCoveredError
from welds.quantities.sizes import WIRE
from welds.reference.basis import Basis
from welds.reference.schedules import MigSchedule, TigSchedule
from welds.reference.tables import Tables

METAL = {
    "aluminium": "6061",
    "magnesium": "magnesium-az31",
    "carbon-steel": "low-carbon",
    "stainless": "304",
    "copper": "copper",
    "silicon-bronze": "silicon-bronze",
    "titanium": "titanium-2",
}
"""The metal that stands for a row whose document names the family only."""


@dataclass(frozen=True)
class Score:
    """One row beside the advice: printed range, advised band, same unit."""

    process: str
    document: str
    metal: str
    joint: str
    row_id: str
    thickness_mm: float
    position: str
    printed: tuple[float, float]
    advised: tuple[float, float, float]
    is_published: bool
    is_printed: bool

    @property
    def error(self) -> float:
        """Distance of the row's middle from our start, as a share of our start."""
        return abs((self.printed[0] + self.printed[1]) / 2 / self.advised[1] - 1)

    @property
    def overlaps(self) -> bool:
        """Whether the printed range and the advised band share a value."""
        return self.printed[0] <= self.advised[2] and self.printed[1] >= self.advised[0]

    @property
    def half_width(self) -> float:
        """The wider half of the band as a share of the start."""
        low, start, high = self.advised
        return max(start - low, high - start) / start


def tig_rows(tables: Tables) -> Iterator[TigSchedule]:
    """Yield the rows that carry advice."""
    return (row for row in tables.records(TigSchedule) if row.use == "pooled")


def mig_rows(tables: Tables) -> Iterator[MigSchedule]:
    """Yield the rows that carry advice."""
    return (row for row in tables.records(MigSchedule) if row.use == "pooled")


def position_of(row: TigSchedule | MigSchedule) -> str:
    """Return the position to ask for: flat where the row holds for it or names none."""
    if isinstance(row, TigSchedule):
        return row.position or "PA"
    return "PA" if not row.positions or "PA" in row.positions else row.positions[0]


def tig_request(row: TigSchedule) -> Request:
    """Return the request that asks for the row's own case."""
    return Request(
        Process.TIG,
        METAL[material_of(row.family, row.group)],
        row.thickness_mm,
        Joint(row.joint),
        position_of(row),
        hand=Hand.UNHURRIED if row.hand == "any" else Hand(row.hand),
        gas="helium" if row.gas == "helium" else None,
    )


def mig_request(row: MigSchedule) -> Request:
    """Return the request that asks for the row's own case, wire, transfer and gas pinned."""
    wire = wire_of(row)
    return Request(
        Process.MIG,
        METAL[row.family],
        thickness_of(row),
        Joint(row.joint),
        position_of(row),
        other_thickness_mm=row.bottom_mm,
        gas=row.gas or None,
        wire_diameter_mm=nearest_size(wire, list(WIRE)) if wire else None,
        transfer=Transfer(row.transfer),
    )


def scores(tables: Tables, setting: str = "current") -> list[Score]:
    """Return every row that carries advice beside the card's own answer."""
    found = [_score(tables, "tig", row, tig_request(row), setting) for row in tig_rows(tables)]
    found += [_score(tables, "mig", row, mig_request(row), setting) for row in mig_rows(tables)]
    return [score for score in found if score is not None]


def shown_scores(tables: Tables) -> tuple[list[Score], list[str]]:
    """Return the rows that carry no advice beside the card's answer to their own case, and the rest in words.

    An arc spot burns through the sheet without a hole. No joint of a request means that, so it is not asked.
    """
    found: list[Score] = []
    unasked = []
    for process, row, make_request in (
        *(("tig", row, tig_request) for row in tables.records(TigSchedule) if row.use != "pooled"),
        *(("mig", row, mig_request) for row in tables.records(MigSchedule) if row.use != "pooled"),
    ):
        if isinstance(row, MigSchedule) and row.kind == "spot":
            unasked.append(f"{row.row_id}: an arc spot, which no request can ask for")
            continue
        try:
            score = _score(tables, process, row, make_request(row), "current")
        except (InputError, NotCoveredError) as error:
            unasked.append(f"{row.row_id}: refused, {error}")
        else:
            assert score is not None
            found.append(score)
    return found, unasked


def _score(
    tables: Tables, process: str, row: TigSchedule | MigSchedule, request: Request, setting: str
) -> Score | None:
    if setting == "current":
        printed: tuple[float | None, float | None] = (row.current_min_a, row.current_max_a)
    elif isinstance(row, MigSchedule):
        printed = (row.voltage_min_v, row.voltage_max_v)
    else:
        return None
    if printed[0] is None or printed[1] is None:
        return None
    band = advise(request, tables).settings[setting].band
    assert band is not None
    return Score(
        process,
        row.source_id,
        row.family,
        row.joint,
        row.row_id,
        request.thickness_mm,
        request.position,
        (printed[0], printed[1]),
        (band.low, band.start, band.high),
        row.basis.is_published,
        row.basis is Basis.PRINTED,
    )


def left_out_scores(tables: Tables) -> list[Score]:
    """Return each document's rows predicted from the other documents alone, where those reach."""
    found = []
    for document in sorted({row.source_id for row in tig_rows(tables)}):
        seams = fit_tig_seams(tables, lambda row, left=document: row.source_id != left, document)  # type: ignore[misc]
        for row in (each for each in tig_rows(tables) if each.source_id == document):
            gas = "argon" if row.gas == "argon-helium" else row.gas
            base = base_joint(gas, Joint(row.joint))
            material = material_of(row.family, row.group)
            curve = seams.curves.get(Series(material, row.polarity, gas, row.hand, base))
            if curve is None or not curve.covers(row.thickness_mm):
                continue
            reading = curve.at(row.thickness_mm)
            joint = Joint(row.joint)
            factor = joint_factor(tables, Process.TIG, row.family, row.hand, joint, gas, document).value
            found.append(_left_out("tig", row, row.thickness_mm, factor, reading))
    for document in sorted({row.source_id for row in mig_rows(tables)}):
        mig = fit_mig_seams(tables, lambda row, left=document: row.source_id != left, document)  # type: ignore[misc]
        for seam in (each for each in mig_rows(tables) if each.source_id == document and each.kind == "seam"):
            bench = Bench(seam.family, seam.transfer)
            curve = mig.curves.get(bench)
            if curve is None or not curve.covers(thickness_of(seam)):
                continue
            reading = curve.at(thickness_of(seam))
            joint = Joint(seam.joint)
            factor = joint_factor(tables, Process.MIG, seam.family, "any", joint, without=document).value
            wire = wire_of(seam) or REFERENCE_WIRE_MM
            factor *= (wire / REFERENCE_WIRE_MM) ** mig.wire_exponent[bench]
            if seam.positions and "PA" not in seam.positions:
                place = position_factor(tables, Process.MIG, joint, seam.positions[0], reading.middle)
                factor *= place.value
            found.append(_left_out("mig", seam, thickness_of(seam), factor, reading))
    return found


def _left_out(process: str, row, thickness_mm: float, factor: float, reading) -> Score:  # type: ignore[no-untyped-def]
    assert thickness_mm * REACH > 0
    return Score(
        process,
        row.source_id,
        row.family,
        row.joint,
        row.row_id,
        thickness_mm,
        position_of(row),
        (row.current_min_a, row.current_max_a),
        (reading.low * factor, reading.middle * factor, reading.high * factor),
        row.basis.is_published,
        row.basis is Basis.PRINTED,
    )


def summary(found: Iterable[Score]) -> tuple[float, float, float]:
    """Return median error, error of the ninth row in ten, and the share of rows that overlap."""
    rows = list(found)
    errors = [row.error for row in rows]
    ninth = quantiles(errors, n=10)[-1] if len(errors) > 1 else errors[0]
    return median(errors), ninth, sum(row.overlaps for row in rows) / len(rows)


def table(found: Iterable[Score]) -> str:
    """Return the scores by process, document, metal and joint, as text."""
    groups: dict[tuple[str, str, str, str], list[Score]] = {}
    for score in found:
        groups.setdefault((score.process, score.document, score.metal, score.joint), []).append(score)
    lines = [
        f"{'process':8}{'document':28}{'metal':14}{'joint':16}{'rows':>5}{'median':>8}{'worst':>8}{'overlap':>9}"
    ]
    for (process, document, metal, joint), rows in sorted(groups.items()):
        errors = [row.error for row in rows]
        share = sum(row.overlaps for row in rows) / len(rows)
        lines.append(
            f"{process:8}{document:28}{metal:14}{joint:16}{len(rows):5d}{median(errors):8.1%}{max(errors):8.1%}{share:9.0%}"
        )
    return "\n".join(lines)
