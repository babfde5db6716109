"""Reading a reference file as text, or saying in one line why it cannot be."""

from pathlib import Path

from welds.errors import ReferenceDataError
from welds.language import tr

LARGEST_BYTES = 5_000_000


def read_text(path: Path, shown: str) -> str:
    """Return the file's text; `shown` is the name used in messages.

    A byte-order mark and Windows line ends, as spreadsheets write them, are taken in silence.
    """
    try:
        with path.open("rb") as file:
            raw = file.read(LARGEST_BYTES + 1)  # never the whole of a file that has no end
    except OSError as error:
        raise ReferenceDataError(
            shown, tr("cannot be read: {problem}", problem=error.strerror or error)
        ) from error
    if len(raw) > LARGEST_BYTES:
        raise ReferenceDataError(
            shown, tr("larger than {size} MB; no table is", size=LARGEST_BYTES // 1000000)
        )
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise ReferenceDataError(
            shown, tr("not a UTF-8 text file (byte {start})", start=error.start + 1)
        ) from error
    if "\0" in text:
        raise ReferenceDataError(shown, tr("not a text file: it holds zero bytes"))
    if not text.strip():
        raise ReferenceDataError(shown, tr("the file is empty"))
    return text
