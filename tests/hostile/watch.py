"""Every file that is opened to write, renamed, made or removed, as the interpreter itself reports it."""

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import unquote

_WRITING = os.O_WRONLY | os.O_RDWR | os.O_CREAT | os.O_TRUNC | os.O_APPEND
_MOVES = ("os.rename", "os.link", "os.symlink")
_SINGLE = ("os.mkdir", "os.remove", "os.rmdir", "os.truncate", "os.chmod", "sqlite3.connect")

_listening: list[set[Path]] = []


def _hear(event: str, arguments: tuple) -> None:
    if not _listening:
        return
    if event == "open":
        path, _, flags = arguments
        touched = [path] if isinstance(flags, int) and flags & _WRITING else []
    elif event in _MOVES:
        touched = list(arguments[:2])
    elif event in _SINGLE:
        touched = [arguments[0]]
    else:
        return
    _listening[-1].update(_place(each) for each in touched if isinstance(each, str | bytes | os.PathLike))


def _place(path: str | bytes | os.PathLike) -> Path:
    text = os.fsdecode(path)
    if text.startswith("file:"):  # as a store is opened
        text = unquote(text.removeprefix("file:").partition("?")[0])
    return Path(os.path.realpath(text)) if "\0" not in text else Path(text)


sys.addaudithook(_hear)  # it cannot be taken away again; without a listener it does nothing


@contextmanager
def written_paths() -> Iterator[set[Path]]:
    """Lend the set of paths that were changed, or were about to be, while it is open."""
    paths: set[Path] = set()
    _listening.append(paths)
    try:
        yield paths
    finally:
        _listening.pop()
