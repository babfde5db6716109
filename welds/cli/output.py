"""Where answers go: standard output, or a file written whole."""

import argparse
import json
import sys
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import reduce
from pathlib import Path

from welds.cli.arguments import STDOUT
from welds.errors import FileUnavailableError, InputError
from welds.language import mark, tr
from welds.reference.whole_file import write_whole


def print_text(text: str) -> None:
    """Write text to standard output, ending in one line break."""
    if sys.stdout is None:
        raise FileUnavailableError(tr("standard output"), tr("is closed"))
    sys.stdout.write(text if text.endswith("\n") else f"{text}\n")


def print_json(data: object, *, is_line: bool = False) -> None:
    """Write one JSON value; plain ASCII, so that it is the same in every terminal."""
    print_text(json.dumps(data, allow_nan=False, indent=None if is_line else 2))


def write_text(file: str, text: str) -> None:
    """Write a file whole, or raise FileUnavailableError."""
    write_whole(file, text)
    print_text(tr("written: {file}", file=file))


def check_writable(file: str) -> None:
    """Raise FileUnavailableError where the file cannot be written; one that was not there stays away."""
    path = Path(file)
    try:
        was_there = path.exists()
        with path.open("ab"):
            pass
        if not was_there:
            path.unlink()
    except (OSError, ValueError) as error:
        raise unavailable(file, error) from error


def unavailable(file: str, error: Exception) -> FileUnavailableError:
    """Return the error for a file that cannot be used, in one line."""
    reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
    return FileUnavailableError(file, reason)


@dataclass(frozen=True, slots=True)
class Destinations:
    """Where each form of an answer goes; `on_stdout` is the one form printed, None where none was asked."""

    files: Mapping[str, str]
    on_stdout: str | None

    @property
    def is_silent(self) -> bool:
        """True where files were written and nothing was asked on standard output."""
        return bool(self.files) and self.on_stdout is None


def destinations(options: argparse.Namespace, files: Iterable[str], flags: Iterable[str]) -> Destinations:
    """Sort the output options; two forms on standard output at once are refused."""
    named = {name: getattr(options, name) for name in files}
    printed = [name for name, file in named.items() if file == STDOUT]
    printed += [name for name in flags if getattr(options, name)]
    if len(printed) > 1:
        given = reduce(
            lambda some, one: tr("{some} and {one}", some=some, one=one), (f"--{name}" for name in printed)
        )
        raise InputError(mark("output"), given, tr("one of them; give the others a FILE"))
    kept = {name: file for name, file in named.items() if file is not None and file != STDOUT}
    return Destinations(kept, printed[0] if printed else None)
