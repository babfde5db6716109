"""Entries that could not be written, kept on this computer with their pictures until they can."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from welds.errors import FileUnavailableError, LogbookUnavailableError
from welds.language import tr
from welds.logbook.changes import frozen, thawed
from welds.logbook.entry import Entry
from welds.logbook.fields import Reading
from welds.logbook.photos import FolderPhotos, add_photo
from welds.logbook.waiting import JsonFolder


class Outbox:
    """What waits for one log."""

    def __init__(self, folder: Path) -> None:
        self._files = JsonFolder(folder)
        self.photos = FolderPhotos(folder / "photos")

    def keep(self, reading: Reading, error: LogbookUnavailableError) -> LogbookUnavailableError:
        """Keep the entry; return the error that says what is wrong with the log and where the entry is."""
        try:
            new = tuple(add_photo(self.photos, each.path, each.name) for each in reading.new_photos)
            entry = replace(reading.entry, photos=(*reading.entry.photos, *new))
            self._files.keep(entry.uid, frozen(entry))
        except (FileUnavailableError, LogbookUnavailableError) as other:
            problem = tr(
                "{problem}; the entry could not be kept on this computer either ({other})",
                problem=error.problem,
                other=other,
            )
        else:
            problem = tr(
                "{problem}; the entry is kept in {folder} and goes in when the log can be written again",
                problem=error.problem,
                folder=self._files.folder,
            )
        return LogbookUnavailableError(error.log, problem, error.offers)

    def entries(self) -> Iterator[Entry]:
        """Yield what waits, oldest first."""
        for kept in self._files.all().values():
            try:
                yield thawed(kept)
            except (KeyError, TypeError, ValueError):
                continue  # not one of ours; left where it is

    def drop(self, entry: Entry) -> None:
        """Forget an entry that is in the log now."""
        self._files.drop(entry.uid)

    def __len__(self) -> int:
        return len(self._files.all())
