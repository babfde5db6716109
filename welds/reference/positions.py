"""Welding positions, by whatever name a person gives them."""

from dataclasses import dataclass
from typing import ClassVar

from welds.errors import AmbiguousInputError, InputError, nearest
from welds.language import tr
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class Position:
    """One position: letters of ISO 6947, numbers of AWS, and words."""

    TABLE: ClassVar[str] = "positions"

    iso_6947: str
    aws: tuple[str, ...]
    words: str
    welds: tuple[str, ...]
    aliases: tuple[str, ...]


def find_position(tables: Tables, text: str) -> str:
    """Return the ISO 6947 letters for a position written as letters, AWS number or words.

    Raises AmbiguousInputError where the words stand for more than one ("vertical", "3G"), InputError with the
    nearest name where they stand for none.
    """
    by_name = tables.derived(_by_name)
    found = by_name.get(_plain(text))
    if found is None:
        letters = [position.iso_6947 for position in tables.records(Position)]
        allowed = tr("{letters}, an AWS number such as 1G, or words such as flat", letters=", ".join(letters))
        raise InputError("position", text, allowed, nearest(_plain(text), by_name))
    if len(found) > 1:
        raise AmbiguousInputError("position", text, [f"{each.iso_6947} ({each.words})" for each in found])
    return found[0].iso_6947


def _plain(text: str) -> str:
    return " ".join(text.lower().replace("-", " ").replace("_", " ").split())


def _by_name(tables: Tables) -> dict[str, tuple[Position, ...]]:
    names: dict[str, tuple[Position, ...]] = {}
    for position in tables.records(Position):
        for name in dict.fromkeys(map(_plain, (position.iso_6947, *position.aws, *position.aliases))):
            names[name] = (*names.get(name, ()), position)
    return names
