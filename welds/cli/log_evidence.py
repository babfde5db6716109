"""What the log says to a card that is asked for at the command line."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from welds.advice.evidence import Evidence
    from welds.advice.request import Request
    from welds.reference.tables import Tables


def evidence_from(log_text: str | None, request: "Request", tables: "Tables") -> "Evidence | None":
    """Return the past welds of the named log, or of the person's own where it is there; None else.

    Raises LogbookUnavailableError only for a log that was named.
    """
    from welds.errors import LogbookUnavailableError
    from welds.logbook.places import place_of

    place = place_of(log_text)
    if log_text is None and place.path is not None and not place.path.exists():
        return None
    from welds.logbook.opening import open_logbook
    from welds.logbook.past import evidence_for

    try:
        with open_logbook(place) as log:
            return evidence_for(log, request, tables)
    except LogbookUnavailableError:
        if log_text is not None:
            raise
        return None
