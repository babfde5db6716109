"""A few words about a joint, such as "5052 corner 0.080", as the fields of a request."""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from welds.advice.request import Hand, Joint, Place, Process
from welds.errors import AmbiguousInputError, InputError
from welds.quantities.length import THICKNESS, parse_length
from welds.reference.metals import find_metal
from welds.reference.positions import find_position
from welds.reference.tables import Tables

LONGEST = 3
"""So many words may make one name: "inside corner", "low carbon steel"."""

MOST_WORDS = 40

_CLOSED: Mapping[str, tuple[str, str]] = {
    **{each.value: ("process", each.value) for each in Process},
    "gtaw": ("process", "tig"),
    "gmaw": ("process", "mig"),
    "mag": ("process", "mig"),
    **{each.value.replace("-", " "): ("joint", each.value) for each in Joint},
    "corner": ("joint", "outside-corner"),
    "t": ("joint", "tee"),
    "t joint": ("joint", "tee"),
    "fillet": ("joint", "tee"),
    **{each.value: ("place", each.value) for each in Place},
    **{each.value: ("hand", each.value) for each in Hand},
}
_FREE_COMMA = re.compile(r"[,;](?!\d)|\s+")
_NUMBER_FIRST = re.compile(r"[\d.]")


@dataclass(frozen=True, slots=True)
class Phrase:
    """The fields that were understood, and the words that were not."""

    fields: Mapping[str, str]
    rest: tuple[str, ...]


def read_phrase(text: str, tables: Tables) -> Phrase:
    """Return what the words say of a joint, in any order; a second metal or thickness is the other's."""
    words = [word for word in _FREE_COMMA.split(text.lower()) if word][:MOST_WORDS]
    fields: dict[str, str] = {}
    rest: list[str] = []
    place = 0
    while place < len(words):
        for length in range(min(LONGEST, len(words) - place), 0, -1):
            found = _meaning(" ".join(words[place : place + length]), fields, tables)
            if found is not None:
                fields[found[0]] = found[1]
                place += length
                break
        else:
            rest.append(words[place])
            place += 1
    return Phrase(fields, tuple(rest))


def _meaning(words: str, known: Mapping[str, str], tables: Tables) -> tuple[str, str] | None:
    closed = _CLOSED.get(words.replace("-", " "))
    if closed is not None:
        return closed
    for field, is_meant in (("metal", _is_metal), ("thickness", _is_thickness)):
        if is_meant(words, tables):
            return (f"other_{field}" if field in known else field), words
    try:
        return "position", find_position(tables, words)
    except (InputError, AmbiguousInputError):
        return None


def _is_metal(words: str, tables: Tables) -> bool:
    try:
        find_metal(tables, words)
    except InputError:
        return False
    return True


def _is_thickness(words: str, _tables: Tables) -> bool:
    """Say whether the words begin with a number and can be a sheet; which unit is asked later."""
    if not _NUMBER_FIRST.match(words):
        return False
    try:
        parse_length(words, field="thickness", limits=THICKNESS, gauge=lambda _number: 1.0)
    except AmbiguousInputError:
        return True
    except InputError:
        return False
    return True
