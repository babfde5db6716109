"""The heat model on rows that its fit saw, and on rows it did not see."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from tests.published.heat_fit import FOLDS, Answer, all_rows, best, grids, left_out
from tests.published.heat_rows import HeatRow
from welds.reference.tables import Tables

QUESTIONS = ("through", "holds", "half", "double")
"""Melts through with a fitting width; does not fall out; half its current stays cold; twice it falls out."""

Answers = Mapping[str, Answer]


@dataclass(frozen=True)
class HeatScores:
    """Answers by row, from constants fitted to all rows, without a tenth of them, without a document."""

    rows: tuple[HeatRow, ...]
    seen: Answers
    without_a_tenth: Answers
    without_its_document: Answers


def heat_scores(tables: Tables) -> HeatScores:
    """Fit anew for each way of leaving rows out; half a minute of work."""
    rows = tuple(all_rows(tables))
    both = grids(tables)
    names = [row.row_id for row in rows]
    documents = sorted({row.document for row in rows})
    return HeatScores(
        rows,
        {row: answer for grid in both for row, answer in grid[best(grid)].items()},
        left_out(both, [names[fold::FOLDS] for fold in range(FOLDS)]),
        left_out(both, [[row.row_id for row in rows if row.document == each] for each in documents]),
    )


def share(answers: Iterable[Answer], question: str) -> float:
    """Return the share of answers that meet a question."""
    found = [bool(getattr(answer, question)) for answer in answers]
    return sum(found) / len(found)
