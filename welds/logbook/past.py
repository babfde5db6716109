"""The evidence for the advice: which welds of the log may speak about a request."""

from datetime import UTC, datetime, timedelta

from sqlalchemy import Connection, Select, or_, select

from welds.advice.evidence import Evidence
from welds.advice.request import Request
from welds.logbook.entry_table import with_photos
from welds.logbook.logbook import Logbook
from welds.logbook.schema import entries
from welds.reference.metals import Metal, find_metal
from welds.reference.tables import Tables

MOST_OF_FAMILY, MOST_OF_OTHERS = 300, 25
"""The newest that are read: of the same process and family, and of each other family."""

YEARS = 5
"""Older welds were made by another hand: they no longer speak."""


def evidence_for(
    log: Logbook, request: Request, tables: Tables, *, years: float = YEARS, now: datetime | None = None
) -> Evidence:
    """Return the newest past welds of the request's process, its own family first."""
    since = ((now or datetime.now(UTC)) - timedelta(days=365.25 * years)).strftime("%Y-%m-%dT%H:%M:%S")
    family = find_metal(tables, request.metal).family
    families = sorted({metal.family for metal in tables.records(Metal)})

    def work(connection: Connection) -> Evidence:
        rows = [
            row
            for each in (family, *(other for other in families if other != family))
            for row in connection.execute(_newest(request, since, each, each == family)).mappings()
        ]
        return Evidence(tuple(entry.past_weld for entry in with_photos(connection, rows)))

    return log.store.read(work)


def _newest(request: Request, since: str, family: str, is_own: bool) -> Select:
    c = entries.c
    return (
        select(entries)
        .where(c.process == request.process.value, c.family == family, c.made_on >= since)
        .where(or_(c.current_a.is_not(None), c.process == "mig"))
        .order_by(c.made_on.desc())
        .limit(MOST_OF_FAMILY if is_own else MOST_OF_OTHERS)
    )
