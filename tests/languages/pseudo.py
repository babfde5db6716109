"""A made-up language that shows what no translator was given: every letter is accented, and it is long.

What is left in plain letters was not said through `tr`; what is cut off is cut off in a long language too.
"""

import re
from collections.abc import Iterable

_PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
_ACCENTED = "åƀçðéƒĝĥîĵķļɱñöþɋŕšţûṽŵẋýžÅƁÇÐÉƑĜĤÎĴĶĻṀÑÖÞɊŔŠŢÛṼŴẊÝŽ"
_LETTERS = str.maketrans(_PLAIN, _ACCENTED)
_KEPT = re.compile(r"\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}|<[^<>]+>|&[a-z]+;|%[nL0-9]+|\*\.\w+")
"""What a translator keeps as it is: fields to fill in, tags, what files are called."""
LONGER = 0.3
"""German and Spanish need about this much more room than English."""
LONGEST_WORD = 9
_WORD = re.compile(r"[A-Za-z]{3,}")


def pseudo(text: str) -> str:
    """Return `text` in the made-up language."""
    parts, end = [], 0
    for kept in _KEPT.finditer(text):
        parts += [text[end : kept.start()].translate(_LETTERS), kept.group()]
        end = kept.end()
    parts.append(text[end:].translate(_LETTERS))
    return "".join(parts) + _more(round(len(text) * LONGER))


def _more(count: int) -> str:
    """Return what makes a text longer, in words that can be broken like any others."""
    return " ".join("~" * min(LONGEST_WORD, count - start) for start in range(0, count, LONGEST_WORD))


class Pseudo(dict[str, str]):
    """Every text there is, as `welds.language.use_words` takes it."""

    def get(self, text: str, default: object = None) -> str:  # type: ignore[override]
        """Return the text in the made-up language."""
        return pseudo(text)


def left_over(text: str, allowed: Iterable[str] = ()) -> list[str]:
    """Return the words of three plain letters and more that are not among the allowed ones."""
    known = {word.lower() for word in allowed}
    return [word for word in _WORD.findall(text) if word.lower() not in known]
