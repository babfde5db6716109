"""Writing the log to a CSV or JSON file, whole or not at all."""

import io
from collections.abc import Iterable
from pathlib import Path
from typing import TextIO

from sqlalchemy import Connection

from welds.errors import InputError
from welds.language import tr
from welds.logbook.csv_file import csv_lines
from welds.logbook.entry import Entry
from welds.logbook.entry_table import all_entries
from welds.logbook.json_file import json_lines
from welds.logbook.logbook import Logbook
from welds.logbook.progress import Progress, Stage
from welds.reference.tables import Tables
from welds.reference.whole_file import whole_file

FORMS = ("csv", "json")


def export_file(log: Logbook, file: Path, tables: Tables, progress: Progress | None = None) -> int:
    """Write every entry to the file, the form by its ending; return how many there are.

    Raises StoppedError where `progress` is stopped meanwhile; the file is as it was then.
    """
    form = file.suffix.lower().removeprefix(".")
    if form not in FORMS:
        raise InputError("export", file.name, tr("a file ending in .csv or .json"))
    with whole_file(file) as whole:
        out = io.TextIOWrapper(whole, encoding="utf-8", newline="")
        count = export_text(log, out, form, tables, progress)
        out.flush()
        out.detach()  # the file is closed by who lent it
    return count


def export_text(
    log: Logbook, out: TextIO, form: str, tables: Tables, progress: Progress | None = None
) -> int:
    """Write every entry to an open text; return how many there are."""
    count, told, total = 0, progress or Progress(), log.count()

    def counted(connection: Connection) -> Iterable[Entry]:
        nonlocal count
        for entry in told.counted(Stage.SAVE, all_entries(connection), total):
            count += 1
            yield entry

    def work(connection: Connection) -> None:
        found = counted(connection)
        out.writelines(csv_lines(found, tables) if form == "csv" else json_lines(found))

    log.store.read(work)
    return count
