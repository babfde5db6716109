"""Writing the log to a CSV or JSON file, whole or not at all."""

import os
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TextIO

from sqlalchemy import Connection

from welds.errors import FileUnavailableError, InputError
from welds.logbook.csv_file import csv_lines
from welds.logbook.entry import Entry
from welds.logbook.entry_table import all_entries
from welds.logbook.json_file import json_lines
from welds.logbook.logbook import Logbook
from welds.reference.tables import Tables

FORMS = ("csv", "json")


def export_file(log: Logbook, file: Path, tables: Tables) -> int:
    """Write every entry to the file, the form by its ending; return how many there are."""
    form = file.suffix.lower().removeprefix(".")
    if form not in FORMS:
        raise InputError("export", file.name, "a file ending in .csv or .json")
    return write_whole(file, lambda out: export_text(log, out, form, tables))


def export_text(log: Logbook, out: TextIO, form: str, tables: Tables) -> int:
    """Write every entry to an open text; return how many there are."""
    count = 0

    def counted(connection: Connection) -> Iterable[Entry]:
        nonlocal count
        for entry in all_entries(connection):
            count += 1
            yield entry

    def work(connection: Connection) -> None:
        found = counted(connection)
        out.writelines(csv_lines(found, tables) if form == "csv" else json_lines(found))

    log.store.read(work)
    return count


def write_whole(file: Path, write: Callable[[TextIO], int]) -> int:
    """Write a text file beside its place and move it there: the old one stays until the new one is whole."""
    part = file.with_name(f".{file.name}.part")
    is_device = file.exists() and not file.is_file()
    target = file if is_device else part
    try:
        with target.open("w", encoding="utf-8", newline="") as out:
            result = write(out)
            out.flush()
            if not is_device:
                os.fsync(out.fileno())
        if not is_device:
            os.replace(part, file)
    except (OSError, ValueError) as error:
        raise FileUnavailableError(str(file), getattr(error, "strerror", None) or str(error)) from error
    finally:
        if not is_device:
            part.unlink(missing_ok=True)
    return result
