"""How many mutants of the physics and the advice the tests kill.

    python -m tests.mutation [--sample N] [--seed S] [--jobs J] [--out FILE] [MODULE or FOLDER ...]

Needs cosmic-ray and coverage beside the test packages; neither is a dependency. cosmic-ray's operators make
the mutants, all that need no arguments. Each is tried in a fork of this process (`child.py`), by the tests
that run its line (`selection.py`), until one fails. The map of lines and tests is taken first, and kept
beside the outcomes until a file of welds/, data/ or tests/ is newer.

Outcomes: killed; timed out (counted as killed, and shown apart); survived. A mutant that no test runs has
survived, and so has one that outlives the first `--budget` seconds of tests. Not counted: text that does not
compile, and what can change no answer (`mutants.py`): annotations, the flags of frozen classes, `is` as `==`,
the mark of keyword-only arguments, a cache taken off. Not asked: tests marked slow, those of the window, and
those that fail or are skipped without any mutant.

Outcomes go to a file of JSON lines as they come; the same command goes on where it was stopped. After a
change of welds/ or tests/ take another file. With `--control` nothing is mutated: nothing may be killed.
"""

import argparse
import json
import os
import random
import select
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from math import sqrt
from pathlib import Path

try:
    from tests.mutation.child import ROOT, in_child, preload, stop, try_out
    from tests.mutation.mutants import Mutant, mutants_of
    from tests.mutation.selection import Selection, take
except ModuleNotFoundError as missing:
    if missing.name not in ("cosmic_ray", "parso", "coverage"):
        raise
    sys.exit(
        f"this needs cosmic-ray and coverage, which are no dependencies: no module {missing.name!r} here"
    )

PACKAGES = ("welds/physics", "welds/advice")
OUT = Path(tempfile.gettempdir()) / "welds-mutation" / "outcomes.jsonl"
Z95 = 1.96


def main() -> None:
    """Count, draw, try, and show the scores."""
    options = _options()
    modules = sorted({module for where in options.where for module in _modules(where)})
    everything = [mutant for module in modules for mutant in mutants_of(module)]
    counted = [mutant for mutant in everything if not mutant.harmless]
    harmless = len(everything) - len(counted)
    print(f"{len(counted)} mutants in {len(modules)} modules, and {harmless} that can change no answer")
    drawn = random.Random(options.seed).sample(counted, min(options.sample or len(counted), len(counted)))
    preload(options.out.parent)
    selection = Selection(_map(options.out.parent))
    done = _read(options.out)
    left = [mutant for mutant in drawn if mutant.key not in done]
    begun = time.monotonic()
    with options.out.open("a", encoding="utf-8") as file:
        for mutant, outcome in _outcomes(left, selection, options):
            done[mutant.key] = outcome
            file.write(json.dumps({"mutant": mutant.key, "line": mutant.line, **outcome}) + "\n")
            file.flush()
    print(f"{len(left)} tried in {time.monotonic() - begun:.0f} s; outcomes in {options.out}")
    _show([(mutant, done[mutant.key]["outcome"]) for mutant in drawn])


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m tests.mutation", description=__doc__.partition("\n")[0])
    parser.add_argument("where", nargs="*", default=PACKAGES, metavar="MODULE", help="what to mutate (all)")
    parser.add_argument("--sample", type=int, metavar="N", help="draw so many at random (all)")
    parser.add_argument("--seed", type=int, default=1, metavar="S", help="where the draw starts from (1)")
    parser.add_argument("--jobs", type=int, default=1, metavar="J", help="children at a time (1)")
    parser.add_argument("--budget", type=float, default=20.0, metavar="S", help="seconds of tests each (20)")
    parser.add_argument("--out", type=Path, default=OUT, metavar="FILE", help=f"outcomes ({OUT})")
    parser.add_argument("--control", action="store_true", help="try the unchanged text")
    options = parser.parse_args()
    options.out.parent.mkdir(parents=True, exist_ok=True)
    return options


def _modules(where: str) -> Iterator[str]:
    path = (ROOT / where).resolve()
    if not path.exists() or not any(path.is_relative_to(ROOT / package) for package in PACKAGES):
        sys.exit(f"{where}: not in {' or '.join(PACKAGES)}")
    for file in sorted(path.rglob("*.py")) if path.is_dir() else [path]:
        yield str(file.relative_to(ROOT))


def _map(folder: Path) -> Path:
    """Return where the map of lines and tests is, taken anew where something changed."""
    path = folder / "map.json"
    tops = (ROOT / top for top in ("welds", "data", "tests"))
    files = (file for top in tops for file in top.rglob("*.*") if file.suffix != ".pyc")
    if not path.exists() or path.stat().st_mtime < max(file.stat().st_mtime for file in files):
        modules = [module for package in PACKAGES for module in _modules(package)]
        child, pipe = in_child(lambda: take(modules, path), seconds=3600)
        with os.fdopen(pipe) as answer:
            left_out = json.loads(answer.read())
        os.waitpid(child, 0)
        print("map taken; not asked:", ", ".join(left_out) or "none")
    return path


def _read(path: Path) -> dict[str, dict[str, str]]:
    if not path.exists():
        return {}
    outcomes = [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines()]
    return {each["mutant"]: each for each in outcomes}


def _outcomes(
    mutants: Sequence[Mutant], selection: Selection, options: argparse.Namespace
) -> Iterator[tuple[Mutant, dict[str, object]]]:
    """Try mutants, some at a time, and yield each with its outcome as it ends."""
    waiting = list(reversed(mutants))
    running: dict[int, tuple[int, Mutant, int, float]] = {}  # by pipe: child, mutant, tests, when it is late
    while waiting or running:
        while waiting and len(running) < options.jobs:
            mutant = waiting.pop()
            tests = selection.tests_of(mutant.module, mutant.line, options.budget)
            seconds = round(20 + 3 * sum(each for _, each in tests))
            child, pipe = _start(mutant, tests, seconds, options.control)
            running[pipe] = child, mutant, len(tests), time.monotonic() + 6 * seconds
        ready, _, _ = select.select(list(running), [], [], 1.0)
        late = [pipe for pipe, (*_, end) in running.items() if pipe not in ready and time.monotonic() > end]
        for pipe in (*ready, *late):
            child, mutant, count, _ = running.pop(pipe)
            answer = os.read(pipe, 65536) if pipe in ready else b""
            os.close(pipe)
            stop(child)
            _, status = os.waitpid(child, 0)
            # Without an answer it broke down, or a limit of time ended it.
            outcome, by = (
                json.loads(answer) if answer else ("timed out" if os.WIFSIGNALED(status) else "killed", "")
            )
            if outcome == "killed":
                selection.killers[mutant.module].add(by.partition("::")[0])
            yield mutant, {"outcome": outcome, "by": by, "tests": count}


def _start(
    mutant: Mutant, tests: Sequence[tuple[str, float]], seconds: int, control: bool
) -> tuple[int, int]:
    def work() -> tuple[str, str]:
        text = (ROOT / mutant.module).read_text(encoding="utf-8") if control else mutant.text()
        return try_out(mutant.module, text, tests)

    return in_child(work, seconds)


def _show(outcomes: Sequence[tuple[Mutant, str]]) -> None:
    """Print scores: of packages, then of modules, the worst first."""
    counted = [(mutant, outcome) for mutant, outcome in outcomes if outcome not in ("invalid", "unclear")]
    print(f"{len(counted)} counted; {len(outcomes) - len(counted)} did not compile or could not be tried\n")
    print(_line("all", counted))
    print(_line("all but arithmetic as bit operations", [each for each in counted if not each[0].puts_bits]))
    folders = {str(Path(mutant.module).parent) for mutant, _ in counted}
    for name in sorted(folders | set(PACKAGES)):
        print(_line(name, [each for each in counted if each[0].module.startswith(f"{name}/")]))
    by_module = {
        name: [each for each in counted if each[0].module == name]
        for name in {each[0].module for each in counted}
    }
    for name in sorted(by_module, key=lambda name: _score(by_module[name])[0]):
        print(_line(name, by_module[name]))


def _line(name: str, outcomes: Sequence[tuple[Mutant, str]]) -> str:
    share, low, high = _score(outcomes)
    late = sum(outcome == "timed out" for _, outcome in outcomes)
    dead = sum(outcome != "survived" for _, outcome in outcomes)
    return (
        f"{name:44} {dead:5} of {len(outcomes):5} ({late} timed out) {share:6.1%} ({low:.1%} to {high:.1%})"
    )


def _score(outcomes: Sequence[tuple[Mutant, str]]) -> tuple[float, float, float]:
    """Return the share that did not survive, with its 95 % interval after Wilson."""
    n = len(outcomes)
    if not n:
        return 0.0, 0.0, 1.0
    share = sum(outcome != "survived" for _, outcome in outcomes) / n
    middle = (share + Z95**2 / (2 * n)) / (1 + Z95**2 / n)
    half = Z95 / (1 + Z95**2 / n) * sqrt(share * (1 - share) / n + Z95**2 / (4 * n * n))
    return share, max(middle - half, 0.0), min(middle + half, 1.0)


if __name__ == "__main__":
    main()
