"""A figure beside its floor: what the least work of that kind and size costs, measured in turn with it."""

from collections.abc import Callable
from statistics import median
from time import perf_counter
from typing import Any

import pytest

Beside = Callable[..., Any]


@pytest.fixture
def beside(benchmark) -> Beside:
    """Return a function that measures, keeps the row for the table, and returns the answer.

    Floor and program take turns, so that a slow moment of the machine meets both.
    """

    def measure(row: str, ours: Callable[[], Any], floor: str, least: Callable[[], Any], rounds: int) -> Any:
        floors: list[float] = []

        def take_floor() -> None:
            begun = perf_counter()
            least()
            floors.append(perf_counter() - begun)

        if benchmark.enabled:
            answer = benchmark.pedantic(ours, setup=take_floor, rounds=rounds, warmup_rounds=1)
            rows = [(row, benchmark.stats.stats.median, floor, median(floors))]
            benchmark.extra_info["rows"] = rows
            return answer
        least()
        return benchmark(ours)

    return measure
