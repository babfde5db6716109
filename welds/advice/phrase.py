"""A few words about a joint, such as "5052 corner 0.080", as the fields of a request."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from welds import language
from welds.advice.request import Hand, Joint, Place, Process
from welds.errors import AmbiguousInputError, InputError
from welds.language import mark, tr
from welds.quantities.length import THICKNESS, parse_length
from welds.reference.metals import find_metal
from welds.reference.positions import find_position
from welds.reference.tables import Tables

LONGEST = 3
"""So many words may make one name: "inside corner", "low carbon steel"."""

MOST_WORDS = 40

_SPOKEN: tuple[tuple[str, str, str], ...] = (
    ("process", Process.TIG, mark("tig; gtaw")),
    ("process", Process.MIG, mark("mig; gmaw; mag")),
    ("joint", Joint.BUTT, mark("butt")),
    ("joint", Joint.TEE, mark("tee; t; t joint; fillet")),
    ("joint", Joint.LAP, mark("lap")),
    ("joint", Joint.OUTSIDE_CORNER, mark("outside corner; corner")),
    ("joint", Joint.INSIDE_CORNER, mark("inside corner")),
    ("joint", Joint.EDGE, mark("edge")),
    ("joint", Joint.PLUG, mark("plug")),
    ("place", Place.INDOORS, mark("indoors")),
    ("place", Place.OUTDOORS, mark("outdoors")),
    ("place", Place.ENCLOSED, mark("enclosed")),
    ("hand", Hand.UNHURRIED, mark("unhurried")),
    ("hand", Hand.BRISK, mark("brisk")),
)
"""Field, what it then is, and the words for it: a translator gives as many as people say, each in full."""

_IN_TABLES: tuple[tuple[str, str, str], ...] = (
    ("metal", "low-carbon", mark("low-carbon; mild; mild steel")),
    ("metal", "galvanised", mark("galvanised; galvanized")),
    ("metal", "structural", mark("structural; hot-rolled")),
    ("metal", "weathering", mark("weathering")),
    ("metal", "copper", mark("copper")),
    ("metal", "titanium-2", mark("titanium")),
    ("metal", "magnesium-az31", mark("magnesium")),
    ("metal", "silicon-bronze", mark("silicon bronze")),
    ("position", "PA", mark("flat; downhand")),
    ("position", "PE", mark("overhead; upside down")),
    ("position", "PF", mark("vertical up; uphill; upward")),
    ("position", "PG", mark("vertical down; downhill; downward")),
)
"""The same for what the tables know by English names: only another language's words are looked up here."""
_FREE_COMMA = re.compile(r"[,;](?!\d)|\s+")
_NUMBER_FIRST = re.compile(r"[\d.]")


@dataclass(frozen=True, slots=True)
class Phrase:
    """The fields that were understood, and the words that were not."""

    fields: Mapping[str, str]
    rest: tuple[str, ...]


def read_phrase(text: str, tables: Tables) -> Phrase:
    """Return what the words say of a joint, in any order; a second metal or thickness is the other's."""
    words = [word for word in _FREE_COMMA.split(text.casefold()) if word][:MOST_WORDS]
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


@cache
def _closed(_language: str) -> Mapping[str, tuple[str, str]]:
    """Return what the words in the language in use mean, and the English ones."""
    spoken = [*_SPOKEN]
    if language.code() != language.ENGLISH:
        spoken += [(field, value, tr(words)) for field, value, words in (*_IN_TABLES, *_SPOKEN)]
    return {
        word.replace("-", " ").casefold(): (field, value)
        for field, value, words in spoken
        for word in words.split("; ")
    }


def _meaning(words: str, known: Mapping[str, str], tables: Tables) -> tuple[str, str] | None:
    closed = _closed(language.code()).get(words.replace("-", " "))
    if closed is not None:
        field, value = closed
        return (f"other_{field}" if field == "metal" and field in known else field), value
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
