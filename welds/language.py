"""The language of the words: English as it stands in the code, or what a translator wrote for it.

Translations are Qt Linguist's own files, one for each language in `welds/languages/`, and are read without
Qt, so that command line, files and window say the same. `packaging/languages.py` brings the files up to
date with the code. A language is chosen once, before anything is said.
"""

import os
from collections.abc import Iterable, Mapping
from functools import reduce
from pathlib import Path
from types import MappingProxyType

ENGLISH = "en"
NAMES: Mapping[str, str] = {ENGLISH: "English", "de": "Deutsch", "es": "Español"}
"""Every language there is, each in its own words."""

_NOTHING: Mapping[str, str] = MappingProxyType({})
_code = ENGLISH
_words = _NOTHING


def tr(text: str, /, **values: object) -> str:
    """Return `text` in the language in use, each `{name}` in it filled in; figures with its decimal sign."""
    said = _words.get(text, text)
    if not values:
        return said
    if _code == ENGLISH:
        return said.format(**values)
    return said.format(**{name: _localised(value) for name, value in values.items()})


def mark(text: str) -> str:
    """Return `text` as it is: marks a constant for the translators; `tr` is called where it is said."""
    return text


def figure(text: str) -> str:
    """Return a figure that is text with a point already with the decimal sign of the language in use."""
    return text if _code == ENGLISH else text.replace(".", ",")


def either(words: Iterable[str]) -> str:
    """Return words with an "or" between each two."""
    return reduce(lambda first, other: tr("{first} or {other}", first=first, other=other), words)


def code() -> str:
    """Return the language in use as its two letters of ISO 639."""
    return _code


def use(language: str) -> None:
    """Say everything from here on in a language of `NAMES`; raises KeyError for another."""
    global _code, _words
    _words = _NOTHING if language == ENGLISH else read_catalogue(language)
    _code = language


def read_catalogue(language: str) -> dict[str, str]:
    """Return what the translators wrote, by English text; what is not finished is left out."""
    from xml.etree import ElementTree

    if language not in NAMES:
        raise KeyError(language)
    root = ElementTree.parse(catalogue_file(language)).getroot()
    found = {}
    for message in root.iter("message"):
        translation = message.find("translation")
        if translation is not None and translation.get("type") is None and translation.text:
            found[message.findtext("source", "")] = translation.text
    return found


def catalogue_file(language: str) -> Path:
    """Return where a language's translations lie."""
    return Path(__file__).with_name("languages") / f"{language}.ts"


def said_in(language: str, text: str) -> str:
    """Return a text in a language that need not be the one in use."""
    return text if language == ENGLISH else read_catalogue(language).get(text, text)


def system_language() -> str:
    """Return the language that the environment asks for, English where there is no translation."""
    asked = next(filter(None, map(os.environ.get, ("LC_ALL", "LC_MESSAGES", "LANG"))), "")
    return known(asked[:2].lower())


def known(language: str) -> str:
    """Return `language` where it is one of ours, else English."""
    return language if language in NAMES else ENGLISH


class _Figure(float):
    """A number that is written with the decimal comma."""

    def __format__(self, spec: str) -> str:
        return super().__format__(spec).replace(".", ",")


def _localised(value: object) -> object:
    return _Figure(value) if isinstance(value, float) else value
