"""Which tests run which line, taken once: only those are worth running on a mutant of it."""

import ast
import json
import time
from collections import defaultdict
from collections.abc import Iterator, Sequence
from functools import cache
from pathlib import Path

import coverage
import pytest

from tests.mutation.child import ARGUMENTS, ROOT

FOLDERS = (
    "advice",
    "bench_file",
    "cli",
    "data",
    "job",
    "physics",
    "published",
    "reference",
    "report",
    "validation",
)
"""Under tests/: those that need no window, start no server and are not about the checkout."""

LONG = 10.0
"""Seconds under which a test is asked at all; a longer one may be about time."""

FEW = 30
NO_TEST = -1
"""Stands for a line that is run while something is imported or collected."""


class _Watch:
    """Tells the coverage which test is running, and keeps how long it took and whether it passed."""

    def __init__(self, lines: coverage.Coverage) -> None:
        self.lines = lines
        self.seconds: dict[str, float] = {}
        self.left_out: set[str] = set()

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Iterator[None]:
        self.lines.switch_context(item.nodeid)
        begun = time.process_time()
        answer = yield
        self.seconds[item.nodeid] = time.process_time() - begun
        return answer

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.failed or report.skipped:
            self.left_out.add(report.nodeid)


def take(modules: Sequence[str], path: Path) -> list[str]:
    """Write the map to `path`, return the tests left out as failing or skipped; to be called in a child."""
    lines = coverage.Coverage(
        data_file=None, include=[str(ROOT / module) for module in modules], config_file=False
    )
    watch = _Watch(lines)
    lines.start()
    folders = [str(ROOT / "tests" / folder) for folder in FOLDERS]
    pytest.main([*ARGUMENTS[1:], *folders, str(ROOT / "welds/physics")], plugins=[watch])
    lines.stop()
    tests = [test for test, seconds in watch.seconds.items() if test not in watch.left_out and seconds < LONG]
    number = {"": NO_TEST} | {test: n for n, test in enumerate(tests)}
    runs = {
        module: {
            line: sorted(number[test] for test in contexts if test in number)
            for line, contexts in lines.get_data().contexts_by_lineno(str(ROOT / module)).items()
        }
        for module in modules
    }
    path.write_text(json.dumps({"tests": [(test, watch.seconds[test]) for test in tests], "runs": runs}))
    return sorted(watch.left_out)


class Selection:
    """What to run for a line, by a map taken before."""

    def __init__(self, path: Path) -> None:
        read = json.loads(path.read_text())
        self._tests: list[tuple[str, float]] = [(test, seconds) for test, seconds in read["tests"]]
        self._runs: dict[str, dict[str, list[int]]] = read["runs"]
        self.killers: dict[str, set[str]] = defaultdict(set)
        """Test files that killed a mutant of the module before."""

    def tests_of(self, module: str, line: int, budget: float) -> list[tuple[str, float]]:
        """Return tests and their seconds, file by file, the likeliest to kill first, up to a sum of seconds.

        Those named after the module come first, then those seen to run the line. A line that runs at import
        can change any test of the module and of those that import it. So can one that few are seen to run:
        what is fitted or cached is run by the first test that asks for it, and used by many.
        """
        own = {n for n, (test, _) in enumerate(self._tests) if _is_named_after(test, module)}
        direct = {n for each in _statement(module, line) for n in self._runs[module].get(str(each), ())}
        found = direct | own
        if NO_TEST in direct or len(direct) < FEW:
            near = (each for each in self._runs if each == module or module in _imports(each))
            found |= {n for each in near for tests in self._runs[each].values() for n in tests}
        found.discard(NO_TEST)

        def rank(n: int) -> tuple[bool, bool, bool, bool, float]:
            (test, seconds), killers = self._tests[n], self.killers[module]
            same_layer = Path(test).parts[1] == Path(module).parts[1]
            return n not in own, n not in direct, _file(test) not in killers, not same_layer, seconds

        chosen: dict[str, list[tuple[str, float]]] = {}
        total = 0.0
        for test, seconds in (self._tests[n] for n in sorted(found, key=rank)):
            total += seconds
            if total > budget and chosen:
                break
            chosen.setdefault(_file(test), []).append((test, seconds))
        return [pair for group in chosen.values() for pair in group]


def _file(test: str) -> str:
    return test.partition("::")[0]


def _is_named_after(test: str, module: str) -> bool:
    file = Path(_file(test))
    return str(file) == module or (
        file.name == f"test_{Path(module).name}" and file.parts[1] == Path(module).parts[1]
    )


@cache
def _tree(module: str) -> ast.Module:
    return ast.parse((ROOT / module).read_text(encoding="utf-8"))


@cache
def _imports(module: str) -> set[str]:
    found = set()
    for node in ast.walk(_tree(module)):
        if isinstance(node, ast.ImportFrom) and node.module:
            path = node.module.replace(".", "/")
            found |= {f"{path}.py", *(f"{path}/{alias.name}.py" for alias in node.names)}
    return found


def _statement(module: str, line: int) -> range:
    """Return the lines of the statement at a line; of one with a body, those of its head."""
    found = range(line, line + 1)
    for node in ast.walk(_tree(module)):  # from the outside in
        if isinstance(node, ast.stmt):
            body = getattr(node, "body", None)
            first = min([node.lineno, *(each.lineno for each in getattr(node, "decorator_list", []))])
            last = max(node.lineno, body[0].lineno - 1) if body else node.end_lineno
            if first <= line <= last:
                found = range(first, last + 1)
    return found
