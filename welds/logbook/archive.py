"""The whole log with its pictures in one file; the same file for a log in a file and one on a server."""

import json
import zipfile
from pathlib import Path

from sqlalchemy import Connection

from welds.logbook.changes import frozen
from welds.logbook.entry_table import all_entries
from welds.logbook.logbook import Logbook
from welds.logbook.progress import Progress, Stage
from welds.logbook.schema import saved_filters
from welds.logbook.times import now
from welds.reference.whole_file import whole_file

SCHEMA = "welds.log-backup/1"
MANIFEST, ENTRIES, PHOTOS = "manifest.json", "entries.jsonl", "photos/"
"""What the archive (a zip file) holds: what it is, one entry a line, and the pictures by hash."""


def back_up(log: Logbook, file: Path, progress: Progress | None = None) -> int:
    """Write the whole log into one file, moved into place when it is whole; return the number of entries.

    Raises StoppedError where `progress` is stopped meanwhile; the file is as it was then.
    """
    told, total = progress or Progress(), log.count()
    with whole_file(file) as out, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        return log.store.read(lambda connection: _write(log, connection, archive, told, total))


def _write(
    log: Logbook, connection: Connection, archive: zipfile.ZipFile, progress: Progress, total: int
) -> int:
    count, pictures = 0, dict[str, None]()
    with archive.open(ENTRIES, "w") as out:
        for entry in progress.counted(Stage.SAVE, all_entries(connection), total):
            out.write(json.dumps(frozen(entry)).encode() + b"\n")
            pictures.update(dict.fromkeys(photo.sha256 for photo in entry.photos))
            count += 1
    missing = []
    for sha256 in pictures:
        content = log.photos.content(sha256)
        if content is None:
            missing.append(sha256)
        else:
            archive.writestr(f"{PHOTOS}{sha256}", content, zipfile.ZIP_STORED)
    rows = connection.execute(saved_filters.select()).mappings()
    manifest = {
        "schema": SCHEMA,
        "made_at": now(),
        "entries": count,
        "photos": len(pictures) - len(missing),
        "photos_missing": missing,
        "filters": {row["name"]: json.loads(row["filter"]) for row in rows},
    }
    archive.writestr(MANIFEST, json.dumps(manifest, indent=1))
    return count
