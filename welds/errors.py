"""Every error raised on purpose; anything else is a bug.

Messages are in the language in use; what an error keeps in its fields is as the program names it.
"""

from collections.abc import Iterable

from welds.language import either, mark, tr

NOTHING = mark("nothing")
"""What an error says was given where nothing was."""


class WeldsError(Exception):
    """An error whose message is meant for the person at the bench."""

    exit_code = 2


class InputError(WeldsError):
    """Something typed or passed in cannot be used: what, given, allowed, nearest right one."""

    def __init__(self, field: str, given: object, allowed: str, nearest: str | None = None) -> None:
        self.field = field
        self.given = given
        self.allowed = allowed
        self.nearest = nearest
        hint = tr("; nearest: {nearest}", nearest=nearest) if nearest else ""
        super().__init__(
            tr(
                "{field}: {given!s:.80} is not usable; allowed: {allowed}{hint}",
                field=tr(field),
                given=tr(NOTHING) if given == NOTHING else " ".join(str(given).splitlines()),
                allowed=allowed,
                hint=hint,
            )
        )


class AmbiguousInputError(InputError):
    """Input that has more than one sensible reading; the person has to choose."""

    def __init__(self, field: str, given: object, readings: Iterable[str]) -> None:
        self.readings = tuple(readings)
        super().__init__(field, given, tr("one reading: {readings}", readings=either(self.readings)))


class NotCoveredError(WeldsError):
    """The tables end before this request; `nearest` names the closest case that has an answer."""

    exit_code = 3

    def __init__(self, asked: str, reason: str, nearest: str | None = None) -> None:
        self.asked = asked
        self.reason = reason
        self.nearest = nearest
        hint = tr("; nearest that can be answered: {nearest}", nearest=nearest) if nearest else ""
        super().__init__(f"{asked}: {reason}{hint}")


class StoppedError(WeldsError):
    """Long work was stopped because the person wanted it; it is as if it had never begun."""

    def __init__(self) -> None:
        super().__init__(tr("stopped; nothing was changed"))


class OutsideValidityError(WeldsError):
    """A formula was asked beyond the range its source states."""

    exit_code = 3

    def __init__(self, quantity: str, given: object, allowed: str) -> None:
        self.quantity = quantity
        self.given = given
        self.allowed = allowed
        super().__init__(
            tr(
                "{quantity}: {given} is outside the formula's range; allowed: {allowed}",
                quantity=quantity,
                given=given,
                allowed=allowed,
            )
        )


class ReferenceDataError(WeldsError):
    """A table cannot be trusted: file, row and column say where."""

    def __init__(self, file: str, problem: str, row: int | None = None, column: str | None = None) -> None:
        self.file = file
        self.row = row
        self.column = column
        self.problem = problem
        place = file + (tr(", row {row}", row=row) if row else "")
        place += tr(", column {column}", column=column) if column else ""
        super().__init__(f"{place}: {problem}")


class BenchFileError(WeldsError):
    """The person's bench file cannot be read or holds something impossible."""

    exit_code = 4

    def __init__(self, file: str, problem: str, line: int | None = None, field: str = "") -> None:
        self.file = file
        self.line = line
        self.field = field
        self.problem = problem
        place = tr("{file}, line {line}", file=file, line=line) if line else file
        super().__init__(f"{place}: {problem}")


class FileUnavailableError(WeldsError):
    """A file cannot be read or written: disk, permission or a missing folder."""

    exit_code = 4

    def __init__(self, file: str, problem: str) -> None:
        self.file = file
        self.problem = problem
        super().__init__(f"{file}: {problem}")


class LogbookUnavailableError(WeldsError):
    """The log of welds cannot be opened or written; `offers` says what can be done; nothing is lost."""

    exit_code = 4

    def __init__(self, log: str, problem: str, offers: Iterable[str] = ()) -> None:
        self.log = log
        self.problem = problem
        self.offers = tuple(offers)
        hint = (
            tr("; what can be done: {offers}", offers=either(tuple(map(tr, self.offers))))
            if self.offers
            else ""
        )
        super().__init__(f"{log}: {problem}{hint}")


def nearest(given: str, candidates: Iterable[str]) -> str | None:
    """Return the candidate spelled most like `given`, swapped letters first, or None when none is close."""
    by_lower = {candidate.lower(): candidate for candidate in candidates}
    swapped = [lower for lower in by_lower if sorted(lower) == sorted(given.lower())]
    if swapped:
        return by_lower[swapped[0]]
    from difflib import get_close_matches  # kept off the path to the window's first paint

    matches = get_close_matches(given.lower(), by_lower, n=1, cutoff=0.5)
    return by_lower[matches[0]] if matches else None
