"""The heat model on rows that its fit saw, and on rows it did not see."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from tests.published.heat_fit import FOLDS, Answer, Grid, best, grids
from tests.published.heat_rows import HeatRow, heat_rows
from welds.reference.tables import Tables

QUESTIONS = ("through", "half", "double")
"""Melts through with a fitting width; half its current stays cold; twice its current falls out."""

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
    rows = tuple(heat_rows(tables))
    both = grids(tables)
    names = [row.row_id for row in rows]
    tenths = [names[fold::FOLDS] for fold in range(FOLDS)]
    documents = [
        [row.row_id for row in rows if row.document == document]
        for document in sorted({row.document for row in rows})
    ]
    return HeatScores(rows, _answers(both, [[]]), _answers(both, tenths), _answers(both, documents))


def share(answers: Iterable[Answer], question: str) -> float:
    """Return the share of answers that meet a question."""
    found = [bool(getattr(answer, question)) for answer in answers]
    return sum(found) / len(found)


def _answers(both: Iterable[Grid], left_out: Iterable[Iterable[str]]) -> Answers:
    """Return what is said of the rows left out, or of all where none is."""
    found: dict[str, Answer] = {}
    for names in map(set, left_out):
        for grid in both:
            answers = grid[best(grid, names)]
            found |= {row: answer for row, answer in answers.items() if row in names or not names}
    return found
