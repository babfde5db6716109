"""When a weld was made: ISO 8601 as the person gave it, and one form that sorts."""

from datetime import UTC, date, datetime

from welds.errors import InputError
from welds.language import mark, tr

_ALLOWED = mark("a date such as 2026-03-03, or with a time: 2026-03-03T14:05")


def now() -> str:
    """Return this moment with the offset of this computer's clock, to the second."""
    return datetime.now().astimezone().isoformat(timespec="seconds")


def read_time(text: object, field: str = "made_at") -> str:
    """Return a date as it is, or a time with its offset (this computer's where none was given)."""
    if not isinstance(text, str):
        raise InputError(field, text, tr(_ALLOWED))
    word = text.strip()
    try:
        if len(word) == 10:
            return date.fromisoformat(word).isoformat()
        moment = datetime.fromisoformat(word)
        if not 1900 <= moment.year <= 9000:
            raise InputError(field, text, tr(_ALLOWED))
        aware = moment if moment.tzinfo else moment.astimezone()
        return aware.isoformat(timespec="microseconds" if aware.microsecond else "seconds")
    except (ValueError, OverflowError) as error:
        raise InputError(field, text, tr(_ALLOWED)) from error


def sortable(made_at: str) -> str:
    """Return the moment in UTC, so that texts sort as times; a bare date counts as its first second."""
    if len(made_at) == 10:
        return f"{made_at}T00:00:00.000000"
    moment = datetime.fromisoformat(made_at).astimezone(UTC).replace(tzinfo=None)
    return moment.isoformat(timespec="microseconds")
