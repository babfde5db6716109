"""Reading a numpydoc docstring, as far as our physics uses it."""

import inspect
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from importlib import import_module
from pkgutil import iter_modules
from types import FunctionType, ModuleType

BRACKET = re.compile(r"\[([^\[\]]+)\]$")


@dataclass(frozen=True)
class Entry:
    """One parameter or result: its name (a result has none), and the unit its text ends in."""

    name: str
    unit: str | None


def physics_functions(package: ModuleType) -> Iterator[FunctionType]:
    """Yield every public function that the package's modules define."""
    for found in iter_modules(package.__path__):
        module = import_module(f"{package.__name__}.{found.name}")
        for name, thing in vars(module).items():
            if inspect.isfunction(thing) and thing.__module__ == module.__name__ and not name.startswith("_"):
                yield thing


def sections(function: Callable[..., object]) -> dict[str, list[str]]:
    """Return the lines under each underlined heading; what stands before the first is under ''."""
    lines = (inspect.getdoc(function) or "").splitlines()
    found: dict[str, list[str]] = {"": []}
    heading = ""
    for line, after in zip(lines, [*lines[1:], ""], strict=True):
        if line and set(after) == {"-"} and len(after) == len(line):
            heading = line
            found[heading] = []
        elif set(line) != {"-"}:
            found[heading].append(line)
    return found


def parameters(lines: list[str]) -> list[Entry]:
    """Return the entries of a Parameters section, `a, b : type` as two."""
    return [Entry(name, unit) for names, unit in _entries(lines) for name in names]


def results(lines: list[str]) -> list[Entry]:
    """Return the entries of a Returns section."""
    return [Entry("", unit) for _names, unit in _entries(lines)]


def _entries(lines: list[str]) -> Iterator[tuple[list[str], str | None]]:
    starts = [index for index, line in enumerate(lines) if line and not line.startswith(" ")]
    for start, end in zip(starts, [*starts[1:], len(lines)], strict=True):
        text = " ".join(line.strip() for line in lines[start:end] if line.strip())
        bracket = BRACKET.search(text)
        yield lines[start].partition(":")[0].replace(",", " ").split(), bracket[1] if bracket else None


def suffix(unit: str) -> str:
    """Return how a name says the unit: W/(m K) is w_mk, 1/K is per_k, degC is c."""
    if unit == "degC":
        return "c"
    top, _slash, bottom = unit.partition("/")
    parts = ["per" if top == "1" else top, bottom]
    return "_".join(re.sub(r"[^a-z0-9]", "", part.lower()) for part in parts if part)
