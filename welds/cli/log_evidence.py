"""What the log says to the cards that are asked for at the command line."""

from contextlib import contextmanager
from typing import TYPE_CHECKING

from welds.language import tr

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from welds.advice.evidence import Evidence
    from welds.advice.request import Request
    from welds.logbook.logbook import Logbook
    from welds.reference.tables import Tables

    Past = Callable[[Request, Tables], Evidence | None]


@contextmanager
def log_to_read(log_text: str | None) -> "Iterator[Logbook | None]":
    """Lend the named log, or the person's own where it is there, open until the end; None else.

    Raises LogbookUnavailableError only for a log that was named.
    """
    from welds.errors import LogbookUnavailableError
    from welds.logbook.offers import CHOOSE
    from welds.logbook.places import place_of

    place = place_of(log_text)
    if place.path is not None and not place.path.exists():
        if log_text is not None:
            raise LogbookUnavailableError(place.name, tr("there is no log here yet"), (tr(CHOOSE),))
        yield None
        return
    from welds.logbook.opening import open_logbook

    try:
        log = open_logbook(place)
    except LogbookUnavailableError:
        if log_text is not None:
            raise
        yield None
        return
    with log:
        yield log


@contextmanager
def past_welds(log_text: str | None) -> "Iterator[Past]":
    """Lend the past welds of the log, as `log_to_read` finds it."""
    with log_to_read(log_text) as log:
        if log is None:
            yield _none
            return
        from welds.logbook.past import evidence_for

        yield lambda request, tables: evidence_for(log, request, tables)


def evidence_from(log_text: str | None, request: "Request", tables: "Tables") -> "Evidence | None":
    """Return what the log says to one request."""
    with past_welds(log_text) as past:
        return past(request, tables)


def _none(request: "Request", tables: "Tables") -> None:
    return None
