"""Scores by what rows have in common, as Markdown."""

from collections.abc import Callable, Iterable, Sequence

from tests.published.schedule_scores import Score, summary

THICKNESS_MM = (1.0, 2.0, 4.0, 8.0)
"""Upper ends of the classes of thickness; what is thicker makes the last one."""

Key = Callable[[Score], tuple[str, ...]]


def table(head: Sequence[str], rows: Iterable[Sequence[object]]) -> str:
    """Return a Markdown table; figures are right-aligned where the head starts with a colon."""
    rules = ["---:" if name.startswith(":") else "---" for name in head]
    lines = [[name.removeprefix(":") for name in head], rules, *([str(cell) for cell in row] for row in rows)]
    return "\n".join(f"| {' | '.join(line)} |" for line in lines)


def thickness_class(score: Score) -> tuple[str, ...]:
    """Return the class of the row's thickness, in words that sort by thickness."""
    for low, high in zip((0.0, *THICKNESS_MM), THICKNESS_MM, strict=False):
        if score.thickness_mm <= high:
            return (f"{low:g} to {high:g} mm",)
    return (f"{THICKNESS_MM[-1]:g} mm and above",)


def by(head: Sequence[str], key: Key, pooled: Iterable[Score], left_out: Iterable[Score] = ()) -> str:
    """Return a table of both kinds of score, one line for each key."""
    groups: dict[tuple[str, ...], tuple[list[Score], list[Score]]] = {}
    for place, scores in enumerate((pooled, left_out)):
        for score in scores:
            groups.setdefault(key(score), ([], []))[place].append(score)
    has_left_out = any(unseen for _seen, unseen in groups.values())
    columns = [*head, *COLUMNS, *(UNSEEN if has_left_out else ())]
    return table(
        columns,
        (
            (*name, *_cells(seen), *(_cells(unseen) if has_left_out else ()))
            for name, (seen, unseen) in sorted(groups.items())
        ),
    )


COLUMNS = (":rows", ":median", ":9 in 10 within", ":worst", ":meet the band")
UNSEEN = (":left out: rows", ":median", ":9 in 10 within", ":worst", ":meet the band")


def _cells(scores: Sequence[Score]) -> tuple[str, ...]:
    if not scores:
        return ("0", "", "", "", "")
    middle, ninth, share = summary(scores)
    worst = max(score.error for score in scores)
    within = f"{ninth:.1%}" if len(scores) >= 10 else ""
    return (str(len(scores)), f"{middle:.1%}", within, f"{worst:.1%}", f"{share:.0%}")
