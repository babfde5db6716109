"""The records an answer is made of, to make them again: no program can hand over that answer for less."""

from collections.abc import Callable
from dataclasses import fields, is_dataclass
from typing import Any


def making_again(answer: object) -> Callable[[], object]:
    """Return a function that makes every record in the answer anew, with all figures and words at hand."""
    found: list[tuple[type, dict[str, Any]]] = []
    _collect(answer, found)

    def make() -> object:
        return [kind(**parts) for kind, parts in found]

    return make


def _collect(part: object, found: list[tuple[type, dict[str, Any]]]) -> None:
    if isinstance(part, dict):
        for each in part.values():
            _collect(each, found)
    elif isinstance(part, (tuple, list)):
        for each in part:
            _collect(each, found)
    elif is_dataclass(part) and not isinstance(part, type):
        parts = {each.name: getattr(part, each.name) for each in fields(part) if each.init}
        for each in parts.values():
            _collect(each, found)
        found.append((type(part), parts))
