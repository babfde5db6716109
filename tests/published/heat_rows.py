"""The single-pass butt rows that print current, thickness and travel, beside the heat model.

Such a row is a weld that melted through without falling out, so the model has to say the same of it, of
half its current that it does not melt through, and of twice its current that the pool falls out.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property
from math import exp, log, sqrt

import numpy as np

from tests.published.schedule_scores import METAL, material_of
from welds.advice.heat.bead import HeatSettings, model_of
from welds.advice.heat.model import HeatModel
from welds.advice.mig_seams import thickness_of, wire_of
from welds.advice.request import Joint, Process, Request, Transfer
from welds.advice.sizes import nearest_size
from welds.quantities.sizes import WIRE
from welds.reference.metals import find_metal
from welds.reference.schedules import MigSchedule, TigSchedule
from welds.reference.tables import Tables

THIN_MM, THIN_LIMIT_MM = 2.0, 8.0
WIDEST = 4.0


@dataclass(frozen=True)
class HeatRow:
    """One row as a case for the model."""

    row_id: str
    document: str
    family: str
    thickness_mm: float
    current_a: float
    model: HeatModel
    is_tig: bool
    is_ac: bool

    @cached_property
    def window_a(self) -> tuple[float, float]:
        """Currents that just melt through and that fall out."""
        through = self.model.through_current_a()
        return through, self.model.collapse_current_a(through)

    @property
    def offset(self) -> float:
        """Logarithm of the row's current over the middle of the window."""
        low, high = self.window_a
        return log(self.current_a / sqrt(low * high))

    @property
    def width_mm(self) -> float:
        return self.model.width_mm(self.current_a, 0.0)

    @property
    def melts_through(self) -> bool:
        return self.current_a >= self.window_a[0]

    @property
    def has_a_fitting_width(self) -> bool:
        widest = WIDEST * self.thickness_mm
        if self.thickness_mm < THIN_MM:
            widest = max(widest, THIN_LIMIT_MM)
        return self.thickness_mm <= self.width_mm <= widest

    @property
    def half_stays_cold(self) -> bool:
        return self.current_a / 2.0 < self.window_a[0]

    @property
    def double_falls_out(self) -> bool:
        return self.current_a * 2.0 > self.window_a[1]

    @property
    def holds(self) -> bool:
        return self.current_a < self.window_a[1]


def heat_rows(tables: Tables, uses: Iterable[str] = ("pooled",)) -> Iterator[HeatRow]:
    """Yield the rows in use; those only shown have a note that says why they are doubted."""
    kept = tuple(uses)
    printed_volts = {row["row_id"]: row["arc_voltage_v"] for row in tables.table("tig_schedules").rows}
    mig_cells = {row["row_id"]: row for row in tables.table("mig_schedules").rows}
    for tig in tables.records(TigSchedule):
        single = tig.passes_max in (None, 1)
        if tig.joint == "butt" and single and tig.travel_min_mm_s and tig.use in kept:
            request = Request(
                Process.TIG,
                METAL[material_of(tig.family, tig.group)],
                tig.thickness_mm,
                Joint.BUTT,
                gas="helium" if tig.gas == "helium" else None,
            )
            yield _row(tables, tig, request, printed_volts[tig.row_id])
    for mig in tables.records(MigSchedule):
        cells = mig_cells[mig.row_id]
        single = cells["passes_text"] == "1"
        if mig.joint == "butt" and mig.kind == "seam" and single and mig.travel_min_mm_s and mig.use in kept:
            wire = wire_of(mig)
            request = Request(
                Process.MIG,
                METAL[mig.family],
                thickness_of(mig),
                Joint.BUTT,
                gap_mm=((cells["gap_min_mm"] or 0.0) + (cells["gap_max_mm"] or 0.0)) / 2.0,
                gas=mig.gas or None,
                wire_diameter_mm=nearest_size(wire, [size for size in WIRE if size <= 1.6]) if wire else None,
                transfer=Transfer(mig.transfer),
            )
            volts = (
                None if mig.voltage_min_v is None else (mig.voltage_min_v + (mig.voltage_max_v or 0.0)) / 2.0
            )
            yield _row(tables, mig, request, volts, has_bar=bool(cells["backing"]))


def _row(
    tables: Tables,
    row: TigSchedule | MigSchedule,
    request: Request,
    voltage_v: float | None,
    *,
    has_bar: bool = False,
) -> HeatRow:
    current = (row.current_min_a + row.current_max_a) / 2.0
    assert row.travel_min_mm_s is not None
    assert row.travel_max_mm_s is not None
    travel = (row.travel_min_mm_s + row.travel_max_mm_s) / 2.0
    settings = HeatSettings(current, travel, voltage_v, has_bar=has_bar)
    is_ac = isinstance(row, TigSchedule) and row.polarity == "AC"
    return make_row(tables, row.row_id, row.source_id, request, settings, is_ac=is_ac)


def make_row(
    tables: Tables,
    row_id: str,
    document: str,
    request: Request,
    settings: HeatSettings,
    *,
    is_ac: bool = False,
) -> HeatRow:
    """Return one printed row as a case for the model."""
    model = model_of(request, settings, tables)
    family = find_metal(tables, request.metal).family
    is_tig = request.process is Process.TIG
    return HeatRow(row_id, document, family, request.thickness_mm, settings.current_a, model, is_tig, is_ac)


def shares(rows: Iterable[HeatRow]) -> dict[str, float]:
    """Return the share of rows that pass each question."""
    found = list(rows)
    return {
        "through with a fitting width": np.mean(
            [row.melts_through and row.has_a_fitting_width for row in found]
        ),
        "and holds": np.mean([row.melts_through and row.has_a_fitting_width and row.holds for row in found]),
        "half stays cold": np.mean([row.half_stays_cold for row in found]),
        "double falls out": np.mean([row.double_falls_out for row in found]),
    }


def spread(rows: Iterable[HeatRow]) -> tuple[float, float, float]:
    """Return median offset, and the half-widths that hold two thirds and nine tenths of the rows."""
    offsets = np.array([row.offset for row in rows])
    middle = float(np.median(offsets))
    away = np.abs(offsets - middle)
    return exp(middle) - 1.0, float(np.quantile(away, 2 / 3)), float(np.quantile(away, 0.9))


def table(rows: Iterable[HeatRow]) -> str:
    """Return every row, as text."""
    lines = [f"{'row':11}{'metal':14}{'mm':>5}{'A':>6}{'width':>7}{'through':>9}{'falls':>7}  remarks"]
    for row in rows:
        low, high = row.window_a
        remarks = [
            text
            for text, ok in (
                ("does not melt through", row.melts_through),
                ("width", row.has_a_fitting_width),
                ("falls out", row.holds),
                ("half melts through", row.half_stays_cold),
                ("double holds", row.double_falls_out),
            )
            if not ok
        ]
        lines.append(
            f"{row.row_id:11}{row.family:14}{row.thickness_mm:5.2f}{row.current_a:6.0f}{row.width_mm:7.1f}"
            f"{low:9.0f}{high:7.0f}  {', '.join(remarks)}"
        )
    return "\n".join(lines)
