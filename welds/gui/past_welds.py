"""What the log says to the cards, kept at hand so that a card never waits for a disk."""

from typing import TYPE_CHECKING

from welds.reference.metals import find_metal

if TYPE_CHECKING:
    from collections.abc import Callable

    from welds.advice.evidence import Evidence
    from welds.advice.request import Request
    from welds.reference.tables import Tables

Key = tuple[str, str]


class PastWelds:
    """Evidence by process and family of metal; what has not been read yet is asked for once.

    `ask` is called with a request whose evidence is missing; the answer comes in through `put`.
    """

    def __init__(self, tables: "Tables") -> None:
        self._tables = tables
        self._read: dict[Key, Evidence] = {}
        self._asked: set[Key] = set()
        self.is_on = True
        self.ask: Callable[[Request], None] | None = None

    def of(self, request: "Request") -> "Evidence | None":
        """Return the welds that may speak about a request; None where there are none or none may."""
        return self.all_of(request) if self.is_on else None

    def all_of(self, request: "Request") -> "Evidence | None":
        """Return the welds of a request's process and family, also while the cards do not learn from them."""
        if self.ask is None:
            return None
        key = self._key(request)
        if key not in self._asked:
            self._asked.add(key)
            self.ask(request)
        found = self._read.get(key)
        return found if found is not None and found.welds else None

    def put(self, request: "Request", evidence: "Evidence") -> None:
        """Take what was read for a request."""
        self._read[self._key(request)] = evidence

    def forget(self) -> None:
        """Know nothing any more: the log has changed, or is another one."""
        self._asked.clear()
        self._read.clear()

    def _key(self, request: "Request") -> Key:
        return request.process.value, find_metal(self._tables, request.metal).family
