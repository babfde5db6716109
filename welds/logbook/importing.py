"""Bringing entries in from a file: looked at row by row first, then all of them or none."""

import uuid
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, or_, select

from welds.errors import FileUnavailableError, InputError, WeldsError
from welds.language import tr
from welds.logbook.csv_file import read_csv
from welds.logbook.entry import Entry
from welds.logbook.entry_table import BATCH
from welds.logbook.fields import read_entry
from welds.logbook.json_file import read_json
from welds.logbook.logbook import Logbook
from welds.logbook.progress import Progress, Stage
from welds.logbook.rows import fingerprint
from welds.logbook.schema import entries
from welds.quantities.units import Units
from welds.reference.tables import Tables

LARGEST_BYTES = 50_000_000
"""Some 120,000 welds: every row is held, in ten times the memory, until the person has agreed."""


class Standing(StrEnum):
    """What would become of a row."""

    NEW = "new"
    DUPLICATE = "duplicate"
    BAD = "bad"


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the file: its line or place, what would become of it, and why where it is not new."""

    place: int
    standing: Standing
    reason: str = ""
    entry: Entry | None = None


@dataclass(frozen=True, slots=True)
class Preview:
    """What an import would do. Nothing is written before it is accepted."""

    rows: tuple[Row, ...]

    def count(self, standing: Standing) -> int:
        """Return how many rows stand so."""
        return sum(row.standing is standing for row in self.rows)

    @property
    def new(self) -> list[Entry]:
        """The entries that would be written."""
        return [row.entry for row in self.rows if row.standing is Standing.NEW and row.entry is not None]


def preview_file(
    log: Logbook, file: Path, tables: Tables, units: Units | None = None, progress: Progress | None = None
) -> Preview:
    """Read a CSV or JSON file and say what would become of each row.

    Raises StoppedError where `progress` is stopped meanwhile, as `accept` does.
    """
    try:
        with file.open("rb") as opened:
            raw = opened.read(LARGEST_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise FileUnavailableError(str(file), reason) from error
    if len(raw) > LARGEST_BYTES:
        allowed = tr(
            "a file of up to {size} MB; a larger log moves by backup and restore",
            size=LARGEST_BYTES // 1000000,
        )
        raise InputError("import", file.name, allowed)
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise InputError("import", file.name, tr("a file in UTF-8")) from error
    is_json = file.suffix.lower() == ".json" or text.lstrip()[:1] in ("{", "[")
    rows = read_json(text) if is_json else read_csv(text)
    told = (progress or Progress()).counted(Stage.READ, rows, text.count("\n"))
    return preview(log, told, tables, units)


def preview(
    log: Logbook,
    rows: Iterable[tuple[int, Mapping[str, Any]]],
    tables: Tables,
    units: Units | None = None,
) -> Preview:
    """Say what would become of each row."""
    read = [_read(place, fields, tables, units) for place, fields in rows]
    by_uid, prints = _known(log, [row.entry for row in read if row.entry is not None])
    seen: dict[str, int] = {}
    return Preview(tuple(_judged(row, by_uid, prints, seen) for row in read))


def accept(log: Logbook, wanted: Preview, progress: Progress | None = None) -> str | None:
    """Write the new entries, all or nothing; return the token that takes them out again, None for none.

    Raises InputError where a row is bad.
    """
    bad = next((row for row in wanted.rows if row.standing is Standing.BAD), None)
    if bad is not None:
        given = tr("row {row} ({reason})", row=bad.place, reason=bad.reason)
        raise InputError("import", given, tr("a file without bad rows; nothing was written"))
    return log.add_all(wanted.new, progress) if wanted.new else None


def _read(place: int, fields: Mapping[str, Any], tables: Tables, units: Units | None) -> Row:
    try:
        reading = read_entry(fields, tables, units)
        if reading.new_photos:
            raise InputError(
                "photos", reading.new_photos[0].path.name, tr("pictures the log holds (by SHA-256)")
            )
    except WeldsError as error:
        return Row(place, Standing.BAD, str(error))
    entry = reading.entry
    if not fields.get("uid"):
        entry = replace(entry, uid="")
    return Row(place, Standing.NEW, "", entry)


def _known(log: Logbook, found: list[Entry]) -> tuple[dict[str, str], dict[str, int]]:
    """Return fingerprint by uid and number by fingerprint of what the log already holds of these."""
    uids = [entry.uid for entry in found if entry.uid]
    prints = [fingerprint(entry) for entry in found]
    by_uid: dict[str, str] = {}
    by_print: dict[str, int] = {}
    c = entries.c

    def work(connection: Connection) -> None:
        for start in range(0, max(len(uids), len(prints)), BATCH):
            part = slice(start, start + BATCH)
            query = select(c.uid, c.fingerprint, c.number).where(
                or_(c.uid.in_(uids[part]), c.fingerprint.in_(prints[part]))
            )
            for row in connection.execute(query):
                by_uid[row.uid] = row.fingerprint
                by_print[row.fingerprint] = row.number

    log.store.read(work)
    return by_uid, by_print


def _judged(row: Row, by_uid: dict[str, str], prints: dict[str, int], seen: dict[str, int]) -> Row:
    entry = row.entry
    if entry is None:
        return row
    own = fingerprint(entry)
    held = by_uid.get(entry.uid)
    if held is not None and held != own:
        reason = tr(
            "the log holds an entry of this uid ({uid}) with another content; edit it there", uid=entry.uid
        )
        return replace(row, standing=Standing.BAD, reason=reason)
    if held is not None or (not entry.uid and own in prints):
        return replace(
            row,
            standing=Standing.DUPLICATE,
            reason=tr("already number {number} in the log", number=prints[own]),
        )
    key = entry.uid or own
    if key in seen:
        if entry.uid:
            reason = tr("the same uid as row {row}", row=seen[key])
            return replace(row, standing=Standing.BAD, reason=reason)
        return replace(row, standing=Standing.DUPLICATE, reason=tr("the same as row {row}", row=seen[key]))
    seen[key] = row.place
    return row if entry.uid else replace(row, entry=replace(entry, uid=str(uuid.uuid4())))
