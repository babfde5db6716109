"""What is installed of the libraries that program and tests name, with all that these need in turn."""

import tomllib
from collections.abc import Iterator
from importlib.metadata import Distribution, distribution
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]


def declared(*extras: str) -> list[Requirement]:
    """Return what pyproject.toml asks for on this machine, with these extras."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    lines = [*project["dependencies"]]
    for extra in extras:
        lines += project["optional-dependencies"][extra]
    return [each for each in map(Requirement, lines) if holds(each)]


def holds(wanted: Requirement, extras: tuple[str, ...] = ()) -> bool:
    """Say whether a requirement is one on this machine."""
    marker = wanted.marker
    return marker is None or any(marker.evaluate({"extra": extra}) for extra in ("", *extras))


def requirements_of(library: Distribution, extras: tuple[str, ...] = ()) -> Iterator[Requirement]:
    """Yield what a library asks for on this machine."""
    yield from (each for each in map(Requirement, library.requires or ()) if holds(each, extras))


def brought_along(*extras: str) -> dict[str, tuple[Distribution, list[Requirement]]]:
    """Return each library by name, at any depth, with every requirement that names it."""
    waiting = declared(*extras)
    found: dict[str, tuple[Distribution, list[Requirement]]] = {}
    seen = set()
    while waiting:
        wanted = waiting.pop()
        name = canonicalize_name(wanted.name)
        library = distribution(wanted.name)
        found.setdefault(name, (library, []))[1].append(wanted)
        asked = (name, frozenset(wanted.extras))
        if asked not in seen:
            seen.add(asked)
            waiting += requirements_of(library, tuple(wanted.extras))
    return found
