"""Fit the heat model's constants to the schedule rows, and with each document left out.

    python -m tests.published.heat_fit

A row asks three questions: does it melt through with a fitting width, does half its current stay cold, does
twice its current fall out. The fit leaves the fewest unanswered; among equals it has the least loss:
nothing where a question is met with 5 % to spare, growing with the logarithm of what is missing, and the
same for all that miss by more than 30 % (a row may be wrong). AC rows see the efficiency and the TIG spot,
other TIG rows the spot, MIG rows the three others; so each part has a grid.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import product
from math import log

from tests.published.heat_rows import THIN_LIMIT_MM, THIN_MM, WIDEST, HeatRow, heat_rows
from welds.advice.heat.calibration import FITTED, Fitted
from welds.reference.load import load_tables
from welds.reference.tables import Tables

SPARE, ENOUGH = 0.05, 0.30
FOLDS = 10
AC = (0.48, 0.50, 0.52, 0.53, 0.54, 0.55, 0.56, 0.58, 0.60)
TIG_SPOT = (0.9, 1.0, 1.1, 1.2, 1.3, 1.5)
MIG_SPOT = (0.5, 0.6, 0.7, 0.8, 1.0)
MIG_DENT = (0.3, 0.4, 0.5, 0.6)
BELOW = (1.0, 1.5, 2.0)


@dataclass(frozen=True)
class Answer:
    """What the model says of one row with one set of constants."""

    loss: float
    through: bool
    holds: bool
    half: bool
    double: bool

    @property
    def unmet(self) -> int:
        """Questions the row asks in vain."""
        return (not self.through) + (not self.half) + (not self.double)


def ask(row: HeatRow, fitted: Fitted) -> Answer:
    """Return what the model says of a row with other constants."""
    model = replace(row.model, fitted=fitted)
    if row.is_ac:
        model = model.with_heat(fitted.ac_efficiency / FITTED.ac_efficiency)
    current, thickness = row.current_a, row.thickness_mm
    least = model.through_current_a()
    width = model.width_mm(current, 0.0)
    widest = WIDEST * thickness if thickness >= THIN_MM else max(WIDEST * thickness, THIN_LIMIT_MM)
    at_set, at_double = model.collapse(current), model.collapse(2.0 * current)
    missing = (
        log(least / current),
        log(thickness / max(width, 0.01)),
        log(max(width, 0.01) / widest),
        log(max(at_set, 0.01)) / 2.0,
        log(current / 2.0 / least),
        -log(max(at_double, 0.01)) / 2.0,
    )
    loss = sum(min(max(each + SPARE, 0.0), ENOUGH) for each in missing)
    fits = least <= current and thickness <= width <= widest
    return Answer(loss, fits, at_set < 1.0, current / 2.0 < least, at_double > 1.0)


Grid = dict[Fitted, dict[str, Answer]]


def grids(tables: Tables) -> tuple[Grid, Grid]:
    """Return the answers of all TIG rows and of all MIG rows over their constants."""
    rows = list(heat_rows(tables))
    tig_grid: Grid = {}
    straight = {
        spot: {
            row.row_id: ask(row, replace(FITTED, tig_spot_mm=spot))
            for row in rows
            if row.is_tig and not row.is_ac
        }
        for spot in TIG_SPOT
    }
    for efficiency, spot in product(AC, TIG_SPOT):
        fitted = replace(FITTED, ac_efficiency=efficiency, tig_spot_mm=spot)
        alternating = {row.row_id: ask(row, fitted) for row in rows if row.is_ac}
        tig_grid[fitted] = {**straight[spot], **alternating}
    mig_grid: Grid = {}
    for spot, dent, below in product(MIG_SPOT, MIG_DENT, BELOW):
        fitted = replace(FITTED, mig_spot_mm=spot, mig_dent_mm=dent, heat_below_dent=below)
        mig_grid[fitted] = {row.row_id: ask(row, fitted) for row in rows if not row.is_tig}
    return tig_grid, mig_grid


def best(grid: Grid, left_out: Iterable[str] = ()) -> Fitted:
    """Return the constants with the least loss over the rows that are not left out."""
    away = frozenset(left_out)

    def misfit(fitted: Fitted) -> tuple[int, float]:
        answers = [answer for row, answer in grid[fitted].items() if row not in away]
        return sum(answer.unmet for answer in answers), sum(answer.loss for answer in answers)

    return min(grid, key=misfit)


def main() -> None:
    """Print the fit and what each document says when it is left out."""
    tables = load_tables()
    documents = {row.row_id: row.document for row in heat_rows(tables)}
    both = grids(tables)
    print("all rows:", *(best(grid) for grid in both), sep="\n  ")
    unseen: list[Answer] = []
    for document in sorted(set(documents.values())):
        own = [row for row, source in documents.items() if source == document]
        for grid in both:
            if set(own) & set(next(iter(grid.values()))):
                fitted = best(grid, own)
                answers = [grid[fitted][row] for row in own if row in grid[fitted]]
                unseen += answers
                print(f"{document:24}{len(answers):3d} rows, {_shares(answers)}\n    {fitted}")
    print(f"documents left out one by one: {len(unseen)} rows, {_shares(unseen)}")
    folded: list[Answer] = []
    for fold in range(FOLDS):
        own = [row for place, row in enumerate(documents) if place % FOLDS == fold]
        for grid in both:
            fitted = best(grid, own)
            folded += [grid[fitted][row] for row in own if row in grid[fitted]]
    print(f"every {FOLDS}th row left out in turn: {len(folded)} rows, {_shares(folded)}")
    print(f"rows fitted on: {_shares([a for grid in both for a in grid[best(grid)].values()])}")


def _shares(answers: list[Answer]) -> str:
    count = len(answers)
    names = ("through", "holds", "half", "double")
    return ", ".join(f"{name} {sum(getattr(a, name) for a in answers) / count:.3f}" for name in names)


if __name__ == "__main__":
    main()
