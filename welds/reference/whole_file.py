"""Writing files: whole and on the disk, or as if nobody had tried."""

import os
import shutil
import uuid
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

from welds.errors import FileUnavailableError


def write_whole(path: Path | str, content: str | bytes) -> None:
    """Write a file, text as UTF-8; what stood there stays until the new one is whole.

    Raises FileUnavailableError where it cannot be written; nothing has changed then.
    """
    with whole_file(path) as out:
        out.write(content.encode("utf-8") if isinstance(content, str) else content)


@contextmanager
def whole_file(path: Path | str) -> Iterator[BinaryIO]:
    """Lend a file to write into; when the block ends well, it takes the place and name of `path`.

    Raises FileUnavailableError as `write_whole` does.
    """
    try:
        target = Path(os.path.realpath(path))  # a link stays, and what it points to is written
        if target.exists() and not target.is_file():  # a device or a pipe keeps nothing that could be lost
            with target.open("wb") as out:
                yield out
        else:
            with _beside(target) as out:
                yield out
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        raise FileUnavailableError(str(path), reason) from error


@contextmanager
def _beside(target: Path) -> Iterator[BinaryIO]:
    # A name of its own, so that two programs that write the same file do not meet in one draft.
    part = target.with_name(f".welds-{uuid.uuid4().hex}.part")
    try:
        with part.open("wb") as out:
            yield out
            out.flush()
            os.fsync(out.fileno())
        if target.exists():
            shutil.copymode(target, part)
        os.replace(part, target)
        _sync_folder(target.parent)
    finally:
        part.unlink(missing_ok=True)


def _sync_folder(folder: Path) -> None:
    """Put the folder's own list of names on the disk, where the system can (not on Windows)."""
    if os.name != "posix":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
