"""Fit the heat model's constants to the printed rows, and with each document left out.

    python -m tests.published.heat_fit

A row asks four questions: does it melt through with a fitting width, does it hold, does half its current
stay cold, does twice its current fall out. The fit leaves the fewest unanswered; among equals it has the
least loss: nothing where a question is met with 5 % to spare, growing with the logarithm of what is
missing, and the same for all that miss by more than 30 % (a row may be wrong). AC rows see the efficiency
and the TIG spot, other TIG rows the spot, MIG rows the two others; so each part has a grid.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from itertools import product
from math import log

from tests.published.heat_conditions import condition_rows
from tests.published.heat_rows import THIN_LIMIT_MM, THIN_MM, WIDEST, HeatRow, heat_rows
from welds.advice.heat.calibration import FITTED, Fitted
from welds.reference.load import load_tables
from welds.reference.tables import Tables

SPARE, ENOUGH = 0.05, 0.30
FOLDS = 10
AC = (0.40, 0.45, 0.50, 0.55, 0.60, 0.65)
"""No finer: other documents left out move it by 0.05."""

TIG_SPOT = (0.9, 1.0, 1.1, 1.2, 1.3, 1.5)
MIG_SPOT = (0.5, 0.6, 0.7, 0.8, 0.9, 1.0)
MIG_DENT = (0.3, 0.4, 0.5, 0.6, 0.7, 0.8)


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
        return (not self.through) + (not self.holds) + (not self.half) + (not self.double)


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


def all_rows(tables: Tables) -> list[HeatRow]:
    """Return the schedules' rows and those of the printed conditions."""
    return [*heat_rows(tables), *condition_rows(tables)]


def grids(tables: Tables) -> tuple[Grid, Grid]:
    """Return the answers of all TIG rows and of all MIG rows over their constants."""
    rows = all_rows(tables)
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
    for spot, dent in product(MIG_SPOT, MIG_DENT):
        fitted = replace(FITTED, mig_spot_mm=spot, mig_dent_mm=dent)
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
    """Print the fit, and what is said of rows that were left out of it."""
    tables = load_tables()
    documents = {row.row_id: row.document for row in all_rows(tables)}
    schedules = {row.row_id for row in heat_rows(tables)}
    both = grids(tables)
    print("fitted on all rows:", *(best(grid) for grid in both), sep="\n  ")

    def tell(text: str, answers: Mapping[str, Answer]) -> None:
        print(f"{text}: {_shares(answers.values())}")
        print("  of the schedules", _shares(a for row, a in answers.items() if row in schedules))

    tell("rows fitted on", {row: answer for grid in both for row, answer in grid[best(grid)].items()})
    names = sorted(set(documents.values()))
    by_document = [[row for row, source in documents.items() if source == name] for name in names]
    for name, own in zip(names, by_document, strict=True):
        print(f"{name:24}{_shares(left_out(both, [own]).values())}")
    tell("each document left out", left_out(both, by_document))
    folds = [list(documents)[first::FOLDS] for first in range(FOLDS)]
    tell(f"every {FOLDS}th row left out in turn", left_out(both, folds))


def left_out(both: Iterable[Grid], groups: Iterable[list[str]]) -> dict[str, Answer]:
    """Return what is said of each group of rows by constants fitted without it."""
    found: dict[str, Answer] = {}
    for own in groups:
        for grid in both:
            answers = grid[best(grid, own)]
            found |= {row: answers[row] for row in own if row in answers}
    return found


def _shares(answers: Iterable[Answer]) -> str:
    found = list(answers)
    names = ("through", "holds", "half", "double")
    told = (f"{name} {sum(getattr(each, name) for each in found) / len(found):.1%}" for name in names)
    return f"{len(found)} rows, {', '.join(told)}"


if __name__ == "__main__":
    main()
