"""Entries that were begun and not yet logged; they survive a crash of the program."""

import uuid
from collections.abc import Mapping
from typing import Any

from welds.logbook.places import Place
from welds.logbook.waiting import JsonFolder


class Drafts:
    """Fields as they were typed, by a name of their own; nothing in them need be right yet."""

    def __init__(self, place: Place) -> None:
        self._files = JsonFolder(place.drafts)

    def keep(self, fields: Mapping[str, Any], name: str | None = None) -> str:
        """Keep the fields, under a new name or in place of an older state; return the name."""
        name = name or str(uuid.uuid4())
        self._files.keep(name, fields)
        return name

    def all(self) -> dict[str, dict[str, Any]]:
        """Return every draft by name, oldest first."""
        return self._files.all()

    def drop(self, name: str) -> None:
        """Forget a draft: it was logged, or thrown away."""
        self._files.drop(name)
